import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C01: with every fuse up to the wire's limit taken out, no source may reach the wire. */
export const fuseOverWire: Rule = {
  id: 'fuse-over-wire',
  neutralId: 'C01',
  severity: 'stop',
  title: 'Fuse larger than the wire behind it',
  why: 'The wire becomes the fuse and sets fire to what it touches.',
  cure: 'Fit a smaller fuse, a thicker wire, or a fuse of its own where the wire gets thin.',
  source: 'common practice, no source; the limit per wire is that of wireLimit',
  check(look) {
    return look.of('wire').flatMap((wire) => {
      const ways = [wire.a, wire.b].flatMap((node) => (look.isReturn(node) ? [] : (look.fed.get(node) ?? [])));
      // A wire that a source reaches with no fuse at all is the matter of unfused-source.
      if (ways.some((way) => way.lastFuse === undefined)) return [];
      const tooLarge = new Map<string, number>();
      for (const way of ways) if (way.smallestA > wire.limitA) tooLarge.set(way.lastFuse!, way.smallestA);
      return [...tooLarge.keys()].sort().map((fuse) => {
        const rating = look.ratingA(fuse);
        const limit = figure(wire.limitA);
        const fits = look.largestFuseA(wire.limitA);
        return {
          parts: [fuse, wire.id],
          message:
            `${look.Name(fuse)} (${figure(rating)} A) is larger than ${look.name(wire.id)} ` +
            `(${figure(wire.areaMm2)} mm², at most ${limit} A) allows.`,
          cure:
            fits === undefined
              ? `Fit a thicker wire: no fuse is small enough for ${limit} A.`
              : `Fit a fuse of at most ${figure(fits)} A, or a wire that allows ${figure(rating)} A, or a fuse of its own where the wire gets thin.`,
        };
      });
    });
  },
};

export const passes: Example[] = [
  {
    title: 'the branch fuse protects the thin wire behind the large one',
    netlist: sketch(`
      source bat b 0 13.8
      wire w1 b b1 4 0.2 30
      fuse f1 b1 b2 30
      wire w2 b2 b3 4 1 30
      fuse f2 b3 b4 5
      wire w3 b4 p 0.5 2 5
      load lamp p 0 13.5 6`),
  },
  {
    title: 'a short behind the lamp is not fed past the lamp',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b b2 10
      wire w2 b2 p 1.5 1 15
      load lamp p m 13.5 6
      wire w3 m 0 0.5 1 5`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'thin wire behind a relay contact',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b b2 15
      wire w2 b2 k30 1.5 1 15
      switch dash b2 k86 sw
      relay k k86 0 k30 k87 - 90
      wire w3 k87 p 0.5 2 5
      load lamp p 0 13.5 6`),
    messages: ['Fuse f1 (15 A) is larger than wire w3 (0.5 mm², at most 5 A) allows.'],
  },
  {
    title: 'two fuses reach the wire, one is too large',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b k87 10
      fuse f2 b k87a 5
      switch dash k87 k86 sw
      relay k k86 0 k30 k87 k87a 90
      wire w3 k30 p 0.75 2 7.5
      load lamp p 0 13.5 6`),
    messages: ['Fuse f1 (10 A) is larger than wire w3 (0.75 mm², at most 7.5 A) allows.'],
  },
];
