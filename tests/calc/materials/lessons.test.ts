import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleCurve, GROUND_STEPS, judgeGround, PAD_LIFTS_ABOVE_C, padFit, padHeating } from '../../../calc/index.ts';

const WATER = { dispersiveMnPerM: 21.8, polarMnPerM: 51 };

describe('contact angle over surface energy', () => {
  it('never rises with energy, and ends at 0 once it spreads', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (polarFraction) => {
        const curve = angleCurve({ liquid: WATER, polarFraction, fromMjPerM2: 1, toMjPerM2: 200 });
        for (let i = 1; i < curve.length; i++) {
          expect(curve[i]!.angleDeg).toBeLessThanOrEqual(curve[i - 1]!.angleDeg + 1e-9);
          expect(curve[i]!.spreads).toBe(curve[i]!.angleDeg === 0);
        }
      }),
    );
  });

  it('polypropylene beads, clean metal does not', () => {
    const [low, high] = angleCurve({ liquid: WATER, polarFraction: 0, fromMjPerM2: 30.1, toMjPerM2: 800, points: 2 });
    expect(low!.angleDeg).toBeCloseTo(107.2, 1);
    expect(high!.spreads).toBe(true);
  });
});

describe('heat in a pad', () => {
  const pad = { tipC: 350, heatCapacityJPerK: 0.1, contactWPerK: 0.1, lossWPerK: 0.02, liquidusC: 183 };

  it('starts cold, ends where tip and loss balance, and passes flow at the time it says', () => {
    expect(padHeating({ ...pad, timeS: 0 }).padC).toBe(20);
    const { flowsAfterS, finalC } = padHeating({ ...pad, timeS: 1 });
    expect(finalC).toBeCloseTo((0.1 * 350 + 0.02 * 20) / 0.12, 9);
    expect(padHeating({ ...pad, timeS: flowsAfterS! }).padC).toBeCloseTo(183 + 30, 6);
  });

  it('a bigger tip flows sooner than a hotter one, and a hotter one lifts pads', () => {
    const bigger = padHeating({ ...pad, timeS: 2, contactWPerK: 0.2 });
    const hotter = padHeating({ ...pad, timeS: 2, tipC: 400 });
    expect(bigger.flowsAfterS).toBeLessThan(hotter.flowsAfterS!);
    expect(padHeating({ ...pad, timeS: 10, tipC: 400 })).toMatchObject({ verdict: 'overheated' });
    expect(padHeating({ ...pad, timeS: 10, tipC: 400 }).padC).toBeGreaterThan(PAD_LIFTS_ABOVE_C);
  });

  it('a needle on a heavy wire never flows, however long', () => {
    const needle = padHeating({ ...pad, timeS: 30, contactWPerK: 0.01, lossWPerK: 0.05 });
    expect(needle).toMatchObject({ flowsAfterS: null, verdict: 'cold' });
    expect(() => padHeating({ ...pad, timeS: 31 })).toThrow(/expected 0 to 30/);
  });
});

describe('a wire on a pad', () => {
  const good = { stripMm: 3, padLengthMm: 3, padWidthMm: 2, padGapMm: 0.6, conductorMm: 1 };

  it('3 mm on a 3 mm pad is accepted, with nothing bare beyond', () => {
    expect(padFit(good)).toMatchObject({ onPadMm: 3, bareBeyondMm: 0, verdict: 'accept', reasons: [] });
  });

  it('too short, too long, off the middle and touching are each named', () => {
    expect(padFit({ ...good, stripMm: 2 }).reasons).toEqual([expect.stringMatching(/too short/)]);
    expect(padFit({ ...good, stripMm: 5 }).reasons).toHaveLength(2);
    expect(padFit({ ...good, offsetMm: 0.7 }).reasons).toEqual([expect.stringMatching(/half a wire/)]);
    expect(padFit({ ...good, offsetMm: 1.2 }).reasons).toEqual([expect.stringMatching(/touches/)]);
  });
});

describe('ground points', () => {
  it('cleaning comes before fastening, sealing after measuring', () => {
    const ids = GROUND_STEPS.steps.map(({ id }) => id);
    expect(ids).toEqual(['choose', 'traits', 'clean', 'fasten', 'measure', 'seal']);
  });

  it('0.1 V and three lugs still pass, a hair more does not, GRP never', () => {
    expect(judgeGround({ dropV: 0.1, lugs: 3, body: 'steel' }).verdict).toBe('accept');
    expect(judgeGround({ dropV: 0.101, lugs: 4, body: 'steel' }).reasons).toHaveLength(2);
    expect(judgeGround({ dropV: 0, lugs: 1, body: 'GRP' }).reasons).toEqual([expect.stringMatching(/return wire/)]);
  });
});
