import { cite, type Row } from './rows.ts';

/** First current of a load as a multiple of its steady current; sources spread widely, so a range stands beside it. */
export const INRUSH_MULTIPLES: readonly Row<{ loadType: string; multiple: number; low: number; high: number }>[] = cite(
  { source: "switch maker's application page", at: 'load types', read: 'seen', unit: 'times steady current' },
  [
    { loadType: 'incandescent lamp', multiple: 10, low: 7, high: 18 },
    { loadType: 'motor', multiple: 6, low: 4, high: 8 },
    {
      loadType: 'LED strip with resistors',
      multiple: 1,
      low: 1,
      high: 1.2,
      source: 'common practice, no source',
      at: 'rule of thumb',
      read: 'common practice',
    },
  ],
);

/** Load a contact may switch as a share of its resistive rating, by kind of load: the workshop's own, simpler rule. */
export const LOAD_KINDS = ['resistive', 'LED driver', 'motor', 'filament'] as const;
export type LoadKind = (typeof LOAD_KINDS)[number];
export const CONTACT_SHARES: readonly Row<{ loadKind: LoadKind; share: number }>[] = cite(
  { source: 'common practice, no source', at: 'contact share by load', read: 'common practice', unit: 'ratio' },
  [
    { loadKind: 'resistive', share: 0.8 },
    { loadKind: 'LED driver', share: 0.5 },
    { loadKind: 'motor', share: 0.4 },
    { loadKind: 'filament', share: 0.33 },
  ],
);

/** Coil of a 40 A cube relay. One summary claims 400 to 500 ohm beside 150 mA, which cannot both be true. */
export const TYPICAL_COILS: readonly Row<{ systemV: number; coilA: number; coilOhm: number }>[] = cite(
  { source: 'forum summary of relay data', at: 'quick facts', read: 'seen', unit: 'A, ohm' },
  [
    { systemV: 12, coilA: 0.15, coilOhm: 80 },
    { systemV: 24, coilA: 0.075, coilOhm: 320, read: 'memory', at: 'the same power at twice the voltage' },
  ],
);

/** Turn-off peak of a coil that nothing clamps. */
export const BARE_COIL_PEAKS: readonly Row<{ systemV: number; peakMinV: number; peakMaxV: number }>[] = cite(
  {
    source: "relay maker's application note on coil suppression",
    at: 'need for suppression',
    read: 'seen',
    unit: 'V',
  },
  [{ systemV: 12, peakMinV: 1000, peakMaxV: 1500 }],
);

/** Measured time until the contacts open: a resistor against a plain diode across the coil. One sample. */
export const RELEASE_SAMPLES: readonly Row<{
  systemV: number;
  coilOhm: number;
  resistorOhm: number;
  resistorMs: number;
  diodeMs: number;
}>[] = cite(
  {
    source: 'electronics forum measurement of a cube relay',
    at: 'diode on relay coil thread',
    read: 'seen',
    unit: 'ms',
  },
  [{ systemV: 12, coilOhm: 120, resistorOhm: 680, resistorMs: 2.6, diodeMs: 8 }],
);

/** The small cube relay: two pin layouts with the same numbers in other places, so wire by number, never by position. */
export const RELAY_BODIES: readonly Row<{ relay: string; widthMm: number }>[] = cite(
  { source: 'workshop article on automotive relays', at: 'terminal sizes', read: 'seen', unit: 'mm' },
  [
    { relay: 'cube', widthMm: 6.3 },
    { relay: 'high-power cube', widthMm: 9.5 },
  ],
);
export const RELAY_LAYOUTS: readonly Row<{ from: string; to: string; swapped: readonly string[] }>[] = cite(
  { source: 'workshop article on automotive relays', at: 'terminal layouts', read: 'seen', unit: 'terminal' },
  [{ from: 'layout A', to: 'layout B', swapped: ['30', '86'] }],
);
