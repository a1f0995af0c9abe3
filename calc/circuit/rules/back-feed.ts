import type { Solution } from '../model.ts';
import { type Draft, type Example, type FailingExample, figure, type Look, list, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** Current that is taken for none [A]: leakage of a diode, rounding. */
const LEAST_A = 0.01;

/** C03: current flows the way it was drawn, in every state. */
export const backFeed: Rule = {
  id: 'back-feed',
  neutralId: 'C03',
  severity: 'stop',
  title: 'Current runs backwards',
  why: 'A path that nobody drew on purpose switches lamps and controllers on by themselves and damages outputs.',
  cure: 'Put a diode in the line that feeds back, or switch it with a relay of its own.',
  source: 'common practice, no source',
  check: (look) => [...intoSources(look), ...bothDirections(look)],
};

function intoSources(look: Look): Draft[] {
  return look
    .of('source')
    .filter((source) => !source.chargeable)
    .flatMap((source) => {
      if ((look.peaks.get(source.id)?.lowestA ?? 0) >= -LEAST_A) return [];
      const states = look.states.filter((state) => state.settles && (state.currentA[source.id] ?? 0) < -LEAST_A);
      const worst = extreme(states, (state) => -(state.currentA[source.id] ?? 0));
      if (worst === undefined) return [];
      const currentA = -(worst.currentA[source.id] ?? 0);
      return [
        {
          parts: [source.id],
          states: states.map((state) => state.inputs),
          message:
            `${figure(currentA)} A run backwards into ${look.name(source.id)} ${look.stateWords(worst.inputs)}; ` +
            'it is not meant to be charged.',
        },
      ];
    });
}

function bothDirections(look: Look): Draft[] {
  const drafts: Draft[] = [];
  for (const element of look.netlist.elements) {
    if (element.kind !== 'wire' && element.kind !== 'fuse' && element.kind !== 'load') continue;
    if ('bothWays' in element && element.bothWays) continue;
    const peak = look.peaks.get(element.id);
    if (peak === undefined || peak.highestA <= LEAST_A || peak.lowestA >= -LEAST_A) continue;
    const settled = look.states.filter((state) => state.settles);
    const forward = settled.filter((state) => (state.currentA[element.id] ?? 0) > LEAST_A);
    const backward = settled.filter((state) => (state.currentA[element.id] ?? 0) < -LEAST_A);
    // As drawn is forwards, unless only the forward states switch something on that nobody asked for.
    const isForwardSneak = unwanted(look, forward).length > 0 && unwanted(look, backward).length === 0;
    const [sneak, usual] = isForwardSneak ? [forward, backward] : [backward, forward];
    const most = (states: Solution[]) => Math.max(...states.map((state) => Math.abs(state.currentA[element.id]!)));
    const worst = extreme(sneak, (state) => Math.abs(state.currentA[element.id]!))!;
    drafts.push({
      parts: [element.id],
      states: sneak.map((state) => state.inputs),
      message:
        `${figure(Math.abs(worst.currentA[element.id]!))} A run backwards through ${look.name(element.id)} ` +
        `${look.stateWords(worst.inputs)}; otherwise up to ${figure(most(usual))} A run forwards.`,
      ...lit(look, sneak),
    });
  }
  return drafts;
}

/** Names what the sneak lights, where it lights something that nobody wants. */
function lit(look: Look, states: readonly Solution[]): { why?: string } {
  const loads = unwanted(look, states);
  const names = list(loads.map((load) => look.name(load)));
  return loads.length === 0 ? {} : { why: `It switches on ${names}, which nobody asked for there.` };
}

/** Loads that are on in one of the states and wanted off. */
function unwanted(look: Look, states: readonly Solution[]): string[] {
  const { wanted } = look.context;
  if (wanted === undefined) return [];
  return look.netlist.loads.filter((load) =>
    states.some((state) => state.on[load] === true && wanted[look.states.indexOf(state)]?.on[load] === false),
  );
}

function extreme(states: readonly Solution[], measure: (state: Solution) => number): Solution | undefined {
  return states.reduce<Solution | undefined>(
    (best, state) => (best === undefined || measure(state) > measure(best) ? state : best),
    undefined,
  );
}

export const passes: Example[] = [
  {
    title: 'a diode keeps the hand switch from lighting the alarm',
    netlist: sketch(`
      source bat b 0 12.6
      fuse f1 b b1 5
      switch float b1 a float
      switch hand b1 c hand
      diode d1 a c
      load alarm a 0 12 60
      load pump c 0 12 10`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'a lamp whose own switch hangs on another feed',
    netlist: sketch(`
      source bat b 0 13.8
      source aux x 0 12.4
      switch link b x link
      load lamp x 0 13.5 6`),
    messages: ['65.5 A run backwards into source aux with link on; it is not meant to be charged.'],
  },
  {
    title: 'a wire in place of the diode',
    netlist: sketch(`
      source bat b 0 12.6
      fuse f1 b b1 5
      switch float b1 a float
      switch hand b1 c hand
      wire d1x a c 1.5 0.1 15
      load alarm a 0 12 60
      load pump c 0 12 10`),
    wants: (on) => ({ alarm: on['float'] === true, pump: on['float'] === true || on['hand'] === true }),
    messages: ['0.209 A run backwards through wire d1x with hand on; otherwise up to 1.26 A run forwards.'],
  },
];
