/** Reads a netlist into branches and numbered nodes, refusing what cannot be meant. */
import { type Armature, type Branch, kindOf } from './elements/index.ts';
import { CHASSIS, type Element, type Netlist, type Node } from './model.ts';
import { perObject } from './per-object.ts';
import { layOut, sameWiring, type Wiring } from './wiring.ts';

export interface Compiled {
  branches: Branch[];
  armatures: Armature[];
  loads: { id: string; branch: number; onFromV: number; wanted: boolean }[];
  wiring: Wiring;
  /** Number of a branch by id; throws for an unknown one. */
  branchOf(id: string): number;
  /** The same, undefined for an unknown one. */
  numberOf(id: string): number | undefined;
  /** Place of a node in `nodes`, -1 for the chassis; throws for an unknown one. */
  placeOf(node: Node): number;
}

/** The first few of many names, for a message. */
export function list(names: readonly string[]): string {
  if (names.length === 0) return 'none';
  return names.length > 12 ? `${names.slice(0, 12).join(', ')} … (${names.length})` : names.join(', ');
}

/** What one element brings. */
interface Read {
  branches: readonly Branch[];
  /** Its nodes but the chassis. */
  nodes: readonly Node[];
  armature: Armature | undefined;
  onFromV: number | undefined;
}
/** Checks an element and reads it, once: sizing puts a few others into a netlist and leaves the rest. */
const readElement = perObject((element: Element): Read => {
  const kind = kindOf(element);
  kind.check(element);
  const nodes: Node[] = [];
  for (const [name, node] of Object.entries(kind.terminals(element))) {
    if (typeof node !== 'string' || node === '') {
      throw new TypeError(`${element.id}: unexpected node ${String(node)} at terminal ${name}, expected a name`);
    }
    if (node !== CHASSIS) nodes.push(node);
  }
  return {
    branches: kind.branches(element),
    nodes,
    armature: kind.armature?.(element),
    onFromV: kind.onFromV?.(element),
  };
});

/** `like` is a netlist compiled before: where it is wired alike, what hangs on the wiring is taken over. */
export function compile(netlist: Netlist, like?: Netlist): Compiled {
  const branches: Branch[] = [];
  const armatures: Armature[] = [];
  const index = new Map<string, number>();
  const onFromV = new Map<string, number>();
  const nodeNames = new Set<Node>();
  for (const element of netlist.elements) {
    const read = readElement(element);
    for (const node of read.nodes) nodeNames.add(node);
    for (const branch of read.branches) {
      if (index.has(branch.id)) throw new RangeError(`${netlist.id}: two elements are called ${branch.id}`);
      index.set(branch.id, branches.length);
      branches.push(branch);
    }
    if (read.armature !== undefined) armatures.push(read.armature);
    if (read.onFromV !== undefined) onFromV.set(element.id, read.onFromV);
  }
  const known = like === undefined ? undefined : compiledOf.get(like);
  const isKnown =
    known !== undefined &&
    known.nodeNames.size === nodeNames.size &&
    known.onFromV.size === onFromV.size &&
    [...onFromV.keys()].every((id) => known.onFromV.has(id)) &&
    sameWiring(branches, known.compiled.branches);
  if (!isKnown) refuseIdealLoops(branches);
  const wiring = isKnown ? known.compiled.wiring : layOut(branches, nodeNames, alone(branches, onFromV));
  const wanted = new Set(netlist.loads);
  for (const id of wanted) {
    if (!onFromV.has(id))
      throw new RangeError(`${netlist.id}: unexpected load "${id}", expected one of ${list([...onFromV.keys()])}`);
  }
  const compiled: Compiled = {
    branches,
    armatures,
    loads: [...onFromV].map(([id, volts]) => ({ id, branch: index.get(id)!, onFromV: volts, wanted: wanted.has(id) })),
    wiring,
    numberOf: (id) => index.get(id),
    branchOf(id) {
      const found = index.get(id);
      if (found === undefined) {
        throw new RangeError(`${netlist.id}: unexpected element "${id}", expected one of ${list([...index.keys()])}`);
      }
      return found;
    },
    placeOf(node) {
      if (node === CHASSIS) return -1;
      const found = wiring.place.get(node);
      if (found === undefined) {
        throw new RangeError(`${netlist.id}: unexpected node "${node}", expected one of ${list([...nodeNames])}`);
      }
      return found;
    },
  };
  compiledOf.set(netlist, { compiled, nodeNames, onFromV });
  return compiled;
}

interface Kept {
  compiled: Compiled;
  nodeNames: ReadonlySet<Node>;
  onFromV: ReadonlyMap<string, number>;
}
const compiledOf = new WeakMap<Netlist, Kept>();

/** A load that may carry nothing at a voltage must have that voltage at hand. */
function alone(branches: readonly Branch[], onFromV: ReadonlyMap<string, number>): Set<number> {
  const found = new Set<number>();
  for (const [k, branch] of branches.entries()) {
    if (branch.chordS !== undefined || (branch.fromV !== undefined && onFromV.has(branch.id))) found.add(k);
  }
  return found;
}

/** Voltages without resistance that close on themselves have no answer, or any. */
function refuseIdealLoops(branches: readonly Branch[]): void {
  const ideal = branches.filter(
    (branch) => branch.ohm === 0 && branch.closedBy === undefined && branch.fromV === undefined,
  );
  const joined = new Map<Node, { to: Node; by: string }[]>();
  // Plain joints first, so that what closes a loop is always a source.
  for (const branch of [...ideal].sort((x, y) => Number(x.emfV !== undefined) - Number(y.emfV !== undefined))) {
    const { a, b, id } = branch;
    if (branch.emfV !== undefined) {
      const way = wayBetween(joined, a, b);
      if (way !== undefined) {
        throw new RangeError(
          `a loop of ideal sources: ${[id, ...way].join(', ')}: give each source its internal resistance`,
        );
      }
    }
    joined.set(a, [...(joined.get(a) ?? []), { to: b, by: id }]);
    joined.set(b, [...(joined.get(b) ?? []), { to: a, by: id }]);
  }
}

function wayBetween(joined: Map<Node, { to: Node; by: string }[]>, from: Node, to: Node): string[] | undefined {
  const cameBy = new Map<Node, { from: Node; by: string } | undefined>([[from, undefined]]);
  const queue = [from];
  for (const node of queue) {
    if (node === to) {
      const way: string[] = [];
      for (let step = cameBy.get(node); step !== undefined; step = cameBy.get(step.from)) way.push(step.by);
      return way;
    }
    for (const next of joined.get(node) ?? []) {
      if (cameBy.has(next.to)) continue;
      cameBy.set(next.to, { from: node, by: next.by });
      queue.push(next.to);
    }
  }
  return undefined;
}
