import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { shortCurrents } from './short-currents.ts';
import { sketch } from './sketch.ts';

const LEAST_TIMES = 2;

/** C16: a chassis short on any wire behind a fuse drives at least twice the fuse's rating. */
export const shortKeepsBurning: Rule = {
  id: 'short-keeps-burning',
  neutralId: 'C16',
  severity: 'stop',
  title: 'A short would not open the fuse',
  why: 'The wire heats and the fuse stays whole.',
  cure: 'Thicker wire, a shorter run or a smaller fuse.',
  source: 'common practice, no source',
  check(look) {
    return shortCurrents(look)
      .filter((short) => short.farA < LEAST_TIMES * short.ratingA)
      .map((short) => ({
        parts: [short.fuse, short.wire],
        message:
          `A short at the far end of ${look.name(short.wire)} draws ${figure(short.farA)} A, ` +
          `${figure(short.farA / short.ratingA)} times ${look.name(short.fuse)} (${figure(short.ratingA)} A); ` +
          `it takes ${LEAST_TIMES} times to open it.`,
      }));
  },
};

export const passes: Example[] = [
  {
    title: 'two metres behind 5 A',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b b2 5
      wire w1 b2 p 0.5 2 5
      load lamp p 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'sixty metres of thin wire behind 5 A',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b b2 5
      wire w1 b2 p 0.5 60 5
      load lamp p 0 13.5 6`),
    messages: [
      'A short at the far end of wire w1 draws 6.38 A, 1.28 times fuse f1 (5 A); it takes 2 times to open it.',
    ],
  },
];
