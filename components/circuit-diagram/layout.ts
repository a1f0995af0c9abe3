/**
 * Lays a circuit out as current paths, the way the trade draws them: rails on top, chassis at the bottom, current
 * flowing down, one path a branch. A node is a level bar, a chain of parts in series is an upright line; for a planar
 * circuit such a drawing exists without any crossing. Pure, deterministic, no measurements of the page.
 */

/** A two-ended thing to draw. */
export interface Edge {
  id: string;
  a: string;
  b: string;
  /** Room it needs along its path. */
  height: number;
  /** Prefers `a` above `b` (a diode, a coil with a positive end, a source); else the drawing decides. */
  directed?: boolean;
}

export interface Graph {
  edges: Edge[];
  /** Nodes drawn as rails on top, in order. */
  rails: string[];
  /** The chassis node: every path end on it gets its own chassis sign. */
  chassis: string;
}

/** A part at its place: centre column, from y1 down to y2; `flipped` when b is above a. */
export interface Placed {
  id: string;
  x: number;
  y1: number;
  y2: number;
  flipped: boolean;
}
/** Plain conductor of a path that no part covers. */
export interface Line {
  node: string;
  x1: number;
  y1: number;
  x2: number;
  y2: number;
}
export interface Layout {
  width: number;
  height: number;
  parts: Placed[];
  lines: Line[];
  /** Where three or more conductors of one node meet. */
  dots: { node: string; x: number; y: number }[];
  /** Chassis signs. */
  grounds: { x: number; y: number }[];
  /** Rails, one stretch a row of paths. */
  rails: { node: string; x1: number; x2: number; y: number }[];
  /** Ends that lead nowhere, such as a capped contact. */
  ends: { node: string; x: number; y: number }[];
  /** Bars that had to cross a path. */
  crossings: { x: number; y: number }[];
}

export interface Pitch {
  /** Between columns. */
  column: number;
  /** Most columns in a row of paths, where the circuit allows it. */
  columns: number;
  /** Between bars. */
  bar: number;
  /** Left and right margin. */
  margin: number;
}

interface Chain {
  edges: { edge: Edge; flipped: boolean }[];
  top: string;
  bottom: string;
  height: number;
}

/** Potential of every node when each edge is one ohm, rails at 1, chassis at 0: gives every path its natural way down. */
function potentials(graph: Graph): Map<string, number> {
  const fixed = new Map<string, number>([[graph.chassis, 0]]);
  for (const r of graph.rails) fixed.set(r, 1);
  const at = new Map<string, number>();
  const near = new Map<string, string[]>();
  for (const e of graph.edges) {
    near.set(e.a, [...(near.get(e.a) ?? []), e.b]);
    near.set(e.b, [...(near.get(e.b) ?? []), e.a]);
  }
  for (const n of near.keys()) at.set(n, fixed.get(n) ?? 0.5);
  for (let pass = 0; pass < 400; pass++) {
    for (const [n, others] of near) {
      if (fixed.has(n)) continue;
      at.set(n, others.reduce((sum, o) => sum + at.get(o)!, 0) / others.length);
    }
  }
  return at;
}

/** Series parts between two nodes that are more than a way through. */
function chainsOf(graph: Graph, level: Map<string, number>): Chain[] {
  const rails = new Set(graph.rails);
  const at = new Map<string, Edge[]>();
  for (const e of graph.edges) {
    at.set(e.a, [...(at.get(e.a) ?? []), e]);
    if (e.b !== e.a) at.set(e.b, [...(at.get(e.b) ?? []), e]);
  }
  const isThrough = (n: string) => n !== graph.chassis && !rails.has(n) && at.get(n)!.length === 2;
  const used = new Set<Edge>();
  const chains: Chain[] = [];
  const walk = (from: string, first: Edge) => {
    const run: Chain['edges'] = [];
    let node = from;
    let edge: Edge | undefined = first;
    while (edge && !used.has(edge)) {
      used.add(edge);
      run.push({ edge, flipped: edge.b === node });
      node = edge.b === node ? edge.a : edge.b;
      edge = isThrough(node) ? at.get(node)!.find((e) => !used.has(e)) : undefined;
    }
    const rise = level.get(from)! - level.get(node)!;
    const votes = run.reduce((sum, r) => sum + (r.edge.directed ? (r.flipped ? -1 : 1) : 0), 0);
    const turn = rise < -1e-9 || (Math.abs(rise) <= 1e-9 && votes < 0);
    const edges = turn ? run.reverse().map((r) => ({ edge: r.edge, flipped: !r.flipped })) : run;
    chains.push({
      edges,
      top: turn ? node : from,
      bottom: turn ? from : node,
      height: edges.reduce((sum, r) => sum + r.edge.height, 0),
    });
  };
  const hubs = [...at.keys()].filter((n) => !isThrough(n));
  for (const n of hubs) for (const e of at.get(n)!) if (!used.has(e)) walk(n, e);
  for (const e of graph.edges) if (!used.has(e)) walk(e.a, e); // a ring with no hub on it
  return chains;
}

/** Groups of chains that hang together other than through a rail or the chassis. */
function groupsOf(chains: Chain[], shared: Set<string>): Chain[][] {
  const groups: { nodes: Set<string>; chains: Chain[] }[] = [];
  for (const c of chains) {
    const ends = [c.top, c.bottom].filter((n) => !shared.has(n));
    const hit = groups.filter((g) => ends.some((n) => g.nodes.has(n)));
    const merged = { nodes: new Set(ends), chains: [] as Chain[] };
    for (const g of hit) {
      for (const n of g.nodes) merged.nodes.add(n);
      merged.chains.push(...g.chains);
      groups.splice(groups.indexOf(g), 1);
    }
    merged.chains.push(c);
    groups.push(merged);
  }
  return groups.map((g) => g.chains);
}

/** Height of every node of a group below its rail: the longest way down to it. */
function depths(chains: Chain[], gap: number): Map<string, number> {
  const y = new Map<string, number>();
  for (const c of chains) {
    y.set(c.top, 0);
    y.set(c.bottom, 0);
  }
  // Chains run from higher to lower potential, so this settles; the bound holds for ties.
  for (let pass = 0; pass < chains.length + 2; pass++) {
    let moved = false;
    for (const c of chains) {
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
function arrange(chains: Chain[], y: Map<string, number>, shared: Set<string>): Arranged {
  const n = chains.length;
  const nodes = [...y.keys()].filter((k) => !shared.has(k));
  const touching = nodes.map((k) => chains.flatMap((c, i) => (c.top === k || c.bottom === k ? [i] : [])));
  const span = chains.map((c) => [y.get(c.top)!, y.get(c.bottom)!] as const);
  const judge = (columns: number[]): number => {
    let cost = 0;
    for (let i = 0; i < n; i++) {
      for (let j = i + 1; j < n; j++) {
        if (columns[i] === columns[j] && span[i]![0] < span[j]![1] - 1 && span[j]![0] < span[i]![1] - 1) cost += 1e4;
      }
    }
    nodes.forEach((k, at) => {
      const mine = touching[at]!;
      const cs = mine.map((i) => columns[i]!);
      const lo = Math.min(...cs);
      const hi = Math.max(...cs);
      cost += (hi - lo) * 3;
      for (let i = 0; i < n; i++) {
        if (mine.includes(i)) continue;
        const inside = span[i]![0] < y.get(k)! - 1 && y.get(k)! < span[i]![1] - 1;
        const under = columns[i]! >= lo && columns[i]! <= hi;
        if (inside && under) cost += columns[i]! > lo && columns[i]! < hi ? 100 : 300;
      }
      nodes.forEach((other, o) => {
        if (o <= at || Math.abs(y.get(other)! - y.get(k)!) > 1) return;
        const os = touching[o]!.map((i) => columns[i]!);
        if (Math.min(...os) <= hi && lo <= Math.max(...os)) cost += 40;
      });
    });
    return cost + Math.max(...columns) * 2;
  };
  const squeeze = (columns: number[]): number[] => {
    const order = [...new Set(columns)].sort((a, b) => a - b);
    return columns.map((c) => order.indexOf(c));
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
  return best!;
}

/** Moves bars apart that would run into each other, lower ones down. */
function spread(chains: Chain[], y: Map<string, number>, columns: number[], shared: Set<string>, gap: number): void {
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
      const want = y.get(c.top)! + c.height + gap;
      if (want > y.get(c.bottom)! + 1e-9) {
        y.set(c.bottom, want);
        moved = true;
      }
    }
    if (!moved) break;
  }
}

/** See the head of this file. */
export function layout(graph: Graph, pitch: Pitch): Layout {
  const level = potentials(graph);
  const shared = new Set([...graph.rails, graph.chassis]);
  const chains = chainsOf(graph, level);
  const groups = groupsOf(chains, shared).map((group) => {
    const y = depths(group, pitch.bar);
    const { columns, width } = arrange(group, y, shared);
    spread(group, y, columns, shared, pitch.bar);
    const floor = Math.max(...group.map((c) => Math.max(y.get(c.bottom)!, y.get(c.top)! + c.height)));
    return { chains: group, y, columns, width, floor };
  });
  // Rows of groups: as many side by side as fit.
  const rows: (typeof groups)[] = [];
  for (const g of groups) {
    const row = rows.at(-1);
    const taken = row?.reduce((sum, r) => sum + r.width, 0) ?? Infinity;
    if (row && taken + g.width <= pitch.columns) row.push(g);
    else rows.push([g]);
  }
  const out: Layout = {
    width: 0,
    height: 0,
    parts: [],
    lines: [],
    dots: [],
    grounds: [],
    rails: [],
    ends: [],
    crossings: [],
  };
  const RAIL = 26;
  let y0 = 20;
  for (const row of rows) {
    const railsHere = graph.rails.filter((r) => row.some((g) => g.chains.some((c) => c.top === r || c.bottom === r)));
    const railY = new Map(railsHere.map((r, i) => [r, y0 + i * RAIL]));
    const head = y0 + Math.max(0, railsHere.length - 1) * RAIL;
    const floor = head + Math.max(...row.map((g) => g.floor));
    let first = 0;
    const railX = new Map<string, number[]>();
    for (const g of row) {
      const xOf = (i: number) => pitch.margin + (first + g.columns[i]! + 0.5) * pitch.column;
      const ends = new Map<string, { x: number; y: number }[]>();
      g.chains.forEach((c, i) => {
        const x = xOf(i);
        const from = railY.get(c.top) ?? head + g.y.get(c.top)!;
        const isGround = c.bottom === graph.chassis;
        const to = isGround ? floor : (railY.get(c.bottom) ?? head + g.y.get(c.bottom)!);
        const body = railY.has(c.top) ? head + pitch.bar / 2 : from + pitch.bar / 2;
        const free = Math.max(0, to - body - c.height - pitch.bar / 2);
        let at = body + (isGround ? 0 : free / 2);
        let node = c.top;
        let last = from;
        for (const { edge, flipped } of c.edges) {
          if (at > last) out.lines.push({ node, x1: x, y1: last, x2: x, y2: at });
          out.parts.push({ id: edge.id, x, y1: at, y2: at + edge.height, flipped });
          at += edge.height;
          last = at;
          node = flipped ? edge.a : edge.b;
        }
        if (to > last) out.lines.push({ node, x1: x, y1: last, x2: x, y2: to });
        for (const [n, yy] of [
          [c.top, from],
          [c.bottom, to],
        ] as const) {
          if (n === graph.chassis) out.grounds.push({ x, y: yy });
          else if (railY.has(n)) railX.set(n, [...(railX.get(n) ?? []), x]);
          else ends.set(n, [...(ends.get(n) ?? []), { x, y: yy }]);
        }
      });
      for (const [node, list] of ends) {
        const y = list[0]!.y;
        const xs = list.map((e) => e.x).sort((a, b) => a - b);
        if (list.length === 1) {
          out.ends.push({ node, x: xs[0]!, y });
          continue;
        }
        const left = xs[0]!;
        const right = xs.at(-1)!;
        if (right > left) out.lines.push({ node, x1: left, y1: y, x2: right, y2: y });
        for (const x of new Set(xs)) {
          const upright = xs.filter((v) => v === x).length;
          const level = (x > left ? 1 : 0) + (x < right ? 1 : 0);
          if (upright + level >= 3) out.dots.push({ node, x, y });
        }
        g.chains.forEach((c, i) => {
          if (c.top === node || c.bottom === node) return;
          const x = xOf(i);
          const top = railY.get(c.top) ?? head + g.y.get(c.top)!;
          const bottom = c.bottom === graph.chassis ? floor : head + g.y.get(c.bottom)!;
          if (x > left && x < right && top < y && y < bottom) out.crossings.push({ x, y });
        });
      }
      first += g.width;
    }
    const right = pitch.margin + first * pitch.column;
    for (const [node, xs] of railX) {
      out.rails.push({
        node,
        x1: pitch.margin / 2,
        x2: Math.max(...xs, right - pitch.column / 2),
        y: railY.get(node)!,
      });
      for (const x of new Set(xs)) out.dots.push({ node, x, y: railY.get(node)! });
    }
    out.width = Math.max(out.width, right + pitch.margin);
    y0 = floor + 62;
  }
  out.height = y0 - 20;
  return out;
}
