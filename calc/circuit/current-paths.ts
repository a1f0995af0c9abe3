import type { Element, Netlist, Node, Solution } from './model.ts';

/** The way the current of a load or coil takes in a state: source to consumer, then consumer back. */
export interface CurrentPath {
  /** Element ids (contacts as `K1.no`) in the order of the current, the consumer not among them. */
  elements: string[];
  /** The source it comes from; absent where the way could not be followed to one. */
  source: string | undefined;
}

interface Way {
  id: string;
  a: Node;
  b: Node;
}

/** Follows currents through a netlist, largest first; made once for many questions. */
export class CurrentPaths {
  private readonly at = new Map<Node, Way[]>();
  private readonly sources: Extract<Element, { kind: 'source' }>[] = [];

  constructor(netlist: Netlist) {
    for (const element of netlist.elements) {
      switch (element.kind) {
        case 'source':
          this.sources.push(element);
          break;
        case 'relay':
          for (const side of ['no', 'nc'] as const) {
            const node = element[side];
            if (node !== null) this.add({ id: `${element.id}.${side}`, a: element.com, b: node });
          }
          break;
        case 'diode':
          this.add({ id: element.id, a: element.a, b: element.k });
          break;
        default:
          this.add({ id: element.id, a: element.a, b: element.b });
      }
    }
  }

  /**
   * Where the current of a consumer comes from and goes to in a state.
   *
   * @param consumer `plus` and `minus` as the netlist names them; a negative current swaps them
   */
  follow(state: Solution, consumer: { id: string; plus: Node; minus: Node; currentA: number }): CurrentPath {
    const [entry, exit] = consumer.currentA >= 0 ? [consumer.plus, consumer.minus] : [consumer.minus, consumer.plus];
    const up = this.walk(state, entry, 'up', consumer.id);
    const down = this.walk(state, exit, 'down', consumer.id);
    return { elements: [...up.ids.reverse(), ...down.ids], source: up.source };
  }

  private walk(
    state: Solution,
    from: Node,
    direction: 'up' | 'down',
    consumer: string,
  ): { ids: string[]; source: string | undefined } {
    const ids: string[] = [];
    const seen = new Set([consumer]);
    for (let node = from; ; ) {
      const source = this.sources.find((each) => (direction === 'up' ? each.p : each.n) === node);
      if (source !== undefined) return { ids, source: source.id };
      let best: { way: Way; to: Node; currentA: number } | undefined;
      for (const way of this.at.get(node) ?? []) {
        if (seen.has(way.id)) continue;
        const currentA = state.currentA[way.id] ?? 0;
        // Counted from a to b: into the node from `a` where the node is `b`.
        const into = way.b === node ? currentA : -currentA;
        const wanted = direction === 'up' ? into : -into;
        if (wanted > 1e-9 && (best === undefined || wanted > best.currentA)) {
          best = { way, to: way.b === node ? way.a : way.b, currentA: wanted };
        }
      }
      if (best === undefined) return { ids, source: undefined };
      seen.add(best.way.id);
      ids.push(best.way.id);
      node = best.to;
    }
  }

  private add(way: Way): void {
    for (const node of new Set([way.a, way.b])) {
      const list = this.at.get(node);
      if (list) list.push(way);
      else this.at.set(node, [way]);
    }
  }
}
