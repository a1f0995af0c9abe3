/** From what a technician reads on the vehicle to the single faults that would explain it. */
import { combinations } from './coverage.ts';
import { describeFault, type Fault, type FaultSet, faultBench, faultsOf } from './faults.ts';
import { meterReading } from './meter.ts';
import { CHASSIS, type InputState, type Netlist, type Node, type RelayState, type Solution } from './model.ts';
import { type Solver, solverOf } from './solve.ts';

/** What was looked at: a load (its volts, or whether it is on), a current through an element, or volts between two points. */
export type Measured = { load: string } | { amps: string } | { from: Node; to: Node };

export interface Reading {
  inputs: InputState;
  volts?: Record<string, number> | undefined;
  /** Where the relays stood before, in a circuit that remembers; default all released. */
  relays?: RelayState | undefined;
  of: Measured;
  /** Volts or amps; for a load also just on or off. Standby current is the amps of a source with everything off. */
  is: number | boolean;
}

export interface Suspect {
  /** Undefined: nothing is wrong. */
  fault: Fault | undefined;
  words: string;
  /** 0 fits every reading; each contradicted one adds up to 1. */
  misfit: number;
  /** Readings that it does not explain, by index, with what it would show. */
  contradicts: { reading: number; expected: number | boolean | null }[];
}

export interface Diagnosis {
  /** Best first; equals in the order of the circuit. */
  suspects: Suspect[];
  /** How many explain every reading. */
  fitting: number;
  /** The reading that would best tell those apart. */
  next?: { inputs: InputState; of: Measured; words: string; parts: number } | undefined;
}

export interface DiagnoseOptions {
  faults?: FaultSet | readonly Fault[] | undefined;
  /** A reading fits within this share of what is expected, and never closer than `leastV`, `leastA`. */
  toleranceFraction?: number | undefined;
  leastV?: number | undefined;
  leastA?: number | undefined;
}

/** Suspects that the search for the next reading compares. */
const MOST_COMPARED = 24;
const MOST_STATES = 64;

/**
 * Rank single faults by how well they explain readings.
 *
 * Tolerances stand for a workshop meter on a vehicle that is not at the netlist's exact supply: by default 5 % of the
 * value, at least 0.3 V or 0.05 A (common practice, no source).
 */
export function diagnose(
  netlist: Netlist | Solver,
  readings: readonly Reading[],
  options: DiagnoseOptions = {},
): Diagnosis {
  const solver = solverOf(netlist);
  const bench = faultBench(solver);
  const near = nearness(options);
  const chosen = options.faults;
  const faults = chosen === undefined || typeof chosen === 'string' ? faultsOf(solver.netlist, chosen) : chosen;
  const suspects = [undefined, ...faults].map((fault): Suspect => {
    let misfit = 0;
    const contradicts: Suspect['contradicts'] = [];
    const solved = new Map<string, Solution>();
    for (const [index, reading] of readings.entries()) {
      const key = JSON.stringify([reading.inputs, reading.volts, reading.relays]);
      const solution = solved.get(key) ?? bench.solve(fault, reading).solution;
      solved.set(key, solution);
      const expected =
        typeof reading.is === 'boolean' ? onOf(solution, reading.of) : measuredValue(solver, solution, reading.of);
      const wrong = near(expected, reading.is, reading.of);
      misfit += Math.min(1, wrong);
      if (wrong > 0) contradicts.push({ reading: index, expected });
    }
    return {
      fault,
      words: fault === undefined ? 'nothing is wrong' : describeFault(solver.netlist, fault),
      misfit,
      contradicts,
    };
  });
  suspects.sort((x, y) => x.misfit - y.misfit);
  const fitting = suspects.filter((suspect) => suspect.contradicts.length === 0).length;
  return {
    suspects,
    fitting,
    next: fitting > 1 ? nextReading(solver, suspects.slice(0, Math.min(fitting, MOST_COMPARED)), near) : undefined,
  };
}

/** What a fault shows in every state: volts and on of the loads, amps of the fuses and sources. */
export interface FaultSignature {
  inputs: InputState;
  on: Solution['on'];
  loadV: Solution['loadV'];
  fuseA: Record<string, number>;
  sourceA: Record<string, number>;
  blown: string[];
}

export function faultSignature(
  netlist: Netlist | Solver,
  fault: Fault | undefined,
  options: { states?: readonly InputState[] | undefined; volts?: Record<string, number> | undefined } = {},
): FaultSignature[] {
  const bench = faultBench(netlist);
  const { solver } = bench;
  const states = options.states ?? combinations(solver.levelIds.slice(0, solver.inputCount)).states;
  const of = (kind: 'fuse' | 'source') =>
    solver.netlist.elements.filter((element) => element.kind === kind).map(({ id }) => id);
  const pick = (solution: Solution, ids: string[]) => Object.fromEntries(ids.map((id) => [id, solution.currentA[id]!]));
  const [fuses, sources] = [of('fuse'), of('source')];
  return states.map((inputs) => {
    const { solution, blown } = bench.solve(fault, { inputs, volts: options.volts });
    const { on, loadV } = solution;
    return { inputs, on, loadV, fuseA: pick(solution, fuses), sourceA: pick(solution, sources), blown };
  });
}

type Near = (expected: number | boolean | null, is: number | boolean, of: Measured) => number;

/** 0 where a reading is as expected, growing with the distance. */
function nearness(options: DiagnoseOptions): Near {
  const { toleranceFraction = 0.05, leastV = 0.3, leastA = 0.05 } = options;
  return (expected, is, of) => {
    if (typeof expected !== 'number' || typeof is !== 'number') return expected === is ? 0 : 1;
    const tolerance = Math.max('amps' in of ? leastA : leastV, toleranceFraction * Math.abs(expected));
    const times = Math.abs(is - expected) / tolerance;
    return times <= 1 ? 0 : times / 10;
  };
}

function onOf(solution: Solution, of: Measured): boolean | null {
  if (!('load' in of)) throw new TypeError('a reading that is true or false must be of a load, expected { load }');
  return solution.on[known(solution.on, of.load)]!;
}

function measuredValue(solver: Solver, solution: Solution, of: Measured): number {
  if ('amps' in of) return solution.currentA[known(solution.currentA, of.amps)]!;
  if ('load' in of) {
    const voltageV = solution.loadV[known(solution.loadV, of.load)]!;
    // A meter on a chattering relay shows something between.
    return typeof voltageV === 'number' ? voltageV : (voltageV[0] + voltageV[1]) / 2;
  }
  const reading = meterReading(solution, solver, of);
  return reading.kind === 'volts' ? reading.voltageV : 0;
}

function known(record: Record<string, unknown>, id: string): string {
  if (!Object.hasOwn(record, id)) {
    throw new RangeError(`unexpected "${id}" in a reading, expected one of ${Object.keys(record).join(', ')}`);
  }
  return id;
}

/** The state and point to chassis whose voltage splits the suspects into the most groups, the easiest state first. */
function nextReading(solver: Solver, suspects: readonly Suspect[], near: Near): Diagnosis['next'] {
  const bench = faultBench(solver);
  const { states } = combinations(solver.levelIds.slice(0, solver.inputCount), MOST_STATES);
  const solved = suspects.map(({ fault }) => states.map((inputs) => bench.solve(fault, { inputs }).solution));
  const loads: Measured[] = solver.loads.map((load) => ({ load: load.id }));
  const points: Measured[] = solver.nodes.map((from) => ({ from, to: CHASSIS }));
  let best: { state: number; of: Measured; parts: number; largest: number } | undefined;
  for (const [state] of states.entries()) {
    for (const of of [...loads, ...points]) {
      const groups: { value: number; size: number }[] = [];
      for (const one of solved) {
        const value = measuredValue(solver, one[state]!, of);
        const group = groups.find((other) => near(other.value, value, of) === 0);
        if (group === undefined) groups.push({ value, size: 1 });
        else group.size++;
      }
      const largest = Math.max(...groups.map((group) => group.size));
      if (groups.length > 1 && (best === undefined || largest < best.largest))
        best = { state, of, parts: groups.length, largest };
    }
  }
  if (best === undefined) return undefined;
  const inputs = states[best.state]!;
  const on = Object.keys(inputs).filter((id) => inputs[id]);
  const where =
    'load' in best.of ? `across ${best.of.load}` : `from ${'from' in best.of ? best.of.from : ''} to chassis`;
  const words = `volts ${where} with ${on.length === 0 ? 'everything off' : `${on.join(', ')} on`}`;
  return { inputs, of: best.of, words, parts: best.parts };
}
