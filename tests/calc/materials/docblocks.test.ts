import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as calcModule from '../../../calc/index.ts';
import { surface } from './surfaces.ts';

const calc: Readonly<Record<string, unknown>> = { ...calcModule };

/** Documented functions of the materials files: their docblock and name, read from the text. */
const CALC = join(import.meta.dirname, '../../../calc');
const listed: readonly string[] = readFileSync(join(CALC, 'materials.ts'), 'utf8').match(/'\.\/[a-z-]+\.ts'/g) ?? [];
const files = readdirSync(CALC).filter((file) => listed.includes(`'./${file}'`));

const documented = files.flatMap((file) =>
  [...readFileSync(join(CALC, file), 'utf8').matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\nexport function (\w+)/g)].map(
    ([, text, name]) => ({ file, name: name ?? '', text: text ?? '' }),
  ),
);
/** Shared look-ups and texts that have no formula of their own. */
const HELPERS = ['applicationRange', 'prepCautions', 'prepStep'];
const functions = documented.filter(({ name }) => !HELPERS.includes(name));

const tag = (text: string, name: string): string =>
  new RegExp(`@${name} ([\\s\\S]*?)(?=\\n \\* @|$)`).exec(text)?.[1] ?? '';

it('finds the documented functions', () => {
  expect(functions.length).toBeGreaterThan(55);
});

describe.each(functions)('$name of $file', ({ name, text }) => {
  it('says what comes back, what it refuses, how it is worked out and where from', () => {
    for (const part of ['returns', 'throws', 'formula', 'source', 'example'])
      expect(tag(text, part), part).not.toBe('');
  });

  it('gives the figure its example prints', () => {
    const [, code, printed] = /^([\s\S]*?) \/\/ (.+)$/.exec(tag(text, 'example').replaceAll(/\s+/g, ' ').trim()) ?? [];
    const names = Object.keys(calc).filter((each) => typeof calc[each] === 'function');
    const run = new Function(...names, 'glass', `return (${code});`);
    const got = run(...names.map((each) => calc[each]), surface('glass'));
    const expected = JSON.parse((printed ?? '').replaceAll("'", '"'));
    if (typeof expected !== 'number') expect(got, name).toEqual(expected);
    else {
      const decimals = (printed?.split('.')[1] ?? '').length;
      expect(Math.abs(got - expected), `${got}`).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-12);
    }
  });
});
