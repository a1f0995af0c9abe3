import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { frontMatterIn } from '../../site/read/document.ts';
import { readPlainYaml } from '../../site/read/plain-yaml.ts';
import { ROOT } from './spawn.ts';

const full = (text: string): unknown => {
  try {
    return parse(text, { maxAliasCount: 20 });
  } catch {
    return 'refused';
  }
};

describe('the quick reader of front matter', () => {
  it('reads what guides are made of', () => {
    const text = [
      'title: Lamp on a cart, the second',
      "number: '041'",
      'issue: 12',
      'updated: 2026-11-25',
      'summary: "One lamp: one switch"',
      'vehicles: [hand-cart, panel-van]',
      'tools:',
      '  - Crimp tool',
      "  - 'Meter: any'",
      '',
    ].join('\n');
    expect(readPlainYaml(text)).toEqual({
      title: 'Lamp on a cart, the second',
      number: '041',
      issue: 12,
      updated: '2026-11-25',
      summary: 'One lamp: one switch',
      vehicles: ['hand-cart', 'panel-van'],
      tools: ['Crimp tool', 'Meter: any'],
    });
  });

  it.each([
    'draft: true',
    'a: 1.5',
    'a: 0x1F',
    'a: 1e3',
    'a: 041',
    'a: Null',
    'a:',
    'a: x # remark',
    'a: b: c',
    'a: { b: c }',
    'a: [b, [c]]',
    'a: [b,]',
    'a: |\n  b',
    'a: b\n  c',
    'a: b\na: c',
    'a: *b',
    'a:\n- b',
    'a: "x\\n"',
    "a: 'it''s'",
    'a: b\r\nc: d',
  ])('leaves %j to the full parser', (text) => {
    expect(readPlainYaml(text)).toBeUndefined();
  });

  it('agrees with the full parser on every guide and lesson, and reads most of them', () => {
    let read = 0;
    let all = 0;
    for (const kind of ['guides', 'lessons']) {
      for (const name of readdirSync(join(ROOT, 'content', kind))) {
        const text = frontMatterIn(readFileSync(join(ROOT, 'content', kind, name), 'utf8'))!.text;
        const plain = readPlainYaml(text);
        all++;
        if (plain === undefined) continue;
        read++;
        expect(plain, name).toEqual(full(text));
      }
    }
    expect(read / all).toBeGreaterThan(0.3);
  });

  it('never answers otherwise than the full parser', () => {
    const word = fc.constantFrom(
      ...['a', 'b c', '12', '041', '1.5', '2026-11-25', 'true', 'null', "'x'", '"y"', "'", '"', '[a, b]', '[', ']'],
      ...[
        ',',
        ':',
        ': ',
        ' #',
        '#',
        '- ',
        '  - ',
        '  ',
        '-',
        '{}',
        '|',
        '>',
        '*a',
        '&a',
        '!',
        '~',
        '0',
        'x-y',
        'é',
        '%',
        '@',
        '`',
        '?',
      ],
    );
    const line = fc.oneof(
      fc
        .tuple(fc.constantFrom('a', 'b', 'tools', 'A', 'a-b'), fc.array(word, { maxLength: 4 }))
        .map(([key, words]) => `${key}: ${words.join('')}`),
      fc.constantFrom('a:', 'tools:', '', ' ', '---', '# remark'),
      fc.array(word, { maxLength: 3 }).map((words) => `  - ${words.join('')}`),
      fc.array(word, { maxLength: 4 }).map((words) => words.join('')),
      fc.array(word, { maxLength: 3 }).map((words) => `tools: [${words.join(', ')}]`),
    );
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 5 }), (lines) => {
        const text = lines.join('\n');
        const plain = readPlainYaml(text);
        if (plain !== undefined && Object.keys(plain).length > 0)
          expect(plain, JSON.stringify(text)).toEqual(full(text));
      }),
      { numRuns: 20_000 },
    );
  });
});
