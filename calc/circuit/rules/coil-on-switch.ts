import { exampleCircuit, WITH_RELAY } from './example-circuit.ts';
import { drives, isClamped } from './no-coil-suppression.ts';
import type { Example, FailingExample, Rule } from './rule.ts';

/** A coil on a plain switch has a clamp too. */
export const coilOnSwitch: Rule = {
  id: 'coil-on-switch',
  severity: 'warn',
  title: 'Coil with no clamp on a plain switch',
  why: 'Switch contacts burn, and the kick reaches other parts on the same feed.',
  cure: 'Fit a clamp, or sign it off with the reason why the switch and its neighbours can stand it.',
  source: 'common practice, no source',
  check(look) {
    if (look.written === undefined) return [];
    const outputs = look.of('switch').filter((each) => look.isOutput(each.input));
    return look.of('relay').flatMap((relay) => {
      // On an electronic output it is a stop: no-coil-suppression.
      if (isClamped(look, relay) || outputs.some((output) => drives(look, output, relay))) return [];
      return [
        { parts: [relay.id], message: `The coil of relay ${relay.id} has no diode or resistor straight across it.` },
      ];
    });
  },
};

export const passes: Example[] = [{ title: 'a relay with a diode built in', circuit: exampleCircuit(WITH_RELAY) }];

export const fails: FailingExample[] = [
  {
    title: 'a bare coil',
    circuit: exampleCircuit(WITH_RELAY, {
      parts: { K1: { kind: 'relay', form: 'make', coilOhm: 90, maxA: { make: 30 } } },
    }),
    messages: ['The coil of relay K1 has no diode or resistor straight across it.'],
  },
];
