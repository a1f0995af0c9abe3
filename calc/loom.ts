/**
 * How thick a loom gets. Ideal packing first, as published; a hand-laid loom is fatter, and says by how much.
 */
import { packingDiameterMm } from './circle-packing.ts';
import { positive, whole, within } from './guard.ts';
import { PACKING_MAX, PACKING_RATIO } from './tables/packing.ts';

/** A hand-laid loom against ideal packing, as a factor (common practice, no source). */
export const HAND_LAID = { least: 1.05, most: 1.15 } as const;

/**
 * Bundle diameter of equal wires by the best known packing of circles.
 * @param o.wires whole number, 1 to 61
 * @param o.wireMm [mm] over the insulation, above 0 to 100
 * @returns `ratio` bundle over wire; `bundleMm` [mm] ideal; `handLaidMm` [mm] least and most to expect by hand
 * @throws RangeError outside those ranges
 * @formula ratio from the table × wire diameter; hand-laid × 1.05 to 1.15
 * @source best known packings of equal circles in a circle (Specht list); hand-laid: common practice, no source
 * @example bundleOfEqual({ wires: 7, wireMm: 2.4 }).bundleMm // 7.2
 */
export function bundleOfEqual(o: { wires: number; wireMm: number }): {
  ratio: number;
  bundleMm: number;
  handLaidMm: [number, number];
} {
  const wires = whole('bundleOfEqual', 'wires', o.wires, 1, PACKING_MAX);
  const wire = positive('bundleOfEqual', 'wireMm', within('bundleOfEqual', 'wireMm', o.wireMm, 0, 100, 'mm'), 'mm');
  const ratio = PACKING_RATIO[wires]!;
  const bundleMm = ratio * wire;
  return { ratio, bundleMm, handLaidMm: [bundleMm * HAND_LAID.least, bundleMm * HAND_LAID.most] };
}

/**
 * Exact factor of the root-sum-square rule for equal wires: what 1.2 ought to be.
 * @param o.wires whole number, 1 to 61
 * @returns factor, a ratio: above 1.2 for 2 to 6 wires, where the rule of thumb comes out too small
 * @throws RangeError outside that range
 * @formula ratio/√n
 * @source best known packings of equal circles in a circle (Specht list)
 * @example packingFactor({ wires: 7 }) // 1.134
 */
export function packingFactor(o: { wires: number }): number {
  const wires = whole('packingFactor', 'wires', o.wires, 1, PACKING_MAX);
  return PACKING_RATIO[wires]! / Math.sqrt(wires);
}

/** Factor of the root-sum-square rule (common practice, no source). */
export const AREA_RULE_FACTOR = 1.2;

/**
 * Bundle diameter of mixed wires by the root-sum-square rule of thumb.
 * @param o.wiresMm diameters over the insulation [mm], one or more, each above 0 to 100
 * @param o.factor 1 to 2; 1.2 by default, or the larger figure for 2 to 6 wires (see packingFactor)
 * @returns `rootSumSquareMm` [mm] and `estimateMm` [mm], never below the sum of the two largest
 * @throws RangeError outside those ranges
 * @formula factor·√Σd²
 * @source common practice, no source
 * @example bundleByArea({ wiresMm: [1.6, 1.6, 1.6, 2.4, 2.4, 3] }).estimateMm // 6.37
 */
export function bundleByArea(o: { wiresMm: readonly number[]; factor?: number }): {
  rootSumSquareMm: number;
  estimateMm: number;
} {
  const wires = diameters('bundleByArea', o.wiresMm);
  const factor = within('bundleByArea', 'factor', o.factor ?? AREA_RULE_FACTOR, 1, 2);
  const rootSumSquareMm = Math.sqrt(wires.reduce((sum, d) => sum + d * d, 0));
  return { rootSumSquareMm, estimateMm: Math.max(factor * rootSumSquareMm, twoLargest(wires)) };
}

/**
 * Bundle diameter of wires that need not be equal: exact for one, two and three wires and for equal ones; packed by
 * search for more.
 * @param o.wiresMm diameters over the insulation [mm], 1 to 61 of them, each above 0 to 100
 * @returns `bundleMm` [mm]; `method` that gave it; `handLaidMm` [mm] least and most to expect by hand
 * @throws RangeError outside those ranges
 * @formula two: sum. Three: circle round three touching ones (Descartes), never below the two largest. Equal: table. Else the tightest of many packings found
 * @source geometry; Descartes circle theorem; Specht list; the search gives a circle that does fit them, so an upper bound
 * @example bundleOf({ wiresMm: [2, 2, 3] }).bundleMm // 5.15
 */
export function bundleOf(o: { wiresMm: readonly number[] }): {
  bundleMm: number;
  method: 'one wire' | 'sum of two' | 'tangent circles' | 'table of equal circles' | 'packing search';
  handLaidMm: [number, number];
} {
  const wires = diameters('bundleOf', o.wiresMm);
  if (wires.length > PACKING_MAX) {
    throw new RangeError(`bundleOf: unexpected ${wires.length} wires, expected 1 to ${PACKING_MAX}`);
  }
  const answer = (bundleMm: number, method: ReturnType<typeof bundleOf>['method']) => ({
    bundleMm,
    method,
    handLaidMm: [bundleMm * HAND_LAID.least, bundleMm * HAND_LAID.most] as [number, number],
  });
  const first = wires[0]!;
  if (wires.length === 1) return answer(first, 'one wire');
  if (wires.length === 2) return answer(twoLargest(wires), 'sum of two');
  if (wires.every((d) => d === first)) return answer(PACKING_RATIO[wires.length]! * first, 'table of equal circles');
  if (wires.length === 3) return answer(aroundThree(wires), 'tangent circles');
  return answer(Math.max(packingDiameterMm(wires), twoLargest(wires)), 'packing search');
}

/** Largest first; every diameter checked. */
function diameters(where: string, wiresMm: readonly number[]): number[] {
  if (wiresMm.length === 0) throw new RangeError(`${where}: unexpected empty wiresMm, expected one wire or more`);
  return wiresMm
    .map((d, i) => positive(where, `wiresMm[${i}]`, within(where, `wiresMm[${i}]`, d, 0, 100, 'mm'), 'mm'))
    .sort((a, b) => b - a);
}

const twoLargest = (sorted: readonly number[]): number => sorted[0]! + (sorted[1] ?? 0);

/** Circle round three mutually touching circles; a third one small enough sits in the gap and costs nothing. */
function aroundThree(sorted: readonly number[]): number {
  const [k1, k2, k3] = sorted.map((d) => 2 / d) as [number, number, number];
  // The enclosing circle has negative curvature: the minus branch of the theorem.
  const outer = k1 + k2 + k3 - 2 * Math.sqrt(k1 * k2 + k2 * k3 + k3 * k1);
  const floor = twoLargest(sorted);
  return outer < 0 ? Math.max(floor, -2 / outer) : floor;
}

/** Nominal inner diameters that sleeves and conduits are kept in [mm] (workshop setting). */
export const SLEEVE_SIZES_MM: readonly number[] = [4, 6, 8, 10, 13, 16, 20, 25, 32];

/** A sleeve is chosen so that the bundle fills at most this share of its inner diameter (common practice, no source). */
export const DIAMETER_FILL_LIMIT = 0.8;

/**
 * How full a sleeve is. Two fills are in use and differ by a square, so both come back named.
 * @param o.bundleMm [mm], above 0 to 200
 * @param o.sleeveInnerMm [mm], above 0 to 200
 * @returns `diameterFillFraction` and `areaFillFraction`; `fits` when the diameter fill is within the limit of 0.8
 * @throws RangeError outside those ranges
 * @formula d/D, (d/D)²
 * @source geometry; limit 0.8 of the diameter: common practice, no source
 * @example sleeveFill({ bundleMm: 7.2, sleeveInnerMm: 10 }).diameterFillFraction // 0.72
 */
export function sleeveFill(o: { bundleMm: number; sleeveInnerMm: number }): {
  diameterFillFraction: number;
  areaFillFraction: number;
  fits: boolean;
} {
  const bundle = positive('sleeveFill', 'bundleMm', within('sleeveFill', 'bundleMm', o.bundleMm, 0, 200, 'mm'), 'mm');
  const sleeve = within('sleeveFill', 'sleeveInnerMm', o.sleeveInnerMm, 0, 200, 'mm');
  const fill = bundle / positive('sleeveFill', 'sleeveInnerMm', sleeve, 'mm');
  return { diameterFillFraction: fill, areaFillFraction: fill ** 2, fits: fill <= DIAMETER_FILL_LIMIT };
}

/**
 * Smallest kept sleeve that takes a bundle.
 * @param o.bundleMm [mm], above 0 to 200
 * @param o.fillLimit largest share of the inner diameter, 0.3 to 1; 0.8 by default
 * @param o.sizesMm [mm] inner diameters kept; SLEEVE_SIZES_MM by default
 * @returns `found` with `sleeveMm` [mm] and its diameter fill, or reasons
 * @throws RangeError outside those ranges
 * @formula first size with bundle/size within the limit
 * @source limit: common practice, no source
 * @example chooseSleeve({ bundleMm: 7.2 }).sleeveMm // 10
 */
export function chooseSleeve(o: { bundleMm: number; fillLimit?: number; sizesMm?: readonly number[] }): {
  found: boolean;
  sleeveMm?: number;
  diameterFillFraction?: number;
  reasons: string[];
} {
  const bundle = within('chooseSleeve', 'bundleMm', o.bundleMm, 0, 200, 'mm');
  positive('chooseSleeve', 'bundleMm', bundle, 'mm');
  const limit = within('chooseSleeve', 'fillLimit', o.fillLimit ?? DIAMETER_FILL_LIMIT, 0.3, 1);
  const sizes = [...(o.sizesMm ?? SLEEVE_SIZES_MM)].sort((a, b) => a - b);
  const sleeveMm = sizes.find((size) => bundle <= limit * size);
  if (sleeveMm === undefined) {
    const largest = sizes.at(-1) ?? 0;
    return {
      found: false,
      reasons: [`a bundle of ${bundle} mm fills even ${largest} mm beyond ${limit} of its diameter`],
    };
  }
  return { found: true, sleeveMm, diameterFillFraction: bundle / sleeveMm, reasons: [] };
}

/**
 * Cut length of a cable and the sleeve over its cores, as a job card needs them.
 * @param o.runM [m] along the route, 0.1 to 40
 * @param o.slackPercent [%], 0 to 20
 * @param o.loopMm [mm] service loop at each end, 0 to 500
 * @param o.stripMm [mm] stripped at each end, 1 to 20
 * @param o.cores whole number, 1 to 60
 * @param o.coreMm [mm] over the insulation, 0.8 to 15
 * @returns `cutMm` [mm] rounded up; `bundleMm` [mm] by the rule of thumb; `sleeve` the next kept size [mm], or reasons
 * @throws RangeError outside those ranges
 * @formula cut = run·(1 + slack) + 2·loop + 2·strip; bundle = 1.2·√cores·core
 * @source 1.2·√n: common practice, no source; see bundleOfEqual for the published packing
 * @example cableCut({ runM: 8, slackPercent: 5, loopMm: 150, stripMm: 3, cores: 6, coreMm: 2.4 }).cutMm // 8706
 */
export function cableCut(o: {
  runM: number;
  slackPercent: number;
  loopMm: number;
  stripMm: number;
  cores: number;
  coreMm: number;
}): { cutMm: number; bundleMm: number; sleeve: ReturnType<typeof chooseSleeve> } {
  const run = within('cableCut', 'runM', o.runM, 0.1, 40, 'm');
  const slack = within('cableCut', 'slackPercent', o.slackPercent, 0, 20, '%');
  const loop = within('cableCut', 'loopMm', o.loopMm, 0, 500, 'mm');
  const strip = within('cableCut', 'stripMm', o.stripMm, 1, 20, 'mm');
  const cores = whole('cableCut', 'cores', o.cores, 1, 60);
  const core = within('cableCut', 'coreMm', o.coreMm, 0.8, 15, 'mm');
  const exact = run * 1000 * (1 + slack / 100) + 2 * loop + 2 * strip;
  // Binary fractions leave 8706.000000000001; only a real part of a millimetre is rounded up.
  const cutMm = Math.ceil(exact - 1e-6);
  const bundleMm = AREA_RULE_FACTOR * Math.sqrt(cores) * core;
  return { cutMm, bundleMm, sleeve: chooseSleeve({ bundleMm, fillLimit: 1 }) };
}
