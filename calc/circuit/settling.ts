/** Why relays never come to rest, in the words of the trade. */
import { keyOf, type Solver, type Variant } from './solve.ts';

/**
 * One sentence about a cycle of positions. A relay that would turn back by itself, all others held still, "drops its own
 * supply"; relays that would rest if one of them were a little faster "race"; the rest "move each other in turn".
 */
export function whyItDoesNotSettle(solver: Solver, variant: Variant, cycle: readonly Uint8Array[]): string {
  const first = cycle[0]!;
  const moving: number[] = [];
  for (let k = solver.inputCount; k < first.length; k++) {
    if (cycle.some((level) => level[k] !== first[k])) moving.push(k);
  }
  const names = moving.map((k) => solver.levelIds[k]!);
  for (const k of moving) {
    for (const level of cycle) {
      const coil = solver.branchOf(solver.levelIds[k]!);
      const here = solver.frame(variant, level);
      const moved = level.slice();
      moved[k] = 1 - level[k]!;
      const there = solver.frame(variant, moved);
      const wants = here.next[k - solver.inputCount] === moved[k];
      const returns = there.next[k - solver.inputCount] === level[k];
      if (!wants || !returns) continue;
      const [released, pulled] = level[k] === 0 ? [here, there] : [there, here];
      const volts = (frame: typeof here) => Math.abs(solver.acrossV(coil, frame)).toFixed(1);
      return `does not settle: ${solver.levelIds[k]} drops its own supply (coil at ${volts(released)} V released, ${volts(pulled)} V pulled in)`;
    }
  }
  const all = names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)}` : String(names[0]);
  const rests = restsFrom(solver, variant, first);
  return rests
    ? `does not settle: ${all} race: moving at the same time they never rest, one after the other they would`
    : `does not settle: ${all} move each other in turn`;
}

/** Relays that may want to move together before not every order of theirs is followed. */
const MOST_TOGETHER = 3;
/** Positions looked at from one start. */
const MOST_POSITIONS = 2048;

/** Whether some order of single moves from here comes to rest. */
function restsFrom(solver: Solver, variant: Variant, from: Uint8Array): boolean {
  return restingPlaces(solver, variant, from).rests.length > 0;
}

/**
 * Every position where the relays can come to rest when they move one at a time, in any order. `endless` is true when
 * some order never rests. Where more than a few relays want to move, one that leaves the wishes of all others alone goes
 * first, and `complete` is false: not every order was followed.
 */
export function restingPlaces(
  solver: Solver,
  variant: Variant,
  from: Uint8Array,
): { rests: Uint8Array[]; endless: boolean; complete: boolean } {
  const rests: Uint8Array[] = [];
  const seen = new Set<number | string>();
  const open = new Set<number | string>();
  let endless = false;
  let complete = true;
  const moved = (level: Uint8Array, k: number): Uint8Array => {
    const other = level.slice();
    other[k] = 1 - level[k]!;
    return other;
  };
  const visit = (level: Uint8Array): void => {
    const key = keyOf(level);
    if (open.has(key)) endless = true;
    if (seen.has(key)) return;
    if (seen.size >= MOST_POSITIONS) {
      complete = false;
      return;
    }
    seen.add(key);
    open.add(key);
    const next = solver.point(variant, level).next.slice();
    let wishes: number[] = [];
    for (let r = 0; r < next.length; r++)
      if (next[r] !== level[solver.inputCount + r]) wishes.push(solver.inputCount + r);
    if (wishes.length === 0) rests.push(level);
    if (wishes.length > MOST_TOGETHER) {
      complete = false;
      const alone = wishes.find((k) => {
        const after = solver.point(variant, moved(level, k)).next;
        return after.every((position, r) => position === next[r]);
      });
      wishes = alone === undefined ? wishes.slice(0, MOST_TOGETHER) : [alone];
    }
    for (const k of wishes) visit(moved(level, k));
    open.delete(key);
  };
  visit(from);
  return { rests, endless, complete };
}
