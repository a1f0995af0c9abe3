import { oneOf, positive, within } from './guard.ts';

/** How a load takes current as the voltage moves. */
export const LOAD_MODELS = ['constant power', 'resistive', 'constant current'] as const;
export type LoadModel = (typeof LOAD_MODELS)[number];

/**
 * Current of a load over the range of the supply. Fuse and wire go by `designA`; `averageA` is for battery sums only.
 *
 * @param options `powerW` above 0 to 10 000 (label power of all loads), `ratedV` 1 to 60 (voltage that power is for), `model` electronic lamp or charger `constant power`, heater or filament `resistive`, regulated driver `constant current`; `minV` and `maxV` 1 to 60 at the load, `minV` not above `maxV`; `dutyFraction` 0.01 to 1 share of time on (default 1).
 * @returns `atMinA`, `atRatedA`, `atMaxA`, `designA` the largest of the three, `averageA`.
 * @throws TypeError or RangeError when a value is out of range or the model unknown.
 * Formula: constant power I = P/V; resistive I = P/Vr × V/Vr; constant current I = P/Vr.
 * @source Ohm's law.
 * @example loadCurrent({ powerW: 24, ratedV: 12, model: 'constant power', minV: 11, maxV: 14.4 }).designA // 2.18
 */
export function loadCurrent({
  powerW,
  ratedV,
  model,
  minV,
  maxV,
  dutyFraction = 1,
}: {
  powerW: number;
  ratedV: number;
  model: LoadModel;
  minV: number;
  maxV: number;
  dutyFraction?: number;
}): { atMinA: number; atRatedA: number; atMaxA: number; designA: number; averageA: number } {
  const where = 'loadCurrent';
  positive(where, 'powerW', powerW, 'W');
  within(where, 'powerW', powerW, 0, 10_000, 'W');
  within(where, 'ratedV', ratedV, 1, 60, 'V');
  within(where, 'maxV', maxV, 1, 60, 'V');
  within(where, 'minV', minV, 1, maxV, 'V');
  within(where, 'dutyFraction', dutyFraction, 0.01, 1);
  oneOf(where, 'model', model, LOAD_MODELS);
  const at = (volts: number): number => {
    if (model === 'constant power') return powerW / volts;
    if (model === 'resistive') return (powerW / ratedV) * (volts / ratedV);
    return powerW / ratedV;
  };
  const atMinA = at(minV);
  const atRatedA = at(ratedV);
  const atMaxA = at(maxV);
  const designA = Math.max(atMinA, atRatedA, atMaxA);
  return { atMinA, atRatedA, atMaxA, designA, averageA: designA * dutyFraction };
}
