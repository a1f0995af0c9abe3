/**
 * Lays a circuit out as current paths, the way the trade draws them: rails on top, chassis at the bottom, current
 * flowing down, one path a branch. A node is a level bar, a chain of parts in series is an upright line; for a planar
 * circuit such a drawing exists without any crossing. Pure, deterministic, no measurements of the page.
 */
import { arrange, depths, spread } from './arrange.ts';
import { type Chain, chainsOf, type Graph, groupsOf, potentials } from './chains.ts';

export type { Edge, Graph } from './chains.ts';

/** A part at its place: centre column, from y1 down to y2; `flipped` when b is above a. */
export interface Placed {
  id: string;
  x: number;
  y1: number;
  y2: number;
  flipped: boolean;
}
/** Plain conductor of a path that no part covers. Uprights run down, bars to the right. */
export interface Line {
  node: string;
  x1: number;
  y1: number;
  x2: number;
  y2: number;
  /** The edges whose currents, each with its sign from a to b, add up to what flows down or right in this line. */
  carries: { id: string; sign: 1 | -1 }[];
}
export interface Layout {
  width: number;
  height: number;
  parts: Placed[];
  lines: Line[];
  /** Where three or more conductors of one node meet. */
  dots: { node: string; x: number; y: number }[];
  /** Chassis signs, with the edge that ends on each. */
  grounds: { x: number; y: number; edge: string }[];
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
  /** Free at both sides. */
  margin: number;
  /** From the middle of a column to its left edge: symbols and terminal numbers; the rest is for words. */
  lead: number;
  /** Further room for the words of the last column. */
  tail: number;
}

/** Room above a rail for its name. */
const RAIL_Y = 24;
/** From the chassis signs of one row to the next row's rail. */
const ROW_GAP = 64;

interface Group {
  chains: Chain[];
  width: number;
}

/** Rows of groups: what hangs on one rail stays together, in the first row that has room for it. */
function rowsOf<G extends Group>(groups: G[], rails: readonly string[], columns: number): G[][] {
  const widest = Math.max(...groups.map((g) => g.width));
  const all = groups.reduce((sum, g) => sum + g.width, 0);
  // one column more takes the battery beside a wide group, or all in one row, rather than a row for one path
  const most = all <= columns + 1 ? all : Math.max(columns, widest < columns + 2 ? widest + 1 : widest);
  const railOf = (g: G) => rails.find((r) => g.chains.some((c) => c.top === r || c.bottom === r));
  const rows: G[][] = [];
  const roomIn = (row: G[]) => most - row.reduce((sum, g) => sum + g.width, 0);
  for (const rail of [...rails, undefined]) {
    const mine = groups.filter((g) => railOf(g) === rail);
    const width = mine.reduce((sum, g) => sum + g.width, 0);
    const row = rows.find((each) => width <= roomIn(each));
    if (row) row.push(...mine);
    else {
      const own: G[][] = [];
      for (const g of mine) {
        const at = own.find((each) => g.width <= roomIn(each));
        if (at) at.push(g);
        else own.push([g]);
      }
      rows.push(...own);
    }
  }
  return rows;
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
  const rows = rowsOf(groups, graph.rails, pitch.columns);
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
  let y0 = RAIL_Y;
  for (const row of rows) {
    // what hangs on one rail hangs on no other, so rails share a height and never cross a path
    const railY = new Map(graph.rails.map((r) => [r, y0]));
    const head = y0;
    const floor = head + Math.max(...row.map((g) => g.floor));
    let first = 0;
    const railX = new Map<string, number[]>();
    for (const g of row) {
      const xOf = (i: number) => pitch.margin + pitch.lead + (first + g.columns[i]!) * pitch.column;
      const ends = new Map<string, { x: number; y: number; brings: Line['carries'][number] }[]>();
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
        const flow = c.edges[0]!;
        const carries: Line['carries'] = [{ id: flow.edge.id, sign: flow.flipped ? -1 : 1 }];
        for (const { edge, flipped } of c.edges) {
          if (at > last) out.lines.push({ node, x1: x, y1: last, x2: x, y2: at, carries });
          out.parts.push({ id: edge.id, x, y1: at, y2: at + edge.height, flipped });
          at += edge.height;
          last = at;
          node = flipped ? edge.a : edge.b;
        }
        if (to > last) out.lines.push({ node, x1: x, y1: last, x2: x, y2: to, carries });
        for (const [n, yy] of [
          [c.top, from],
          [c.bottom, to],
        ] as const) {
          if (n === graph.chassis) out.grounds.push({ x, y: yy, edge: c.edges.at(-1)!.edge.id });
          else if (railY.has(n)) railX.set(n, [...(railX.get(n) ?? []), x]);
          else {
            // What the chain brings into the node: down it if it ends here, against it if it starts here.
            const sign = n === c.bottom ? carries[0]!.sign : carries[0]!.sign === 1 ? -1 : 1;
            ends.set(n, [...(ends.get(n) ?? []), { x, y: yy, brings: { id: flow.edge.id, sign } }]);
          }
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
        const stops = [...new Set(xs)];
        stops.forEach((x, i) => {
          const to = stops[i + 1];
          if (to === undefined) return;
          const carries = list.filter((e) => e.x <= x).map((e) => e.brings);
          out.lines.push({ node, x1: x, y1: y, x2: to, y2: y, carries });
        });
        for (const x of stops) {
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
      // a name stands at its left end, over the first path of the rail
      out.rails.push({ node, x1: Math.min(...xs) - pitch.lead, x2: Math.max(...xs), y: railY.get(node)! });
      for (const x of new Set(xs)) out.dots.push({ node, x, y: railY.get(node)! });
    }
    out.width = Math.max(out.width, right + pitch.margin + pitch.tail);
    y0 = floor + ROW_GAP;
  }
  out.height = y0 - ROW_GAP + 20;
  return out;
}
