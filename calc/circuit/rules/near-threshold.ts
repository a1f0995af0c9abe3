import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

const WITHIN = 0.1;

/** C15: no load lies within a tenth of the voltage at which it counts as on. */
export const nearThreshold: Rule = {
  id: 'near-threshold',
  neutralId: 'C15',
  severity: 'warn',
  title: 'Load neither surely on nor surely off',
  why: 'The truth table would hang on the tolerance of a part.',
  cure: 'Give the load clearly more or clearly less voltage.',
  source: 'common practice, no source',
  check(look) {
    return look.of('load').flatMap((load) => {
      const thresholdV = load.onAboveFraction * load.ratedV;
      const worst = look.worst((state) => {
        const volts = state.loadV[load.id];
        const away = typeof volts === 'number' ? Math.abs(Math.abs(volts) - thresholdV) / thresholdV : 1;
        return WITHIN - away;
      }, 0);
      if (worst === undefined) return [];
      const volts = worst.state.loadV[load.id];
      return [
        {
          parts: [load.id],
          states: worst.states,
          message:
            `${look.Name(load.id)} stands at ${figure(Math.abs(Number(volts)))} V ${look.stateWords(worst.state.inputs)}, ` +
            `close to the ${figure(thresholdV)} V at which it counts as on.`,
        },
      ];
    });
  },
};

export const passes: Example[] = [
  {
    title: 'full voltage or none',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b p sw
      load lamp p 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'two equal lamps in series',
    netlist: sketch(`
      source bat b 0 13.8
      load one b m 13.5 6
      load two m 0 13.5 6.2`),
    messages: [
      'Load one stands at 6.78 V always, close to the 6.75 V at which it counts as on.',
      'Load two stands at 7.01 V always, close to the 6.75 V at which it counts as on.',
    ],
  },
];
