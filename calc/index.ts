/**
 * The public surface of calc: nothing else is imported from outside the room. Names only; what each does stands beside it.
 * Three blocks, so that three trades can add to it without treading on each other.
 */

// ---------------------------------------------------------------- electrical
export {
  AWG_SIZES,
  awg,
  awgName,
  awgNotAbove,
  CONDUCTORS,
  type Conductor,
  type ConductorOptions,
  type ConductorResistance,
  conductorResistance,
  factorTo20C,
  METRIC_SIZES_MM2,
  resistanceOhmPerM,
  resistivity,
  sae,
} from './conductor.ts';
export { convert, UNITS, type Unit } from './units.ts';
export { type Drop, type DropOptions, voltageDrop, voltageDropV } from './voltage-drop.ts';

// ---------------------------------------------------------------- materials and joints

// ---------------------------------------------------------------- circuits
