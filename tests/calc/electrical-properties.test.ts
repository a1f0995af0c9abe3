import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  AWG_SIZES,
  awg,
  awgNotAbove,
  awgNotBelow,
  CONDUCTORS,
  conductorResistance,
  convert,
  FUSE_FORMS,
  fuseFor,
  fuseOpens,
  gaugeFor,
  METRIC_SIZES_MM2,
  ratingAtLeast,
  ratingAtMost,
  STOCKED_FUSES_A,
  standingDays,
  UNITS,
  type Unit,
  voltageDropV,
  wireLimit,
} from '../../calc/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const areaMm2 = fc.oneof(between(0.1, 4), between(1, 60), between(0.1, 400));
const laying = fc.record({
  insulationC: between(60, 250),
  ambientC: between(-30, 150),
  bundled: fc.integer({ min: 1, max: 60 }),
  engineSpace: fc.boolean(),
});
/** Room for a computer's last digits and nothing else. */
const SLACK = 1 + 1e-9;

describe('drop', () => {
  const wire = fc.record({ temperatureC: between(-40, 150), conductor: fc.constantFrom(...CONDUCTORS) });
  const load = fc.record({ currentA: between(0, 200), lengthM: between(0, 60) });

  it('is never more with more copper', () => {
    fc.assert(
      fc.property(areaMm2, areaMm2, wire, load, (a, b, made, run) => {
        const thin = voltageDropV({ ...made, ...run, areaMm2: Math.min(a, b) });
        expect(voltageDropV({ ...made, ...run, areaMm2: Math.max(a, b) })).toBeLessThanOrEqual(thin * SLACK);
      }),
    );
  });

  it('is never less with more current, length or warmth', () => {
    fc.assert(
      fc.property(areaMm2, wire, load, between(1, 3), (area, made, run, more) => {
        const drop = voltageDropV({ ...made, ...run, areaMm2: area }) / SLACK;
        const warmer = made.temperatureC + 10 * more;
        expect(voltageDropV({ ...made, ...run, areaMm2: area, currentA: run.currentA * more })).toBeGreaterThanOrEqual(
          drop,
        );
        expect(voltageDropV({ ...made, ...run, areaMm2: area, lengthM: run.lengthM * more })).toBeGreaterThanOrEqual(
          drop,
        );
        expect(voltageDropV({ ...made, ...run, areaMm2: area, temperatureC: warmer })).toBeGreaterThanOrEqual(drop);
      }),
    );
  });

  it('is the printed ceiling at a printed size and above bare resistivity everywhere in vehicle sizes', () => {
    for (const size of METRIC_SIZES_MM2) {
      const made = conductorResistance({ areaMm2: size });
      expect(made.from).toBe(size === 0.35 ? 'beyond' : 'table');
      expect(made.resistanceOhmPerM).toBeGreaterThan(
        conductorResistance({ areaMm2: size, conductor: 'annealed' }).resistanceOhmPerM,
      );
    }
  });
});

it('reads a ceiling between its printed sizes, and past its ends', () => {
  const milliohm = (area: number) => conductorResistance({ areaMm2: area }).resistanceOhmPerM * 1000;
  expect(milliohm(Math.sqrt(1.5 * 2.5))).toBeCloseTo(Math.sqrt(13.3 * 7.98), 9);
  expect(milliohm(1.6)).toBeGreaterThan(12);
  expect(milliohm(0.25)).toBeCloseTo(39 * 2, 9);
  expect(milliohm(480)).toBeCloseTo(0.0801 / 2, 9);
});

describe('allowable current', () => {
  it('is never lower in a thicker wire', () => {
    fc.assert(
      fc.property(areaMm2, areaMm2, laying, (a, b, laid) => {
        const thin = wireLimit({ ...laid, areaMm2: Math.min(a, b) }).limitA;
        expect(wireLimit({ ...laid, areaMm2: Math.max(a, b) }).limitA * SLACK).toBeGreaterThanOrEqual(thin);
      }),
      // below the published rule's thinnest wire only the workshop's table speaks, which is milder in so hard a place
      { examples: [[0.75, 1, { insulationC: 60, ambientC: 0, bundled: 4, engineSpace: true }]] },
    );
  });

  it('is never more in hotter air, a fuller bundle, an engine bay or cooler insulation', () => {
    fc.assert(
      fc.property(areaMm2, laying, between(0, 40), fc.integer({ min: 0, max: 30 }), (area, laid, warmer, fuller) => {
        const wire = { ...laid, areaMm2: area };
        const { limitA } = wireLimit(wire);
        const most = limitA * SLACK + 1e-9;
        expect(wireLimit({ ...wire, ambientC: laid.ambientC + warmer }).limitA).toBeLessThanOrEqual(most);
        expect(wireLimit({ ...wire, bundled: laid.bundled + fuller }).limitA).toBeLessThanOrEqual(most);
        expect(wireLimit({ ...wire, engineSpace: true }).limitA).toBeLessThanOrEqual(most);
        const cooler = Math.max(60, laid.insulationC - warmer);
        expect(wireLimit({ ...wire, insulationC: cooler }).limitA).toBeLessThanOrEqual(most);
      }),
    );
  });

  it('is the smaller of the two figures, and says which', () => {
    fc.assert(
      fc.property(areaMm2, laying, (area, laid) => {
        const { limitA, decidedBy, publishedA, workshopA } = wireLimit({ ...laid, areaMm2: area });
        expect(limitA).toBe(Math.min(publishedA ?? Infinity, workshopA));
        expect(limitA).toBe(decidedBy === 'published' ? publishedA : workshopA);
      }),
    );
  });
});

describe('the gauge chooser', () => {
  const ask = fc.record({
    currentA: between(0.05, 150),
    lengthM: between(0.1, 40),
    systemV: fc.constantFrom(12, 24),
    allowedDropFraction: between(0.005, 0.1),
    minFuseA: fc.option(fc.constantFrom(...STOCKED_FUSES_A), { nil: undefined }),
    jointOhm: between(0, 0.05),
    bundled: fc.integer({ min: 1, max: 12 }),
    ambientC: between(0, 90),
    engineSpace: fc.boolean(),
  });

  it('takes the thinnest size that meets every demand, or none', () => {
    fc.assert(
      fc.property(ask, (options) => {
        const gauge = gaugeFor(options);
        const serving = gauge.rows.filter((row) => row.meetsDrop && row.meetsHeat && row.meetsFuse);
        if (!gauge.found) {
          expect(serving).toEqual([]);
          expect(gauge.reasons.length).toBeGreaterThan(0);
          expect(gauge.change.length).toBe(gauge.reasons.length);
          return;
        }
        expect(gauge.areaMm2).toBe(Math.min(...serving.map((row) => row.areaMm2)));
        expect(gauge.dropV).toBeLessThanOrEqual(options.systemV * options.allowedDropFraction * SLACK);
        expect(gauge.limitA * SLACK).toBeGreaterThanOrEqual(Math.max(options.currentA, options.minFuseA ?? 0));
      }),
    );
  });

  it('names a demand that the next thinner size fails', () => {
    fc.assert(
      fc.property(ask, (options) => {
        const gauge = gaugeFor(options);
        if (!gauge.found) return;
        const thinner = gauge.rows[gauge.rows.findIndex((row) => row.areaMm2 === gauge.areaMm2) - 1];
        if (thinner === undefined) return;
        const met = { drop: thinner.meetsDrop, heat: thinner.meetsHeat, fuse: thinner.meetsFuse };
        expect(met[gauge.decidedBy]).toBe(false);
      }),
    );
  });
});

describe('the fuse chooser', () => {
  const ask = fc.record({
    currentA: between(0.05, 120),
    continuousFraction: between(0.6, 1),
    inrushA: fc.oneof(fc.constant(0), between(0, 300)),
    inrushMs: fc.constantFrom(0, 5, 40, 80),
    form: fc.constantFrom(...FUSE_FORMS),
    stockedA: fc.option(fc.constant(STOCKED_FUSES_A), { nil: undefined }),
    wires: fc.array(fc.record({ name: fc.constantFrom('feed', 'pigtail', 'loom'), limitA: between(0, 160) }), {
      minLength: 1,
      maxLength: 5,
    }),
  });

  it('never passes the thinnest wire, always carries the load, and takes the smallest that does', () => {
    fc.assert(
      fc.property(ask, (options) => {
        const fuse = fuseFor(options);
        const thinnest = Math.min(...options.wires.map((wire) => wire.limitA));
        const carrying = fuse.ratings
          .map(({ ratingA }) => ratingA)
          .filter((rating) => rating * SLACK >= options.currentA / options.continuousFraction)
          .filter((rating) => rating * 3.5 * SLACK >= options.inrushA);
        const serving = carrying.filter((rating) => rating <= thinnest * SLACK);
        if (!fuse.found) {
          expect(serving).toEqual([]);
          expect(fuse.reasons.length).toBeGreaterThan(0);
          expect(fuse.change.length).toBeGreaterThan(0);
          return;
        }
        expect(fuse.ratingA).toBe(Math.min(...serving));
        expect(fuse.ratingA).toBeLessThanOrEqual(thinnest * SLACK);
        expect(fuse.lowerA).toBeLessThanOrEqual(fuse.ratingA * SLACK);
        expect(fuse.ratings.filter(({ state }) => state === 'chosen')).toHaveLength(1);
        expect(fuse.inrushChecked).toBe(options.inrushA > 0);
      }),
    );
  });

  it('opens no later on more current', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FUSE_FORMS), between(0, 50), between(0, 50), (form, a, b) => {
        const less = fuseOpens({ ratingA: 10, form, currentA: 10 * Math.min(a, b) });
        const more = fuseOpens({ ratingA: 10, form, currentA: 10 * Math.max(a, b) });
        expect(more.minS).toBeLessThanOrEqual(less.minS * SLACK);
        expect(more.maxS ?? Infinity).toBeLessThanOrEqual((less.maxS ?? Infinity) * SLACK);
        expect(more.minS).toBeLessThanOrEqual(more.maxS ?? Infinity);
      }),
    );
  });

  it('rounds a rating up for a load and down for a wire, never the other way', () => {
    fc.assert(
      fc.property(between(0, 200), (amps) => {
        expect(ratingAtLeast({ currentA: amps }) ?? Infinity).toBeGreaterThanOrEqual(amps / SLACK);
        expect(ratingAtMost({ limitA: amps }) ?? 0).toBeLessThanOrEqual(amps * SLACK);
      }),
    );
  });
});

describe('sizes and units', () => {
  it('come back from every other unit of their quantity', () => {
    const pairs = UNITS.flatMap((from) => UNITS.filter((to) => same(from, to)).map((to) => [from, to] as const));
    expect(pairs.length).toBeGreaterThan(100);
    fc.assert(
      fc.property(fc.constantFrom(...pairs), between(-1e6, 1e6), ([from, to], value) => {
        const back = convert({ value: convert({ value, from, to }), from: to, to: from });
        // Temperatures subtract large offsets; everything else is a pure factor.
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(value), 1000));
      }),
    );
  });

  it('put an area between two neighbouring gauges', () => {
    fc.assert(
      fc.property(between(0.2, 100), (area) => {
        const above = awgNotBelow({ areaMm2: area, sizes: AWG_SIZES })!;
        const below = awgNotAbove({ areaMm2: area })!;
        expect(awg({ gaugeAwg: above }).areaMm2 * SLACK).toBeGreaterThanOrEqual(area);
        expect(awg({ gaugeAwg: below }).areaMm2).toBeLessThanOrEqual(area * SLACK);
      }),
    );
  });
});

function same(from: Unit, to: Unit): boolean {
  try {
    convert({ value: 1, from, to });
    return from !== to;
  } catch {
    return false;
  }
}

it('lets a vehicle stand no longer on more drain', () => {
  const parked = fc.record({ capacityAh: between(5, 300), baseA: between(0.001, 1), addedA: between(0, 1) });
  fc.assert(
    fc.property(parked, between(0, 1), (battery, more) => {
      const charge = { startFraction: 0.8, minFraction: 0.5 };
      const { daysAfter } = standingDays({ ...battery, ...charge });
      const drained = standingDays({ ...battery, ...charge, addedA: battery.addedA + more });
      expect(drained.daysAfter).toBeLessThanOrEqual(daysAfter * SLACK);
      expect(daysAfter).toBeLessThanOrEqual(standingDays({ ...battery, ...charge }).daysBefore * SLACK);
    }),
  );
});
