import { snapped } from './range.ts';
import { type Stepped, stepShown } from './stepping.ts';
import { parseTyped } from './typed.ts';
import type { UnitChoice } from './units.ts';

const DIGITS = '0123456789';
/** A number that is being typed, up to where the next key goes. */
const BEGUN = /^\d*(?:[.,]\d*)?$/;

/**
 * What a number may become with the next keys: one digit more of what stands there, or the first behind the point. What
 * lies on a step comes first, since people measure in round numbers.
 *
 * @param text as it stands in the field; empty where the next key replaces it all
 * @returns values inside the range, each once, likeliest first; none for words and fractions
 */
export function nextTyped(text: string, stepped: Stepped, units: UnitChoice): number[] {
  if (!BEGUN.test(text)) return [];
  const size = stepShown(stepped, units);
  const places = Number.isInteger(size) ? 0 : size >= 0.1 ? 1 : 2;
  const [whole = '', behind] = text.split(/[.,]/);
  const next: string[] = [];
  if (behind === undefined) {
    next.push(...[...DIGITS].map((digit) => text + digit));
    if (places > 0 && whole !== '') next.push(...[...DIGITS].map((digit) => `${text}.${digit}`));
  } else if (behind.length < places) next.push(...[...DIGITS].map((digit) => text + digit));

  const { kind, min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = stepped;
  const now = parseTyped(text, kind, units);
  const found = new Map<number, boolean>();
  for (const each of next) {
    const typed = parseTyped(each, kind, units);
    if (!typed.ok) continue;
    const value = snapped(typed.value, stepped);
    if (value < min || value > max || (now.ok && now.value === value)) continue;
    const steps = Number(each.replace(',', '.')) / size;
    found.set(value, Math.abs(steps - Math.round(steps)) < 1e-9);
  }
  const values = [...found.keys()];
  return [...values.filter((value) => found.get(value)), ...values.filter((value) => !found.get(value))];
}
