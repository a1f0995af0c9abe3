import { describe, expect, it } from 'vitest';
import { sourcesOf } from '../../site/parts/sources.ts';

const seen = { source: 'Book A', at: 'table 2', read: 'seen' };
const TABLES = {
  '../calc/tables/wire-sizes.ts': {
    WIRE_AREAS: [
      { areaMm2: 1, ...seen },
      { areaMm2: 2, ...seen },
      { areaMm2: 3, ...seen, read: 'memory' },
    ],
    factors: { warm: { k: 1.2, source: 'Book B', at: '-', read: 'seen' } },
    helper: () => 1,
  },
};

describe('the list of sources', () => {
  it('groups the rows of a table by place and by how they were read', () => {
    const [a, b] = sourcesOf(TABLES, {});
    expect(a).toEqual({
      source: 'Book A',
      id: 'source-1',
      taken: [
        { table: 'wire areas', topic: 'wire-sizes', at: 'table 2', read: 'seen', rows: 2 },
        { table: 'wire areas', topic: 'wire-sizes', at: 'table 2', read: 'memory', rows: 1 },
      ],
      checks: [],
    });
    expect(b?.taken).toEqual([{ table: 'factors', topic: 'wire-sizes', at: '-', read: 'seen', rows: 1 }]);
  });

  it('counts the published rows that stand on a source, and lists one that only checks', () => {
    const rows = {
      '../tests/calc/rows/voltage_drop.json': [{ id: 'x', ...seen }, { id: 'y', ...seen }, { id: 'no citation' }],
      '../tests/calc/rows/fuses.json': [{ id: 'z', source: 'Book C', at: 'p. 1', read: 'seen' }],
      '../tests/calc/rows/patterns.json': { patterns: [seen] },
    };
    const sources = sourcesOf(TABLES, rows);
    expect(sources.map(({ source }) => source)).toEqual(['Book A', 'Book B', 'Book C']);
    expect(sources[0]?.checks).toEqual([{ kind: 'voltage drop', at: 'table 2', read: 'seen', rows: 2 }]);
    expect(sources[2]?.taken).toEqual([]);
  });
});
