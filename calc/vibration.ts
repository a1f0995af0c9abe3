/**
 * Vibration of a stuck part: rms acceleration of a random profile, and the force it puts into the tape.
 *
 * Rigid body only. A long strip has resonances that are not in here, which is one more reason for the generous area.
 */
import { positive, within } from './guard.ts';
import type { Cited } from './tables/cited.ts';
import { tapeShearKpa } from './tape.ts';

/** Power spectral density of acceleration at a frequency; lines are straight on log-log axes between points. */
export interface PsdPoint {
  frequencyHz: number;
  psdM2PerS4Hz: number;
}

export interface VibrationProfile extends Cited {
  id: string;
  about: string;
  points: readonly PsdPoint[];
  /** As the standard prints it, the only check there is on recalled points [m/s²]. */
  printedRmsMPerS2: number;
}

const at = (...pairs: (readonly [number, number])[]): PsdPoint[] =>
  pairs.map(([frequencyHz, psdM2PerS4Hz]) => ({ frequencyHz, psdM2PerS4Hz }));
const RECALLED = { source: 'ISO 16750-3 (2007 tables, recalled; an edition of 2023 exists)', read: 'memory' } as const;

/** Road vibration by place on the vehicle. */
export const VIBRATION_PROFILES: readonly VibrationProfile[] = [
  {
    id: 'car body',
    about: 'passenger car, sprung masses (vehicle body)',
    points: at([10, 20], [55, 6.5], [180, 0.25], [300, 0.25], [360, 0.14], [1000, 0.14]),
    printedRmsMPerS2: 27.8,
    at: 'test IV',
    ...RECALLED,
  },
  {
    id: 'truck body',
    about: 'commercial vehicle, sprung masses (vehicle body)',
    points: at([10, 18], [20, 36], [30, 36], [180, 1], [2000, 1]),
    printedRmsMPerS2: 57.9,
    at: 'test VII',
    ...RECALLED,
  },
  {
    id: 'car wheel',
    about: 'passenger car, unsprung masses (wheel, suspension)',
    points: at([20, 200], [40, 200], [300, 0.5], [800, 0.5], [1000, 3], [2000, 3]),
    printedRmsMPerS2: 107.3,
    at: 'test V',
    ...RECALLED,
  },
];

/**
 * Rms acceleration of a profile, integrated piece by piece on log-log axes.
 * @param o.points two or more, frequencies [Hz] rising and above 0, densities [(m/s²)²/Hz] above 0
 * @returns rms acceleration [m/s²]
 * @throws RangeError for fewer than two points, or values outside those ranges
 * @formula slope n = ln(P2/P1)/ln(f2/f1); area = P1·f1/(n+1)·((f2/f1)^(n+1) - 1), and P1·f1·ln(f2/f1) where n = -1; rms = √Σ
 * @source integration of straight lines on log-log axes; straight lines on plain axes would overstate
 * @example psdRmsMPerS2({ points: [{ frequencyHz: 10, psdM2PerS4Hz: 4 }, { frequencyHz: 110, psdM2PerS4Hz: 4 }] }) // 20
 */
export function psdRmsMPerS2(o: { points: readonly PsdPoint[] }): number {
  if (o.points.length < 2) {
    throw new RangeError(`psdRmsMPerS2: unexpected ${o.points.length} points, expected two or more`);
  }
  let area = 0;
  for (let i = 1; i < o.points.length; i++) {
    const from = o.points[i - 1]!;
    const to = o.points[i]!;
    const f1 = positive('psdRmsMPerS2', `points[${i - 1}].frequencyHz`, from.frequencyHz, 'Hz');
    const f2 = positive('psdRmsMPerS2', `points[${i}].frequencyHz`, to.frequencyHz, 'Hz');
    const p1 = positive('psdRmsMPerS2', `points[${i - 1}].psdM2PerS4Hz`, from.psdM2PerS4Hz, '(m/s²)²/Hz');
    const p2 = positive('psdRmsMPerS2', `points[${i}].psdM2PerS4Hz`, to.psdM2PerS4Hz, '(m/s²)²/Hz');
    if (f2 <= f1) throw new RangeError(`psdRmsMPerS2: unexpected frequency ${f2} Hz after ${f1} Hz, expected rising`);
    const logRatio = Math.log(f2 / f1);
    const exponent = Math.log(p2 / p1) / logRatio + 1;
    // (r^e - 1)/e loses all its digits near e = 0, where it tends to ln r: expm1 keeps them, and e = 0 has its own formula.
    area += p1 * f1 * (exponent === 0 ? logRatio : Math.expm1(exponent * logRatio) / exponent);
  }
  return Math.sqrt(area);
}

/**
 * Peak inertial force of random vibration on a stuck part, and the stress it puts into the tape.
 * @param o.massKg [kg], 0 to 50
 * @param o.rmsMPerS2 [m/s²], 0 to 500
 * @param o.sigma peaks counted, in multiples of rms, 1 to 6; 3 by default
 * @param o.areaCm2 [cm²] of tape, above 0 to 100000, if a stress is wanted
 * @returns `forceN` [N]; `stressKpa` [kPa] when an area is given
 * @throws RangeError outside those ranges
 * @formula F = m·σ·a_rms
 * @source mechanics; three sigma is common practice
 * @example vibrationLoad({ massKg: 0.1, rmsMPerS2: 27.78 }).forceN // 8.334
 */
export function vibrationLoad(o: { massKg: number; rmsMPerS2: number; sigma?: number; areaCm2?: number }): {
  forceN: number;
  stressKpa?: number;
} {
  const mass = within('vibrationLoad', 'massKg', o.massKg, 0, 50, 'kg');
  const rms = within('vibrationLoad', 'rmsMPerS2', o.rmsMPerS2, 0, 500, 'm/s²');
  const peak = within('vibrationLoad', 'sigma', o.sigma ?? 3, 1, 6) * rms;
  const forceN = mass * peak;
  if (o.areaCm2 === undefined) return { forceN };
  return { forceN, stressKpa: tapeShearKpa({ massKg: mass, areaCm2: o.areaCm2, accelerationMPerS2: peak }) };
}
