/**
 * Parts in series share one current, so the solver counts a run of them as one: wire, fuse, contact, wire, lamp, wire
 * between two joints is a single resistance. What stands between is worked out afterwards, where somebody asks.
 */
import type { Branch } from './elements/index.ts';
import { CHASSIS, type Node } from './model.ts';

export interface Link {
  branch: number;
  /** 1 where the branch lies a to b along the chain, -1 where it lies b to a. */
  sign: 1 | -1;
}

export interface Chain {
  from: Node;
  to: Node;
  links: Link[];
  /** The nodes between the links. */
  between: Node[];
  /** A diode is among them; it then conducts along the chain, not against it. */
  threshold: boolean;
}

/** Join branches at every node where just two of them meet. Branches in `alone` stay by themselves; a chain has one diode at most. */
export function chainsOf(branches: readonly Branch[], alone: ReadonlySet<number>): Chain[] {
  const ends = new Map<Node, number[]>();
  const chains = branches.map(({ a, b, fromV }, branch): Chain => {
    for (const node of [a, b]) {
      const here = ends.get(node);
      if (here === undefined) ends.set(node, [branch]);
      else here.push(branch);
    }
    return { from: a, to: b, links: [{ branch, sign: 1 }], between: [], threshold: fromV !== undefined };
  });
  const chainOf = chains.slice();
  for (const [node, [one, two, ...more]] of ends) {
    if (node === CHASSIS || two === undefined || more.length > 0 || alone.has(one!) || alone.has(two)) continue;
    let [left, right] = [chainOf[one!]!, chainOf[two]!];
    if (left === right || (left.threshold && right.threshold)) continue;
    if (left.links.length < right.links.length) [left, right] = [right, left];
    if (left.to !== node) turn(left);
    if (right.from !== node) turn(right);
    left.links.push(...right.links);
    left.between.push(node, ...right.between);
    left.to = right.to;
    left.threshold ||= right.threshold;
    for (const { branch } of right.links) chainOf[branch] = left;
  }
  const whole = [...new Set(chainOf)];
  for (const chain of whole) {
    if (chain.links.some(({ branch, sign }) => sign < 0 && branches[branch]!.fromV !== undefined)) turn(chain);
  }
  return whole;
}

function turn(chain: Chain): void {
  [chain.from, chain.to] = [chain.to, chain.from];
  chain.links.reverse();
  for (const link of chain.links) link.sign = link.sign === 1 ? -1 : 1;
  chain.between.reverse();
}
