import { exampleCircuit } from './example-circuit.ts';
import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { shortCurrents } from './short-currents.ts';

/** Below twice the rating it is the matter of short-keeps-burning. */
const FROM = 2;
const LEAST_TIMES = 5;

/** A short at the far end drives at least five times the fuse, so that it opens at once. */
export const weakShort: Rule = {
  id: 'weak-short',
  severity: 'warn',
  title: 'A short opens the fuse late',
  why: 'The wire heats for seconds before the fuse opens.',
  cure: 'Thicker wire, a shorter run or a smaller fuse.',
  source: 'common practice, no source',
  check(look) {
    if (look.written === undefined) return [];
    return shortCurrents(look).flatMap((short) => {
      const times = short.farA / short.ratingA;
      if (times < FROM || times >= LEAST_TIMES) return [];
      return [
        {
          parts: [short.fuse, short.wire],
          message:
            `A short at the far end of ${look.name(short.wire)} draws ${figure(short.farA)} A, ` +
            `${figure(times)} times ${look.name(short.fuse)} (${figure(short.ratingA)} A); ${LEAST_TIMES} times is wanted.`,
        },
      ];
    });
  },
};

export const passes: Example[] = [{ title: 'a short run', circuit: exampleCircuit() }];

export const fails: FailingExample[] = [
  {
    title: 'a long thin run behind 5 A',
    circuit: exampleCircuit({ wires: { W2: { from: 'F1.2', to: 'S1.1', lengthM: 12, areaMm2: 0.5 } } }),
    messages: [
      'A short at the far end of wire W2 draws 22.1 A, 4.43 times fuse F1 (5 A); 5 times is wanted.',
      'A short at the far end of wire W3 draws 21 A, 4.19 times fuse F1 (5 A); 5 times is wanted.',
    ],
  },
];
