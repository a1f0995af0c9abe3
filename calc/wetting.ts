/**
 * Wetting: what angle a drop makes on a surface, and the reversible work of adhesion behind it.
 *
 * That work is of the order of 0.1 J/m². Peeling a foam tape takes thousands of J/m², nearly all of it spent in the
 * adhesive itself. So these figures rank surfaces against each other and are never a strength, a load or a safety factor.
 */
import { positive, whole, within } from './guard.ts';

/** A solid's surface energy in its two parts [mJ/m²]. */
export interface SolidSurface {
  dispersiveMjPerM2: number;
  polarMjPerM2: number;
}

/** A liquid's surface tension in its two parts [mN/m]. */
export interface TestLiquid {
  name?: string;
  dispersiveMnPerM: number;
  polarMnPerM: number;
}

const DEG = Math.PI / 180;

const parts = (where: string, solid: SolidSurface, liquid: TestLiquid) => {
  const solidD = within(where, 'solid.dispersiveMjPerM2', solid.dispersiveMjPerM2, 0, 5000, 'mJ/m²');
  const solidP = within(where, 'solid.polarMjPerM2', solid.polarMjPerM2, 0, 5000, 'mJ/m²');
  const liquidD = within(where, 'liquid.dispersiveMnPerM', liquid.dispersiveMnPerM, 0, 1000, 'mN/m');
  const liquidP = within(where, 'liquid.polarMnPerM', liquid.polarMnPerM, 0, 1000, 'mN/m');
  positive(where, 'liquid total', liquidD + liquidP, 'mN/m');
  return { solidD, solidP, liquidD, liquidP };
};

/**
 * Work of adhesion of a liquid on a solid from the angle its drop makes (Young-Dupré).
 * @param o.liquidTensionMnPerM [mN/m], above 0 to 1000
 * @param o.angleDeg [°] contact angle, 0 to 180
 * @returns `workMjPerM2` [mJ/m²], and `use: 'rank only'` to be shown beside it
 * @throws RangeError outside those ranges
 * @formula W = γ·(1 + cos θ)
 * @source Young-Dupré equation
 * @example workOfAdhesion({ liquidTensionMnPerM: 72.8, angleDeg: 90 }).workMjPerM2 // 72.8
 */
export function workOfAdhesion(o: { liquidTensionMnPerM: number; angleDeg: number }): {
  workMjPerM2: number;
  use: 'rank only';
} {
  const tension = within('workOfAdhesion', 'liquidTensionMnPerM', o.liquidTensionMnPerM, 0, 1000, 'mN/m');
  positive('workOfAdhesion', 'liquidTensionMnPerM', tension, 'mN/m');
  const angle = within('workOfAdhesion', 'angleDeg', o.angleDeg, 0, 180, '°');
  return { workMjPerM2: tension * (1 + Math.cos(angle * DEG)), use: 'rank only' };
}

/**
 * Work of adhesion, interfacial tension and spreading between a solid and a liquid by the geometric mean.
 * @param o.solid [mJ/m²] parts, each 0 to 5000
 * @param o.liquid [mN/m] parts, each 0 to 1000, together above 0
 * @returns `workMjPerM2` [mJ/m²]; `interfacialMjPerM2` [mJ/m²]; `spreadingMjPerM2` [mJ/m²], 0 or more when the liquid spreads
 * @throws RangeError outside those ranges
 * @formula W = 2·(√(γs_d·γl_d) + √(γs_p·γl_p)); γsl = γs + γl - W; S = W - 2·γl
 * @source Owens and Wendt 1969, J. Appl. Polym. Sci. 13, 1741 (abstract seen); Dupré
 * @example interfaceWork({ solid: { dispersiveMjPerM2: 35.9, polarMjPerM2: 4.3 }, liquid: { dispersiveMnPerM: 21.8, polarMnPerM: 51 } }).workMjPerM2 // 85.57
 */
export function interfaceWork(o: { solid: SolidSurface; liquid: TestLiquid }): {
  workMjPerM2: number;
  interfacialMjPerM2: number;
  spreadingMjPerM2: number;
} {
  const { solidD, solidP, liquidD, liquidP } = parts('interfaceWork', o.solid, o.liquid);
  const work = 2 * (Math.sqrt(solidD * liquidD) + Math.sqrt(solidP * liquidP));
  const liquidTotal = liquidD + liquidP;
  return {
    workMjPerM2: work,
    interfacialMjPerM2: solidD + solidP + liquidTotal - work,
    spreadingMjPerM2: work - 2 * liquidTotal,
  };
}

/**
 * Contact angle a liquid will make on a solid, from the parts of both.
 * @param o.solid [mJ/m²] parts, each 0 to 5000
 * @param o.liquid [mN/m] parts, each 0 to 1000, together above 0
 * @returns `angleDeg` [°], 0 to 180; `cosine` as computed, which may exceed 1; `flag: 'spreads'` then, and the angle is 0
 * @throws RangeError outside those ranges
 * @formula cos θ = 2·(√(γs_d·γl_d) + √(γs_p·γl_p))/γl - 1
 * @source Young equation with the geometric mean of Owens and Wendt 1969
 * @example contactAngle({ solid: { dispersiveMjPerM2: 35.9, polarMjPerM2: 4.3 }, liquid: { dispersiveMnPerM: 21.8, polarMnPerM: 51 } }).angleDeg // 79.9
 */
export function contactAngle(o: { solid: SolidSurface; liquid: TestLiquid }): {
  angleDeg: number;
  cosine: number;
  flag?: 'spreads';
} {
  const { solidD, solidP, liquidD, liquidP } = parts('contactAngle', o.solid, o.liquid);
  const work = 2 * (Math.sqrt(solidD * liquidD) + Math.sqrt(solidP * liquidP));
  const cosine = work / (liquidD + liquidP) - 1;
  // Above 1 there is no drop left to measure: an arc cosine would be NaN where the answer is "it spreads".
  if (cosine > 1) return { angleDeg: 0, cosine, flag: 'spreads' };
  return { angleDeg: Math.acos(cosine) / DEG, cosine };
}

/**
 * Orders surfaces from the one water holds to least to the one it holds to most, by their water contact angles.
 * @param o.surfaces each with `id` and `angleDeg` [°], 0 to 180
 * @param o.liquidTensionMnPerM [mN/m] of the test liquid, above 0; 72.8, water, by default
 * @returns ids, weakest first; equal angles keep their order. A ranking has no unit
 * @throws RangeError for an angle outside 0 to 180
 * @formula ascending W = γ·(1 + cos θ)
 * @source Young-Dupré equation
 * @example rankByAngle({ surfaces: [{ id: 'pc', angleDeg: 82 }, { id: 'ptfe', angleDeg: 109.2 }] }).join() // 'ptfe,pc'
 */
export function rankByAngle(o: {
  surfaces: readonly { id: string; angleDeg: number }[];
  liquidTensionMnPerM?: number;
}): string[] {
  const liquidTensionMnPerM = o.liquidTensionMnPerM ?? 72.8;
  return o.surfaces
    .map(({ id, angleDeg }) => ({ id, work: workOfAdhesion({ liquidTensionMnPerM, angleDeg }).workMjPerM2 }))
    .sort((a, b) => a.work - b.work)
    .map(({ id }) => id);
}

/**
 * Least surface energy a substrate should have for a liquid ink, paint or adhesive to wet it well.
 * @param o.liquidTensionMnPerM [mN/m], above 0 to 1000
 * @returns `minMnPerM` and `comfortMnPerM` [mN/m]
 * @throws RangeError outside that range
 * @formula liquid tension + 8, and + 10 for comfort
 * @source plastics consultancy page "Surface Energies of Untreated Polymers", opening text. For liquids: tape adhesive is a solid of about 25 to 35
 * @example substrateFor({ liquidTensionMnPerM: 30 }).minMnPerM // 38
 */
export function substrateFor(o: { liquidTensionMnPerM: number }): { minMnPerM: number; comfortMnPerM: number } {
  const tension = within('substrateFor', 'liquidTensionMnPerM', o.liquidTensionMnPerM, 0, 1000, 'mN/m');
  positive('substrateFor', 'liquidTensionMnPerM', tension, 'mN/m');
  return { minMnPerM: tension + 8, comfortMnPerM: tension + 10 };
}

/**
 * Contact angle over surface energy, for drawing: what a drop does as a surface gets more energy.
 * @param o.liquid [mN/m] parts, each 0 to 1000, together above 0
 * @param o.polarFraction share of the solid's energy that is polar, 0 to 1
 * @param o.fromMjPerM2 [mJ/m²], above 0 to 5000; 10 by default
 * @param o.toMjPerM2 [mJ/m²], above fromMjPerM2 to 5000; 80 by default
 * @param o.points whole number of points, 2 to 1000; 36 by default
 * @returns points with `energyMjPerM2` [mJ/m²], `angleDeg` [°] and `spreads`; the angle never rises along the curve
 * @throws RangeError outside those ranges
 * @formula contactAngle at each energy, split by the polar share
 * @source as contactAngle
 * @example angleCurve({ liquid: { dispersiveMnPerM: 21.8, polarMnPerM: 51 }, polarFraction: 0, fromMjPerM2: 20, toMjPerM2: 40, points: 3 }).length // 3
 */
export function angleCurve(o: {
  liquid: TestLiquid;
  polarFraction: number;
  fromMjPerM2?: number;
  toMjPerM2?: number;
  points?: number;
}): { energyMjPerM2: number; angleDeg: number; spreads: boolean }[] {
  const polar = within('angleCurve', 'polarFraction', o.polarFraction, 0, 1);
  const from = within('angleCurve', 'fromMjPerM2', o.fromMjPerM2 ?? 10, 0.1, 5000, 'mJ/m²');
  const to = within('angleCurve', 'toMjPerM2', o.toMjPerM2 ?? 80, from, 5000, 'mJ/m²');
  const points = whole('angleCurve', 'points', o.points ?? 36, 2, 1000);
  return Array.from({ length: points }, (_, i) => {
    const energyMjPerM2 = from + ((to - from) * i) / (points - 1);
    const solid = { dispersiveMjPerM2: energyMjPerM2 * (1 - polar), polarMjPerM2: energyMjPerM2 * polar };
    const { angleDeg, flag } = contactAngle({ solid, liquid: o.liquid });
    return { energyMjPerM2, angleDeg, spreads: flag === 'spreads' };
  });
}
