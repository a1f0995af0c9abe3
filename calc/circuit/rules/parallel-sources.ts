import type { Element, Node, Solution } from '../model.ts';
import type { Draft, Example, FailingExample, Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C11: no state joins two sources unless both are meant to be joined. */
export const parallelSources: Rule = {
  id: 'parallel-sources',
  neutralId: 'C11',
  severity: 'stop',
  title: 'Two sources joined',
  why: 'Unequal batteries drive a large current through whatever joins them.',
  cure: 'Keep them apart with a diode or a changeover contact, or mark both as meant to run in parallel.',
  source: 'common practice, no source',
  check(look) {
    const sources = look.of('source');
    if (sources.length < 2) return [];
    const drafts = new Map<string, Draft & { states: Solution['inputs'][] }>();
    for (const state of look.states) {
      const joined = joinedIn(look.netlist.elements, state);
      for (const [i, one] of sources.entries()) {
        for (const two of sources.slice(i + 1)) {
          if ((one.parallelOk && two.parallelOk) || one.p === one.n || joined(one.p) !== joined(two.p)) continue;
          const key = `${one.id} ${two.id}`;
          const known = drafts.get(key);
          if (known) known.states.push(state.inputs);
          else {
            drafts.set(key, {
              parts: [one.id, two.id],
              states: [state.inputs],
              message: `${look.Name(one.id)} and ${look.name(two.id)} are joined ${look.stateWords(state.inputs)}.`,
            });
          }
        }
      }
    }
    return [...drafts.values()];
  },
};

/** Which nodes are one piece of copper in a state: over wires, fuses, joints and closed contacts. */
function joinedIn(elements: readonly Element[], state: Solution): (node: Node) => Node {
  const parent = new Map<Node, Node>();
  const root = (node: Node): Node => {
    let at = node;
    for (let up = parent.get(at); up !== undefined; up = parent.get(at)) at = up;
    return at;
  };
  const join = (a: Node, b: Node | null): void => {
    if (b === null) return;
    const [from, to] = [root(a), root(b)];
    if (from !== to) parent.set(from, to);
  };
  for (const element of elements) {
    if (element.kind === 'wire' || element.kind === 'fuse') join(element.a, element.b);
    else if (element.kind === 'resistor' && element.joint) join(element.a, element.b);
    else if (
      element.kind === 'switch' &&
      (element.welded || (state.inputs[element.input] ?? false) !== element.inverted)
    ) {
      join(element.a, element.b);
    } else if (element.kind === 'relay') {
      const energised = state.energised[element.id];
      if (energised === true) join(element.com, element.no);
      if (energised === false) join(element.com, element.nc);
    }
  }
  return root;
}

export const passes: Example[] = [
  {
    title: 'a split charge between two batteries that may be joined',
    netlist: sketch(`
      source main b 0 14.2 0.01 parallelOk
      switch run b d run
      relay k d 0 b x - 60
      source aux x 0 12.4 0.03 chargeable parallelOk
      load fridge x 0 13.5 3`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'two switches join the batteries',
    netlist: sketch(`
      source bat b 0 12.6
      fuse f1 b b1 3
      switch float b1 a float
      source aux x 0 12.9
      fuse f2 x x1 3
      switch hand x1 a hand
      load alarm a 0 12 60`),
    messages: ['Source bat and source aux are joined with float on and hand on.'],
  },
];
