/**
 * How long a preparation keeps one's hands busy, and how long one waits between. Waits that nobody has a figure for stay
 * words: they are never counted as nothing.
 */
import { oneOf, within } from './guard.ts';
import { PREP_STEPS, type PrepStepId } from './prep-surface.ts';
import { type Cited, COMMON_PRACTICE } from './tables/cited.ts';

export interface PrepTime {
  id: PrepStepId;
  /** [min] of work, for about half a metre of strip. */
  handsMin: number;
  /** [min] of waiting; null where only a label or a thermometer knows. */
  waitMin: number | null;
  /** What ends a wait without a figure. */
  until?: string;
}

type Row = Omit<PrepTime, 'id'>;
const hands = (handsMin: number, waitMin = 0): Row => ({ handsMin, waitMin });
const until = (handsMin: number, words: string): Row => ({ handsMin, waitMin: null, until: words });

/** Work and waits of each step; waits with a figure repeat the step's own. */
export const PREP_TIMES: Cited & { rows: Readonly<Record<PrepStepId, Row>> } = {
  rows: {
    warm: until(2, 'until warm'),
    cool: until(1, 'until cool'),
    inspect: hands(2),
    'wait-paint': hands(0, 5 * 24 * 60),
    'spot-test': hands(2, 10),
    'remove-coating': hands(15),
    'soap-water': hands(5),
    degrease: hands(3),
    'ipa-wipe': hands(3),
    abrade: hands(4),
    'ipa-wipe-2': hands(3),
    seal: until(5, 'by the label'),
    dry: hands(0, 5),
    'ipa-wipe-sealed': hands(3),
    'water-break': hands(2, 1),
    'prime-silane': hands(2),
    'prime-cpo': hands(2),
    'prime-universal': hands(2),
    'prime-self-etch': hands(2),
    'flash-off': until(0, 'by the label'),
    'test-patch': hands(5, 24 * 60),
    apply: hands(4),
    press: hands(2),
    dwell: hands(0),
    'mechanical-fix': hands(15),
  },
  ...COMMON_PRACTICE,
};

/**
 * Work and waits of a plan's steps, and what they come to.
 * @param o.steps ids of PREP_STEPS in order
 * @param o.loadAfterH [h] from pressing to load, 0 to 1000; 0 where no tape is used
 * @returns `rows` in order, times [min]; `handsMin` and `shortWaitMin` [min] of everything before the dwell but waits of an hour and more; `longWaitMin` [min] of those, without the dwell; `unknown` what has no figure
 * @throws RangeError for an unknown step or a time outside that range
 * @formula sums; the dwell waits loadAfterH
 * @source common practice, no source; waits with a figure: see the step
 * @example prepTimes({ steps: ['ipa-wipe', 'dry', 'press', 'dwell'], loadAfterH: 24 }).handsMin // 5
 */
export function prepTimes(o: { steps: readonly PrepStepId[]; loadAfterH: number }): {
  rows: PrepTime[];
  handsMin: number;
  shortWaitMin: number;
  longWaitMin: number;
  unknown: string[];
} {
  const loadMin = 60 * within('prepTimes', 'loadAfterH', o.loadAfterH, 0, 1000, 'h');
  const rows = o.steps.map((step): PrepTime => {
    const id = oneOf('prepTimes', 'steps', step, PREP_STEPS);
    const row = PREP_TIMES.rows[id];
    return { id, ...row, ...(id === 'dwell' ? { waitMin: loadMin } : {}) };
  });
  const waits = rows.filter(({ id }) => id !== 'dwell').map(({ waitMin }) => waitMin ?? 0);
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  return {
    rows,
    handsMin: sum(rows.map(({ handsMin }) => handsMin)),
    shortWaitMin: sum(waits.filter((wait) => wait < LONG_WAIT_MIN)),
    longWaitMin: sum(waits.filter((wait) => wait >= LONG_WAIT_MIN)),
    unknown: rows.flatMap(({ until: words }) => words ?? []),
  };
}

/** A wait of this and more is for another day or at least another job [min]. */
export const LONG_WAIT_MIN = 60;
