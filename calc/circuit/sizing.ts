import { METRIC_SIZES_MM2 } from '../conductor.ts';
import { type Fuse, type FuseOptions, fuseFor } from '../fuse.ts';
import { type GaugeOptions, gaugeFor } from '../gauge.ts';
import { STOCKED_FUSES_A } from '../tables/workshop.ts';
import { type CurrentPath, CurrentPaths, type Peaks } from './current-paths.ts';
import type { Circuit, Element, FusePart, Netlist } from './model.ts';
import {
  type Conditions,
  conditionsOf,
  limitsOf,
  netlistOf,
  type Origin,
  type Sizes,
  supplyVolts,
  USUAL,
  wireOhm,
} from './netlist.ts';
import { fedOf, returnNodes } from './paths.ts';
import { isLoad } from './problems.ts';
import { numberOf, type Values, valuesOf } from './quantities.ts';
import { prepare, type Solver } from './solve.ts';
import { type TruthTable, type TruthTableOptions, truthTable } from './states.ts';
import { peaksOf, type Sweep, sweep } from './sweep.ts';

/** What the workshop keeps and how it sizes. */
export interface Stock {
  fusesA?: readonly number[] | undefined;
  wiresMm2?: readonly number[] | undefined;
  /** Share of a fuse's rating that a steady load may use. */
  continuousFraction?: number | undefined;
  /** Allowed drop from source to load, where the load does not say; share of system voltage. */
  dropFraction?: number | undefined;
}

/**
 * How a fuse came by its rating: the question that `fuseFor` answers, and what the circuit has. `fixedA` where the author
 * chose it.
 */
export interface FuseChoice {
  kind: 'fuse';
  question: FuseOptions & { fixedA?: number };
  ratingA: number;
}
/** How a wire came by its size: the question that `gaugeFor` answers, and what the circuit has. */
export interface WireChoice {
  kind: 'wire';
  question: GaugeOptions & { fixedMm2?: number };
  areaMm2: number;
}

/** A part written `auto` for which there is no answer. It got the safest size there is, and the circuit must not be built. */
export interface SizingProblem {
  rule: 'no-fuse-fits' | 'no-wire-fits';
  part: string;
  message: string;
  cure: string;
}

export interface Sizing {
  sizes: Sizes;
  /** Every fuse and wire of the circuit, `auto` or not, by id. */
  choices: Record<string, FuseChoice | WireChoice>;
  problems: SizingProblem[];
}

/** A coil's line may lose this share before the relay is in doubt; common practice, no source. */
const COIL_DROP_FRACTION = 0.05;
/** Part of a load's drop budget that stays for wire, however much fixed parts use up: sizes stay sane, a rule complains. */
const LEAST_SHARE = 0.1;
/** A wire that carries nothing is still asked for as if it carried this [A]. */
const LEAST_A = 0.01;
/** Thinnest wire that a workshop pulls by hand [mm²]; common practice, no source. */
const LEAST_MM2 = 0.5;
/**
 * A large circuit with many inputs is not tried in all combinations: so many elements times combinations keep a proof to
 * some seconds. What was covered instead stands in its coverage.
 */
const MOST_FIGURES = 400_000;
const LEAST_COMBINATIONS = 64;
/** Sizes only grow from round to round, so this many steps are never reached but by a circuit that makes no sense. */
const MOST_ROUNDS = 8;

/**
 * Ratings and areas for everything written `auto`, and how each fuse and wire of the circuit was come by.
 *
 * A wire is sized for the largest current it carries in any state, at the supply where that is largest. The drop a load
 * allows is shared along the load's own copper in proportion to length, after what contacts, fuses and fixed wires lose.
 * A fuse carries the largest current and the inrush behind it; wires with a fixed size cap it, wires written `auto` grow
 * to suit it. Sizes only ever grow while this is repeated, so it ends, and ends the same every time.
 *
 * @param circuit without problems (`circuitProblems`)
 * @param given job values in calc's units; default the author's
 * @param stock what the workshop keeps; default calc's own lists
 * @returns sizes, choices with the questions asked, and what has no answer
 */
export function sizeCircuit(circuit: Circuit, given?: Values, stock: Stock = {}): Sizing {
  return solveSized(circuit, valuesOf(circuit, given), stock).sizing;
}

/** A circuit with its sizes found, and the states it was solved in at last. */
export interface SizedCircuit {
  sizing: Sizing;
  netlist: Netlist;
  origin: Origin;
  solver: Solver;
  /** At resting, then at charging supply. */
  table: TruthTable;
  /** Currents over every settled state of the table. */
  peaks: Peaks;
}

/** What an earlier proof of the same wiring has shown; figures may differ, wires may not. */
export interface Known {
  /** Equal inputs can find its relays in different positions. */
  latching: boolean;
  /** Relays race in some state. */
  racing: boolean;
  netlist: Netlist;
}

/** As `sizeCircuit`, with the solution that the sizes were checked against: a proof needs both. */
export function solveSized(circuit: Circuit, values: Values, stock: Stock, known?: Known): SizedCircuit {
  const sizer = new Sizer(circuit, values, stock);
  const mostCombinations = Math.max(LEAST_COMBINATIONS, Math.floor(MOST_FIGURES / sizer.netlist.elements.length));
  const volts = (['resting', 'charging', 'lowest'] as const).map((state) => supplyVolts(circuit, values, state));
  const [resting, charging, lowest] = volts as [Volts, Volts, Volts];
  const sizing = { races: 'none', mostCombinations, histories: false } as const;
  const both: TruthTableOptions = {
    supplyVariants: [resting, charging],
    mostCombinations,
    histories: known?.latching !== false,
  };
  let like = known?.netlist;
  if (sizer.hasOpen) {
    // At every supply at which something draws most: the first sizes are then mostly the last ones.
    const first = sizer.isElectronic ? [charging, lowest] : [charging];
    sizer.learn(sweep(prepare(sizer.netlist, like), { ...sizing, supplyVariants: first }));
    like = sizer.netlist;
    sizer.grow();
  }
  for (let round = 0; ; round++) {
    const solver = prepare(sizer.netlist, like);
    like = sizer.netlist;
    const swept = sweep(solver, { ...both, races: 'none' });
    // Only electronic loads draw more from less voltage.
    if (sizer.isElectronic) sizer.learn(swept, sweep(solver, { ...sizing, supplyVariants: [lowest] }));
    else sizer.learn(swept);
    if (round < MOST_ROUNDS && sizer.hasOpen && sizer.grow()) continue;
    const table = known?.racing === false ? swept.table() : truthTable(solver, { ...both, races: 'last' });
    return {
      sizing: sizer.result(),
      netlist: sizer.netlist,
      origin: sizer.origin,
      solver,
      table,
      peaks: peaksOf(swept),
    };
  }
}

type Volts = Record<string, number>;

interface Consumer {
  id: string;
  plus: string;
  minus: string;
  dropFraction: number;
  isLoad: boolean;
}

/** What a wire has to do; `fuseA` where a fuse stands ahead of it or behind it. */
interface Need {
  currentA: number;
  lengthM: number;
  allowedDropFraction: number;
  fuseA: number | undefined;
}

/** What a wire or fuse has behind it. */
interface Reach {
  /** Largest of the smallest fuses over all ways to a wire [A]; infinite where one way has none. */
  exposureA: Map<string, number>;
  /** Wires whose last fuse this is, over some way. */
  behind: Map<string, string[]>;
  /** For a wire that no fuse protects: the largest fuse it feeds [A]. */
  feedsA: Map<string, number>;
}

class Sizer {
  netlist: Netlist;
  origin: Origin;
  /** Something is written `auto`. */
  readonly hasOpen: boolean;
  private readonly circuit: Circuit;
  private readonly values: Values;
  private readonly stock: Stock;
  private readonly autoFuses: string[];
  private readonly autoWires: string[];
  private readonly sizesMm2: readonly number[];
  /** How each wire of the circuit is laid, and what it may carry so, by size. */
  private readonly laid = new Map<string, { conditions: Conditions; limitA: (areaMm2: number) => number }>();
  private readonly sizes: Sizes = { ratingA: {}, areaMm2: {} };
  private readonly maxA = new Map<string, number>();
  /** The ways that current was seen to take to each consumer. */
  private ways: readonly { consumer: Consumer; path: CurrentPath }[] = [];
  /** Most demanding metres of copper per volt of budget, by wire; absent until asked for with what was learned last. */
  private demands: Map<string, { lengthM: number; budgetV: number }> | undefined;
  private inrush = new Map<string, { inrushA: number; inrushMs: number }>();
  private reached: { netlist: Netlist; reach: Reach } | undefined;

  constructor(circuit: Circuit, values: Values, stock: Stock) {
    this.circuit = circuit;
    this.values = values;
    this.stock = stock;
    const parts = Object.entries(circuit.parts);
    this.autoFuses = parts.filter(([, part]) => part.kind === 'fuse' && part.ratingA === 'auto').map(([id]) => id);
    this.autoWires = Object.keys(circuit.wires).filter((id) => circuit.wires[id]!.areaMm2 === 'auto');
    this.hasOpen = this.autoFuses.length + this.autoWires.length > 0;
    const sizes = stock.wiresMm2 ?? METRIC_SIZES_MM2.filter((size) => size >= LEAST_MM2);
    this.sizesMm2 = [...sizes].sort((a, b) => a - b);
    for (const [id, wire] of Object.entries(circuit.wires)) {
      const conditions = conditionsOf(wire, values);
      this.laid.set(id, { conditions, limitA: limitsOf(conditions) });
    }
    // The first solution takes what is not known yet as if it were not there: no drop, hence the most current.
    ({ netlist: this.netlist, origin: this.origin } = netlistOf(circuit, values, {
      ratingA: Object.fromEntries(this.autoFuses.map((id) => [id, 100])),
      areaMm2: Object.fromEntries(this.autoWires.map((id) => [id, this.sizesMm2.at(-1)!])),
    }));
  }

  get isElectronic(): boolean {
    return this.netlist.elements.some((each) => each.kind === 'load' && each.model === 'constant-power');
  }

  /** Takes in what sweeps show: the largest currents so far, and the ways they go in the last of them. */
  learn(...sweeps: readonly [...Sweep[], Sweep]): void {
    for (const { solver, lowestA, highestA } of sweeps) {
      for (let k = 0; k < solver.branches.length; k++) {
        const { id } = solver.branches[k]!;
        const currentA = Math.max(highestA[k]!, -lowestA[k]!);
        // Rounding must not make a size grow that another run would not.
        if (currentA > (this.maxA.get(id) ?? 0) * (1 + 1e-9)) this.maxA.set(id, currentA);
      }
    }
    const last = sweeps.at(-1)!;
    this.ways = this.pathsOf(last);
    this.demands = undefined;
    this.inrush = this.inrushes(last);
  }

  /** One round: size everything open anew; false where nothing grew. */
  grow(): boolean {
    let grew = false;
    const rate = (id: string, ratingA: number): void => {
      if (ratingA <= (this.sizes.ratingA[id] ?? 0)) return;
      this.sizes.ratingA[id] = ratingA;
      grew = true;
    };
    const before = this.reach();
    for (const id of this.autoFuses) rate(id, this.fuse(id, before, 'to be sized').ratingA);
    // What a fuse takes of a drop budget hangs on its rating: wires are sized for the fuse that is there.
    if (grew) this.resize();
    this.demands = undefined;
    const reach = this.reach();
    for (const id of this.autoWires) {
      const need = this.needOf(id, reach);
      const areaMm2 = this.sizesMm2.find((size) => this.serves(id, need, size)) ?? this.sizesMm2.at(-1)!;
      if (areaMm2 <= (this.sizes.areaMm2[id] ?? 0)) continue;
      this.sizes.areaMm2[id] = areaMm2;
      grew = true;
    }
    if (grew) this.resize();
    return grew;
  }

  result(): Sizing {
    const reach = this.reach();
    const choices: Sizing['choices'] = {};
    const problems: SizingProblem[] = [];
    const refused = (part: string, what: 'fuse' | 'wire', answer: { reasons: string[]; change: string[] }): void => {
      const message = `No ${what} fits at ${part}. ${answer.reasons.join(' ')}`;
      problems.push({ rule: `no-${what}-fits`, part, message, cure: answer.change.join(' ') });
    };
    for (const [id, part] of Object.entries(this.circuit.parts)) {
      if (part.kind !== 'fuse') continue;
      const choice = this.fuse(id, reach, 'as sized');
      choices[id] = choice;
      if (part.ratingA !== 'auto') continue;
      // What the wires were grown for is what the circuit has, whether or not the question has another answer now.
      choice.ratingA = this.sizes.ratingA[id]!;
      const answer = fuseFor(choice.question);
      if (!answer.found) refused(id, 'fuse', answer);
    }
    for (const [id, wire] of Object.entries(this.circuit.wires)) {
      const choice = this.wire(id, reach);
      choices[id] = choice;
      if (wire.areaMm2 !== 'auto') continue;
      // Sizes only grow: where the thickest there is serves, what was grown to serves too.
      if (this.serves(id, this.needOf(id, reach), this.sizesMm2.at(-1)!)) continue;
      const answer = gaugeFor(choice.question);
      if (!answer.found) refused(id, 'wire', answer);
    }
    return { sizes: this.sizes, choices, problems };
  }

  /** Writes the sizes found so far into the netlist. */
  private resize(): void {
    const elements = this.netlist.elements.map((element): Element => {
      const ratingA = element.kind === 'fuse' ? this.sizes.ratingA[element.id] : undefined;
      if (element.kind === 'fuse' && ratingA !== undefined) {
        const part = this.circuit.parts[element.id];
        const own = part?.kind === 'fuse' ? part.ohm : undefined;
        return { ...element, ratingA, ohm: own === undefined ? USUAL.fuseDropV / ratingA : numberOf(own, this.values) };
      }
      const areaMm2 = element.kind === 'wire' ? this.sizes.areaMm2[element.id] : undefined;
      if (element.kind !== 'wire' || areaMm2 === undefined) return element;
      const limitA = this.laid.get(element.id)!.limitA(areaMm2);
      return { ...element, areaMm2, limitA, ohm: wireOhm(areaMm2, element.lengthM) };
    });
    this.netlist = { ...this.netlist, elements };
  }

  /** Shares every consumer's drop budget along its copper. */
  private share(): Map<string, { lengthM: number; budgetV: number }> {
    const elements = new Map(this.netlist.elements.map((each) => [each.id, each]));
    const demands = new Map<string, { lengthM: number; budgetV: number }>();
    for (const { consumer, path } of this.ways) {
      const budgetV = consumer.dropFraction * this.circuit.systemV;
      let fixedV = 0;
      let autoM = 0;
      const wires: Extract<Element, { kind: 'wire' }>[] = [];
      for (const id of path.elements) {
        // A contact is named after its relay: `K1.no`.
        const element = elements.get(id) ?? elements.get(id.split('.')[0]!);
        if (element === undefined) continue;
        const currentA = this.maxA.get(id) ?? 0;
        if (element.kind === 'wire' && this.circuit.wires[id] !== undefined) wires.push(element);
        if (element.kind === 'wire' && this.isAuto(id)) autoM += element.lengthM;
        else if (element.kind === 'relay') fixedV += currentA * element.contactOhm;
        // What a resistor or diode takes is meant, and no wire could win it back.
        else if ('ohm' in element && (element.kind !== 'resistor' || element.joint)) fixedV += currentA * element.ohm;
      }
      for (const wire of wires) {
        const isAuto = this.isAuto(wire.id);
        const ownV = isAuto ? 0 : (this.maxA.get(wire.id) ?? 0) * wire.ohm;
        const demand = {
          lengthM: autoM + (isAuto ? 0 : wire.lengthM),
          budgetV: Math.max(budgetV - (fixedV - ownV), LEAST_SHARE * budgetV),
        };
        const known = demands.get(wire.id);
        if (known === undefined || demand.lengthM / demand.budgetV > known.lengthM / known.budgetV) {
          demands.set(wire.id, demand);
        }
      }
    }
    return demands;
  }

  /** Ways that the current of each consumer takes, each once, over all states. */
  private pathsOf({ solver, states }: Sweep): { consumer: Consumer; path: CurrentPath }[] {
    const ways = new CurrentPaths(this.netlist, solver.branchOf);
    const found: { consumer: Consumer; path: CurrentPath }[] = [];
    const seen = new Set<CurrentPath>();
    for (const consumer of this.consumers()) {
      const branch = solver.branchOf(consumer.id);
      // A trickle through an open circuit is no way to size wire for.
      const leastA = Math.max(0.5 * (this.maxA.get(consumer.id) ?? 0), 1e-6);
      for (const state of states) {
        const currentA = state.currentA[branch]!;
        if (Math.abs(currentA) < leastA) continue;
        const path = ways.follow(state.currentA, { ...consumer, currentA });
        if (seen.has(path)) continue;
        seen.add(path);
        found.push({ consumer, path });
      }
    }
    return found;
  }

  private consumers(): Consumer[] {
    return this.netlist.elements.flatMap((element): Consumer[] => {
      if (element.kind === 'load') {
        const part = this.circuit.parts[element.id];
        const own = part !== undefined && isLoad(part) ? part.dropFraction : undefined;
        const dropFraction = own ?? this.stock.dropFraction ?? USUAL.dropFraction;
        return [{ id: element.id, plus: element.a, minus: element.b, dropFraction, isLoad: true }];
      }
      if (element.kind !== 'relay') return [];
      const { id, coilP, coilN } = element;
      return [{ id, plus: coilP, minus: coilN, dropFraction: COIL_DROP_FRACTION, isLoad: false }];
    });
  }

  /** Inrush behind each fuse. */
  private inrushes(swept: Sweep): Map<string, { inrushA: number; inrushMs: number }> {
    const loads = new Map<string, Set<string>>();
    for (const { consumer, path } of this.ways) {
      if (!consumer.isLoad) continue;
      for (const id of path.elements) if (this.circuit.parts[id]?.kind === 'fuse') note(loads, id, consumer.id);
    }
    return new Map([...loads].map(([fuse, behind]) => [fuse, this.inrushOf(behind, swept)]));
  }

  /** First current of the loads that come on together, at its worst. */
  private inrushOf(loads: ReadonlySet<string>, { solver, states }: Sweep): { inrushA: number; inrushMs: number } {
    const figures = [...loads].map((id) => {
      const part = this.circuit.parts[id];
      const [inrushA, inrushMs] = part && isLoad(part) ? [part.inrushA, part.inrushMs] : [undefined, undefined];
      return {
        at: solver.loads.findIndex((load) => load.id === id),
        inrushA: inrushA === undefined ? 0 : numberOf(inrushA, this.values),
        inrushMs: inrushMs === undefined ? 0 : numberOf(inrushMs, this.values),
      };
    });
    let inrushA = 0;
    for (const state of states) {
      const together = figures.filter(({ at }) => state.on[at]);
      inrushA = Math.max(
        inrushA,
        together.reduce((sum, each) => sum + each.inrushA, 0),
      );
    }
    return { inrushA, inrushMs: Math.max(0, ...figures.map((each) => each.inrushMs)) };
  }

  /** Looked for once for every netlist. */
  private reach(): Reach {
    if (this.reached?.netlist !== this.netlist) this.reached = { netlist: this.netlist, reach: this.findReach() };
    return this.reached.reach;
  }

  private findReach(): Reach {
    const returns = returnNodes(this.netlist);
    const fed = fedOf(this.netlist);
    const reach: Reach = { exposureA: new Map(), behind: new Map(), feedsA: new Map() };
    const fuses = this.netlist.elements.filter((each) => each.kind === 'fuse');
    for (const wire of this.netlist.elements) {
      if (wire.kind !== 'wire') continue;
      const ways = [wire.a, wire.b].flatMap((node) => (returns.has(node) ? [] : (fed.get(node) ?? [])));
      if (ways.length === 0) continue;
      const exposureA = Math.max(
        ...ways.map((way) => (way.lastFuse === undefined ? Number.POSITIVE_INFINITY : way.smallestA)),
      );
      reach.exposureA.set(wire.id, exposureA);
      if (Number.isFinite(exposureA)) {
        for (const fuse of new Set(ways.map((way) => way.lastFuse!))) append(reach.behind, fuse, wire.id);
      } else {
        const next = fuses.filter((fuse) => [fuse.a, fuse.b].some((node) => node === wire.a || node === wire.b));
        if (next.length > 0) reach.feedsA.set(wire.id, Math.max(...next.map((fuse) => fuse.ratingA)));
      }
    }
    return reach;
  }

  private fuse(id: string, reach: Reach, wires: 'to be sized' | 'as sized'): FuseChoice {
    const part = this.circuit.parts[id] as FusePart;
    const behind = (reach.behind.get(id) ?? []).map((wireId) => {
      const wire = this.netlist.elements.find((each) => each.kind === 'wire' && each.id === wireId);
      const limitA = wire?.kind === 'wire' ? wire.limitA : 0;
      // A wire that is still to be sized stops nothing but what even the thickest could not stand behind.
      const open = wires === 'to be sized' && this.isAuto(wireId);
      const most = open ? this.laid.get(wireId)!.limitA(this.sizesMm2.at(-1)!) : limitA;
      return { name: this.wireName(wireId), limitA: most };
    });
    const strip = part.form === 'strip';
    const question: FuseChoice['question'] = {
      currentA: Math.max(this.maxA.get(id) ?? 0, LEAST_A),
      ...(this.stock.continuousFraction === undefined ? {} : { continuousFraction: this.stock.continuousFraction }),
      ...this.inrush.get(id),
      wires: behind.length > 0 ? behind : [{ name: 'no wire', limitA: 100_000 }],
      // Bolted strip fuses come in the drawer's large ratings and open at the times of the large blade.
      form: part.form === 'strip' ? 'E' : part.form,
      ...(strip || this.stock.fusesA ? { stockedA: this.ratings(part) } : {}),
      systemV: this.circuit.systemV,
      ...(part.ratingA === 'auto' ? {} : { fixedA: numberOf(part.ratingA, this.values) }),
    };
    if (question.fixedA !== undefined) return { kind: 'fuse', question, ratingA: question.fixedA };
    const answer = fuseFor(question);
    return { kind: 'fuse', question, ratingA: answer.found ? answer.ratingA : safestFuse(answer) };
  }

  /** Ratings of this form that the workshop keeps. */
  private ratings(part: FusePart): readonly number[] {
    const kept = this.stock.fusesA ?? STOCKED_FUSES_A;
    const ranges = { F: [2, 30], C: [1, 40], E: [20, 80], strip: [30, 1000] } as const;
    const [least, most] = ranges[part.form];
    const fitting = kept.filter((ratingA) => ratingA >= least && ratingA <= most);
    return fitting.length > 0 ? fitting : kept;
  }

  private wire(id: string, reach: Reach): WireChoice {
    const { currentA, lengthM, allowedDropFraction, fuseA } = this.needOf(id, reach);
    const { areaMm2 } = this.circuit.wires[id]!;
    const question: WireChoice['question'] = {
      currentA,
      lengthM,
      systemV: this.circuit.systemV,
      allowedDropFraction,
      conductorC: USUAL.copperC,
      ...(fuseA === undefined ? {} : { minFuseA: fuseA }),
      ...this.laid.get(id)!.conditions,
      sizesMm2: this.sizesMm2,
      ...(areaMm2 === 'auto' ? {} : { fixedMm2: numberOf(areaMm2, this.values) }),
    };
    return { kind: 'wire', question, areaMm2: question.fixedMm2 ?? this.sizes.areaMm2[id]! };
  }

  /** What a wire has to do: its current, its share of a drop, and the fuse it stands behind. */
  private needOf(id: string, reach: Reach): Need {
    const demand = (this.demands ??= this.share()).get(id);
    const budgetV = demand?.budgetV ?? COIL_DROP_FRACTION * this.circuit.systemV;
    const exposureA = reach.exposureA.get(id);
    return {
      currentA: Math.max(this.maxA.get(id) ?? 0, LEAST_A),
      lengthM: demand?.lengthM ?? numberOf(this.circuit.wires[id]!.lengthM, this.values),
      allowedDropFraction: Math.min(0.5, Math.max(0.001, budgetV / this.circuit.systemV)),
      fuseA: exposureA !== undefined && Number.isFinite(exposureA) ? exposureA : reach.feedsA.get(id),
    };
  }

  /** What `gaugeFor` asks of a size, without the working it shows: sizes are tried by the hundred here. */
  private serves(id: string, { currentA, lengthM, allowedDropFraction, fuseA = 0 }: Need, areaMm2: number): boolean {
    const slack = 1 + 1e-9;
    const dropV = currentA * wireOhm(areaMm2, lengthM);
    if (dropV > allowedDropFraction * this.circuit.systemV * slack) return false;
    const limitA = this.laid.get(id)!.limitA(areaMm2) * slack;
    return currentA <= limitA && fuseA <= limitA;
  }

  private isAuto(wire: string): boolean {
    return this.circuit.wires[wire]?.areaMm2 === 'auto';
  }

  private wireName(id: string): string {
    const owner = this.origin.ownerOf[id] ?? id;
    return owner === id ? `wire ${id}` : `pigtail of ${owner}`;
  }
}

/** Where no fuse does both: the largest that still protects the wires, else the smallest there is. */
function safestFuse(answer: Extract<Fuse, { found: false }>): number {
  const ratings = answer.ratings.map((each) => each.ratingA);
  return ratings.filter((ratingA) => ratingA <= answer.upperA * (1 + 1e-9)).at(-1) ?? ratings[0]!;
}

function note<K, V>(map: Map<K, Set<V>>, key: K, value: V): void {
  const known = map.get(key);
  if (known) known.add(value);
  else map.set(key, new Set([value]));
}

function append<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
