import type { Cited } from './cited.ts';

/**
 * Test liquids at 20 °C: total surface tension and its split into a dispersive and a polar part.
 *
 * Sources split the same liquid differently (water has four splits of the same 72.8, diiodomethane four of about 50.8),
 * and a surface energy worked out with one split does not agree with one worked out with another. So a calculation takes
 * one liquid row by name and set, and prints which. `set: 'default'` is the one this project uses when nobody chooses.
 */
export interface LiquidRow extends Cited {
  liquid: string;
  /** Which published split; unique within one liquid. */
  set: string;
  totalMnPerM: number;
  /** Absent where the source gives the total only. */
  dispersiveMnPerM?: number;
  polarMnPerM?: number;
  note?: string;
}

const CONSTANTS = 'public source files with test-liquid constants (two independent repositories)';
const TEACHING = 'open teaching note on the OWRK method';
const SUPPLIER = 'laboratory supplier table "Polar and dispersive components of liquid surface tension"';
const COMPONENTS = '"Surface Tension Components and Molecular Weight of Selected Liquids"';

/** total, dispersive, polar [mN/m] */
type Split = readonly [number, number, number];
const row = (
  liquid: string,
  set: string,
  [totalMnPerM, dispersiveMnPerM, polarMnPerM]: Split,
  source: string,
  at: string,
  read: Cited['read'] = 'seen',
  note?: string,
): LiquidRow => ({
  liquid,
  set,
  totalMnPerM,
  dispersiveMnPerM,
  polarMnPerM,
  source,
  at,
  read,
  ...(note === undefined ? {} : { note }),
});

/** Every published split of every liquid. */
export const LIQUIDS: readonly LiquidRow[] = [
  row('water', 'default', [72.8, 21.8, 51], CONSTANTS, 'constant table'),
  row('water', 'teaching note', [72.8, 29.1, 43.7], TEACHING, 'liquid table'),
  row('water', 'supplier, reference 2', [72.8, 26.25, 46.55], SUPPLIER, 'water row, reference 2'),
  row('water', 'supplier, reference 1', [72.8, 27.19, 45.61], SUPPLIER, 'water row, reference 1'),

  row('diiodomethane', 'default', [50.8, 50.8, 0], CONSTANTS, 'constant table'),
  row('diiodomethane', 'worked questions', [50.8, 48.5, 2.3], 'stored data set of worked questions', 'given data'),
  row(
    'diiodomethane',
    'original 1969',
    [50.8, 49.5, 1.3],
    'Owens and Wendt 1969, J. Appl. Polym. Sci. 13, 1741',
    'text',
    'memory',
  ),
  row('diiodomethane', 'teaching note', [50, 47.4, 2.6], TEACHING, 'liquid table'),

  row('glycerol', 'default', [64, 34, 30], CONSTANTS, 'constant table'),
  row('glycerol', 'supplier, reference 1', [64, 36.34, 27.66], SUPPLIER, 'glycerol row'),
  row('formamide', 'default', [58, 39, 19], CONSTANTS, 'constant table'),
  row('formamide', 'supplier, reference 1', [58, 45.18, 12.82], SUPPLIER, 'formamide row'),
  row('ethylene glycol', 'default', [48, 29, 19], CONSTANTS, 'constant table'),
  row('ethylene glycol', 'second repository', [47.7, 29, 18.7], CONSTANTS, 'second repository'),
  row('ethylene glycol', 'teaching note', [47.7, 26.4, 21.3], TEACHING, 'liquid table'),
  row('ethylene glycol', 'supplier, reference 1', [48, 29.81, 18.19], SUPPLIER, 'row, reference 1'),
  row('ethylene glycol', 'supplier, reference 2', [48, 33.9, 14.1], SUPPLIER, 'row, reference 2'),
  row(
    '1-bromonaphthalene',
    'default',
    [44.4, 44.4, 0],
    COMPONENTS,
    'row',
    'memory',
    'The total was seen; that the polar part is 0 is recalled.',
  ),
  row('dimethyl sulfoxide', 'default', [44, 36, 8], COMPONENTS, 'row'),
  row('tricresyl phosphate', 'default', [40.9, 39.8, 1.1], COMPONENTS, 'first of three rows'),
  row('tricresyl phosphate', 'second row', [40.9, 39.7, 1.2], COMPONENTS, 'second of three rows'),
  row('tricresyl phosphate', 'third row', [40.9, 39.2, 1.7], COMPONENTS, 'third of three rows'),
  row('dimethyl formamide', 'default', [37.1, 29, 8.1], SUPPLIER, 'row, reference 2'),
  row('cis-decalin', 'default', [32.2, 32.2, 0], COMPONENTS, 'row'),
  row('o-xylene', 'default', [30.1, 30.1, 0], COMPONENTS, 'row'),
  row('benzene', 'default', [28.9, 28.9, 0], COMPONENTS, 'row'),
  row('2-ethoxyethanol', 'default', [28.6, 23.6, 5], COMPONENTS, 'row', 'seen', 'In dyne fluids; toxic.'),
  row('toluene', 'default', [28.5, 28.5, 0], COMPONENTS, 'row'),
  row('hexadecane', 'default', [27.5, 27.5, 0], COMPONENTS, 'row'),
  row('chloroform', 'default', [27.2, 27.2, 0], COMPONENTS, 'row'),
  row('cyclohexane', 'default', [25.2, 25.2, 0], COMPONENTS, 'row'),
  row('ethyl acetate', 'default', [23.9, 23.9, 0], COMPONENTS, 'row'),
  row('decane', 'default', [23.8, 23.8, 0], COMPONENTS, 'row'),
  row('propanol', 'default', [23.87, 22.11, 1.76], SUPPLIER, 'row'),
  row('methanol', 'default', [22.5, 18.2, 4.3], COMPONENTS, 'row'),
  row('methanol', 'supplier, reference 1', [22.5, 20.21, 2.29], SUPPLIER, 'row'),
  row('ethanol', 'default', [21.4, 18.8, 2.6], COMPONENTS, 'row', 'seen', 'Alcohols differ by 8 % between sources.'),
  row('ethanol', 'supplier, reference 1', [23.2, 21.19, 2.01], SUPPLIER, 'row'),
  row('heptane', 'default', [20.1, 20.1, 0], COMPONENTS, 'row'),
  row('diethyl ether', 'default', [17, 17, 0], COMPONENTS, 'row'),
  {
    liquid: 'isopropyl alcohol',
    set: 'default',
    totalMnPerM: 23,
    source: 'solvent supplier data bulletin on isopropyl alcohol',
    at: 'typical properties',
    read: 'seen',
    note: 'No split seen. It wets nearly every plastic, prepared or not.',
  },
];

/** A liquid that is sold by formula, so only a range can be given [mN/m]. */
export const LIQUID_RANGES: readonly (Cited & { liquid: string; minMnPerM: number; maxMnPerM: number })[] = [
  {
    liquid: 'automotive paint, wet',
    minMnPerM: 25,
    maxMnPerM: 30,
    source: 'Coatings of Polymers and Plastics (2003)',
    at: 'p. 225',
    read: 'seen',
  },
];
