/** The reader's choice of units, site-wide. */
export interface UnitChoice {
  length: 'm' | 'ft';
  wire: 'mm2' | 'awg';
  temperature: 'C' | 'F';
  torque: 'Nm' | 'lbfin';
}
export const DEFAULT_UNITS: UnitChoice = { length: 'm', wire: 'mm2', temperature: 'C', torque: 'Nm' };
export const UNIT_OPTIONS: { readonly [Choice in keyof UnitChoice]: readonly UnitChoice[Choice][] } = {
  length: ['m', 'ft'],
  wire: ['mm2', 'awg'],
  temperature: ['C', 'F'],
  torque: ['Nm', 'lbfin'],
};
