import { finite, oneOf, positive, within } from './guard.ts';
import {
  CHARGE_END,
  CHARGE_FACTOR,
  PARKED_DRAIN,
  RESERVE_RATES,
  RESTING_CORRECTION,
  RESTING_V,
  type RestingRow,
  SELF_DISCHARGE_MILD,
} from './tables/battery.ts';
import { type Source, sourceOf } from './tables/rows.ts';
import { atMost, type Verdict } from './verdict.ts';

/** Straight line through two points, read at x. */
const between = (x: number, x0: number, y0: number, x1: number, y1: number): number =>
  y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);

const RESTING_SETS = ['maker', 'rounded', 'motorhome'] as const;

/**
 * Voltage of a rested 12 V lead-acid battery at a state of charge. Rest it 8 h first; tables differ by 0.1 V.
 *
 * @param options `stateOfChargeFraction` 0 to 1; `set` which published table (default `maker`).
 * @returns `openCircuitV`, `specificGravity` of the acid (null where the table has none), `source`; null where the table does not reach.
 * @throws TypeError or RangeError when the charge is out of range or the set unknown.
 * Formula: straight line between the table's points.
 * @source battery maker's state-of-charge page, table for 26.7 °C.
 * @example restingVoltage({ stateOfChargeFraction: 0.5 })?.openCircuitV // 12.24
 */
export function restingVoltage({
  stateOfChargeFraction,
  set = 'maker',
}: {
  stateOfChargeFraction: number;
  set?: RestingRow['set'];
}): { openCircuitV: number; specificGravity: number | null; source: Source } | null {
  within('restingVoltage', 'stateOfChargeFraction', stateOfChargeFraction, 0, 1);
  oneOf('restingVoltage', 'set', set, RESTING_SETS);
  const rows = RESTING_V.filter((row) => row.set === set);
  const high = rows.find((row) => row.stateOfChargeFraction >= stateOfChargeFraction);
  const low = rows.findLast((row) => row.stateOfChargeFraction <= stateOfChargeFraction);
  if (high === undefined || low === undefined) return null;
  const source = sourceOf('resting voltage', low);
  if (high === low) return { openCircuitV: low.openCircuitV, specificGravity: low.specificGravity ?? null, source };
  const read = (y0: number, y1: number): number =>
    between(stateOfChargeFraction, low.stateOfChargeFraction, y0, high.stateOfChargeFraction, y1);
  return {
    openCircuitV: read(low.openCircuitV, high.openCircuitV),
    specificGravity:
      low.specificGravity === undefined || high.specificGravity === undefined
        ? null
        : read(low.specificGravity, high.specificGravity),
    source,
  };
}

/**
 * What to add to the reading of a resting battery that is not at the table's temperature.
 *
 * @param options `temperatureC` of the battery, -40 to 60.
 * @returns volts, negative in the cold.
 * @throws TypeError or RangeError when the temperature is out of range.
 * Formula: 0.024 V per 10 °F about 80 °F.
 * @source battery maker's state-of-charge page, temperature compensation table.
 * @example restingCorrectionV({ temperatureC: -17.8 }) // -0.192
 */
export function restingCorrectionV({ temperatureC }: { temperatureC: number }): number {
  within('restingCorrectionV', 'temperatureC', temperatureC, -40, 60, '°C');
  return RESTING_CORRECTION.voltPerK * (temperatureC - RESTING_CORRECTION.aboutC);
}

/**
 * Ampere-hours behind a reserve capacity in minutes. Two rules give two answers because they drain at two rates.
 *
 * @param options `reserveMin` 1 to 1000 min; `rate` `slow` for parked drain, `25 A` for the rate of the test.
 * @returns `capacityAh`, `source`.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: × 0.6 slow, × 25/60 at 25 A.
 * @source service bulletin text on parked drain; public car battery FAQ.
 * @example capacityFromReserve({ reserveMin: 100, rate: 'slow' }).capacityAh // 60
 */
export function capacityFromReserve({ reserveMin, rate }: { reserveMin: number; rate: 'slow' | '25 A' }): {
  capacityAh: number;
  source: Source;
} {
  within('capacityFromReserve', 'reserveMin', reserveMin, 1, 1000, 'min');
  oneOf('capacityFromReserve', 'rate', rate, ['slow', '25 A']);
  const row = RESERVE_RATES.find((each) => each.rate === rate)!;
  return { capacityAh: reserveMin * row.ahPerMin, source: sourceOf('reserve capacity to ampere-hours', row) };
}

/**
 * Largest parked drain a battery of a reserve capacity should see.
 *
 * @param options `reserveMin` 1 to 1000 min.
 * @returns amperes.
 * @throws TypeError or RangeError when the value is out of range.
 * Formula: reserve capacity over 4, read as milliamperes.
 * @source vehicle maker's service manual, battery drain test.
 * @example parkedDrainLimitA({ reserveMin: 100 }) // 0.025
 */
export function parkedDrainLimitA({ reserveMin }: { reserveMin: number }): number {
  return within('parkedDrainLimitA', 'reserveMin', reserveMin, 1, 1000, 'min') * PARKED_DRAIN.ampPerReserveMin;
}

/**
 * Self-discharge at a temperature: doubles for every 10 K.
 *
 * @param options `temperatureC` -40 to 60; `percentPerMonth` at 20 °C, 0 to 100 (default 5, a mild-weather middle; types span 2 to 40).
 * @returns percent of capacity a month.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: p × 2^((T − 20)/10).
 * @source public articles on lead-acid storage; battery supplier's article on self-discharge.
 * @example selfDischargePercentPerMonth({ temperatureC: 30 }) // 10
 */
export function selfDischargePercentPerMonth({
  temperatureC,
  percentPerMonth = SELF_DISCHARGE_MILD.percentPerMonth,
}: {
  temperatureC: number;
  percentPerMonth?: number;
}): number {
  within('selfDischargePercentPerMonth', 'temperatureC', temperatureC, -40, 60, '°C');
  within('selfDischargePercentPerMonth', 'percentPerMonth', percentPerMonth, 0, 100, '%');
  const { temperatureC: aboutC, doublesPerK } = SELF_DISCHARGE_MILD;
  return percentPerMonth * 2 ** ((temperatureC - aboutC) / doublesPerK);
}

/** Hours in the month that self-discharge is counted by. */
const MONTH_H = 720;
/** Days a vehicle should stand and still start. Common practice, no source: a workshop setting. */
const STANDING_DAYS = 21;

/**
 * How long a parked vehicle stands before its battery will not start it, before and after the work.
 *
 * @param options `capacityAh` 0.1 to 2000; `startFraction` charge when parked 0.05 to 1; `minFraction` charge that still starts, 0 to below `startFraction`; `baseA` sleep current before the work 0 to 100 (default 0); `addedA` by the accessory 0 to 100 (default 0); `selfFractionPerMonth` 0 to 1 (default 0); `wantedDays` (default 21).
 * @returns `usableAh`, `selfA`, `daysBefore`, `daysAfter` (Infinity where nothing drains), `verdict` warn below the wanted days.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: usable = Ah × (start − min); self A = Ah × share / 720 h; days = usable / (A + self A) / 24.
 * @source arithmetic; 21 days and percentages: common practice, no source.
 * @example standingDays({ capacityAh: 70, startFraction: 0.8, minFraction: 0.5, baseA: 0.025, addedA: 0.008, selfFractionPerMonth: 0.03 }).daysAfter // 24.4
 */
export function standingDays({
  capacityAh,
  startFraction,
  minFraction,
  baseA = 0,
  addedA = 0,
  selfFractionPerMonth = 0,
  wantedDays = STANDING_DAYS,
}: {
  capacityAh: number;
  startFraction: number;
  minFraction: number;
  baseA?: number;
  addedA?: number;
  selfFractionPerMonth?: number;
  wantedDays?: number;
}): { usableAh: number; selfA: number; daysBefore: number; daysAfter: number; verdict: Verdict } {
  const where = 'standingDays';
  within(where, 'capacityAh', capacityAh, 0.1, 2000, 'Ah');
  within(where, 'startFraction', startFraction, 0.05, 1);
  within(where, 'minFraction', minFraction, 0, 1);
  positive(where, 'startFraction less minFraction', startFraction - minFraction);
  within(where, 'baseA', baseA, 0, 100, 'A');
  within(where, 'addedA', addedA, 0, 100, 'A');
  within(where, 'selfFractionPerMonth', selfFractionPerMonth, 0, 1);
  positive(where, 'wantedDays', wantedDays, 'days');
  const usableAh = capacityAh * (startFraction - minFraction);
  const selfA = (capacityAh * selfFractionPerMonth) / MONTH_H;
  const daysBefore = usableAh / (baseA + selfA) / 24;
  const daysAfter = usableAh / (baseA + addedA + selfA) / 24;
  return { usableAh, selfA, daysBefore, daysAfter, verdict: atMost(wantedDays, daysAfter) ? 'pass' : 'warn' };
}

/**
 * Hours from a capacity at a steady current, as if it did not shrink with the current (`runTime` counts that).
 *
 * @param options `capacityAh` above 0; `currentA` above 0.
 * @returns hours.
 * @throws TypeError or RangeError when a value is not above 0.
 * Formula: h = Ah / A.
 * @source circuit analysis textbook, battery capacity.
 * @example idealHours({ capacityAh: 200, currentA: 20 }) // 10
 */
export function idealHours({ capacityAh, currentA }: { capacityAh: number; currentA: number }): number {
  return positive('idealHours', 'capacityAh', capacityAh, 'Ah') / positive('idealHours', 'currentA', currentA, 'A');
}

/**
 * End-of-charge voltage of a 12 V battery at a temperature.
 *
 * @param options `temperatureC` -40 to 60.
 * @returns `conventionalV`, `maintenanceFreeV`, `source`. A maker's own figure wins.
 * @throws TypeError or RangeError when the temperature is out of range.
 * Formula: straight line through the two temperatures that were seen, and on past them.
 * @source club technical page on vehicle batteries, charging, voltage method.
 * @example chargeEndV({ temperatureC: 35 }).conventionalV // 14.2
 */
export function chargeEndV({ temperatureC }: { temperatureC: number }): {
  conventionalV: number;
  maintenanceFreeV: number;
  source: Source;
} {
  within('chargeEndV', 'temperatureC', temperatureC, -40, 60, '°C');
  const cold = CHARGE_END[0]!;
  const warm = CHARGE_END.at(-1)!;
  const read = (y0: number, y1: number): number => between(temperatureC, cold.temperatureC, y0, warm.temperatureC, y1);
  return {
    conventionalV: read(cold.conventionalV, warm.conventionalV),
    maintenanceFreeV: read(cold.maintenanceFreeV, warm.maintenanceFreeV),
    source: sourceOf('end-of-charge voltage', cold),
  };
}

/**
 * Hours to put back what is missing at a steady charging current.
 *
 * @param options `missingAh` 0 to 2000; `chargerA` above 0.
 * @returns hours.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: 1.6 × missing / A.
 * @source club technical page on vehicle batteries, charging, calculation method.
 * @example replaceHours({ missingAh: 30, chargerA: 10 }) // 4.8
 */
export function replaceHours({ missingAh, chargerA }: { missingAh: number; chargerA: number }): number {
  within('replaceHours', 'missingAh', missingAh, 0, 2000, 'Ah');
  finite('replaceHours', 'chargerA', chargerA);
  return (CHARGE_FACTOR.factor * missingAh) / positive('replaceHours', 'chargerA', chargerA, 'A');
}
