/**
 * Vapour of a wipe in a closed space: how much of the liquid becomes how many parts of air, against the limits.
 */
import { positive, within } from './guard.ts';

/** Isopropyl alcohol. Two time-weighted limits are in use (400 and 200 ppm): show the lower when unsure. */
export const ISOPROPYL_ALCOHOL = {
  twaPpm: 400,
  stelPpm: 500,
  idlhPpm: 2000,
  mgPerM3PerPpm: 2.46,
  lelPercent: 2,
  uelPercent: 12.7,
  flashC: 11.7,
  densityGPerMl: 0.785,
  molarMassGPerMol: 60.1,
  /** A second body's limits, as a data sheet prints them. */
  lowerTwaPpm: 200,
  lowerStelPpm: 400,
  /** 70 % alcohol in water still burns; recalled. */
  flash70PercentC: 18,
  source: 'NIOSH Pocket Guide, isopropyl alcohol; density from a solvent supplier data bulletin',
  at: 'page',
  read: 'seen',
} as const;

/** Volume of a mole of gas at 25 °C and standard pressure [L/mol]. */
export const MOLAR_VOLUME_L_PER_MOL = 24.45;

/**
 * Vapour when a liquid evaporates in a closed space with no ventilation.
 * @param o.volumeMl [ml] of liquid, 0 to 10000; count only the alcohol of a diluted wipe
 * @param o.spaceM3 [m³], above 0 to 10000
 * @param o.densityGPerMl [g/ml], 0.1 to 3; isopropyl alcohol by default
 * @param o.molarMassGPerMol [g/mol], 10 to 500; isopropyl alcohol by default
 * @param o.molarVolumeLPerMol [L/mol], 20 to 30; 24.45 by default
 * @param o.limitPpm [ppm], above 0 to 100000; 400 by default
 * @returns `ppm` [ppm], `aboveLimit`
 * @throws RangeError outside those ranges
 * @formula ppm = V·ρ/M·Vm/space·1000
 * @source ideal gas; NIOSH Pocket Guide for limit and molar mass
 * @example vapourPpm({ volumeMl: 2, spaceM3: 3 }).ppm // 212.9
 */
export function vapourPpm(o: {
  volumeMl: number;
  spaceM3: number;
  densityGPerMl?: number;
  molarMassGPerMol?: number;
  molarVolumeLPerMol?: number;
  limitPpm?: number;
}): { ppm: number; aboveLimit: boolean } {
  const volume = within('vapourPpm', 'volumeMl', o.volumeMl, 0, 10000, 'ml');
  const space = within('vapourPpm', 'spaceM3', o.spaceM3, 0, 10000, 'm³');
  positive('vapourPpm', 'spaceM3', space, 'm³');
  const limit = within('vapourPpm', 'limitPpm', o.limitPpm ?? ISOPROPYL_ALCOHOL.twaPpm, 1, 1e5, 'ppm');
  const ppm = (volume * litresPerMl(o) * 1000) / space;
  return { ppm, aboveLimit: ppm > limit };
}

/**
 * Liquid that brings a closed space to a share of the lower explosive limit.
 * @param o.spaceM3 [m³], above 0 to 10000
 * @param o.fractionOfLel share of the limit, 0.001 to 1
 * @param o.lelPercent [%] by volume, 0.1 to 20; isopropyl alcohol by default
 * @param o.densityGPerMl [g/ml], 0.1 to 3; isopropyl alcohol by default
 * @param o.molarMassGPerMol [g/mol], 10 to 500; isopropyl alcohol by default
 * @returns `ppm` [ppm] and `volumeMl` [ml]
 * @throws RangeError outside those ranges
 * @formula inverse of vapourPpm
 * @source ideal gas; NIOSH Pocket Guide. A tenth of the limit is 2000 ppm, also the figure for danger to life
 * @example liquidForLel({ spaceM3: 3, fractionOfLel: 0.1 }).volumeMl // 18.79
 */
export function liquidForLel(o: {
  spaceM3: number;
  fractionOfLel: number;
  lelPercent?: number;
  densityGPerMl?: number;
  molarMassGPerMol?: number;
}): { ppm: number; volumeMl: number } {
  const space = within('liquidForLel', 'spaceM3', o.spaceM3, 0, 10000, 'm³');
  positive('liquidForLel', 'spaceM3', space, 'm³');
  const fraction = within('liquidForLel', 'fractionOfLel', o.fractionOfLel, 0.001, 1);
  const lel = within('liquidForLel', 'lelPercent', o.lelPercent ?? ISOPROPYL_ALCOHOL.lelPercent, 0.1, 20, '%');
  const ppm = lel * 1e4 * fraction;
  return { ppm, volumeMl: (ppm * space) / (litresPerMl(o) * 1000) };
}

/** Litres of vapour from one millilitre of liquid. */
function litresPerMl(o: { densityGPerMl?: number; molarMassGPerMol?: number; molarVolumeLPerMol?: number }): number {
  const density = within('vapour', 'densityGPerMl', o.densityGPerMl ?? ISOPROPYL_ALCOHOL.densityGPerMl, 0.1, 3, 'g/ml');
  const mass = o.molarMassGPerMol ?? ISOPROPYL_ALCOHOL.molarMassGPerMol;
  within('vapour', 'molarMassGPerMol', mass, 10, 500, 'g/mol');
  const molar = within('vapour', 'molarVolumeLPerMol', o.molarVolumeLPerMol ?? MOLAR_VOLUME_L_PER_MOL, 20, 30, 'L/mol');
  return (density / mass) * molar;
}
