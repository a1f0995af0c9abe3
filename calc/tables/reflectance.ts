import type { Cited } from './cited.ts';

/** Share of light a surface gives back. `diffuse: false` reflects like a mirror and has no place in a bounce sum. */
export interface ReflectanceRow extends Cited {
  surface: string;
  reflectance: number;
  /** Where a source gives a span. */
  min?: number;
  max?: number;
  diffuse: boolean;
}

const TABLE = 'lamp maker encyclopaedia table of reflectances';
const seen = (at: string, rows: readonly (readonly [string, number])[]): ReflectanceRow[] =>
  rows.map(([surface, reflectance]) => ({ surface, reflectance, diffuse: true, source: TABLE, at, read: 'seen' }));
const recalled = (surface: string, reflectance: number, diffuse: boolean): ReflectanceRow => ({
  surface,
  reflectance,
  diffuse,
  source: 'common practice, no source',
  at: '-',
  read: 'common practice',
});
const HELP = { source: 'lighting software help page', read: 'seen' } as const;

/** Share of light that surfaces give back. */
export const REFLECTANCES: readonly ReflectanceRow[] = [
  ...seen('colour column', [
    ['white', 0.8],
    ['light yellow', 0.7],
    ['light green', 0.4],
    ['pink', 0.4],
    ['sky blue', 0.4],
    ['light grey', 0.4],
    ['light brown', 0.3],
    ['mid grey', 0.2],
    ['dark red', 0.1],
    ['black', 0.1],
  ]),
  ...seen('material column', [
    ['plaster', 0.8],
    ['white tiles', 0.7],
    ['maple or birch', 0.6],
    ['light oak', 0.4],
    ['concrete', 0.3],
    ['dark walnut', 0.2],
    ['dark oak', 0.2],
    ['red brick', 0.2],
    ['breeze block', 0.1],
  ]),
  { surface: 'clear glass', reflectance: 0.07, min: 0.06, max: 0.08, diffuse: false, at: '6-8 %', ...HELP },
  // This source disagrees with the table above, which has light oak at 0.4 and dark oak and walnut at 0.2.
  { surface: 'wood, light', reflectance: 0.45, min: 0.3, max: 0.6, diffuse: true, at: 'list', ...HELP },
  { surface: 'wood, dark', reflectance: 0.125, min: 0.1, max: 0.15, diffuse: true, at: 'list', ...HELP },
  recalled('dark carpet', 0.1, true),
  recalled('black plastic', 0.05, true),
  recalled('chrome', 0.65, false),
  recalled('polished aluminium', 0.7, false),
];
