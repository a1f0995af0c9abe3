import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AWG_SIZES, awg, awgName } from '../../calc/index.ts';
import { show } from '../../components/show.ts';
import { parseTyped } from '../../components/typed.ts';
import { DEFAULT_UNITS, KINDS, type Kind, type UnitChoice } from '../../components/units.ts';

const IMPERIAL: UnitChoice = { length: 'ft', wire: 'awg', temperature: 'F', torque: 'lbfin' };

const value = (text: string, kind: Kind, units = DEFAULT_UNITS): number => {
  const typed = parseTyped(text, kind, units);
  if (!typed.ok) throw new Error(`"${text}" refused: ${typed.message}`);
  return typed.value;
};
const message = (text: string, kind: Kind, units = DEFAULT_UNITS): string => {
  const typed = parseTyped(text, kind, units);
  return typed.ok ? `taken as ${typed.value}` : typed.message;
};

describe('typed entries', () => {
  it.each<[string, Kind, number]>([
    ['2,5', 'length', 2.5],
    ['2.5', 'length', 2.5],
    ['2.5 m', 'length', 2.5],
    ['2.5m', 'length', 2.5],
    [' 250 cm ', 'length', 2.5],
    ['2500 mm', 'length', 2.5],
    ['8 ft', 'length', 2.4384],
    ['8\' 6"', 'length', 2.5908],
    ['8 ft 6 in', 'length', 2.5908],
    ['1/2 in', 'length', 0.0127],
    ['2 1/2', 'length', 2.5],
    ['2½ ft', 'length', 0.762],
    ['.5', 'length', 0.5],
    ['5.', 'length', 5],
    ['0,125', 'length', 0.125],
    ['1.234', 'length', 1.234],
    ['1.5 mm2', 'area', 1.5],
    ['1,5 mm²', 'area', 1.5],
    ['300 mA', 'current', 0.3],
    ['0.3 A', 'milliamps', 300],
    ['-5', 'temperature', -5],
    ['−5 °C', 'temperature', -5],
    ['41 °F', 'temperature', 5],
    ['3 %', 'fraction', 0.03],
    ['10 mΩ', 'milliohms', 10],
    ['0.01 ohm', 'milliohms', 10],
    ['90 Ω', 'resistance', 90],
    ['1.2 kW', 'power', 1200],
    ['35 in-lb', 'torque', 3.954],
    ['1/4 lb', 'grams', 113.398],
    ['2 h', 'minutes', 120],
    ['60 mph', 'speed', 96.561],
  ])('reads "%s" as a %s of %d', (text, kind, expected) => {
    expect(value(text, kind)).toBeCloseTo(expected, 3);
  });

  it.each(AWG_SIZES.map((gauge) => [awgName({ gaugeAwg: gauge }), gauge] as const))('reads %s AWG', (name, gauge) => {
    expect(value(`${name} AWG`, 'area')).toBe(awg({ gaugeAwg: gauge }).areaMm2);
    expect(value(`awg ${name}`, 'area')).toBe(awg({ gaugeAwg: gauge }).areaMm2);
    expect(value(name, 'area', IMPERIAL)).toBe(awg({ gaugeAwg: gauge }).areaMm2);
  });

  it('takes a bare number in the unit shown', () => {
    expect(value('8', 'length', IMPERIAL)).toBeCloseTo(2.4384, 9);
    expect(value('14', 'area')).toBe(14);
    expect(value('50', 'temperature', IMPERIAL)).toBeCloseTo(10, 9);
  });

  it.each<[string, Kind, string]>([
    ['', 'length', 'Empty. Type a length, such as 2.5 m.'],
    ['abc', 'length', '"abc" is not a number. Type it like 2.5 m.'],
    ['NaN', 'length', '"NaN" is not a number. Type it like 2.5 m.'],
    ['Infinity', 'current', '"Infinity" is not a number. Type it like 2.5 A.'],
    ['1,234.5.6', 'length', '"1,234.5.6" has more than one decimal sign. Type it plainly, like 1234.5.'],
    ['1,234', 'length', '"1,234" can be read two ways. Type 1234 or 1.234.'],
    ["1'000", 'length', '"1\'000" can be read two ways. Type it plainly, like 1234.5.'],
    ['5 A', 'length', '"5 A" is a current; this needs a length, such as 2.5 m.'],
    ['12 V', 'current', '"12 V" is a voltage; this needs a current, such as 2.5 A.'],
    ['3 furlong', 'length', '"furlong" is not a unit here. Use m, cm, mm, ft or in, such as 2.5 m.'],
    ['1e3', 'length', '"e3" is not a unit here. Use m, cm, mm, ft or in, such as 2.5 m.'],
    ['1/0', 'length', '"1/0" divides by nothing.'],
    ['2.5', 'count', '2.5 is not a whole number.'],
    ['45 AWG', 'area', '45 is not an AWG size. Sizes run from 40, thin, to 1 and 1/0 to 4/0, thick.'],
    ['6\' 14"', 'length', '14 inches after feet: type less than 12.'],
    ['9'.repeat(400), 'length', 'That number is too large to use.'],
  ])('refuses "%s" as %s and says why', (text, kind, expected) => {
    expect(message(text, kind)).toBe(expected);
  });

  it('never takes text as anything but a finite number, whatever is typed', () => {
    const near = fc.stringMatching(/^[-+ 0-9.,/½'"a-zA-ZΩ²°%#]{0,16}$/);
    fc.assert(
      fc.property(fc.oneof(fc.string(), near), fc.constantFrom(...KINDS), fc.boolean(), (text, kind, imperial) => {
        const typed = parseTyped(text, kind, imperial ? IMPERIAL : DEFAULT_UNITS);
        if (typed.ok) expect(Number.isFinite(typed.value)).toBe(true);
        else expect(typed.message).toMatch(/^\S.*\S$/s);
      }),
      { numRuns: 2000 },
    );
  });

  it('reads back what it shows, to the digits shown, in every kind and unit', () => {
    const kinds = KINDS.filter((kind) => kind !== 'area' && kind !== 'count');
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.double({ min: 0.01, max: 900, noNaN: true }),
        fc.boolean(),
        (kind, amount, imperial) => {
          const units = imperial ? IMPERIAL : DEFAULT_UNITS;
          const shown = show(amount, kind, units);
          const back = show(value(`${shown.text} ${shown.unit}`, kind, units), kind, units);
          expect(back).toEqual(shown);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('never names a metric wire by an AWG size with less copper', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 100, noNaN: true }), (areaMm2) => {
        const shown = show(areaMm2, 'area', IMPERIAL);
        expect(value(`${shown.text} ${shown.unit}`, 'area', IMPERIAL)).toBeGreaterThanOrEqual(areaMm2 * (1 - 1e-6));
      }),
    );
  });
});
