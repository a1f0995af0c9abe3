import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C13: no fuse carries more than its rating in a settled state. */
export const fuseOverload: Rule = {
  id: 'fuse-overload',
  neutralId: 'C13',
  severity: 'stop',
  title: 'Fuse carries more than its rating',
  why: 'It blows in normal use.',
  cure: 'Split the load over two fuses, or fit a larger fuse with wire that allows it.',
  source: 'common practice, no source',
  check(look) {
    return look.of('fuse').flatMap((fuse) => {
      const worst = look.worstCurrent(fuse.id, fuse.ratingA * (1 + 1e-9));
      if (worst === undefined) return [];
      return [
        {
          parts: [fuse.id],
          states: worst.states,
          message:
            `${look.Name(fuse.id)} carries ${figure(worst.value)} A ${look.stateWords(worst.state.inputs)}; ` +
            `it is rated ${figure(fuse.ratingA)} A.`,
        },
      ];
    });
  },
};

export const passes: Example[] = [
  {
    title: '2.3 A in a 3 A fuse',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b p 3
      load lamp p 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'two lamps on a 3 A fuse',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b p 3
      switch dash p q sw
      load lamp p 0 13.5 6
      load lamp2 q 0 13.5 6`),
    messages: ['Fuse f1 carries 4.54 A with sw on; it is rated 3 A.'],
  },
];
