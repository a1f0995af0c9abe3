import { within } from './guard.ts';
import { ratingAtLeast } from './rating.ts';
import { STOCKED_FUSES_A } from './tables/workshop.ts';
import type { Verdict } from './verdict.ts';

/** Share of its rating an alternator gives on the road, and share of what goes in that comes back. Common practice, no source. */
const DRIVING_SHARE = 0.9;
const CHARGE_SHARE = 0.9;

/**
 * Does a day's driving pay for the night's load? Vehicles that charge when they please may give less: a best case.
 *
 * @param options `alternatorA` 1 to 1000; `idleFraction` output at idle 0.05 to 1; `baseA` the vehicle's own load 0 to 500; `accessoryA` while running 0 to 500; `driveH`, `idleH`, `stoppedH` 0 to 24 each and together; `stoppedA` load while stopped 0 to 500; `acceptA` the battery takes 0.1 to 500.
 * @returns `idleSurplusA`, `driveSurplusA`, `inAh`, `outAh`, `netAh`, `verdict` warn when the net or the idle surplus is negative.
 * @throws TypeError or RangeError when a value is out of range or the hours pass 24.
 * Formula: in = max(0, min(drive surplus, accept)) × h + min(idle surplus, accept) × h; net = 0.9 × in − out.
 * @source efficiencies: common practice, no source.
 * @example chargeBalance({ alternatorA: 120, idleFraction: 0.5, baseA: 45, accessoryA: 6, driveH: 2.5, idleH: 1, stoppedH: 6, stoppedA: 4, acceptA: 20 }).netAh // 29.1
 */
export function chargeBalance({
  alternatorA,
  idleFraction,
  baseA,
  accessoryA,
  driveH,
  idleH,
  stoppedH,
  stoppedA,
  acceptA,
}: {
  alternatorA: number;
  idleFraction: number;
  baseA: number;
  accessoryA: number;
  driveH: number;
  idleH: number;
  stoppedH: number;
  stoppedA: number;
  acceptA: number;
}): {
  idleSurplusA: number;
  driveSurplusA: number;
  inAh: number;
  outAh: number;
  netAh: number;
  verdict: Verdict;
} {
  const where = 'chargeBalance';
  within(where, 'alternatorA', alternatorA, 1, 1000, 'A');
  within(where, 'idleFraction', idleFraction, 0.05, 1);
  within(where, 'baseA', baseA, 0, 500, 'A');
  within(where, 'accessoryA', accessoryA, 0, 500, 'A');
  within(where, 'driveH', driveH, 0, 24, 'h');
  within(where, 'idleH', idleH, 0, 24, 'h');
  within(where, 'stoppedH', stoppedH, 0, 24, 'h');
  within(where, 'driveH + idleH + stoppedH', driveH + idleH + stoppedH, 0, 24, 'h');
  within(where, 'stoppedA', stoppedA, 0, 500, 'A');
  within(where, 'acceptA', acceptA, 0.1, 500, 'A');
  const idleSurplusA = alternatorA * idleFraction - baseA - accessoryA;
  const driveSurplusA = alternatorA * DRIVING_SHARE - baseA - accessoryA;
  const inAh = Math.max(0, Math.min(driveSurplusA, acceptA)) * driveH + Math.min(idleSurplusA, acceptA) * idleH;
  const outAh = stoppedA * stoppedH;
  const netAh = CHARGE_SHARE * inAh - outAh;
  return {
    idleSurplusA,
    driveSurplusA,
    inAh,
    outAh,
    netAh,
    verdict: netAh < 0 || idleSurplusA < 0 ? 'warn' : 'pass',
  };
}

/** Hours over which a battery's capacity is rated. */
const RATED_H = 20;

/**
 * How long an auxiliary battery carries a load that starts hard and then runs.
 *
 * @param options `capacityAh` at the 20 h rate 0.1 to 2000; `usableFraction` 0.05 to 1 (0.5 lead, 0.8 lithium); `peukert` 1 to 1.6 (1.05 lithium, 1.1 to 1.2 lead); `startA` 0 to 500; `startMin` 0 to 120; `runA` 0.001 to 500; `runH` hours of one run, longer than the start, to 240.
 * @returns `oneRunAh`, `averageA`, `usableAh`, `hours` to cut-off, `fullRuns`.
 * @throws TypeError or RangeError when a value is out of range or the run is shorter than its start.
 * Formula: t = min(20 × (Ah/(20 × average))^k × usable, Ah × usable / average).
 * @source Peukert's law, capped at rated capacity; usable shares: common practice, no source.
 * @example runTime({ capacityAh: 100, usableFraction: 0.5, peukert: 1.1, startA: 10, startMin: 3, runA: 1.6, runH: 8 }).hours // 30.3
 */
export function runTime({
  capacityAh,
  usableFraction,
  peukert,
  startA,
  startMin,
  runA,
  runH,
}: {
  capacityAh: number;
  usableFraction: number;
  peukert: number;
  startA: number;
  startMin: number;
  runA: number;
  runH: number;
}): { oneRunAh: number; averageA: number; usableAh: number; hours: number; fullRuns: number } {
  const where = 'runTime';
  within(where, 'capacityAh', capacityAh, 0.1, 2000, 'Ah');
  within(where, 'usableFraction', usableFraction, 0.05, 1);
  within(where, 'peukert', peukert, 1, 1.6);
  within(where, 'startA', startA, 0, 500, 'A');
  within(where, 'startMin', startMin, 0, 120, 'min');
  within(where, 'runA', runA, 0.001, 500, 'A');
  const startH = startMin / 60;
  within(where, 'runH', runH, Math.max(startH, 1 / 60), 240, 'h');
  const oneRunAh = startA * startH + runA * (runH - startH);
  const averageA = oneRunAh / runH;
  const usableAh = capacityAh * usableFraction;
  const byPeukert = RATED_H * (capacityAh / (RATED_H * averageA)) ** peukert * usableFraction;
  const hours = Math.min(byPeukert, usableAh / averageA);
  return { oneRunAh, averageA, usableAh, hours, fullRuns: Math.floor(hours / runH + 1e-9) };
}

/** Bulk charging ends here; the rest is absorption, by the clock. Common practice, no source. */
const BULK_TO_FRACTION = 0.8;
/** Fuse of the charger's feed over its current. Common practice, no source. */
const FEED_SHARE = 1.25;

/**
 * How long a charger takes, and what its feed draws. The profile must match the chemistry; vent lead batteries.
 *
 * @param options `capacityAh` 0.1 to 2000; `fromFraction` charge now 0 to 0.8; `chargerA` 0.1 to 500; `chargeFraction` efficiency 0.5 to 1 (0.9 lead, 0.98 lithium); `absorptionH` 0 to 24; `outV` 1 to 60; `inV` lowest input 1 to 60; `converterFraction` efficiency 0.3 to 1; `stockedA` fuse ratings.
 * @returns `bulkH`, `totalH`, `inputA`, `inputFuseA` (null where no stocked rating is large enough).
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: bulk = Ah × (0.8 − from)/(A × efficiency); input = out V × A/(converter × in V); fuse = next stocked ≥ 1.25 × input.
 * @source common practice, no source.
 * @example chargeTime({ capacityAh: 100, fromFraction: 0.5, chargerA: 20, chargeFraction: 0.9, absorptionH: 3, outV: 14.4, inV: 12, converterFraction: 0.85 }).inputFuseA // 40
 */
export function chargeTime({
  capacityAh,
  fromFraction,
  chargerA,
  chargeFraction,
  absorptionH,
  outV,
  inV,
  converterFraction,
  stockedA = STOCKED_FUSES_A,
}: {
  capacityAh: number;
  fromFraction: number;
  chargerA: number;
  chargeFraction: number;
  absorptionH: number;
  outV: number;
  inV: number;
  converterFraction: number;
  stockedA?: readonly number[];
}): { bulkH: number; totalH: number; inputA: number; inputFuseA: number | null } {
  const where = 'chargeTime';
  within(where, 'capacityAh', capacityAh, 0.1, 2000, 'Ah');
  within(where, 'fromFraction', fromFraction, 0, BULK_TO_FRACTION);
  within(where, 'chargerA', chargerA, 0.1, 500, 'A');
  within(where, 'chargeFraction', chargeFraction, 0.5, 1);
  within(where, 'absorptionH', absorptionH, 0, 24, 'h');
  within(where, 'outV', outV, 1, 60, 'V');
  within(where, 'inV', inV, 1, 60, 'V');
  within(where, 'converterFraction', converterFraction, 0.3, 1);
  const bulkH = (capacityAh * (BULK_TO_FRACTION - fromFraction)) / (chargerA * chargeFraction);
  const inputA = (outV * chargerA) / (converterFraction * inV);
  const inputFuseA = ratingAtLeast({ currentA: FEED_SHARE * inputA, ratingsA: stockedA });
  return { bulkH, totalH: bulkH + absorptionH, inputA, inputFuseA };
}
