/**
 * The equations of a network of conductances, solved by star-mesh elimination.
 *
 * A node that joins conductances g1, g2 … (one may lead to chassis) is replaced by the mesh g1·g2/Σg between its
 * neighbours, node after node, and the voltages are then found walking back. This is Gaussian elimination of a symmetric
 * matrix, but written in conductances it only ever adds positive numbers: nothing cancels, however far a milliohm wire
 * and a kilohm lamp lie apart, no pivoting is needed, and a node that nothing ties to chassis shows as a sum of exactly 0.
 *
 * Which nodes can ever be neighbours does not depend on switch positions, so the order of elimination and the place of
 * every product are worked out once (`planElimination`) and used for every state and fault.
 */

/** Most neighbours of a node that is eliminated early: more would make neighbours of nodes that were none. */
const EARLY_DEGREE = 2;

/** The order of elimination and where each number goes. Nodes are counted by their place in that order ("rank"). */
export interface Plan {
  /** Rank of each node as numbered by the caller. */
  rank: Int32Array;
  size: number;
  /** So many ranks hold nodes that nothing changes at: they can be eliminated once for all states. */
  early: number;
  /** Where those leave off in `target`. */
  earlyTarget: number;
  /** Off-diagonal conductances of rank k lie in slots rowStart[k] … rowStart[k+1]-1. */
  rowStart: Int32Array;
  /** The later rank that a slot leads to. */
  column: Int32Array;
  /** For each eliminated node, slot of each pair of its neighbours, in the order the elimination meets them. */
  target: Int32Array;
  /** Slot of the pair of two ranks, or -1. */
  slot(rankA: number, rankB: number): number;
}

/** Working memory of one elimination. `branch` and `chassis` hold siemens, `injectedA` amps, `voltageV` volts. */
export interface Workspace {
  branch: Float64Array;
  chassis: Float64Array;
  injectedA: Float64Array;
  sum: Float64Array;
  voltageV: Float64Array;
}

/**
 * Order `count` nodes joined by `edges` so that few new neighbours arise: always the node with fewest neighbours next,
 * the lower number first among equals (minimum degree). Nodes for which `steady` is 1, where only parts meet that never
 * change, come first as far as they have few neighbours.
 */
export function planElimination(
  count: number,
  edges: readonly (readonly [number, number])[],
  steady: Uint8Array = new Uint8Array(count),
): Plan {
  const near: Set<number>[] = Array.from({ length: count }, () => new Set<number>());
  for (const [a, b] of edges) {
    if (a === b) continue;
    near[a]!.add(b);
    near[b]!.add(a);
  }
  const rank = new Int32Array(count).fill(-1);
  const rows: number[][] = [];
  const take = (node: number): number[] => {
    rank[node] = rows.length;
    const row = [...near[node]!];
    rows.push(row);
    for (const one of row) {
      near[one]!.delete(node);
      for (const other of row) if (other !== one) near[one]!.add(other);
    }
    return row;
  };
  // A chain of wires and fuses falls away from its ends and its middle alike.
  const queue = Array.from({ length: count }, (_, node) => node).filter((node) => steady[node] === 1);
  for (const node of queue) {
    if (rank[node] !== -1 || near[node]!.size > EARLY_DEGREE) continue;
    for (const other of take(node)) if (steady[other] === 1) queue.push(other);
  }
  const early = rows.length;
  // Nodes waiting, by their number of neighbours; a node may also stand in buckets it has left.
  const waiting: number[][] = Array.from({ length: count + 1 }, () => []);
  for (let node = count - 1; node >= 0; node--) waiting[near[node]!.size]!.push(node);
  for (let degree = 0; rows.length < count; ) {
    const node = waiting[degree]!.pop();
    if (node === undefined) {
      degree++;
      continue;
    }
    if (rank[node] !== -1 || near[node]!.size !== degree) continue;
    for (const one of take(node)) {
      const size = near[one]!.size;
      waiting[size]!.push(one);
      degree = Math.min(degree, size);
    }
  }

  const rowStart = new Int32Array(count + 1);
  const column = new Int32Array(rows.reduce((sum, row) => sum + row.length, 0));
  const slots = new Map<number, number>();
  let next = 0;
  for (let k = 0; k < count; k++) {
    const later = rows[k]!.map((node) => rank[node]!).sort((x, y) => x - y);
    for (const other of later) {
      column[next] = other;
      slots.set(k * count + other, next++);
    }
    rowStart[k + 1] = next;
  }
  const slot = (rankA: number, rankB: number) =>
    slots.get(Math.min(rankA, rankB) * count + Math.max(rankA, rankB)) ?? -1;
  const target = new Int32Array(rows.reduce((sum, row) => sum + (row.length * (row.length - 1)) / 2, 0));
  let earlyTarget = 0;
  next = 0;
  for (let k = 0; k < count; k++) {
    if (k === early) earlyTarget = next;
    for (let s = rowStart[k]!; s < rowStart[k + 1]!; s++) {
      for (let r = s + 1; r < rowStart[k + 1]!; r++) target[next++] = slot(column[s]!, column[r]!);
    }
  }
  if (early === count) earlyTarget = next;
  return { rank, size: count, early, earlyTarget, rowStart, column, target, slot };
}

export function createWorkspace(plan: Plan): Workspace {
  return {
    branch: new Float64Array(plan.column.length),
    chassis: new Float64Array(plan.size),
    injectedA: new Float64Array(plan.size),
    sum: new Float64Array(plan.size),
    voltageV: new Float64Array(plan.size),
  };
}

/**
 * Eliminate ranks `first` to `end` (not included), changing `branch`, `chassis` and `injectedA` of the later ones. `t` is
 * where `target` stands at `first`. The last node of a part of the network that nothing ties to chassis gets `sum` 0.
 */
export function eliminate(plan: Plan, work: Workspace, first: number, end: number, t: number): void {
  const { rowStart, column, target } = plan;
  const { branch, chassis, injectedA, sum } = work;
  let place = t;
  for (let k = first; k < end; k++) {
    const from = rowStart[k]!;
    const to = rowStart[k + 1]!;
    let total = chassis[k]!;
    for (let s = from; s < to; s++) total += branch[s]!;
    sum[k] = total;
    if (total === 0) {
      place += ((to - from) * (to - from - 1)) / 2;
      continue;
    }
    const inverse = 1 / total;
    const currentA = injectedA[k]!;
    const toChassis = chassis[k]!;
    for (let s = from; s < to; s++) {
      const share = branch[s]! * inverse;
      if (share === 0) {
        place += to - s - 1;
        continue;
      }
      const j = column[s]!;
      injectedA[j] = injectedA[j]! + share * currentA;
      chassis[j] = chassis[j]! + share * toChassis;
      for (let r = s + 1; r < to; r++) {
        const slot = target[place++]!;
        branch[slot] = branch[slot]! + share * branch[r]!;
      }
    }
  }
}

/** Once every rank is eliminated: walk back to the voltages. Where `sum` is 0 the node is put at 0 V. */
export function substitute(plan: Plan, work: Workspace): void {
  const { size, rowStart, column } = plan;
  const { branch, injectedA, sum, voltageV } = work;
  for (let k = size - 1; k >= 0; k--) {
    const total = sum[k]!;
    if (total === 0) {
      voltageV[k] = 0;
      continue;
    }
    let currentA = injectedA[k]!;
    for (let s = rowStart[k]!, to = rowStart[k + 1]!; s < to; s++) currentA += branch[s]! * voltageV[column[s]!]!;
    voltageV[k] = currentA / total;
  }
}

/**
 * After `substitute`: for each rank the number of the floating part it belongs to (the rank of that part's last node),
 * or -1 where a conducting way leads to chassis.
 */
export function floatingParts(plan: Plan, work: Workspace): Int32Array {
  const part = new Int32Array(plan.size).fill(-1);
  for (let k = plan.size - 1; k >= 0; k--) {
    if (work.chassis[k] !== 0) continue;
    let of = k;
    for (let s = plan.rowStart[k]!; s < plan.rowStart[k + 1]!; s++) {
      if (work.branch[s] !== 0) of = part[plan.column[s]!]!;
    }
    part[k] = of;
  }
  return part;
}
