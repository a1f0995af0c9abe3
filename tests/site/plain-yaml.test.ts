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

describe('the quick reader of YAML', () => {
  it('reads what content is made of', () => {
    const text = [
      '# Remark',
      'title: Lamp on a cart, the second',
      "number: '041'",
      'issue: 12',
      'updated: 2026-11-25',
      'summary: "One lamp: one switch"',
      'draft: true',
      'lengths: [1.5, -2]',
      'vehicles: [hand-cart, panel-van]',
      'circuit:',
      '  none: Nothing is wired, so there is',
      '    no circuit.',
      'tools:',
      '  - Crimp tool',
      "  - 'Meter: any'",
      'parts:',
      '  # The one fuse',
      "  F1: { kind: fuse, join: { '+': S1 } }",
      'questions:',
      '- id: q1',
      '  options:',
      '    - text: Yes',
      '      right: true',
      '    - text: No',
      'why: >-',
      '  A text that runs',
      '  on: two lines.',
      '',
    ].join('\n');
    expect(readPlainYaml(text)).toEqual(full(text));
    expect(readPlainYaml(text)).toMatchObject({
      number: '041',
      issue: 12,
      summary: 'One lamp: one switch',
      draft: true,
      lengths: [1.5, -2],
      circuit: { none: 'Nothing is wired, so there is no circuit.' },
      tools: ['Crimp tool', 'Meter: any'],
      parts: { F1: { kind: 'fuse', join: { '+': 'S1' } } },
      questions: [{ id: 'q1', options: [{ text: 'Yes', right: true }, { text: 'No' }] }],
      why: 'A text that runs on: two lines.',
    });
  });

  it.each([
    'a: True',
    'a: 0x1F',
    'a: 1e3',
    'a: 041',
    'a: Null',
    'a:',
    'a: x # remark',
    'a: b: c',
    'a: { b: }',
    'a: { b: c, b: d }',
    'a: [b,]',
    'a: [b',
    'a: |\n  b',
    'a: >-\n  b\n\n  c',
    'a: >-\n  b\n   c',
    'a: b\n\n  c',
    'a: b\na: c',
    'a: *b',
    'a:\n- - b',
    'a:\n  - b\n - c',
    'a:\n  b: c\n d: e',
    ' a: b\nc: d',
    '- a',
    'a: "x\\n"',
    "a: 'it''s'",
    'a: b\r\nc: d',
  ])('leaves %j to the full parser', (text) => {
    expect(readPlainYaml(text)).toBeUndefined();
  });

  it('agrees with the full parser on every file of the demonstration, and reads most of them', () => {
    const texts = readdirSync(join(ROOT, 'content'), { recursive: true, encoding: 'utf8' }).flatMap((name) => {
      if (!/\.(mdx|yaml)$/.test(name)) return [];
      const text = readFileSync(join(ROOT, 'content', name), 'utf8');
      return [{ name, text: name.endsWith('.mdx') ? frontMatterIn(text)!.text : text }];
    });
    const read = texts.filter(({ name, text }) => {
      const plain = readPlainYaml(text);
      if (plain !== undefined) expect(plain, name).toEqual(full(text));
      return plain !== undefined;
    });
    expect(read.length / texts.length).toBeGreaterThan(0.9);
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
    const piece = fc.oneof(
      fc
        .tuple(fc.constantFrom('a', 'b', 'tools', 'A', 'a-b', '- a', '-  b'), fc.array(word, { maxLength: 4 }))
        .map(([key, words]) => `${key}: ${words.join('')}`),
      fc.constantFrom(
        'a:',
        'tools:',
        '',
        ' ',
        '---',
        '# remark',
        'a: >-',
        '- >-',
        '-',
        '- a:',
        "a: 'x",
        "y'",
        'a: "x',
        'y"',
      ),
      fc.array(word, { maxLength: 3 }).map((words) => `- ${words.join('')}`),
      fc.array(word, { maxLength: 4 }).map((words) => words.join('')),
      fc.array(word, { maxLength: 3 }).map((words) => `tools: [${words.join(', ')}]`),
      fc.array(word, { maxLength: 3 }).map((words) => `b: { ${words.map((each, i) => `k${i}: ${each}`).join(', ')} }`),
    );
    const line = fc
      .tuple(fc.constantFrom('', '', '', '  ', '  ', '    ', ' '), piece)
      .map(([left, said]) => left + said);
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 6 }), (lines) => {
        const text = lines.join('\n');
        const plain = readPlainYaml(text);
        if (plain !== undefined) expect(plain, JSON.stringify(text)).toEqual(full(text));
      }),
      { numRuns: 20_000 },
    );
  });
});
