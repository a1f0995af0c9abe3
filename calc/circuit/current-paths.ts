import type { Element, Netlist, Node, Solution } from './model.ts';

/** The way the current of a load or coil takes in a state: source to consumer, then consumer back. */
export interface CurrentPath {
  /** Element ids (contacts as `K1.no`) in the order of the current, the consumer not among them. */
  elements: string[];
  /** The source it comes from; absent where the way could not be followed to one. */
  source: string | undefined;
}

/** Currents [A] of one state by what names a branch: its id, or its number where there are many states. */
type Currents = Readonly<Record<string, number>> | Readonly<Record<number, number>>;

interface Way {
  id: string;
  /** What names it in the currents. */
  key: string | number;
  a: Node;
  b: Node;
}

const at = (currents: Currents, { key }: Way): number => (currents as Record<string | number, number>)[key] ?? 0;

/** Follows currents through a netlist, largest first; made once for many questions. */
export class CurrentPaths {
  private readonly at = new Map<Node, Way[]>();
  private readonly known = new Map<string, { path: CurrentPath; ways: Way[] }[]>();
  private readonly sources: Extract<Element, { kind: 'source' }>[] = [];
  private readonly keyOf: (id: string) => string | number;

  /** `keyOf` tells what names a branch in the currents that will be followed; default its id. */
  constructor(netlist: Netlist, keyOf: (id: string) => string | number = (id) => id) {
    this.keyOf = keyOf;
    for (const element of netlist.elements) {
      switch (element.kind) {
        case 'source':
          this.sources.push(element);
          break;
        case 'relay':
          for (const side of ['no', 'nc'] as const) {
            const node = element[side];
            if (node !== null) this.add(`${element.id}.${side}`, element.com, node);
          }
          break;
        case 'diode':
          this.add(element.id, element.a, element.k);
          break;
        default:
          this.add(element.id, element.a, element.b);
      }
    }
  }

  /**
   * Where the current of a consumer comes from and goes to in the state that has these currents. A way met before that carries the whole current
   * again is the same way, and the very same object.
   *
   * @param consumer `plus` and `minus` as the netlist names them; a negative current swaps them
   */
  follow(currents: Currents, consumer: { id: string; plus: Node; minus: Node; currentA: number }): CurrentPath {
    const forward = consumer.currentA >= 0;
    const key = forward ? consumer.id : `-${consumer.id}`;
    let known = this.known.get(key);
    if (known === undefined) {
      known = [];
      this.known.set(key, known);
    }
    const least = 0.999 * Math.abs(consumer.currentA);
    const carriesAll = (ways: readonly Way[]) => ways.every((way) => Math.abs(at(currents, way)) >= least);
    const again = known.find(({ ways }) => carriesAll(ways));
    if (again !== undefined) return again.path;
    const [entry, exit] = forward ? [consumer.plus, consumer.minus] : [consumer.minus, consumer.plus];
    const up = this.walk(currents, entry, 'up', consumer.id);
    const down = this.walk(currents, exit, 'down', consumer.id);
    const ways = [...up.ways.reverse(), ...down.ways];
    const path = { elements: ways.map(({ id }) => id), source: up.source };
    // Where the current divides no single way carries all of it: such a way is never met again.
    if (carriesAll(ways)) known.push({ path, ways });
    return path;
  }

  private walk(
    currents: Currents,
    from: Node,
    direction: 'up' | 'down',
    consumer: string,
  ): { ways: Way[]; source: string | undefined } {
    const ways: Way[] = [];
    const seen = new Set([consumer]);
    for (let node = from; ; ) {
      const source = this.sources.find((each) => (direction === 'up' ? each.p : each.n) === node);
      if (source !== undefined) return { ways, source: source.id };
      let best: { way: Way; to: Node; currentA: number } | undefined;
      for (const way of this.at.get(node) ?? []) {
        if (seen.has(way.id)) continue;
        const currentA = at(currents, way);
        // Counted from a to b: into the node from `a` where the node is `b`.
        const into = way.b === node ? currentA : -currentA;
        const wanted = direction === 'up' ? into : -into;
        if (wanted > 1e-9 && (best === undefined || wanted > best.currentA)) {
          best = { way, to: way.b === node ? way.a : way.b, currentA: wanted };
        }
      }
      if (best === undefined) return { ways, source: undefined };
      seen.add(best.way.id);
      ways.push(best.way);
      node = best.to;
    }
  }

  private add(id: string, a: Node, b: Node): void {
    const way = { id, key: this.keyOf(id), a, b };
    for (const node of new Set([a, b])) {
      const list = this.at.get(node);
      if (list) list.push(way);
      else this.at.set(node, [way]);
    }
  }
}

/** Least and greatest signed current of each element [A], by id. */
export type Peaks = ReadonlyMap<string, { lowestA: number; highestA: number }>;

/** Peaks over the given states. */
export function peakCurrents(states: readonly Solution[]): Peaks {
  const peaks = new Map<string, { lowestA: number; highestA: number }>();
  for (const { currentA } of states) {
    for (const id in currentA) {
      const now = currentA[id]!;
      const peak = peaks.get(id);
      if (peak === undefined) peaks.set(id, { lowestA: now, highestA: now });
      else if (now < peak.lowestA) peak.lowestA = now;
      else if (now > peak.highestA) peak.highestA = now;
    }
  }
  return peaks;
}
