import { awg } from './conductor.ts';
import { finite, oneOf, positive, whole } from './guard.ts';
import { INSULATION_GAPS, PULL_FORCES, PULL_STANDARDS, type PullStandard } from './tables/crimp.ts';
import { type Source, sourceOf } from './tables/rows.ts';
import { convert } from './units.ts';

/**
 * Least force a crimp must hold on a wire. Commercial and military figures differ by about two: say which was used.
 *
 * @param options `gaugeAwg` a size of the table; `standard` commercial (UL 486A), military (MIL-T-7928) or grounding lead (NASA-STD-8739.4); default commercial.
 * @returns `forceN`, `forceLbf`, `source`; null when the standard lists no such size.
 * @throws TypeError or RangeError when the gauge is not a number or the standard unknown.
 * Formula: table, 1 lbf = 4.4482216152605 N.
 * @source UL 486A and MIL-T-7928, as terminal makers' specifications print them; NASA-STD-8739.4 Table 13-1.
 * @example pullForce({ gaugeAwg: 14 })?.forceLbf // 50
 */
export function pullForce({ gaugeAwg, standard = 'commercial' }: { gaugeAwg: number; standard?: PullStandard }): {
  forceN: number;
  forceLbf: number;
  source: Source;
} | null {
  finite('pullForce', 'gaugeAwg', gaugeAwg);
  oneOf('pullForce', 'standard', standard, PULL_STANDARDS);
  const row = PULL_FORCES.find((each) => each.standard === standard && each.gaugeAwg === gaugeAwg);
  if (row === undefined) return null;
  return {
    forceN: convert({ value: row.forceLbf, from: 'lbf', to: 'N' }),
    forceLbf: row.forceLbf,
    source: sourceOf('pull-out force', row),
  };
}

/** Strength of soft annealed copper [psi]. */
const ANNEALED_PSI = 37_000;

/**
 * Force that breaks the wire itself: no crimp can hold more.
 *
 * @param options `gaugeAwg` -3 to 40; `strengthPsi` of the copper, above 0 (default 37 000, soft annealed).
 * @returns `forceN`, `forceLbf`.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: strength × area.
 * @source wire strength table on a general page, soft annealed copper.
 * @example wireBreak({ gaugeAwg: 14 }).forceLbf // 119.3
 */
export function wireBreak({ gaugeAwg, strengthPsi = ANNEALED_PSI }: { gaugeAwg: number; strengthPsi?: number }): {
  forceN: number;
  forceLbf: number;
} {
  positive('wireBreak', 'strengthPsi', strengthPsi, 'psi');
  const { areaMm2 } = awg({ gaugeAwg });
  const forceLbf = strengthPsi * convert({ value: areaMm2, from: 'mm2', to: 'in2' });
  return { forceN: convert({ value: forceLbf, from: 'lbf', to: 'N' }), forceLbf };
}

/**
 * Copper area of several wires crimped into one terminal: choose the terminal for this, the next larger size if none matches.
 *
 * @param options `areasMm2` above 0 each, at least one.
 * @returns area [mm²].
 * @throws TypeError or RangeError when a value is not above 0 or none is given.
 * Formula: sum of the areas.
 * @source NASA-STD-8739.4, text before par. 19.12.
 * @example crimpedTogetherMm2({ areasMm2: [0.75, 1.5] }) // 2.25
 */
export function crimpedTogetherMm2({ areasMm2 }: { areasMm2: readonly number[] }): number {
  if (areasMm2.length === 0) throw new RangeError('crimpedTogetherMm2: unexpected areasMm2 [], expected at least one');
  return areasMm2.reduce((sum, area) => sum + positive('crimpedTogetherMm2', 'areasMm2', area, 'mm²'), 0);
}

/**
 * Gap to leave between insulation and crimp barrel.
 *
 * @param options `gaugeAwg` -3 to 40.
 * @returns `minMm`, `maxMm`, `source`.
 * @throws TypeError or RangeError when the gauge is out of range.
 * @source NASA-STD-8739.4 par. 10.1.7b.
 * @example insulationGap({ gaugeAwg: 16 }).maxMm // 1.25
 */
export function insulationGap({ gaugeAwg }: { gaugeAwg: number }): { minMm: number; maxMm: number; source: Source } {
  whole('insulationGap', 'gaugeAwg', gaugeAwg, -3, 40);
  // The thinner group is listed first; a wire belongs to the first group it is not too thick for.
  const row = INSULATION_GAPS.find((each) => gaugeAwg >= each.thickestAwg)!;
  return { minMm: row.minMm, maxMm: row.maxMm, source: sourceOf('insulation gap', row) };
}
