import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aircraftStrands,
  bendRadius,
  bounceLx,
  bundleByArea,
  bundleOf,
  bundleOfEqual,
  chooseShrink,
  chooseSleeve,
  heatingTimeS,
  JOINT_CRITERIA,
  jointHeatJ,
  judgeJoint,
  lapSplice,
  liquidForLel,
  meltingRange,
  packingFactor,
  pointError,
  SHRINK_SIZES_MM,
  SOLDER_ALLOYS,
  shrunkLength,
  stripLx,
  tieCount,
  tipRange,
  tubeLx,
  vapourPpm,
  WIRE_OUTERS,
  wireOuter,
} from '../../../calc/index.ts';
import { PACKING_MAX, PACKING_RATIO } from '../../../calc/tables/packing.ts';

const diameter = fc.double({ min: 0.8, max: 12, noNaN: true });

describe('looms', () => {
  it('the packing table rises, never falls, and no packing is denser than circles can be', () => {
    for (let n = 2; n <= PACKING_MAX; n++) {
      expect(PACKING_RATIO[n]).toBeGreaterThanOrEqual(PACKING_RATIO[n - 1]!);
      expect(n / PACKING_RATIO[n]! ** 2).toBeLessThan(Math.PI / Math.sqrt(12));
    }
    expect(PACKING_RATIO[6]).toBe(PACKING_RATIO[7]);
    expect(PACKING_RATIO[18]).toBe(PACKING_RATIO[19]);
    expect(PACKING_RATIO[10]).toBeCloseTo(3.81302563, 8);
  });

  it('exact ratios where geometry gives them', () => {
    expect(PACKING_RATIO[3]).toBeCloseTo(1 + 2 / Math.sqrt(3), 8);
    expect(PACKING_RATIO[4]).toBeCloseTo(1 + Math.SQRT2, 8);
    expect(PACKING_RATIO[5]).toBeCloseTo(1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5))), 8);
    expect(PACKING_RATIO[8]).toBeCloseTo(1 + 1 / Math.sin(Math.PI / 7), 8);
    expect(PACKING_RATIO[9]).toBeCloseTo(1 + Math.sqrt(2 * (2 + Math.SQRT2)), 8);
    expect(PACKING_RATIO[13]).toBeCloseTo(2 + Math.sqrt(5), 8);
    expect(PACKING_RATIO[19]).toBeCloseTo(1 + Math.SQRT2 + Math.sqrt(6), 8);
  });

  it('the search finds nearly equal wires about as tight as the table, never tighter', () => {
    for (const n of [4, 5, 7, 8, 12, 19]) {
      const wiresMm = Array.from({ length: n }, (_, i) => 2 + i * 1e-6);
      const found = bundleOf({ wiresMm });
      expect(found.method).toBe('packing search');
      expect(found.bundleMm / 2).toBeGreaterThanOrEqual(PACKING_RATIO[n]! * 0.99999);
      expect(found.bundleMm / 2).toBeLessThan(PACKING_RATIO[n]! * 1.04);
    }
  });

  it('a bundle is never thinner than its two thickest wires, nor than its copper', () => {
    fc.assert(
      fc.property(fc.array(diameter, { minLength: 1, maxLength: 9 }), (wiresMm) => {
        const { bundleMm } = bundleOf({ wiresMm });
        const [first = 0, second = 0] = wiresMm.toSorted((a, b) => b - a);
        expect(bundleMm).toBeGreaterThanOrEqual(first + second - 1e-9);
        expect(bundleMm ** 2).toBeGreaterThanOrEqual(wiresMm.reduce((sum, d) => sum + d * d, 0) * (1 - 1e-6));
      }),
      { numRuns: 60 },
    );
  });

  it('the order of the wires does not matter', () => {
    const wiresMm = [1.6, 1.6, 2.4, 3, 1.9];
    expect(bundleOf({ wiresMm: wiresMm.toReversed() }).bundleMm).toBe(bundleOf({ wiresMm }).bundleMm);
  });

  it('a third wire that fits the gap of two equal ones costs nothing: up to two thirds of theirs', () => {
    expect(bundleOf({ wiresMm: [4, 4, 8 / 3 - 1e-6] }).bundleMm).toBeCloseTo(8, 4);
    expect(bundleOf({ wiresMm: [4, 4, 2.8] }).bundleMm).toBeGreaterThan(8);
  });

  it('the rule of thumb is too small for two to six equal wires and says so by its exact factor', () => {
    for (const wires of [2, 3, 4, 5, 6]) expect(packingFactor({ wires })).toBeGreaterThan(1.2);
    for (const wires of [7, 12, 19, 37]) expect(packingFactor({ wires })).toBeLessThan(1.2);
    expect(bundleByArea({ wiresMm: [2, 2] }).estimateMm).toBe(4);
  });

  it('refuses no wires, too many, and nonsense', () => {
    expect(() => bundleOf({ wiresMm: [] })).toThrow(/one wire or more/);
    expect(() => bundleOfEqual({ wires: 62, wireMm: 1 })).toThrow(/expected 1 to 61/);
    expect(() => bundleOfEqual({ wires: 2.5, wireMm: 1 })).toThrow(/whole number/);
    expect(() => bundleOf({ wiresMm: [1, -1] })).toThrow(/wiresMm\[1\] -1/);
  });

  it('a sleeve is the first that keeps the fill, or reasons', () => {
    expect(chooseSleeve({ bundleMm: 8 }).sleeveMm).toBe(10);
    expect(chooseSleeve({ bundleMm: 8.001 }).sleeveMm).toBe(13);
    expect(chooseSleeve({ bundleMm: 30 })).toMatchObject({ found: false, reasons: [expect.stringMatching(/32 mm/)] });
  });

  it('wire tables: conductor below outer, and an unlisted size is not found rather than guessed', () => {
    for (const row of WIRE_OUTERS) {
      expect(row.conductorMm + 2 * row.wallMinMm).toBeLessThanOrEqual(row.outerMaxMm);
      expect(row.outerNominalMm ?? 0).toBeLessThanOrEqual(row.outerMaxMm);
    }
    expect(wireOuter({ standard: 'ISO 6722 thin wall', areaMm2: 1.2 })).toMatchObject({ found: false });
    expect(() => wireOuter({ standard: 'ISO 6722 thin wall' })).toThrow(TypeError);
  });

  it('ties stand at both ends and never further apart than asked', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20000 }), fc.integer({ min: 50, max: 600 }), (runMm, maxSpacingMm) => {
        const { ties, spacingMm } = tieCount({ runMm, maxSpacingMm });
        expect(spacingMm).toBeLessThanOrEqual(maxSpacingMm + 1e-9);
        expect((ties - 1) * spacingMm).toBeCloseTo(runMm, 6);
      }),
    );
    expect(() => bendRadius({ diameterMm: 5, jacket: 'silk' as never })).toThrow(/unexpected jacket/);
  });
});

describe('sleeves and splices', () => {
  it('a chosen sleeve goes over the thick point and grips the thin one', () => {
    fc.assert(
      fc.property(diameter, fc.double({ min: 0.2, max: 1, noNaN: true }), (thickestMm, share) => {
        const thinnestMm = thickestMm * share;
        const found = chooseShrink({ thickestMm, thinnestMm });
        if (!found.found) return;
        expect(found.suppliedMm).toBeGreaterThan(thickestMm);
        expect(found.recoveredMm).toBeLessThan(thinnestMm);
        expect(SHRINK_SIZES_MM).toContain(found.suppliedMm);
      }),
    );
    expect(chooseShrink({ thickestMm: 10, thinnestMm: 1 })).toMatchObject({ found: false });
  });

  it('a cut sleeve still covers the joint and both overlaps when it has shrunk its most', () => {
    const splice = lapSplice({ conductorMm: 1.6, insulatedMm: 2.4 });
    expect(splice.overlapMm).toBeCloseTo(6.4, 9);
    expect(splice.stripMm).toBeCloseTo(6.4 + 2.4, 9);
    expect(shrunkLength({ cutMm: splice.sleeveCutMm }).leastMm).toBeGreaterThanOrEqual(6.4 + 2 * 2.4 + 2 * 5);
    expect(() => lapSplice({ conductorMm: 2, insulatedMm: 2 })).toThrow(/expected above conductorMm/);
    expect(() => lapSplice({ conductorMm: 1, insulatedMm: 2, overlapDiameters: 7 })).toThrow(/expected 3 to 6/);
  });

  it('strand limits exist only where the table has the wire', () => {
    expect(aircraftStrands({ awg: 24, strands: 19 })).toMatchObject({ found: true, maxNicked: 2, maxBroken: 0 });
    expect(aircraftStrands({ awg: 14, strands: 7 })).toMatchObject({ found: false });
  });
});

describe('soldering', () => {
  it('melting starts no later than it ends, and lead shows in the name', () => {
    for (const alloy of SOLDER_ALLOYS) {
      expect(alloy.solidusC).toBeLessThanOrEqual(alloy.liquidusC);
      expect(alloy.leadFree).toBe(!alloy.alloy.includes('Pb'));
    }
    expect(meltingRange({ alloy: 'Unobtainium' })).toMatchObject({ found: false });
  });

  it('tip temperature is a span, with a start inside it', () => {
    for (const { alloy, liquidusC } of SOLDER_ALLOYS.filter((row) => row.liquidusC <= 240)) {
      const { fromC, toC, startC } = tipRange({ alloy });
      expect(toC).toBeGreaterThan(fromC);
      expect(startC).toBeGreaterThanOrEqual(Math.min(fromC, liquidusC + 80));
      expect(startC).toBeLessThanOrEqual(toC);
    }
    expect(() => tipRange({ alloy: 'Unobtainium' })).toThrow(/no alloy/);
  });

  it('heat adds up: nothing for nothing, latent heat even without a rise', () => {
    expect(jointHeatJ({ copperG: 0, solderG: 0, startC: 20, endC: 230 })).toBe(0);
    expect(jointHeatJ({ copperG: 1, solderG: 0.1, startC: 20, endC: 20 })).toBeCloseTo(4, 9);
    expect(() => jointHeatJ({ copperG: 1, solderG: 1, startC: 200, endC: 100 })).toThrow(RangeError);
    expect(() => heatingTimeS({ energyJ: 1, netPowerW: 0 })).toThrow(/expected above 0/);
  });

  it('every criterion judges itself: reject words reject, accept words accept', () => {
    for (const seen of JOINT_CRITERIA.reject) expect(judgeJoint({ seen }), seen).toMatchObject({ verdict: 'reject' });
    for (const seen of JOINT_CRITERIA.accept) expect(judgeJoint({ seen }), seen).toMatchObject({ verdict: 'accept' });
    expect(judgeJoint({ seen: 'dull, lead-free, smooth fillet' }).verdict).toBe('unclear');
  });
});

describe('light and vapour', () => {
  it('a strip is the sum of its halves, and far away it is a point', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        (lengthM, distanceM) => {
          const whole = stripLx({ fluxLmPerM: 600, lengthM, distanceM });
          const half = stripLx({ fluxLmPerM: 600, lengthM: lengthM / 2, distanceM, offsetAlongM: lengthM / 4 });
          expect(2 * half).toBeCloseTo(whole, 6);
        },
      ),
    );
    expect(pointError({ fluxLmPerM: 600, lengthM: 1, distanceM: 5 }).overPercent).toBeLessThan(1);
    expect(pointError({ fluxLmPerM: 600, lengthM: 1, distanceM: 0.5 }).overPercent).toBeCloseTo(55.6, 1);
  });

  it('light never comes from a longer strip less, and a tube gives a third of a strip', () => {
    const long = stripLx({ fluxLmPerM: 600, lengthM: 1000, distanceM: 0.5 });
    expect(long).toBeCloseTo(600, 1);
    expect(tubeLx({ fluxLmPerM: 600, distanceM: 0.5 }) / long).toBeCloseTo(1 / Math.PI, 4);
    expect(bounceLx({ fluxLm: 600, areaM2: 12, reflectance: 0 })).toBe(0);
    expect(() => bounceLx({ fluxLm: 600, areaM2: 12, reflectance: 1 })).toThrow(RangeError);
  });

  it('vapour and liquid are each the other backwards', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 20, noNaN: true }), (spaceM3) => {
        const { ppm, volumeMl } = liquidForLel({ spaceM3, fractionOfLel: 0.1 });
        expect(ppm).toBe(2000);
        expect(vapourPpm({ volumeMl, spaceM3 }).ppm).toBeCloseTo(2000, 6);
      }),
    );
    expect(vapourPpm({ volumeMl: 2, spaceM3: 3, limitPpm: 200 }).aboveLimit).toBe(true);
    expect(vapourPpm({ volumeMl: 2, spaceM3: 3 }).aboveLimit).toBe(false);
  });
});
