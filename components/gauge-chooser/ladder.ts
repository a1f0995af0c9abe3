import type { GaugeRow } from '../../calc/index.ts';

/** Bars wider than this many limits say no more. */
const MOST_LIMITS = 3.3;
const ROWS = 7;

/** Heights of the bars: drawn thickness of each size, so that a thicker wire is a thicker bar. */
const height = (areaMm2: number): number => Math.round(Math.min(32, 6.5 + 4.2 * Math.sqrt(areaMm2)));

/** One rung: geometry in percent across and units of 40 down. */
export interface Rung {
  row: GaugeRow;
  width: number;
  height: number;
  y: number;
}

/** Rungs about the size that matters, and where the limit stands on them. */
export function ladderOf(
  rows: readonly GaugeRow[],
  limitFraction: number,
  at: number,
): { rungs: Rung[]; limitX: number } {
  const from = Math.max(0, Math.min(at - 3, rows.length - ROWS));
  const shown = rows.slice(from, from + ROWS);
  const longest = Math.max(...shown.map(({ dropFraction }) => dropFraction));
  const full = Math.max(limitFraction * 1.2, Math.min(longest, limitFraction * MOST_LIMITS));
  const across = (fraction: number): number => Math.round(Math.min(100, (100 * fraction) / full) * 10) / 10;
  return {
    limitX: across(limitFraction),
    rungs: shown.map((row) => {
      const tall = height(row.areaMm2);
      return { row, width: across(row.dropFraction), height: tall, y: 20 - tall / 2 };
    }),
  };
}
