/**
 * The currents of a circuit's states as bare numbers. Sizing solves a circuit over and over, and asks of each state only
 * what flows: the names that a report puts to a state would cost more than solving it.
 */
import type { Peaks } from './current-paths.ts';
import { isOn } from './report.ts';
import type { Solver } from './solve.ts';
import { type Place, type TruthTable, type TruthTableOptions, tableOf, visitStates } from './states.ts';

export interface SweptState {
  /** Signed current of each branch [A], by its number. */
  currentA: Float64Array;
  /** Numbers of the branches of loads that are on. */
  on: ReadonlySet<number>;
}

export interface Sweep {
  solver: Solver;
  /** States in which the relays rest. */
  states: SweptState[];
  /** Least and greatest current of each branch over those states [A], by its number. */
  lowestA: Float64Array;
  highestA: Float64Array;
  /** The same states, and those that never rest, with all their names. */
  table(): TruthTable;
}

/**
 * Every state of a truth table in which the relays rest.
 * @param keep for a sweep whose table will be asked for: its states are kept as they are solved
 */
export function sweep(solver: Solver, options: TruthTableOptions & { keep?: boolean }): Sweep {
  const { branches, loads, present } = solver;
  const states: SweptState[] = [];
  const lowestA = new Float64Array(branches.length).fill(Number.POSITIVE_INFINITY);
  const highestA = new Float64Array(branches.length).fill(Number.NEGATIVE_INFINITY);
  const places: Place[] = [];
  const found = visitStates(solver, options, (place) => {
    const { variant, level, cycle } = place;
    places.push(place);
    if (cycle !== undefined) return;
    const currentA = solver.currents(variant, present);
    for (let k = 0; k < currentA.length; k++) {
      const now = currentA[k]!;
      if (now < lowestA[k]!) lowestA[k] = now;
      if (now > highestA[k]!) highestA[k] = now;
    }
    const on = new Set<number>();
    for (const { branch, onFromV } of loads)
      if (isOn(solver.dropV(variant, branch, present, level), currentA[branch]!, onFromV)) on.add(branch);
    states.push({ currentA, on });
    if (options.keep) solver.keep(variant, level);
  });
  return { solver, states, lowestA, highestA, table: () => tableOf(solver, places, found) };
}

/** Least and greatest current of each branch over the states of a sweep, by id. */
export function peaksOf({ solver, states, lowestA, highestA }: Sweep): Peaks {
  const peaks = new Map<string, { lowestA: number; highestA: number }>();
  if (states.length === 0) return peaks;
  for (const [k, { id }] of solver.branches.entries()) peaks.set(id, { lowestA: lowestA[k]!, highestA: highestA[k]! });
  return peaks;
}
