/** Which combinations of inputs are looked at, and a sentence that says so. */
import type { InputState } from './model.ts';

export interface Coverage {
  /** Every combination was looked at. */
  complete: boolean;
  inputs: number;
  /** Combinations looked at, and how many there are. */
  combinations: number;
  of: number;
  /** What was covered, for the page. */
  statement: string;
}

/** Up to here every combination is solved: 2 to the power of 12. */
export const MOST_COMBINATIONS = 4096;

/**
 * All combinations of the inputs while there are at most `most`, counted like a binary number whose last digit is the
 * last input. Beyond: none, all, each alone, each pair, all but one; without the pairs if those are still too many.
 */
export function combinations(
  inputIds: readonly string[],
  most = MOST_COMBINATIONS,
): { states: InputState[]; coverage: Coverage } {
  const count = inputIds.length;
  const of = 2 ** count;
  const state = (isOn: (index: number) => boolean): InputState =>
    Object.fromEntries(inputIds.map((id, index) => [id, isOn(index)]));
  if (of <= most) {
    const states = Array.from({ length: of }, (_, n) =>
      state((index) => Math.floor(n / 2 ** (count - 1 - index)) % 2 === 1),
    );
    const statement =
      count === 0 ? 'the one state of a circuit without inputs' : `all ${of} combinations of ${count} inputs`;
    return { states, coverage: { complete: true, inputs: count, combinations: of, of, statement } };
  }
  const states: InputState[] = [state(() => false), state(() => true)];
  for (let one = 0; one < count; one++)
    states.push(
      state((index) => index === one),
      state((index) => index !== one),
    );
  const pairs = states.length + (count * (count - 1)) / 2 <= most;
  if (pairs) {
    for (let one = 0; one < count; one++) {
      for (let two = one + 1; two < count; two++) states.push(state((index) => index === one || index === two));
    }
  }
  const taken = pairs
    ? 'none, all, each alone, all but each one, and every pair'
    : 'none, all, each alone, and all but each one';
  const statement = `${states.length} of ${of} combinations of ${count} inputs: ${taken}; the others were not looked at`;
  return { states, coverage: { complete: false, inputs: count, combinations: states.length, of, statement } };
}
