import type { Element } from '../model.ts';
import { sourceStarts } from '../paths.ts';
import { type Draft, type Example, type FailingExample, type Look, list, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C12: the two throws of a changeover are not fed from different sources. */
export const parallelThrows: Rule = {
  id: 'parallel-throws',
  neutralId: 'C12',
  severity: 'stop',
  title: 'Two throws fed from different sources',
  why: 'An arc or a weld joins the two sources for a moment or for good.',
  cure: 'Feed both throws from one battery, or put a second relay between them that breaks before the other makes.',
  source: 'common practice, no source',
  check(look) {
    if (look.of('source').length < 2) return [];
    return look.of('relay').flatMap((relay): Draft[] => {
      if (relay.no === null || relay.nc === null) return [];
      const [made, rest] = [sourcesAt(look, relay, relay.no), sourcesAt(look, relay, relay.nc)];
      const different = made.filter((id) => !rest.includes(id)).length + rest.filter((id) => !made.includes(id)).length;
      const all = [...new Set([...made, ...rest])];
      if (made.length === 0 || rest.length === 0 || different === 0) return [];
      const names = (ids: string[]) => list(ids.map((id) => look.name(id)));
      return [
        {
          parts: [relay.id, ...all],
          message:
            `Relay ${relay.id} changes over between ${names(made)} at 87 and ${names(rest)} at 87a; ` +
            'a contact that bridges joins them.',
        },
      ];
    });
  },
};

/** Sources that reach a throw over some combination, but not through this relay. */
function sourcesAt(look: Look, relay: Element, node: string): string[] {
  const found = look.paths.search({
    starts: sourceStarts(look.netlist),
    through: (edge) => edge.element !== relay,
    ends: look.returns,
    by: 'ohm',
  });
  return [...new Set((found.get(node) ?? []).map((path) => path.start))].sort();
}

export const passes: Example[] = [
  {
    title: 'both throws on one battery, another battery elsewhere',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b k87 5
      fuse f2 b k87a 5
      switch dash k87 c sw
      relay k c 0 k30 k87 k87a 90
      load lamp k30 0 13.5 6
      source aux x 0 12.6
      load fridge x 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'one throw on each battery',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b k87a 5
      source aux x 0 12.6
      fuse f2 x k87 5
      switch dash k87 c sw
      relay k c 0 k30 k87 k87a 90
      load lamp k30 0 13.5 6`),
    messages: [
      'Relay k changes over between source aux at 87 and source bat at 87a; a contact that bridges joins them.',
    ],
  },
];
