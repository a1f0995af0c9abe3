import { type ConductorOptions, conductorResistance } from './conductor.ts';
import { positive, within } from './guard.ts';
import { atMost, type Verdict } from './verdict.ts';

/** A short at the far end must drive at least this many times the fuse. Common practice, no source. */
const CLEAR_MULTIPLE = 5;

/** A run of wire behind a fuse, shorted at its far end. */
export interface FaultOptions extends ConductorOptions {
  /** Supply [V], 1 to 60. */
  supplyV: number;
  /** Battery and main leads [ohm], 0.0001 to 10; 0.02 for a starter battery and its leads, more when cold or old. */
  sourceOhm: number;
  /** Copper in the loop [m], out and back where both are wire; 0 to 1000. */
  lengthM: number;
  /** Joints and terminals [ohm], 0 to 10 (default 0). */
  jointOhm?: number | undefined;
  /** The fuse [A], above 0. */
  fuseA: number;
}

/**
 * Will a short at the far end of a run blow its fuse? A long thin run can hold back so much that the wire cooks instead.
 *
 * @param options see `FaultOptions`: `supplyV` 1 to 60, `sourceOhm` 0.0001 to 10, `lengthM` of copper 0 to 1000, a size, `temperatureC` of the copper, `jointOhm` 0 to 10, `fuseA` above 0.
 * @returns `loopOhm`, `faultA`, `timesFuse`, `verdict` stop below five times the fuse.
 * @throws TypeError or RangeError when a value is out of range or the size is missing.
 * Formula: I = V / (source + run + joints); pass if I ≥ 5 × fuse.
 * @source Ohm's law; 5 ×: common practice, no source.
 * @example faultClears({ supplyV: 12, sourceOhm: 0.02, lengthM: 8, areaMm2: 1.5, temperatureC: 60, jointOhm: 0.01, fuseA: 5 }).timesFuse // 15.7
 */
export function faultClears({ supplyV, sourceOhm, lengthM, jointOhm = 0, fuseA, ...wire }: FaultOptions): {
  loopOhm: number;
  faultA: number;
  timesFuse: number;
  verdict: Verdict;
} {
  const where = 'faultClears';
  within(where, 'supplyV', supplyV, 1, 60, 'V');
  within(where, 'sourceOhm', sourceOhm, 0.0001, 10, 'ohm');
  within(where, 'lengthM', lengthM, 0, 1000, 'm');
  within(where, 'jointOhm', jointOhm, 0, 10, 'ohm');
  positive(where, 'fuseA', fuseA, 'A');
  const loopOhm = sourceOhm + conductorResistance(wire).resistanceOhmPerM * lengthM + jointOhm;
  const faultA = supplyV / loopOhm;
  return {
    loopOhm,
    faultA,
    timesFuse: faultA / fuseA,
    verdict: atMost(CLEAR_MULTIPLE * fuseA, faultA) ? 'pass' : 'stop',
  };
}
