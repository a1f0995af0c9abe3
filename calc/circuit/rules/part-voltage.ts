import { type Draft, type Example, type FailingExample, figure, type Look, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** A 12 V part stands the 15 V of a charging vehicle; a share above its label that no part is made for begins here. */
const MOST_OVER_LABEL = 1.3;
/** A coil is labelled with about its pull-in voltage over this. From memory, no source. */
const PULL_IN_SHARE = 0.6;

/** No load and no coil gets more voltage than it is made for. */
export const partVoltage: Rule = {
  id: 'part-voltage',
  severity: 'stop',
  title: 'Part not made for this voltage',
  why: 'It overheats and burns.',
  cure: 'Use a part for this system voltage, or feed it through a converter with a fuse on each side.',
  source: 'common practice, no source',
  check: (look) => [...loads(look), ...coils(look)],
};

function loads(look: Look): Draft[] {
  return look.of('load').flatMap((load) => {
    const worst = look.worst((state) => Math.abs(Number(state.loadV[load.id])), MOST_OVER_LABEL * load.ratedV);
    if (worst === undefined) return [];
    return [
      {
        parts: [load.id],
        states: worst.states,
        message: `${look.Name(load.id)} is rated ${figure(load.ratedV)} V and gets ${figure(worst.value)} V ${look.stateWords(worst.state.inputs)}.`,
      },
    ];
  });
}

function coils(look: Look): Draft[] {
  return look.of('relay').flatMap((relay) => {
    // A sensing relay pulls in close to the voltage that it watches.
    const ratedV = relay.pullInV / (relay.sensing ? 1 : PULL_IN_SHARE);
    const worst = look.worstCurrent(relay.id, (MOST_OVER_LABEL * ratedV) / relay.coilOhm);
    if (worst === undefined) return [];
    return [
      {
        parts: [relay.id],
        states: worst.states,
        message:
          `The coil of ${look.name(relay.id)} pulls in at ${figure(relay.pullInV)} V, so it is made for about ` +
          `${figure(ratedV)} V, and gets ${figure(worst.value * relay.coilOhm)} V ${look.stateWords(worst.state.inputs)}.`,
      },
    ];
  });
}

export const passes: Example[] = [
  {
    title: '12 V parts on a charging 12 V vehicle',
    netlist: sketch(`
      source bat b 0 14.4
      switch dash b c sw
      relay k c 0 b p - 90
      load lamp p 0 12 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: '12 V parts on 24 V',
    netlist: sketch(`
      source bat b 0 28.2
      switch dash b c sw
      relay k c 0 b p - 90
      load lamp p 0 12 6`),
    messages: [
      'Load lamp is rated 12 V and gets 28.1 V with sw on.',
      'The coil of relay k pulls in at 7.2 V, so it is made for about 12 V, and gets 28.1 V with sw on.',
    ],
  },
];
