/** Finds columns and heights for the chains of one group, so that no bar crosses a path where the circuit allows it. */
import type { Chain } from './chains.ts';

/** Height of every node of a group below its rail: the longest way down to it. */
export function depths(chains: Chain[], gap: number): Map<string, number> {
  const y = new Map<string, number>();
  for (const c of chains) {
    y.set(c.top, 0);
    y.set(c.bottom, 0);
  }
  // Chains run from higher to lower potential, so this settles; the bound holds for ties.
  for (let pass = 0; pass < chains.length + 2; pass++) {
    let moved = false;
    for (const c of chains) {
      if (c.top === c.bottom) continue; // a ring has no way down
      const want = y.get(c.top)! + c.height + gap;
      if (want > y.get(c.bottom)! + 1e-9 && pass <= chains.length) {
        y.set(c.bottom, want);
        moved = true;
      }
    }
    if (!moved) break;
  }
  return y;
}

interface Arranged {
  columns: number[];
  width: number;
  cost: number;
}

/** Columns for the chains of one group: fewest crossings, then shortest bars, then fewest columns. */
export function arrange(chains: Chain[], y: Map<string, number>, shared: Set<string>): Arranged {
  const n = chains.length;
  const nodes = [...y.keys()].filter((k) => !shared.has(k));
  const touching = nodes.map((k) => chains.flatMap((c, i) => (c.top === k || c.bottom === k ? [i] : [])));
  const span = chains.map((c) => [y.get(c.top)!, y.get(c.bottom)!] as const);
  // Thousands of arrangements are judged: what does not hang on the columns is looked up once.
  const beside = chains.flatMap((_, i) =>
    chains.flatMap((_, j) =>
      j > i && span[i]![0] < span[j]![1] - 1 && span[j]![0] < span[i]![1] - 1 ? [[i, j] as const] : [],
    ),
  );
  const passing = nodes.map((k, at) =>
    chains.flatMap((_, i) =>
      !touching[at]!.includes(i) && span[i]![0] < y.get(k)! - 1 && y.get(k)! < span[i]![1] - 1 ? [i] : [],
    ),
  );
  const level = nodes.flatMap((k, at) =>
    nodes.flatMap((other, o) => (o > at && Math.abs(y.get(other)! - y.get(k)!) <= 1 ? [[at, o] as const] : [])),
  );
  const low = new Int32Array(nodes.length);
  const high = new Int32Array(nodes.length);
  const judge = (columns: readonly number[]): number => {
    let cost = 0;
    for (const [i, j] of beside) if (columns[i] === columns[j]) cost += 1e4;
    for (let at = 0; at < nodes.length; at++) {
      let lo = Number.POSITIVE_INFINITY;
      let hi = Number.NEGATIVE_INFINITY;
      for (const i of touching[at]!) {
        lo = Math.min(lo, columns[i]!);
        hi = Math.max(hi, columns[i]!);
      }
      low[at] = lo;
      high[at] = hi;
      cost += (hi - lo) * 3;
      for (const i of passing[at]!) {
        const column = columns[i]!;
        if (column >= lo && column <= hi) cost += column > lo && column < hi ? 100 : 300;
      }
    }
    for (const [at, o] of level) if (low[o]! <= high[at]! && low[at]! <= high[o]!) cost += 40;
    return cost + Math.max(...columns) * 2;
  };
  const rank = new Int32Array(2 * n + 4);
  /** Columns counted anew without gaps; halves lie between two of them. */
  const squeeze = (columns: readonly number[]): number[] => {
    rank.fill(0);
    for (const c of columns) rank[2 * c + 2] = 1;
    for (let at = 0, next = 0; at < rank.length; at++) if (rank[at] === 1) rank[at] = next++;
    return columns.map((c) => rank[2 * c + 2]!);
  };
  let best: Arranged | undefined;
  let seed = 7;
  const random = () => {
    seed = (seed * 48271) % 2147483647;
    return seed / 2147483647;
  };
  const starts = n > 14 ? 12 : 24;
  for (let start = 0; start < starts; start++) {
    let columns = chains.map((_, i) => i);
    if (start) {
      for (let i = n - 1; i > 0; i--) {
        const j = Math.floor(random() * (i + 1));
        [columns[i], columns[j]] = [columns[j]!, columns[i]!];
      }
    }
    let cost = judge(columns);
    for (let better = true; better; ) {
      better = false;
      for (let i = 0; i < n; i++) {
        for (let half = -1; half <= 2 * n + 1; half++) {
          // Even: into an existing column; odd: between two columns.
          const trial = squeeze(columns.map((c, k) => (k === i ? half / 2 : c)));
          const now = judge(trial);
          if (now < cost - 1e-9) {
            columns = trial;
            cost = now;
            better = true;
          }
        }
        for (let j = 0; j < i; j++) {
          const trial = [...columns];
          [trial[i], trial[j]] = [trial[j]!, trial[i]!];
          const now = judge(trial);
          if (now < cost - 1e-9) {
            columns = trial;
            cost = now;
            better = true;
          }
        }
      }
    }
    if (!best || cost < best.cost - 1e-9) best = { columns, cost, width: Math.max(...columns) + 1 };
  }
  // of a drawing and its mirror, the one whose feed hangs nearest to the battery, which stands on the left
  const { columns, cost, width } = best!;
  const mirrored = columns.map((c) => width - 1 - c);
  const reach = (of: number[]) => chains.reduce((sum, c, i) => sum + (shared.has(c.top) ? of[i]! : 0), 0);
  return { columns: reach(mirrored) < reach(columns) ? mirrored : columns, cost, width };
}

/** Moves bars apart that would run into each other, lower ones down. */
export function spread(
  chains: Chain[],
  y: Map<string, number>,
  columns: number[],
  shared: Set<string>,
  gap: number,
): void {
  const nodes = [...y.keys()].filter((k) => !shared.has(k)).sort((a, b) => y.get(a)! - y.get(b)! || (a < b ? -1 : 1));
  const bounds = (k: string) => {
    const cs = chains.flatMap((c, i) => (c.top === k || c.bottom === k ? [columns[i]!] : []));
    return [Math.min(...cs), Math.max(...cs)] as const;
  };
  for (let pass = 0; pass < 6; pass++) {
    let moved = false;
    for (let i = 0; i < nodes.length; i++) {
      for (let j = i + 1; j < nodes.length; j++) {
        const [lo, hi] = bounds(nodes[i]!);
        const [low, high] = bounds(nodes[j]!);
        const near = y.get(nodes[j]!)! - y.get(nodes[i]!)!;
        if (low <= hi && lo <= high && Math.abs(near) < gap) {
          y.set(nodes[j]!, y.get(nodes[i]!)! + gap);
          moved = true;
        }
      }
    }
    for (const c of chains) {
      if (c.top === c.bottom) continue;
      const want = y.get(c.top)! + c.height + gap;
      if (want > y.get(c.bottom)! + 1e-9) {
        y.set(c.bottom, want);
        moved = true;
      }
    }
    if (!moved) break;
  }
}
