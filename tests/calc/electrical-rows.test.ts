import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { judge } from '../../site/conformance/answer.ts';
import { shapes } from '../../site/conformance/registry.ts';
import type { Row, Value } from '../../site/conformance/row.ts';

const folder = new URL('./rows/electrical/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const read = (name: string): Row[] => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Row[];

describe.each(files)('published rows of %s', (name) => {
  const rows = read(name);

  it.each(rows.map((row) => [row.id, row.source, row.at, row] as const))(
    '%s agrees with %s, %s',
    (_id, _s, _at, row) => {
      expect(judge(row, shapes)).toEqual({ kind: 'agrees' });
    },
  );

  it('would be told apart from rows that are wrong', () => {
    const wrong = rows.filter((row) => {
      const [key, value] = Object.entries(row.expect)[0]!;
      return judge({ ...row, expect: { ...row.expect, [key]: spoiled(value) } }, shapes).kind === 'agrees';
    });
    expect(wrong.map((row) => row.id)).toEqual([]);
  });
});

/** A value no answer can agree with: a third more and a bit, another word, the opposite. */
function spoiled(value: Value): Value {
  if (typeof value === 'number') return value * 1.7 + 3;
  if (typeof value === 'boolean') return !value;
  if (value === null) return 40;
  return typeof value === 'string' ? `${value}, or not` : [];
}

it('reads most rows from sources that were seen', () => {
  const all = files.flatMap(read);
  expect(all.length).toBeGreaterThan(600);
  expect(all.filter((row) => row.read === 'seen').length / all.length).toBeGreaterThan(0.7);
});
