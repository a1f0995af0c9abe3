import { currentOf } from '../report.ts';
import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** A relay with so narrow a gap is made to sense a voltage, and rests inside the gap on purpose. */
const SENSING_FROM = 0.6;

/** C14: no coil rests between its drop-out and its pull-in voltage. */
export const coilInBetween: Rule = {
  id: 'coil-in-between',
  neutralId: 'C14',
  severity: 'warn',
  title: 'Coil neither surely on nor surely off',
  why: 'Between drop-out and pull-in the relay stays as it was: its state hangs on history and temperature.',
  cure: 'Give the coil full voltage or none: shorten what lies in series with it, or cut the sneak that half feeds it.',
  source: 'common practice, no source',
  check(look) {
    return look.of('relay').flatMap((relay) => {
      if (relay.sensing || relay.dropOutV >= SENSING_FROM * relay.pullInV) return [];
      const voltsIn = (current: number | undefined) => Math.abs(current ?? 0) * relay.coilOhm;
      const worst = look.worst((state) => {
        const volts = voltsIn(currentOf(state, relay.id));
        return volts >= relay.dropOutV && volts < relay.pullInV ? volts : 0;
      }, 0);
      if (worst === undefined) return [];
      return [
        {
          parts: [relay.id],
          states: worst.states,
          message:
            `The coil of ${look.name(relay.id)} stands at ${figure(worst.value)} V ${look.stateWords(worst.state.inputs)}, ` +
            `between drop-out (${figure(relay.dropOutV)} V) and pull-in (${figure(relay.pullInV)} V).`,
        },
      ];
    });
  },
};

export const passes: Example[] = [
  {
    title: 'full voltage on the coil',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw
      relay k c 0 b p - 90
      load lamp p 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'a resistor eats half the voltage',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw
      resistor r c d 120
      relay k d 0 b p - 90
      load lamp p 0 13.5 6`),
    messages: ['The coil of relay k stands at 5.91 V with sw on, between drop-out (1.6 V) and pull-in (7.2 V).'],
  },
];
