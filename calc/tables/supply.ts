import { cite, type Row } from './rows.ts';

/** What the supply of a vehicle does, at rest and at its worst. */

/** Running voltage. Smart alternators go from 12.2 to 15 V. */
export const RUNNING_V: readonly Row<{ systemV: number; minV: number; maxV: number }>[] = cite(
  { source: 'motoring reference pages', at: 'alternator voltage', read: 'seen', unit: 'V' },
  [
    { systemV: 12, minV: 13.8, maxV: 14.7 },
    {
      systemV: 24,
      minV: 27.6,
      maxV: 29.4,
      source: 'common practice, no source',
      at: 'twice the 12 V range',
      read: 'common practice',
    },
  ],
);

/** Supply ranges a device is built for, by code letter. */
export const SUPPLY_CODES: readonly Row<{ systemV: number; code: string; minV: number; maxV: number }>[] = cite(
  { source: 'ISO 16750-2', at: 'supply voltage tables', read: 'memory', unit: 'V' },
  [
    { systemV: 12, code: 'A', minV: 6, maxV: 16 },
    { systemV: 12, code: 'B', minV: 8, maxV: 16 },
    { systemV: 12, code: 'C', minV: 9, maxV: 16 },
    { systemV: 12, code: 'D', minV: 10.5, maxV: 16 },
    { systemV: 24, code: 'E', minV: 10, maxV: 32 },
    { systemV: 24, code: 'F', minV: 16, maxV: 32 },
    { systemV: 24, code: 'G', minV: 22, maxV: 32 },
    { systemV: 24, code: 'H', minV: 18, maxV: 32 },
  ],
);

/** Overvoltage that stands for a jump start from a larger vehicle. */
export const JUMP_START: readonly Row<{ systemV: number; testV: number; seconds: number }>[] = cite(
  { source: 'ISO 16750-2', at: 'overvoltage', read: 'memory', unit: 'V, s' },
  [{ systemV: 12, testV: 24, seconds: 60 }],
);

/** Load dump where nothing central clamps it; the peak holds the running voltage. */
export const LOAD_DUMP: readonly Row<{
  systemV: number;
  minPeakV: number;
  maxPeakV: number;
  minOhm: number;
  maxOhm: number;
  minMs: number;
  maxMs: number;
}>[] = cite(
  { source: 'ISO 16750-2, as tabulated in a journal article', at: 'Table 1', read: 'seen', unit: 'V, ohm, ms' },
  [
    { systemV: 12, minPeakV: 79, maxPeakV: 101, minOhm: 0.5, maxOhm: 4, minMs: 40, maxMs: 400 },
    { systemV: 24, minPeakV: 151, maxPeakV: 202, minOhm: 1, maxOhm: 8, minMs: 100, maxMs: 350 },
  ],
);

/** The same with a central clamp; vehicle makers often set their own figure. */
export const LOAD_DUMP_CLAMPED: readonly Row<{ systemV: number; clampV: number }>[] = cite(
  {
    source: 'ISO 16750-2, as an electronics article explains it',
    at: 'load dump test B, figure 5',
    read: 'seen',
    unit: 'V',
  },
  [{ systemV: 12, clampV: 35 }],
);

/** Dip of the supply in a hard cold crank. */
export const COLD_CRANK: readonly Row<{
  systemV: number;
  worstV: number;
  minMs: number;
  maxMs: number;
  thenV: number;
}>[] = cite(
  { source: "power-chip maker's primer on automotive transients", at: 'cold crank', read: 'seen', unit: 'V, ms' },
  [{ systemV: 12, worstV: 3, minMs: 15, maxMs: 50, thenV: 6 }],
);
