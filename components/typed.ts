import type { Unit } from '../calc/index.ts';
import { show } from './show.ts';
import { AWG_NUMBERS, fromUnit, type Kind, nameOf, ruleOf, type UnitChoice, type UnitId, unitOf } from './units.ts';

/** What became of typed text: a value in the unit inside, or what is wrong with it in words for beside the field. */
export type Typed = { ok: true; value: number } | { ok: false; message: string };

const no = (message: string): Typed => ({ ok: false, message });

const VULGAR: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};

/** A number at the start of the text: sign, digits with point or comma, mixed or plain fraction. */
const NUMBER =
  /^([+-]?)\s*(?:(\d+)[\s-]+(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|(\d*)\s*([¼½¾⅛⅜⅝⅞⅓⅔])|([\d.,]*\d[.,]?))/u;

/**
 * Reads what a person types: `2,5`, `2.5 m`, `8 ft`, `8' 6"`, `14 AWG`, `1/0 AWG`, `1.5 mm2`, `300 mA`, `1/2 in`, `2½ ft`.
 * A bare number is in the unit shown. Text that could mean two numbers is refused, not guessed.
 *
 * @param text as typed
 * @param kind what the field measures
 * @param units the reader's choice: the unit of a bare number
 */
export function parseTyped(text: string, kind: Kind, units: UnitChoice): Typed {
  const shownUnit = unitOf(kind, units);
  const clean = text
    .normalize('NFC')
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/[\u00a0\u202f\u2009]/g, ' ')
    .trim();
  if (clean === '') return no(`Empty. Type ${ruleOf(kind).noun}, such as ${example(kind, units)}.`);

  if (kind === 'area') {
    const gauge = readGauge(clean, shownUnit);
    if (gauge !== null) return gauge;
  }
  const first = readNumber(clean);
  if (!first.ok)
    return first.empty
      ? no(`"${clip(clean)}" is not a number. Type it like ${example(kind, units)}.`)
      : no(first.message);

  const rest = clean.slice(first.length).trim();
  const unit = unitWord(rest, kind);
  if (rest === '' || unit !== undefined) return amountOf(first.value, kind, unit ?? shownUnit);

  if (ruleOf(kind).by === 'length') {
    const feetAndInches = readFeetAndInches(first.value, rest);
    if (feetAndInches !== null) return feetAndInches;
  }
  const other = kindSpeaking(rest, kind);
  if (other !== undefined) {
    return no(`"${clip(clean)}" is ${other}; this needs ${ruleOf(kind).noun}, such as ${example(kind, units)}.`);
  }
  const words = unitSigns(kind);
  const expected = words === '' ? 'Type the number alone' : `Use ${words}`;
  return no(`"${clip(rest)}" is not a unit here. ${expected}, such as ${example(kind, units)}.`);
}

function amountOf(amount: number, kind: Kind, unit: UnitId | Unit | 'AWG'): Typed {
  if (unit === 'AWG' || unit === 'awg') return gaugeArea(amount);
  const value = fromUnit(amount, kind, unit);
  if (!Number.isFinite(value)) return no('That number is too large to use.');
  if (kind === 'count' && !Number.isInteger(value)) return no(`${amount} is not a whole number.`);
  return { ok: true, value };
}

const gaugeArea = (gaugeAwg: number): Typed =>
  AWG_NUMBERS.includes(gaugeAwg)
    ? { ok: true, value: fromUnit(gaugeAwg, 'area', 'AWG') }
    : no(`${gaugeAwg} is not an AWG size. Sizes run from 40, thin, to 1 and 1/0 to 4/0, thick.`);

/** `14 AWG`, `AWG 14`, `#14`, `2/0`, `1.5 mm2`; null where the text is a bare amount in mm². */
function readGauge(text: string, shown: UnitId): Typed | null {
  const match = /^(?:awg|ga|#)?\s*(?:(\d)\s*\/\s*0|(\d+))\s*(?:awg|ga)?$/i.exec(text);
  if (match === null) return null;
  const named = /awg|ga|#/i.test(text) || match[1] !== undefined || shown === 'awg';
  if (!named) return null;
  return gaugeArea(match[1] === undefined ? Number(match[2]) : 1 - Number(match[1]));
}

type Read = { ok: true; value: number; length: number } | { ok: false; empty: boolean; message: string };
const failed = (message: string): Read => ({ ok: false, empty: message === '', message });

function readNumber(text: string): Read {
  const match = NUMBER.exec(text);
  if (match === null) return failed('');
  const [whole, minus, mixed, top, bottom, plainTop, plainBottom, beforeVulgar, vulgar, decimal] = match;
  const sign = minus === '-' ? -1 : 1;
  if (mixed !== undefined) return fraction(sign, Number(mixed), Number(top), Number(bottom), whole);
  if (plainTop !== undefined) return fraction(sign, 0, Number(plainTop), Number(plainBottom), whole);
  if (vulgar !== undefined) {
    return { ok: true, value: sign * (Number(beforeVulgar || 0) + VULGAR[vulgar]!), length: whole.length };
  }
  return readDecimal(sign, decimal!, whole);
}

function fraction(sign: number, whole: number, top: number, bottom: number, text: string): Read {
  if (bottom === 0) return failed(`"${clip(text)}" divides by nothing.`);
  return { ok: true, value: sign * (whole + top / bottom), length: text.length };
}

/** Point or comma is the decimal sign; text in which one of them may part thousands is refused. */
function readDecimal(sign: number, digits: string, text: string): Read {
  const marks = digits.replace(/\d/g, '');
  if (/^\d+[.,]$/.test(digits) || /^\d*[.,]?\d+$/.test(digits)) {
    if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) {
      const [left, right] = digits.split(',');
      return failed(`"${digits}" can be read two ways. Type ${left}${right} or ${left}.${right}.`);
    }
    const value = Number(digits.replace(',', '.'));
    return Number.isFinite(value)
      ? { ok: true, value: sign * value, length: text.length }
      : failed('That number is too large to use.');
  }
  if (marks.length > 1)
    return failed(`"${clip(digits)}" has more than one decimal sign. Type it plainly, like 1234.5.`);
  return failed(`"${clip(digits)}" is not a plain number. Type it like 1234.5.`);
}

/** `8' 6"`, `8 ft 6 in`: what follows the first number. */
function readFeetAndInches(feet: number, rest: string): Typed | null {
  const match = /^(?:ft|feet|foot|'|′)\s*(.+?)\s*(?:in|inch|inches|"|″)?$/i.exec(rest);
  if (match === null) return null;
  const inches = readNumber(match[1]!);
  if (/^\d{3}/.test(match[1]!))
    return no(`"${clip(`${feet}'${match[1]}`)}" can be read two ways. Type it plainly, like 1234.5.`);
  if (!inches.ok || inches.length !== match[1]!.length) return null;
  if (inches.value < 0 || inches.value >= 12) return no(`${inches.value} inches after feet: type less than 12.`);
  return { ok: true, value: fromUnit(feet, 'length', 'ft') + fromUnit(inches.value, 'length', 'in') };
}

const normal = (word: string): string => word.replace(/\.$/, '').replace(/\s+/g, ' ');

function unitWord(word: string, kind: Kind): UnitId | Unit | 'AWG' | undefined {
  const { words } = ruleOf(kind);
  const exact = normal(word);
  // exact first: mΩ and MΩ differ by case alone
  return Object.hasOwn(words, exact)
    ? words[exact]
    : Object.hasOwn(words, exact.toLowerCase())
      ? words[exact.toLowerCase()]
      : undefined;
}

const SPEAKING: readonly Kind[] = [
  'length',
  'current',
  'voltage',
  'power',
  'resistance',
  'temperature',
  'charge',
  'mass',
  'time',
  'percent',
  'area',
];
/** What the unit typed would measure, if it is a unit of something else. */
const kindSpeaking = (word: string, kind: Kind): string | undefined => {
  const other = SPEAKING.find((each) => each !== kind && unitWord(word, each) !== undefined);
  return other === undefined || ruleOf(other).noun === ruleOf(kind).noun ? undefined : ruleOf(other).noun;
};

const signOf = (unit: UnitId | Unit | 'AWG'): string =>
  unit === 'AWG' ? 'AWG' : (Object.hasOwn(SIGNS, unit) && SIGNS[unit]) || nameOf(unit as UnitId)?.symbol || unit;
const SIGNS: Readonly<Record<string, string>> = {
  cm: 'cm',
  mV: 'mV',
  kW: 'kW',
  kohm: 'kΩ',
  lb: 'lb',
  oz: 'oz',
  lbf: 'lbf',
};

function unitSigns(kind: Kind): string {
  const signs = [...new Set(Object.values(ruleOf(kind).words).map(signOf))];
  return signs.length < 2 ? (signs[0] ?? '') : `${signs.slice(0, -1).join(', ')} or ${signs.at(-1)}`;
}

const EXAMPLES: Partial<Record<Kind, number>> = { area: 2.5, temperature: 60, fraction: 0.03, count: 4, angle: 40 };
function example(kind: Kind, units: UnitChoice): string {
  const { text, unit } = show(EXAMPLES[kind] ?? 2.5, kind, units);
  return unit === '' ? text : `${text} ${unit}`;
}

const clip = (text: string): string => (text.length > 24 ? `${text.slice(0, 23)}…` : text);
