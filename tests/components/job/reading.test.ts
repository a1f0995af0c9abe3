import { describe, expect, it } from 'vitest';
import { baselineOf } from '../../../components/job/baseline.ts';
import { readReading } from '../../../components/job/reading.ts';
import { DEFAULT_UNITS } from '../../../components/units.ts';

const read = (text: string, unit: string) => {
  const answer = readReading(text, unit, DEFAULT_UNITS);
  return answer.ok ? answer.value : answer.message;
};

describe('a reading as typed', () => {
  it.each([
    ['12,4', 'V', 12.4],
    ['12.4 V', 'V', 12.4],
    ['350 mV', 'V', 0.35],
    ['350', 'mV', 350],
    ['0.35 V', 'mV', 350],
    ['24,5 mA', 'mA', 24.5],
    ['0.024 A', 'mA', 24],
    ['850 mA', 'A', 0.85],
    ['0,2', 'Ω', 0.2],
    ['200', 'mΩ', 200],
    ['15', 'min', 15],
    ['60', '°C', 60],
  ])('%s in a place for %s is %s', (text, unit, value) => {
    expect(read(text, unit)).toBeCloseTo(value as number, 9);
  });

  it('is refused in words where it is another quantity or no number', () => {
    expect(read('12 A', 'V')).toContain('a current');
    expect(read('twelve', 'V')).toContain('not a number');
    expect(read('', 'V')).toContain('Empty');
    expect(read('1,250', 'V')).toContain('two ways');
  });

  it('keeps Celsius for a sheet whatever the reader prefers', () => {
    expect(readReading('60', '°C', { ...DEFAULT_UNITS, temperature: 'F' })).toEqual({ ok: true, value: 60 });
  });
});

describe('what a job keeps of its guide', () => {
  it('holds the figures that matter, rounded, each finding once, and steps in order', () => {
    const finding = {
      rule: 'x',
      severity: 'warn',
      parts: [],
      states: [],
      message: 'Thin wire',
      why: '',
      cure: '',
    } as const;
    const kept = baselineOf({
      issue: 3,
      circuit: null,
      study: {
        figures: { 'F1.ratingA': 5, 'W2.areaMm2': 2.5000000001, 'W2.dropV': 0.3, 'K1.coilOhm': null },
        findings: [
          { ...finding, parts: [], states: [] },
          { ...finding, parts: [], states: [] },
        ],
      },
      line: [
        { kind: 'step', id: 'b' },
        { kind: 'step', id: 'a' },
      ],
    });
    expect(kept.figures).toEqual({ 'F1.ratingA': 5, 'W2.areaMm2': 2.5, 'K1.coilOhm': null });
    expect(kept.findings).toEqual(['Thin wire']);
    expect(kept.steps).toEqual(['b', 'a']);
  });
});
