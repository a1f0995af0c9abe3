import { STOCKED_FUSES_A } from '../../tables/workshop.ts';
import { type Peaks, peakCurrents } from '../current-paths.ts';
import { LoadWays } from '../load-ways.ts';
import type { Circuit, Element, Finding, InputState, Netlist, Severity, Solution } from '../model.ts';
import type { Origin, Sizes } from '../netlist.ts';
import { type Edge, fedOf, isConductor, type Path, type Paths, pathsOf, returnNodes, sourceStarts } from '../paths.ts';
import type { Values } from '../quantities.ts';
import { currentOf } from '../report.ts';

/** What the customer wants of one state or step. */
export interface Wanted {
  /** Wanted on, off, or (null) coming and going. */
  on: Record<string, boolean | null>;
  settles: boolean;
  /** Bounds of a load's signed voltage [V], where on and off are not enough. */
  rangeV?: Record<string, [number, number]>;
}

/** What an author wrote, for rules that need more than the network. */
export interface Written {
  circuit: Circuit;
  values: Values;
  origin: Origin;
  sizes: Sizes;
  /** Highest and lowest supply that the states were solved at [V]. */
  highestV: number;
  lowestV: number;
  /** Everything off, engine off. */
  standby: { inputs: InputState; drawMa: number; loadsOn: string[]; energised: Record<string, boolean | null> };
  /** Allowed drop where a load does not say [share of system voltage]; default that of `USUAL`. */
  dropFraction?: number | undefined;
}

/** What a rule looks at. */
export interface RuleContext {
  netlist: Netlist;
  /** Every solved state: the truth table at each supply, then the steps of a sequence. */
  states: readonly Solution[];
  /** What is wanted in each of `states`; absent where nobody said. */
  wanted?: readonly (Wanted | undefined)[] | undefined;
  /** Relays whose end state depends on the order in which they move, with the state of the inputs. */
  races?: readonly { relays: string[]; inputs: InputState }[] | undefined;
  /** Wire that may lie ahead of the first fuse [m]. */
  unfusedStubM: number;
  written?: Written | undefined;
  /** Currents over the settled states, where they are known already. */
  peaks?: Peaks | undefined;
}

/** What a rule says, before its severity and standing words are added. */
export interface Draft {
  parts: string[];
  states?: InputState[];
  message: string;
  severity?: Severity;
  why?: string;
  cure?: string;
}

export interface Rule {
  id: string;
  /** Its id in the neutral exchange format, where it has one. */
  neutralId?: string;
  severity: Severity;
  title: string;
  why: string;
  cure: string;
  source: string;
  check: (look: Look) => Draft[];
}

/** An example beside a rule: a sketch of a network (see `sketch.ts`) or a whole circuit. */
export interface Example {
  title: string;
  netlist?: Netlist;
  circuit?: Circuit;
  /** Loads wanted on in a state; given as a test of the inputs. */
  wants?: (inputs: InputState) => Record<string, boolean>;
}
export interface FailingExample extends Example {
  /** The exact messages, in order. */
  messages: string[];
}

/** A wire with no fuse between it and a source. */
export interface Unfused {
  source: string;
  wire: string;
  lengthM: number;
}

/** A context with what several rules work out, once. */
export class Look {
  readonly context: RuleContext;
  readonly netlist: Netlist;
  readonly states: readonly Solution[];
  readonly written: Written | undefined;
  readonly element = new Map<string, Element>();
  private readonly kinds = new Map<Element['kind'], Element[]>();
  private made: {
    peaks?: Peaks;
    ways?: LoadWays;
    unfused?: Unfused[];
    ends?: Set<string>;
  } = {};

  constructor(context: RuleContext) {
    this.context = context;
    this.netlist = context.netlist;
    this.states = context.states;
    this.written = context.written;
    for (const element of context.netlist.elements) this.element.set(element.id, element);
  }

  of<K extends Element['kind']>(kind: K): readonly Extract<Element, { kind: K }>[] {
    let found = this.kinds.get(kind);
    if (found === undefined) {
      found = this.netlist.elements.filter((each) => each.kind === kind);
      this.kinds.set(kind, found);
    }
    return found as Extract<Element, { kind: K }>[];
  }

  get paths(): Paths {
    return pathsOf(this.netlist);
  }

  /** Follows the loads' currents in solved states. */
  get ways(): LoadWays {
    return (this.made.ways ??= new LoadWays(this.netlist));
  }

  /** Wires that a source reaches without a fuse, with the copper from the source to their far end. */
  unfused(): readonly Unfused[] {
    return (this.made.unfused ??= this.of('source').flatMap((source) => this.unfusedFrom(source)));
  }

  private unfusedFrom(source: Extract<Element, { kind: 'source' }>): Unfused[] {
    const found = this.paths.search({
      starts: [{ node: source.p, start: source.id }],
      through: (edge) => isConductor(edge) && edge.element.kind !== 'fuse',
      ends: this.returns,
      by: 'lengthM',
    });
    const reachM = (node: string): number =>
      this.isReturn(node) ? Number.POSITIVE_INFINITY : (found.get(node)?.[0]?.lengthM ?? Number.POSITIVE_INFINITY);
    return this.of('wire').flatMap((wire) => {
      const lengthM = Math.min(reachM(wire.a), reachM(wire.b)) + wire.lengthM;
      return Number.isFinite(lengthM) ? [{ source: source.id, wire: wire.id, lengthM }] : [];
    });
  }

  /** Every way from a source's positive through conductors and fuses, over any positions of switches and relays. */
  get fed(): Map<string, Path[]> {
    return fedOf(this.netlist);
  }

  /** Chassis and the other side of every source. */
  get returns(): ReadonlySet<string> {
    return (this.made.ends ??= returnNodes(this.netlist));
  }

  /** Part or wire that an element belongs to. */
  ownerOf(id: string): string {
    return this.written?.origin.ownerOf[id] ?? id;
  }

  /** Chassis, or the other side of a source: a way out of a source is at its end here. */
  isReturn(node: string): boolean {
    return this.returns.has(node);
  }

  ratingA(fuse: string): number {
    const element = this.element.get(fuse);
    return element?.kind === 'fuse' ? element.ratingA : Number.NaN;
  }

  /** Largest fuse in the drawer that a limit allows [A]. */
  largestFuseA(limitA: number): number | undefined {
    return STOCKED_FUSES_A.filter((rating) => rating <= limitA * (1 + 1e-9)).at(-1);
  }

  isConductor(edge: Edge): boolean {
    return isConductor(edge);
  }

  /** Nodes that a source's positive can reach without crossing a load or a coil; resistors may be crossed. */
  reached(without?: Element): ReadonlySet<string> {
    const search = { starts: sourceStarts(this.netlist), ends: this.returns, by: 'ohm' } as const;
    return new Set(this.paths.search({ ...search, through: (edge) => edge.element !== without }).keys());
  }

  /** Nodes from which current can get back to chassis or a source's negative, crossing no load and no coil. */
  returned(without?: Element): ReadonlySet<string> {
    const starts = [...this.returns].map((node) => ({ node, start: 'return' }));
    const ends = new Set(this.of('source').map((source) => source.p));
    const through = (edge: Edge) => edge.element !== without;
    return new Set(this.paths.search({ starts, ends, through, by: 'ohm', towards: 'source' }).keys());
  }

  /** The settled state in which something is greatest, with its value; nothing where it is never above `least`. */
  worst(
    measure: (state: Solution, at: number) => number,
    least: number,
  ): { state: Solution; value: number; states: InputState[] } | undefined {
    let worst: { state: Solution; value: number } | undefined;
    const states: InputState[] = [];
    for (const [at, state] of this.states.entries()) {
      if (!state.settles) continue;
      const value = measure(state, at);
      if (!(value > least)) continue;
      states.push(state.inputs);
      if (worst === undefined || value > worst.value) worst = { state, value };
    }
    return worst && { ...worst, states };
  }

  /** As `worst`, of the current through an element or contact [A]; most elements never come near their limit. */
  worstCurrent(id: string, limitA: number): ReturnType<Look['worst']> {
    const peak = this.peaks.get(id);
    if (peak === undefined || Math.max(peak.highestA, -peak.lowestA) <= limitA) return undefined;
    return this.worst((state) => Math.abs(currentOf(state, id) ?? 0), limitA);
  }

  /** Least and greatest current of every element over the settled states. */
  get peaks(): Peaks {
    return (this.made.peaks ??= this.context.peaks ?? peakCurrents(this.states.filter((state) => state.settles)));
  }

  /** An input that is an electronic output of the vehicle, which its limit and the coil's kick can destroy. */
  isOutput(input: string): boolean {
    const found = this.netlist.inputs.find((each) => each.id === input);
    return found !== undefined && (found.kind === 'signal' || found.limitA !== undefined);
  }

  /** "wire W2", "fuse F1", "L1's pigtail": an element in words. */
  name(id: string): string {
    const element = this.element.get(id);
    const owner = this.written?.origin.ownerOf[id] ?? id;
    const part = this.written?.circuit.parts[owner];
    const suffix = id.slice(owner.length + 1);
    if (suffix.startsWith('pigtail')) return `the ${suffix.endsWith('+') ? 'plus' : 'minus'} pigtail of ${owner}`;
    if (suffix === 'clamp') return `the clamp of relay ${owner}`;
    if (part?.kind === 'connector') return `pole ${suffix} of connector ${owner}`;
    if (part?.kind === 'feed') return element?.kind === 'fuse' ? `the vehicle's fuse of ${owner}` : `feed ${owner}`;
    const kind = part && element?.kind !== 'wire' ? (WORD[part.kind] ?? part.kind) : (element?.kind ?? '');
    return kind === '' ? owner : `${kind} ${owner}`;
  }

  /** "output door", "the side door contact". */
  inputName(id: string): string {
    const label = this.written?.circuit.inputs[id]?.label;
    const what = this.isOutput(id) ? 'output' : 'input';
    return label === undefined ? `${what} ${id}` : `${what} "${label}"`;
  }

  Contact(id: string): string {
    return capital(this.contact(id));
  }

  /** The same at the head of a sentence. */
  Name(id: string): string {
    return capital(this.name(id));
  }

  /** "contact 87 of relay K1". */
  contact(id: string): string {
    const [relay, side] = id.split('.');
    const terminal = { no: '87', nc: '87a', com: '30' }[side ?? ''];
    return terminal === undefined ? this.name(id) : `contact ${terminal} of relay ${relay}`;
  }

  /** "with side door open and master switch on"; "with everything off". */
  stateWords(inputs: InputState): string {
    const parts = this.netlist.inputs.filter(({ id }) => inputs[id]).map(({ id }) => this.inputWords(id));
    if (parts.length === 0) return this.netlist.inputs.length === 0 ? 'always' : 'with everything off';
    const off = this.netlist.inputs.filter(({ id }) => !inputs[id]);
    // A long list is read faster by what is missing from it.
    if (parts.length > LONG_LIST && off.length < parts.length) {
      const but = off.map(({ id }) => this.label(id));
      return off.length === 0 ? 'with everything on' : `with everything on but ${list(but)}`;
    }
    return `with ${list(parts)}`;
  }

  private label(id: string): string {
    const input = this.written?.circuit.inputs[id];
    return input === undefined ? id : decapital(input.label);
  }

  private inputWords(id: string): string {
    const input = this.written?.circuit.inputs[id];
    if (input === undefined) return `${id} on`;
    return `${this.label(id)} ${input.on ?? ON_WORD[input.kind]}`;
  }
}

/** More inputs than this are not named one by one. */
const LONG_LIST = 4;

const ON_WORD = { door: 'open', ignition: 'on', switch: 'on', push: 'pressed', signal: 'on' } as const;

/** Kinds whose name on the page is not the word in the file. */
const WORD: Partial<Record<string, string>> = { sink: 'output' };

/** "Side door" inside a sentence; an abbreviation keeps its capitals. */
const decapital = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "a", "a and b", "a, b and c". */
export function list(items: readonly string[]): string {
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** A figure as a person writes it: three digits, no trailing zeros. */
export function figure(value: number): string {
  if (value === 0) return '0';
  const digits = Math.max(0, Math.min(6, 2 - Math.floor(Math.log10(Math.abs(value)))));
  return String(Number(value.toFixed(digits)));
}

/** The states, each once, in order. */
export function distinct(states: readonly InputState[]): InputState[] {
  const seen = new Set<string>();
  return states.filter((state) => {
    const key = Object.keys(state)
      .filter((name) => state[name])
      .sort()
      .join(' ');
    return !seen.has(key) && seen.add(key);
  });
}

/** Adds to each draft what is the same for the whole rule. */
export function findingsOf(rule: Rule, look: Look): Finding[] {
  return rule.check(look).map((draft) => ({
    rule: rule.id,
    severity: draft.severity ?? rule.severity,
    parts: draft.parts,
    states: distinct(draft.states ?? []),
    message: draft.message,
    why: draft.why ?? rule.why,
    cure: draft.cure ?? rule.cure,
  }));
}
