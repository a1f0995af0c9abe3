import { allowedCurrent, type Laying } from './ampacity.ts';
import type { ProtectedWire } from './fuse.ts';
import { oneOf, positive, within } from './guard.ts';
import { ADIABATIC_CONSTANTS, K_VALUES, type ShortMetal } from './tables/adiabatic.ts';
import { OVERCURRENT_183_455 } from './tables/cfr-183.ts';
import { type Source, sourceOf } from './tables/rows.ts';

/**
 * What a square millimetre of conductor stands for one second of short circuit before its insulation is hurt.
 *
 * @param options `conductor` copper, aluminium or steel; `startC` temperature before, -40 to 300; `endC` the insulation's short-time limit, above start, to 500.
 * @returns `kAS05PerMm2` [A √s per mm²]: the printed value where the standard prints this pair, else the formula; `from` says which.
 * @throws TypeError or RangeError when a value is out of range or end is not above start.
 * Formula: k = c × √(ln(1 + (end − start)/(b + start))); copper c 226, b 234.5; aluminium 148, 228.
 * @source BS 7671 / IEC 60364-5-54 table of k; formula of IEC 60364-5-54 annex A (from memory).
 * @example adiabaticK({ startC: 70, endC: 160 }).kAS05PerMm2 // 115
 */
export function adiabaticK({
  conductor = 'copper',
  startC,
  endC,
}: {
  conductor?: ShortMetal;
  startC: number;
  endC: number;
}): { kAS05PerMm2: number; from: 'table' | 'formula'; source: Source } {
  const where = 'adiabaticK';
  within(where, 'startC', startC, -40, 300, '°C');
  within(where, 'endC', endC, startC + 1, 500, '°C');
  oneOf(
    where,
    'conductor',
    conductor,
    ADIABATIC_CONSTANTS.map((row) => row.metal),
  );
  const row = K_VALUES.find((each) => each.conductor === conductor && each.startC === startC && each.endC === endC);
  if (row !== undefined) return { kAS05PerMm2: row.kAS05PerMm2, from: 'table', source: sourceOf('k', row) };
  const constants = ADIABATIC_CONSTANTS.find((each) => each.metal === conductor)!;
  return {
    kAS05PerMm2: constants.factor * Math.sqrt(Math.log(1 + (endC - startC) / (constants.offsetC + startC))),
    from: 'formula',
    source: sourceOf('k', constants),
  };
}

/**
 * Longest a wire stands a short-circuit current before its insulation is hurt. A fuse must open sooner.
 *
 * @param options `areaMm2` above 0; `kAS05PerMm2` above 0 (PVC copper 115: `adiabaticK`); `currentA` above 0 A.
 * @returns seconds. Valid to about 5 s: beyond, heat leaves the wire and it stands longer.
 * @throws TypeError or RangeError when a value is not above 0.
 * Formula: t = (k × A / I)².
 * @source adiabatic equation of IEC 60364-4-43 / BS 7671 434.5.2.
 * @example adiabaticTimeS({ areaMm2: 1.5, kAS05PerMm2: 115, currentA: 500 }) // 0.119
 */
export function adiabaticTimeS({
  areaMm2,
  kAS05PerMm2,
  currentA,
}: {
  areaMm2: number;
  kAS05PerMm2: number;
  currentA: number;
}): number {
  positive('adiabaticTimeS', 'areaMm2', areaMm2, 'mm²');
  positive('adiabaticTimeS', 'kAS05PerMm2', kAS05PerMm2);
  positive('adiabaticTimeS', 'currentA', currentA, 'A');
  return ((kAS05PerMm2 * areaMm2) / currentA) ** 2;
}

/**
 * Thinnest wire that stands a short circuit for a time.
 *
 * @param options `currentA` above 0 A; `timeS` above 0 s; `kAS05PerMm2` above 0.
 * @returns area [mm²]; take the next larger size.
 * @throws TypeError or RangeError when a value is not above 0.
 * Formula: A = I × √t / k.
 * @source adiabatic equation of IEC 60364-4-43 / BS 7671 434.5.2.
 * @example adiabaticAreaMm2({ currentA: 2500, timeS: 0.1, kAS05PerMm2: 115 }) // 6.87
 */
export function adiabaticAreaMm2({
  currentA,
  timeS,
  kAS05PerMm2,
}: {
  currentA: number;
  timeS: number;
  kAS05PerMm2: number;
}): number {
  positive('adiabaticAreaMm2', 'currentA', currentA, 'A');
  positive('adiabaticAreaMm2', 'timeS', timeS, 's');
  positive('adiabaticAreaMm2', 'kAS05PerMm2', kAS05PerMm2);
  return (currentA * Math.sqrt(timeS)) / kAS05PerMm2;
}

/**
 * Largest overcurrent device a public rule lets stand ahead of a wire: a ceiling in law, not a target. Sizing to the
 * table, as `wireLimit` does, is safer.
 *
 * @param options `gaugeAwg` 18 to -3 (4/0); `insulationC`, `ambientC`, `bundled`, `engineSpace` as in `allowedCurrent`; `systemV` above 0.
 * @returns `tableA` allowable current and `maxFuseA`; null when the table has no such size.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: below 50 V 150 % of the table, from 50 V the table itself.
 * @source 33 CFR 183.455 with 183.425 Table 5.
 * @example largestFuseByRule({ gaugeAwg: 14, insulationC: 105, systemV: 12 })?.maxFuseA // 52.5
 */
export function largestFuseByRule({
  systemV,
  gaugeAwg,
  ...laying
}: Laying & { gaugeAwg: number; systemV: number }): { tableA: number; maxFuseA: number; source: Source } | null {
  positive('largestFuseByRule', 'systemV', systemV, 'V');
  const allowed = allowedCurrent({ gaugeAwg, ...laying });
  if (allowed === null) return null;
  const share = systemV < OVERCURRENT_183_455.belowV ? OVERCURRENT_183_455.shareBelow : OVERCURRENT_183_455.shareFrom;
  return {
    tableA: allowed.allowedA,
    maxFuseA: allowed.allowedA * share,
    source: sourceOf('largest overcurrent device', OVERCURRENT_183_455),
  };
}

/** One wire behind the fuse, judged. */
export interface JudgedWire extends ProtectedWire {
  verdict: 'pass' | 'stop';
}

/**
 * Does a fuse protect every wire behind it? The thinnest decides.
 *
 * @param options `fuseA` above 0 A; `wires` each with the current it may carry, at least one.
 * @returns `protected`, the smallest limit and its wire, and every wire judged.
 * @throws TypeError or RangeError when a value is out of range or no wire is named.
 * Formula: fuse ≤ smallest limit; at equality it passes.
 * @source common practice, no source: the fuse protects the thinnest wire.
 * @example fuseProtects({ fuseA: 30, wires: [{ name: 'pigtail', limitA: 20 }] }).protected // false
 */
export function fuseProtects({ fuseA, wires }: { fuseA: number; wires: readonly ProtectedWire[] }): {
  protected: boolean;
  limitA: number;
  thinnest: string;
  wires: JudgedWire[];
} {
  const where = 'fuseProtects';
  positive(where, 'fuseA', fuseA, 'A');
  if (wires.length === 0) throw new RangeError(`${where}: unexpected wires [], expected at least one wire`);
  for (const wire of wires) within(where, `limitA of ${wire.name}`, wire.limitA, 0, 100_000, 'A');
  const judged = wires.map(
    (wire): JudgedWire => ({ ...wire, verdict: fuseA <= wire.limitA * (1 + 1e-9) ? 'pass' : 'stop' }),
  );
  const worst = wires.reduce((thinnest, wire) => (wire.limitA < thinnest.limitA ? wire : thinnest));
  return {
    protected: judged.every(({ verdict }) => verdict === 'pass'),
    limitA: worst.limitA,
    thinnest: worst.name,
    wires: judged,
  };
}

/**
 * Current that melts a bare copper wire in free air in about ten seconds. No limit for an insulated wire: its insulation
 * burns long before. For reading old tables only.
 *
 * @param options `diameterMm` of the copper, above 0.
 * @returns amperes.
 * @throws TypeError or RangeError when the diameter is not above 0.
 * Formula: Preece, 80 × d^1.5 with d in mm.
 * @source public AWG table, Preece column.
 * @example meltingCurrentA({ diameterMm: 3.264 }) // 472
 */
export function meltingCurrentA({ diameterMm }: { diameterMm: number }): number {
  positive('meltingCurrentA', 'diameterMm', diameterMm, 'mm');
  return 80 * diameterMm ** 1.5;
}
