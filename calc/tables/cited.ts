/**
 * How a figure was read: `seen` in the source named, from `memory` and not checked there, or `common practice` of the
 * trade that nobody is known to have published.
 */
export type Read = 'seen' | 'memory' | 'common practice';

/** Where a table row comes from, so that anyone can go and look. */
export interface Cited {
  source: string;
  /** Table, row, clause or page in the source. */
  at: string;
  read: Read;
}

export const COMMON_PRACTICE: Cited = { source: 'common practice, no source', at: '-', read: 'common practice' };
