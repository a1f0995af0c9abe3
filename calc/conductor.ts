import { finite, oneOf, positive, whole, within } from './guard.ts';
import { IEC_60228_COEFFICIENT, METALS, type MetalRow } from './tables/copper.ts';
import { SAE_AREAS } from './tables/gauges.ts';
import {
  CLASS_1_PLAIN,
  CLASS_2_PLAIN,
  CLASS_2_TINNED,
  CLASS_5_PLAIN,
  CLASS_5_TINNED,
  type ConductorRow,
} from './tables/iec-60228.ts';
import { ISO_6722 } from './tables/iso-6722.ts';
import { type Source, sourceOf } from './tables/rows.ts';
import { convert } from './units.ts';

/** Metric sizes a workshop keeps, thinnest first [mm²]. Common practice, no source. */
export const METRIC_SIZES_MM2: readonly number[] = [0.35, 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50];

/** AWG numbers sold as cable, thinnest first; 0, -1, -2, -3 stand for 1/0 to 4/0. Common practice, no source. */
export const AWG_SIZES: readonly number[] = [26, 24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3];

/** How a conductor is made, which decides the resistance it may have. */
export const CONDUCTORS = [
  'class5',
  'class5-tinned',
  'class2',
  'class2-tinned',
  'class1',
  'iso6722',
  'annealed',
  'element',
] as const;
/** `class…` of IEC 60228, road-vehicle cable of ISO 6722, or bare resistivity: `annealed` wire, pure `element`. */
export type Conductor = (typeof CONDUCTORS)[number];

const CEILINGS: Partial<Record<Conductor, readonly ConductorRow[]>> = {
  class5: CLASS_5_PLAIN,
  'class5-tinned': CLASS_5_TINNED,
  class2: CLASS_2_PLAIN,
  'class2-tinned': CLASS_2_TINNED,
  class1: CLASS_1_PLAIN,
  iso6722: ISO_6722,
};

/**
 * Diameter and area of a solid wire of an AWG number.
 *
 * @param options `gaugeAwg` whole number -3 (4/0) to 40.
 * @returns `diameterMm`, `areaMm2`, `areaCmil`.
 * @throws TypeError or RangeError when the gauge is not a whole number from -3 to 40.
 * Formula: d = 0.127 mm × 92^((36 − n)/39).
 * @source ASTM B258, diameter law (the law seen in open code and wire-gauge articles; the standard not opened).
 * @example awg({ gaugeAwg: 12 }).areaMm2 // 3.3088
 */
export function awg({ gaugeAwg }: { gaugeAwg: number }): { diameterMm: number; areaMm2: number; areaCmil: number } {
  whole('awg', 'gaugeAwg', gaugeAwg, -3, 40);
  const diameterMm = 0.127 * 92 ** ((36 - gaugeAwg) / 39);
  const areaMm2 = (Math.PI / 4) * diameterMm * diameterMm;
  return { diameterMm, areaMm2, areaCmil: convert({ value: areaMm2, from: 'mm2', to: 'cmil' }) };
}

/**
 * The name a person reads on the reel: `14`, `1/0`, `4/0`.
 *
 * @param options `gaugeAwg` whole number -3 to 40.
 * @returns the name as a string, without the letters AWG.
 * @throws TypeError or RangeError when the gauge is not a whole number from -3 to 40.
 * @source common practice, no source.
 * @example awgName({ gaugeAwg: -3 }) // 4/0
 */
export function awgName({ gaugeAwg }: { gaugeAwg: number }): string {
  whole('awgName', 'gaugeAwg', gaugeAwg, -3, 40);
  return gaugeAwg > 0 ? String(gaugeAwg) : `${1 - gaugeAwg}/0`;
}

/** Areas once worked out: a proof asks for the same few thousands of times. */
const knownAreas = new Map<number, number>();

function awgAreaMm2(gaugeAwg: number): number {
  const known = knownAreas.get(gaugeAwg) ?? awg({ gaugeAwg }).areaMm2;
  knownAreas.set(gaugeAwg, known);
  return known;
}

/**
 * The thickest AWG size whose copper is not more than an area: the size whose rating a metric wire may borrow.
 *
 * @param options `areaMm2` above 0 [mm²]; `sizes` AWG numbers to choose from (default `AWG_SIZES`).
 * @returns the gauge number, or null when the area is thinner than every size.
 * @throws TypeError or RangeError when the area is not above 0.
 * @source ASTM B258, diameter law.
 * @example awgNotAbove({ areaMm2: 2.5 }) // 14
 */
export function awgNotAbove({
  areaMm2,
  sizes = AWG_SIZES,
}: {
  areaMm2: number;
  sizes?: readonly number[];
}): number | null {
  positive('awgNotAbove', 'areaMm2', areaMm2, 'mm²');
  let best: number | null = null;
  for (const gaugeAwg of sizes) {
    const fits = awgAreaMm2(gaugeAwg) <= areaMm2 * (1 + 1e-9);
    if (fits && (best === null || gaugeAwg < best)) best = gaugeAwg;
  }
  return best;
}

/**
 * Least conductor area of an SAE size; 3 to 11 % less copper than the AWG size of the same number.
 *
 * @param options `gaugeSae` 20 to -3 (4/0), sizes of the table only; `table` another edition's rows.
 * @returns `areaMm2`, `areaCmil`.
 * @throws TypeError when the gauge is not a number; RangeError when the table has no such size.
 * @source SAE J1128 / J1127 areas, as chandlers and battery-cable pages reprint them.
 * @example sae({ gaugeSae: 12 }).areaMm2 // 2.9556
 */
export function sae({ gaugeSae, table = SAE_AREAS }: { gaugeSae: number; table?: typeof SAE_AREAS }): {
  areaMm2: number;
  areaCmil: number;
} {
  finite('sae', 'gaugeSae', gaugeSae);
  const row = table.find((each) => each.gaugeSae === gaugeSae);
  if (row === undefined) {
    const sizes = table.map((each) => each.gaugeSae).join(', ');
    throw new RangeError(`sae: unexpected gaugeSae ${gaugeSae}, expected one of ${sizes}`);
  }
  return { areaMm2: convert({ value: row.areaCmil, from: 'cmil', to: 'mm2' }), areaCmil: row.areaCmil };
}

const metal = (name: MetalRow['metal']): MetalRow => METALS.find((row) => row.metal === name)!;

/**
 * Resistivity of a metal at a temperature, each with the temperature coefficient that belongs to it.
 *
 * @param options `metal` `copper` (annealed wire, the default), `copper pure element` or `aluminium`; `temperatureC` -60 to 300 (default 20).
 * @returns `resistivityOhmMm2PerM`, `tempCoefficientPerK` (about 20 °C), `source`.
 * @throws TypeError or RangeError when the metal is unknown or the temperature is out of range.
 * Formula: ρ(T) = ρ20 × (1 + α20 × (T − 20)).
 * @source International Annealed Copper Standard; Kuphaldt, Lessons in Electric Circuits, vol. I ch. 12.
 * @example resistivity({ temperatureC: 60 }).resistivityOhmMm2PerM // 0.019951
 */
export function resistivity({
  metal: name = 'copper',
  temperatureC = 20,
}: {
  metal?: MetalRow['metal'];
  temperatureC?: number;
} = {}): { resistivityOhmMm2PerM: number; tempCoefficientPerK: number; source: Source } {
  oneOf(
    'resistivity',
    'metal',
    name,
    METALS.map((row) => row.metal),
  );
  within('resistivity', 'temperatureC', temperatureC, -60, 300, '°C');
  const row = metal(name);
  return {
    resistivityOhmMm2PerM: row.resistivityOhmMm2PerM * (1 + row.tempCoefficientPerK * (temperatureC - row.referenceC)),
    tempCoefficientPerK: row.tempCoefficientPerK,
    source: sourceOf('resistivity and its temperature coefficient', row),
  };
}

/**
 * Factor that brings a resistance measured at a temperature back to 20 °C. Multiply a measured value by it; to predict a
 * hot value, divide.
 *
 * @param options `temperatureC` -60 to 200, the temperature of the copper when it was measured.
 * @returns the factor, 1 at 20 °C, below 1 above it.
 * @throws TypeError or RangeError when the temperature is out of range.
 * Formula: 1 / (1 + 0.004 × (T − 20)); IEC builds on 0.004, so this is up to 0.2 % off the coefficient of annealed copper.
 * @source IEC 60228 correction factors, as a cable maker reprints them, table of Kt.
 * @example factorTo20C({ temperatureC: 60 }) // 0.862
 */
export function factorTo20C({ temperatureC }: { temperatureC: number }): number {
  within('factorTo20C', 'temperatureC', temperatureC, -60, 200, '°C');
  return 1 / (1 + IEC_60228_COEFFICIENT.tempCoefficientPerK * (temperatureC - 20));
}

/** What decides the resistance: a size, how the conductor is made, and how warm it is. */
export interface ConductorOptions {
  /** Copper area [mm²], above 0. Give this or `gaugeAwg`. */
  areaMm2?: number | undefined;
  /** AWG number, -3 (4/0) to 40. Give this or `areaMm2`. */
  gaugeAwg?: number | undefined;
  /** Temperature of the copper, -60 to 200 (default 20). */
  temperatureC?: number | undefined;
  /** Default `class5` for an area, `annealed` (solid wire, as AWG tables have it) for a gauge. */
  conductor?: Conductor | undefined;
}

/** A resistance and how it was come by. */
export interface ConductorResistance {
  resistanceOhmPerM: number;
  at20COhmPerM: number;
  areaMm2: number;
  temperatureC: number;
  conductor: Conductor;
  tempCoefficientPerK: number;
  /** `table`: the printed size; `between`: interpolated between two printed sizes; `beyond`: past the table's end; `law`: resistivity over area. */
  from: 'table' | 'between' | 'beyond' | 'law';
  source: Source;
}

/**
 * Reads a ceiling table at any area. Between two printed sizes it follows the straight line of the logarithms, past the
 * ends it keeps the end's ohm × mm²: so more copper is never more resistance, as it would be if a bare resistivity
 * stepped in between the printed ceilings.
 */
function ceiling(
  table: readonly ConductorRow[],
  areaMm2: number,
): { row: ConductorRow; ohmPerM: number; from: 'table' | 'between' | 'beyond' } {
  const exact = table.find((row) => Math.abs(row.areaMm2 - areaMm2) <= 1e-9 * areaMm2);
  if (exact !== undefined) return { row: exact, ohmPerM: exact.resistanceOhmPerM, from: 'table' };
  const first = table[0]!;
  const last = table.at(-1)!;
  const end = areaMm2 < first.areaMm2 ? first : areaMm2 > last.areaMm2 ? last : undefined;
  if (end !== undefined) return { row: end, ohmPerM: (end.resistanceOhmPerM * end.areaMm2) / areaMm2, from: 'beyond' };
  const above = table.findIndex((row) => row.areaMm2 > areaMm2);
  const low = table[above - 1]!;
  const high = table[above]!;
  const share = Math.log(areaMm2 / low.areaMm2) / Math.log(high.areaMm2 / low.areaMm2);
  const ohmPerM = low.resistanceOhmPerM * (high.resistanceOhmPerM / low.resistanceOhmPerM) ** share;
  return { row: low, ohmPerM, from: 'between' };
}

/**
 * Resistance of a conductor per metre, with how it was come by. `resistanceOhmPerM` gives the number alone.
 *
 * @param options see `ConductorOptions`: one of `areaMm2` [mm²] above 0 and `gaugeAwg` -3 to 40; `temperatureC` -60 to 200; `conductor`.
 * @returns `resistanceOhmPerM`, the value at 20 °C, area, coefficient, `from` and `source`.
 * @throws TypeError or RangeError when neither or both sizes are given, or one is out of range, or the conductor is unknown.
 * Formula: R20 × (1 + α × (T − 20)); R20 is the printed maximum of the conductor's class, or ρ20 / area for `annealed` and `element`.
 * @source IEC 60228 maximum resistances; ISO 6722-1; International Annealed Copper Standard.
 * @example conductorResistance({ areaMm2: 1.5, temperatureC: 60 }).resistanceOhmPerM // 0.015391
 */
export function conductorResistance({
  areaMm2: givenMm2,
  gaugeAwg,
  temperatureC = 20,
  conductor = gaugeAwg === undefined ? 'class5' : 'annealed',
}: ConductorOptions): ConductorResistance {
  const where = 'conductorResistance';
  if ((givenMm2 === undefined) === (gaugeAwg === undefined)) {
    throw new TypeError(`${where}: unexpected size, expected exactly one of areaMm2 and gaugeAwg`);
  }
  const areaMm2 = gaugeAwg === undefined ? positive(where, 'areaMm2', givenMm2, 'mm²') : awg({ gaugeAwg }).areaMm2;
  within(where, 'temperatureC', temperatureC, -60, 200, '°C');
  oneOf(where, 'conductor', conductor, CONDUCTORS);
  const table = CEILINGS[conductor];
  const copper = metal(conductor === 'element' ? 'copper pure element' : 'copper');
  const { row, ohmPerM, from } =
    table === undefined
      ? { row: copper, ohmPerM: copper.resistivityOhmMm2PerM / areaMm2, from: 'law' as const }
      : ceiling(table, areaMm2);
  return {
    resistanceOhmPerM: ohmPerM * (1 + copper.tempCoefficientPerK * (temperatureC - 20)),
    at20COhmPerM: ohmPerM,
    areaMm2,
    temperatureC,
    conductor,
    tempCoefficientPerK: copper.tempCoefficientPerK,
    from,
    source: sourceOf(table === undefined ? 'resistivity of copper' : 'maximum resistance at 20 °C', row),
  };
}

/**
 * Resistance of a conductor per metre of copper.
 *
 * @param options one of `areaMm2` [mm²] above 0 and `gaugeAwg` -3 to 40; `temperatureC` -60 to 200 (default 20); `conductor` (default `class5` for an area, `annealed` for a gauge).
 * @returns ohm per metre.
 * @throws TypeError or RangeError when neither or both sizes are given, or one is out of range, or the conductor is unknown.
 * Formula: R20 × (1 + α × (T − 20)).
 * @source IEC 60228 maximum resistances; International Annealed Copper Standard for a gauge.
 * @example resistanceOhmPerM({ areaMm2: 1.5, temperatureC: 20 }) // 0.0133
 */
export function resistanceOhmPerM(options: ConductorOptions): number {
  return conductorResistance(options).resistanceOhmPerM;
}
