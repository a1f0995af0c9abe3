/**
 * Simple tests at the vehicle: dyne pens, the water film, the cross-cut. Each says what it cannot tell.
 */
import { within } from './guard.ts';
import type { Cited } from './tables/cited.ts';

/** Levels that test pens and fluids are sold in [mN/m]. */
export const DYNE_LEVELS_MN_PER_M: readonly number[] = [30, 32, 34, 36, 38, 40, 42, 44, 46, 48, 50, 52, 54, 56, 60];
/** Where the levels stand. */
export const DYNE_LEVELS_SOURCE: Cited = {
  source: 'plastics consultancy page on dyne solutions',
  at: 'list 1.1',
  read: 'seen',
};

/** The fluid must stay a film for this long [s]. */
export const DYNE_HOLD_S = 2;
/** Uncertainty of a dyne reading [mN/m]. */
export const DYNE_UNCERTAINTY_MN_PER_M = 3;

/**
 * Reading of a set of dyne fluids: the highest one that stays a film for two seconds.
 * @param o.wetForS seconds each level [mN/m] stayed wet [s], 0 to 600; keys are the levels, 18 to 73
 * @returns `readingMnPerM` [mN/m] or null when none held (below the lowest level tried); `uncertaintyMnPerM` [mN/m]; `steps` that a level above held while one below did not: test again, on a fresh spot
 * @throws RangeError for no levels, or a level or time outside the ranges
 * @formula highest level with time of 2 s or more
 * @source test-fluid procedure page (2 s rule, never the same spot twice, toxic fluid); plastics coating page (± 3)
 * @example dyneReading({ wetForS: { 34: 5, 36: 3, 38: 2, 40: 1 } }).readingMnPerM // 38
 */
export function dyneReading(o: { wetForS: Readonly<Record<number, number>> }): {
  readingMnPerM: number | null;
  uncertaintyMnPerM: number;
  steps: 'in order' | 'out of order';
} {
  const levels = Object.entries(o.wetForS)
    .map(([level, time]) => ({
      level: within('dyneReading', 'level', Number(level), 18, 73, 'mN/m'),
      held: within('dyneReading', `wetForS[${level}]`, time, 0, 600, 's') >= DYNE_HOLD_S,
    }))
    .sort((a, b) => a.level - b.level);
  if (levels.length === 0) throw new RangeError('dyneReading: unexpected empty wetForS, expected one level or more');
  const highest = levels.findLast(({ held }) => held);
  const firstFailed = levels.findIndex(({ held }) => !held);
  const outOfOrder = firstFailed >= 0 && levels.slice(firstFailed).some(({ held }) => held);
  return {
    readingMnPerM: highest?.level ?? null,
    uncertaintyMnPerM: DYNE_UNCERTAINTY_MN_PER_M,
    steps: outOfOrder ? 'out of order' : 'in order',
  };
}

/** A water film must stay whole for this long [s]. */
export const WATER_BREAK_HOLD_S = 60;

/**
 * Reading of the water-break test: does a film of clean water drain off unbroken?
 * @param o.breaksAfterS [s] when the film broke, 0 or more; null if it stayed whole
 * @param o.wetsWhenClean whether this surface wets when clean (metal, glass); true by default. Plastics and rubber do not
 * @returns `pass`, and `means` in words. A verdict has no unit. Detergent left on the surface gives a false pass
 * @throws RangeError for a negative time
 * @formula pass if the film is whole for one minute
 * @source ASTM F22-02 (reapproved 2007), summary of method
 * @example waterBreak({ breaksAfterS: 60 }).pass // false
 */
export function waterBreak(o: { breaksAfterS: number | null; wetsWhenClean?: boolean }): {
  pass: boolean;
  means: string;
} {
  const wetsWhenClean = o.wetsWhenClean ?? true;
  const breaks = o.breaksAfterS === null ? null : within('waterBreak', 'breaksAfterS', o.breaksAfterS, 0, 86400, 's');
  // "Inside one minute" is taken with the minute itself: at equality the careful answer is that it broke.
  const pass = breaks === null || breaks > WATER_BREAK_HOLD_S;
  if (!wetsWhenClean) {
    return {
      pass,
      means: pass
        ? 'A film on a plastic that should bead: suspect soap left on it. Rinse, dry and test again.'
        : 'This plastic beads even when clean, so the test says nothing here. Use a dyne pen or a test patch.',
    };
  }
  return {
    pass,
    means: pass
      ? 'No water-repelling film found. Rinsed-off soap only: detergent left behind passes too.'
      : 'Wax, silicone, oil or a coating is still there. Degrease, wipe with fresh cloths and test again.',
  };
}

/** What the cross-cut test of a paint is and is not. */
export const CROSS_CUT = {
  cutsEachWay: 6,
  classes: 6,
  maxThicknessUm: 250,
  texturedCoatings: false,
  notAMeasureOfAdhesion: true,
  source: 'ISO 2409:2020, preview',
  at: 'clauses 1 and 4',
  read: 'seen',
} as const;

/**
 * Spacing of the cuts of a cross-cut test.
 * @param o.thicknessUm [µm] of the coating, above 0 to 250
 * @param o.softSubstrate true for plastic or wood, where the 1 mm spacing is not used; false by default
 * @returns spacing [mm]
 * @throws RangeError outside that range: the test is not for thicker coatings
 * @formula 1 mm to 60 µm, 2 mm to 120 µm, 3 mm to 250 µm; at least 2 mm on soft substrates
 * @source ISO 2409, clause 8.1.4, from memory
 * @example crossCutSpacingMm({ thicknessUm: 120 }) // 2
 */
export function crossCutSpacingMm(o: { thicknessUm: number; softSubstrate?: boolean }): number {
  const thickness = within('crossCutSpacingMm', 'thicknessUm', o.thicknessUm, 0, CROSS_CUT.maxThicknessUm, 'µm');
  const byThickness = thickness <= 60 ? 1 : thickness <= 120 ? 2 : 3;
  return o.softSubstrate ? Math.max(2, byThickness) : byThickness;
}

/**
 * Class of a cross-cut by the share of the lattice that came off.
 * @param o.detachedPercent [%] of the area, 0 to 100
 * @returns class 0 (nothing came off) to 5; a class has no unit
 * @throws RangeError outside that range
 * @formula borders 0, 5, 15, 35 and 65 %, each belonging to the better class
 * @source ISO 2409, table of classification, from memory
 * @example crossCutClass({ detachedPercent: 10 }) // 2
 */
export function crossCutClass(o: { detachedPercent: number }): number {
  const percent = within('crossCutClass', 'detachedPercent', o.detachedPercent, 0, 100, '%');
  const borders = [0, 5, 15, 35, 65];
  const found = borders.findIndex((border) => percent <= border);
  return found < 0 ? 5 : found;
}

/** Conditions of published peel tests, for reading a tape's data sheet. They are not loads to design with. */
export const PEEL_TESTS: readonly (Cited & {
  id: string;
  angleDeg: readonly number[];
  speedMmPerMin: number;
  widthMm?: number;
  dwellMin?: readonly number[];
  rollerKg?: number;
})[] = [
  {
    id: 'finat',
    angleDeg: [180, 90],
    speedMmPerMin: 300,
    widthMm: 25,
    dwellMin: [20, 1440],
    rollerKg: 2,
    source: 'FINAT FTM1 and FTM2, handbook page and test machine pages',
    at: 'text',
    read: 'seen',
  },
  {
    // 12 in/min and 4.5 lb: near the other test's figures, not equal to them.
    id: 'pstc-101',
    angleDeg: [180],
    speedMmPerMin: 12 * 25.4,
    dwellMin: [20],
    rollerKg: 4.5 * 0.45359237,
    source: 'adhesive maker test method page naming PSTC-101',
    at: 'text',
    read: 'seen',
  },
  {
    id: 'iso-8510-2',
    angleDeg: [180],
    speedMmPerMin: 100,
    source: 'ISO 8510-2',
    at: 'procedure',
    read: 'memory',
  },
];
