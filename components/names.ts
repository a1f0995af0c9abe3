/** The components an author may place, by name. The lists of markup, models and schemas are checked against this one. */
export const COMPONENT_NAMES = [
  'BenchSheet',
  'Caution',
  'Check',
  'CircuitDiagram',
  'FaultTable',
  'Figure',
  'Findings',
  'FuseSizer',
  'GaugeChooser',
  'Hold',
  'JobValues',
  'LessonLink',
  'Meter',
  'Note',
  'PadHeat',
  'PadLay',
  'PartsList',
  'PrepSelector',
  'PrepSteps',
  'RelayDiagram',
  'Station',
  'Step',
  'Steps',
  'Survey',
  'Term',
  'TruthTable',
  'Value',
  'WettingDrop',
] as const;
export type ComponentName = (typeof COMPONENT_NAMES)[number];

/** Roots that the site and other components place: they have a model but no tag an author could write. */
export const INNER_NAMES = ['JobValue', 'FaultFinding'] as const;
export type InnerName = (typeof INNER_NAMES)[number];
