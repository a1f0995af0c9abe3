/**
 * Heat-shrink sleeve: which size goes over the joint and still grips after shrinking, and how long to cut it.
 */
import { positive, within } from './guard.ts';
import { lapOverlap } from './splice.ts';
import type { Cited } from './tables/cited.ts';

/**
 * Does this sleeve go over the object and grip it once shrunk?
 * @param o.objectMm [mm] largest diameter to go over and grip, above 0 to 200
 * @param o.suppliedMm [mm] inner diameter as supplied, above 0 to 200
 * @param o.ratio shrink ratio, 1.1 to 6: supplied over recovered diameter, not area
 * @param o.gripMm [mm] smallest diameter it must grip, if that differs from objectMm; above 0 to 200
 * @returns `fitsOver`, `tight`; `recoveredMm` [mm] inner diameter if it shrinks freely
 * @throws RangeError outside those ranges
 * @formula recovered = supplied/ratio; tight when recovered is smaller than the object: equal is not tight
 * @source NASA-STD-8739.4 with Change 6, 9.8.1; ratio as trade pages define it
 * @example sleeveFit({ objectMm: 4, suppliedMm: 6.4, ratio: 2 }).recoveredMm // 3.2
 */
export function sleeveFit(o: { objectMm: number; suppliedMm: number; ratio: number; gripMm?: number }): {
  fitsOver: boolean;
  tight: boolean;
  recoveredMm: number;
} {
  const object = positive('sleeveFit', 'objectMm', within('sleeveFit', 'objectMm', o.objectMm, 0, 200, 'mm'), 'mm');
  const supplied = within('sleeveFit', 'suppliedMm', o.suppliedMm, 0, 200, 'mm');
  positive('sleeveFit', 'suppliedMm', supplied, 'mm');
  const ratio = within('sleeveFit', 'ratio', o.ratio, 1.1, 6);
  const grip = within('sleeveFit', 'gripMm', o.gripMm ?? object, 0, 200, 'mm');
  const recoveredMm = supplied / ratio;
  return { fitsOver: supplied > object, tight: recoveredMm < grip, recoveredMm };
}

/** Sleeves the trade sells by supplied inner diameter [mm]; the common inch sizes (common practice, no source). */
export const SHRINK_SIZES_MM: readonly number[] = [1.6, 2.4, 3.2, 4.8, 6.4, 9.5, 12.7, 19.1, 25.4];
/** Ratios in common use, gentlest first. */
export const SHRINK_RATIOS: readonly number[] = [2, 3, 4];

/**
 * Smallest kept heat-shrink sleeve that passes over the thickest point and grips the thinnest.
 * @param o.thickestMm [mm] it must pass over, above 0 to 200
 * @param o.thinnestMm [mm] it must grip, above 0 to 200, not above thickestMm
 * @param o.sizesMm [mm] supplied diameters kept; SHRINK_SIZES_MM by default
 * @param o.ratios kept; SHRINK_RATIOS by default
 * @returns `found` with `suppliedMm`, `recoveredMm` [mm] and `ratio`, or reasons
 * @throws RangeError outside those ranges
 * @formula first size above the thickest point; first ratio that recovers below the thinnest
 * @source rule of sleeveFit; sizes: common practice, no source
 * @example chooseShrink({ thickestMm: 4, thinnestMm: 2 }).ratio // 3
 */
export function chooseShrink(o: {
  thickestMm: number;
  thinnestMm: number;
  sizesMm?: readonly number[];
  ratios?: readonly number[];
}): { found: boolean; suppliedMm?: number; recoveredMm?: number; ratio?: number; reasons: string[] } {
  const thickest = within('chooseShrink', 'thickestMm', o.thickestMm, 0, 200, 'mm');
  positive('chooseShrink', 'thickestMm', thickest, 'mm');
  const thinnest = within('chooseShrink', 'thinnestMm', o.thinnestMm, 0, thickest, 'mm');
  positive('chooseShrink', 'thinnestMm', thinnest, 'mm');
  const sizes = [...(o.sizesMm ?? SHRINK_SIZES_MM)].sort((a, b) => a - b);
  const ratios = [...(o.ratios ?? SHRINK_RATIOS)].sort((a, b) => a - b);
  for (const suppliedMm of sizes.filter((size) => size > thickest)) {
    const ratio = ratios.find((r) => suppliedMm / r < thinnest);
    if (ratio !== undefined) return { found: true, suppliedMm, recoveredMm: suppliedMm / ratio, ratio, reasons: [] };
  }
  return {
    found: false,
    reasons: [
      `no kept sleeve passes over ${thickest} mm and shrinks below ${thinnest} mm: build up the thin end first`,
    ],
  };
}

/** A sleeve also gets shorter when it shrinks. */
export const LENGTHWAYS_SHRINK = {
  leastFraction: 0.05,
  mostFraction: 0.15,
  source: 'heat-shrink shop question page',
  at: 'answer',
  read: 'seen',
} as const;

/**
 * Length left of a cut sleeve after shrinking.
 * @param o.cutMm [mm], above 0 to 5000
 * @returns `leastMm` and `mostMm` [mm]
 * @throws RangeError outside that range
 * @formula 85 to 95 % of the cut length
 * @source heat-shrink shop question page
 * @example shrunkLength({ cutMm: 50 }).leastMm // 42.5
 */
export function shrunkLength(o: { cutMm: number }): { leastMm: number; mostMm: number } {
  const cut = positive('shrunkLength', 'cutMm', within('shrunkLength', 'cutMm', o.cutMm, 0, 5000, 'mm'), 'mm');
  return {
    leastMm: cut * (1 - LENGTHWAYS_SHRINK.mostFraction),
    mostMm: cut * (1 - LENGTHWAYS_SHRINK.leastFraction),
  };
}

/**
 * Overlap of a sleeve on the insulation at each side of a joint.
 * @param o.insulatedMm [mm] over the insulation, above 0 to 50
 * @returns overlap [mm]
 * @throws RangeError outside that range
 * @formula the larger of 5 mm and two insulated diameters
 * @source common practice, no source
 * @example sleeveOverlapMm({ insulatedMm: 3.4 }) // 6.8
 */
export function sleeveOverlapMm(o: { insulatedMm: number }): number {
  const d = within('sleeveOverlapMm', 'insulatedMm', o.insulatedMm, 0, 50, 'mm');
  return Math.max(5, 2 * positive('sleeveOverlapMm', 'insulatedMm', d, 'mm'));
}

/** Temperatures sleeves shrink at [°C]. An adhesive liner may need more heat than the jacket. */
export const SHRINK_TEMPERATURES: Cited & {
  minC: number;
  maxC: number;
  polyolefinTypicalC: readonly [number, number];
} = {
  minC: 90,
  maxC: 200,
  polyolefinTypicalC: [90, 125],
  source: 'cable sleeve trade page (90 to 200 °C); polyolefin range recalled',
  at: 'text',
  read: 'seen',
};

/**
 * A whole lap splice with its sleeve: how far to strip, how far to overlap, which sleeve, cut how long.
 * @param o.conductorMm [mm] bare, above 0 to 20
 * @param o.insulatedMm [mm] over the insulation, above conductorMm to 50
 * @param o.overlapDiameters overlap in conductor diameters, 3 to 6; 4 by default
 * @returns `overlapMm`, `stripMm` of each wire, `jointMm` thickness, `sleeveCutMm` [mm]; `sleeve` as chooseShrink
 * @throws RangeError outside those ranges
 * @formula strip = overlap + one insulated diameter of gap; joint = two conductors; cut = (overlap + 2·gap + 2·sleeve overlap)/0.85, up to 1 mm
 * @source overlap: NASA-STD-8739.4 with Change 6, 19.6.1; gap below two insulated diameters: NASA workmanship pictorial 6.17; sleeve overlap and the choice of one diameter: common practice, no source
 * @example lapSplice({ conductorMm: 1.6, insulatedMm: 2.4 }).overlapMm // 6.4
 */
export function lapSplice(o: { conductorMm: number; insulatedMm: number; overlapDiameters?: number }): {
  overlapMm: number;
  stripMm: number;
  gapMm: number;
  jointMm: number;
  sleeveCutMm: number;
  sleeve: ReturnType<typeof chooseShrink>;
} {
  const limits = lapOverlap({ conductorMm: o.conductorMm });
  const insulated = within('lapSplice', 'insulatedMm', o.insulatedMm, 0, 50, 'mm');
  if (insulated <= o.conductorMm) {
    throw new RangeError(`lapSplice: unexpected insulatedMm ${insulated}, expected above conductorMm ${o.conductorMm}`);
  }
  const diameters = within('lapSplice', 'overlapDiameters', o.overlapDiameters ?? 4, 3, 6);
  const overlapMm = (limits.minMm / 3) * diameters;
  const gapMm = insulated;
  const jointMm = 2 * o.conductorMm;
  const covered = overlapMm + 2 * gapMm + 2 * sleeveOverlapMm({ insulatedMm: insulated });
  return {
    overlapMm,
    stripMm: overlapMm + gapMm,
    gapMm,
    jointMm,
    sleeveCutMm: Math.ceil(covered / (1 - LENGTHWAYS_SHRINK.mostFraction) - 1e-9),
    sleeve: chooseShrink({ thickestMm: Math.max(jointMm, insulated), thinnestMm: insulated }),
  };
}
