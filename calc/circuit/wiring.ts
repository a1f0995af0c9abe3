/** What hangs on the wiring of a netlist alone: chains, order of elimination, places. The same for any sizes and lengths. */
import { type Chain, chainsOf } from './chains.ts';
import type { Branch } from './elements/index.ts';
import { type Plan, planElimination } from './matrix.ts';
import { CHASSIS, type Node } from './model.ts';

export interface Wiring {
  chains: readonly Chain[];
  /** Every node but the chassis: first the joints, by rank of elimination, then those inside chains. */
  nodes: readonly Node[];
  plan: Plan;
  /** Place of a node in `nodes`; the chassis has none. */
  place: ReadonlyMap<Node, number>;
  /** Chain of each branch, its place among the chain's links, and whether it lies along (1) or against (-1) it. */
  chainOf: Int32Array;
  linkOf: Int32Array;
  sign: Int8Array;
  /** Places of each chain's ends (-1 for the chassis), the slot of the pair, and the places of the nodes between. */
  from: Int32Array;
  to: Int32Array;
  pair: Int32Array;
  between: readonly Int32Array[];
}

/** Branches in `alone` stay chains of their own. */
export function layOut(branches: readonly Branch[], nodeNames: ReadonlySet<Node>, alone: ReadonlySet<number>): Wiring {
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

  const chainOf = new Int32Array(branches.length);
  const linkOf = new Int32Array(branches.length);
  const sign = new Int8Array(branches.length);
  for (const [c, { links }] of chains.entries()) {
    for (const [i, link] of links.entries()) {
      chainOf[link.branch] = c;
      linkOf[link.branch] = i;
      sign[link.branch] = link.sign;
    }
  }
  const placeOf = (node: Node): number => (node === CHASSIS ? -1 : place.get(node)!);
  const from = Int32Array.from(chains, (chain) => placeOf(chain.from));
  const to = Int32Array.from(chains, (chain) => placeOf(chain.to));
  const pair = Int32Array.from(from, (a, c) => (a >= 0 && to[c]! >= 0 && a !== to[c] ? plan.slot(a, to[c]!) : -1));
  const between = chains.map((chain) => Int32Array.from(chain.between, placeOf));
  return { chains, nodes, plan, place, chainOf, linkOf, sign, from, to, pair, between };
}

/** Whether branches lie between the same nodes in the same way as others, whatever their figures. */
export const sameWiring = (branches: readonly Branch[], others: readonly Branch[]): boolean =>
  branches.length === others.length &&
  branches.every((one, k) => {
    const other = others[k]!;
    return (
      one.id === other.id &&
      one.a === other.a &&
      one.b === other.b &&
      // a loop of ideal sources is looked for among those without resistance
      (one.ohm === 0) === (other.ohm === 0) &&
      (one.emfV === undefined) === (other.emfV === undefined) &&
      (one.fromV === undefined) === (other.fromV === undefined) &&
      (one.chordS === undefined) === (other.chordS === undefined) &&
      (one.closedBy === undefined) === (other.closedBy === undefined)
    );
  });
