import type { Study } from '../context.ts';

type Values = Readonly<Record<string, number>>;

/** Studies of a circuit by its job values. The last ones are kept: going back, or on to what was foreseen, costs nothing. */
export interface KeptStudies {
  of(values: Values): Study | null;
  /** Whether one more costs so little that it may be worked out unasked. */
  readonly light: boolean;
  /** Whether one more is done before a key that comes meanwhile would be felt to wait. */
  readonly quick: boolean;
}

/** Studies that are kept, both ways from every number of a long guide; fewer of a circuit with many states. */
const MOST_KEPT = 32;
const MOST_STATES = 8192;
/** Longer than this an idle page is not held up [ms]. The first one, not yet compiled, takes several times the others. */
const LIGHT_MS = 300;
const QUICK_MS = 50;

export function keptStudies(
  work: (values: Values, after: Study | null) => Study | null,
  now: () => number = () => performance.now(),
): KeptStudies {
  const kept = new Map<string, Study | null>();
  let last: Study | null = null;
  let tookMs = 0;
  let most = MOST_KEPT;
  return {
    of(values) {
      const key = JSON.stringify(values);
      let study = kept.get(key);
      if (study === undefined) {
        const began = now();
        study = last = work(values, last);
        tookMs = now() - began;
        const states = study === null ? 1 : study.proof.states.length + study.proof.reached.length;
        most = Math.max(1, Math.min(MOST_KEPT, Math.floor(MOST_STATES / states)));
      }
      // the newest stand last
      kept.delete(key);
      kept.set(key, study);
      while (kept.size > most) kept.delete(kept.keys().next().value!);
      return study;
    },
    get light() {
      return tookMs <= LIGHT_MS && most === MOST_KEPT;
    },
    get quick() {
      return tookMs <= QUICK_MS && most === MOST_KEPT;
    },
  };
}
