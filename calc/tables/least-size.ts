import { cite, type Row } from './rows.ts';

/** Thinnest wire that a rule lets into a place, whatever the current. */
export const LEAST_GAUGES: readonly Row<{ place: string; gaugeAwg: number }>[] = cite(
  { source: '33 CFR 183.425', at: '', read: 'seen', unit: 'AWG' },
  [
    { place: 'in sheath', gaugeAwg: 18, at: 'par. (d)' },
    { place: 'single', gaugeAwg: 16, at: 'par. (e)' },
    { place: 'power or lighting', gaugeAwg: 14, source: '46 CFR 183.340', at: 'par. (c)' },
    { place: 'control or indicator', gaugeAwg: 22, source: '46 CFR 183.340', at: 'par. (c)' },
  ],
);

/** The same in metric sizes, for conductors longer than 200 mm. */
export const LEAST_AREAS: readonly Row<{ place: string; singleMm2: number; inSheathMm2: number }>[] = cite(
  { source: 'ISO 10133', at: 'clause 7.7', read: 'seen', unit: 'mm2' },
  [{ place: 'small craft', singleMm2: 1, inSheathMm2: 0.75 }],
);
