import { CHASSIS, type Element, type Netlist, type Node } from './model.ts';
import { perObject } from './per-object.ts';

/**
 * Where current can get to over some combination of switch and relay positions, without solving anything.
 *
 * A path holds together only if no input or relay has to be in two positions at once: `K1.87` and `K1.87a` are never
 * closed together, nor are two contacts of one switch that exclude each other.
 */

/** `2 × index` of an input or relay, plus 1 where it has to be on. */
type Literal = number;

/** A way through an element. */
export interface Edge {
  from: Node;
  to: Node;
  element: Element;
  /** The element's id; of a relay's throw `K1.no` or `K1.nc`. */
  id: string;
  literal: Literal | undefined;
  ohm: number;
}

/** One way to reach a node. */
export interface Path {
  node: Node;
  /** The terminal it began at: a source's id, or the node. */
  start: string;
  literals: readonly Literal[];
  /** Last fuse on the way, and the smallest. */
  lastFuse: string | undefined;
  smallestA: number;
  ohm: number;
  /** Fixed drops of diodes on the way [V]. */
  dropV: number;
  /** Copper on the way [m]. */
  lengthM: number;
  edge: Edge | undefined;
  before: Path | undefined;
}

export interface Search {
  /** Beginnings: nodes with what to call them and the resistance behind them. */
  starts: { node: Node; start: string; ohm?: number }[];
  /** Which ways are open to this search. */
  through: (edge: Edge) => boolean;
  /** Nodes that may be reached and are not passed. */
  ends: ReadonlySet<Node>;
  /** What makes one way better than another of the same kind: less of it. */
  by: 'ohm' | 'lengthM';
  /** `source`: diodes pass from A to K. `return`: walked against the current. */
  towards?: 'source' | 'load';
}

/** Above this many ways to one node, positions are no longer told apart: more is found rather than less. */
const MOST_WAYS = 48;

/** The conducting ways of a netlist, ready to be searched. */
export class Paths {
  readonly netlist: Netlist;
  private readonly edges = new Map<Node, Edge[]>();
  private readonly variable = new Map<string, number>();

  constructor(netlist: Netlist) {
    this.netlist = netlist;
    for (const element of netlist.elements) this.addEdges(element);
  }

  edgesAt(node: Node): readonly Edge[] {
    return this.edges.get(node) ?? [];
  }

  /**
   * Every worthwhile way from the starts, each node's best first.
   *
   * A way is dropped where another reaches the same node past the same last fuse, needs no more positions, has no
   * smaller fuse, and is not longer.
   */
  search({ starts, through, ends, by, towards = 'load' }: Search): Map<Node, Path[]> {
    const found = new Map<Node, Path[]>();
    const queue: Path[] = starts.map(({ node, start, ohm = 0 }) => ({
      node,
      start,
      literals: [],
      lastFuse: undefined,
      smallestA: Number.POSITIVE_INFINITY,
      ohm,
      dropV: 0,
      lengthM: 0,
      edge: undefined,
      before: undefined,
    }));
    const heap = new Heap(by, queue);
    for (let path = heap.take(); path !== undefined; path = heap.take()) {
      const known = found.get(path.node) ?? [];
      if (known.some((other) => covers(other, path))) continue;
      found.set(path.node, [...known, path]);
      if (path.before !== undefined && ends.has(path.node)) continue;
      for (const edge of this.edgesAt(path.node)) {
        if (edge.element === path.edge?.element && edge.to === path.edge.from) continue;
        if (edge.element.kind === 'diode') {
          const withCurrent = edge.from === edge.element.a;
          if (withCurrent !== (towards === 'load')) continue;
        }
        if (!through(edge)) continue;
        const literals = known.length > MOST_WAYS ? path.literals : withLiteral(path.literals, edge.literal);
        if (literals !== undefined) heap.put(step(path, edge, literals));
      }
    }
    return found;
  }

  private addEdges(element: Element): void {
    switch (element.kind) {
      case 'wire':
      case 'fuse':
      case 'resistor':
        this.both(element.a, element.b, { element, id: element.id, literal: undefined, ohm: element.ohm });
        return;
      case 'switch': {
        const literal = element.welded ? undefined : this.literal(`input ${element.input}`, !element.inverted);
        this.both(element.a, element.b, { element, id: element.id, literal, ohm: element.ohm });
        return;
      }
      case 'relay':
        for (const side of ['no', 'nc'] as const) {
          const node = element[side];
          // A welded armature has one throw for good.
          const isDead = element.stuck !== undefined && (element.stuck === 'energised') !== (side === 'no');
          if (node === null || isDead) continue;
          const literal = element.stuck ? undefined : this.literal(`relay ${element.id}`, side === 'no');
          this.both(element.com, node, { element, id: `${element.id}.${side}`, literal, ohm: element.contactOhm });
        }
        return;
      case 'diode':
        if (element.open) return;
        this.both(element.a, element.k, { element, id: element.id, literal: undefined, ohm: 0 });
        return;
      default:
    }
  }

  private both(a: Node, b: Node, way: Omit<Edge, 'from' | 'to'>): void {
    if (a === b) return;
    const { element, id, literal, ohm } = way;
    this.oneWay({ from: a, to: b, element, id, literal, ohm });
    this.oneWay({ from: b, to: a, element, id, literal, ohm });
  }

  private oneWay(edge: Edge): void {
    const list = this.edges.get(edge.from);
    if (list) list.push(edge);
    else this.edges.set(edge.from, [edge]);
  }

  private literal(name: string, on: boolean): Literal {
    let index = this.variable.get(name);
    if (index === undefined) {
      index = this.variable.size;
      this.variable.set(name, index);
    }
    return 2 * index + (on ? 1 : 0);
  }
}

/** The literals with one more, or undefined where it contradicts them. */
function withLiteral(literals: readonly Literal[], literal: Literal | undefined): readonly Literal[] | undefined {
  if (literal === undefined || literals.includes(literal)) return literals;
  if (literals.includes(literal ^ 1)) return undefined;
  return [...literals, literal];
}

function step(path: Path, edge: Edge, literals: readonly Literal[]): Path {
  const { element } = edge;
  const isFuse = element.kind === 'fuse';
  return {
    node: edge.to,
    start: path.start,
    literals,
    lastFuse: isFuse ? element.id : path.lastFuse,
    smallestA: isFuse ? Math.min(path.smallestA, element.ratingA) : path.smallestA,
    ohm: path.ohm + edge.ohm,
    dropV: path.dropV + (element.kind === 'diode' ? element.forwardV : 0),
    lengthM: path.lengthM + (element.kind === 'wire' ? element.lengthM : 0),
    edge,
    before: path,
  };
}

/** Paths leave the queue best first, so one that came before is at least as short. */
const covers = (a: Path, b: Path): boolean =>
  a.lastFuse === b.lastFuse &&
  a.start === b.start &&
  a.smallestA >= b.smallestA &&
  a.literals.every((literal) => b.literals.includes(literal));

/** The conducting ways of a netlist, laid out once. */
export const pathsOf = perObject((netlist: Netlist): Paths => new Paths(netlist));

/** Every way from a source's positive through conductors and fuses, over any positions of switches and relays; looked for once. */
export const fedOf = perObject((netlist: Netlist) => {
  const starts = sourceStarts(netlist);
  return pathsOf(netlist).search({ starts, through: isConductor, ends: returnNodes(netlist), by: 'ohm' });
});

/** Where ways out of the sources begin. */
export const sourceStarts = (netlist: Netlist): { node: Node; start: string; ohm: number }[] =>
  netlist.elements.flatMap((each) => (each.kind === 'source' ? [{ node: each.p, start: each.id, ohm: each.ohm }] : []));

/** Nodes at which a way out of a source comes to its end: chassis and the other side of every source. */
export function returnNodes(netlist: Netlist): Set<Node> {
  const nodes = new Set<Node>([CHASSIS]);
  for (const element of netlist.elements) if (element.kind === 'source') nodes.add(element.n);
  return nodes;
}

/** A resistor stops what a wire lets through; a joint does not. */
export const isConductor = (edge: Edge): boolean => edge.element.kind !== 'resistor' || edge.element.joint === true;

/** Elements along a way, first to last. */
export function alongPath(path: Path): Edge[] {
  const edges: Edge[] = [];
  for (let at: Path | undefined = path; at?.edge; at = at.before) edges.push(at.edge);
  return edges.reverse();
}

/** Smallest first. */
class Heap {
  private readonly items: Path[] = [];
  private readonly by: 'ohm' | 'lengthM';

  constructor(by: 'ohm' | 'lengthM', items: Path[]) {
    this.by = by;
    for (const item of items) this.put(item);
  }

  put(item: Path): void {
    const { items, by } = this;
    let at = items.push(item) - 1;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (items[up]![by] <= item[by]) break;
      items[at] = items[up]!;
      at = up;
    }
    items[at] = item;
  }

  take(): Path | undefined {
    const { items, by } = this;
    const first = items[0];
    const last = items.pop();
    if (first === undefined || last === undefined || items.length === 0) return first;
    let at = 0;
    for (;;) {
      let down = 2 * at + 1;
      if (down >= items.length) break;
      if (down + 1 < items.length && items[down + 1]![by] < items[down]![by]) down++;
      if (items[down]![by] >= last[by]) break;
      items[at] = items[down]!;
      at = down;
    }
    items[at] = last;
    return first;
  }
}
