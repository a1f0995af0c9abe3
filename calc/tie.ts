/** Holding a loom: tie spacing by practice, how many ties, how tight a bend. */
import { positive, within } from './guard.ts';
import type { Cited } from './tables/cited.ts';

/** Published spacings; they are for different worlds, so a plan names the one it used. */
export const TIE_PRACTICES = {
  'aircraft repair': {
    tiesRequiredAboveMm: 12 * 25.4,
    source: 'FAA AC 43.13-1B',
    at: '11-158 b',
    read: 'seen',
  },
  'military vehicle interior': {
    minMm: 203,
    maxMm: 305,
    source: 'US Army TM 9-8000',
    at: 'fig. 17-34 text (8 to 12 in)',
    read: 'seen',
  },
} as const;

export interface TieBand extends Cited {
  /** Bundles up to this diameter [mm]; the last band has no end. */
  upToMm: number;
  spacingMm: number;
}

const SPACE = { source: 'NASA-STD-8739.4', at: 'table in chapter 9, recalled', read: 'memory' } as const;

/** Space practice by bundle diameter: much closer than vehicles need. */
export const SPACE_TIE_BANDS: readonly TieBand[] = [
  { upToMm: 6.4, spacingMm: 19, ...SPACE },
  { upToMm: 12.7, spacingMm: 38, ...SPACE },
  { upToMm: 25.4, spacingMm: 51, ...SPACE },
  { upToMm: Number.POSITIVE_INFINITY, spacingMm: 76, ...SPACE },
];

/**
 * Spacing of ties by bundle diameter, space practice.
 * @param o.bundleMm [mm], above 0 to 200
 * @returns spacing [mm]
 * @throws RangeError outside that range
 * @formula 19 mm below 6.4, 38 to 12.7, 51 to 25.4, 76 above
 * @source NASA-STD-8739.4, table in chapter 9, from memory
 * @example spaceTieSpacingMm({ bundleMm: 10 }) // 38
 */
export function spaceTieSpacingMm(o: { bundleMm: number }): number {
  const bundle = within('spaceTieSpacingMm', 'bundleMm', o.bundleMm, 0, 200, 'mm');
  positive('spaceTieSpacingMm', 'bundleMm', bundle, 'mm');
  return SPACE_TIE_BANDS.find((band) => bundle < band.upToMm)!.spacingMm;
}

/**
 * Ties on a run with one at each end.
 * @param o.runMm [mm], 0 to 100000
 * @param o.maxSpacingMm [mm], above 0 to 2000
 * @returns `ties`, a count; `spacingMm` [mm] they then sit apart
 * @throws RangeError outside those ranges
 * @formula ceil(run/spacing) + 1
 * @source arithmetic
 * @example tieCount({ runMm: 1800, maxSpacingMm: 300 }).ties // 7
 */
export function tieCount(o: { runMm: number; maxSpacingMm: number }): { ties: number; spacingMm: number } {
  const run = within('tieCount', 'runMm', o.runMm, 0, 100000, 'mm');
  const most = positive('tieCount', 'maxSpacingMm', within('tieCount', 'maxSpacingMm', o.maxSpacingMm, 0, 2000, 'mm'));
  const gaps = Math.ceil(run / most - 1e-9);
  return { ties: gaps + 1, spacingMm: gaps === 0 ? 0 : run / gaps };
}

/** How tight is too tight. */
export const TIE_TENSION: Cited & { wireDistortion: 'reject' } = {
  wireDistortion: 'reject',
  source: 'NASA NEPP workmanship problem page (broken wire under a tie)',
  at: 'item 9',
  read: 'seen',
};

/** Bend radius in outer diameters by jacket. Coaxial or fibre members need their own limit. */
export const BEND_RADII = {
  'jacket other than polyimide': { minDiameters: 6, longTermDiameters: 10 },
  polyimide: { minDiameters: 10, longTermDiameters: 15 },
} as const;
export type Jacket = keyof typeof BEND_RADII;

/**
 * Smallest bend radius of a cable or loom.
 * @param o.diameterMm [mm] outer, above 0 to 200
 * @param o.jacket 'jacket other than polyimide' or 'polyimide'
 * @returns `minMm` and `longTermMm` [mm] radius
 * @throws RangeError outside that range or for another jacket
 * @formula 6 and 10 diameters; 10 and 15 for polyimide
 * @source NASA workmanship pictorial 4.03 citing NASA-STD-8739.4, 7.3.21
 * @example bendRadius({ diameterMm: 7.2, jacket: 'jacket other than polyimide' }).minMm // 43.2
 */
export function bendRadius(o: { diameterMm: number; jacket: Jacket }): { minMm: number; longTermMm: number } {
  const d = positive('bendRadius', 'diameterMm', within('bendRadius', 'diameterMm', o.diameterMm, 0, 200, 'mm'), 'mm');
  const rule = BEND_RADII[o.jacket];
  if (rule === undefined) {
    throw new RangeError(
      `bendRadius: unexpected jacket "${o.jacket}", expected ${Object.keys(BEND_RADII).join(' or ')}`,
    );
  }
  return { minMm: rule.minDiameters * d, longTermMm: rule.longTermDiameters * d };
}
