/** Readings as typed from a meter: comma or point, with or without a unit, kept in the unit of their place. */
import { parseTyped, type Typed } from '../typed.ts';
import type { Kind, UnitChoice } from '../units.ts';

const KINDS: Readonly<Record<string, Kind>> = {
  V: 'voltage',
  mV: 'voltage',
  A: 'current',
  mA: 'milliamps',
  Ω: 'resistance',
  mΩ: 'milliohms',
  '°C': 'temperature',
  min: 'minutes',
  s: 'time',
  '': 'count',
};

/** A bare number, nothing behind it. */
const BARE = /^[\s\d.,+\-\u2212]+$/;

/**
 * @param text as typed: `12,4`, `24 mA`, `0.024 A`
 * @param unit of the place it is for, as the guide writes it; a bare number is in it
 * @returns the value in that unit, or what is wrong with the text
 */
export function readReading(text: string, unit: string, units: UnitChoice): Typed {
  const kind = KINDS[unit] ?? 'ratio';
  // temperatures are asked for in Celsius on the sheet whatever the reader prefers elsewhere
  const own: UnitChoice = { ...units, temperature: 'C' };
  const read = parseTyped(unit === 'mV' && BARE.test(text) ? `${text} mV` : text, kind, own);
  return read.ok && unit === 'mV' ? { ok: true, value: read.value * 1000 } : read;
}
