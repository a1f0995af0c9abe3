import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  DWELL_POINTS,
  dewPointC,
  dwellFraction,
  dwellTimeMin,
  psdRmsMPerS2,
  tapeForMass,
  temperatureGate,
  thermalMismatch,
  VIBRATION_PROFILES,
  vibrationLoad,
} from '../../../calc/index.ts';

describe('dwell on log time', () => {
  it('never falls, never leaves 0.5 to 1, and is unknown before the first point', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 1e6, noNaN: true }),
        fc.double({ min: 1, max: 10, noNaN: true }),
        (t, k) => {
          const now = dwellFraction({ timeMin: t }).fraction!;
          const later = dwellFraction({ timeMin: t * k }).fraction!;
          expect(now).toBeGreaterThanOrEqual(0.5);
          expect(later).toBeGreaterThanOrEqual(now);
          expect(later).toBeLessThanOrEqual(1);
        },
      ),
    );
    expect(dwellFraction({ timeMin: 19.99 })).toEqual({ fractionAtMost: 0.5, flag: 'unknown, no load' });
  });

  it('is not the straight line over plain time', () => {
    expect(dwellFraction({ timeMin: 60 }).fraction).toBeCloseTo(0.603, 3);
    expect(0.5 + (0.4 * 40) / 1420).toBeCloseTo(0.511, 3);
  });

  it('time and fraction are each the other backwards, and the points are hit exactly', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 1, noNaN: true }), (fraction) => {
        expect(dwellFraction({ timeMin: dwellTimeMin({ fraction }) }).fraction).toBeCloseTo(fraction, 9);
      }),
    );
    for (const { timeMin, fraction } of DWELL_POINTS) expect(dwellFraction({ timeMin }).fraction).toBe(fraction);
    expect(() => dwellTimeMin({ fraction: 0.4 })).toThrow(/expected 0.5 to 1/);
  });
});

describe('random vibration', () => {
  it('a level profile is width times height, whatever points lie on it', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.double({ min: 5, max: 2000, noNaN: true }), { minLength: 2, maxLength: 8 }),
        (fs) => {
          const frequencies = fs.toSorted((a, b) => a - b);
          const points = frequencies.map((frequencyHz) => ({ frequencyHz, psdM2PerS4Hz: 3 }));
          const width = frequencies.at(-1)! - frequencies[0]!;
          expect(psdRmsMPerS2({ points })).toBeCloseTo(Math.sqrt(3 * width), 6);
        },
      ),
    );
  });

  it('slope -1 has its own formula, and slopes beside it run into it', () => {
    const area = (p2: number) =>
      psdRmsMPerS2({
        points: [
          { frequencyHz: 10, psdM2PerS4Hz: 10 },
          { frequencyHz: 100, psdM2PerS4Hz: p2 },
        ],
      }) ** 2;
    const halved = [
      { frequencyHz: 10, psdM2PerS4Hz: 2 },
      { frequencyHz: 20, psdM2PerS4Hz: 1 },
    ];
    expect(psdRmsMPerS2({ points: halved }) ** 2).toBeCloseTo(20 * Math.LN2, 9);
    expect(area(1)).toBeCloseTo(100 * Math.LN10, 9);
    expect(area(1 + 1e-12)).toBeCloseTo(100 * Math.LN10, 6);
  });

  it('the general formula agrees with a fine sum', () => {
    const points = VIBRATION_PROFILES.find(({ id }) => id === 'car body')!.points;
    let sum = 0;
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1]!, points[i]!];
      const slope = Math.log(b.psdM2PerS4Hz / a.psdM2PerS4Hz) / Math.log(b.frequencyHz / a.frequencyHz);
      const steps = 20000;
      const df = (b.frequencyHz - a.frequencyHz) / steps;
      for (let k = 0; k < steps; k++)
        sum += a.psdM2PerS4Hz * ((a.frequencyHz + (k + 0.5) * df) / a.frequencyHz) ** slope * df;
    }
    expect(psdRmsMPerS2({ points })).toBeCloseTo(Math.sqrt(sum), 6);
  });

  it.each(VIBRATION_PROFILES)('recalled points of "$id" give the rms the standard prints', (profile) => {
    expect(Math.abs(psdRmsMPerS2(profile) - profile.printedRmsMPerS2)).toBeLessThanOrEqual(0.05);
  });

  it('refuses falling frequencies, zero density, a single point', () => {
    const at = (...pairs: [number, number][]) => ({
      points: pairs.map(([frequencyHz, psdM2PerS4Hz]) => ({ frequencyHz, psdM2PerS4Hz })),
    });
    expect(() => psdRmsMPerS2(at([10, 1]))).toThrow(/two or more/);
    expect(() => psdRmsMPerS2(at([20, 1], [10, 1]))).toThrow(/expected rising/);
    expect(() => psdRmsMPerS2(at([10, 1], [20, 0]))).toThrow(/expected above 0/);
  });

  it('the force is mass times three sigma, and over an area it is a stress', () => {
    const { forceN, stressKpa } = vibrationLoad({ massKg: 0.1, rmsMPerS2: 27.78, areaCm2: 6 });
    expect(forceN).toBeCloseTo(8.334, 9);
    expect(stressKpa).toBeCloseTo(13.89, 9);
  });
});

describe('tape, temperature, growth', () => {
  it('twice the mass wants twice the length, twice the width half of it', () => {
    const one = tapeForMass({ massKg: 0.3, widthMm: 12 }).lengthMm;
    expect(tapeForMass({ massKg: 0.6, widthMm: 12 }).lengthMm).toBeCloseTo(2 * one, 9);
    expect(tapeForMass({ massKg: 0.3, widthMm: 24 }).lengthMm).toBeCloseTo(one / 2, 9);
  });

  it('gate borders: refuse below 10 and above 44, warn below 18', () => {
    const at = (surfaceC: number) => temperatureGate({ surfaceC });
    expect([9.99, 10, 17.99, 18, 44, 44.01].map(at)).toEqual(['refuse', 'warn', 'warn', 'ok', 'ok', 'refuse']);
  });

  it('like materials do not grow apart; growth has no sign', () => {
    const same = { lengthMm: 1000, deltaK: 60, alpha1PerK: 12e-6, alpha2PerK: 12e-6 };
    expect(thermalMismatch(same).growthMm).toBe(0);
    const cold = thermalMismatch({ ...same, deltaK: -60, alpha1PerK: 23e-6, tapeThicknessMm: 1 });
    expect(cold.growthMm).toBeCloseTo(0.66, 9);
    expect(cold.shearStrainRatio).toBeCloseTo(0.33, 9);
  });

  it('at 100 % humidity the dew point is the air, and it falls with drier air', () => {
    expect(dewPointC({ airC: 12, humidityPercent: 100 })).toBeCloseTo(12, 9);
    expect(dewPointC({ airC: 12, humidityPercent: 50 })).toBeLessThan(dewPointC({ airC: 12, humidityPercent: 60 }));
  });
});
