import { cite, type Row } from './rows.ts';

/** Rules about fuses from other trades, each with its own range: they show where blade fuses stand, and never size one. */

/** Share of its rating a fuse may carry for ever in 25 °C air. */
export const CONTINUOUS_SHARES: readonly Row<{ temperatureC: number; fraction: number }>[] = cite(
  { source: '', at: '', read: 'seen', unit: 'share of rating' },
  [
    { temperatureC: 25, fraction: 0.75, source: "fuse distributor's glossary", at: 'ambient temperature entry' },
    {
      temperatureC: 25,
      fraction: 0.8,
      source: 'common practice, no source',
      at: 'rule of thumb in vehicles',
      read: 'common practice',
    },
  ],
);

/** Share of its rating a thin-wire cartridge fuse carries in warm air (characteristic A); blade fuses have their own curve. */
export const CARTRIDGE_AMBIENT: readonly Row<{ temperatureC: number; fraction: number }>[] = cite(
  { source: 'MIL-PRF-23419/9D', at: 'fuse selection step 3', read: 'seen', unit: 'share of rating' },
  [{ temperatureC: 60, fraction: 0.95 }],
);

/** A test fuse that opens at 110 % in 25 °C air opens at 100 % in a 40 °C box. */
export const WARM_BOX: Row<{ temperatureC: number; openAt25C: number; openInBox: number }> = {
  temperatureC: 40,
  openAt25C: 1.1,
  openInBox: 1,
  unit: 'share of rating',
  source: "electrical supplier's note on fuse derating",
  at: 'text',
  read: 'seen',
};

/** Opening limits of cartridge fuses at a multiple of rating: from and to in rating [A], which range the limit holds for. */
export const CARTRIDGE_LIMITS: readonly Row<{
  kind: string;
  multiple: number;
  fromA: number;
  toA: number;
  minS?: number;
  maxS?: number;
}>[] = cite({ source: '', at: '', read: 'seen', unit: 's' }, [
  {
    kind: 'general',
    multiple: 2,
    fromA: 0,
    toA: 10,
    maxS: 5,
    source: 'electronics reference page, fuse derating guidelines',
    at: 'text',
  },
  {
    kind: 'general',
    multiple: 2,
    fromA: 10,
    toA: 30,
    maxS: 10,
    source: 'electronics reference page, fuse derating guidelines',
    at: 'text; upper end of the range not seen',
  },
  {
    kind: 'UL 248-14',
    multiple: 1.35,
    fromA: 0,
    toA: 60,
    maxS: 3600,
    source: 'UL 248-14, as a fuse maker states it',
    at: 'selection guide, UL Listed fuses',
  },
  {
    kind: 'UL pattern',
    multiple: 1.1,
    fromA: 0,
    toA: 60,
    minS: 14_400,
    source: 'comparison table of UL and IEC small fuses',
    at: 'fast fuse, UL',
  },
]);

/** A general fuse settles at this multiple of its rating and never opens: 10 % too much trips nothing. */
export const MUST_CARRY: Row<{ multiple: number; minMinutes: number }> = {
  multiple: 1.1,
  minMinutes: 30,
  unit: 'times rating, min',
  source: 'MIL-PRF-15160K',
  at: 'par. 4.7.2, ferrule fuses',
  read: 'seen',
};

/** Fuse as a share of the load's normal current: against overload, or against a short circuit only. */
export const LOAD_SHARES: readonly Row<{ against: 'overload' | 'short circuit'; share: number }>[] = cite(
  { source: 'electronics course (US Navy series text)', at: 'current rating', read: 'seen', unit: 'ratio' },
  [
    { against: 'overload', share: 1.25 },
    { against: 'short circuit', share: 1.5 },
  ],
);

/** The fuse's let-through must stay at least a tenth below what the part stands. */
export const LET_THROUGH: Row<{ share: number }> = {
  share: 0.9,
  unit: 'share of I2t',
  source: 'MIL-DTL-917F',
  at: 'par. 3.13.2.1, written for semiconductors',
  read: 'seen',
};
