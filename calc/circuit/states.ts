/** The states a circuit can be in: its truth table, its histories, and where relays race each other. */
import { type Coverage, combinations, MOST_COMBINATIONS } from './coverage.ts';
import type { InputState, Netlist, RelayState, Solution } from './model.ts';
import { report, type Seen } from './report.ts';
import { restingPlaces } from './settling.ts';
import { keyOf, type Solver, solverOf, type Variant } from './solve.ts';

export interface StateRow {
  n: number;
  inputs: InputState;
  /** Source voltages that differ from the netlist's. */
  volts?: Record<string, number>;
  solution: Solution;
}

/** A state that only a history leads to: the same inputs from all-released end elsewhere. */
export interface ReachedRow extends StateRow {
  /** Positions of the inputs, step by step from all-released, that lead there. */
  path: InputState[];
}

/** Relays that end in another state when one is a little faster than another. */
export interface Race {
  inputs: InputState;
  volts?: Record<string, number>;
  /** The relays that want to move together. */
  relays: string[];
  /** Every state they may end in. */
  rests: RelayState[];
  /** Some order of moves never rests. */
  endless: boolean;
}

export interface TruthTable {
  /** From all relays released, in the order of binary counting; repeated for each supply variant. */
  rows: StateRow[];
  /** Further states of a circuit that remembers. */
  reached: ReachedRow[];
  /** Equal inputs can find the relays in different positions. */
  latching: boolean;
  races: Race[];
  coverage: Coverage;
}

export interface TruthTableOptions {
  /** Source voltages to repeat the table for; default the netlist's own. */
  supplyVariants?: readonly Record<string, number>[] | undefined;
  /** Most combinations of inputs to solve; default 4096. */
  mostCombinations?: number | undefined;
  /** Follow histories (one input, or the supply, changing at a time); default true. */
  histories?: boolean | undefined;
  /** At which supplies to look for races: every order of relays that move together costs. Default all. */
  races?: 'all' | 'last' | 'none' | undefined;
}

/** Steps of arithmetic that a study may cost in all: some seconds. */
const MOST_WORK = 5e8;
/** Points that a state usually takes: its relay steps, its diodes. */
const POINTS_A_STATE = 6;
/** Single relay steps after which no more are expected to move together. */
const MOST_STEPS_TO_RACE = 64;

/** Combinations to look at so that `repeats` studies of them all stay within some seconds. */
export function affordable(solver: Solver, repeats: number, most = MOST_COMBINATIONS): number {
  return Math.max(1, Math.min(most, Math.floor(affordablePoints(solver) / (POINTS_A_STATE * repeats))));
}

function affordablePoints(solver: Solver): number {
  return MOST_WORK / solver.cost;
}

/** A state as the search comes to it; `solver.present` is its point while it is visited, unless its relays never rest. */
export interface Place {
  inputs: InputState;
  volts: Record<string, number> | undefined;
  variant: Variant;
  /** Where the relays rest, or the first positions of the cycle they run through. */
  level: Uint8Array;
  cycle: Uint8Array[] | undefined;
  /** For a state that only a history leads to: positions of the inputs, step by step from all-released. */
  path: InputState[] | undefined;
  /** What it shows, where it was looked at while the solver stood there. */
  seen?: Seen;
}

/**
 * Solve every combination of the inputs from all relays released, then follow every single change of an input or of the
 * supply from every state found, so that the states of a latching circuit show.
 *
 * @returns Rows, further states, races, and what was covered where not everything could be.
 */
export function truthTable(netlist: Netlist | Solver, options: TruthTableOptions = {}): TruthTable {
  const solver = solverOf(netlist);
  const places: Place[] = [];
  const found = visitStates(solver, options, (place) => places.push(place));
  return tableOf(solver, places, found);
}

/** The truth table of a search that was made. */
export function tableOf(
  solver: Solver,
  places: readonly Place[],
  found: Omit<TruthTable, 'rows' | 'reached'>,
): TruthTable {
  const rows: StateRow[] = [];
  const reached: ReachedRow[] = [];
  for (const { inputs, volts, variant, level, cycle, path, seen } of places) {
    const solution = report(solver, variant, level, cycle, seen);
    const row = { n: rows.length + reached.length, inputs, ...(volts === undefined ? {} : { volts }), solution };
    if (path === undefined) rows.push(row);
    else reached.push({ ...row, path });
  }
  return { rows, reached, ...found };
}

/** The search of `truthTable`, for whoever needs less of each state than its report. */
export function visitStates(
  solver: Solver,
  options: TruthTableOptions,
  visit: (place: Place) => void,
): Omit<TruthTable, 'rows' | 'reached'> {
  const supplies = options.supplyVariants ?? [undefined];
  const ids = solver.levelIds.slice(0, solver.inputCount);
  const most = affordable(solver, supplies.length, options.mostCombinations);
  const { states, coverage } = combinations(ids, most);
  const remembers = solver.levelIds.length > solver.inputCount && (options.histories ?? true);
  const settled: Start[] = [];
  const races: Race[] = [];
  const { races: where = 'all' } = options;
  let everyOrder = true;
  for (const [supply, volts] of supplies.entries()) {
    const variant = solver.atVolts(volts);
    const looks = where === 'all' || (where === 'last' && supply === supplies.length - 1);
    for (const inputs of states) {
      const level = solver.level(variant, inputs);
      if (looks) {
        const { race, complete } = raceFrom(solver, variant, level);
        if (race !== undefined) races.push({ inputs, ...(volts === undefined ? {} : { volts }), ...race });
        if (!complete) everyOrder = false;
      }
      const cycle = solver.settle(variant, level, solver.point);
      if (remembers && cycle === undefined) settled.push({ supply, level });
      visit({ inputs, volts, variant, level, cycle, path: undefined });
    }
  }
  const histories = remembers ? follow(solver, supplies, settled, states, visit) : undefined;
  if (histories?.complete === false) {
    coverage.complete = false;
    coverage.statement += `; histories were followed for ${histories.count} states, not to the end`;
  }
  if (!everyOrder) coverage.statement += '; where many relays move together, not every order of theirs';
  return { latching: histories?.latching ?? false, races, coverage };
}

/** Solve steps one after the other; each begins with the relays as the step before left them. */
export function sequence(
  netlist: Netlist | Solver,
  steps: readonly { inputs: InputState; volts?: Record<string, number> | undefined }[],
  options: { relays?: RelayState | undefined } = {},
): StateRow[] {
  const solver = solverOf(netlist);
  let relays = options.relays;
  return steps.map(({ inputs, volts }, n) => {
    const solution = solver.solve(inputs, { relays, volts });
    // Relays that do not rest are taken up where the cycle began.
    relays = Object.fromEntries(Object.entries(solution.energised).map(([id, energised]) => [id, energised === true]));
    return { n, inputs, ...(volts === undefined ? {} : { volts }), solution };
  });
}

/** Whether relays that move together from here may end in different states, or never rest. */
function raceFrom(
  solver: Solver,
  variant: Variant,
  from: Uint8Array,
): { race?: Omit<Race, 'inputs' | 'volts'>; complete: boolean } {
  const together = movingTogether(solver, variant, from);
  if (together.length < 2) return { complete: true };
  const { rests, endless, complete } = restingPlaces(solver, variant, from);
  const cycles = solver.settle(variant, from.slice(), solver.point) !== undefined;
  if (rests.length === 0 || (rests.length === 1 && !endless && !cycles)) return { complete };
  const race = { relays: together, rests: rests.map((rest) => relaysOf(solver, rest)), endless: endless || cycles };
  return { race, complete };
}

/** The first relays that want to move at one time, on the way from here; none if they only ever move one by one. */
function movingTogether(solver: Solver, variant: Variant, from: Uint8Array): string[] {
  const level = from.slice();
  for (let step = 0; step < MOST_STEPS_TO_RACE; step++) {
    const { next } = solver.point(variant, level);
    const together: string[] = [];
    for (let r = 0; r < next.length; r++) {
      if (next[r] !== level[solver.inputCount + r]) together.push(solver.levelIds[solver.inputCount + r]!);
    }
    if (together.length === 0) return [];
    if (together.length > 1) return together;
    level.set(next, solver.inputCount);
  }
  return [];
}

function relaysOf(solver: Solver, level: Uint8Array): RelayState {
  const relays: RelayState = {};
  for (let k = solver.inputCount; k < level.length; k++) relays[solver.levelIds[k]!] = level[k] === 1;
  return relays;
}

interface Start {
  supply: number;
  level: Uint8Array;
}

/** From every state of the table, change one input or the supply at a time, until nothing new appears. */
function follow(
  solver: Solver,
  supplies: readonly (Record<string, number> | undefined)[],
  starts: readonly Start[],
  states: readonly InputState[],
  visit: (place: Place) => void,
): { latching: boolean; complete: boolean; count: number } {
  /** With what it was reached from. */
  type Step = Start & { before: Step | undefined };
  const seen = supplies.map(() => new Set<number | string>());
  const queue: Step[] = starts.map(({ supply, level }) => ({ supply, level, before: undefined }));
  for (const { supply, level } of starts) seen[supply]!.add(keyOf(level));
  const ofTable = new Set(states.map((inputs) => JSON.stringify(inputs)));
  const fromTable = states.length * supplies.length;
  let moves = affordablePoints(solver) / POINTS_A_STATE;
  let latching = false;
  let found = 0;
  for (const step of queue) {
    for (let move = 0; move < solver.inputCount + supplies.length; move++) {
      const supply = move < solver.inputCount ? step.supply : move - solver.inputCount;
      if (move >= solver.inputCount && supply === step.supply) continue;
      if (moves-- < 0) return { latching, complete: false, count: fromTable + found };
      const volts = supplies[supply];
      const variant = solver.atVolts(volts);
      const level = step.level.slice();
      if (move < solver.inputCount) level[move] = 1 - level[move]!;
      const cycle = solver.settle(variant, level, solver.point);
      const key = keyOf(level);
      if (cycle !== undefined || seen[supply]!.has(key)) continue;
      seen[supply]!.add(key);
      found++;
      const next: Step = { supply, level, before: step };
      queue.push(next);
      const path: InputState[] = [];
      for (let at: Step | undefined = next; at !== undefined; at = at.before) path.unshift(inputsOf(solver, at.level));
      const inputs = inputsOf(solver, level);
      if (ofTable.has(JSON.stringify(inputs))) latching = true;
      visit({ inputs, volts, variant, level, cycle, path });
    }
  }
  return { latching, complete: true, count: fromTable + found };
}

function inputsOf(solver: Solver, level: Uint8Array): InputState {
  const inputs: InputState = {};
  for (let k = 0; k < solver.inputCount; k++) inputs[solver.levelIds[k]!] = level[k] === 1;
  return inputs;
}
