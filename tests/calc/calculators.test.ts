import { describe, expect, it } from 'vitest';
import {
  cameraView,
  chargeBalance,
  chargeTime,
  coilClamp,
  faultClears,
  fuseFor,
  fuseProtects,
  gaugeFor,
  insulationGap,
  isolationDiode,
  loadCurrent,
  ratingAtLeast,
  ratingAtMost,
  relayChoice,
  runTime,
  STOCKED_FUSES_A,
  standingDays,
  stripCurrent,
  stripCut,
  tables,
  voltageDrop,
  windLoad,
  wireLimit,
  workshopLimit,
} from '../../calc/index.ts';

/** A figure as the worked example prints it: so many decimals. */
const shown = (value: number | null, decimals: number): number => Number(value?.toFixed(decimals));

/** The sizes a workshop's list of resistances holds, thinnest first. */
const SIZES_MM2 = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50];

describe('worked examples of the calculators, as printed', () => {
  it('load current', () => {
    const load = loadCurrent({
      powerW: 24,
      ratedV: 12,
      model: 'constant power',
      minV: 11,
      maxV: 14.4,
      dutyFraction: 1,
    });
    expect(shown(load.atMinA, 2)).toBe(2.18);
    expect(shown(load.atRatedA, 1)).toBe(2);
    expect(shown(load.atMaxA, 2)).toBe(1.67);
    expect(shown(load.designA, 2)).toBe(2.18);
    expect(shown(load.averageA, 2)).toBe(2.18);
    expect(loadCurrent({ powerW: 24, ratedV: 12, model: 'resistive', minV: 11, maxV: 14.4 }).designA).toBeCloseTo(
      2.4,
      9,
    );
    expect(loadCurrent({ powerW: 24, ratedV: 12, model: 'constant current', minV: 11, maxV: 14.4 }).designA).toBe(2);
  });

  it('real current of a resistor strip', () => {
    const strip = stripCurrent({ labelAPerM: 0.4, lengthM: 5, labelV: 12, stringV: 9.2, systemV: 14.4 });
    expect(shown(strip.factor, 3)).toBe(1.857);
    expect(shown(strip.labelA, 1)).toBe(2);
    expect(shown(strip.labelW, 1)).toBe(24);
    expect(shown(strip.realA, 2)).toBe(3.71);
    expect(shown(strip.realW, 1)).toBe(53.5);
    expect(shown(strip.powerRatio, 2)).toBe(2.23);
    expect(strip.runsHot).toBe(true);
  });

  const pigtail = { areaMm2: 0.5, bundled: 2, ambientC: 50, insulationC: 90 };
  const sizer = (inrushA: number) =>
    fuseFor({
      currentA: 2.18,
      continuousFraction: 1 / 1.25,
      inrushA,
      inrushMs: 5,
      stockedA: STOCKED_FUSES_A,
      wires: [{ name: 'pigtail', limitA: wireLimit(pigtail).limitA }],
    });

  it('fuse sizer', () => {
    const fuse = sizer(12);
    if (!fuse.found) throw new Error(fuse.reasons.join(' '));
    expect(fuse.ratings.find(({ ratingA }) => ratingA === 3)).toMatchObject({
      state: 'too small',
      why: expect.stringContaining('inrush'),
    });
    expect(shown(2.18 * 1.25, 3)).toBe(2.725);
    expect(fuse).toMatchObject({ ratingA: 5, lowerBy: 'inrush', upperA: 5, upperBy: 'pigtail', inrushChecked: true });
    expect(shown(12 / fuse.ratingA, 1)).toBe(2.4);
    const none = sizer(0);
    expect(none).toMatchObject({ found: true, ratingA: 3, lowerBy: 'continuous load', inrushChecked: false });
    expect(shown(none.lowerA, 3)).toBe(2.725);
  });

  it('fuse sizer stops when the inrush outgrows the pigtail', () => {
    const fuse = sizer(20);
    expect(fuse.found).toBe(false);
    if (fuse.found) return;
    expect(fuse.reasons).toEqual(['The inrush needs a 7.5 A fuse, but pigtail may stand behind 5 A at most.']);
    expect(fuse.change).toHaveLength(2);
  });

  const gauge = (lengthM: number) =>
    gaugeFor({
      currentA: 2.18,
      lengthM,
      systemV: 12,
      allowedDropFraction: 0.03,
      conductorC: 60,
      jointOhm: 0.01,
      minFuseA: 5,
      sizesMm2: SIZES_MM2,
    });

  it('gauge chooser: chassis return, and the same run in two wires', () => {
    const chassis = gauge(8);
    if (!chassis.found) throw new Error(chassis.reasons.join(' '));
    expect(shown(chassis.allowedDropV, 2)).toBe(0.36);
    expect(chassis.areaMm2).toBe(1.5);
    expect(chassis.decidedBy).toBe('drop');
    expect(shown(chassis.dropV, 2)).toBe(0.29);
    expect(shown(chassis.dropFraction * 100, 2)).toBe(2.42);
    expect(chassis.limitA).toBe(15);
    const twoWire = gauge(16);
    if (!twoWire.found) throw new Error(twoWire.reasons.join(' '));
    expect(twoWire.areaMm2).toBe(2.5);
    expect(shown(twoWire.dropV, 3)).toBe(0.344);
    expect(shown(twoWire.dropFraction * 100, 2)).toBe(2.87);
    expect(twoWire.limitA).toBe(20);
  });

  it('every wire against its fuse', () => {
    const feed = { ...pigtail, areaMm2: 1.5 };
    const check = (fuseA: number, ambientC = 50) =>
      fuseProtects({
        fuseA,
        wires: [
          { name: 'pigtail', limitA: wireLimit({ ...pigtail, ambientC }).limitA },
          { name: 'feed', limitA: wireLimit({ ...feed, ambientC }).limitA },
        ],
      });
    expect(check(5).wires).toEqual([
      { name: 'pigtail', limitA: 5, verdict: 'pass' },
      { name: 'feed', limitA: 15, verdict: 'pass' },
    ]);
    expect(check(7.5)).toMatchObject({ protected: false, thinnest: 'pigtail', limitA: 5 });
    const hot = check(5, 70);
    expect(hot.wires[0]!.verdict).toBe('stop');
    expect(shown(hot.limitA, 2)).toBe(3.54);
    expect(shown(wireLimit({ ...pigtail, areaMm2: 0.75, ambientC: 70 }).limitA, 1)).toBe(5.3);
  });

  it('drop on a known run', () => {
    const drop = voltageDrop({
      currentA: 2.18,
      lengthM: 8,
      areaMm2: 1.5,
      temperatureC: 60,
      jointOhm: 0.01,
      supplyV: 12,
    });
    expect(shown(drop.dropV, 2)).toBe(0.29);
    expect(shown((drop.dropFraction ?? Number.NaN) * 100, 2)).toBe(2.42);
    expect(shown(drop.loadV, 2)).toBe(11.71);
    expect(shown(drop.lossW, 2)).toBe(0.63);
  });

  it('bundle and heat', () => {
    const limit = workshopLimit({ areaMm2: 1.5, wires: 6, ambientC: 60, insulationC: 90 });
    expect(limit.bundleFactor).toBe(0.7);
    expect(shown(limit.heatFactor, 3)).toBe(0.866);
    expect(shown(limit.limitA, 2)).toBe(9.09);
    expect(ratingAtMost({ limitA: limit.limitA })).toBe(7.5);
  });

  it('whether a short blows the fuse', () => {
    const run = { supplyV: 12, sourceOhm: 0.02, temperatureC: 60, jointOhm: 0.01, fuseA: 5 };
    const chassis = faultClears({ ...run, lengthM: 8, areaMm2: 1.5 });
    expect(shown(chassis.loopOhm * 1000, 1)).toBe(153.1);
    expect(shown(chassis.faultA, 1)).toBe(78.4);
    expect(shown(chassis.timesFuse, 1)).toBe(15.7);
    expect(chassis.verdict).toBe('pass');
    const thin = faultClears({ ...run, lengthM: 16, areaMm2: 0.5 });
    expect(shown(thin.loopOhm * 1000, 1)).toBe(752.1);
    expect(shown(thin.faultA, 1)).toBe(16);
    expect(shown(thin.timesFuse, 1)).toBe(3.2);
    expect(thin.verdict).toBe('stop');
  });

  it('relay chooser', () => {
    const relay = relayChoice({ loadA: 8, loadKind: 'motor', contactA: 30, coilOhm: 90, maxV: 14.4, outputA: 0.1 });
    expect(shown(relay.contactNeededA, 1)).toBe(20);
    expect(relay.contactVerdict).toBe('pass');
    expect(shown(relay.coilA * 1000, 1)).toBe(160);
    expect(shown(relay.coilW, 1)).toBe(2.3);
    expect(relay.outputVerdict).toBe('stop');
  });

  it('coil kick behind a diode, a resistor, nothing', () => {
    const coil = { maxV: 14.4, coilOhm: 90, inductanceH: 0.25, clampOhm: 680, releaseFraction: 0.3 };
    const diode = coilClamp({ ...coil, clamp: 'diode' });
    expect(shown(diode.currentA * 1000, 1)).toBe(160);
    expect(shown(diode.energyJ * 1000, 1)).toBe(3.2);
    expect(shown(diode.peakV, 1)).toBe(15.1);
    expect(shown((diode.releaseS ?? Number.NaN) * 1000, 2)).toBe(3.06);
    const resistor = coilClamp({ ...coil, clamp: 'resistor' });
    expect(shown(resistor.peakV, 1)).toBe(123.2);
    expect(shown((resistor.releaseS ?? Number.NaN) * 1000, 2)).toBe(0.39);
    expect(coilClamp({ ...coil, clamp: 'none' })).toMatchObject({ peakV: null, releaseS: null, verdict: 'stop' });
  });

  it('isolation diode', () => {
    const diode = isolationDiode({
      currentA: 2.18,
      forwardV: 0.45,
      heatKPerW: 50,
      ambientC: 60,
      junctionLimitC: 150,
      supplyV: 11,
    });
    expect(shown(diode.heatW, 2)).toBe(0.98);
    expect(shown(diode.junctionC, 0)).toBe(109);
    expect(diode.limitC).toBe(120);
    expect(shown(diode.loadV, 2)).toBe(10.55);
    expect(diode.verdict).toBe('pass');
  });

  it('standing days', () => {
    const stand = standingDays({
      capacityAh: 70,
      startFraction: 0.8,
      minFraction: 0.5,
      baseA: 0.025,
      addedA: 0.008,
      selfFractionPerMonth: 0.03,
    });
    expect(shown(stand.usableAh, 1)).toBe(21);
    expect(shown(stand.selfA * 1000, 1)).toBe(2.9);
    expect(shown(stand.daysBefore, 1)).toBe(31.3);
    expect(shown(stand.daysAfter, 1)).toBe(24.4);
    expect(stand.verdict).toBe('pass');
  });

  it('charge balance', () => {
    const day = { alternatorA: 120, idleFraction: 0.5, baseA: 45, accessoryA: 6, driveH: 2.5, idleH: 1, stoppedH: 6 };
    const balance = chargeBalance({ ...day, stoppedA: 4, acceptA: 20 });
    expect(balance.idleSurplusA).toBe(9);
    expect(balance.driveSurplusA).toBe(57);
    expect(balance.inAh).toBe(59);
    expect(balance.outAh).toBe(24);
    expect(shown(balance.netAh, 1)).toBe(29.1);
    expect(balance.verdict).toBe('pass');
    expect(chargeBalance({ ...day, accessoryA: 16, stoppedA: 4, acceptA: 20 }).verdict).toBe('warn');
    // Driving that gives nothing charges nothing; idling that takes is paid for.
    expect(chargeBalance({ ...day, accessoryA: 70, stoppedA: 4, acceptA: 20 })).toMatchObject({
      driveSurplusA: -7,
      inAh: -55,
      verdict: 'warn',
    });
  });

  it('run time', () => {
    const run = runTime({
      capacityAh: 100,
      usableFraction: 0.5,
      peukert: 1.1,
      startA: 10,
      startMin: 3,
      runA: 1.6,
      runH: 8,
    });
    expect(shown(run.oneRunAh, 1)).toBe(13.2);
    expect(shown(run.averageA, 2)).toBe(1.65);
    expect(run.usableAh).toBe(50);
    expect(shown(run.hours, 1)).toBe(30.3);
    expect(run.fullRuns).toBe(3);
  });

  it('charge time', () => {
    const charge = chargeTime({
      capacityAh: 100,
      fromFraction: 0.5,
      chargerA: 20,
      chargeFraction: 0.9,
      absorptionH: 3,
      outV: 14.4,
      inV: 12,
      converterFraction: 0.85,
    });
    expect(shown(charge.bulkH, 2)).toBe(1.67);
    expect(shown(charge.totalH, 2)).toBe(4.67);
    expect(shown(charge.inputA, 1)).toBe(28.2);
    expect(charge.inputFuseA).toBe(40);
  });

  it('strip cut and feed points', () => {
    const cut = stripCut({ wantMm: 2130, pitchMm: 50, realAPerM: 0.743, trackOhmPerM: 0.2, maxDropV: 0.5 });
    expect(cut).toMatchObject({ groups: 42, cutMm: 2100, gapMm: 30, feeds: 1 });
    expect(shown(cut.stripA, 2)).toBe(1.56);
    expect(shown(cut.endDropV, 3)).toBe(0.328);
    expect(stripCut({ wantMm: 10_000, pitchMm: 50, realAPerM: 0.743, trackOhmPerM: 0.2, maxDropV: 0.5 }).feeds).toBe(4);
  });

  it('wind and shock', () => {
    const load = windLoad({
      areaM2: 0.06,
      dragCoefficient: 1.2,
      speedKmh: 110,
      gustKmh: 40,
      massKg: 3.2,
      shockG: 5,
      fixings: 4,
      safetyFactor: 4,
    });
    expect(shown(load.windN, 1)).toBe(76.6);
    expect(shown(load.shockN, 0)).toBe(157);
    expect(shown(load.totalN, 1)).toBe(233.5);
    expect(shown(load.perFixingN, 1)).toBe(233.5);
  });

  it('camera view', () => {
    const view = cameraView({ heightM: 2.2, tiltDeg: 40, verticalDeg: 80, horizontalDeg: 120, atM: 2 });
    expect(shown(view.blindM, 2)).toBe(0.39);
    expect(view.farEdgeM).toBeNull();
    expect(shown(view.widthM, 1)).toBe(10.2);
    const steep = cameraView({ heightM: 2, tiltDeg: 60, verticalDeg: 60, horizontalDeg: 90, atM: 2 });
    expect(steep.blindM).toBe(0);
    expect(steep.farEdgeM).toBeCloseTo(2 * Math.sqrt(3), 9);
  });
});

it('takes a rating that is equal but for the last binary digit', () => {
  expect(ratingAtLeast({ currentA: 0.1 + 0.2, ratingsA: [0.3, 1] })).toBe(0.3);
  expect(ratingAtMost({ limitA: 0.7 * 0.1, ratingsA: [0.07, 1] })).toBe(0.07);
  expect(ratingAtLeast({ currentA: 151 })).toBeNull();
  expect(ratingAtMost({ limitA: 0.9 })).toBeNull();
});

it('gives thin wire the smaller insulation gap', () => {
  expect(insulationGap({ gaugeAwg: 20 }).maxMm).toBe(0.75);
  expect(insulationGap({ gaugeAwg: 18 }).maxMm).toBe(1.25);
});

it('keeps the resistances and limits of the workshop list as printed', () => {
  const milliohm = SIZES_MM2.map(
    (areaMm2) => tables.CLASS_5_PLAIN.find((row) => row.areaMm2 === areaMm2)!.resistanceOhmPerM * 1000,
  );
  expect(milliohm.map((each) => Number(each.toPrecision(3)))).toEqual([
    39, 26, 19.5, 13.3, 7.98, 4.95, 3.3, 1.91, 1.21, 0.78, 0.554, 0.386,
  ]);
  const limits = SIZES_MM2.map((areaMm2) => tables.WORKSHOP_LIMITS.find((row) => row.areaMm2 === areaMm2)!.limitA);
  expect(limits).toEqual([5, 7.5, 10, 15, 20, 30, 40, 60, 80, 100, 125, 150]);
});
