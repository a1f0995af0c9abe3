import { finite, oneOf } from './guard.ts';

/**
 * Units a workshop meets, and exact conversion between them. Every factor below is exact by definition (1 ft = 0.3048 m,
 * 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s²) or is built from exact ones, so that there and back is the same
 * number to the last digits a computer holds.
 */
const INCH_M = 0.0254;
const FOOT_M = 0.3048;
const POUND_KG = 0.45359237;
const GRAVITY_M_PER_S2 = 9.80665;
const CMIL_MM2 = (Math.PI / 4) * 0.0254 * 0.0254;

/** One unit: what it measures, and value in the base unit = value × factor + offset. */
interface UnitRule {
  readonly quantity: string;
  readonly factor: number;
  readonly offset?: number;
}

const RULES = {
  m: { quantity: 'length', factor: 1 },
  cm: { quantity: 'length', factor: 0.01 },
  mm: { quantity: 'length', factor: 0.001 },
  km: { quantity: 'length', factor: 1000 },
  in: { quantity: 'length', factor: INCH_M },
  ft: { quantity: 'length', factor: FOOT_M },
  yd: { quantity: 'length', factor: 3 * FOOT_M },
  mm2: { quantity: 'area', factor: 1 },
  cm2: { quantity: 'area', factor: 100 },
  m2: { quantity: 'area', factor: 1e6 },
  in2: { quantity: 'area', factor: 645.16 },
  cmil: { quantity: 'area', factor: CMIL_MM2 },
  kcmil: { quantity: 'area', factor: CMIL_MM2 * 1000 },
  kg: { quantity: 'mass', factor: 1 },
  g: { quantity: 'mass', factor: 0.001 },
  lb: { quantity: 'mass', factor: POUND_KG },
  oz: { quantity: 'mass', factor: POUND_KG / 16 },
  N: { quantity: 'force', factor: 1 },
  kgf: { quantity: 'force', factor: GRAVITY_M_PER_S2 },
  lbf: { quantity: 'force', factor: POUND_KG * GRAVITY_M_PER_S2 },
  Pa: { quantity: 'pressure', factor: 1 },
  kPa: { quantity: 'pressure', factor: 1000 },
  MPa: { quantity: 'pressure', factor: 1e6 },
  bar: { quantity: 'pressure', factor: 1e5 },
  psi: { quantity: 'pressure', factor: (POUND_KG * GRAVITY_M_PER_S2) / (INCH_M * INCH_M) },
  C: { quantity: 'temperature', factor: 1, offset: 273.15 },
  K: { quantity: 'temperature', factor: 1 },
  F: { quantity: 'temperature', factor: 5 / 9, offset: 459.67 * (5 / 9) },
  A: { quantity: 'current', factor: 1 },
  mA: { quantity: 'current', factor: 0.001 },
  V: { quantity: 'voltage', factor: 1 },
  mV: { quantity: 'voltage', factor: 0.001 },
  W: { quantity: 'power', factor: 1 },
  kW: { quantity: 'power', factor: 1000 },
  ohm: { quantity: 'resistance', factor: 1 },
  mohm: { quantity: 'resistance', factor: 0.001 },
  kohm: { quantity: 'resistance', factor: 1000 },
  'ohm/m': { quantity: 'resistance per length', factor: 1 },
  'mohm/m': { quantity: 'resistance per length', factor: 0.001 },
  'ohm/km': { quantity: 'resistance per length', factor: 0.001 },
  'ohm/ft': { quantity: 'resistance per length', factor: 1 / FOOT_M },
  'ohm/kft': { quantity: 'resistance per length', factor: 1 / (1000 * FOOT_M) },
  'ohm mm2/m': { quantity: 'resistivity', factor: 1 },
  'ohm cmil/ft': { quantity: 'resistivity', factor: CMIL_MM2 / FOOT_M },
  Ah: { quantity: 'charge', factor: 3600 },
  mAh: { quantity: 'charge', factor: 3.6 },
  s: { quantity: 'time', factor: 1 },
  ms: { quantity: 'time', factor: 0.001 },
  min: { quantity: 'time', factor: 60 },
  h: { quantity: 'time', factor: 3600 },
  d: { quantity: 'time', factor: 86_400 },
  'm/s': { quantity: 'speed', factor: 1 },
  'km/h': { quantity: 'speed', factor: 1 / 3.6 },
  mph: { quantity: 'speed', factor: (5280 * FOOT_M) / 3600 },
} as const satisfies Record<string, UnitRule>;

/** A unit `convert` knows, as people write it: `m`, `ft`, `mm2`, `cmil`, `lbf`, `ohm/km` … */
export type Unit = keyof typeof RULES;

/** Every unit `convert` knows. Source: SI and exact definitions, no table. */
export const UNITS = Object.keys(RULES) as readonly Unit[];

/**
 * Turns a value in one unit into the same quantity in another.
 *
 * @param options `value` any finite number; `from` and `to` units of the same quantity, from `UNITS`.
 * @returns the value in `to`.
 * @throws TypeError when `value` is not a finite number; RangeError when a unit is unknown or the two measure different things.
 * Formula: (value × factor + offset) of one unit over those of the other; every factor exact by definition.
 * @source SI and the international yard and pound; circular mil = area of a circle of 0.001 in diameter.
 * @example convert({ value: 8, from: 'ft', to: 'm' }) // 2.4384
 */
export function convert({ value, from, to }: { value: number; from: Unit; to: Unit }): number {
  finite('convert', 'value', value);
  const source: UnitRule = RULES[oneOf('convert', 'from', from, UNITS)];
  const target: UnitRule = RULES[oneOf('convert', 'to', to, UNITS)];
  if (source.quantity !== target.quantity) {
    throw new RangeError(`convert: unexpected ${from} to ${to}, expected two units of one quantity`);
  }
  if (source === target) return value;
  return (value * source.factor + (source.offset ?? 0) - (target.offset ?? 0)) / target.factor;
}
