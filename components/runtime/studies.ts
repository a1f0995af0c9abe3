import type { Study } from '../context.ts';

type Values = Readonly<Record<string, number>>;

/** Studies that are kept: both ways from every number of a long guide. */
const MOST_KEPT = 32;

/** Studies of a circuit by its job values. The last ones are kept: going back, or on to what was foreseen, costs nothing. */
export function keptStudies(
  work: (values: Values, after: Study | null) => Study | null,
): (values: Values) => Study | null {
  const kept = new Map<string, Study | null>();
  let last: Study | null = null;
  return (values) => {
    const key = JSON.stringify(values);
    let study = kept.get(key);
    if (study === undefined) study = last = work(values, last);
    // the newest stand last
    kept.delete(key);
    kept.set(key, study);
    if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value!);
    return study;
  };
}
