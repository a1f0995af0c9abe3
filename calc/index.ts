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
export { APPLICATION_GATE, APPLICATION_RANGES, applicationRange, type ApplicationRange, dewPointC, temperatureGate, WARM_TO_C } from './application-temperature.ts';
export { DWELL_POINTS, DWELL_REFERENCE_C, dwellFraction, type DwellPoint, dwellTimeMin, PAINT_WAIT, WASH_WAIT } from './dwell.ts';
export { aimAngle, bounceLx, lightLevel, lineFluxLm, POINT_FROM_LENGTHS, pointError, pointFromM, pointLx, reflectanceOf, stripLx, tubeLx } from './illumination.ts';
export { AREA_RULE_FACTOR, bundleByArea, bundleOf, bundleOfEqual, cableCut, chooseSleeve, DIAMETER_FILL_LIMIT, HAND_LAID, packingFactor, SLEEVE_SIZES_MM, sleeveFill } from './loom.ts';
export { flashGate, lithiumChargeAllowed } from './safety-gates.ts';
export { chooseShrink, lapSplice, LENGTHWAYS_SHRINK, SHRINK_RATIOS, SHRINK_SIZES_MM, SHRINK_TEMPERATURES, shrunkLength, sleeveFit, sleeveOverlapMm } from './sleeve.ts';
export { FLUX_HOLDS_TO_C, heatingTimeS, JOINT_CRITERIA, jointHeatJ, judgeJoint, meltingRange, SOLDER_HEAT, solderWetting, TIP_TIME, tipRange } from './solder.ts';
export { AIRCRAFT_STRANDS, aircraftStrands, crimpClearance, edgeFlashMaxMm, ferruleProtrusionMm, LAP_SPLICE, lapOverlap, mayCrimp, shieldStrands, solderGap, SPLICE_INSPECTION, SPLICE_PLACE, type StrandLimit } from './splice.ts';
export { type Drop, ENERGY_CLASS_LIMITS, energyClass, type EnergyClass, fowkes, METHOD_SPREAD, owensWendt, type SurfaceEnergy } from './surface-energy.ts';
export { CROSS_CUT, crossCutClass, crossCutSpacingMm, DYNE_HOLD_S, DYNE_LEVELS_MN_PER_M, DYNE_LEVELS_SOURCE, DYNE_UNCERTAINTY_MN_PER_M, dyneReading, PEEL_TESTS, WATER_BREAK_HOLD_S, waterBreak } from './surface-tests.ts';
export { LIQUID_RANGES, type LiquidRow, LIQUIDS } from './tables/liquids.ts';
export { POLYMER_SURVEY, type PolymerRow, POLYMERS } from './tables/polymers.ts';
export { type ReflectanceRow, REFLECTANCES } from './tables/reflectance.ts';
export { AIRBAG_RULES, AIRBAG_WAIT, AIRBAG_WAIT_EXAMPLES, BATTERY_HYDROGEN, BATTERY_ORDER, BATTERY_WORK, DYNE_FLUID_HAZARD, FLASH_RATES, HIGH_VOLTAGE, HIGH_VOLTAGE_ABOVE, LEAD, LITHIUM_CHARGE_FROM, LITHIUM_VENT, PHOTOBIOLOGY, ROAD_COLOURS, ROSIN_FUME, WIPE_AND_HEAT } from './tables/safety.ts';
export { SOLDER_ALLOYS, type SolderAlloy, TIP_TEMPERATURES, type TipTemperature } from './tables/solder-alloys.ts';
export { SAE_WALLS, WIRE_OUTERS, type WireOuterRow } from './tables/wire-outer.ts';
export { areaCm2PerKg, BACK_UP_ABOVE_G, GRAVITY_M_PER_S2, PEEL_ADVICE, PRESS_PRESSURE, pressForce, TAPE_AREA_CM2_PER_KG, TAPE_AREA_IN2_PER_LB, TAPE_POSITIONS, TAPE_SURFACES, tapeForMass, tapeHold, type TapePosition, tapeShearKpa, type TapeSurface, tapeThicknessMm } from './tape.ts';
export { EXPANSION, type ExpansionRow, MEASURED_TEMPERATURES, PLACE_TEMPERATURES, type PlaceTemperature, thermalMismatch } from './thermal.ts';
export { BEND_RADII, bendRadius, type Jacket, SPACE_TIE_BANDS, spaceTieSpacingMm, TIE_PRACTICES, TIE_TENSION, type TieBand, tieCount } from './tie.ts';
export { ISOPROPYL_ALCOHOL, liquidForLel, MOLAR_VOLUME_L_PER_MOL, vapourPpm } from './vapour.ts';
export { type PsdPoint, psdRmsMPerS2, VIBRATION_PROFILES, vibrationLoad, type VibrationProfile } from './vibration.ts';
export { contactAngle, interfaceWork, rankByAngle, type SolidSurface, substrateFor, type TestLiquid, workOfAdhesion } from './wetting.ts';
export { strandAreaMm2, wireOuter } from './wire-diameter.ts';

// ---------------------------------------------------------------- circuits
