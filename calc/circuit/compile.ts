/** Reads a netlist into branches and numbered nodes, refusing what cannot be meant. */
import { type Chain, chainsOf } from './chains.ts';
import { type Armature, type Branch, kindOf } from './elements/index.ts';
import { type Plan, planElimination } from './matrix.ts';
import { CHASSIS, type Netlist, type Node } from './model.ts';

export interface Compiled {
  branches: Branch[];
  armatures: Armature[];
  loads: { id: string; branch: number; onFromV: number; wanted: boolean }[];
  chains: Chain[];
  /** Every node but the chassis: first the joints, by rank of elimination, then those inside chains. */
  nodes: Node[];
  plan: Plan;
  /** Number of a branch by id; throws for an unknown one. */
  branchOf(id: string): number;
  /** Place of a node in `nodes`, -1 for the chassis; throws for an unknown one. */
  placeOf(node: Node): number;
}

/** The first few of many names, for a message. */
export function list(names: readonly string[]): string {
  if (names.length === 0) return 'none';
  return names.length > 12 ? `${names.slice(0, 12).join(', ')} … (${names.length})` : names.join(', ');
}

export function compile(netlist: Netlist): Compiled {
  const branches: Branch[] = [];
  const armatures: Armature[] = [];
  const index = new Map<string, number>();
  const onFromV = new Map<string, number>();
  const nodeNames = new Set<Node>();
  for (const element of netlist.elements) {
    const kind = kindOf(element);
    kind.check(element);
    for (const [name, node] of Object.entries(kind.terminals(element))) {
      if (typeof node !== 'string' || node === '') {
        throw new TypeError(`${element.id}: unexpected node ${String(node)} at terminal ${name}, expected a name`);
      }
      if (node !== CHASSIS) nodeNames.add(node);
    }
    for (const branch of kind.branches(element)) {
      if (index.has(branch.id)) throw new RangeError(`${netlist.id}: two elements are called ${branch.id}`);
      index.set(branch.id, branches.length);
      branches.push(branch);
    }
    const armature = kind.armature?.(element);
    if (armature !== undefined) armatures.push(armature);
    const threshold = kind.onFromV?.(element);
    if (threshold !== undefined) onFromV.set(element.id, threshold);
  }
  refuseIdealLoops(branches);

  // A load that may carry nothing at a voltage must have that voltage at hand.
  const alone = new Set<number>();
  for (const [k, branch] of branches.entries()) {
    if (branch.chordS !== undefined || (branch.fromV !== undefined && onFromV.has(branch.id))) alone.add(k);
  }
  const chains = chainsOf(branches, alone);
  const inside = new Set(chains.flatMap((chain) => chain.between));
  const joints = [...nodeNames].filter((node) => !inside.has(node));
  const joint = new Map(joints.map((node, number) => [node, number]));
  const edges: [number, number][] = [];
  const steady = new Uint8Array(joints.length).fill(1);
  for (const { from, to, links } of chains) {
    const [a, b] = [joint.get(from), joint.get(to)];
    if (a !== undefined && b !== undefined) edges.push([a, b]);
    const changes = links.some(({ branch }) => {
      const { closedBy, fromV, chordS } = branches[branch]!;
      return closedBy !== undefined || fromV !== undefined || chordS !== undefined;
    });
    if (changes) for (const end of [a, b]) if (end !== undefined) steady[end] = 0;
  }
  const plan = planElimination(joints.length, edges, steady);
  const nodes: Node[] = new Array(joints.length);
  for (const [number, node] of joints.entries()) nodes[plan.rank[number]!] = node;
  nodes.push(...inside);
  const place = new Map(nodes.map((node, index) => [node, index]));

  const wanted = new Set(netlist.loads);
  for (const id of wanted) {
    if (!onFromV.has(id))
      throw new RangeError(`${netlist.id}: unexpected load "${id}", expected one of ${list([...onFromV.keys()])}`);
  }
  return {
    branches,
    armatures,
    loads: [...onFromV].map(([id, volts]) => ({ id, branch: index.get(id)!, onFromV: volts, wanted: wanted.has(id) })),
    chains,
    nodes,
    plan,
    branchOf(id) {
      const found = index.get(id);
      if (found === undefined) {
        throw new RangeError(`${netlist.id}: unexpected element "${id}", expected one of ${list([...index.keys()])}`);
      }
      return found;
    },
    placeOf(node) {
      if (node === CHASSIS) return -1;
      const found = place.get(node);
      if (found === undefined) {
        throw new RangeError(`${netlist.id}: unexpected node "${node}", expected one of ${list([...nodeNames])}`);
      }
      return found;
    },
  };
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
