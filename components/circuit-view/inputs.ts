import type { Circuit } from '../../calc/index.ts';
import { textOfList } from '../chosen.ts';
import { positionOf } from './state.ts';

/** View fields of `InputToggles`: one button an input, its word and whether it is pressed. */
export function inputFields(circuit: Circuit, on: readonly string[]) {
  const flat: Record<string, string> = {};
  const inputs = Object.entries(circuit.inputs).map(([id, { label }]) => {
    const isOn = on.includes(id);
    const word = positionOf(circuit, id, isOn);
    flat[`word_${id}`] = word;
    flat[`pressed_${id}`] = String(isOn);
    return { id, label, word, pressed: String(isOn), toggle: `on:${id}` };
  });
  return { ...flat, inputs, nowOn: textOfList(on) };
}
