import { awgNotAbove } from './conductor.ts';
import { finite, positive, whole, within } from './guard.ts';
import { ALLOWED_183_425, type AllowedRow, BUNDLE_183_425, ENGINE_SPACE_183_425 } from './tables/cfr-183.ts';
import { type Row, type Source, sourceOf } from './tables/rows.ts';
import { WORKSHOP_AIR_C, WORKSHOP_BUNDLE, WORKSHOP_LIMITS } from './tables/workshop.ts';

/** Sizes that the rule's Table 5 names. */
const PUBLISHED_AWG = [...new Set(ALLOWED_183_425.map(({ gaugeAwg }) => gaugeAwg))];
const THINNEST_AWG = Math.max(...PUBLISHED_AWG);

/** Air of the rule's Table 5 [°C]; other tables start at 40, and a factor belongs to its own base. */
const TABLE_AIR_C = 30;

/**
 * Share of its table current a wire may carry in other air than the table's.
 *
 * @param options `insulationC` rating of the insulation 40 to 300; `ambientC` air -60 to 300; `baseAmbientC` air the table was made for (30 for 33 CFR and the Canadian code, 40 for NEC 310.15(B)(2)(b)).
 * @returns the factor: 1 in the table's air, above 1 in colder air, 0 where the air is as warm as the insulation stands.
 * @throws TypeError or RangeError when a value is out of range or the base is not below the insulation's rating.
 * Formula: √((Tins − Tair)/(Tins − Tbase)), the square law of heating. Printed tables round it over bands of 5 °C.
 * @source Canadian Electrical Code Table 5A; NEC Table 310.15(B)(2)(b): both follow the law within 0.011.
 * @example ambientFactor({ insulationC: 90, ambientC: 50 }) // 0.8165
 */
export function ambientFactor({
  insulationC,
  ambientC,
  baseAmbientC = TABLE_AIR_C,
}: {
  insulationC: number;
  ambientC: number;
  baseAmbientC?: number;
}): number {
  const where = 'ambientFactor';
  within(where, 'insulationC', insulationC, 40, 300, '°C');
  within(where, 'ambientC', ambientC, -60, 300, '°C');
  within(where, 'baseAmbientC', baseAmbientC, -60, insulationC - 1, '°C');
  return Math.sqrt(Math.max(0, insulationC - ambientC) / (insulationC - baseAmbientC));
}

type Step = Row<{ from: number; to: number; factor: number }>;

/**
 * Share of its current a wire keeps among others that carry current beside it.
 *
 * @param options `conductors` 1 to 999, those that carry load current at the same time; `table` default the marine factors.
 * @returns the factor, 1 alone, falling with every step.
 * @throws TypeError or RangeError when the count is not a whole number from 1 to 999.
 * @source 33 CFR 183.425 Table 5 note 2, binding from 50 V, good practice below.
 * @example bundleFactor({ conductors: 5 }) // 0.6
 */
export function bundleFactor({
  conductors,
  table = BUNDLE_183_425,
}: {
  conductors: number;
  table?: readonly Step[];
}): number {
  whole('bundleFactor', 'conductors', conductors, 1, 999);
  return stepOf(conductors, table).factor;
}

const stepOf = (conductors: number, table: readonly Step[]): Step =>
  table.find((row) => conductors >= row.from && conductors <= row.to)!;

/**
 * A current read from a chart, brought down by each factor that applies: altitude, bundle, air.
 *
 * @param options `currentA` 0 to 10 000; `factors` 0 to 2 each.
 * @returns amperes.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: product of all.
 * @source FAA AC 43.13-1B par. 11-69 example 2.
 * @example deratedA({ currentA: 47, factors: [0.91, 0.6] }) // 25.66
 */
export function deratedA({ currentA, factors }: { currentA: number; factors: readonly number[] }): number {
  within('deratedA', 'currentA', currentA, 0, 10_000, 'A');
  return factors.reduce((amps, factor) => amps * within('deratedA', 'factors', factor, 0, 2), currentA);
}

/** What a published table allows. */
export interface Allowed {
  allowedA: number;
  /** The table cell before any factor. */
  tableA: number;
  factors: { ambient: number; bundle: number; engineSpace: number };
  sources: Source[];
}

/** How a wire is laid. */
export interface Laying {
  /** Temperature the insulation is rated for [°C], printed on the wire; 60 to 300 (default 105). Between columns the cooler one counts. */
  insulationC?: number | undefined;
  /** Air around the wire [°C], -40 to 200 (default 30). */
  ambientC?: number | undefined;
  /** Conductors that carry load current in the same bundle, this one included; 1 to 999 (default 1). */
  bundled?: number | undefined;
  /** In an engine bay or another closed, hot space (default no). */
  engineSpace?: boolean | undefined;
}

/** The warmest column that this insulation reaches: rated 90, it may use the 90 column and not the 105 one. */
function column<T extends { insulationC: number }>(rows: readonly T[], insulationC: number): T | undefined {
  return rows
    .filter((row) => row.insulationC <= insulationC)
    .reduce<T | undefined>(
      (best, row) => (best === undefined || row.insulationC > best.insulationC ? row : best),
      undefined,
    );
}

/**
 * Current a rule allows in a wire, by gauge, insulation, air, bundle and place.
 *
 * @param options `gaugeAwg` a size of the table (18 to 4/0); `insulationC` 60 to 300, `ambientC` -40 to 200, `bundled` 1 to 999, `engineSpace`; `table` default 33 CFR 183.425 Table 5.
 * @returns `allowedA`, the table cell, the factors and the sources; null when the table has no such size.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: table cell × ambient factor (never above 1) × bundle factor × engine-space factor. The engine-space factor already holds 50 °C air, so hotter air counts only for what it adds.
 * @source 33 CFR 183.425 Table 5 with notes 1 and 2; ambient by the square law.
 * @example allowedCurrent({ gaugeAwg: 14, insulationC: 105, bundled: 3 })?.allowedA // 24.5
 */
export function allowedCurrent({
  gaugeAwg,
  insulationC = 105,
  ambientC = TABLE_AIR_C,
  bundled = 1,
  engineSpace = false,
  table = ALLOWED_183_425,
}: Laying & { gaugeAwg: number; table?: readonly AllowedRow[] }): Allowed | null {
  const where = 'allowedCurrent';
  finite(where, 'gaugeAwg', gaugeAwg);
  within(where, 'insulationC', insulationC, 60, 300, '°C');
  within(where, 'ambientC', ambientC, -40, 200, '°C');
  whole(where, 'bundled', bundled, 1, 999);
  const cell = column(
    table.filter((row) => row.gaugeAwg === gaugeAwg),
    insulationC,
  );
  if (cell === undefined) return null;
  const engine = column(ENGINE_SPACE_183_425, insulationC)!;
  const step = stepOf(bundled, BUNDLE_183_425);
  const heat = Math.min(1, ambientFactor({ insulationC, ambientC }));
  const engineFactor = engineSpace ? engine.factor : 1;
  // The engine-space factor is itself a heat factor; only air hotter than it stands for takes more.
  const ambient = Math.min(1, heat / engineFactor);
  return {
    allowedA: cell.allowedA * ambient * step.factor * engineFactor,
    tableA: cell.allowedA,
    factors: { ambient, bundle: step.factor, engineSpace: engineFactor },
    sources: [
      sourceOf('allowable current', cell),
      ...(bundled > 2 ? [sourceOf('bundle factor', step)] : []),
      ...(engineSpace ? [sourceOf('engine-space factor', engine)] : []),
    ],
  };
}

/** Factors of the workshop's own table. */
export interface WorkshopLimit {
  limitA: number;
  /** The table figure before any factor; 0 for a wire thinner than the table. */
  tableA: number;
  bundleFactor: number;
  heatFactor: number;
  source: Source;
}

/**
 * Largest fuse the workshop itself puts ahead of a wire, after bundle and heat.
 *
 * @param options `areaMm2` above 0 (an area between table sizes counts as the thinner one; thinner than the table: 0 A); `wires` 1 to 999 loaded wires in the bundle (default 1); `ambientC` -40 to 200 (default 30); `insulationC` 55 to 300 (default 90); `table` the workshop's own rows.
 * @returns `limitA`, the table figure, both factors, the source.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: table × bundle step × min(1, √((Tins − Tair)/(Tins − 50))).
 * @source common practice, no source; the heat factor is the square law of conductor heating.
 * @example workshopLimit({ areaMm2: 1.5, wires: 6, ambientC: 60 }).limitA // 9.09
 */
export function workshopLimit({
  areaMm2,
  wires = 1,
  ambientC = TABLE_AIR_C,
  insulationC = 90,
  table = WORKSHOP_LIMITS,
}: {
  areaMm2: number;
  wires?: number;
  ambientC?: number;
  insulationC?: number;
  table?: typeof WORKSHOP_LIMITS;
}): WorkshopLimit {
  const where = 'workshopLimit';
  positive(where, 'areaMm2', areaMm2, 'mm²');
  whole(where, 'wires', wires, 1, 999);
  within(where, 'ambientC', ambientC, -40, 200, '°C');
  within(where, 'insulationC', insulationC, WORKSHOP_AIR_C + 5, 300, '°C');
  const row = table.findLast((each) => each.areaMm2 <= areaMm2 * (1 + 1e-9));
  const step = stepOf(wires, WORKSHOP_BUNDLE);
  const heatFactor = Math.min(1, ambientFactor({ insulationC, ambientC, baseAmbientC: WORKSHOP_AIR_C }));
  const tableA = row?.limitA ?? 0;
  return {
    limitA: tableA * step.factor * heatFactor,
    tableA,
    bundleFactor: step.factor,
    heatFactor,
    source: sourceOf('largest fuse per wire', row ?? table[0]!),
  };
}

/** The current a wire may carry, and so the largest fuse it may sit behind. */
export interface WireLimit {
  limitA: number;
  /** Which of the two figures is the smaller and decides. */
  decidedBy: 'published' | 'workshop';
  /** Null where the published table has no wire as thin as this one. */
  publishedA: number | null;
  workshopA: number;
  /** Factors of the published figure; of the workshop's where there is none. */
  factors: { ambient: number; bundle: number; engineSpace: number };
  sources: Source[];
}

/**
 * The current a wire may carry for ever, and so the largest fuse it may sit behind: the smaller of what a published rule
 * allows and what the workshop's cautious table allows.
 *
 * @param options `areaMm2` above 0; `insulationC` 60 to 300 (default 105), `ambientC` air -40 to 200 (default 30), `bundled` loaded conductors together 1 to 999 (default 1), `engineSpace` (default no; counts as air of 50 °C at least).
 * @returns `limitA`, `decidedBy`, both figures, the factors and the sources. 0 A means that no fuse protects this wire as it is laid.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: min(33 CFR 183.425 Table 5 at the size it names that is not thicker than this wire × its factors, workshop table ×
 * bundle × heat). Wire thinner than the thinnest of Table 5 carries no more than that one.
 * @source 33 CFR 183.425 Table 5 and notes; workshop table: common practice, no source.
 * @example wireLimit({ areaMm2: 1.5 }).limitA // 15
 */
export function wireLimit({
  areaMm2,
  insulationC = 105,
  ambientC = TABLE_AIR_C,
  bundled = 1,
  engineSpace = false,
}: Laying & { areaMm2: number }): WireLimit {
  positive('wireLimit', 'areaMm2', areaMm2, 'mm²');
  whole('wireLimit', 'bundled', bundled, 1, 999);
  const laying = { insulationC, ambientC, bundled, engineSpace };
  const workshop = workshopLimit({
    areaMm2,
    wires: bundled,
    // An engine space counts as 50 °C air, which this table stands for already.
    ambientC,
    insulationC: within('wireLimit', 'insulationC', insulationC, 60, 300, '°C'),
  });
  const size = awgNotAbove({ areaMm2, sizes: PUBLISHED_AWG });
  const row = allowedCurrent({ gaugeAwg: size ?? THINNEST_AWG, ...laying });
  // Wire thinner than the rule's thinnest is not in the rule; it may still not carry more than that one.
  const published = row !== null && (size !== null || row.allowedA < workshop.limitA) ? row : null;
  const byRule = published !== null && published.allowedA <= workshop.limitA;
  return {
    limitA: byRule ? published.allowedA : workshop.limitA,
    decidedBy: byRule ? 'published' : 'workshop',
    publishedA: published?.allowedA ?? null,
    workshopA: workshop.limitA,
    factors: published?.factors ?? { ambient: workshop.heatFactor, bundle: workshop.bundleFactor, engineSpace: 1 },
    sources: [...(published?.sources ?? []), workshop.source],
  };
}
