import { cite, type Row } from './rows.ts';

/** 30 CFR 75.601: trailing cables in coal mines; a public rule that sets fuse and breaker by wire size.. */
export interface TrailingFuseRow {
  gaugeAwg: number;
  /** Absent for the thinnest sizes, which are two-conductor only. */
  singleAmpacityA?: number;
  singleMaxFuseA?: number;
  twoAmpacityA: number;
  twoMaxFuseA: number;
}

/** Largest dual-element fuse; it may be the next standard size above the ampacity. */
export const TRAILING_FUSES: readonly Row<TrailingFuseRow>[] = cite(
  { source: '30 CFR 75.601-3', at: 'table', read: 'seen', unit: 'A' },
  [
    { gaugeAwg: 14, twoAmpacityA: 15, twoMaxFuseA: 15 },
    { gaugeAwg: 12, twoAmpacityA: 20, twoMaxFuseA: 20 },
    { gaugeAwg: 10, twoAmpacityA: 25, twoMaxFuseA: 25 },
    { gaugeAwg: 8, singleAmpacityA: 60, singleMaxFuseA: 60, twoAmpacityA: 50, twoMaxFuseA: 50 },
    { gaugeAwg: 6, singleAmpacityA: 85, singleMaxFuseA: 90, twoAmpacityA: 65, twoMaxFuseA: 70 },
    { gaugeAwg: 4, singleAmpacityA: 110, singleMaxFuseA: 110, twoAmpacityA: 90, twoMaxFuseA: 90 },
    { gaugeAwg: 3, singleAmpacityA: 130, singleMaxFuseA: 150, twoAmpacityA: 105, twoMaxFuseA: 110 },
    { gaugeAwg: 2, singleAmpacityA: 150, singleMaxFuseA: 150, twoAmpacityA: 120, twoMaxFuseA: 125 },
    { gaugeAwg: 1, singleAmpacityA: 170, singleMaxFuseA: 175, twoAmpacityA: 140, twoMaxFuseA: 150 },
    { gaugeAwg: 0, singleAmpacityA: 200, singleMaxFuseA: 200, twoAmpacityA: 170, twoMaxFuseA: 175 },
  ],
);

/** Largest setting of an instantaneous breaker: a short-circuit setting, several times the ampacity. */
export const TRAILING_BREAKERS: readonly Row<{ gaugeAwg: number; maxInstantA: number }>[] = cite(
  { source: '30 CFR 75.601-1', at: 'table', read: 'memory', unit: 'A' },
  [
    { gaugeAwg: 14, maxInstantA: 50, read: 'seen' },
    { gaugeAwg: 12, maxInstantA: 75 },
    { gaugeAwg: 10, maxInstantA: 150, read: 'seen' },
    { gaugeAwg: 8, maxInstantA: 200, read: 'seen' },
    { gaugeAwg: 6, maxInstantA: 300 },
    { gaugeAwg: 4, maxInstantA: 500, read: 'seen' },
    { gaugeAwg: 3, maxInstantA: 600 },
    { gaugeAwg: 2, maxInstantA: 800 },
    { gaugeAwg: 1, maxInstantA: 1000 },
    { gaugeAwg: 0, maxInstantA: 1250 },
  ],
);

/** Other rules let the next larger standard device in, up to this share of the ampacity. */
export const NEXT_SIZE_SHARES: readonly Row<{ rule: string; maxShare: number }>[] = cite(
  { source: '46 CFR 111.50-3 and 183.380', at: 'par. (c)(1); par. (d)', read: 'seen', unit: 'share of ampacity' },
  [{ rule: '46 CFR', maxShare: 1.5 }],
);
