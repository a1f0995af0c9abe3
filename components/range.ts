import type { LocalField } from './contract.ts';
import { inWords, type Shown, show } from './show.ts';
import type { Stepped } from './stepping.ts';
import { parseTyped } from './typed.ts';
import { AWG_SIZES, awgName, fromUnit, nameOf, ruleOf, type UnitChoice, unitOf } from './units.ts';

/** What may be entered, in the unit inside. */
export type Range = Stepped & { min: number; max: number };

/** "1.7 to 39.3 ft": a range in the reader's unit, rounded inwards, so that both its ends may be typed. */
export function rangeInWords(range: Range, units: UnitChoice): string {
  const { kind, min, max, step } = range;
  if (unitOf(kind, units) === 'awg') {
    const inside = AWG_SIZES.filter((gauge) => {
      const areaMm2 = fromUnit(gauge, 'area', 'awg');
      return areaMm2 >= min && areaMm2 <= max;
    });
    if (inside.length > 0) {
      const name = (gauge: number): string => awgName({ gaugeAwg: gauge });
      return `${name(inside[0]!)} to ${name(inside.at(-1)!)} ${nameOf('awg').symbol}`;
    }
  }
  const low = inward(show(min, kind, units, step), range, units, 1);
  const high = inward(show(max, kind, units, step), range, units, -1);
  return `${low.text} to ${inWords(high)}`;
}

/** A typed value at an end of its range, as that end: 185 °F come out a hair above 85 °C. */
export function snapped(value: number, { min, max }: Pick<Stepped, 'min' | 'max'>): number {
  for (const end of [min, max])
    if (end !== undefined && Math.abs(value - end) <= HAIR * Math.max(1, Math.abs(end))) return end;
  return value;
}
const HAIR = 1e-9;

/** An end of a range that rounding put outside: one in its last place further in. */
function inward(shown: Shown, { kind, min, max }: Range, units: UnitChoice, way: 1 | -1): Shown {
  const typed = parseTyped(shown.text, kind, units);
  if (!typed.ok) return shown;
  const value = snapped(typed.value, { min, max });
  if (value >= min && value <= max) return shown;
  const places = shown.text.split('.')[1]?.length ?? 0;
  const number = Number(shown.text.replace('−', '-')) + way * 10 ** -places;
  return { ...shown, text: number.toFixed(places).replace('-', '−') };
}

/** "Route must be 0.1 to 40 m and …": the subject, what follows the range in the same sentence, and what stands behind. */
const SENTENCE = /^(.+? must be )[-−]?[\d.]+ to [-−]?[\d.]+(?: [^ .]+)?( and [^.]*)?\.(.*)$/s;
/** Advice that counts in the author's unit is none to whoever counts in another. */
const COUNTS = /\d|metre/;

/** What is wrong with a number out of its range; the author's words where the reader counts in the author's unit. */
export function rangeFault({ label, kind, min, max, step, error }: LocalField, units: UnitChoice): string {
  if (min === undefined || max === undefined || unitOf(kind, units) === ruleOf(kind).base) return error;
  const [, subject = `${label} must be `, more = '', advice = ''] = SENTENCE.exec(error) ?? [];
  return `${subject}${rangeInWords({ kind, min, max, step }, units)}${more}.${COUNTS.test(advice) ? '' : advice}`;
}
