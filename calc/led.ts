import { positive, whole, within } from './guard.ts';

/**
 * Series resistor for a string of LEDs at a current.
 *
 * @param options `supplyV` above the string's drop, to 60; `ledCount` 1 to 100; `forwardV` of one LED 0.5 to 10; `currentA` above 0 to 10.
 * @returns ohm. Take the next larger value sold.
 * @throws TypeError or RangeError when a value is out of range or the LEDs leave no voltage for a resistor.
 * Formula: R = (V − n × Vf) / I.
 * @source Ohm's law; electronics question-and-answer page, lighting three LEDs.
 * @example ledResistorOhm({ supplyV: 12, ledCount: 3, forwardV: 3.2, currentA: 0.02 }) // 120
 */
export function ledResistorOhm({
  supplyV,
  ledCount,
  forwardV,
  currentA,
}: {
  supplyV: number;
  ledCount: number;
  forwardV: number;
  currentA: number;
}): number {
  const where = 'ledResistorOhm';
  positive(where, 'currentA', currentA, 'A');
  return headroomV(where, supplyV, ledCount, forwardV) / currentA;
}

/** Volts left for the resistor; LEDs that leave none are a wrong string, not a bright one. */
function headroomV(where: string, supplyV: number, ledCount: number, forwardV: number): number {
  within(where, 'supplyV', supplyV, 0, 60, 'V');
  whole(where, 'ledCount', ledCount, 1, 100);
  within(where, 'forwardV', forwardV, 0.5, 10, 'V');
  return positive(where, `supplyV less ${ledCount} LEDs`, supplyV - ledCount * forwardV, 'V');
}

/**
 * One section of an LED strip: a string of LEDs and its resistor, at any supply voltage.
 *
 * @param options `supplyV` above the string's drop, to 60; `ledCount` 1 to 100; `forwardV` 0.5 to 10, held constant; `resistorOhm` above 0.
 * @returns `currentA`, `resistorW`, `sectionW`.
 * @throws TypeError or RangeError when a value is out of range or the LEDs leave no voltage for the resistor.
 * Formula: I = (V − n × Vf) / R; 20 % more volts can be 80 % more current.
 * @source Ohm's law; electronics magazine, brake light circuit.
 * @example ledSection({ supplyV: 14.4, ledCount: 3, forwardV: 3, resistorOhm: 150 }).currentA // 0.036
 */
export function ledSection({
  supplyV,
  ledCount,
  forwardV,
  resistorOhm,
}: {
  supplyV: number;
  ledCount: number;
  forwardV: number;
  resistorOhm: number;
}): { currentA: number; resistorW: number; sectionW: number } {
  const where = 'ledSection';
  positive(where, 'resistorOhm', resistorOhm, 'ohm');
  const currentA = headroomV(where, supplyV, ledCount, forwardV) / resistorOhm;
  return { currentA, resistorW: currentA * currentA * resistorOhm, sectionW: currentA * supplyV };
}

/**
 * How much more current a string with a resistor takes when the supply rises: the same resistor, so the ratio of headrooms.
 *
 * @param options `supplyV`, `raisedV` above the string's drop, to 60; `ledCount` 1 to 100; `forwardV` 0.5 to 10.
 * @returns the ratio of the two currents.
 * @throws TypeError or RangeError when a value is out of range or the LEDs leave no voltage for the resistor.
 * Formula: (V2 − n × Vf) / (V1 − n × Vf).
 * @source hobby page on LEDs in cars and trucks, three-LED string.
 * @example ledCurrentRatio({ supplyV: 12.6, raisedV: 13.5, ledCount: 3, forwardV: 3.6 }) // 1.5
 */
export function ledCurrentRatio({
  supplyV,
  raisedV,
  ledCount,
  forwardV,
}: {
  supplyV: number;
  raisedV: number;
  ledCount: number;
  forwardV: number;
}): number {
  const where = 'ledCurrentRatio';
  return headroomV(where, raisedV, ledCount, forwardV) / headroomV(where, supplyV, ledCount, forwardV);
}

/** Above this ratio of real to label power a resistor strip runs hot: a metal profile, or a regulator. */
const HOT_POWER_RATIO = 1.5;

/**
 * Real current of a resistor LED strip at the vehicle's voltage, which is more than its label says.
 *
 * @param options `labelAPerM` 0.001 to 10 at label voltage, `lengthM` 0.02 to 100, `labelV` 1 to 60, `stringV` total LED drop of one group 60 to 90 % of `labelV`, `systemV` highest voltage from `labelV` to 1.25 × `labelV`.
 * @returns `factor`, `labelA`, `labelW`, `realA`, `realW`, `powerRatio`, `runsHot`.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: k = (V − Vs)/(Vlabel − Vs); real A = A/m × length × k; real W = real A × V.
 * @source Ohm's law, LEDs and one resistor in series; group drop 9.0 to 9.3 V: common practice, no source. Measure one metre.
 * @example stripCurrent({ labelAPerM: 0.4, lengthM: 5, labelV: 12, stringV: 9.2, systemV: 14.4 }).realA // 3.71
 */
export function stripCurrent({
  labelAPerM,
  lengthM,
  labelV,
  stringV,
  systemV,
}: {
  labelAPerM: number;
  lengthM: number;
  labelV: number;
  stringV: number;
  systemV: number;
}): {
  factor: number;
  labelA: number;
  labelW: number;
  realA: number;
  realW: number;
  powerRatio: number;
  runsHot: boolean;
} {
  const where = 'stripCurrent';
  within(where, 'labelAPerM', labelAPerM, 0.001, 10, 'A/m');
  within(where, 'lengthM', lengthM, 0.02, 100, 'm');
  within(where, 'labelV', labelV, 1, 60, 'V');
  within(where, 'stringV', stringV, 0.6 * labelV, 0.9 * labelV, 'V');
  within(where, 'systemV', systemV, labelV, 1.25 * labelV, 'V');
  const factor = (systemV - stringV) / (labelV - stringV);
  const labelA = labelAPerM * lengthM;
  const labelW = labelA * labelV;
  const realA = labelA * factor;
  const realW = realA * systemV;
  const powerRatio = realW / labelW;
  return { factor, labelA, labelW, realA, realW, powerRatio, runsHot: powerRatio > HOT_POWER_RATIO };
}

/**
 * Current of a strip from its label power.
 *
 * @param options `powerWPerM` above 0; `supplyV` above 0 the label voltage; `lengthM` above 0.
 * @returns `currentA`, `currentAPerM`.
 * @throws TypeError or RangeError when a value is not above 0.
 * Formula: I = P/V.
 * @source Ohm's law; power classes of strips: common practice, no source.
 * @example stripLabelCurrent({ powerWPerM: 4.8, supplyV: 12, lengthM: 5 }).currentA // 2
 */
export function stripLabelCurrent({
  powerWPerM,
  supplyV,
  lengthM,
}: {
  powerWPerM: number;
  supplyV: number;
  lengthM: number;
}): { currentA: number; currentAPerM: number } {
  const where = 'stripLabelCurrent';
  positive(where, 'powerWPerM', powerWPerM, 'W/m');
  positive(where, 'supplyV', supplyV, 'V');
  positive(where, 'lengthM', lengthM, 'm');
  const currentAPerM = powerWPerM / supplyV;
  return { currentA: currentAPerM * lengthM, currentAPerM };
}

/**
 * Voltage lost to the farthest point of a strip whose current leaves evenly along it.
 *
 * @param options `currentAPerM` 0 to 10; `trackOhmPerM` copper tracks out and back, 0 to 10; `lengthM` 0 to 100; `ends` 1 fed at one end (default), 2 at both.
 * @returns volts: half of what a single load at the end would lose; a quarter of that when fed at both ends.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: i × r × L² / 2, and L² / 8 from both ends.
 * @source uniform line load (Kirchhoff's laws).
 * @example stripEndDropV({ currentAPerM: 1.2, trackOhmPerM: 0.05, lengthM: 5 }) // 0.75
 */
export function stripEndDropV({
  currentAPerM,
  trackOhmPerM,
  lengthM,
  ends = 1,
}: {
  currentAPerM: number;
  trackOhmPerM: number;
  lengthM: number;
  ends?: 1 | 2;
}): number {
  const where = 'stripEndDropV';
  within(where, 'currentAPerM', currentAPerM, 0, 10, 'A/m');
  within(where, 'trackOhmPerM', trackOhmPerM, 0, 10, 'ohm/m');
  within(where, 'lengthM', lengthM, 0, 100, 'm');
  whole(where, 'ends', ends, 1, 2);
  const reachM = lengthM / ends;
  return (currentAPerM * trackOhmPerM * reachM * reachM) / 2;
}

/**
 * Far-end voltage of a strip that behaves as a pure resistance, as a share of the near end. A resistor strip sits between
 * this and the even load of `stripEndDropV`.
 *
 * @param options `trackOhmPerM` out and back 0 to 10; `loadSiemensPerM` 0 to 10; `lengthM` 0 to 100.
 * @returns the share, 1 for no loss.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: 1 / cosh(L × √(r × g)).
 * @source transmission of a DC ladder.
 * @example stripFarShare({ trackOhmPerM: 0.05, loadSiemensPerM: 0.1, lengthM: 5 }) // 0.9406
 */
export function stripFarShare({
  trackOhmPerM,
  loadSiemensPerM,
  lengthM,
}: {
  trackOhmPerM: number;
  loadSiemensPerM: number;
  lengthM: number;
}): number {
  const where = 'stripFarShare';
  within(where, 'trackOhmPerM', trackOhmPerM, 0, 10, 'ohm/m');
  within(where, 'loadSiemensPerM', loadSiemensPerM, 0, 10, 'S/m');
  within(where, 'lengthM', lengthM, 0, 100, 'm');
  return 1 / Math.cosh(lengthM * Math.sqrt(trackOhmPerM * loadSiemensPerM));
}

/**
 * Current in the common wire of a colour strip: all colours at once. Size and fuse the common wire for this.
 *
 * @param options `coloursA` current of each colour, 0 to 100 A each, at least one.
 * @returns amperes.
 * @throws TypeError or RangeError when a value is out of range or none is given.
 * Formula: sum of the colours.
 * @source Kirchhoff's current law on a common-anode strip.
 * @example commonCurrentA({ coloursA: [0.6, 0.5, 0.5] }) // 1.6
 */
export function commonCurrentA({ coloursA }: { coloursA: readonly number[] }): number {
  if (coloursA.length === 0)
    throw new RangeError('commonCurrentA: unexpected coloursA [], expected at least one colour');
  return coloursA.reduce((sum, each) => sum + within('commonCurrentA', 'coloursA', each, 0, 100, 'A'), 0);
}

/** More feed points than this and the strip is the wrong strip. */
const MOST_FEEDS = 100;

/**
 * Where to cut a strip for a space, and how many points to feed it from.
 *
 * @param options `wantMm` space 20 to 100 000, `pitchMm` between cut marks 5 to 200 and not above `wantMm`, `realAPerM` 0.001 to 10 (from `stripCurrent`, not the label), `trackOhmPerM` out and back 0.001 to 10 (unknown: 0.2, then measure), `maxDropV` 0.01 to 10.
 * @returns `groups`, `cutMm`, `gapMm`, `stripA`, `endDropV` fed at one end, `feeds`.
 * @throws TypeError or RangeError when a value is out of range or no number of feeds up to 100 serves.
 * Formula: groups = ⌊space/pitch⌋; drop = I × r × L / 2; feeds n until (I/n) × r × (L/n) / 2 ≤ allowed.
 * @source even-load line; 0.2 ohm/m: common practice, no source.
 * @example stripCut({ wantMm: 2130, pitchMm: 50, realAPerM: 0.743, trackOhmPerM: 0.2, maxDropV: 0.5 }).cutMm // 2100
 */
export function stripCut({
  wantMm,
  pitchMm,
  realAPerM,
  trackOhmPerM,
  maxDropV,
}: {
  wantMm: number;
  pitchMm: number;
  realAPerM: number;
  trackOhmPerM: number;
  maxDropV: number;
}): { groups: number; cutMm: number; gapMm: number; stripA: number; endDropV: number; feeds: number } {
  const where = 'stripCut';
  within(where, 'wantMm', wantMm, 20, 100_000, 'mm');
  within(where, 'pitchMm', pitchMm, 5, Math.min(200, wantMm), 'mm');
  within(where, 'realAPerM', realAPerM, 0.001, 10, 'A/m');
  within(where, 'trackOhmPerM', trackOhmPerM, 0.001, 10, 'ohm/m');
  within(where, 'maxDropV', maxDropV, 0.01, 10, 'V');
  const groups = Math.floor(wantMm / pitchMm + 1e-9);
  const cutMm = groups * pitchMm;
  const lengthM = cutMm / 1000;
  const stripA = realAPerM * lengthM;
  const endDropV = (stripA * trackOhmPerM * lengthM) / 2;
  const feeds = Math.max(1, Math.ceil(Math.sqrt(endDropV / maxDropV) - 1e-9));
  if (feeds > MOST_FEEDS) throw new RangeError(`${where}: unexpected ${feeds} feeds, expected ${MOST_FEEDS} at most`);
  return { groups, cutMm, gapMm: wantMm - cutMm, stripA, endDropV, feeds };
}
