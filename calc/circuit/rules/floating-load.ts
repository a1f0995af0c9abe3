import type { Element, Node } from '../model.ts';
import type { Draft, Example, FailingExample, Look, Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C08: no contact ends on nothing, and every load and coil can be reached from a source. */
export const floatingLoad: Rule = {
  id: 'floating-load',
  neutralId: 'C08',
  severity: 'stop',
  title: 'Nothing behind a terminal',
  why: 'A terminal with nothing behind it is a forgotten wire: the part can never work.',
  cure: 'Wire the terminal, or take it out of the circuit file if it is capped on purpose.',
  source: 'common practice, no source',
  check: (look) => [...looseContacts(look), ...unsupplied(look)],
};

function looseContacts(look: Look): Draft[] {
  const touches = new Map<Node, number>();
  for (const element of look.netlist.elements) {
    for (const node of nodesOf(element)) touches.set(node, (touches.get(node) ?? 0) + 1);
  }
  return look.of('relay').flatMap((relay) =>
    (['com', 'no', 'nc'] as const).flatMap((side): Draft[] => {
      const node = relay[side];
      if (node === null || look.isReturn(node) || touches.get(node) !== 1) return [];
      const id = `${relay.id}.${side}`;
      return [{ parts: [id], message: `${look.Contact(id)} is connected to nothing.` }];
    }),
  );
}

function unsupplied(look: Look): Draft[] {
  const supplied = look.reached();
  return consumers(look).flatMap(({ id, ends, what }): Draft[] =>
    ends.some((node) => supplied.has(node))
      ? []
      : [{ parts: [id], message: `No source reaches ${what}, whatever the switches and relays do.` }],
  );
}

/** Loads and coils with their two ends. */
export function consumers(look: Look): { id: string; ends: [Node, Node]; what: string }[] {
  return look.netlist.elements.flatMap((element): { id: string; ends: [Node, Node]; what: string }[] => {
    if (element.kind === 'load') return [{ id: element.id, ends: [element.a, element.b], what: look.name(element.id) }];
    if (element.kind !== 'relay') return [];
    return [{ id: element.id, ends: [element.coilP, element.coilN], what: `the coil of ${look.name(element.id)}` }];
  });
}

function nodesOf(element: Element): Node[] {
  switch (element.kind) {
    case 'source':
      return [element.p, element.n];
    case 'diode':
      return [element.a, element.k];
    case 'relay':
      return [element.coilP, element.coilN, element.com, element.no, element.nc].filter((node) => node !== null);
    default:
      return [element.a, element.b];
  }
}

export const passes: Example[] = [
  {
    title: 'a make contact with its throw wired',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw
      relay k c 0 b p - 90
      load lamp p 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'a throw that ends nowhere, and a lamp whose feed was forgotten',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw
      relay k c 0 b p x 90
      load lamp p 0 13.5 6
      load other q 0 13.5 6`),
    messages: [
      'Contact 87a of relay k is connected to nothing.',
      'No source reaches load other, whatever the switches and relays do.',
    ],
  },
];
