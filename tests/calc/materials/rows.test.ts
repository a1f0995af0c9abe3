import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { judge } from '../../../site/conformance/answer.ts';
import { readRows } from '../../../site/conformance/read.ts';
import { shapes } from '../../../site/conformance/registry.ts';

const FOLDER = join(import.meta.dirname, '../rows/materials');
const files = readdirSync(FOLDER).filter((file) => file.endsWith('.json'));

/** Rows nobody answers, each with the reason; one that comes to be answered has to leave this list. */
const UNANSWERED: Readonly<Record<string, string>> = {
  'temp-codes': 'weakly recalled, and its own note forbids a test on it before the table has been read',
  'step-vocabulary': 'names the words of the data set itself; there is nothing to work out',
};

describe.each(files)('published rows of %s', async (file) => {
  const rows = await readRows(join(FOLDER, file));

  it.each(rows.map((row) => [row.id, row] as const))('%s', (id, row) => {
    const outcome = judge(row, shapes);
    expect(outcome).toEqual(id in UNANSWERED ? expect.objectContaining({ kind: 'not covered' }) : { kind: 'agrees' });
  });
});

it('every published table is here', () => {
  expect(files.sort()).toEqual([
    'adhesion-checks.json',
    'bundle.json',
    'illumination.json',
    'liquids.json',
    'loads.json',
    'prep.json',
    'safety.json',
    'soldering.json',
    'surfaces.json',
    'wire-od.json',
  ]);
});

describe('a wrong figure is caught', async () => {
  const rows = await readRows(join(FOLDER, 'bundle.json'));
  it('a packing ratio off by one in the fourth decimal differs', () => {
    const row = rows.find(({ id }) => id === 'pack-7')!;
    const outcome = judge({ ...row, expect: { ratio: 3.0002 } }, shapes);
    expect(outcome).toEqual({ kind: 'differs', differences: [{ key: 'ratio', expected: 3.0002, got: 3 }] });
  });
});
