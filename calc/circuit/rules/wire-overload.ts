import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** No wire carries more than it may; on the return side no fuse ahead of it would say so. */
export const wireOverload: Rule = {
  id: 'wire-overload',
  severity: 'stop',
  title: 'Wire carries more than it may',
  why: 'Several fused branches share one return: each fuse is right and the common wire burns.',
  cure: 'Use thicker wire, or give each branch its own return.',
  source: 'common practice, no source; the limit per wire is that of wireLimit',
  check(look) {
    return look.of('wire').flatMap((wire) => {
      const worst = look.worstCurrent(wire.id, wire.limitA * (1 + 1e-9));
      if (worst === undefined) return [];
      return [
        {
          parts: [wire.id],
          states: worst.states,
          message:
            `${look.Name(wire.id)} (${figure(wire.areaMm2)} mm²) carries ${figure(worst.value)} A ` +
            `${look.stateWords(worst.state.inputs)}; it may carry ${figure(wire.limitA)} A.`,
        },
      ];
    });
  },
};

const twoBranches = (limitA: number) =>
  sketch(`
    source bat b 0 13.8
    fuse f1 b p 5
    fuse f2 b q 5
    load one p m 13.5 3.5
    load two q m 13.5 3.5
    wire w1 m 0 0.5 0.3 ${limitA}`);

export const passes: Example[] = [{ title: 'a return for both', netlist: twoBranches(10) }];

export const fails: FailingExample[] = [
  {
    title: 'two branches of 4 A on a return of 5 A',
    netlist: twoBranches(5),
    messages: ['Wire w1 (0.5 mm²) carries 7.76 A always; it may carry 5 A.'],
  },
];
