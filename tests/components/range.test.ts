import fc from 'fast-check';
import { expect, it } from 'vitest';
import { rangeFault, rangeInWords, snapped } from '../../components/range.ts';
import { parseTyped } from '../../components/typed.ts';
import { DEFAULT_UNITS, type Kind, type UnitChoice } from '../../components/units.ts';

const IMPERIAL: UnitChoice = { length: 'ft', wire: 'awg', temperature: 'F', torque: 'lbfin' };

it('is said in the unit of the reader, rounded inwards', () => {
  const run = { kind: 'length', min: 0.5, max: 12, step: 0.1 } as const;
  expect(rangeInWords(run, DEFAULT_UNITS)).toBe('0.5 to 12.0\u00a0m');
  // 12 m are 39.37 ft, of which 39.4 would be too much
  expect(rangeInWords(run, IMPERIAL)).toBe('1.65 to 39.37\u00a0ft');
  expect(rangeInWords({ kind: 'temperature', min: -20, max: 85 }, IMPERIAL)).toBe('−4 to 185\u00a0°F');
  // 50 mm² lie between 1 AWG and 1/0 AWG: what may be typed is the thinner
  expect(rangeInWords({ kind: 'area', min: 0.5, max: 50 }, IMPERIAL)).toBe('20 to 1 AWG');
});

it('keeps the author in his own unit, and his rule about other entries in any', () => {
  const field = { name: 'eyeM', label: 'Eye height', kind: 'length', default: 1.6, min: 0.5, max: 2.2 } as const;
  const error = 'Eye must be 0.5 to 2.2 m and below the LED. Seated about 1.2.';
  expect(rangeFault({ ...field, error }, DEFAULT_UNITS)).toBe(error);
  expect(rangeFault({ ...field, error }, IMPERIAL)).toMatch(/^Eye must be 1\.6\d to 7\.2\d*\sft and below the LED\.$/);
  const advice = 'Eye must be 0.5 to 2.2 m. Measure from the floor.';
  expect(rangeFault({ ...field, error: advice }, IMPERIAL)).toMatch(/\sft\. Measure from the floor\.$/);
  expect(rangeFault({ ...field, error: 'Type the height.' }, IMPERIAL)).toMatch(/^Eye height must be .*\sft\.$/);
});

it('has ends that may be typed, whatever the range and the unit', () => {
  const kind = fc.constantFrom<Kind>('length', 'temperature', 'torque', 'current', 'voltage', 'millimetres', 'charge');
  const number = fc.double({ min: -40, max: 2000, noNaN: true }).map((value) => Number(value.toPrecision(2)));
  fc.assert(
    fc.property(kind, number, number, fc.constantFrom(DEFAULT_UNITS, IMPERIAL), (kind, one, other, units) => {
      const [min, max] = [Math.min(one, other), Math.max(one, other)];
      fc.pre(max - min > 0.2 * Math.max(Math.abs(min), Math.abs(max)) + 1);
      const [low, high] = rangeInWords({ kind, min, max }, units).split(' to ');
      for (const end of [low!, high!.split('\u00a0')[0]!]) {
        const typed = parseTyped(end, kind, units);
        const value = typed.ok ? snapped(typed.value, { min, max }) : Number.NaN;
        expect(value >= min && value <= max, `${low} to ${high}: ${end}`).toBe(true);
      }
    }),
    { seed: 5, numRuns: 500 },
  );
});
