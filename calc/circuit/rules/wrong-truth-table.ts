import type { Solution } from '../model.ts';
import { type Draft, type Example, type FailingExample, figure, type Look, type Rule, type Wanted } from './rule.ts';
import { sketch } from './sketch.ts';

interface Difference {
  state: Solution;
  /** "is off, wanted on". */
  words: string;
}

/** C07: every load is as the customer wants it, in every state and every step. */
export const wrongTruthTable: Rule = {
  id: 'wrong-truth-table',
  neutralId: 'C07',
  severity: 'stop',
  title: 'Not what the customer asked for',
  why: 'The customer gets something else than was agreed.',
  cure: 'Change the wiring, or agree the intent anew and write it down.',
  source: 'common practice, no source',
  check(look) {
    return look.netlist.loads.flatMap((load): Draft[] => {
      const differences = look.states.flatMap((state, at) => {
        const words = difference(state, look.context.wanted?.[at], load);
        return words === undefined ? [] : [{ state, words }];
      });
      const first = differences[0];
      return first === undefined ? [] : [draft(look, load, first, differences)];
    });
  },
};

function draft(look: Look, load: string, first: Difference, all: Difference[]): Draft {
  const more = new Set(all.map(({ state }) => look.stateWords(state.inputs))).size - 1;
  const also = more === 0 ? '' : ` ${more === 1 ? 'One other state differs' : `${more} other states differ`} too.`;
  return {
    parts: [load],
    states: all.map(({ state }) => state.inputs),
    message: `${look.Name(load)} ${first.words} ${look.stateWords(first.state.inputs)}.${also}`,
  };
}

/** How a load differs from what is wanted of it; a state that never rests is the matter of does-not-settle. */
function difference(state: Solution, wanted: Wanted | undefined, load: string): string | undefined {
  if (wanted === undefined || !Object.hasOwn(wanted.on, load)) return undefined;
  if (!state.settles && wanted.settles) return undefined;
  const words = (on: boolean | null | undefined) =>
    on === null || on === undefined ? 'coming and going' : on ? 'on' : 'off';
  const [is, should] = [state.on[load], wanted.on[load]];
  const volts = state.loadV[load];
  if (is !== should) {
    const at = typeof volts === 'number' ? ` (${figure(volts)} V)` : '';
    return `is ${words(is)}${at}, wanted ${words(should)},`;
  }
  const range = wanted.rangeV?.[load];
  if (range === undefined || typeof volts !== 'number') return undefined;
  if (volts >= range[0] && volts <= range[1]) return undefined;
  return `stands at ${figure(volts)} V, wanted ${figure(range[0])} to ${figure(range[1])} V,`;
}

export const passes: Example[] = [
  {
    title: 'on with the switch, as asked',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b p sw
      load lamp p 0 13.5 6`),
    wants: (on) => ({ lamp: on['sw'] === true }),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'the rest contact in place of the make contact',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw
      relay k c 0 b - p 90
      load lamp p 0 13.5 6`),
    wants: (on) => ({ lamp: on['sw'] === true }),
    messages: ['Load lamp is on (13.8 V), wanted off, with everything off. One other state differs too.'],
  },
];
