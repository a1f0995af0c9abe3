/**
 * A circuit's states as bare numbers. Sizing solves a circuit over and over, and asks of each state only what flows: the
 * names that a report puts to a state would cost more than solving it.
 */
import type { Peaks } from './current-paths.ts';
import { isOn, type Seen } from './report.ts';
import type { Solver } from './solve.ts';
import { type Place, type TruthTable, type TruthTableOptions, tableOf, visitStates } from './states.ts';

export interface Sweep {
  solver: Solver;
  /** States in which the relays rest. */
  states: Seen[];
  /** Least and greatest current of each branch over those states [A], by its number. */
  lowestA: Float64Array;
  highestA: Float64Array;
  /** The same states, and those that never rest, with all their names. */
  table(): TruthTable;
}

/** Every state of a truth table in which the relays rest. */
export function sweep(solver: Solver, options: TruthTableOptions): Sweep {
  const { branches, loads, sources, present } = solver;
  const states: Seen[] = [];
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
    const loadV = loads.map(({ branch }) => solver.presentV(variant, branch, level));
    const on = loads.map(({ branch, onFromV }, at) => isOn(loadV[at]!, currentA[branch]!, onFromV));
    const seen = { currentA, sourceV: sources.map((branch) => solver.presentV(variant, branch, level)), loadV, on };
    states.push(seen);
    // of a burnt-out load the solver does not know at once what it hangs on
    if (solver.loadsWhole) place.seen = seen;
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
