import type { Cited } from './cited.ts';

/**
 * Best known packings of equal circles in a circle: diameter of the enclosing circle over the diameter of one circle.
 *
 * Index 0 is unused so that `PACKING_RATIO[n]` is the ratio for n circles. "Best known" means that nobody has found a
 * tighter one; up to 13, and for 19, it is proven. The figures are cut to nine decimals, far below what a loom can show.
 *
 * Note that 6 need the space of 7 and 18 that of 19. Older tables print 3.8136 for 10 circles; 3.8130 is the better one.
 */
export const PACKING_RATIO: readonly number[] = [
  Number.NaN,
  1.0,
  2.0,
  2.154700538,
  2.414213562,
  2.701301617,
  3.0,
  3.0,
  3.304764871,
  3.61312593,
  3.813025631,
  3.9238044,
  4.02960193,
  4.236067977,
  4.328428555,
  4.521356965,
  4.615425595,
  4.792033748,
  4.863703305,
  4.863703305,
  5.122320737,
  5.252317475,
  5.439718959,
  5.545204223,
  5.651661092,
  5.752824331,
  5.828176537,
  5.906397847,
  6.014938097,
  6.138597904,
  6.197741071,
  6.291502622,
  6.429462971,
  6.486703124,
  6.61095709,
  6.697171092,
  6.746753793,
  6.758770483,
  6.961886965,
  7.057884163,
  7.123846436,
  7.260012329,
  7.346796407,
  7.419944856,
  7.498036683,
  7.572912326,
  7.650179915,
  7.724170053,
  7.791271431,
  7.886870959,
  7.947515275,
  8.027506952,
  8.084717191,
  8.179582827,
  8.203982383,
  8.211102551,
  8.383529923,
  8.447184653,
  8.52455377,
  8.592499959,
  8.646219845,
  8.661297576,
];

/** Largest number of wires in the table. */
export const PACKING_MAX: number = PACKING_RATIO.length - 1;

export const PACKING_SOURCE: Cited = {
  source: 'best known packings of equal circles in a circle (Specht list), as stored in an open circle packing library',
  at: 'n = 1 to 61',
  read: 'seen',
};
