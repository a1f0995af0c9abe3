import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromHash, readKept, toHash, unitsFrom, writeKept } from '../../components/runtime/keep.ts';
import { sentenceOf } from '../../components/runtime/speak.ts';
import { DEFAULT_UNITS } from '../../components/unit-choice.ts';

describe('a link', () => {
  it('names only what changed, and nothing where nothing did', () => {
    expect(toHash({})).toBe('');
    expect(toHash({ feedRunM: 8, load: 'motor' })).toBe('#feedRunM=8&load=motor');
  });

  it('gives back what it was given, whatever the words', () => {
    const name = fc.stringMatching(/^[a-z][A-Za-z0-9]{0,12}$/).filter((each) => !(each in Object.prototype));
    fc.assert(
      fc.property(
        fc.dictionary(name, fc.oneof(fc.double({ noNaN: true }), fc.string({ unit: 'grapheme' })), { minKeys: 1 }),
        (kept) => {
          const back = fromHash(toHash(kept));
          expect(back).toEqual(Object.fromEntries(Object.entries(kept).map(([key, value]) => [key, String(value)])));
        },
      ),
    );
  });

  it('takes an anchor for an anchor, and drops what it cannot read', () => {
    expect(fromHash('#fit-the-relay')).toBeNull();
    expect(fromHash('')).toBeNull();
    expect(fromHash('#a=1&b=%E0%A4%A&=2&c')).toEqual({ a: '1' });
  });
});

describe('what the device keeps', () => {
  it('is nothing where storage is absent, and writing it is no fault', () => {
    expect(readKept('loomleaf:1:values:/')).toBeNull();
    expect(() => writeKept('loomleaf:1:values:/', { a: 1 })).not.toThrow();
  });

  it('holds units only as far as they are a choice', () => {
    expect(unitsFrom({ length: 'ft', wire: 'furlong', extra: 1 }, DEFAULT_UNITS)).toEqual({
      ...DEFAULT_UNITS,
      length: 'ft',
    });
    expect(unitsFrom(null, DEFAULT_UNITS)).toEqual(DEFAULT_UNITS);
  });
});

describe('what is said of a change', () => {
  const changes = (...list: [string, string, string][]) =>
    new Map(list.map(([name, was, now]) => [name, { was, now }]));

  it('names answer, value and what it was', () => {
    expect(sentenceOf(changes(['Fuse F1', '5 amps', '7.5 amps']))).toBe('Fuse F1: 7.5 amps, was 5 amps.');
  });

  it('is nothing where it came back to what it was', () => {
    expect(sentenceOf(changes(['Fuse F1', '5 amps', '5 amps']))).toBe('');
  });

  it('reads out three and counts the rest', () => {
    const many = changes(['A', '1', '2'], ['B', '1', '2'], ['C', '1', '2'], ['D', '1', '2'], ['E', '1', '2']);
    expect(sentenceOf(many)).toBe('A: 2, was 1. B: 2, was 1. C: 2, was 1. 2 more answers changed.');
  });
});
