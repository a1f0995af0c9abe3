import type { Circuit } from '../../calc/index.ts';
import { textOfList } from '../chosen.ts';
import { type Looked, positionOf, stepsInWords } from './state.ts';

/** View fields of `InputToggles`: one button an input, its word and whether it is pressed, and what came before. */
export function inputFields(circuit: Circuit, look: Looked) {
  const flat: Record<string, string> = {};
  const inputs = Object.entries(circuit.inputs).map(([id, { label }]) => {
    const isOn = look.on.includes(id);
    const word = positionOf(circuit, id, isOn);
    flat[`word_${id}`] = word;
    flat[`pressed_${id}`] = String(isOn);
    return { id, label, word, pressed: String(isOn), toggle: `on:${id}` };
  });
  const hasRelay = Object.values(circuit.parts).some(({ kind }) => kind === 'relay');
  return {
    ...flat,
    inputs,
    nowOn: look.steps.join(';'),
    before: hasRelay ? stepsInWords(circuit, look) : '',
    fromRest: `on:${textOfList(look.on)}`,
  };
}

/** The same fields where there is nothing to look at. */
export const NO_INPUTS: ReturnType<typeof inputFields> = { inputs: [], nowOn: '', before: '', fromRest: '' };
