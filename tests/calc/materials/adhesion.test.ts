import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  contactAngle,
  crossCutClass,
  crossCutSpacingMm,
  dyneReading,
  energyClass,
  fowkes,
  interfaceWork,
  LIQUIDS,
  owensWendt,
  POLYMERS,
  rankByAngle,
  waterBreak,
  workOfAdhesion,
} from '../../../calc/index.ts';

const WATER = { dispersiveMnPerM: 21.8, polarMnPerM: 51 };
const DIIODOMETHANE = { dispersiveMnPerM: 50.8, polarMnPerM: 0 };
const part = fc.double({ min: 0.01, max: 60, noNaN: true });
const solid = fc.record({ dispersiveMjPerM2: part, polarMjPerM2: part });

describe('from a surface to angles and back', () => {
  it('two angles give the surface back, as long as neither liquid spreads', () => {
    fc.assert(
      fc.property(solid, (given) => {
        const drops = [WATER, { dispersiveMnPerM: 48.5, polarMnPerM: 2.3 }].map((liquid) => ({
          liquid,
          ...contactAngle({ solid: given, liquid }),
        }));
        fc.pre(drops.every(({ flag }) => flag === undefined));
        const found = owensWendt({ drops });
        expect(found.flag).toBeUndefined();
        expect(found.dispersiveMjPerM2).toBeCloseTo(given.dispersiveMjPerM2, 5);
        expect(found.polarMjPerM2).toBeCloseTo(given.polarMjPerM2, 5);
      }),
    );
  });

  it('the two-step method agrees with the line where the first liquid is apolar', () => {
    fc.assert(
      fc.property(solid, (given) => {
        const apolar = { liquid: DIIODOMETHANE, ...contactAngle({ solid: given, liquid: DIIODOMETHANE }) };
        const polar = { liquid: WATER, ...contactAngle({ solid: given, liquid: WATER }) };
        fc.pre(apolar.flag === undefined && polar.flag === undefined);
        const line = owensWendt({ drops: [apolar, polar] });
        expect(fowkes({ apolar, polar }).totalMjPerM2).toBeCloseTo(line.totalMjPerM2, 6);
      }),
    );
  });

  it('work from the angle is the work from the parts (Young against the geometric mean)', () => {
    fc.assert(
      fc.property(solid, (given) => {
        const { angleDeg, flag } = contactAngle({ solid: given, liquid: WATER });
        fc.pre(flag === undefined);
        const byAngle = workOfAdhesion({ liquidTensionMnPerM: 72.8, angleDeg }).workMjPerM2;
        expect(byAngle).toBeCloseTo(interfaceWork({ solid: given, liquid: WATER }).workMjPerM2, 6);
      }),
    );
  });

  it('spreading is flagged just where the spreading coefficient is positive, and is never NaN', () => {
    fc.assert(
      fc.property(solid, fc.record({ dispersiveMnPerM: part, polarMnPerM: part }), (given, liquid) => {
        const { angleDeg, flag } = contactAngle({ solid: given, liquid });
        expect(Number.isNaN(angleDeg)).toBe(false);
        expect(flag === 'spreads').toBe(interfaceWork({ solid: given, liquid }).spreadingMjPerM2 > 0);
      }),
    );
  });

  it('more water angle is less work of adhesion, always', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 179, noNaN: true }), (angleDeg) => {
        const at = (deg: number) => workOfAdhesion({ liquidTensionMnPerM: 72.8, angleDeg: deg }).workMjPerM2;
        expect(at(angleDeg + 1)).toBeLessThan(at(angleDeg));
      }),
    );
  });
});

describe('traps of the method', () => {
  it('a negative polar root is set to nothing and said, not squared into a polar part', () => {
    const found = owensWendt({
      drops: [
        { liquid: WATER, angleDeg: 120 },
        { liquid: { dispersiveMnPerM: 48.5, polarMnPerM: 2.3 }, angleDeg: 78 },
      ],
    });
    expect(found).toMatchObject({ polarMjPerM2: 0, flag: 'polar root negative' });
    expect(found.polarRoot).toBeLessThan(0);
    expect(found.dispersiveIfRefitMjPerM2).toBeLessThan(found.dispersiveMjPerM2);
  });

  it('one liquid with two splits gives two answers, so the split is part of the question', () => {
    const angles = (diiodomethane: { dispersiveMnPerM: number; polarMnPerM: number }) =>
      owensWendt({
        drops: [
          { liquid: WATER, angleDeg: 40.92 },
          { liquid: diiodomethane, angleDeg: 40.8 },
        ],
      }).dispersiveMjPerM2;
    expect(angles({ dispersiveMnPerM: 48.5, polarMnPerM: 2.3 })).toBeCloseTo(27.04, 2);
    expect(angles({ dispersiveMnPerM: 50.8, polarMnPerM: 0 })).toBeCloseTo(39.2, 1);
  });

  it('splits of the liquids add up to their totals, and no name and set stand twice', () => {
    const split = LIQUIDS.filter((row) => row.dispersiveMnPerM !== undefined);
    for (const row of split) expect(row.dispersiveMnPerM! + row.polarMnPerM!).toBeCloseTo(row.totalMnPerM, 1);
    const keys = LIQUIDS.map(({ liquid, set }) => `${liquid}|${set}`);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('critical tension and water angle rank polycarbonate and acrylic the other way round', () => {
    const of = (id: string) => POLYMERS.find((row) => row.id === id)!;
    expect(of('pc').criticalMnPerM).toBeGreaterThan(of('pmma').criticalMnPerM);
    const order = rankByAngle({ surfaces: ['pc', 'pmma'].map((id) => ({ id, angleDeg: of(id).waterAngleDeg })) });
    expect(order).toEqual(['pc', 'pmma']);
  });

  it('refuses what the method cannot do', () => {
    const drop = { liquid: WATER, angleDeg: 80 };
    expect(() => owensWendt({ drops: [drop] })).toThrow(/expected two liquids or more/);
    expect(() => owensWendt({ drops: [drop, { ...drop, angleDeg: 70 }] })).toThrow(/same polar ratio/);
    expect(() => owensWendt({ drops: [drop, { liquid: DIIODOMETHANE, angleDeg: 181 }] })).toThrow(
      /drops\[1\].angleDeg 181/,
    );
    expect(() => fowkes({ apolar: drop, polar: drop })).toThrow(/use owensWendt/);
    expect(() =>
      fowkes({ apolar: { liquid: DIIODOMETHANE, angleDeg: 41 }, polar: { liquid: DIIODOMETHANE, angleDeg: 41 } }),
    ).toThrow(/expected a liquid with a polar part/);
    expect(() => workOfAdhesion({ liquidTensionMnPerM: 0, angleDeg: 20 })).toThrow(/expected above 0/);
    expect(() => contactAngle({ solid: { dispersiveMjPerM2: Number.NaN, polarMjPerM2: 1 }, liquid: WATER })).toThrow(
      TypeError,
    );
  });
});

describe('simple tests', () => {
  it('classes meet at 36 and 300, each border in the middle class', () => {
    const at = (surfaceEnergyMnPerM: number) => energyClass({ surfaceEnergyMnPerM });
    expect([35.9, 36, 300, 300.1].map(at)).toEqual(['low', 'medium', 'medium', 'high']);
  });

  it('a dyne reading needs two seconds; nothing held is null, not the lowest pen', () => {
    expect(dyneReading({ wetForS: { 34: 5, 36: 1.9 } }).readingMnPerM).toBe(34);
    expect(dyneReading({ wetForS: { 30: 0, 32: 0 } }).readingMnPerM).toBeNull();
    expect(dyneReading({ wetForS: { 34: 1, 36: 3 } }).steps).toBe('out of order');
    expect(() => dyneReading({ wetForS: {} })).toThrow(/one level or more/);
  });

  it('the water film says nothing about a plastic that beads when clean', () => {
    expect(waterBreak({ breaksAfterS: 2, wetsWhenClean: false }).means).toMatch(/says nothing here/);
    expect(waterBreak({ breaksAfterS: null, wetsWhenClean: false }).means).toMatch(/soap/);
    expect([60, 61, null].map((breaksAfterS) => waterBreak({ breaksAfterS }).pass)).toEqual([false, true, true]);
  });

  it('cross-cut: borders belong to the better class, thicker than 250 µm is refused', () => {
    expect([0, 5, 5.1, 15, 35, 65, 65.1].map((p) => crossCutClass({ detachedPercent: p }))).toEqual([
      0, 1, 2, 2, 3, 4, 5,
    ]);
    expect(crossCutSpacingMm({ thicknessUm: 40, softSubstrate: true })).toBe(2);
    expect(() => crossCutSpacingMm({ thicknessUm: 251 })).toThrow(RangeError);
  });
});
