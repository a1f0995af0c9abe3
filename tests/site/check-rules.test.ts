import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { check, problemLine } from '../../site/check/check.ts';
import { rules } from '../../site/check/rules/index.ts';

const here = import.meta.dirname;
const FIXTURES = join(here, 'fixtures');
const scratch = mkdtempSync(join(tmpdir(), 'loomleaf-rules-'));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** The tiny workshop with a fixture's files laid over it: whatever the check says is about those files. */
async function messagesOf(fixture: string): Promise<string> {
  const dir = join(scratch, fixture);
  cpSync(join(here, 'tiny-workshop'), dir, { recursive: true });
  cpSync(join(FIXTURES, fixture), dir, { recursive: true, filter: (path) => !path.endsWith('expected.txt') });
  // The tiny workshop's own circuit is proven for the first fixture and found again for the others.
  const { problems } = await check(dir, { proving: { cacheDir: join(scratch, 'proofs') } });
  return problems.map((problem) => `${problemLine(problem)}\n`.replaceAll(`${dir}/`, '')).join('');
}

describe('the check', () => {
  it('finds nothing wrong with the tiny workshop', async () => {
    const { problems, files, workshop } = await check(join(here, 'tiny-workshop'), {
      proving: { cacheDir: undefined },
    });
    expect(problems).toEqual([]);
    expect(files).toBe(9);
    expect(workshop.guides.map(({ id }) => id)).toEqual(['cart-lamp']);
  });

  const fixtures = readdirSync(FIXTURES).sort();
  it.each(fixtures)('says word for word what is wrong: %s', async (fixture) => {
    const expected = readFileSync(join(FIXTURES, fixture, 'expected.txt'), 'utf8');
    expect(await messagesOf(fixture)).toBe(expected);
  });

  it('has a fixture for every rule', () => {
    expect(rules.map(({ id }) => id).filter((id) => !existsSync(join(FIXTURES, id)))).toEqual([]);
  });

  it('gives a guide with ten mistakes ten messages, each in its place', () => {
    const source = readFileSync(join(FIXTURES, 'ten-mistakes/guides/ten.mdx'), 'utf8').split('\n');
    const lines = readFileSync(join(FIXTURES, 'ten-mistakes/expected.txt'), 'utf8').trimEnd().split('\n');
    const starts = lines.map((line) => {
      const [, row, col] = /:(\d+):(\d+) /.exec(line)!;
      return source[Number(row) - 1]!.slice(Number(col) - 1).split(/[\s/>\]"]/)[0];
    });
    expect(starts).toEqual([
      'hand-kart',
      'lightening',
      'tool:',
      'import',
      '{lampRunM}',
      '[read',
      'continousFraction={0.8}',
      'W33',
      'danger',
      '<Cautoin',
    ]);
  });
});
