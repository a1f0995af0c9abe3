/**
 * The drawing of a circuit: which symbols stand where and what is written beside them. Made at build time; the reader's
 * numbers and states only change texts and states in it, never its lines.
 */
import { CHASSIS, type Circuit, type Element, netlistOf, type Part } from '../../calc/index.ts';
import { type Edge, type Graph, type Layout, layout } from './layout.ts';

/** Symbols are files of that name in `symbols/`; a wire is only its line. */
export type SymbolName =
  | 'wire'
  | 'battery'
  | 'feed'
  | 'sink'
  | 'fuse'
  | 'contact-make'
  | 'contact-break'
  | 'switch-make'
  | 'switch-break'
  | 'push-make'
  | 'coil'
  | 'diode'
  | 'resistor'
  | 'connector'
  | 'lamp'
  | 'load'
  | 'strip'
  | 'motor'
  | 'buzzer'
  | 'charger'
  | 'heater'
  | 'camera'
  | 'socket';

export interface DrawnPart {
  /** Element of the netlist whose current flows here. */
  id: string;
  /** Part or wire of the circuit file. */
  owner: string;
  symbol: SymbolName;
  x: number;
  y1: number;
  y2: number;
  /** Current in the element's own direction flows up. */
  flipped: boolean;
  /** Name beside it, such as `K1` or `K1 30-87`. */
  name: string;
  /** Value paths written under the name: what it is. What it carries now comes after, as far as there is room. */
  values: string[];
  /** Terminal numbers at its upper and lower end. */
  upper: string;
  lower: string;
}

export interface Drawing extends Omit<Layout, 'parts' | 'grounds' | 'rails'> {
  parts: DrawnPart[];
  grounds: { x: number; y: number; name: string }[];
  rails: { node: string; x1: number; x2: number; y: number; name: string }[];
}

const SYMBOL = 48;
const WIRE = 44;
const CONNECTOR = 48;

/** A column takes a symbol, its terminal numbers on the left and three lines of eight figures on the right. */
const PITCH = { column: 112, columns: 4, bar: 40, margin: 4, lead: 34, tail: 12 };

interface Described {
  edge: Edge;
  owner: string;
  symbol: SymbolName;
  name: string;
  values: string[];
  a: string;
  b: string;
}

const LOADS: Partial<Record<Part['kind'], SymbolName>> = {
  lamp: 'lamp',
  load: 'load',
  strip: 'strip',
  motor: 'motor',
  buzzer: 'buzzer',
  charger: 'charger',
  heater: 'heater',
  camera: 'camera',
  socket: 'socket',
};

/** Sizes that only let the netlist be built: a drawing asks what is joined, not how thick it is. */
function anySizes(circuit: Circuit) {
  const ratingA: Record<string, number> = {};
  const areaMm2: Record<string, number> = {};
  for (const [id, part] of Object.entries(circuit.parts)) if (part.kind === 'fuse') ratingA[id] = 10;
  for (const id of Object.keys(circuit.wires)) areaMm2[id] = 1.5;
  return { ratingA, areaMm2 };
}

/** What each element of the netlist becomes on paper; several may become one symbol. */
function describe(circuit: Circuit): { described: Described[]; rails: string[]; batteries: Map<string, string> } {
  const { netlist, origin } = netlistOf(circuit, undefined, anySizes(circuit));
  const owner = (e: Element) => origin.ownerOf[e.id] ?? e.id;
  const partOf = (e: Element): Part | undefined => circuit.parts[owner(e)];
  const byId = new Map(netlist.elements.map((e) => [e.id, e]));
  const out: Described[] = [];
  // A ground point with resistance is still drawn as one chassis sign, named.
  const grounded = new Set(
    netlist.elements.flatMap((e) => (partOf(e)?.kind === 'chassis' && e.kind === 'resistor' ? [e.a] : [])),
  );
  const at = (n: string) => (grounded.has(n) ? CHASSIS : n);
  const add = (
    e: { id: string },
    ends: [string, string],
    o: {
      symbol: SymbolName;
      owner: string;
      name: string;
      values?: string[];
      a?: string;
      b?: string;
      directed?: boolean;
    },
  ) => {
    const height = o.symbol === 'wire' ? WIRE : o.symbol === 'connector' ? CONNECTOR : SYMBOL;
    out.push({
      edge: { id: e.id, a: at(ends[0]), b: at(ends[1]), height, directed: o.directed ?? false },
      owner: o.owner,
      symbol: o.symbol,
      name: o.name,
      values: o.values ?? [],
      a: o.a ?? '',
      b: o.b ?? '',
    });
  };
  for (const e of netlist.elements) {
    const id = owner(e);
    const part = partOf(e);
    switch (e.kind) {
      case 'source':
        add(e, [e.p, e.n], { symbol: 'battery', owner: id, name: id, directed: true });
        break;
      case 'wire':
        if (id !== e.id) break; // a pigtail belongs to its load's symbol
        add(e, [e.a, e.b], { symbol: 'wire', owner: id, name: id, values: [`${id}.areaMm2`, `${id}.lengthM`] });
        break;
      case 'fuse': {
        const contact = byId.get(`${id}.contact`);
        const end = contact?.kind === 'switch' ? contact.b : e.b;
        if (part?.kind === 'feed') add(e, [e.a, end], { symbol: 'feed', owner: id, name: id, directed: true });
        else add(e, [e.a, e.b], { symbol: 'fuse', owner: id, name: id, values: [`${id}.ratingA`], directed: true });
        break;
      }
      case 'switch': {
        if (part?.kind === 'feed') break;
        const kind = part?.kind === 'switch' ? circuit.inputs[part.input]?.kind : undefined;
        const symbol: SymbolName =
          part?.kind === 'sink' ? 'sink' : e.inverted ? 'switch-break' : kind === 'push' ? 'push-make' : 'switch-make';
        add(e, [e.a, e.b], { symbol, owner: id, name: e.id.replace('.', ' 1-') });
        break;
      }
      case 'relay':
        add(e, [e.coilP, e.coilN], { symbol: 'coil', owner: id, name: id, a: '86', b: '85', directed: true });
        for (const [way, terminal] of [
          ['no', '87'],
          ['nc', '87a'],
        ] as const) {
          const end = e[way];
          if (!end) continue;
          add({ id: `${e.id}.${way}` }, [e.com, end], {
            symbol: way === 'no' ? 'contact-make' : 'contact-break',
            owner: id,
            name: id,
            a: '30',
            b: terminal,
          });
        }
        break;
      case 'diode':
        if (part?.kind === 'relay') break; // built in: the coil's text says so
        add(e, [e.a, e.k], { symbol: 'diode', owner: id, name: id, directed: true });
        break;
      case 'resistor':
        if (part?.kind === 'relay' || part?.kind === 'chassis') break;
        if (part?.kind === 'connector') {
          add(e, [e.a, e.b], { symbol: 'connector', owner: id, name: id, values: [], a: e.id.split('.')[1] ?? '' });
        } else add(e, [e.a, e.b], { symbol: 'resistor', owner: id, name: id });
        break;
      case 'load': {
        const plus = byId.get(`${id}.pigtail+`);
        const minus = byId.get(`${id}.pigtail-`);
        const a = plus?.kind === 'wire' ? plus.a : e.a;
        const b = minus?.kind === 'wire' ? minus.b : e.b;
        const symbol = (part && LOADS[part.kind]) ?? 'load';
        add(e, [a, b], { symbol, owner: id, name: id });
        break;
      }
    }
  }
  return {
    described: out,
    batteries: new Map(netlist.elements.flatMap((e) => (e.kind === 'source' ? [[e.p, owner(e)] as const] : []))),
    rails: railsOf(
      netlist.elements,
      out.map((d) => d.edge),
    ),
  };
}

/** Positive posts that stand on top: the first battery's, and one in every part of the circuit that hangs together without it. */
function railsOf(elements: readonly Element[], edges: readonly Edge[]): string[] {
  const group = new Map<string, string>();
  const find = (n: string): string => {
    const up = group.get(n) ?? n;
    return up === n ? n : find(up);
  };
  for (const { a, b } of edges) if (a !== CHASSIS && b !== CHASSIS) group.set(find(a), find(b));
  const rails: string[] = [];
  for (const e of elements) {
    if (e.kind === 'source' && !rails.some((r) => find(r) === find(e.p))) rails.push(e.p);
  }
  return rails;
}

/** Name of the ground point that a wire ends on; a path that ends on the chassis some other way has none. */
function groundName(circuit: Circuit, edge: string): string {
  const wire = circuit.wires[edge];
  if (!wire) return '';
  for (const ref of [wire.to, wire.from]) if (circuit.parts[ref]?.kind === 'chassis') return ref;
  return '';
}

const drawings = new WeakMap<Circuit, Drawing>();

/** Draws a circuit that has no problems (`circuitProblems`); once a circuit, however many guides show it. */
export function drawingOf(circuit: Circuit): Drawing {
  let drawing = drawings.get(circuit);
  if (!drawing) {
    drawing = draw(circuit);
    drawings.set(circuit, drawing);
  }
  return drawing;
}

function draw(circuit: Circuit): Drawing {
  const { described, rails, batteries } = describe(circuit);
  const graph: Graph = { edges: described.map((d) => d.edge), rails, chassis: CHASSIS };
  const { parts, grounds, rails: bars, ...rest } = layout(graph, PITCH);
  const of = new Map(described.map((d) => [d.edge.id, d]));
  return {
    ...rest,
    parts: parts.map((p) => {
      const d = of.get(p.id)!;
      return {
        ...p,
        owner: d.owner,
        symbol: d.symbol,
        name: d.name,
        values: d.values,
        upper: p.flipped ? d.b : d.a,
        lower: p.flipped ? d.a : d.b,
      };
    }),
    grounds: grounds.map((g) => ({ x: g.x, y: g.y, name: groundName(circuit, g.edge) })),
    // several rails are told apart by their batteries
    rails: bars.map((r) => ({ ...r, name: rails.length > 1 ? `30 ${batteries.get(r.node) ?? ''}`.trim() : '30' })),
  };
}
