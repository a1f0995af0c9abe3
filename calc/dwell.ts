/**
 * How the bond of an acrylic mounting tape builds up after pressing, and when it may carry load.
 *
 * Only the 72 h point was seen in a source; the earlier two are recalled. They hold near 21 °C; colder is slower and no
 * figure for how much was found, so a cold bond gets words, not a number.
 */
import { within } from './guard.ts';
import type { Cited } from './tables/cited.ts';

export interface DwellPoint extends Cited {
  timeMin: number;
  fraction: number;
}

/** Published points of the bond's growth, earliest first. */
export const DWELL_POINTS: readonly DwellPoint[] = [
  { timeMin: 20, fraction: 0.5, source: 'tape application guides, recalled', at: '-', read: 'memory' },
  { timeMin: 1440, fraction: 0.9, source: 'tape application guides, recalled', at: '-', read: 'memory' },
  {
    timeMin: 4320,
    fraction: 1,
    source: 'tape converter web page (pressure, dwell) and foam tape supplier web page (application advice)',
    at: '72 h',
    read: 'seen',
  },
];

/** The points hold near this temperature [°C]. */
export const DWELL_REFERENCE_C = 21;

/**
 * Share of the final bond reached after a time, by straight lines over the logarithm of time.
 * @param o.timeMin [min] since pressing, 0 to 10000000
 * @param o.points dwell points in rising order; DWELL_POINTS by default
 * @returns `fraction` 0 to 1, or `fractionAtMost` before the first point, with `flag: 'unknown, no load'`: the line must
 *   not be drawn backwards (it would reach nothing at about 0.1 min). A fraction has no unit
 * @throws RangeError outside that range
 * @formula linear in log10(time) between points; 1 after the last
 * @source points: see DWELL_POINTS; interpolation on log time is this project's choice
 * @example dwellFraction({ timeMin: 60 }).fraction // 0.6028
 */
export function dwellFraction(o: { timeMin: number; points?: readonly DwellPoint[] }): {
  fraction?: number;
  fractionAtMost?: number;
  flag?: 'unknown, no load';
} {
  const time = within('dwellFraction', 'timeMin', o.timeMin, 0, 1e7, 'min');
  const points = o.points ?? DWELL_POINTS;
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('dwellFraction: unexpected empty points');
  if (time < first.timeMin) return { fractionAtMost: first.fraction, flag: 'unknown, no load' };
  if (time >= last.timeMin) return { fraction: last.fraction };
  const upperAt = points.findIndex((point) => point.timeMin > time);
  const lower = points[upperAt - 1]!;
  const upper = points[upperAt]!;
  const share = Math.log(time / lower.timeMin) / Math.log(upper.timeMin / lower.timeMin);
  return { fraction: lower.fraction + share * (upper.fraction - lower.fraction) };
}

/**
 * Time after pressing at which a share of the final bond is reached, near 21 °C.
 * @param o.fraction share wanted, 0.5 to 1: below 0.5 nothing is known and nothing may hang
 * @param o.points dwell points in rising order; DWELL_POINTS by default
 * @returns time [min]
 * @throws RangeError outside that range
 * @formula inverse of dwellFraction
 * @source as dwellFraction
 * @example dwellTimeMin({ fraction: 0.9 }) // 1440
 */
export function dwellTimeMin(o: { fraction: number; points?: readonly DwellPoint[] }): number {
  const points = o.points ?? DWELL_POINTS;
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('dwellTimeMin: unexpected empty points');
  const fraction = within('dwellTimeMin', 'fraction', o.fraction, first.fraction, last.fraction);
  const upperAt = points.findIndex((point) => point.fraction >= fraction);
  if (upperAt <= 0) return first.timeMin;
  const lower = points[upperAt - 1]!;
  const upper = points[upperAt]!;
  const share = (fraction - lower.fraction) / (upper.fraction - lower.fraction);
  return lower.timeMin * (upper.timeMin / lower.timeMin) ** share;
}

/** Waits that are not about bond strength alone. */
export const WASH_WAIT = {
  hours: 24,
  source: 'trim maker web page (frequent questions)',
  at: 'washing answer',
  read: 'seen',
} as const;

/** Wait after refinishing before tape; air-dried paint may need weeks (recalled). */
export const PAINT_WAIT = {
  days: 5,
  source: 'trim maker web page (frequent questions)',
  at: 'paint answer',
  read: 'seen',
} as const;
