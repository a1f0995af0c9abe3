import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** Difference between two batteries in series that a rounding could make [A]. */
const LEAST_A = 0.01;

/** Two batteries in series carry the same current: nothing is tapped between them. */
export const halfOfPair: Rule = {
  id: 'half-of-pair',
  severity: 'stop',
  title: 'Fed from half of a series pair',
  why: 'One battery starves and the other boils.',
  cure: 'Use a 24 to 12 V converter with a fuse on each side.',
  source: 'common practice, no source',
  check(look) {
    const sources = look.of('source');
    return sources.flatMap((lower) => {
      const upper = sources.find((each) => each !== lower && each.n === lower.p);
      if (upper === undefined) return [];
      const extra = (state: { currentA: Record<string, number> }) =>
        (state.currentA[lower.id] ?? 0) - (state.currentA[upper.id] ?? 0);
      const worst = look.worst((state) => Math.abs(extra(state)), LEAST_A);
      if (worst === undefined) return [];
      return [
        {
          parts: [lower.id, upper.id],
          states: worst.states,
          message:
            `${figure(worst.value)} A are taken between ${look.name(lower.id)} and ${look.name(upper.id)} ` +
            `${look.stateWords(worst.state.inputs)}.`,
        },
      ];
    });
  },
};

export const passes: Example[] = [
  {
    title: 'the lamp on the whole pair',
    netlist: sketch(`
      source low m 0 12.6
      source high b m 12.6
      switch dash b p sw
      load lamp p 0 24 12`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'a radio on the lower battery',
    netlist: sketch(`
      source low m 0 12.6
      source high b m 12.6
      switch dash b p sw
      load lamp p 0 24 12
      load radio m 0 12 12`),
    messages: ['1.05 A are taken between source low and source high with everything off.'],
  },
];
