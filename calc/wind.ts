import { whole, within } from './guard.ts';

/** Density of air at sea level and 15 °C [kg/m³], and gravity as the trade rounds it [m/s²]. */
const AIR_KG_PER_M3 = 1.225;
const GRAVITY_M_PER_S2 = 9.81;

/**
 * Wind and shock on a part outside, and what each fixing must hold. Defer to the vehicle's roof-load limit and to local rules.
 *
 * @param options `areaM2` frontal 0.0001 to 10; `dragCoefficient` 0.1 to 3 (flat face 1.2); `speedKmh` 0 to 300; `gustKmh` 0 to 150; `massKg` 0.01 to 500; `shockG` 0 to 50; `fixings` 1 to 200; `safetyFactor` 1 to 20.
 * @returns `windN`, `shockN`, `totalN`, `perFixingN`.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: wind = 0.5 × 1.225 × Cd × A × v²; shock = m × g × 9.81; per fixing = (wind + shock) × safety / fixings.
 * @source drag equation; shock, gust and factor: common practice, no source.
 * @example windLoad({ areaM2: 0.06, dragCoefficient: 1.2, speedKmh: 110, gustKmh: 40, massKg: 3.2, shockG: 5, fixings: 4, safetyFactor: 4 }).windN // 76.6
 */
export function windLoad({
  areaM2,
  dragCoefficient,
  speedKmh,
  gustKmh,
  massKg,
  shockG,
  fixings,
  safetyFactor,
}: {
  areaM2: number;
  dragCoefficient: number;
  speedKmh: number;
  gustKmh: number;
  massKg: number;
  shockG: number;
  fixings: number;
  safetyFactor: number;
}): { windN: number; shockN: number; totalN: number; perFixingN: number } {
  const where = 'windLoad';
  within(where, 'areaM2', areaM2, 0.0001, 10, 'm²');
  within(where, 'dragCoefficient', dragCoefficient, 0.1, 3);
  within(where, 'speedKmh', speedKmh, 0, 300, 'km/h');
  within(where, 'gustKmh', gustKmh, 0, 150, 'km/h');
  within(where, 'massKg', massKg, 0.01, 500, 'kg');
  within(where, 'shockG', shockG, 0, 50, 'g');
  whole(where, 'fixings', fixings, 1, 200);
  within(where, 'safetyFactor', safetyFactor, 1, 20);
  const speedMPerS = (speedKmh + gustKmh) / 3.6;
  const windN = 0.5 * AIR_KG_PER_M3 * dragCoefficient * areaM2 * speedMPerS ** 2;
  const shockN = massKg * shockG * GRAVITY_M_PER_S2;
  const totalN = windN + shockN;
  return { windN, shockN, totalN, perFixingN: (totalN * safetyFactor) / fixings };
}
