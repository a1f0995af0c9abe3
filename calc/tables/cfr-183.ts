import { cite, type Row } from './rows.ts';

/**
 * 33 CFR 183.425, Table 5: allowable current of single conductors in small craft at 30 °C, with its two notes. A public
 * rule for low-voltage wiring in tight, hot places, and so the published figure this project stands on.
 */
const INSULATIONS_C = [60, 75, 80, 90, 105, 125, 200] as const;

const TABLE_5_A: readonly (readonly [gaugeAwg: number, ...allowedA: number[]])[] = [
  [18, 10, 10, 15, 20, 20, 25, 25],
  [16, 15, 15, 20, 25, 25, 30, 35],
  [14, 20, 20, 25, 30, 35, 40, 45],
  [12, 25, 25, 35, 40, 45, 50, 55],
  [10, 40, 40, 50, 55, 60, 70, 70],
  [8, 55, 65, 70, 70, 80, 90, 100],
  [6, 80, 95, 100, 100, 120, 125, 135],
  [4, 105, 125, 130, 135, 160, 170, 180],
  [3, 120, 145, 150, 155, 180, 195, 210],
  [2, 140, 170, 175, 180, 210, 225, 240],
  [1, 165, 195, 210, 210, 245, 265, 280],
  [0, 195, 230, 245, 245, 285, 305, 325],
  [-1, 225, 265, 285, 285, 330, 355, 370],
  [-2, 260, 310, 330, 330, 385, 410, 430],
  [-3, 300, 360, 385, 385, 445, 475, 510],
];

export type AllowedRow = Row<{ gaugeAwg: number; insulationC: number; allowedA: number }>;

/** Allowable current by AWG size and temperature rating of the insulation; air at 30 °C, one conductor. */
export const ALLOWED_183_425: readonly AllowedRow[] = cite(
  { source: '33 CFR 183.425', at: 'Table 5', read: 'seen', unit: 'A' },
  TABLE_5_A.flatMap(([gaugeAwg, ...amps]) =>
    INSULATIONS_C.map((insulationC, column) => ({ gaugeAwg, insulationC, allowedA: amps[column]! })),
  ),
);

/** Factor for conductors in an engine space, where the air is taken as 50 °C. 200 °C insulation keeps all of it. */
export const ENGINE_SPACE_183_425: readonly Row<{ insulationC: number; ambientC: number; factor: number }>[] = cite(
  { source: '33 CFR 183.425', at: 'Table 5 note 1', read: 'memory', unit: 'ratio' },
  [
    { insulationC: 60, ambientC: 50, factor: 0.58 },
    { insulationC: 75, ambientC: 50, factor: 0.75 },
    { insulationC: 80, ambientC: 50, factor: 0.78 },
    { insulationC: 90, ambientC: 50, factor: 0.82 },
    { insulationC: 105, ambientC: 50, factor: 0.85, read: 'seen' },
    { insulationC: 125, ambientC: 50, factor: 0.89 },
    { insulationC: 200, ambientC: 50, factor: 1 },
  ],
);

export type BundleRow = Row<{ from: number; to: number; factor: number }>;

/** Factor by current-carrying conductors bundled together. Binding at 50 V and above, good practice below. */
export const BUNDLE_183_425: readonly BundleRow[] = cite(
  {
    source: '33 CFR 183.425, as a Coast Guard guideline table is reprinted',
    at: 'Table 5 note 2',
    read: 'seen',
    unit: 'ratio',
  },
  [
    { from: 1, to: 2, factor: 1, read: 'memory' },
    { from: 3, to: 3, factor: 0.7 },
    { from: 4, to: 6, factor: 0.6 },
    { from: 7, to: 24, factor: 0.5 },
    { from: 25, to: 999, factor: 0.4 },
  ],
);

/** The largest overcurrent device by law: a ceiling, not a target. */
export const OVERCURRENT_183_455: Row<{ belowV: number; shareBelow: number; shareFrom: number }> = {
  belowV: 50,
  shareBelow: 1.5,
  shareFrom: 1,
  unit: 'share of Table 5',
  source: '33 CFR 183.455 with 183.425 Table 5',
  at: 'par. (c)(1) and (c)(2)',
  read: 'seen',
};

/** How far along the wire from its source the protection may sit when nothing sheathes the wire: 7 in. */
export const FUSE_PLACE_183_455: readonly Row<{ where: string; maxM: number }>[] = cite(
  { source: '33 CFR 183.455', at: 'par. (b)(1)', read: 'seen', unit: 'in' },
  [
    { where: 'no sheath', maxM: 7 * 0.0254 },
    { where: 'in sheath', maxM: 40 * 0.0254, read: 'memory', at: 'par. (b)(2), 40 in' },
  ],
);
