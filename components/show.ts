import { awgAtLeast, awgName, type Kind, nameOf, ruleOf, toUnit, type UnitChoice, unitOf } from './units.ts';

/** A number as the page shows it: digits, unit sign, and the unit as it is read aloud. */
export interface Shown {
  text: string;
  unit: string;
  spoken: string;
}

/** No quantity of a vehicle is this large in any unit; what is, came from a mistake. */
const ABSURD = 1e12;

/** What stands where no number is known: never 0, never a dash. */
export const UNKNOWN: Shown = { text: 'not known', unit: '', spoken: '' };

/**
 * Rounds for the use: a length to the centimetre, a fuse as its rating is printed, a current to what a meter shows. The
 * exact value stays where it was; only the text is rounded. A value that is no finite number reads "not known".
 *
 * @param step where the number can be stepped, its decimals follow the step (in the unit inside).
 */
export function show(value: number | null | undefined, kind: Kind, units: UnitChoice, step?: number): Shown {
  if (value === null || value === undefined || !(Math.abs(value) < ABSURD)) return UNKNOWN;
  const unit = unitOf(kind, units);
  const { symbol, one, many } = nameOf(unit);
  if (unit === 'awg') {
    const gauge = value > 0 ? awgAtLeast(value) : null;
    if (gauge !== null) return { text: awgName({ gaugeAwg: gauge }), unit: symbol, spoken: many };
    return { text: trim(value, 2), unit: 'mm²', spoken: 'square millimetres' };
  }
  const shown = toUnit(value, kind, unit);
  const stepped =
    step === undefined || unit !== ruleOf(kind).base ? undefined : steppedDecimals(shown, toUnit(step, kind, unit));
  const text =
    stepped !== undefined
      ? sign(shown.toFixed(stepped))
      : kind === 'voltage'
        ? sign(shown.toFixed(Math.abs(shown) < 100 ? 2 : 1)) // a meter shows 12.00, not 12
        : trim(shown, decimalsFor(kind, shown));
  return { text, unit: symbol, spoken: text === '1' ? one : many };
}

/** Digits, a space that does not break, unit: for sentences and labels. */
export function inWords(shown: Shown): string {
  if (shown.unit === '') return shown.text;
  return `${shown.text}${shown.unit === '°' ? '' : '\u00a0'}${shown.unit}`;
}

/** `show` and `inWords` at once. */
export const say = (value: number | null | undefined, kind: Kind, units: UnitChoice, step?: number): string =>
  inWords(show(value, kind, units, step));

/** The three view fields of a quantity: `name`, `nameUnit`, `nameSpoken`; read by the markup's `Num`. */
export function put<Name extends string>(
  name: Name,
  shown: Shown,
): Record<Name | `${Name}Unit` | `${Name}Spoken`, string> {
  return { [name]: shown.text, [`${name}Unit`]: shown.unit, [`${name}Spoken`]: shown.spoken } as never;
}

function decimalsFor(kind: Kind, shown: number): number {
  const size = Math.abs(shown);
  switch (ruleOf(kind).digits) {
    case 'whole':
      return 0;
    case 'tenths':
      return 1;
    case 'hundredths':
      return 2;
    case 'size':
      return size < 10 ? 2 : 1;
    default:
      // three figures that count, and no more than three decimals
      return size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 || size === 0 ? 2 : 3;
  }
}

const decimalsOf = (step: number): number => {
  for (let digits = 0; digits < 4; digits++) {
    if (Math.abs(step * 10 ** digits - Math.round(step * 10 ** digits)) < 1e-9) return digits;
  }
  return 4;
};

/** Decimals of the step; one more where the number does not lie on it, so that what was entered is what is shown. */
const steppedDecimals = (shown: number, step: number): number => {
  const digits = decimalsOf(step);
  return Math.abs(shown * 10 ** digits - Math.round(shown * 10 ** digits)) < 1e-6 ? digits : digits + 1;
};

/** A minus that is a minus, and no minus before a zero. */
const sign = (text: string): string => {
  if (!text.startsWith('-')) return text;
  return /^-[0.]*$/.test(text) ? text.slice(1) : text.replace('-', '−');
};
const trim = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  return sign(decimals > 0 && text.endsWith('0') ? text.replace(/\.?0+$/, '') : text);
};
