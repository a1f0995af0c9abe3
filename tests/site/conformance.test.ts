import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { agrees, judge } from '../../site/conformance/answer.ts';
import type { Row, Shape } from '../../site/conformance/row.ts';

const command = fileURLToPath(new URL('../../site/command/conformance.ts', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'rows-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const file = (name: string, content: unknown): string => {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
};

function run(...args: string[]): Promise<{ code: number; out: string[]; err: string[] }> {
  const lines = (text: string) => text.split('\n').filter((line) => line !== '');
  return new Promise((done) => {
    execFile(process.execPath, [command, ...args], (error, out, err) => {
      done({ code: error === null ? 0 : Number(error.code), out: lines(out), err: lines(err) });
    });
  });
}

const row = (
  id: string,
  inputs: Row['inputs'],
  expected: Row['expect'],
  tolerance: Row['tolerance'] = { abs: 0 },
): Row => ({
  id,
  about: '',
  inputs,
  expect: expected,
  tolerance,
  source: 'a book',
  at: 'page 1',
  read: 'seen',
});
const good = row('good', { gaugeAwg: 12 }, { areaMm2: 3.31 }, { abs: 0.005 });
const bad = row('bad', { gaugeAwg: 12 }, { areaMm2: 4 }, { abs: 0.005 });
const strange = row('strange', { moonPhase: 3 }, { tideM: 2 });
const outside = row('outside', { gaugeAwg: 99 }, { areaMm2: 1 });

describe('npm run conformance -- --rows', () => {
  it('ends with the tally and exit 0 when nothing differs', async () => {
    const { code, out } = await run('--rows', file('good.json', [good]), file('also.json', [good]));
    expect(out).toEqual(['rows: 2 agree, 0 differ, 0 not covered']);
    expect(code).toBe(0);
  });

  it('prints both figures of a row that differs, lists what it cannot answer, and exits 1', async () => {
    const { code, out } = await run('--rows', file('mixed.json', [good, strange, bad, outside]));
    expect(out).toHaveLength(4);
    expect(out[0]).toMatch(/^differs: bad: areaMm2 expected 4, got 3\.308\d+ \(a book, page 1\)$/);
    expect(out[1]).toBe('not covered: strange: no function has this shape');
    expect(out[2]).toMatch(/^not covered: outside: awg: unexpected gaugeAwg 99/);
    expect(out[3]).toBe('rows: 1 agree, 1 differ, 2 not covered');
    expect(code).toBe(1);
  });

  it.each([
    ['nothing asked', [], /^conformance: usage: npm run conformance -- --rows FILE/],
    ['an unknown option', ['--row', 'x.json'], /^conformance: unknown option --row; usage/],
    ['an option with no file', ['--rows'], /^conformance: --rows needs at least one file/],
    ['a file before any option', ['x.json'], /^conformance: x\.json stands before any option/],
    ['a file that is not there', ['--rows', 'nowhere.json'], /^conformance: nowhere\.json: no such file/],
    ['a file that is not JSON', ['--rows', file('broken.json', '{"id":')], /broken\.json: not JSON/],
    ['a file that is no array', ['--rows', file('object.json', {})], /object\.json: expected an array of rows/],
    [
      'a row without inputs',
      ['--rows', file('half.json', [{ id: 'half' }])],
      /half\.json: row 1 \(half\) has no inputs/,
    ],
  ])('answers %s with one line and exit 2', async (_what, args, message) => {
    const { code, out, err } = await run(...args);
    expect(err).toHaveLength(1);
    expect(err[0]).toMatch(message);
    expect(out).toEqual([]);
    expect(code).toBe(2);
  });
});

describe('agreement', () => {
  it('is as near as the printed precision, in numbers, words, lists and records', () => {
    expect(agrees(1.005, 1, { abs: 0.005 })).toBe(true);
    expect(agrees(1.006, 1, { abs: 0.005 })).toBe(false);
    expect(agrees(101, 100, { rel: 0.01 })).toBe(true);
    expect(agrees(Number.NaN, 100, { rel: 1 })).toBe(false);
    expect(agrees('1', 1, { abs: 1 })).toBe(false);
    expect(agrees('tan', 'black', { abs: 9 })).toBe(false);
    expect(agrees([1, 2], [1, 2, 3], { abs: 0 })).toBe(false);
    expect(agrees({ a: 1, b: 2 }, { a: 1 }, { abs: 0 })).toBe(true);
    expect(agrees(null, 40, { abs: 0 })).toBe(false);
    expect(agrees(undefined, null, { abs: 0 })).toBe(false);
  });

  it('never looks at what a row expects to find its answer', () => {
    const shape: Shape = { needs: ['a'], gives: ['b'], answer: ({ a }) => ({ b: a }) };
    expect(judge(row('same', { a: 1 }, { b: 1 }), [shape])).toEqual({ kind: 'agrees' });
    expect(judge(row('other', { a: 1 }, { b: 2 }), [shape]).kind).toBe('differs');
    expect(judge(row('more', { a: 1, c: 1 }, { b: 1 }), [shape]).kind).toBe('not covered');
    expect(judge(row('else', { a: 1 }, { d: 1 }), [shape]).kind).toBe('not covered');
  });

  it('counts a missing key as a difference and lets a fault of ours show', () => {
    const silent: Shape = { needs: ['a'], gives: ['b'], answer: () => ({}) };
    expect(judge(row('silent', { a: 1 }, { b: 1 }), [silent])).toMatchObject({ kind: 'differs' });
    const broken: Shape = {
      needs: ['a'],
      gives: ['b'],
      answer: () => {
        throw new Error('ours');
      },
    };
    expect(() => judge(row('broken', { a: 1 }, { b: 1 }), [broken])).toThrow('ours');
  });
});
