import { describe, expect, it } from 'vitest';
import { variantsOf, wordsOf } from '../../site/scripts/search/expand.ts';
import { sameWord } from '../../site/scripts/search/same-word.ts';

const GROUPS = [
  ['ground', 'earth', 'chassis'],
  ['battery', 'accumulator'],
  ['auxiliary battery', 'leisure battery', 'second battery'],
];
const queries = (query: string): string[] => variantsOf(query, GROUPS).map(({ query: words }) => words);

describe('a query as the trade also says it', () => {
  it('keeps the words as typed first', () => {
    expect(queries('  wiper   motor ')).toEqual(['wiper motor']);
  });
  it('puts the group’s other words in place', () => {
    expect(queries('bad Earth')).toEqual(['bad Earth', 'bad ground', 'bad chassis']);
  });
  it('exchanges the longest phrase first', () => {
    expect(queries('leisure battery')).toEqual([
      'leisure battery',
      '"auxiliary battery"',
      '"second battery"',
      'leisure accumulator',
    ]);
  });
  it('means the words of a phrase together where they are the whole question', () => {
    expect(queries('auxiliary battery')).toContain('"leisure battery"');
    expect(queries('auxiliary battery fuse')).toContain('leisure battery fuse');
  });
  it('leaves parts of words alone', () => {
    expect(queries('grounded')).toEqual(['grounded']);
    expect(queries('unearthed')).toEqual(['unearthed']);
  });
  it('never asks more than six questions', () => {
    const wide = [Array.from({ length: 40 }, (_, n) => `word${n}`)];
    expect(variantsOf('word0 word1', wide)).toHaveLength(6);
  });
  it('asks once for nothing', () => {
    expect(queries(' ')).toEqual(['']);
  });
});

describe('a word that is found', () => {
  it.each([
    ['lamps', 'lamp.'],
    ['batteries', 'battery'],
    ['drilling', 'drill'],
    ['win', 'winch'],
    ['87a', '87a,'],
  ])('%s is found in %s', (asked, found) => expect(sameWord(asked, found)).toBe(true));
  it.each([
    ['hoist', 'h'],
    ['hoist', 'hold'],
    ['relais', 'rear'],
    ['86', '8'],
    ['', 'x'],
  ])('%s is not found in %s', (asked, found) => expect(sameWord(asked, found)).toBe(false));
  it('takes a query apart as the index does', () => {
    expect(wordsOf('Step-light, 2.5 mm²!  step-light')).toEqual(['step-light', '2.5', 'mm²']);
  });
});
