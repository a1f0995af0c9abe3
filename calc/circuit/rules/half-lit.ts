import { type Example, type FailingExample, figure, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** Below this share of its rated voltage a load counts as dead. */
const DEAD_BELOW = 0.05;

/** No load stands at a voltage at which it is neither on nor dead, unless that is asked for. */
export const halfLit: Rule = {
  id: 'half-lit',
  severity: 'stop',
  title: 'Load half on',
  why: 'It glows, hums or drains where the customer wants it dark; a lamp in series with another is the usual cause.',
  cure: 'Find the path through the other load and cut it with a diode or a contact.',
  source: 'common practice, no source',
  check(look) {
    return look.of('load').flatMap((load) => {
      const thresholdV = load.onAboveFraction * load.ratedV;
      const worst = look.worst((state, at) => {
        const volts = Math.abs(Number(state.loadV[load.id]));
        const asked = look.context.wanted?.[at]?.rangeV?.[load.id];
        return asked === undefined && volts > DEAD_BELOW * load.ratedV && volts < thresholdV ? volts : 0;
      }, 0);
      if (worst === undefined) return [];
      return [
        {
          parts: [load.id],
          states: worst.states,
          message:
            `${look.Name(load.id)} stands at ${figure(worst.value)} V ${look.stateWords(worst.state.inputs)}: ` +
            `too much for off, too little for on (${figure(thresholdV)} V).`,
        },
      ];
    });
  },
};

export const passes: Example[] = [
  {
    title: 'on or off',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b p sw
      load lamp p 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'a lamp fed through another',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b p sw
      load lamp p 0 13.5 6
      load pilot b p 13.5 20`),
    messages: ['Load lamp stands at 3.18 V with everything off: too much for off, too little for on (6.75 V).'],
  },
];
