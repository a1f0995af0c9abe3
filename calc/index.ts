/**
 * The public surface of calc: nothing else is imported from outside the room. Names only; what each does stands beside it.
 * Three blocks, so that three trades can add to it without treading on each other.
 */

// ---------------------------------------------------------------- electrical

export {
  type Allowed,
  allowedCurrent,
  ambientFactor,
  bundleFactor,
  type Laying,
  type WireLimit,
  type WorkshopLimit,
  wireLimit,
  workshopLimit,
} from './ampacity.ts';
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
export {
  type Fuse,
  type FuseFound,
  type FuseNotFound,
  type FuseOptions,
  fuseCurrentMa,
  fuseFor,
  fuseOpens,
  type Opening,
  type ProtectedWire,
  type WeighedRating,
} from './fuse.ts';
export {
  type Gauge,
  type GaugeFound,
  type GaugeNotFound,
  type GaugeOptions,
  type GaugeRow,
  gaugeFor,
  type WorkingLine,
} from './gauge.ts';
export {
  adiabaticAreaMm2,
  adiabaticK,
  adiabaticTimeS,
  fuseProtects,
  type JudgedWire,
  largestFuseByRule,
  meltingCurrentA,
} from './protection.ts';
export { FUSE_FORMS, type FuseForm } from './tables/blade-fuses.ts';
export type { Cited, Read } from './tables/cited.ts';
export type { Source } from './tables/rows.ts';
export { INRUSH_MULTIPLE, STOCKED_FUSES_A } from './tables/workshop.ts';
export { convert, UNITS, type Unit } from './units.ts';
export { type Drop, type DropOptions, voltageDrop, voltageDropV } from './voltage-drop.ts';

// ---------------------------------------------------------------- materials and joints

export * from './materials.ts';

// ---------------------------------------------------------------- circuits
