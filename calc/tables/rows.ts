import type { Cited } from './cited.ts';

/** A row of a published table: its figures, the unit of the figures that stand in the source, and where it was read. */
export type Row<T extends object> = Readonly<T & Cited & { unit: string }>;

/**
 * Gives every row of one table the table's own citation. A row that was read otherwise (from memory, say, where the
 * rest was seen) carries its own `read`, `source` or `at`, which wins. Marked as free of side effects, so that a table
 * nobody reads does not travel to the browser.
 */
/* @__NO_SIDE_EFFECTS__ */
export function cite<T extends object>(
  citation: Cited & { unit: string },
  rows: readonly (T & Partial<Cited>)[],
): readonly Row<T>[] {
  return rows.map((row) => ({ ...citation, ...row }));
}

/** A citation without the figures, for the list of sources under an answer. */
export interface Source extends Cited {
  /** What was taken from it, in a few words. */
  what: string;
}

/** The citation of a row, with a word on what was taken from it. */
export function sourceOf(what: string, row: Cited): Source {
  return { what, source: row.source, at: row.at, read: row.read };
}
