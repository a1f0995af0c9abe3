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
  deratedA,
  type Laying,
  type WireLimit,
  type WorkshopLimit,
  wireLimit,
  workshopLimit,
} from './ampacity.ts';
export {
  capacityFromReserve,
  chargeEndV,
  idealHours,
  parkedDrainLimitA,
  replaceHours,
  restingCorrectionV,
  restingVoltage,
  selfDischargePercentPerMonth,
  standingDays,
} from './battery.ts';
export { cameraView } from './camera.ts';
export { chargeBalance, chargeTime, runTime } from './charge.ts';
export { CLAMPS, type Clamp, type CoilKick, coilClamp, coilCurrent } from './coil.ts';
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
export { contactNeeded, inrushMultiple, silverContactServes, switchRating } from './contact.ts';
export { crimpedTogetherMm2, insulationGap, pullForce, wireBreak } from './crimp.ts';
export { isolationDiode } from './diode.ts';
export { type FaultOptions, faultClears } from './fault.ts';
export {
  type Fuse,
  type FuseFound,
  type FuseNotFound,
  type FuseOptions,
  fuseCurrentMa,
  fuseFor,
  fuseOpens,
  i2tTimeS,
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
  commonCurrentA,
  ledCurrentRatio,
  ledResistorOhm,
  ledSection,
  stripCurrent,
  stripCut,
  stripEndDropV,
  stripFarShare,
  stripLabelCurrent,
} from './led.ts';
export { LOAD_MODELS, type LoadModel, loadCurrent } from './load.ts';
export {
  adiabaticAreaMm2,
  adiabaticK,
  adiabaticTimeS,
  fuseProtects,
  type JudgedWire,
  largestFuseByRule,
  meltingCurrentA,
} from './protection.ts';
export { ratingAtLeast, ratingAtMost } from './rating.ts';
export { relayChoice, relayContacts } from './relay.ts';
export {
  areaForDropMm2,
  awgNotBelow,
  hotLengthM,
  loadedWireC,
  longestRunM,
  type SeriesCircuit,
  saeNotBelow,
  seriesCircuit,
} from './run.ts';
export { FUSE_FORMS, type FuseForm } from './tables/blade-fuses.ts';
export type { Cited, Read } from './tables/cited.ts';
export { LOAD_KINDS, type LoadKind } from './tables/contacts.ts';
export { PULL_STANDARDS, type PullStandard } from './tables/crimp.ts';
export * as tables from './tables/electrical.ts';
export type { Source } from './tables/rows.ts';
export { INRUSH_MULTIPLE, STOCKED_FUSES_A } from './tables/workshop.ts';
export { convert, UNITS, type Unit } from './units.ts';
export type { Verdict } from './verdict.ts';
export { type Drop, type DropOptions, voltageDrop, voltageDropV } from './voltage-drop.ts';
export { windLoad } from './wind.ts';

// ---------------------------------------------------------------- materials and joints

export * from './materials.ts';

// ---------------------------------------------------------------- circuits

export { type BenchDiagnosis, benchDiagnosis, type Cause } from './circuit/bench-diagnosis.ts';
export { BENCH_TOLERANCE, benchProbes, type Probe } from './circuit/bench-sheet.ts';
export type { Coverage } from './circuit/coverage.ts';
export { type Diagnosis, diagnose, type Reading, type Suspect } from './circuit/diagnose.ts';
export { nearestName } from './circuit/did-you-mean.ts';
export {
  applyFault,
  describeFault,
  type Fault,
  type FaultResult,
  type FaultState,
  type FaultStudy,
  faultBench,
  faultsOf,
  singleFaults,
} from './circuit/faults.ts';
export {
  type Condition,
  type ConditionError,
  evaluate,
  namesIn,
  type ParsedCondition,
  parseCondition,
} from './circuit/intent.ts';
export { type MeterReading, meterReading, ohms } from './circuit/meter.ts';
export {
  CHASSIS,
  type Circuit,
  type Element,
  type Finding,
  type Input,
  type InputState,
  type Intent,
  type JobValue,
  type LoadPart,
  type Netlist,
  type NetlistInput,
  type Node,
  type Part,
  type PartKind,
  type Quantity,
  type QuantityKind,
  type RelayPart,
  type RelayState,
  type Severity,
  type SignOff,
  type Sized,
  type Solution,
  type TerminalRef,
  type Wire,
} from './circuit/model.ts';
export { limitOf, loadFigures, netlistOf, type Origin, type Sizes, supplyVolts, USUAL } from './circuit/netlist.ts';
export {
  editPattern,
  type NeutralFault,
  type NeutralFile,
  type NeutralHead,
  type NeutralPattern,
  type NeutralSingleFaults,
  readPattern,
} from './circuit/neutral.ts';
export { type CutRow, cutList, type PartsListOptions, type PartsRow, partsList } from './circuit/parts-list.ts';
export { type CircuitProblem, circuitProblems, isLoad, MAX_INPUTS, MAX_PARTS, MAX_WIRES } from './circuit/problems.ts';
export {
  type Difference,
  type Figures,
  type Proof,
  type ProofState,
  type ProofStep,
  type ProveOptions,
  prove,
  UNFUSED_STUB_M,
  UnprovableError,
} from './circuit/prove.ts';
export { numberOf, UNIT_OF, type Values, valuesOf } from './circuit/quantities.ts';
export { compareFindings, type NeutralExpectation, neutralElements, neutralRule } from './circuit/rules/agreement.ts';
export { checkRules, RULES } from './circuit/rules/index.ts';
export { checkPattern } from './circuit/rules/neutral-check.ts';
export type { Rule, RuleContext, Wanted } from './circuit/rules/rule.ts';
export {
  type FuseChoice,
  type Sizing,
  type SizingProblem,
  type Stock,
  sizeCircuit,
  type WireChoice,
} from './circuit/sizing.ts';
export { prepare, type SolveOptions, type Solver, solveState } from './circuit/solve.ts';
export {
  type Race,
  type ReachedRow,
  type StateRow,
  sequence,
  type TruthTable,
  type TruthTableOptions,
  truthTable,
} from './circuit/states.ts';
export { soleTerminalOf, splitTerminalRef, type Terminal, terminalsOf } from './circuit/terminals.ts';
