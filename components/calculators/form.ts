import type { JobContext, ShopDefaults } from '../context.ts';
import type { LocalField, State } from '../contract.ts';
import type { Framed } from '../instrument.ts';
import { say } from '../show.ts';
import type { Kind, UnitChoice } from '../units.ts';

/**
 * What a calculator is: fields, one pure sum, where it comes from, and one example to hold it to. Everything a page shows
 * of a calculator follows from this record; a new calculator is one file and one line in the list.
 */
export interface Calculator {
  id: string;
  /** Its number in the workshop's list. */
  number: string;
  title: string;
  /** One sentence: what it answers. */
  lead: string;
  /** The field rules. The workshop's stock may be among the choices. */
  fields: (shop: ShopDefaults) => readonly LocalField[];
  compute: (input: Input, tools: Tools) => Answer;
  source: string;
  /** Functions of calc that do the sum. */
  functions: readonly string[];
  /** What to know that no number says. */
  cautions?: readonly string[];
  /** An example with its answers as printed; the page shows it, the tests hold the sum to it. */
  example: { from: string; in: Record<string, number | string>; out: Record<string, number | string> };
  /** An instrument of the guides in place of the plain list, fed by these fields. */
  picture?: { instrument: 'fuse' | 'wire'; view: (input: Input, job: JobContext) => Framed };
}

/** Good entries by field name. `n` and `s` read one and say so if it is not of that kind. */
export interface Input {
  n(name: string): number;
  s(name: string): string;
}
export function inputOf(entries: Readonly<Record<string, number | string>>): Input {
  return {
    n(name) {
      const value = entries[name];
      if (typeof value !== 'number')
        throw new TypeError(`calculator input ${name}: unexpected ${value}, expected a number`);
      return value;
    },
    s(name) {
      const value = entries[name];
      if (typeof value !== 'string')
        throw new TypeError(`calculator input ${name}: unexpected ${value}, expected a word`);
      return value;
    },
  };
}

export interface Tools {
  shop: ShopDefaults;
  units: UnitChoice;
  /** Digits and unit, rounded for the use. */
  say: (value: number | null, kind: Kind) => string;
}
export const toolsOf = (shop: ShopDefaults, units: UnitChoice): Tools => ({
  shop,
  units,
  say: (value, kind) => say(value, kind, units),
});

/** One result. A word instead of a number where there is no number; `key` is its name in examples. */
export interface Output {
  key: string;
  label: string;
  value: number | string;
  kind?: Kind;
  state?: State;
}

/** A cell of the formula: sign before it, symbol, number, meaning. `set` is the reader's own number. */
export interface Cell {
  sign: '' | '=' | '×' | '÷' | '+' | '−';
  symbol: string;
  value: string;
  of: 'set' | 'calc' | 'plain';
  meaning: string;
}
export const cell = (sign: Cell['sign'], symbol: string, value: string, of: Cell['of'], meaning: string): Cell => ({
  sign,
  symbol,
  value,
  of,
  meaning,
});

export interface Answer {
  /** Key of the output that is the answer. */
  main: string;
  flag: State;
  flagText: string;
  /** One sentence about the answer. */
  say: string;
  outputs: readonly Output[];
  /** The main formula with the numbers put in. */
  formula: readonly Cell[];
  /** The rest of the sum, a line each, numbers put in. */
  work: readonly string[];
  reasons?: readonly string[];
  change?: readonly string[];
}

/** A number field. */
export const number = (
  name: string,
  label: string,
  kind: Kind,
  fallback: number,
  [min, max, step]: readonly [number, number, number],
  error: string,
  check?: LocalField['check'],
): LocalField => ({ name, label, kind, default: fallback, min, max, step, error, check });

/** A choice of words. */
export const choice = (
  name: string,
  label: string,
  fallback: string,
  options: readonly string[],
  error: string,
): LocalField => ({
  name,
  label,
  kind: 'ratio',
  default: fallback,
  options: options.map((value) => ({ value, label: value.charAt(0).toUpperCase() + value.slice(1) })),
  error,
});

/** A choice of numbers. */
export const numberChoice = (
  name: string,
  label: string,
  kind: Kind,
  fallback: number,
  options: readonly number[],
  unit: string,
  error: string,
): LocalField => ({
  name,
  label,
  kind,
  default: fallback,
  options: options.map((value) => ({ value: String(value), label: unit === '' ? String(value) : `${value} ${unit}` })),
  error,
});

/** Sizes of the workshop's cautious table, which every wire limit stands on. */
export const WIRE_SIZES_MM2 = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50];
export const wireField = (
  name: string,
  label: string,
  fallback: number,
  error = 'Choose a wire size from the list.',
): LocalField => numberChoice(name, label, 'area', fallback, WIRE_SIZES_MM2, 'mm²', error);
export const fuseField = (name: string, shop: ShopDefaults, fallback: number): LocalField =>
  numberChoice(
    name,
    'Fuse ahead of this wire',
    'current',
    nearest(shop.stockedFusesA, fallback),
    shop.stockedFusesA,
    'A',
    'Choose a stocked fuse rating.',
  );
export const returnField = (error = 'Choose the return path.'): LocalField =>
  choice('returnPath', 'Return path', 'chassis', ['chassis', 'two-wire'], error);
/** Lengths of copper per metre of route. */
export const ways = (input: Input): number => (input.s('returnPath') === 'two-wire' ? 2 : 1);

const nearest = (values: readonly number[], wanted: number): number =>
  values.includes(wanted)
    ? wanted
    : values.reduce((best, each) => (Math.abs(each - wanted) < Math.abs(best - wanted) ? each : best));

/** Digits of a plain figure, at most three that count. */
export const figure = (value: number): string => String(Number(value.toPrecision(3)));

export const PRACTICE = 'common practice, no source';
