import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseTyped } from '../../components/typed.ts';
import { nextTyped } from '../../components/typing-ahead.ts';
import type { UnitChoice } from '../../components/units.ts';

const METRIC: UnitChoice = { length: 'm', wire: 'mm2', temperature: 'C', torque: 'Nm' };
const FEET: UnitChoice = { ...METRIC, length: 'ft' };
const AWG: UnitChoice = { ...METRIC, wire: 'awg' };
const run = { kind: 'length', min: 0.5, max: 12, step: 0.5 } as const;

it('goes on from what stands there, one digit or the first behind the point, inside the range', () => {
  expect(nextTyped('', run, METRIC)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  // what lies on a step first; what stands there already is no change
  expect(nextTyped('1', run, METRIC)).toEqual([10, 11, 12, 1.5, 1.1, 1.2, 1.3, 1.4, 1.6, 1.7, 1.8, 1.9]);
  expect(nextTyped('3', run, METRIC)).toEqual([3.5, 3.1, 3.2, 3.3, 3.4, 3.6, 3.7, 3.8, 3.9]);
  expect(nextTyped('3,', run, METRIC)).toEqual(nextTyped('3', run, METRIC));
  expect(nextTyped('0', run, METRIC)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 0.5, 0.6, 0.7, 0.8, 0.9]);
  expect(nextTyped('3.5', run, METRIC)).toEqual([]);
});

it('goes on where there is no end to the range', () => {
  expect(nextTyped('3', { kind: 'length', step: 1 }, METRIC)).toEqual([30, 31, 32, 33, 34, 35, 36, 37, 38, 39]);
});

it('follows the step: whole numbers have no point, a fine step two places', () => {
  expect(nextTyped('2', { ...run, step: 1 }, METRIC)).toEqual([]);
  expect(nextTyped('0.2', { ...run, min: 0, step: 0.05 }, METRIC).slice(0, 1)).toEqual([0.25]);
});

it('reads the next text as the field will, in the unit shown', () => {
  const typed = parseTyped('8', 'length', FEET);
  expect(nextTyped('', run, FEET)).toContain(typed.ok && typed.value);
});

it('leaves words, fractions and signs to the reader', () => {
  for (const text of ['2 m', '1/2', '-3', '8 ft', '½', 'x']) expect(nextTyped(text, run, METRIC)).toEqual([]);
});

it('never leaves the range, says a value once, and never what stands there', () => {
  const text = fc.stringMatching(/^[0-9]{0,3}([.,][0-9]{0,2})?$/);
  fc.assert(
    fc.property(text, fc.constantFrom(0.05, 0.1, 0.5, 1, 5), fc.constantFrom(METRIC, FEET), (text, step, units) => {
      const values = nextTyped(text, { ...run, step }, units);
      expect(new Set(values).size).toBe(values.length);
      const now = parseTyped(text, 'length', units);
      for (const value of values) {
        expect(value).toBeGreaterThanOrEqual(run.min);
        expect(value).toBeLessThanOrEqual(run.max);
        if (now.ok) expect(value).not.toBe(now.value);
      }
    }),
    { seed: 3 },
  );
});

it('offers sizes of wire where the reader counts in AWG', () => {
  const values = nextTyped('1', { kind: 'area', min: 0.5, max: 50, step: 0.5 }, AWG);
  const sizes = ['10', '11', '12', '13', '14', '15', '16', '17', '18', '19'].map((text) => {
    const typed = parseTyped(text, 'area', AWG);
    return typed.ok ? typed.value : undefined;
  });
  expect(values.length).toBeGreaterThan(0);
  for (const value of values) expect(sizes).toContain(value);
});
