import { awg } from './conductor.ts';
import { finite, positive, within } from './guard.ts';
import { METALS } from './tables/copper.ts';
import { SAE_AREAS } from './tables/gauges.ts';

/**
 * Copper area that keeps a run's drop within a limit, by a trade's own resistivity.
 *
 * @param options `currentA` above 0; `lengthM` of copper, out and back, above 0 (never doubled here); `allowedDropV` above 0; `resistivityOhmMm2PerM` above 0 (annealed copper 0.017241; small craft 0.01787, as 10.75 ohm cmil/ft).
 * @returns area [mm²]; take the next larger size.
 * @throws TypeError or RangeError when a value is not above 0.
 * Formula: A = ρ × I × L / V, the marine formula in SI units.
 * @source ABYC E-11 formula, as chandlers quote it; Kuphaldt, Lessons in Electric Circuits, vol. I ch. 12.
 * @example areaForDropMm2({ currentA: 10, lengthM: 6.4008, allowedDropV: 0.36, resistivityOhmMm2PerM: 0.017241 }) // 3.065
 */
export function areaForDropMm2({
  currentA,
  lengthM,
  allowedDropV,
  resistivityOhmMm2PerM,
}: {
  currentA: number;
  lengthM: number;
  allowedDropV: number;
  resistivityOhmMm2PerM: number;
}): number {
  const where = 'areaForDropMm2';
  positive(where, 'currentA', currentA, 'A');
  positive(where, 'lengthM', lengthM, 'm');
  positive(where, 'allowedDropV', allowedDropV, 'V');
  positive(where, 'resistivityOhmMm2PerM', resistivityOhmMm2PerM, 'ohm mm2/m');
  return (resistivityOhmMm2PerM * currentA * lengthM) / allowedDropV;
}

/** Every AWG number, thinnest first. */
const ALL_AWG: readonly number[] = Array.from({ length: 44 }, (_, index) => 40 - index);

/**
 * The thinnest AWG size with at least an area: the next larger, never the nearest.
 *
 * @param options `areaMm2` above 0; `sizes` AWG numbers to choose from (default all from 40 to 4/0).
 * @returns the gauge number, or null when even the thickest has less copper.
 * @throws TypeError or RangeError when the area is not above 0.
 * @source ASTM B258, diameter law.
 * @example awgNotBelow({ areaMm2: 3.18 }) // 12
 */
export function awgNotBelow({
  areaMm2,
  sizes = ALL_AWG,
}: {
  areaMm2: number;
  sizes?: readonly number[];
}): number | null {
  positive('awgNotBelow', 'areaMm2', areaMm2, 'mm²');
  const thick = sizes.filter((gaugeAwg) => awg({ gaugeAwg }).areaMm2 >= areaMm2 * (1 - 1e-9));
  return thick.length === 0 ? null : Math.max(...thick);
}

/**
 * The thinnest SAE size with at least an area. By SAE areas a run often needs one size more than by AWG.
 *
 * @param options `areaCmil` above 0.
 * @returns the SAE number, or null when even the thickest has less copper.
 * @throws TypeError or RangeError when the area is not above 0.
 * @source SAE J1128 / J1127 areas, as chandlers and battery-cable pages reprint them.
 * @example saeNotBelow({ areaCmil: 1881 }) // 16
 */
export function saeNotBelow({ areaCmil }: { areaCmil: number }): number | null {
  positive('saeNotBelow', 'areaCmil', areaCmil, 'cmil');
  const thick = SAE_AREAS.filter((row) => row.areaCmil >= areaCmil * (1 - 1e-9)).map((row) => row.gaugeSae);
  return thick.length === 0 ? null : Math.max(...thick);
}

/**
 * Longest copper a current may run through for an allowed drop.
 *
 * @param options `resistanceOhmPerM` above 0; `currentA` above 0; `allowedDropV` above 0.
 * @returns metres of copper, out and back together. Published charts come out about 2 % shorter.
 * @throws TypeError or RangeError when a value is not above 0.
 * Formula: L = V / (R × I).
 * @source Ohm's law; FAA AC 43.13-1B Table 11-8.
 * @example longestRunM({ resistanceOhmPerM: 0.0133, currentA: 5, allowedDropV: 0.36 }) // 5.414
 */
export function longestRunM({
  resistanceOhmPerM,
  currentA,
  allowedDropV,
}: {
  resistanceOhmPerM: number;
  currentA: number;
  allowedDropV: number;
}): number {
  const where = 'longestRunM';
  positive(where, 'resistanceOhmPerM', resistanceOhmPerM, 'ohm/m');
  positive(where, 'currentA', currentA, 'A');
  positive(where, 'allowedDropV', allowedDropV, 'V');
  return allowedDropV / (resistanceOhmPerM * currentA);
}

/** Temperature at which the straight line of copper's resistance reaches zero, below zero Celsius. */
const COPPER_ZERO_C = 234.5;

/**
 * Length left of a run that was worked out at 20 °C when its copper is warmer.
 *
 * @param options `lengthM` above 0; `temperatureC` of the copper, -60 to 400.
 * @returns metres.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: L2 = 254.5 × L1 / (234.5 + T).
 * @source FAA AC 43.13-1B par. 11-66d(4).
 * @example hotLengthM({ lengthM: 10, temperatureC: 75 }) // 8.223
 */
export function hotLengthM({ lengthM, temperatureC }: { lengthM: number; temperatureC: number }): number {
  positive('hotLengthM', 'lengthM', lengthM, 'm');
  within('hotLengthM', 'temperatureC', temperatureC, -60, 400, '°C');
  return ((COPPER_ZERO_C + 20) * lengthM) / (COPPER_ZERO_C + temperatureC);
}

/**
 * Estimated temperature of a loaded wire.
 *
 * @param options `ambientC` -60 to 200; `ratedC` of the wire, above ambient, to 400; `currentA` 0 or more; `maxCurrentA` it may carry in this place, above 0 and not below the current.
 * @returns °C.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: T = Tair + (Trated − Tair) × √(I / Imax). Physics would square it; the circular's root is on the warm side.
 * @source FAA AC 43.13-1B par. 11-66d(6) (formula from memory).
 * @example loadedWireC({ ambientC: 50, ratedC: 200, currentA: 20, maxCurrentA: 26 }) // 181.6
 */
export function loadedWireC({
  ambientC,
  ratedC,
  currentA,
  maxCurrentA,
}: {
  ambientC: number;
  ratedC: number;
  currentA: number;
  maxCurrentA: number;
}): number {
  const where = 'loadedWireC';
  within(where, 'ambientC', ambientC, -60, 200, '°C');
  within(where, 'ratedC', ratedC, ambientC, 400, '°C');
  positive(where, 'maxCurrentA', maxCurrentA, 'A');
  within(where, 'currentA', currentA, 0, maxCurrentA, 'A');
  return ambientC + (ratedC - ambientC) * Math.sqrt(currentA / maxCurrentA);
}

/** What a source, its wires and a load settle at. */
export interface SeriesCircuit {
  currentA: number;
  loadV: number;
  dropPerWireV: number;
}

/**
 * A resistive load on two like wires: the current that flows, whatever a drop calculator fed with a wish may say.
 *
 * @param options `sourceV` above 0; `loadOhm` 0 or more; `wireOhmEach` at 20 °C, above 0; `temperatureC` of the wires -60 to 200 (default 20); `tempCoefficientPerK` (default annealed copper, 0.00393). The load does not warm.
 * @returns `currentA`, `loadV`, `dropPerWireV`.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: I = V / (2 Rw + Rl), Rw = R20 × (1 + α × (T − 20)).
 * @source Ohm's law; Kuphaldt, Lessons in Electric Circuits, vol. I ch. 12.
 * @example seriesCircuit({ sourceV: 14, loadOhm: 250, wireOhmEach: 15 }).loadV // 12.5
 */
export function seriesCircuit({
  sourceV,
  loadOhm,
  wireOhmEach,
  temperatureC = 20,
  tempCoefficientPerK = METALS[0]!.tempCoefficientPerK,
}: {
  sourceV: number;
  loadOhm: number;
  wireOhmEach: number;
  temperatureC?: number;
  tempCoefficientPerK?: number;
}): SeriesCircuit {
  const where = 'seriesCircuit';
  positive(where, 'sourceV', sourceV, 'V');
  within(where, 'loadOhm', loadOhm, 0, 1e9, 'ohm');
  positive(where, 'wireOhmEach', wireOhmEach, 'ohm');
  within(where, 'temperatureC', temperatureC, -60, 200, '°C');
  finite(where, 'tempCoefficientPerK', tempCoefficientPerK);
  const wireOhm = wireOhmEach * (1 + tempCoefficientPerK * (temperatureC - 20));
  const currentA = sourceV / (2 * wireOhm + loadOhm);
  return { currentA, loadV: currentA * loadOhm, dropPerWireV: currentA * wireOhm };
}
