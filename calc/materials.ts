/**
 * What calc offers on materials and joints: surfaces and tape, preparation, soldering, splices, looms, light, safety.
 * Names only; calc/index.ts hands them on.
 */
export {
  APPLICATION_GATE,
  APPLICATION_RANGES,
  type ApplicationRange,
  applicationRange,
  dewPointC,
  temperatureGate,
  WARM_TO_C,
} from './application-temperature.ts';
export {
  DWELL_POINTS,
  DWELL_REFERENCE_C,
  type DwellPoint,
  dwellFraction,
  dwellTimeMin,
  PAINT_WAIT,
  WASH_WAIT,
} from './dwell.ts';
export { GROUND_LIMITS, GROUND_STEPS, type GroundStep, judgeGround } from './ground-point.ts';
export {
  aimAngle,
  bounceLx,
  lightLevel,
  lineFluxLm,
  POINT_FROM_LENGTHS,
  pointError,
  pointFromM,
  pointLx,
  reflectanceOf,
  stripLx,
  tubeLx,
} from './illumination.ts';
export {
  AREA_RULE_FACTOR,
  bundleByArea,
  bundleOf,
  bundleOfEqual,
  cableCut,
  chooseSleeve,
  DIAMETER_FILL_LIMIT,
  HAND_LAID,
  packingFactor,
  SLEEVE_SIZES_MM,
  sleeveFill,
} from './loom.ts';
export { FLOW_MARGIN_K, PAD_LIFTS_ABOVE_C, PAD_STRIP, PAD_TIME_S, padFit, padHeating } from './pad.ts';
export { type Fixing, type Need, type PrepOptions, type PrepPlan, prepPlan } from './prep.ts';
export { type CautionContext, PREP_CAUTIONS, type PrepCaution, prepCautions } from './prep-cautions.ts';
export { PREP_LINES, type PrepLine, prepSelect } from './prep-select.ts';
export { type PrepStep, prepStep, type StepContext } from './prep-steps.ts';
export {
  ABRADE_USES,
  BONDS,
  PAINT_PROMOTER_FLASH_OFF,
  PREP_STEPS,
  PRIMER_HYGIENE,
  PRIMER_PRACTICE,
  PRIMER_USES,
  PRIMERS,
  type PrepStepId,
  type PrimerKind,
  RISKS,
  type Risk,
  SOLVENTS,
  type Solvent,
  STEP_SOLVENT,
  SURFACE_STEPS,
  type SurfaceFacts,
  type SurfaceStepId,
} from './prep-surface.ts';
export { LONG_WAIT_MIN, PREP_TIMES, type PrepTime, prepTimes } from './prep-time.ts';
export { flashGate, lithiumChargeAllowed } from './safety-gates.ts';
export {
  chooseShrink,
  LENGTHWAYS_SHRINK,
  lapSplice,
  SHRINK_RATIOS,
  SHRINK_SIZES_MM,
  SHRINK_TEMPERATURES,
  shrunkLength,
  sleeveFit,
  sleeveOverlapMm,
} from './sleeve.ts';
export {
  FLUX_HOLDS_TO_C,
  heatingTimeS,
  JOINT_CRITERIA,
  jointHeatJ,
  judgeJoint,
  meltingRange,
  SOLDER_HEAT,
  solderWetting,
  TIP_TIME,
  tipRange,
} from './solder.ts';
export {
  AIRCRAFT_STRANDS,
  aircraftStrands,
  crimpClearance,
  edgeFlashMaxMm,
  ferruleProtrusionMm,
  LAP_SPLICE,
  lapOverlap,
  mayCrimp,
  SPLICE_INSPECTION,
  SPLICE_PLACE,
  type StrandLimit,
  shieldStrands,
  solderGap,
} from './splice.ts';
export {
  ENERGY_CLASS_LIMITS,
  type EnergyClass,
  energyClass,
  fowkes,
  type LiquidDrop,
  METHOD_SPREAD,
  owensWendt,
  type SurfaceEnergy,
} from './surface-energy.ts';
export {
  type SearchableSurface,
  SIGNS,
  type Sign,
  type SignsSeen,
  type SurfaceMatch,
  surfacesBySigns,
  surfacesByWords,
} from './surface-signs.ts';
export {
  CROSS_CUT,
  crossCutClass,
  crossCutSpacingMm,
  DYNE_HOLD_S,
  DYNE_LEVELS_MN_PER_M,
  DYNE_LEVELS_SOURCE,
  DYNE_UNCERTAINTY_MN_PER_M,
  dyneReading,
  PEEL_TESTS,
  WATER_BREAK_HOLD_S,
  waterBreak,
} from './surface-tests.ts';
export { LIQUID_RANGES, LIQUIDS, type LiquidRow } from './tables/liquids.ts';
export { POLYMER_SURVEY, POLYMERS, type PolymerRow } from './tables/polymers.ts';
export { REFLECTANCES, type ReflectanceRow } from './tables/reflectance.ts';
export {
  AIRBAG_RULES,
  AIRBAG_WAIT,
  AIRBAG_WAIT_EXAMPLES,
  BATTERY_HYDROGEN,
  BATTERY_ORDER,
  BATTERY_WORK,
  DYNE_FLUID_HAZARD,
  FLASH_RATES,
  HIGH_VOLTAGE,
  HIGH_VOLTAGE_ABOVE,
  LEAD,
  LITHIUM_CHARGE_FROM,
  LITHIUM_VENT,
  PHOTOBIOLOGY,
  ROAD_COLOURS,
  ROSIN_FUME,
  WIPE_AND_HEAT,
} from './tables/safety.ts';
export { SOLDER_ALLOYS, type SolderAlloy, TIP_TEMPERATURES, type TipTemperature } from './tables/solder-alloys.ts';
export { PLACE_IDS, PLACES, type Place, SOILS, type Soil, TAPE_IDS, TAPES, type TapeClass } from './tables/tapes.ts';
export { SAE_WALLS, WIRE_OUTERS, type WireOuterRow } from './tables/wire-outer.ts';
export {
  areaCm2PerKg,
  BACK_UP_ABOVE_G,
  GRAVITY_M_PER_S2,
  PEEL_ADVICE,
  PRESS_PRESSURE,
  pressForce,
  TAPE_AREA_CM2_PER_KG,
  TAPE_AREA_IN2_PER_LB,
  TAPE_POSITIONS,
  TAPE_SURFACES,
  type TapePosition,
  type TapeSurface,
  tapeForMass,
  tapeHold,
  tapeShearKpa,
  tapeThicknessMm,
} from './tape.ts';
export {
  EXPANSION,
  type ExpansionRow,
  MEASURED_TEMPERATURES,
  PLACE_TEMPERATURES,
  type PlaceTemperature,
  thermalMismatch,
} from './thermal.ts';
export {
  BEND_RADII,
  bendRadius,
  type Jacket,
  SPACE_TIE_BANDS,
  spaceTieSpacingMm,
  TIE_PRACTICES,
  TIE_TENSION,
  type TieBand,
  tieCount,
} from './tie.ts';
export { ISOPROPYL_ALCOHOL, liquidForLel, MOLAR_VOLUME_L_PER_MOL, vapourPpm } from './vapour.ts';
export { type PsdPoint, psdRmsMPerS2, VIBRATION_PROFILES, type VibrationProfile, vibrationLoad } from './vibration.ts';
export {
  angleCurve,
  contactAngle,
  interfaceWork,
  rankByAngle,
  type SolidSurface,
  substrateFor,
  type TestLiquid,
  workOfAdhesion,
} from './wetting.ts';
export { strandAreaMm2, wireOuter } from './wire-diameter.ts';
