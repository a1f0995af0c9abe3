/** Cuts a circuit into chains: parts in series between two nodes that are more than a way through. */

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

/** A chain and which end of it hangs on top. */
export interface Chain {
  edges: { edge: Edge; flipped: boolean }[];
  top: string;
  bottom: string;
  height: number;
}

/** Potential of every node when each edge is one ohm, rails at 1, chassis at 0: gives every path its natural way down. */
export function potentials(graph: Graph): Map<string, number> {
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
export function chainsOf(graph: Graph, level: Map<string, number>): Chain[] {
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
export function groupsOf(chains: Chain[], shared: Set<string>): Chain[][] {
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
