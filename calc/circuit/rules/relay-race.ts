import { type Example, type FailingExample, list, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C17: relays that move one at a time, in any order, end in the same state. */
export const relayRace: Rule = {
  id: 'relay-race',
  neutralId: 'C17',
  severity: 'warn',
  title: 'Relays race each other',
  why: 'Which relay is quicker decides where the circuit ends: it works on the bench and fails in the cold.',
  cure: 'Let one relay feed the other, so that their order is fixed.',
  source: 'common practice, no source',
  check(look) {
    const groups = Map.groupBy(look.context.races ?? [], ({ relays }) => relays.join(' '));
    return [...groups.values()].map((group) => ({
      parts: group[0]!.relays,
      states: group.map(({ inputs }) => inputs),
      message: `Relays ${list(group[0]!.relays)} move together ${look.stateWords(group[0]!.inputs)}, and the quicker one decides how it ends.`,
    }));
  },
};

export const passes: Example[] = [
  {
    title: 'two relays that do not touch each other',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw
      relay k1 c 0 b p - 90
      relay k2 c 0 b q - 90
      load one p 0 13.5 6
      load two q 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'each relay cuts the other',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw
      relay k1 a 0 c p d 90
      relay k2 d 0 c q a 90
      load one p 0 13.5 6
      load two q 0 13.5 6`),
    messages: ['Relays k1 and k2 move together with sw on, and the quicker one decides how it ends.'],
  },
];
