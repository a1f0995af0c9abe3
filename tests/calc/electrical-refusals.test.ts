import { describe, expect, it } from 'vitest';
import {
  ambientFactor,
  awg,
  awgName,
  conductorResistance,
  convert,
  fuseFor,
  fuseOpens,
  gaugeFor,
  largestFuseByRule,
  pullForce,
  restingVoltage,
  sae,
  standingDays,
  stripCurrent,
  switchRating,
  type Unit,
  voltageDropV,
  wireLimit,
} from '../../calc/index.ts';

const wires = [{ name: 'feed', limitA: 20 }];

describe('misuse is refused in words that say what came, what was expected and where', () => {
  const misuse: [string, () => unknown, RegExp][] = [
    [
      'no number',
      () => voltageDropV({ currentA: Number.NaN, lengthM: 1, areaMm2: 1 }),
      /voltageDrop.*currentA NaN.*finite/,
    ],
    ['negative length', () => voltageDropV({ currentA: 1, lengthM: -1, areaMm2: 1 }), /lengthM -1 m, expected 0 to/],
    ['no size', () => conductorResistance({ temperatureC: 20 }), /exactly one of areaMm2 and gaugeAwg/],
    ['two sizes', () => conductorResistance({ areaMm2: 1, gaugeAwg: 14 }), /exactly one/],
    ['no copper', () => conductorResistance({ areaMm2: 0 }), /areaMm2 0 mm², expected above 0/],
    ['molten copper', () => conductorResistance({ areaMm2: 1, temperatureC: 900 }), /temperatureC 900/],
    ['gauge between sizes', () => awg({ gaugeAwg: 13.5 }), /whole number/],
    ['unknown gauge', () => awgName({ gaugeAwg: 41 }), /gaugeAwg 41, expected -3 to 40/],
    ['gauge SAE does not have', () => sae({ gaugeSae: 13 }), /gaugeSae 13, expected one of 20, 18/],
    [
      'unknown unit',
      () => convert({ value: 1, from: 'furlong' as Unit, to: 'm' }),
      /from "furlong", expected one of m, cm/,
    ],
    ['two quantities', () => convert({ value: 1, from: 'm', to: 'kg' }), /m to kg, expected two units of one quantity/],
    [
      'base above the insulation',
      () => ambientFactor({ insulationC: 60, ambientC: 40, baseAmbientC: 70 }),
      /baseAmbientC/,
    ],
    [
      'insulation nobody sells',
      () => wireLimit({ areaMm2: 1, insulationC: 40 }),
      /insulationC 40 °C, expected 60 to 300/,
    ],
    ['half a wire in a bundle', () => wireLimit({ areaMm2: 1, bundled: 1.5 }), /bundled 1.5, expected a whole number/],
    ['a fuse for no wire', () => fuseFor({ currentA: 1, wires: [] }), /wires \[\], expected at least one/],
    [
      'no rating in the drawer',
      () => fuseFor({ currentA: 1, wires, stockedA: [] }),
      /stockedA \[\], expected at least one/,
    ],
    ['no load', () => fuseFor({ currentA: 0, wires }), /currentA 0 A, expected above 0/],
    ['a share above one', () => fuseFor({ currentA: 1, wires, continuousFraction: 1.25 }), /continuousFraction 1.25/],
    [
      'a form nobody makes',
      () => fuseOpens({ ratingA: 5, form: 'X' as 'C', currentA: 5 }),
      /form "X", expected one of C, F, E/,
    ],
    [
      'no size on offer',
      () => gaugeFor({ currentA: 1, lengthM: 1, systemV: 12, sizesMm2: [1], lowestMm2: 2 }),
      /size of 2 mm² or more/,
    ],
    [
      'a drop of more than all',
      () => gaugeFor({ currentA: 1, lengthM: 1, systemV: 12, allowedDropFraction: 3 }),
      /allowedDropFraction 3/,
    ],
    [
      'a battery that starts empty',
      () => standingDays({ capacityAh: 70, startFraction: 0.4, minFraction: 0.5 }),
      /startFraction less minFraction/,
    ],
    [
      'a 24 V strip on 12 V',
      () => stripCurrent({ labelAPerM: 0.4, lengthM: 5, labelV: 24, stringV: 9, systemV: 28 }),
      /stringV 9/,
    ],
  ];
  it.each(misuse)('%s', (_what, act, message) => {
    expect(act).toThrow(message);
    expect(act).toThrow(/^[a-zA-Z0-9]+: unexpected /);
    try {
      act();
    } catch (error) {
      expect(error instanceof RangeError || error instanceof TypeError).toBe(true);
    }
  });
});

describe('an engineering no is an answer with reasons', () => {
  it('refuses a load past the blade list instead of the largest blade', () => {
    const fuse = fuseFor({ currentA: 36, continuousFraction: 0.75, wires: [{ name: 'feed', limitA: 100 }] });
    expect(fuse).toMatchObject({ found: false, lowerA: 48, upperA: 100 });
    if (!fuse.found) expect(fuse.reasons).toEqual(['The load needs 48 A; the largest rating offered is 40 A.']);
  });

  it('takes 20 A for 15 A at three quarters exactly, floats notwithstanding', () => {
    for (const form of ['C', 'F', 'E'] as const) {
      expect(fuseFor({ currentA: 15, continuousFraction: 0.75, form, wires })).toMatchObject({
        found: true,
        ratingA: 20,
      });
    }
    expect(fuseFor({ currentA: 15.01, continuousFraction: 0.75, wires }).found).toBe(false);
  });

  it('names the wire and the load when they leave no fuse between them', () => {
    const fuse = fuseFor({
      currentA: 10,
      wires: [
        { name: 'feed', limitA: 30 },
        { name: 'pigtail', limitA: 5 },
      ],
    });
    expect(fuse).toMatchObject({ found: false, lowerA: 12.5, upperA: 5, upperBy: 'pigtail' });
    if (fuse.found) return;
    expect(fuse.reasons).toEqual(['The load needs a 15 A fuse, but pigtail may stand behind 5 A at most.']);
    expect(fuse.change.join(' ')).toMatch(/thicker or cooler pigtail/);
    expect(fuse.ratings.every(({ state }) => state === 'too small' || state === 'too large')).toBe(true);
  });

  it('finds no fuse in a gap between two ratings', () => {
    const fuse = fuseFor({ currentA: 12, continuousFraction: 0.75, wires: [{ name: 'feed', limitA: 19 }] });
    expect(fuse).toMatchObject({ found: false, lowerA: 16, upperA: 19 });
    expect(fuse.ratings.map(({ state }) => state)).not.toContain('allowed');
  });

  it('takes a long start for load, and a high system for another fuse form', () => {
    const slow = fuseFor({ currentA: 5, inrushA: 12, inrushMs: 400, wires });
    expect(slow.found ? [] : slow.reasons).toEqual(['400 ms is longer than inrush: a fuse takes it for load.']);
    const high = fuseFor({ currentA: 5, systemV: 48, wires });
    expect(high.found ? [] : high.reasons).toEqual(['Blade fuses are rated 32 V; the system reaches 48 V.']);
    expect(fuseFor({ currentA: 5, systemV: 28.8, wires }).found).toBe(true);
  });

  it('warns where the form promises less than the inrush lasts', () => {
    const fuse = fuseFor({ currentA: 3, inrushA: 17, inrushMs: 60, wires });
    expect(fuse.found && fuse.caution).toMatch(/only sure to hold 17 A for 40 ms/);
    const short = fuseFor({ currentA: 3, inrushA: 17, inrushMs: 5, wires });
    expect(short.found && short.caution).toBeNull();
  });

  it('says what would let a wire be found', () => {
    const long = gaugeFor({ currentA: 100, lengthM: 30, systemV: 12 });
    expect(long.found).toBe(false);
    if (!long.found) {
      expect(long.reasons).toEqual(['Even 50 mm² loses 1.34 V of the 0.36 V allowed.']);
      expect(long.change[0]).toMatch(/shorter run/);
    }
    const joints = gaugeFor({ currentA: 50, lengthM: 0.5, systemV: 12, jointOhm: 0.02 });
    if (!joints.found) expect(joints.change[0]).toMatch(/Better joints: they alone lose 1 V/);
    expect(joints.found).toBe(false);
    const hot = gaugeFor({ currentA: 20, lengthM: 1, systemV: 12, insulationC: 90, ambientC: 90, minFuseA: 25 });
    if (!hot.found) expect(hot.reasons).toHaveLength(2);
    expect(hot.found).toBe(false);
  });

  it('lets no fuse stand before a wire thinner than the workshop protects, or as hot as its insulation', () => {
    expect(wireLimit({ areaMm2: 0.22 })).toMatchObject({ limitA: 0, publishedA: null, decidedBy: 'workshop' });
    expect(wireLimit({ areaMm2: 2.5, ambientC: 105 }).limitA).toBe(0);
  });

  it('answers null where a table does not reach', () => {
    expect(largestFuseByRule({ gaugeAwg: 22, systemV: 12 })).toBeNull();
    expect(switchRating({ systemV: 12, loadType: 'heater', currentA: 4 })).toBeNull();
    expect(pullForce({ gaugeAwg: 7 })).toBeNull();
    expect(restingVoltage({ stateOfChargeFraction: 1, set: 'motorhome' })).toBeNull();
  });
});

describe('which figure decides', () => {
  it('is the workshop in a small bundle and the published rule in a large one', () => {
    expect(wireLimit({ areaMm2: 10, insulationC: 90 })).toMatchObject({
      decidedBy: 'workshop',
      limitA: 60,
      publishedA: 70,
    });
    const loom = wireLimit({ areaMm2: 10, insulationC: 90, bundled: 10 });
    expect(loom).toMatchObject({ decidedBy: 'published', limitA: 35, workshopA: 36, factors: { bundle: 0.5 } });
    expect(loom.sources.map(({ at }) => at)).toContain('Table 5 note 2');
  });

  it('takes the engine-space factor instead of the ambient one, and both only in hotter air', () => {
    const engine = wireLimit({ areaMm2: 2.5, engineSpace: true, ambientC: 50 });
    expect(engine.factors).toEqual({ ambient: 1, bundle: 1, engineSpace: 0.85 });
    expect(engine.publishedA).toBeCloseTo(35 * 0.85, 9);
    const hotter = wireLimit({ areaMm2: 2.5, engineSpace: true, ambientC: 80 });
    expect(hotter.publishedA).toBeCloseTo(35 * Math.sqrt(25 / 75), 9);
    expect(wireLimit({ areaMm2: 2.5, engineSpace: true, insulationC: 200 }).factors.engineSpace).toBe(1);
  });

  it('uses the cooler column for insulation between two', () => {
    expect(wireLimit({ areaMm2: 2.5, insulationC: 70 }).publishedA).toBe(20);
    expect(wireLimit({ areaMm2: 2.5, insulationC: 104 }).publishedA).toBe(30);
  });
});

describe('how long a fuse takes', () => {
  it('stands on a gate at its very multiple', () => {
    expect(fuseOpens({ ratingA: 5, form: 'C', currentA: 5 * 1.1 })).toEqual({ minS: 360_000, maxS: null });
    expect(fuseOpens({ ratingA: 7.5, form: 'C', currentA: 7.5 * 1.35 })).toEqual({ minS: 0.75, maxS: 600 });
  });

  it('promises between two gates only what both hold, and beyond the last the same heat', () => {
    expect(fuseOpens({ ratingA: 10, form: 'C', currentA: 25 })).toEqual({ minS: 0.04, maxS: 5 });
    expect(fuseOpens({ ratingA: 10, form: 'C', currentA: 12 })).toEqual({ minS: 0.75, maxS: null });
    const short = fuseOpens({ ratingA: 10, form: 'C', currentA: 600 });
    expect(short.minS).toBeCloseTo(0.0002, 9);
    expect(short.maxS).toBeCloseTo(0.001, 9);
  });
});
