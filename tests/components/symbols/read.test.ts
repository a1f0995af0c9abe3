import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readSymbol } from '../../../components/symbols/read.ts';

const svg = (inside: string): string => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 48 48">${inside}</svg>`;
const folder = new URL('../../../components/symbols/svg/', import.meta.url);

describe('reading a symbol', () => {
  it('gives the shapes without the frame', () => {
    expect(readSymbol('line', svg('<path d="M24 0v48" stroke-width="4"/>'))).toBe(
      '<path d="M24 0v48" stroke-width="4"/>',
    );
  });

  it.each([
    ['a script', svg('<script>go()</script>'), '<script> is not allowed'],
    ['a handler', svg('<path d="M0 0" onclick="go()"/>'), 'attribute onclick is not allowed'],
    ['a style', svg('<path d="M0 0" style="fill:red"/>'), 'attribute style is not allowed'],
    ['an entity', svg('<path d="M0 0&#10;"/>'), '"&" is not read here'],
    ['words', svg('fuse'), 'text "fuse" has no place here'],
    ['another frame', '<svg viewBox="0 0 24 24"><path d="M0 0"/></svg>', 'the viewBox must be "0 0 48 48"'],
    ['nothing', svg(''), 'draws nothing'],
    ['a broken file', '<svg viewBox="0 0 48 48"><path', 'not a well-formed SVG file'],
  ])('refuses %s and names the symbol', (_, file, message) => {
    expect(() => readSymbol('odd', file)).toThrow(`Symbol "odd": ${message}`);
  });

  it('accepts every symbol of the project', () => {
    const files = readdirSync(folder);
    expect(files.length).toBeGreaterThan(40);
    for (const file of files) expect(readSymbol(file, readFileSync(new URL(file, folder), 'utf8'))).toContain('<');
  });
});
