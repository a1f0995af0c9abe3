import { describe, expect, it } from 'vitest';
import { variantsOf } from '../../site/scripts/search/expand.ts';

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
      'auxiliary battery',
      'second battery',
      'leisure accumulator',
    ]);
  });
  it('leaves parts of words alone', () => {
    expect(queries('grounded')).toEqual(['grounded']);
    expect(queries('unearthed')).toEqual(['unearthed']);
  });
  it('never asks more than ten questions', () => {
    const wide = [Array.from({ length: 40 }, (_, n) => `word${n}`)];
    expect(variantsOf('word0 word1', wide)).toHaveLength(10);
  });
  it('asks once for nothing', () => {
    expect(queries(' ')).toEqual(['']);
  });
});
