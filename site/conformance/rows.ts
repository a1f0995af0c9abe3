import { judge } from './answer.ts';
import { readRows } from './read.ts';
import { shapes } from './registry.ts';

/** What a part of the runner found: lines to print, the last of them its tally, and whether anything differed. */
export interface Report {
  lines: string[];
  differs: boolean;
}

const show = (value: unknown): string => (value === undefined ? 'nothing' : JSON.stringify(value));

/**
 * Answers every row of the files with calc's functions: each row that differs with both figures, then each row that no
 * function answers, then the tally.
 */
export async function reportRows(files: readonly string[]): Promise<Report> {
  const differing: string[] = [];
  const uncovered: string[] = [];
  let agree = 0;
  for (const file of files) {
    for (const row of await readRows(file)) {
      const outcome = judge(row, shapes);
      if (outcome.kind === 'agrees') agree += 1;
      else if (outcome.kind === 'not covered') uncovered.push(`not covered: ${row.id}: ${outcome.why}`);
      else {
        const parts = outcome.differences.map(
          ({ key, expected, got }) => `${key} expected ${show(expected)}, got ${show(got)}`,
        );
        differing.push(`differs: ${row.id}: ${parts.join('; ')} (${row.source}, ${row.at})`);
      }
    }
  }
  const tally = `rows: ${agree} agree, ${differing.length} differ, ${uncovered.length} not covered`;
  return { lines: [...differing, ...uncovered, tally], differs: differing.length > 0 };
}
