import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inWords, say, show, UNKNOWN } from '../../components/show.ts';
import { stepFrom } from '../../components/stepping.ts';
import { DEFAULT_UNITS, KINDS, type Kind, kindOfName, type UnitChoice } from '../../components/units.ts';

const IMPERIAL: UnitChoice = { length: 'ft', wire: 'awg', temperature: 'F', torque: 'lbfin' };

describe('shown numbers', () => {
  it.each<[number, Kind, string]>([
    [5, 'current', '5 A'],
    [7.5, 'current', '7.5 A'],
    [2.1818, 'current', '2.18 A'],
    [0.1514, 'current', '0.151 A'],
    [12, 'voltage', '12.00 V'],
    [0.29, 'voltage', '0.29 V'],
    [123.24, 'voltage', '123.2 V'],
    [6.2, 'length', '6.2 m'],
    [6.234, 'length', '6.23 m'],
    [1.5, 'area', '1.5 mm²'],
    [0.75, 'area', '0.75 mm²'],
    [0.0251, 'fraction', '2.51 %'],
    [60, 'temperature', '60 °C'],
    [-0.001, 'voltage', '0.00 V'],
    [-5, 'temperature', '−5 °C'],
    [40, 'angle', '40°'],
  ])('rounds %d as a %s for its use: %s', (value, kind, text) => {
    expect(say(value, kind, DEFAULT_UNITS).replaceAll('\u00a0', ' ')).toBe(text);
  });

  it('follows the step of the input, and shows what was entered between steps', () => {
    expect(show(4, 'length', DEFAULT_UNITS, 0.1).text).toBe('4.0');
    expect(show(4.25, 'length', DEFAULT_UNITS, 0.1).text).toBe('4.25');
    expect(show(2.4384, 'length', DEFAULT_UNITS, 0.1).text).toBe('2.44');
    expect(show(0.743, 'currentPerMetre', DEFAULT_UNITS, 0.01).text).toBe('0.743');
  });

  it('speaks units in words, one and many', () => {
    expect(show(2.5, 'area', DEFAULT_UNITS).spoken).toBe('square millimetres');
    expect(show(1, 'area', DEFAULT_UNITS).spoken).toBe('square millimetre');
    expect(show(3, 'length', IMPERIAL).spoken).toBe('feet');
    expect(show(90, 'resistance', DEFAULT_UNITS).spoken).toBe('ohms');
  });

  it.each([
    [0.5, '20'],
    [1.5, '14'],
    [2.5, '12'],
    [16, '4'],
    [50, '1/0'],
  ])('names %d mm² by the AWG size that has at least its copper: %s', (areaMm2, name) => {
    expect(show(areaMm2, 'area', IMPERIAL)).toMatchObject({ text: name, unit: 'AWG' });
  });

  it('says so where a number is not known, and never shows what is no number', () => {
    for (const value of [null, undefined, Number.NaN, Number.POSITIVE_INFINITY]) {
      for (const kind of KINDS) expect(show(value, kind, DEFAULT_UNITS)).toEqual(UNKNOWN);
    }
    expect(inWords(UNKNOWN)).toBe('not known');
    fc.assert(
      fc.property(fc.double(), fc.constantFrom(...KINDS), fc.boolean(), (value, kind, imperial) => {
        expect(say(value, kind, imperial ? IMPERIAL : DEFAULT_UNITS)).not.toMatch(/NaN|Infinity|undefined|e[+-]/);
      }),
    );
  });

  it('knows what a number is by the end of its name', () => {
    const kinds = ['ratingA', 'areaMm2', 'lengthM', 'dropV', 'dropFraction', 'standbyMa', 'coilOhm', 'powerW'].map(
      kindOfName,
    );
    expect(kinds).toEqual(['current', 'area', 'length', 'voltage', 'fraction', 'milliamps', 'resistance', 'power']);
  });
});

describe('steppers', () => {
  const length = { kind: 'length', min: 0.5, max: 12, step: 0.1 } as const;

  it('goes from mark to mark and stays in range', () => {
    expect(stepFrom(3, 1, length, DEFAULT_UNITS)).toBe(3.1);
    expect(stepFrom(3.14, 1, length, DEFAULT_UNITS)).toBe(3.2);
    expect(stepFrom(3.14, -1, length, DEFAULT_UNITS)).toBe(3.1);
    expect(stepFrom(12, 1, length, DEFAULT_UNITS)).toBe(12);
    expect(stepFrom(0.5, -1, length, DEFAULT_UNITS)).toBe(0.5);
  });

  it('takes round steps in feet, and goes from size to size in AWG', () => {
    expect(show(stepFrom(3, 1, length, IMPERIAL), 'length', IMPERIAL).text).toBe('10');
    const size = { kind: 'area', min: 0.5, max: 50, step: 0.5 } as const;
    expect(show(stepFrom(2, 1, size, IMPERIAL), 'area', IMPERIAL).text).toBe('12');
    expect(show(stepFrom(2, -1, size, IMPERIAL), 'area', IMPERIAL).text).toBe('16');
  });

  it('moves, in range, to a finite number, from anywhere', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 12, noNaN: true }),
        fc.constantFrom(-1, 1),
        fc.boolean(),
        (value, by, imperial) => {
          const next = stepFrom(value, by, length, imperial ? IMPERIAL : DEFAULT_UNITS);
          expect(next).toBeGreaterThanOrEqual(0.5);
          expect(next).toBeLessThanOrEqual(12);
          if (by > 0 && value < 11.9) expect(next).toBeGreaterThan(value);
        },
      ),
    );
  });
});
