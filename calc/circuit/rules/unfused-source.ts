import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C02: only a stub of wire may be reached from a source without a fuse. */
export const unfusedSource: Rule = {
  id: 'unfused-source',
  neutralId: 'C02',
  severity: 'stop',
  title: 'A source with no fuse near it',
  why: 'Current comes from every source, not only the one you thought of; a short here is fed by the whole battery.',
  cure: 'Put a fuse at the source end. A link between two sources needs one at each end.',
  source: 'common practice, no source',
  check(look) {
    const stubM = look.context.unfusedStubM;
    return look.unfused().flatMap(({ source, wire, lengthM }) => {
      if (lengthM <= stubM + 1e-9) return [];
      return [
        {
          parts: [source, wire],
          message:
            `${look.Name(source)} reaches the end of ${look.name(wire)} over ${figure(lengthM)} m of wire ` +
            `without a fuse; ${figure(stubM)} m is the most.`,
        },
      ];
    });
  },
};

export const passes: Example[] = [
  {
    title: 'short stubs to two fuses',
    netlist: sketch(`
      source bat b 0 13.8
      wire w1 b b1 4 0.2 30
      fuse f1 b1 p 10
      wire w2 b b2 4 0.3 30
      fuse f2 b2 p2 10
      load lamp p 0 13.5 6
      load radio p2 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'the second battery is joined without a fuse',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b b2 30
      wire w1 b2 k30 6 2 40
      switch run b2 d sw
      relay k d 0 k30 k87 - 90
      wire w2 k87 x 6 1.5 40
      source aux x 0 12.6 0.02 chargeable parallelOk
      load lamp x 0 13.5 6`),
    messages: [
      'Source aux reaches the end of wire w1 over 3.5 m of wire without a fuse; 0.3 m is the most.',
      'Source aux reaches the end of wire w2 over 1.5 m of wire without a fuse; 0.3 m is the most.',
    ],
  },
];
