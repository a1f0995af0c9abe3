import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  type NeutralFault,
  type NeutralFile,
  type NeutralSingleFaults,
  readPattern,
} from '../../../calc/circuit/neutral.ts';
import { compareSingleFaults, compareStates } from '../../../site/conformance/circuits.ts';
import { judgePattern, judgePlanted } from '../../../site/conformance/planted.ts';

const rows = <T>(name: string): T =>
  JSON.parse(readFileSync(new URL(`rows/${name}.json`, import.meta.url), 'utf8')) as T;
const file = rows<NeutralFile>('patterns');
const { faults } = rows<{ faults: NeutralFault[] }>('faults');
const study = rows<NeutralSingleFaults>('singlefaults');
const patternOf = (id: string) => file.patterns.find((pattern) => pattern.id === id)!;
const wrongOf = (results: { label: string; wrong: string[] }[]) => results.filter((one) => one.wrong.length > 0);

describe.each(file.patterns)('$id', (pattern) => {
  test('every state as solved by another program', () => {
    expect(wrongOf(compareStates(file, pattern))).toEqual([]);
  });

  test('the rules say what they must of the sound circuit, and no more', () => {
    expect(judgePattern(file, pattern)).toEqual({ missing: [], extra: [] });
  });
});

test.each(study.patterns)('single faults of $pattern', ({ pattern, faults }) => {
  expect(wrongOf(compareSingleFaults(file, patternOf(pattern), faults))).toEqual([]);
});

test.each(faults)('planted fault $id: $kind in $pattern', (fault) => {
  expect(judgePlanted(file, patternOf(fault.pattern), fault)).toEqual({ missing: [], extra: [] });
});

describe('the comparison can fail', () => {
  const pattern = patternOf('relay-low-side');

  test('a changed answer is seen', () => {
    const truthTable = pattern.truthTable!.map((row) => (row.n === 3 ? { ...row, loadV: { comp: 13.2 } } : row));
    expect(wrongOf(compareStates(file, { ...pattern, truthTable }))).toEqual([
      { label: 'state 3', wrong: [expect.stringContaining('comp volts expected 13.2')] },
    ]);
  });

  test('a changed and a missing single fault are seen', () => {
    const given = study.patterns.find((one) => one.pattern === pattern.id)!.faults;
    const [first, ...others] = given;
    const wrong = wrongOf(compareSingleFaults(file, pattern, [{ ...others[0]!, changed: [] }, ...others.slice(1)]));
    expect(wrong.map((one) => one.label)).toEqual([
      `${others[0]!.fault} ${others[0]!.id}`,
      `${first!.fault} ${first!.id}`,
    ]);
  });

  test('a fault that was not planted is missed', () => {
    const fault = faults.find((one) => one.pattern === pattern.id)!;
    expect(judgePlanted(file, pattern, { ...fault, edit: {} }).missing).toHaveLength(1);
  });

  test('a finding that nobody named is too much', () => {
    const fault = faults.find((one) => one.id === 'x01')!;
    const verdict = judgePlanted(file, pattern, { ...fault, alsoFound: [], expect: { rule: 'C05', elements: ['w2'] } });
    expect(verdict.extra.length).toBeGreaterThan(0);
  });
});

describe('what the format does not know is refused', () => {
  const pattern = patternOf('buzzer');
  test.each([
    ['an unknown type', { type: 'capacitor', id: 'c1' }, /c1: unexpected type "capacitor"/],
    [
      'a field that is missing',
      { type: 'fuse', id: 'f9', a: 's', b: 'c', ratingA: 3 },
      /f9: unexpected ohms undefined/,
    ],
    [
      'a wire without thickness',
      { type: 'wire', id: 'w9', a: 's', b: 'c', areaMm2: 0, lengthM: 1 },
      /w9: unexpected areaMm2 0/,
    ],
  ])('%s', (_, element, message) => {
    expect(() => readPattern(file, { ...pattern, elements: [...pattern.elements, element] })).toThrow(message);
  });
});
