/**
 * Surface energy from contact angles, three ways, and what to make of the number.
 *
 * Parts always come dispersive first, polar second. The liquids' own splits differ between sources, so each function
 * takes the split with the liquid and the page prints it. Methods differ by a fifth: show whole numbers.
 */
import { positive, within } from './guard.ts';
import type { SolidSurface, TestLiquid } from './wetting.ts';

/** A test liquid and the angle its drop made. */
export interface LiquidDrop {
  liquid: TestLiquid;
  /** [°], 0 to 180 */
  angleDeg: number;
}

export interface SurfaceEnergy extends SolidSurface {
  totalMjPerM2: number;
  method: 'owens-wendt' | 'fowkes' | 'owrk-regression';
  /** Root of the polar part as solved, which may be negative; squaring it would invent a polar part. */
  polarRoot: number;
  dispersiveRoot: number;
  /** Set where a root came out negative and its part was set to 0. */
  flag?: 'polar root negative' | 'dispersive root negative';
  /** With a negative polar root: the dispersive part if a level line is fitted instead of only clamping [mJ/m²]. */
  dispersiveIfRefitMjPerM2?: number;
}

const DEG = Math.PI / 180;

/** One point of the Owens-Wendt line: y = √γs_d + x·√γs_p. */
function linePoint(
  where: string,
  { liquid, angleDeg }: LiquidDrop,
  at: string,
): { x: number; y: number; rootD: number } {
  const d = within(where, `${at}.liquid.dispersiveMnPerM`, liquid.dispersiveMnPerM, 0, 1000, 'mN/m');
  positive(where, `${at}.liquid.dispersiveMnPerM`, d, 'mN/m');
  const p = within(where, `${at}.liquid.polarMnPerM`, liquid.polarMnPerM, 0, 1000, 'mN/m');
  const angle = within(where, `${at}.angleDeg`, angleDeg, 0, 180, '°');
  return { x: Math.sqrt(p / d), y: ((d + p) * (1 + Math.cos(angle * DEG))) / (2 * Math.sqrt(d)), rootD: Math.sqrt(d) };
}

/** Parts from the two roots: a negative root means that the part is nothing, not its square. */
function fromRoots(
  method: SurfaceEnergy['method'],
  dispersiveRoot: number,
  polarRoot: number,
  levelRoot: number,
): SurfaceEnergy {
  const dispersive = dispersiveRoot < 0 ? 0 : dispersiveRoot ** 2;
  const polar = polarRoot < 0 ? 0 : polarRoot ** 2;
  const result: SurfaceEnergy = {
    dispersiveMjPerM2: dispersive,
    polarMjPerM2: polar,
    totalMjPerM2: dispersive + polar,
    method,
    polarRoot,
    dispersiveRoot,
  };
  if (polarRoot < 0) {
    result.flag = 'polar root negative';
    result.dispersiveIfRefitMjPerM2 = levelRoot ** 2;
  } else if (dispersiveRoot < 0) {
    result.flag = 'dispersive root negative';
  }
  return result;
}

/**
 * Surface energy from the angles of two liquids, or of three and more by a least-squares line (Owens, Wendt, Rabel, Kaelble).
 * @param o.drops two or more; liquid parts [mN/m], dispersive above 0; `angleDeg` [°], 0 to 180
 * @returns parts and total [mJ/m²]; the roots [√(mJ/m²)]; `flag` where a root is negative and its part was set to 0, with the level refit beside it [mJ/m²]
 * @throws RangeError outside those ranges, with fewer than two drops, or when the liquids share one polar ratio
 * @formula γl·(1 + cos θ)/(2·√γl_d) = √γs_d + √γs_p·√(γl_p/γl_d); intercept² is dispersive, slope² polar
 * @source Owens and Wendt 1969, J. Appl. Polym. Sci. 13, 1741; rule for negative slopes from an open teaching note on the method
 * @example owensWendt({ drops: [{ liquid: { dispersiveMnPerM: 21.8, polarMnPerM: 51 }, angleDeg: 40.92 }, { liquid: { dispersiveMnPerM: 48.5, polarMnPerM: 2.3 }, angleDeg: 40.8 }] }).totalMjPerM2 // 57.83
 */
export function owensWendt(o: { drops: readonly LiquidDrop[] }): SurfaceEnergy {
  if (o.drops.length < 2) {
    throw new RangeError(`owensWendt: unexpected ${o.drops.length} drops, expected two liquids or more`);
  }
  const points = o.drops.map((drop, i) => linePoint('owensWendt', drop, `drops[${i}]`));
  const meanX = points.reduce((sum, point) => sum + point.x, 0) / points.length;
  const meanY = points.reduce((sum, point) => sum + point.y, 0) / points.length;
  const spread = points.reduce((sum, point) => sum + (point.x - meanX) ** 2, 0);
  if (spread < 1e-9) {
    throw new RangeError(
      'owensWendt: the liquids have one and the same polar ratio, expected a polar and an apolar one',
    );
  }
  const slope = points.reduce((sum, point) => sum + (point.x - meanX) * (point.y - meanY), 0) / spread;
  const intercept = meanY - slope * meanX;
  return fromRoots(points.length === 2 ? 'owens-wendt' : 'owrk-regression', intercept, slope, meanY);
}

/**
 * Surface energy in two steps: the dispersive part from an apolar liquid, then the polar part from a polar one (Fowkes).
 * @param o.apolar drop of a liquid whose polar part is 0; parts [mN/m], `angleDeg` [°] 0 to 180
 * @param o.polar drop of a liquid with a polar part above 0; same units and ranges
 * @returns parts and total [mJ/m²]; the roots [√(mJ/m²)]; `flag` where the polar root is negative and its part was set to 0
 * @throws RangeError outside those ranges, when `apolar` has a polar part or `polar` has none
 * @formula γs_d = γl·(1 + cos θ)²/4 of the apolar liquid; √γs_p = (γl·(1 + cos θ)/2 - √(γs_d·γl_d))/√γl_p of the polar one
 * @source Fowkes two-step method as an instrument maker's theory page describes it
 * @example fowkes({ apolar: { liquid: { dispersiveMnPerM: 50.8, polarMnPerM: 0 }, angleDeg: 41 }, polar: { liquid: { dispersiveMnPerM: 21.8, polarMnPerM: 51 }, angleDeg: 80 } }).totalMjPerM2 // 42.69
 */
export function fowkes(o: { apolar: LiquidDrop; polar: LiquidDrop }): SurfaceEnergy {
  const apolar = linePoint('fowkes', o.apolar, 'apolar');
  const polar = linePoint('fowkes', o.polar, 'polar');
  if (apolar.x !== 0) {
    throw new RangeError(
      `fowkes: unexpected apolar.liquid.polarMnPerM ${o.apolar.liquid.polarMnPerM}, expected 0: use owensWendt for this pair`,
    );
  }
  if (polar.x === 0) {
    throw new RangeError('fowkes: unexpected polar.liquid.polarMnPerM 0, expected a liquid with a polar part');
  }
  return fromRoots('fowkes', apolar.y, (polar.y - apolar.y) / polar.x, (apolar.y + polar.y) / 2);
}

/** How a maker of tape sorts surfaces; three classes, as the source does. Others use two and call polycarbonate "high". */
export type EnergyClass = 'low' | 'medium' | 'high';

/** Class limits [mN/m]: low below the first, medium up to and with the second, high above. */
export const ENERGY_CLASS_LIMITS = {
  lowBelowMnPerM: 36,
  mediumUpToMnPerM: 300,
  source: 'tape supplier web guide on surface energy classes',
  at: 'text',
  read: 'seen',
} as const;

/**
 * Energy class of a surface energy or dyne reading.
 * @param o.surfaceEnergyMnPerM [mN/m], above 0 to 5000. A dyne reading of the part overrides a table
 * @returns 'low', 'medium' or 'high'; a class has no unit. "High" says nothing before the surface is clean
 * @throws RangeError outside that range
 * @formula low below 36, medium to 300, high above
 * @source tape supplier web guide on surface energy classes, text
 * @example energyClass({ surfaceEnergyMnPerM: 36 }) // 'medium'
 */
export function energyClass(o: { surfaceEnergyMnPerM: number }): EnergyClass {
  const energy = within('energyClass', 'surfaceEnergyMnPerM', o.surfaceEnergyMnPerM, 0, 5000, 'mN/m');
  positive('energyClass', 'surfaceEnergyMnPerM', energy, 'mN/m');
  if (energy < ENERGY_CLASS_LIMITS.lowBelowMnPerM) return 'low';
  return energy <= ENERGY_CLASS_LIMITS.mediumUpToMnPerM ? 'medium' : 'high';
}

/** How far methods differ on one and the same surface (range 20 to 50 mJ/m²), so nobody reads decimals into a figure. */
export const METHOD_SPREAD = {
  neumannAgainstOwensWendtMaxPercent: 21,
  owensWendtAgainstAcidBaseMaxPercent: 3,
  source: 'comparative study of surface free energy methods, range 20 to 50 mJ/m²',
  at: 'abstract',
  read: 'seen',
} as const;
