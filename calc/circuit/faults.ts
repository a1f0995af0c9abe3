/** The single-fault study: every fault in every state, as it ends after the fuses have blown. */
import { type Coverage, combinations } from './coverage.ts';
import { BLOWS_AT_TIMES_RATING, type Fault, type FaultSet, faultsOf, patchOf } from './fault.ts';
import type { Element, InputState, Netlist, RelayState, Solution } from './model.ts';
import { report } from './report.ts';
import { type Frame, type Point, type Solver, solverOf, type Variant } from './solve.ts';
import { affordable } from './states.ts';

export { applyFault, describeFault, type Fault, type FaultSet, faultsOf } from './fault.ts';

export interface FaultRow {
  n: number;
  inputs: InputState;
  volts?: Record<string, number>;
}

export interface FaultResult {
  fault: Fault;
  /** States in which a load, or the settling, differs from the sound circuit; with all loads. */
  changed: { n: number; on: Readonly<Record<string, boolean | null>>; settles: boolean }[];
  /** Fuses blown, by state. */
  blown: Record<number, string[]>;
  /** Wires that stay above their limit, by state. */
  hot: Record<number, string[]>;
}

export interface FaultStudy {
  rows: FaultRow[];
  results: FaultResult[];
  coverage: Coverage;
}

export interface FaultStudyOptions {
  /** Which faults; default all that `faultsOf` names. */
  faults?: FaultSet | readonly Fault[] | undefined;
  /** Source voltages to repeat the states for, as in the truth table. */
  supplyVariants?: readonly Record<string, number>[] | undefined;
  mostCombinations?: number | undefined;
}

/** Share of the states that a fault is felt in and that no other fault settles too. */
const TOUCHED_SHARE = 0.25;
/** Current [A] and voltage [V] below which a fault in a dead part of the circuit changes nothing. */
const NOTHING = 1e-10;

/**
 * Put in every single fault, one at a time, and solve every state from all relays released. Fuses at twice their rating
 * or more blow together and the state is solved again with the relays as they were, until none blows. A broken part
 * blows no fuse; a state that never settles is left as it is.
 */
export function singleFaults(netlist: Netlist | Solver, options: FaultStudyOptions = {}): FaultStudy {
  const solver = solverOf(netlist);
  const supplies = options.supplyVariants ?? [undefined];
  const chosen = options.faults;
  const faults = chosen === undefined || typeof chosen === 'string' ? faultsOf(solver.netlist, chosen) : chosen;
  const most = affordable(
    solver,
    Math.max(1, faults.length * TOUCHED_SHARE) * supplies.length,
    options.mostCombinations,
  );
  const { states, coverage } = combinations(solver.levelIds.slice(0, solver.inputCount), most);
  const bench = new Bench(solver);
  const rows: FaultRow[] = [];
  const sound: Sound[] = [];
  for (const volts of supplies) {
    for (const inputs of states) {
      rows.push({ n: rows.length, inputs, ...(volts === undefined ? {} : { volts }) });
      sound.push(bench.sound(inputs, volts));
    }
  }
  const alike = new Map<string, Omit<FaultResult, 'fault'>>();
  const series = seriesOf(solver);
  const results = faults.map((fault): FaultResult => {
    const { kind, id } = fault;
    const key = kind === 'short' ? `short ${fault.at}` : `${kind} ${kind === 'open' ? (series.get(id) ?? id) : id}`;
    let found = alike.get(key);
    if (found === undefined) {
      found = bench.study(fault, sound);
      alike.set(key, found);
    }
    return { fault, ...found };
  });
  return { rows, results, coverage };
}

/** One state of a circuit with a fault in it. */
export interface FaultState {
  /** As it ends, after the fuses have blown. */
  solution: Solution;
  blown: string[];
  hot: string[];
}

/**
 * A circuit set up for looking at one fault after another, in any state. `undefined` is the sound circuit; `relays` are
 * where they stand before, default all released.
 */
export function faultBench(netlist: Netlist | Solver): {
  solver: Solver;
  solve(
    fault: Fault | undefined,
    state: { inputs: InputState; volts?: Record<string, number> | undefined; relays?: RelayState | undefined },
  ): FaultState;
} {
  const solver = solverOf(netlist);
  const bench = new Bench(solver);
  return {
    solver,
    solve(fault, { inputs, volts, relays }) {
      if (fault === undefined) {
        const { variant, level, cycle, hot } = bench.sound(inputs, volts, relays);
        return { solution: report(solver, variant, level, cycle), blown: [], hot: bench.names(hot) };
      }
      const { variant, level, cycle, blown, hot } = bench.run(fault, bench.sound(inputs, volts, relays));
      const solution = report(solver, variant, level, cycle);
      for (const load of solver.loads) if (isOpen(fault, load.id)) solution.on[load.id] = false;
      return { solution, blown: bench.names(blown), hot: bench.names(hot) };
    },
  };
}

/** One state with a fault in it, after the fuses have blown, in full. For many, use `faultBench`. */
export function solveFault(
  netlist: Netlist | Solver,
  fault: Fault | undefined,
  state: { inputs: InputState; volts?: Record<string, number> | undefined },
): FaultState {
  return faultBench(netlist).solve(fault, state);
}

const isOpen = (fault: Fault | undefined, id: string) => fault?.kind === 'open' && fault.id === id;

/** How one state ended. Fuses and wires by branch number. */
interface Outcome {
  /** Each load that the customer cares about: 1 on, 0 off, -1 coming and going. */
  on: Int8Array;
  blown: readonly number[];
  hot: readonly number[];
  variant: Variant;
  level: Uint8Array;
  /** The positions that the relays run through, where they never rest. */
  cycle: Uint8Array[] | undefined;
}

/** A state of the sound circuit. */
interface Sound extends Outcome {
  volts: Record<string, number> | undefined;
  /** Positions before any relay has moved. */
  start: Uint8Array;
  /** Every network that was solved on the way. */
  trail: Frame[];
  /** A fuse carries what would blow it even without a fault. */
  overloaded: boolean;
}

const NONE: readonly number[] = [];

/** Parts of one chain that a current may be too much for. */
interface Limit {
  chain: number;
  leastA: number;
  branches: { branch: number; limitA: number }[];
}

function limitsOf(solver: Solver, limitA: (element: Element) => number | undefined): Limit[] {
  const limits = new Map<number, Limit>();
  for (const element of solver.netlist.elements) {
    const most = limitA(element);
    if (most === undefined) continue;
    const branch = solver.branchOf(element.id);
    const chain = solver.chainOf(branch);
    const limit = limits.get(chain) ?? { chain, leastA: most, branches: [] };
    limit.leastA = Math.min(limit.leastA, most);
    limit.branches.push({ branch, limitA: most });
    limits.set(chain, limit);
  }
  return [...limits.values()];
}

/** Solves states of one circuit with faults in it, in the same memory. */
class Bench {
  private readonly solver: Solver;
  private readonly loads: { id: string; branch: number; onFromV: number }[];
  private readonly fuses: Limit[];
  private readonly wires: Limit[];
  private readonly records = new Map<number, Record<string, boolean | null>>();
  /** Variants of the fault at hand, by supply and by the fuses blown. */
  private fault: Fault | undefined;
  private readonly variants = new Map<Record<string, number> | undefined, Map<string, Variant>>();

  constructor(solver: Solver) {
    this.solver = solver;
    this.loads = solver.netlist.loads.map((id) => solver.loads.find((load) => load.id === id)!);
    this.fuses = limitsOf(solver, (element) =>
      element.kind === 'fuse' ? BLOWS_AT_TIMES_RATING * element.ratingA : undefined,
    );
    this.wires = limitsOf(solver, (element) => (element.kind === 'wire' ? element.limitA : undefined));
  }

  names(branches: readonly number[]): string[] {
    return branches.map((k) => this.solver.branches[k]!.id);
  }

  /** @param relays as they stand before; default all released */
  sound(inputs: InputState, volts: Record<string, number> | undefined, relays?: RelayState): Sound {
    const { solver } = this;
    const variant = solver.atVolts(volts);
    const start = solver.level(variant, inputs, relays);
    const level = start.slice();
    const trail: Frame[] = [];
    const cycle = solver.settle(variant, level, (network, positions) => {
      const frame = solver.frame(network, positions);
      trail.push(frame);
      return frame;
    });
    const end = trail.at(-1)!;
    const overloaded = this.blowing(variant, end).length > 0;
    const outcome = this.outcome(undefined, variant, level, cycle, NONE, end);
    return { ...outcome, volts, start, trail, overloaded };
  }

  /** The same record for the same loads on: most faults have the same few effects. */
  private named(on: Int8Array): Record<string, boolean | null> {
    let key = 1;
    for (let k = 0; k < on.length; k++) key = key * 3 + on[k]! + 1;
    let found = Number.isSafeInteger(key) ? this.records.get(key) : undefined;
    if (found === undefined) {
      found = Object.fromEntries(this.loads.map(({ id }, k) => [id, on[k] === -1 ? null : on[k] === 1]));
      this.records.set(key, found);
    }
    return found;
  }

  /** One fault in every state. */
  study(fault: Fault, sound: readonly Sound[]): Omit<FaultResult, 'fault'> {
    const touches = this.touches(fault);
    const result: Omit<FaultResult, 'fault'> = { changed: [], blown: {}, hot: {} };
    for (let n = 0; n < sound.length; n++) {
      const was = sound[n]!;
      let outcome: Outcome = was;
      if ((was.overloaded && fault.kind !== 'open') || was.trail.some(touches)) outcome = this.run(fault, was);
      const settles = outcome.cycle === undefined;
      let differs = settles !== (was.cycle === undefined);
      for (let k = 0; k < outcome.on.length; k++) if (outcome.on[k] !== was.on[k]) differs = true;
      if (differs) result.changed.push({ n, on: this.named(outcome.on), settles });
      if (outcome.blown.length > 0) result.blown[n] = this.names(outcome.blown);
      if (outcome.hot.length > 0) result.hot[n] = this.names(outcome.hot);
    }
    return result;
  }

  /** One fault in the state of a sound one. */
  run(fault: Fault, sound: Sound): Outcome {
    const { solver } = this;
    if (fault !== this.fault) {
      this.fault = fault;
      this.variants.clear();
    }
    const like = sound.trail.at(-1);
    let blown = NONE;
    let variant = this.variant(fault, sound.volts, blown);
    const level = sound.start.slice();
    for (let r = 0; r < variant.stuck.length; r++) {
      if (variant.stuck[r]! >= 0) level[solver.inputCount + r] = variant.stuck[r]!;
    }
    for (;;) {
      const cycle = solver.settle(variant, level, solver.point, like);
      if (cycle !== undefined) return this.outcome(fault, variant, level, cycle, blown, solver.present);
      const more = fault.kind === 'open' ? NONE : this.blowing(variant, solver.present);
      if (more.length === 0) return this.outcome(fault, variant, level, undefined, blown, solver.present);
      blown = [...blown, ...more].sort((x, y) => x - y);
      variant = this.variant(fault, sound.volts, blown);
    }
  }

  /** Fuses that carry what blows them. */
  private blowing(variant: Variant, at: Point): readonly number[] {
    return this.beyond(this.fuses, variant, at, (currentA, limitA) => currentA >= limitA);
  }

  /** Branches of which the current is beyond their limit. */
  private beyond(
    limits: readonly Limit[],
    variant: Variant,
    at: Point,
    isBeyond: (currentA: number, limitA: number) => boolean,
  ): readonly number[] {
    const { solver } = this;
    let beyond: number[] | undefined;
    for (const { chain, leastA, branches } of limits) {
      if (solver.worstA(variant, chain, at) < leastA) continue;
      for (const { branch, limitA } of branches) {
        if (isBeyond(Math.abs(solver.currentA(variant, branch, at)), limitA)) (beyond ??= []).push(branch);
      }
    }
    return beyond === undefined ? NONE : beyond.sort((x, y) => x - y);
  }

  private outcome(
    fault: Fault | undefined,
    variant: Variant,
    level: Uint8Array,
    cycle: Uint8Array[] | undefined,
    blown: readonly number[],
    end: Point,
  ): Outcome {
    const { solver } = this;
    const on = new Int8Array(this.loads.length);
    let hot = NONE;
    if (cycle === undefined) {
      this.lit(fault, variant, level, end, on);
      hot = this.beyond(this.wires, variant, end, (currentA, limitA) => currentA > limitA);
    } else {
      this.lit(fault, variant, cycle[0]!, solver.frame(variant, cycle[0]!), on);
      const other = new Int8Array(on.length);
      for (const positions of cycle) {
        this.lit(fault, variant, positions, solver.frame(variant, positions), other);
        for (let k = 0; k < on.length; k++) if (other[k] !== on[k]) on[k] = -1;
      }
    }
    return { on, blown, hot, variant, level, cycle };
  }

  private lit(fault: Fault | undefined, variant: Variant, level: Uint8Array, at: Point, on: Int8Array): void {
    for (let k = 0; k < on.length; k++) {
      const { id, branch, onFromV } = this.loads[k]!;
      // a strip beyond a break keeps whatever voltage its loose end had: what takes no current is not on
      const lit =
        Math.abs(this.solver.dropV(variant, branch, at, level)) >= onFromV &&
        Math.abs(this.solver.currentA(variant, branch, at)) > NOTHING &&
        !isOpen(fault, id);
      on[k] = lit ? 1 : 0;
    }
  }

  private variant(fault: Fault, volts: Record<string, number> | undefined, blown: readonly number[]): Variant {
    let ofSupply = this.variants.get(volts);
    if (ofSupply === undefined) {
      ofSupply = new Map();
      this.variants.set(volts, ofSupply);
    }
    const key = blown.length === 0 ? '' : blown.join();
    let found = ofSupply.get(key);
    if (found === undefined) {
      const patch = patchOf(this.solver.netlist, fault, volts);
      found = this.solver.variant({ ...patch, open: [...(patch.open ?? []), ...this.names(blown)] });
      ofSupply.set(key, found);
    }
    return found;
  }

  /** Whether a solved network of the sound circuit would be another with the fault. */
  private touches(fault: Fault): (frame: Frame) => boolean {
    const { solver } = this;
    if (fault.kind === 'short') {
      const rank = solver.placeOf(fault.at);
      return ({ voltageV }) => rank >= 0 && Math.abs(voltageV[rank]!) >= NOTHING;
    }
    if (fault.kind === 'reversed') return () => true;
    const { stuck } = patchOf(solver.netlist, fault);
    if (fault.kind === 'welded' && stuck !== undefined) {
      // The relay stays where the contact holds it.
      const forced = Object.entries(stuck).map(
        ([id, position]) => [solver.levelIds.lastIndexOf(id), Number(position)] as const,
      );
      return ({ level }) => forced.some(([at, position]) => level[at] !== position);
    }
    const k = solver.branchOf(fault.id);
    const chain = solver.chainOf(k);
    if (fault.kind === 'open' || fault.kind === 'coil-open') {
      return ({ flowA }) => Math.abs(flowA[chain]!) >= NOTHING;
    }
    if (fault.kind === 'bridged') return (frame) => Math.abs(solver.acrossV(k, frame)) >= NOTHING;
    // A welded switch: nothing new while it is made anyway, or has no voltage across it.
    return (frame) => Math.abs(solver.acrossV(k, frame)) >= NOTHING && Math.abs(frame.flowA[chain]!) < NOTHING;
  }
}

/**
 * Branches in series share one current whatever happens, so breaking any of them is the same fault: each such branch
 * with the name of its chain.
 */
function seriesOf(solver: Solver): Map<string, string> {
  const ends = new Map<string, string[]>();
  const fails = new Set(faultsOf(solver.netlist).flatMap((fault) => (fault.kind === 'open' ? [fault.id] : [])));
  for (const { id, a, b } of solver.branches) {
    for (const node of [a, b]) ends.set(node, [...(ends.get(node) ?? []), id]);
  }
  const chain = new Map<string, string>();
  const find = (id: string): string =>
    chain.get(id) === undefined || chain.get(id) === id ? id : find(chain.get(id)!);
  for (const [node, ids] of ends) {
    if (node === '0' || ids.length !== 2 || ids[0] === ids[1] || !ids.every((id) => fails.has(id))) continue;
    chain.set(find(ids[0]!), find(ids[1]!));
  }
  return new Map([...fails].map((id) => [id, find(id)]));
}
