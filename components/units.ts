import { AWG_SIZES, awg, awgName, convert, type Unit } from '../calc/index.ts';
import type { UnitChoice } from './unit-choice.ts';

/**
 * What a number on the page measures, the unit calc keeps it in, the unit the reader sees, and the units he may type.
 * Nothing else on a page converts.
 */

export { DEFAULT_UNITS, UNIT_OPTIONS, type UnitChoice } from './unit-choice.ts';

/** How a unit is written and read aloud. */
interface UnitName {
  symbol: string;
  one: string;
  many: string;
}
const name = (symbol: string, one: string, many = `${one}s`): UnitName => ({ symbol, one, many });

/** Every unit the pages show, by the id used in this file. */
const NAMES = {
  m: name('m', 'metre'),
  ft: name('ft', 'foot', 'feet'),
  mm: name('mm', 'millimetre'),
  in: name('in', 'inch', 'inches'),
  mm2: name('mm²', 'square millimetre'),
  awg: name('AWG', 'A W G', 'A W G'),
  cm2: name('cm²', 'square centimetre'),
  m2: name('m²', 'square metre'),
  A: name('A', 'amp'),
  mA: name('mA', 'milliamp'),
  V: name('V', 'volt'),
  W: name('W', 'watt'),
  ohm: name('Ω', 'ohm'),
  mohm: name('mΩ', 'milliohm'),
  'mohm/m': name('mΩ/m', 'milliohm per metre', 'milliohms per metre'),
  'A/m': name('A/m', 'amp per metre', 'amps per metre'),
  C: name('°C', 'degree Celsius', 'degrees Celsius'),
  F: name('°F', 'degree Fahrenheit', 'degrees Fahrenheit'),
  Nm: name('N·m', 'newton metre'),
  lbfin: name('lbf·in', 'pound-force inch', 'pound-force inches'),
  N: name('N', 'newton'),
  Ah: name('Ah', 'amp hour'),
  g: name('g', 'gram'),
  kg: name('kg', 'kilogram'),
  ms: name('ms', 'millisecond'),
  s: name('s', 'second'),
  min: name('min', 'minute'),
  h: name('h', 'hour'),
  days: name('days', 'day'),
  '%': name('%', 'percent', 'percent'),
  lux: name('lx', 'lux', 'lux'),
  lm: name('lm', 'lumen'),
  deg: name('°', 'degree'),
  'km/h': name('km/h', 'kilometre per hour', 'kilometres per hour'),
  gn: name('g', 'times gravity', 'times gravity'),
  mH: name('mH', 'millihenry', 'millihenries'),
  mJ: name('mJ', 'millijoule'),
  'K/W': name('K/W', 'kelvin per watt', 'kelvins per watt'),
  '': name('', '', ''),
} as const satisfies Record<string, UnitName>;
export type UnitId = keyof typeof NAMES;

interface KindRule {
  /** A noun with its article, for messages: "a length". */
  noun: string;
  /** Unit of the numbers inside. */
  base: UnitId;
  /** Unit shown when it follows one of the reader's choices. */
  by?: keyof UnitChoice;
  /** Decimals where no step says otherwise: by size of the number shown, so that a figure reads as it is used. */
  digits: 'hundredths' | 'tenths' | 'whole' | 'three' | 'size';
  /** Words a reader may type after the number, each with the unit it means. */
  words: Readonly<Record<string, UnitId | Unit | 'AWG'>>;
}

const LENGTH_WORDS = {
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  cm: 'cm',
  mm: 'mm',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  '′': 'ft',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
} as const;

/** Kinds of number. `current` and `milliamps` are two kinds because calc keeps them in two units, by name. */
const RULES = {
  length: { noun: 'a length', base: 'm', by: 'length', digits: 'hundredths', words: LENGTH_WORDS },
  millimetres: { noun: 'a length', base: 'mm', digits: 'tenths', words: LENGTH_WORDS },
  area: {
    noun: 'a wire size',
    base: 'mm2',
    by: 'wire',
    digits: 'size',
    words: { mm2: 'mm2', 'mm²': 'mm2', 'mm^2': 'mm2', sqmm: 'mm2', mm: 'mm2', awg: 'AWG', ga: 'AWG', '#': 'AWG' },
  },
  current: { noun: 'a current', base: 'A', digits: 'three', words: { a: 'A', amp: 'A', amps: 'A', ma: 'mA' } },
  milliamps: { noun: 'a current', base: 'mA', digits: 'three', words: { ma: 'mA', a: 'A', amp: 'A', amps: 'A' } },
  voltage: { noun: 'a voltage', base: 'V', digits: 'hundredths', words: { v: 'V', volt: 'V', volts: 'V', mv: 'mV' } },
  power: { noun: 'a power', base: 'W', digits: 'three', words: { w: 'W', watt: 'W', watts: 'W', kw: 'kW' } },
  resistance: {
    noun: 'a resistance',
    base: 'ohm',
    digits: 'three',
    words: {
      ohm: 'ohm',
      ohms: 'ohm',
      Ω: 'ohm',
      ω: 'ohm',
      r: 'ohm',
      mohm: 'mohm',
      mΩ: 'mohm',
      mω: 'mohm',
      kohm: 'kohm',
    },
  },
  milliohms: {
    noun: 'a resistance',
    base: 'mohm',
    digits: 'three',
    words: { mohm: 'mohm', milliohm: 'mohm', mΩ: 'mohm', mω: 'mohm', ohm: 'ohm', ohms: 'ohm', Ω: 'ohm', ω: 'ohm' },
  },
  milliohmsPerMetre: {
    noun: 'a resistance per metre',
    base: 'mohm/m',
    digits: 'three',
    words: { 'mohm/m': 'mohm/m', 'mΩ/m': 'mohm/m', 'mω/m': 'mohm/m', 'ohm/m': 'ohm/m' },
  },
  currentPerMetre: { noun: 'a current per metre', base: 'A/m', digits: 'three', words: { 'a/m': 'A/m' } },
  temperature: {
    noun: 'a temperature',
    base: 'C',
    by: 'temperature',
    digits: 'whole',
    words: { c: 'C', '°c': 'C', f: 'F', '°f': 'F' },
  },
  torque: {
    noun: 'a torque',
    base: 'Nm',
    by: 'torque',
    digits: 'tenths',
    words: {
      nm: 'Nm',
      n·m: 'Nm',
      'n.m': 'Nm',
      lbf·in: 'lbfin',
      'lbf.in': 'lbfin',
      lbfin: 'lbfin',
      'in-lb': 'lbfin',
      inlb: 'lbfin',
    },
  },
  force: { noun: 'a force', base: 'N', digits: 'three', words: { n: 'N', lbf: 'lbf', kgf: 'kgf' } },
  charge: { noun: 'a charge', base: 'Ah', digits: 'three', words: { ah: 'Ah', mah: 'mAh' } },
  mass: { noun: 'a mass', base: 'kg', digits: 'three', words: { kg: 'kg', g: 'g', lb: 'lb', lbs: 'lb', oz: 'oz' } },
  grams: { noun: 'a mass', base: 'g', digits: 'three', words: { g: 'g', kg: 'kg', lb: 'lb', lbs: 'lb', oz: 'oz' } },
  milliseconds: { noun: 'a time', base: 'ms', digits: 'three', words: { ms: 'ms', s: 's' } },
  time: { noun: 'a time', base: 's', digits: 'three', words: { s: 's', ms: 'ms', min: 'min', h: 'h' } },
  minutes: { noun: 'a time', base: 'min', digits: 'three', words: { min: 'min', h: 'h', s: 's' } },
  hours: { noun: 'a time', base: 'h', digits: 'three', words: { h: 'h', hours: 'h', min: 'min' } },
  days: { noun: 'a time', base: 'days', digits: 'three', words: { d: 'days', day: 'days', days: 'days' } },
  percent: { noun: 'a share', base: '%', digits: 'three', words: { '%': '%', percent: '%' } },
  fraction: { noun: 'a share', base: '%', digits: 'three', words: { '%': '%', percent: '%' } },
  illuminance: { noun: 'a light level', base: 'lux', digits: 'whole', words: { lux: 'lux', lx: 'lux' } },
  light: { noun: 'an amount of light', base: 'lm', digits: 'whole', words: { lm: 'lm', lumen: 'lm', lumens: 'lm' } },
  angle: { noun: 'an angle', base: 'deg', digits: 'tenths', words: { '°': 'deg', deg: 'deg', degrees: 'deg' } },
  speed: {
    noun: 'a speed',
    base: 'km/h',
    digits: 'whole',
    words: { 'km/h': 'km/h', kmh: 'km/h', mph: 'mph', 'm/s': 'm/s' },
  },
  shock: { noun: 'a shock', base: 'gn', digits: 'three', words: { g: 'gn' } },
  inductance: { noun: 'an inductance', base: 'mH', digits: 'three', words: { mh: 'mH' } },
  energy: { noun: 'an energy', base: 'mJ', digits: 'three', words: { mj: 'mJ' } },
  thermal: {
    noun: 'a thermal resistance',
    base: 'K/W',
    digits: 'three',
    words: { 'k/w': 'K/W', 'c/w': 'K/W', '°c/w': 'K/W' },
  },
  squareCentimetres: { noun: 'an area', base: 'cm2', digits: 'three', words: { cm2: 'cm2', 'cm²': 'cm2' } },
  squareMetres: {
    noun: 'an area',
    base: 'm2',
    digits: 'three',
    words: { m2: 'm2', 'm²': 'm2', cm2: 'cm2', 'cm²': 'cm2' },
  },
  count: { noun: 'a whole number', base: '', digits: 'whole', words: {} },
  ratio: { noun: 'a number', base: '', digits: 'three', words: {} },
} as const satisfies Record<string, KindRule>;
/** What a number measures. */
export type Kind = keyof typeof RULES;
export const KINDS = Object.keys(RULES) as readonly Kind[];

export const ruleOf = (kind: Kind): KindRule => RULES[kind];
export const nameOf = (unit: UnitId): UnitName => NAMES[unit];

/** The unit a number of this kind is shown in. */
export function unitOf(kind: Kind, units: UnitChoice): UnitId {
  const rule = ruleOf(kind);
  return rule.by === undefined ? rule.base : units[rule.by];
}

/** One pound-force inch in newton metres; exact by definition of pound, gravity and inch. */
const LBFIN_NM = convert({ value: 1, from: 'lbf', to: 'N' }) * convert({ value: 1, from: 'in', to: 'm' });

/** The thinnest AWG size sold that has at least this much copper: naming a thinner one would be unsafe. */
export function awgAtLeast(areaMm2: number): number | null {
  for (const gauge of AWG_SIZES) if (awg({ gaugeAwg: gauge }).areaMm2 >= areaMm2 * (1 - 1e-9)) return gauge;
  return null;
}

/** A value inside, in a unit that is shown. AWG is left to `show`: its numbers are names, not amounts. */
export function toUnit(value: number, kind: Kind, unit: UnitId): number {
  const { base } = ruleOf(kind);
  if (kind === 'fraction') return value * 100;
  if (unit === base) return value;
  if (unit === 'lbfin') return value / LBFIN_NM;
  return convert({ value, from: base as Unit, to: unit as Unit });
}

/** The inverse of `toUnit`, for any unit a reader may type. */
export function fromUnit(value: number, kind: Kind, unit: UnitId | Unit | 'AWG'): number {
  const { base } = ruleOf(kind);
  if (kind === 'fraction') return value / 100;
  if (unit === 'AWG' || unit === 'awg') return awg({ gaugeAwg: value }).areaMm2;
  if (unit === base) return value;
  if (unit === 'lbfin') return value * LBFIN_NM;
  return convert({ value, from: unit as Unit, to: base as Unit });
}

export { AWG_SIZES, awgName };
/** Every number an AWG size can have; 0, -1, -2, -3 stand for 1/0 to 4/0. */
export const AWG_NUMBERS: readonly number[] = Array.from({ length: 44 }, (_, index) => index - 3);

/** Kind of a number by the unit at the end of its name, as the whole code base names numbers: `lengthM`, `dropFraction`. */
export function kindOfName(field: string): Kind {
  let kind = knownKinds.get(field);
  if (kind === undefined) {
    kind = ENDINGS.find(([ending]) => field.endsWith(ending))?.[1] ?? 'ratio';
    knownKinds.set(field, kind);
  }
  return kind;
}
/** A page asks for the same few names at every change. */
const knownKinds = new Map<string, Kind>();
const ENDINGS: readonly [string, Kind][] = [
  ['OhmPerM', 'ratio'],
  ['APerM', 'currentPerMetre'],
  ['Fraction', 'fraction'],
  ['Mm2', 'area'],
  ['Mohm', 'milliohms'],
  ['Ohm', 'resistance'],
  ['Ah', 'charge'],
  ['Ma', 'milliamps'],
  ['Mm', 'millimetres'],
  ['Ms', 'milliseconds'],
  ['Days', 'days'],
  ['Kg', 'mass'],
  ['Nm', 'torque'],
  ['A', 'current'],
  ['V', 'voltage'],
  ['W', 'power'],
  ['M', 'length'],
  ['C', 'temperature'],
  ['S', 'time'],
];

/** Kind of a job value by what its author said it measures. */
export const KIND_OF_QUANTITY = {
  length: 'length',
  current: 'current',
  voltage: 'voltage',
  power: 'power',
  resistance: 'resistance',
  temperature: 'temperature',
  area: 'area',
  charge: 'charge',
  fraction: 'fraction',
  mass: 'mass',
  time: 'time',
  count: 'count',
} as const satisfies Record<string, Kind>;
