import { exampleCircuit, WITH_RELAY } from './example-circuit.ts';
import type { Example, FailingExample, Rule } from './rule.ts';

/** The throw of a changeover that nothing is wired to is capped. */
export const unusedThrow: Rule = {
  id: 'unused-throw',
  severity: 'note',
  title: 'Unused throw is not capped',
  why: 'It is live whenever its contact is made, and shorts on whatever touches it.',
  cure: 'Cap it and write capped: true, or use a relay without that throw.',
  source: 'common practice, no source',
  check(look) {
    const { written } = look;
    if (written === undefined) return [];
    return look.of('relay').flatMap((relay) => {
      const part = written.circuit.parts[relay.id];
      if (part?.kind !== 'relay' || part.form !== 'changeover' || part.capped) return [];
      if (relay.nc !== null && relay.no !== null) return [];
      const [terminal, when] = relay.nc === null ? ['87a', 'at rest'] : ['87', 'energised'];
      return [
        {
          parts: [relay.id],
          message: `Cap ${terminal} of relay ${relay.id}. It is joined to 30 whenever the coil is ${when}.`,
        },
      ];
    });
  },
};

const changeover = {
  kind: 'relay',
  form: 'changeover',
  coilOhm: 90,
  maxA: { make: 30, break: 20 },
  suppression: 'diode',
} as const;

export const passes: Example[] = [
  { title: 'capped', circuit: exampleCircuit(WITH_RELAY, { parts: { K1: { ...changeover, capped: true } } }) },
  { title: 'a make relay has no such throw', circuit: exampleCircuit(WITH_RELAY) },
];

export const fails: FailingExample[] = [
  {
    title: 'a changeover used as a make contact',
    circuit: exampleCircuit(WITH_RELAY, { parts: { K1: changeover } }),
    messages: ['Cap 87a of relay K1. It is joined to 30 whenever the coil is at rest.'],
  },
];
