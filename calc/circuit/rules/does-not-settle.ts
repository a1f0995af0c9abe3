import { type Example, type FailingExample, list, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C06: every state settles unless the intent says otherwise. */
export const doesNotSettle: Rule = {
  id: 'does-not-settle',
  neutralId: 'C06',
  severity: 'stop',
  title: 'A relay that never comes to rest',
  why: 'A relay that interrupts itself rattles until its contacts burn.',
  cure: 'Feed the coil from a point that the relay itself does not switch.',
  source: 'common practice, no source',
  check(look) {
    const meant = new Set(look.written?.circuit.intent.neverSettles ?? []);
    const restless = look.states.flatMap((state, at) => {
      if (state.settles || look.context.wanted?.[at]?.settles === false) return [];
      const relays = Object.keys(state.energised).filter((id) => state.energised[id] === null);
      return relays.every((id) => meant.has(id)) && relays.length > 0 ? [] : [{ state, relays }];
    });
    // The same relays rattle in several states: one finding with all of them.
    const groups = Map.groupBy(restless, ({ relays }) => relays.join(' '));
    return [...groups.values()].map((group) => {
      const { relays, state } = group[0]!;
      const reason = state.reason === undefined ? '.' : `: ${state.reason.replace(/^does not settle: /, '')}.`;
      return {
        parts: relays,
        states: group.map((each) => each.state.inputs),
        message: `Relay ${list(relays)} never comes to rest ${look.stateWords(state.inputs)}${reason}`,
      };
    });
  },
};

const buzzer = sketch(`
  source bat b 0 13.8
  fuse f1 b sa 3
  switch dash sa s sw
  relay k c 0 s - c 90`);

export const passes: Example[] = [
  {
    title: 'a coil fed ahead of its own contact',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw
      relay k c 0 b - p 90
      load lamp p 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'the coil behind its own rest contact',
    netlist: buzzer,
    messages: [
      'Relay k never comes to rest with sw on: k drops its own supply (coil at 13.8 V released, 0.0 V pulled in).',
    ],
  },
];
