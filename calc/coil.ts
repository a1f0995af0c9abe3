import { oneOf, positive, within } from './guard.ts';
import type { Verdict } from './verdict.ts';

/** Forward drop of the diode across a coil [V]. Common practice, no source. */
const DIODE_V = 0.7;

/**
 * Current of a relay coil, with the resistor some relays carry across it.
 *
 * @param options `systemV` above 0 to 60; `coilOhm` above 0; `resistorOhm` above 0, or left out.
 * @returns `currentA` drawn from the output, `resistanceOhm` it sees, `coilA` through the coil alone, `coilW`.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: R = coil ∥ resistor; I = V/R.
 * @source Ohm's law; checked on an electronics forum measurement of a cube relay.
 * @example coilCurrent({ systemV: 12, coilOhm: 120, resistorOhm: 680 }).resistanceOhm // 102
 */
export function coilCurrent({
  systemV,
  coilOhm,
  resistorOhm,
}: {
  systemV: number;
  coilOhm: number;
  resistorOhm?: number | undefined;
}): { currentA: number; resistanceOhm: number; coilA: number; coilW: number } {
  const where = 'coilCurrent';
  positive(where, 'systemV', systemV, 'V');
  within(where, 'systemV', systemV, 0, 60, 'V');
  positive(where, 'coilOhm', coilOhm, 'ohm');
  const beside = resistorOhm === undefined ? 0 : 1 / positive(where, 'resistorOhm', resistorOhm, 'ohm');
  const resistanceOhm = 1 / (1 / coilOhm + beside);
  const coilA = systemV / coilOhm;
  return { currentA: systemV / resistanceOhm, resistanceOhm, coilA, coilW: coilA * systemV };
}

/** What stands across a coil to take its kick. */
export const CLAMPS = ['diode', 'resistor', 'none'] as const;
export type Clamp = (typeof CLAMPS)[number];

/** What happens when a coil is switched off. */
export interface CoilKick {
  currentA: number;
  /** Energy the coil gives back [J]. */
  energyJ: number;
  /** Voltage across the coil at switch-off [V]; null with no clamp: hundreds of volts, not computed. */
  acrossCoilV: number | null;
  /** Voltage at the output that drove it: supply plus the coil's kick [V]. */
  peakV: number | null;
  /** Time until the contacts let go [s]; null with no clamp. A diode holds them about three times longer than a resistor. */
  releaseS: number | null;
  /** Without a clamp on an electronic output: stop. */
  verdict: Verdict;
}

/**
 * The kick of a coil when it is switched off, and how long its clamp keeps the contacts in.
 *
 * @param options `maxV` above 0 to 60; `coilOhm` 1 to 10 000; `inductanceH` 0.001 to 10 (unknown: 0.25 for a plug-in relay); `clamp` diode, resistor or none; `clampOhm` 1 to 100 000 for a resistor; `releaseFraction` of the holding current at which it lets go, 0.01 to 0.99 (default 0.3).
 * @returns see `CoilKick`.
 * @throws TypeError or RangeError when a value is out of range, or a resistor clamp has no `clampOhm`.
 * Formula: I = V/R; E = L I²/2. Diode: peak V + 0.7, t = L/R × ln((I + 0.7/R)/(Irel + 0.7/R)). Resistor: peak V + I Rp, t = L/(R + Rp) × ln(I/Irel).
 * @source inductor law; 0.25 H and 30 %: common practice, no source.
 * @example coilClamp({ maxV: 14.4, coilOhm: 90, inductanceH: 0.25, clamp: 'diode' }).peakV // 15.1
 */
export function coilClamp({
  maxV,
  coilOhm,
  inductanceH,
  clamp,
  clampOhm,
  releaseFraction = 0.3,
}: {
  maxV: number;
  coilOhm: number;
  inductanceH: number;
  clamp: Clamp;
  clampOhm?: number | undefined;
  releaseFraction?: number | undefined;
}): CoilKick {
  const where = 'coilClamp';
  positive(where, 'maxV', maxV, 'V');
  within(where, 'maxV', maxV, 0, 60, 'V');
  within(where, 'coilOhm', coilOhm, 1, 10_000, 'ohm');
  within(where, 'inductanceH', inductanceH, 0.001, 10, 'H');
  within(where, 'releaseFraction', releaseFraction, 0.01, 0.99);
  oneOf(where, 'clamp', clamp, CLAMPS);
  const currentA = maxV / coilOhm;
  const energyJ = (inductanceH * currentA * currentA) / 2;
  const kick = { currentA, energyJ };
  if (clamp === 'none') return { ...kick, acrossCoilV: null, peakV: null, releaseS: null, verdict: 'stop' };
  if (clamp === 'diode') {
    const tail = DIODE_V / coilOhm;
    const releaseS = (inductanceH / coilOhm) * Math.log((currentA + tail) / (releaseFraction * currentA + tail));
    return { ...kick, acrossCoilV: DIODE_V, peakV: maxV + DIODE_V, releaseS, verdict: 'pass' };
  }
  const acrossCoilV = currentA * within(where, 'clampOhm', clampOhm, 1, 100_000, 'ohm');
  const releaseS = (inductanceH / (coilOhm + (clampOhm ?? 0))) * Math.log(1 / releaseFraction);
  return { ...kick, acrossCoilV, peakV: maxV + acrossCoilV, releaseS, verdict: 'pass' };
}
