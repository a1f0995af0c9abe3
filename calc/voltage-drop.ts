import { type ConductorOptions, type ConductorResistance, conductorResistance } from './conductor.ts';
import { positive, within } from './guard.ts';

/** A run of wire and what flows in it. */
export interface DropOptions extends ConductorOptions {
  /** Current [A], 0 to 10 000. */
  currentA: number;
  /** Length of copper that carries it [m], out and back where both are wire; 0 to 10 000. */
  lengthM: number;
  /** Joints and terminals in series [ohm], 0 to 10 (default 0). */
  jointOhm?: number | undefined;
  /** Supply [V], above 0: fills `dropFraction` and `loadV`. */
  supplyV?: number | undefined;
}

/** A voltage drop, and every figure it was worked from. */
export interface Drop {
  dropV: number;
  /** Drop over supply; null when no supply was given. */
  dropFraction: number | null;
  /** What is left at the load [V]; null when no supply was given. Below 0: this current cannot flow from this supply. */
  loadV: number | null;
  /** Heat in wire and joints [W]. */
  lossW: number;
  wireOhm: number;
  resistance: ConductorResistance;
}

/**
 * Voltage lost along a run, with what it was worked from. `voltageDropV` gives the number alone.
 *
 * @param options see `DropOptions`: `currentA` 0 to 10 000 A, `lengthM` of copper 0 to 10 000 m (never doubled here), a size, `temperatureC` of the copper, `jointOhm` 0 to 10, `supplyV` above 0.
 * @returns `dropV`, `dropFraction`, `loadV`, `lossW`, `wireOhm` and the `resistance` used with its source.
 * @throws TypeError or RangeError when a value is not a number or out of range, or the size is missing.
 * Formula: V = I × (R(T) × L + R_joints).
 * @source Ohm's law; resistance by IEC 60228 class 5 maximum at 20 °C unless another conductor is named.
 * @example voltageDrop({ currentA: 2.18, lengthM: 8, areaMm2: 1.5, temperatureC: 60, jointOhm: 0.01, supplyV: 12 }).dropV // 0.2902
 */
export function voltageDrop({ currentA, lengthM, jointOhm = 0, supplyV, ...wire }: DropOptions): Drop {
  const where = 'voltageDrop';
  within(where, 'currentA', currentA, 0, 10_000, 'A');
  within(where, 'lengthM', lengthM, 0, 10_000, 'm');
  within(where, 'jointOhm', jointOhm, 0, 10, 'ohm');
  if (supplyV !== undefined) positive(where, 'supplyV', supplyV, 'V');
  const resistance = conductorResistance(wire);
  const wireOhm = resistance.resistanceOhmPerM * lengthM;
  const dropV = currentA * (wireOhm + jointOhm);
  return {
    dropV,
    dropFraction: supplyV === undefined ? null : dropV / supplyV,
    loadV: supplyV === undefined ? null : supplyV - dropV,
    lossW: dropV * currentA,
    wireOhm,
    resistance,
  };
}

/**
 * Voltage lost along a run of wire.
 *
 * @param options `currentA` 0 to 10 000 A, `lengthM` of copper 0 to 10 000 m (a two-wire run counts both wires), one of `areaMm2` and `gaugeAwg`, `temperatureC` of the copper (default 20), `jointOhm` 0 to 10.
 * @returns volts.
 * @throws TypeError or RangeError when a value is not a number or out of range, or the size is missing.
 * Formula: V = I × (R(T) × L + R_joints).
 * @source Ohm's law; IEC 60228 class 5 maximum at 20 °C unless another conductor is named.
 * @example voltageDropV({ currentA: 5, lengthM: 6, areaMm2: 1.5, temperatureC: 20 }) // 0.399
 */
export function voltageDropV(options: DropOptions): number {
  return voltageDrop(options).dropV;
}
