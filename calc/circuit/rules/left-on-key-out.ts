import { exampleCircuit } from './example-circuit.ts';
import type { Example, FailingExample, Rule } from './rule.ts';

/** A load that can be on with the key out is meant to be. */
export const leftOnKeyOut: Rule = {
  id: 'left-on-key-out',
  severity: 'warn',
  title: 'Can be left on with the key out',
  why: 'Forgotten once, it flattens the battery.',
  cure: 'Feed it from a point that is live with the key only, or write under intent.keyOut why it may stay on.',
  source: 'common practice, no source',
  check(look) {
    const { written } = look;
    if (written === undefined) return [];
    const keys = look.netlist.inputs.filter((input) => input.kind === 'ignition').map((input) => input.id);
    const meant = written.circuit.intent.keyOut ?? {};
    return look.netlist.loads.flatMap((load) => {
      if (Object.hasOwn(meant, load)) return [];
      const out = look.states.filter((state) => state.on[load] === true && keys.every((key) => !state.inputs[key]));
      const first = out[0];
      if (first === undefined) return [];
      return [
        {
          parts: [load],
          states: out.map((state) => state.inputs),
          message: `${look.Name(load)} stays on with the key out ${look.stateWords(first.inputs)}.`.replace(
            'with the key out with',
            'with the key out and',
          ),
        },
      ];
    });
  },
};

export const passes: Example[] = [{ title: 'the intent says why', circuit: exampleCircuit() }];

export const fails: FailingExample[] = [
  {
    title: 'nobody thought of it',
    circuit: exampleCircuit({ intent: { says: 'A lamp.', loads: { L1: { when: 'master' } }, keyOut: {} } }),
    messages: ['Load L1 stays on with the key out and master switch on.'],
  },
];
