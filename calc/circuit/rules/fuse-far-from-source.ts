import { exampleCircuit } from './example-circuit.ts';
import { type Example, type FailingExample, figure, type Rule } from './rule.ts';

const WITHIN_M = 0.2;

/** The first fuse sits close to its source; beyond the stub of unfused-source it is that rule's matter. */
export const fuseFarFromSource: Rule = {
  id: 'fuse-far-from-source',
  severity: 'warn',
  title: 'Fuse too far from its source',
  why: 'The stretch before the fuse is unprotected.',
  cure: 'Move the fuse to within 200 mm of the source, or sleeve the stretch and sign it off with the reason.',
  source: 'common practice, no source',
  check(look) {
    if (look.written === undefined) return [];
    const stubM = look.context.unfusedStubM;
    return look.unfused().flatMap(({ source, wire, lengthM }) => {
      if (lengthM <= WITHIN_M + 1e-9 || lengthM > stubM + 1e-9) return [];
      return [
        {
          parts: [source, wire],
          message: `${figure(lengthM * 1000)} mm of wire from ${look.name(source)} to the end of ${look.name(wire)} lie before the first fuse.`,
        },
      ];
    });
  },
};

export const passes: Example[] = [{ title: '150 mm', circuit: exampleCircuit() }];

export const fails: FailingExample[] = [
  {
    title: '280 mm',
    circuit: exampleCircuit({ wires: { W1: { from: 'BAT.+', to: 'F1.1', lengthM: 0.28, areaMm2: 2.5 } } }),
    messages: ['280 mm of wire from battery BAT to the end of wire W1 lie before the first fuse.'],
  },
];
