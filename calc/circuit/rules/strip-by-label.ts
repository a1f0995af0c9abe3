import { exampleCircuit } from './example-circuit.ts';
import { type Example, type FailingExample, figure, type Rule } from './rule.ts';

/** An LED strip is entered as a strip: its current rises much faster than its voltage. */
export const stripByLabel: Rule = {
  id: 'strip-by-label',
  severity: 'stop',
  title: 'Strip entered with its label current',
  why: 'A strip with resistors draws 1.8 to 1.9 times its label current while the engine runs.',
  cure: 'Write model: strip, or constant-current where the strip has a regulator.',
  source: 'common practice, no source',
  check(look) {
    const { written } = look;
    if (written === undefined) return [];
    return look.of('load').flatMap((load) => {
      const part = written.circuit.parts[load.id];
      if (part?.kind !== 'strip' || part.model !== 'resistive' || written.highestV <= load.ratedV) return [];
      return [
        {
          parts: [load.id],
          message:
            `Strip ${load.id} is entered as a plain resistor for ${figure(load.ratedV)} V; ` +
            `this vehicle reaches ${figure(written.highestV)} V, where a strip draws far more.`,
        },
      ];
    });
  },
};

const strip = { kind: 'strip', ratedV: 12, currentA: 1.5 } as const;

export const passes: Example[] = [
  { title: 'entered as a strip', circuit: exampleCircuit({ parts: { L1: { ...strip, model: 'strip' } } }) },
];

export const fails: FailingExample[] = [
  {
    title: 'entered as a resistor',
    circuit: exampleCircuit({ parts: { L1: { ...strip, model: 'resistive' } } }),
    messages: [
      'Strip L1 is entered as a plain resistor for 12 V; this vehicle reaches 14.4 V, where a strip draws far more.',
    ],
  },
];
