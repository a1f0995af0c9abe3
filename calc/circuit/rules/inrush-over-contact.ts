import { numberOf } from '../quantities.ts';
import { behind, ratedContacts } from './contact-for-load.ts';
import { exampleCircuit, WITH_RELAY } from './example-circuit.ts';
import { type Draft, type Example, type FailingExample, figure, type Rule } from './rule.ts';

/** A make contact stands this multiple of its rating for the moment of closing. From memory, no source. */
const MAKING_MULTIPLE = 3;

/** No first current is more than a closing contact stands. */
export const inrushOverContact: Rule = {
  id: 'inrush-over-contact',
  severity: 'warn',
  title: 'First current too much for the contact',
  why: 'The contact bounces while it closes; the first current welds it.',
  cure: 'Use a relay for high inrush, switch the loads one after another, or fit a soft start.',
  source: 'common practice, no source',
  check(look) {
    const { written } = look;
    if (written === undefined) return [];
    const allA = Object.values(written.circuit.parts).reduce(
      (sum, part) => sum + numberOf(('inrushA' in part ? part.inrushA : undefined) ?? 0, written.values),
      0,
    );
    return ratedContacts(look).flatMap(({ id, maxA }): Draft[] => {
      // Most contacts would stand all loads at once.
      if (allA <= MAKING_MULTIPLE * maxA) return [];
      const worst = look.worst(
        (state) =>
          behind(look, state, id).reduce((sum, { part }) => sum + numberOf(part.inrushA ?? 0, written.values), 0),
        MAKING_MULTIPLE * maxA * (1 + 1e-9),
      );
      if (worst === undefined) return [];
      return [
        {
          parts: [id],
          states: worst.states,
          message:
            `${look.Contact(id)} is rated ${figure(maxA)} A and closes on ${figure(worst.value)} A ` +
            `${look.stateWords(worst.state.inputs)}; ${MAKING_MULTIPLE} times its rating is the most.`,
        },
      ];
    });
  },
};

const inverter = { kind: 'load', model: 'resistive', ratedV: 12, currentA: 4, inrushMs: 5 } as const;

export const passes: Example[] = [
  {
    title: '60 A on a 30 A relay',
    circuit: exampleCircuit(WITH_RELAY, {
      parts: { F1: { kind: 'fuse', form: 'C', ratingA: 10 }, L1: { ...inverter, inrushA: 60 } },
    }),
  },
];

export const fails: FailingExample[] = [
  {
    title: '120 A on a 30 A relay',
    circuit: exampleCircuit(WITH_RELAY, {
      parts: { F1: { kind: 'fuse', form: 'C', ratingA: 10 }, L1: { ...inverter, inrushA: 120 } },
    }),
    messages: [
      'Contact 87 of relay K1 is rated 30 A and closes on 120 A with master switch on; 3 times its rating is the most.',
    ],
  },
];
