import { cite, type Row } from './rows.ts';

/** NEC (NFPA 70): building wiring, cited where a vehicle rule is silent and to show how far apart rules lie. */

/** Adjustment for more than three current-carrying conductors together; milder than the marine factors. */
export const BUNDLE_NEC: readonly Row<{ from: number; to: number; factor: number }>[] = cite(
  { source: 'NEC (NFPA 70)', at: 'Table 310.15(B)(3)(a)', read: 'seen', unit: 'ratio' },
  [
    { from: 1, to: 3, factor: 1, read: 'memory' },
    { from: 4, to: 6, factor: 0.8 },
    { from: 7, to: 9, factor: 0.7, read: 'memory' },
    { from: 10, to: 20, factor: 0.5 },
    { from: 21, to: 30, factor: 0.45, read: 'memory' },
    { from: 31, to: 40, factor: 0.4 },
    { from: 41, to: 999, factor: 0.35 },
  ],
);

/** Largest ordinary overcurrent device on small conductors: far stricter than 33 CFR. */
export const SMALL_CONDUCTORS: readonly Row<{ gaugeAwg: number; maxFuseA: number }>[] = cite(
  { source: 'NEC (NFPA 70), as many public pages repeat it', at: '240.4(D)', read: 'seen', unit: 'A' },
  [
    { gaugeAwg: 18, maxFuseA: 7, read: 'memory' },
    { gaugeAwg: 16, maxFuseA: 10, read: 'memory' },
    { gaugeAwg: 14, maxFuseA: 15 },
    { gaugeAwg: 12, maxFuseA: 20 },
    { gaugeAwg: 10, maxFuseA: 30 },
  ],
);

/** Chapter 9 Table 8 at 75 °C [ohm/kft]: solid and stranded, plain and coated (tinned). Some reprints mix the columns up. */
export interface Table8Row {
  gaugeAwg: number;
  /** Absent from 6 AWG up, where only stranded wire is listed. */
  solidOhmPerKft?: number;
  strandedOhmPerKft: number;
  coatedSolidOhmPerKft?: number;
  coatedStrandedOhmPerKft: number;
}

export const TABLE_8: readonly Row<Table8Row>[] = cite(
  { source: 'NEC (NFPA 70)', at: 'chapter 9 Table 8, copper at 75 °C', read: 'seen', unit: 'ohm/kft' },
  [
    {
      gaugeAwg: 18,
      solidOhmPerKft: 7.77,
      strandedOhmPerKft: 7.95,
      coatedSolidOhmPerKft: 8.08,
      coatedStrandedOhmPerKft: 8.45,
    },
    {
      gaugeAwg: 16,
      solidOhmPerKft: 4.89,
      strandedOhmPerKft: 4.99,
      coatedSolidOhmPerKft: 5.08,
      coatedStrandedOhmPerKft: 5.29,
    },
    {
      gaugeAwg: 14,
      solidOhmPerKft: 3.07,
      strandedOhmPerKft: 3.14,
      coatedSolidOhmPerKft: 3.19,
      coatedStrandedOhmPerKft: 3.26,
    },
    {
      gaugeAwg: 12,
      solidOhmPerKft: 1.93,
      strandedOhmPerKft: 1.98,
      coatedSolidOhmPerKft: 2.01,
      coatedStrandedOhmPerKft: 2.05,
    },
    {
      gaugeAwg: 10,
      solidOhmPerKft: 1.21,
      strandedOhmPerKft: 1.24,
      coatedSolidOhmPerKft: 1.26,
      coatedStrandedOhmPerKft: 1.29,
    },
    {
      gaugeAwg: 8,
      solidOhmPerKft: 0.764,
      strandedOhmPerKft: 0.778,
      coatedSolidOhmPerKft: 0.786,
      coatedStrandedOhmPerKft: 0.809,
    },
    { gaugeAwg: 6, strandedOhmPerKft: 0.491, coatedStrandedOhmPerKft: 0.51 },
    { gaugeAwg: 4, strandedOhmPerKft: 0.308, coatedStrandedOhmPerKft: 0.321 },
    { gaugeAwg: 3, strandedOhmPerKft: 0.245, coatedStrandedOhmPerKft: 0.254 },
    { gaugeAwg: 2, strandedOhmPerKft: 0.194, coatedStrandedOhmPerKft: 0.201 },
    { gaugeAwg: 1, strandedOhmPerKft: 0.154, coatedStrandedOhmPerKft: 0.16 },
    { gaugeAwg: 0, strandedOhmPerKft: 0.122, coatedStrandedOhmPerKft: 0.127 },
    { gaugeAwg: -1, strandedOhmPerKft: 0.0967, coatedStrandedOhmPerKft: 0.101 },
    { gaugeAwg: -2, strandedOhmPerKft: 0.0766, coatedStrandedOhmPerKft: 0.0797 },
    { gaugeAwg: -3, strandedOhmPerKft: 0.0608, coatedStrandedOhmPerKft: 0.0626 },
  ],
);
