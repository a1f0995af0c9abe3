import { within } from './guard.ts';
import { STOCKED_FUSES_A } from './tables/workshop.ts';

/**
 * The smallest rating not below a current. Ratings are never rounded down.
 *
 * @param options `currentA` 0 to 100 000; `ratingsA` to choose from (default the workshop's stock).
 * @returns the rating, or null when none is large enough.
 * @throws TypeError or RangeError when the current is out of range.
 * Formula: min of ratings ≥ current; 15 / 0.75 is 20 and takes a 20.
 * @source stocked ratings: common practice, no source.
 * @example ratingAtLeast({ currentA: 2.73 }) // 3
 */
export function ratingAtLeast({
  currentA,
  ratingsA = STOCKED_FUSES_A,
}: {
  currentA: number;
  ratingsA?: readonly number[];
}): number | null {
  within('ratingAtLeast', 'currentA', currentA, 0, 100_000, 'A');
  const enough = ratingsA.filter((rating) => rating >= currentA * (1 - 1e-9));
  return enough.length === 0 ? null : Math.min(...enough);
}

/**
 * The largest rating that a limit still lets in.
 *
 * @param options `limitA` 0 to 100 000, such as `wireLimit` gives; `ratingsA` to choose from (default the workshop's stock).
 * @returns the rating, or null when even the smallest is too large.
 * @throws TypeError or RangeError when the limit is out of range.
 * Formula: max of ratings ≤ limit.
 * @source stocked ratings: common practice, no source.
 * @example ratingAtMost({ limitA: 9.09 }) // 7.5
 */
export function ratingAtMost({
  limitA,
  ratingsA = STOCKED_FUSES_A,
}: {
  limitA: number;
  ratingsA?: readonly number[];
}): number | null {
  within('ratingAtMost', 'limitA', limitA, 0, 100_000, 'A');
  const fitting = ratingsA.filter((rating) => rating <= limitA * (1 + 1e-9));
  return fitting.length === 0 ? null : Math.max(...fitting);
}
