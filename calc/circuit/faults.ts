/** The single-fault study: every fault in every state, as it ends after the fuses have blown. */
import { type Coverage, combinations } from './coverage.ts';
import { BLOWS_AT_TIMES_RATING, type Fault, type FaultSet, faultsOf, patchOf } from './fault.ts';
import type { InputState, Netlist, Solution } from './model.ts';
import { report } from './report.ts';
import { type Point, type Solver, solverOf, type Variant } from './solve.ts';
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
  changed: { n: number; on: Record<string, boolean | null>; settles: boolean }[];
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
  const faults = Array.isArray(options.faults)
    ? (options.faults as Fault[])
    : faultsOf(solver.netlist, options.faults as FaultSet | undefined);
  const most = affordable(solver, Math.max(1, faults.length) * supplies.length, options.mostCombinations);
  const { states, coverage } = combinations(solver.levelIds.slice(0, solver.inputCount), most);
  const rows: FaultRow[] = [];
  const bench = new Bench(solver);
  const sound: Outcome[] = [];
  for (const volts of supplies) {
    for (const inputs of states) {
      rows.push({ n: rows.length, inputs, ...(volts === undefined ? {} : { volts }) });
      sound.push(bench.run(undefined, inputs, volts));
    }
  }
  const alike = new Map<string, Omit<FaultResult, 'fault'>>();
  const series = seriesOf(solver);
  const results = faults.map((fault): FaultResult => {
    const key =
      fault.kind === 'short'
        ? `short ${fault.at}`
        : `${fault.kind} ${fault.kind === 'open' ? (series.get(fault.id) ?? fault.id) : fault.id}`;
    let found = alike.get(key);
    if (found === undefined) {
      found = { changed: [], blown: {}, hot: {} };
      for (const [n, row] of rows.entries()) {
        const outcome = bench.run(fault, row.inputs, row.volts);
        const was = sound[n]!;
        if (outcome !== was && (outcome.settles !== was.settles || outcome.on.some((on, k) => on !== was.on[k]))) {
          found.changed.push({ n, on: bench.named(outcome.on), settles: outcome.settles });
        }
        if (outcome.blown.length > 0) found.blown[n] = outcome.blown.map((k) => solver.branches[k]!.id);
        if (outcome.hot.length > 0) found.hot[n] = outcome.hot.map((k) => solver.branches[k]!.id);
      }
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

/** A circuit set up for looking at one fault after another, in any state. `undefined` is the sound circuit. */
export function faultBench(netlist: Netlist | Solver): {
  solver: Solver;
  solve(
    fault: Fault | undefined,
    state: { inputs: InputState; volts?: Record<string, number> | undefined },
  ): FaultState;
} {
  const solver = solverOf(netlist);
  const bench = new Bench(solver);
  const names = (branches: readonly number[]) => branches.map((k) => solver.branches[k]!.id);
  return {
    solver,
    solve(fault, { inputs, volts }) {
      const { variant, level, cycle, blown, hot } = bench.run(fault, inputs, volts);
      const solution = report(solver, variant, level, cycle);
      for (const load of solver.loads) if (isOpen(fault, load.id)) solution.on[load.id] = false;
      return { solution, blown: names(blown), hot: names(hot) };
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

/** How one state ended. Loads, fuses and wires by branch number. */
interface Outcome {
  settles: boolean;
  /** Of each load that the customer cares about. */
  on: (boolean | null)[];
  blown: number[];
  hot: number[];
  variant: Variant;
  level: Uint8Array;
  cycle: Uint8Array[] | undefined;
}

class Bench {
  private readonly solver: Solver;
  private readonly loads: Solver['loads'];
  private readonly fuses: { branch: number; blowsA: number }[] = [];
  private readonly wires: { branch: number; limitA: number }[] = [];
  private readonly variants = new Map<string, Variant>();
  private fault: Fault | undefined;

  constructor(solver: Solver) {
    this.solver = solver;
    this.loads = solver.netlist.loads.map((id) => solver.loads.find((load) => load.id === id)!);
    for (const element of solver.netlist.elements) {
      if (element.kind === 'fuse') {
        this.fuses.push({ branch: solver.branchOf(element.id), blowsA: BLOWS_AT_TIMES_RATING * element.ratingA });
      } else if (element.kind === 'wire') {
        this.wires.push({ branch: solver.branchOf(element.id), limitA: element.limitA });
      }
    }
  }

  named(on: readonly (boolean | null)[]): Record<string, boolean | null> {
    return Object.fromEntries(this.loads.map((load, index) => [load.id, on[index]!]));
  }

  run(fault: Fault | undefined, inputs: InputState, volts: Record<string, number> | undefined): Outcome {
    const { solver } = this;
    if (fault !== this.fault) {
      this.fault = fault;
      this.variants.clear();
    }
    const sound = solver.atVolts(volts);
    const blown: number[] = [];
    let variant = fault === undefined ? sound : this.variant(fault, volts, blown);
    const level = solver.level(variant, inputs);
    for (;;) {
      // While the fault sits in a dead part of the circuit the sound circuit's solution serves.
      const untouched = blown.length === 0 && fault !== undefined ? this.untouched(fault) : undefined;
      const at = (network: Variant, positions: Uint8Array): Point => {
        if (fault === undefined) return solver.frame(sound, positions);
        if (untouched !== undefined) {
          const base = solver.frame(sound, positions);
          if (untouched(base)) return base;
        }
        return solver.point(network, positions);
      };
      let last: Point | undefined;
      const cycle = solver.settle(variant, level, (network, positions) => (last = at(network, positions)));
      if (cycle !== undefined) return this.unsettled(fault, variant, level, cycle, blown);
      const end = last!;
      if (fault?.kind !== 'open') {
        let more = false;
        for (const { branch, blowsA } of this.fuses) {
          if (Math.abs(solver.currentA(variant, branch, end)) < blowsA) continue;
          if (fault === undefined) continue;
          blown.push(branch);
          more = true;
        }
        if (more) {
          blown.sort((x, y) => x - y);
          variant = this.variant(fault!, volts, blown);
          continue;
        }
      }
      const on = this.loads.map(
        (load) => Math.abs(solver.acrossV(load.branch, end.voltageV)) >= load.onFromV && !isOpen(fault, load.id),
      );
      const hot: number[] = [];
      for (const { branch, limitA } of this.wires) {
        if (Math.abs(solver.currentA(variant, branch, end)) > limitA) hot.push(branch);
      }
      return { settles: true, on, blown, hot, variant, level, cycle: undefined };
    }
  }

  private unsettled(
    fault: Fault | undefined,
    variant: Variant,
    level: Uint8Array,
    cycle: Uint8Array[],
    blown: number[],
  ): Outcome {
    const { solver } = this;
    const each = cycle.map((positions) => {
      const { voltageV } = solver.frame(variant, positions);
      return this.loads.map(
        (load) => Math.abs(solver.acrossV(load.branch, voltageV)) >= load.onFromV && !isOpen(fault, load.id),
      );
    });
    const on = each[0]!.map((first, k) => (each.every((one) => one[k] === first) ? first : null));
    return { settles: false, on, blown, hot: [], variant, level, cycle };
  }

  private variant(fault: Fault, volts: Record<string, number> | undefined, blown: readonly number[]): Variant {
    const key = `${JSON.stringify(volts)} ${blown.join()}`;
    let found = this.variants.get(key);
    if (found === undefined) {
      const patch = patchOf(this.solver.netlist, fault, volts);
      found = this.solver.variant({
        ...patch,
        open: [...(patch.open ?? []), ...blown.map((k) => this.solver.branches[k]!.id)],
      });
      this.variants.set(key, found);
    }
    return found;
  }

  /** Whether a solution of the sound circuit is one of the faulty circuit too. */
  private untouched(fault: Fault): ((base: Point) => boolean) | undefined {
    const { solver } = this;
    if (fault.kind === 'open') {
      const k = solver.branchOf(fault.id);
      const sound = solver.atVolts();
      return (base) => Math.abs(solver.currentA(sound, k, base)) < NOTHING;
    }
    if (fault.kind === 'short') {
      const rank = solver.rankOf(fault.at);
      return (base) => rank < 0 || Math.abs(base.voltageV[rank]!) < NOTHING;
    }
    return undefined;
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
