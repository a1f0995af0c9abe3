import { cite, type Row } from './rows.ts';

/**
 * What a cautious workshop works by where no standard was found. Common practice, no source: the workshop's lead signs
 * these before use, and `shop.yaml` may hold others.
 */
const PRACTICE = { source: 'common practice, no source', read: 'common practice' } as const;

/** Largest fuse ahead of a wire: one or two loaded wires in air up to 50 °C. */
export const WORKSHOP_LIMITS: readonly Row<{ areaMm2: number; limitA: number }>[] = cite(
  { ...PRACTICE, at: 'largest fuse per wire, air up to 50 °C', unit: 'A' },
  [
    { areaMm2: 0.35, limitA: 3, at: 'below the usual list: a pigtail behind its own small fuse; ask the lead' },
    { areaMm2: 0.5, limitA: 5 },
    { areaMm2: 0.75, limitA: 7.5 },
    { areaMm2: 1, limitA: 10 },
    { areaMm2: 1.5, limitA: 15 },
    { areaMm2: 2.5, limitA: 20 },
    { areaMm2: 4, limitA: 30 },
    { areaMm2: 6, limitA: 40 },
    { areaMm2: 10, limitA: 60 },
    { areaMm2: 16, limitA: 80 },
    { areaMm2: 25, limitA: 100 },
    { areaMm2: 35, limitA: 125 },
    { areaMm2: 50, limitA: 150 },
  ],
);

/** Air temperature up to which `WORKSHOP_LIMITS` hold without a heat factor [°C]. */
export const WORKSHOP_AIR_C = 50;

/** Factor by loaded wires in one bundle; wires that only carry a coil's current do not count. */
export const WORKSHOP_BUNDLE: readonly Row<{ from: number; to: number; factor: number }>[] = cite(
  { ...PRACTICE, at: 'bundle steps', unit: 'ratio' },
  [
    { from: 1, to: 2, factor: 1 },
    { from: 3, to: 5, factor: 0.8 },
    { from: 6, to: 9, factor: 0.7 },
    { from: 10, to: 999, factor: 0.6 },
  ],
);

/** Fuse ratings the workshop keeps in its drawer [A], over all forms. */
export const STOCKED_FUSES_A: readonly number[] = [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 150];

/** A blade fuse is asked to carry this many times its rating for less than `INRUSH_LONGEST_MS`. */
export const INRUSH_MULTIPLE: Row<{ multiple: number; longestMs: number }> = {
  multiple: 3.5,
  longestMs: 80,
  unit: 'times rating',
  source: 'ISO 8820-3',
  at: 'operating time at 350 % of rating; check the current edition',
  read: 'memory',
};
