import { cite, type Row } from './rows.ts';

/** FAA AC 43.13-1B chapter 11: aircraft wiring, a public text with whole tables. Far below vehicle tables at altitude. */
const SOURCE = 'FAA AC 43.13-1B';

/** Table 11-9: tin-plated wire. Resistance is a maximum at 20 °C; currents are for harnesses in 70 °C air at altitude. */
export interface HarnessRow {
  gaugeAwg: number;
  at105CA: number;
  at150CA: number;
  at200CA: number;
  ohmPerKft: number;
  areaCmil: number;
}

type Line = readonly [number, number, number, number, number, number];
const LINES: readonly Line[] = [
  [24, 2.5, 4, 5, 28.4, 475],
  [22, 3, 5, 6, 16.2, 755],
  [20, 4, 7, 9, 9.88, 1216],
  [18, 6, 9, 12, 6.23, 1900],
  [16, 7, 11, 14, 4.81, 2426],
  [14, 10, 14, 18, 3.06, 3831],
  [12, 13, 19, 25, 2.02, 5874],
  [10, 17, 26, 32, 1.26, 9354],
  [8, 38, 57, 71, 0.7, 16_983],
  [6, 50, 76, 97, 0.44, 26_818],
  [4, 68, 103, 133, 0.28, 42_615],
  [2, 95, 141, 179, 0.18, 66_500],
  [1, 113, 166, 210, 0.15, 81_700],
  [0, 128, 192, 243, 0.12, 104_500],
  [-1, 147, 222, 285, 0.09, 133_000],
  [-2, 172, 262, 335, 0.07, 166_500],
  [-3, 204, 310, 395, 0.06, 210_900],
];

export const TABLE_11_9: readonly Row<HarnessRow>[] = cite(
  { source: SOURCE, at: 'Table 11-9', read: 'seen', unit: 'A, ohm/kft, cmil' },
  LINES.map(([gaugeAwg, at105CA, at150CA, at200CA, ohmPerKft, areaCmil]) => ({
    gaugeAwg,
    at105CA,
    at150CA,
    at200CA,
    ohmPerKft,
    areaCmil,
  })),
);

/** Table 11-3: breaker and fuse by wire in a bundle; the largest sizes have no breaker listed. */
export const TABLE_11_3: readonly Row<{ gaugeAwg: number; breakerA?: number; fuseA: number }>[] = cite(
  { source: SOURCE, at: 'Table 11-3', read: 'seen', unit: 'A' },
  [
    { gaugeAwg: 22, breakerA: 5, fuseA: 5 },
    { gaugeAwg: 20, breakerA: 7.5, fuseA: 5 },
    { gaugeAwg: 18, breakerA: 10, fuseA: 10 },
    { gaugeAwg: 16, breakerA: 15, fuseA: 10 },
    { gaugeAwg: 14, breakerA: 20, fuseA: 15 },
    { gaugeAwg: 12, breakerA: 30, fuseA: 20 },
    { gaugeAwg: 10, breakerA: 40, fuseA: 30 },
    { gaugeAwg: 8, breakerA: 50, fuseA: 50 },
    { gaugeAwg: 6, breakerA: 80, fuseA: 70 },
    { gaugeAwg: 4, breakerA: 100, fuseA: 70 },
    { gaugeAwg: 2, breakerA: 125, fuseA: 100 },
    { gaugeAwg: 1, fuseA: 150 },
    { gaugeAwg: 0, fuseA: 150 },
  ],
);

/** Table 11-4: rating of a switch as a multiple of the load's steady current. Inductive means relay or solenoid. */
export const TABLE_11_4: readonly Row<{ systemV: number; loadType: string; factor: number }>[] = cite(
  { source: SOURCE, at: 'Table 11-4', read: 'seen', unit: 'ratio' },
  [
    { systemV: 28, loadType: 'lamp', factor: 8 },
    { systemV: 28, loadType: 'inductive', factor: 4 },
    { systemV: 28, loadType: 'resistive', factor: 2 },
    { systemV: 28, loadType: 'motor', factor: 3, read: 'memory' },
    { systemV: 12, loadType: 'lamp', factor: 5 },
    { systemV: 12, loadType: 'inductive', factor: 2, read: 'memory' },
    { systemV: 12, loadType: 'resistive', factor: 1 },
    { systemV: 12, loadType: 'motor', factor: 2 },
  ],
);

/** Table 11-6: drop allowed between bus and load. The pairing with system voltage is from memory. */
export const TABLE_11_6: readonly Row<{ systemV: number; continuousV: number; intermittentV: number }>[] = cite(
  { source: SOURCE, at: 'Table 11-6', read: 'memory', unit: 'V' },
  [
    { systemV: 14, continuousV: 0.5, intermittentV: 1 },
    { systemV: 28, continuousV: 1, intermittentV: 2 },
    { systemV: 115, continuousV: 4, intermittentV: 8 },
    { systemV: 200, continuousV: 7, intermittentV: 14 },
  ],
);

/** Below either figure plain silver contacts should not be used. */
export const LOW_ENERGY_CONTACT: readonly Row<{ contact: string; minV: number; minA: number }>[] = cite(
  { source: SOURCE, at: 'par. 11-53g', read: 'seen', unit: 'V, A' },
  [{ contact: 'silver', minV: 8, minA: 0.5 }],
);
