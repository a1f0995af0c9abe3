import { exampleCircuit } from './example-circuit.ts';
import { type Example, type FailingExample, figure, type Rule } from './rule.ts';

/** What one job may add to a parked vehicle's drain [mA]. Common practice, no source. */
const MOST_MA = 30;
const HOURS_A_WEEK = 168;

/** With everything off, next to nothing is drawn. */
export const standbyCurrent: Rule = {
  id: 'standby-current',
  severity: 'warn',
  title: 'Drains the battery with everything off',
  why: 'The costliest call-back: it will not start on Monday.',
  cure: 'Switch the feed with the key, or use a part that sleeps.',
  source: 'common practice, no source',
  check(look) {
    const standby = look.written?.standby;
    // A load that is on with everything off is another rule's matter, and draws what it draws.
    if (standby === undefined || standby.drawMa <= MOST_MA || standby.loadsOn.length > 0) return [];
    const drawing = Object.entries(look.written?.circuit.parts ?? {})
      .filter(([, part]) => 'standbyMa' in part && part.standbyMa !== undefined)
      .map(([id]) => id);
    const relays = look.of('relay').filter((relay) => standby.energised[relay.id] === true);
    return [
      {
        parts: [...drawing, ...relays.map((relay) => relay.id)],
        states: [standby.inputs],
        message:
          `${figure(standby.drawMa)} mA flow with everything off: ` +
          `${figure((standby.drawMa * HOURS_A_WEEK) / 1000)} Ah a week. ${MOST_MA} mA is the most for one job.`,
      },
    ];
  },
};

export const passes: Example[] = [
  {
    title: 'a receiver that takes 4 mA',
    circuit: exampleCircuit({
      parts: { L1: { kind: 'load', model: 'resistive', ratedV: 12, powerW: 20, standbyMa: 4 } },
    }),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'a box that never sleeps',
    circuit: exampleCircuit({
      parts: { L1: { kind: 'load', model: 'resistive', ratedV: 12, powerW: 20, standbyMa: 80 } },
    }),
    messages: ['80 mA flow with everything off: 13.4 Ah a week. 30 mA is the most for one job.'],
  },
];
