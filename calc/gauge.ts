import { type Laying, wireLimit } from './ampacity.ts';
import { METRIC_SIZES_MM2 } from './conductor.ts';
import { positive, within } from './guard.ts';
import type { Source } from './tables/rows.ts';
import { voltageDrop } from './voltage-drop.ts';

/** What a wire must do. */
export interface GaugeOptions extends Laying {
  /** Current it carries [A], above 0. */
  currentA: number;
  /** Length of copper from source to load and, where the return is wire, back [m], above 0. */
  lengthM: number;
  /** Supply the drop is a share of [V], above 0. */
  systemV: number;
  /** Share of the supply the run may lose, 0.001 to 0.5 (default 0.03). */
  allowedDropFraction?: number | undefined;
  /** Temperature of the copper the drop is worked at [°C], -60 to 200 (default 60: a warm loom). */
  conductorC?: number | undefined;
  /** Fuse ahead of the wire [A], where it is already chosen. */
  minFuseA?: number | undefined;
  /** Joints and terminals in series [ohm], 0 to 10 (default 0). */
  jointOhm?: number | undefined;
  /** Sizes to choose from [mm²] (default `METRIC_SIZES_MM2`). */
  sizesMm2?: readonly number[] | undefined;
  /** Thinnest size to consider [mm²], for strength or because a rule says so. */
  lowestMm2?: number | undefined;
}

/** One size, tried. */
export interface GaugeRow {
  areaMm2: number;
  dropV: number;
  dropFraction: number;
  limitA: number;
  meetsDrop: boolean;
  meetsHeat: boolean;
  meetsFuse: boolean;
}

/** One number of the working, as it would stand on paper. */
export interface WorkingLine {
  symbol: string;
  name: string;
  value: number;
  unit: string;
}

export interface GaugeFound {
  found: true;
  areaMm2: number;
  /** Which demand the next thinner size fails, or comes nearest to failing. */
  decidedBy: 'drop' | 'heat' | 'fuse';
  dropV: number;
  dropFraction: number;
  limitA: number;
  allowedDropV: number;
  rows: GaugeRow[];
  working: WorkingLine[];
  sources: Source[];
}

export interface GaugeNotFound {
  found: false;
  /** Why no size serves. */
  reasons: string[];
  /** What would have to change. */
  change: string[];
  rows: GaugeRow[];
}

export type Gauge = GaugeFound | GaugeNotFound;

/** Equality passes, also where a computer's last digit says otherwise. */
const atMost = (value: number, limit: number): boolean => value <= limit * (1 + 1e-9);

const printed = (value: number): string => String(Number(value.toPrecision(3)));

/**
 * The thinnest wire that loses little enough voltage, stands the current, and stands behind its fuse. Never the nearest:
 * always one that meets all.
 *
 * @param options see `GaugeOptions`: `currentA` and `lengthM` of copper above 0, `systemV` above 0, `allowedDropFraction` 0.001 to 0.5 (0.03), `conductorC` -60 to 200 (60), `insulationC`, `ambientC`, `bundled`, `engineSpace` as in `wireLimit`, `minFuseA`, `jointOhm` 0 to 10, `sizesMm2`, `lowestMm2` [mm²].
 * @returns `found: true` with the size, which demand decided, every size tried and the working; or `found: false` with reasons and what would have to change.
 * @throws TypeError or RangeError when a value is out of range or no size is offered.
 * Formula: smallest area with I × (R(T) × L + R_joints) ≤ share × V, limit ≥ I and limit ≥ fuse.
 * @source IEC 60228 class 5 maximum at 20 °C; 33 CFR 183.425 Table 5; workshop table: common practice, no source.
 * @example gaugeFor({ currentA: 2.18, lengthM: 8, systemV: 12, jointOhm: 0.01, minFuseA: 5 }).found // true
 */
export function gaugeFor(options: GaugeOptions): Gauge {
  const where = 'gaugeFor';
  const { currentA, lengthM, systemV, minFuseA, lowestMm2 = 0 } = options;
  const { allowedDropFraction = 0.03, conductorC = 60, jointOhm = 0, sizesMm2 = METRIC_SIZES_MM2 } = options;
  const { insulationC, ambientC, bundled, engineSpace } = options;
  positive(where, 'currentA', currentA, 'A');
  positive(where, 'lengthM', lengthM, 'm');
  positive(where, 'systemV', systemV, 'V');
  within(where, 'allowedDropFraction', allowedDropFraction, 0.001, 0.5);
  if (minFuseA !== undefined) positive(where, 'minFuseA', minFuseA, 'A');
  const sizes = sizesMm2.filter((size) => size >= lowestMm2).sort((a, b) => a - b);
  if (sizes.length === 0)
    throw new RangeError(`${where}: unexpected sizesMm2, expected a size of ${lowestMm2} mm² or more`);

  const allowedDropV = allowedDropFraction * systemV;
  const tried = sizes.map((areaMm2) => {
    const drop = voltageDrop({ currentA, lengthM, areaMm2, temperatureC: conductorC, jointOhm, supplyV: systemV });
    const limit = wireLimit({ areaMm2, insulationC, ambientC, bundled, engineSpace });
    const row: GaugeRow = {
      areaMm2,
      dropV: drop.dropV,
      dropFraction: drop.dropV / systemV,
      limitA: limit.limitA,
      meetsDrop: atMost(drop.dropV, allowedDropV),
      meetsHeat: atMost(currentA, limit.limitA),
      meetsFuse: minFuseA === undefined || atMost(minFuseA, limit.limitA),
    };
    return { row, drop, limit };
  });
  const rows = tried.map(({ row }) => row);
  const index = rows.findIndex((row) => row.meetsDrop && row.meetsHeat && row.meetsFuse);
  const chosen = tried[index];
  if (chosen === undefined) return { found: false, ...refusal(rows.at(-1)!, allowedDropV, options), rows };

  const { row, drop, limit } = chosen;
  const resistance = drop.resistance;
  return {
    found: true,
    areaMm2: row.areaMm2,
    decidedBy: decided(rows[index - 1] ?? row, allowedDropV, currentA, minFuseA),
    dropV: row.dropV,
    dropFraction: row.dropFraction,
    limitA: row.limitA,
    allowedDropV,
    rows,
    working: [
      { symbol: 'I', name: 'current', value: currentA, unit: 'A' },
      { symbol: 'L', name: 'copper length', value: lengthM, unit: 'm' },
      { symbol: 'A', name: 'size', value: row.areaMm2, unit: 'mm²' },
      { symbol: 'R₂₀', name: 'resistance at 20 °C', value: resistance.at20COhmPerM * 1000, unit: 'mΩ/m' },
      { symbol: 'T', name: 'copper temperature', value: conductorC, unit: '°C' },
      { symbol: 'α', name: 'temperature coefficient', value: resistance.tempCoefficientPerK, unit: '1/K' },
      { symbol: 'R', name: 'resistance of the wire', value: drop.wireOhm * 1000, unit: 'mΩ' },
      { symbol: 'Rⱼ', name: 'joints', value: jointOhm * 1000, unit: 'mΩ' },
      { symbol: 'ΔV', name: 'drop', value: row.dropV, unit: 'V' },
      { symbol: 'ΔVₘₐₓ', name: 'allowed drop', value: allowedDropV, unit: 'V' },
      { symbol: 'I_z', name: 'current this wire may carry', value: row.limitA, unit: 'A' },
    ],
    sources: [resistance.source, ...limit.sources],
  };
}

/** The demand that stands nearest to its limit, or farthest past it, at the size that just failed. */
function decided(
  row: GaugeRow,
  allowedDropV: number,
  currentA: number,
  minFuseA: number | undefined,
): GaugeFound['decidedBy'] {
  const strains = [
    { demand: 'drop', strain: row.dropV / allowedDropV },
    { demand: 'heat', strain: currentA / row.limitA },
    { demand: 'fuse', strain: (minFuseA ?? 0) / row.limitA },
  ] as const;
  return strains.reduce((worst, each) => (each.strain > worst.strain ? each : worst)).demand;
}

/** Why even the thickest size on offer fails, and the ways out. */
function refusal(
  row: GaugeRow,
  allowedDropV: number,
  { currentA, minFuseA, jointOhm = 0 }: GaugeOptions,
): { reasons: string[]; change: string[] } {
  const reasons: string[] = [];
  const change: string[] = [];
  const size = `${row.areaMm2} mm²`;
  if (!row.meetsDrop) {
    reasons.push(`Even ${size} loses ${printed(row.dropV)} V of the ${printed(allowedDropV)} V allowed.`);
    const joints = currentA * jointOhm;
    change.push(
      joints > allowedDropV
        ? `Better joints: they alone lose ${printed(joints)} V.`
        : 'A shorter run, less current in one wire, a larger allowed drop if the load stands it, or a thicker size on the list.',
    );
  }
  if (!row.meetsHeat) {
    reasons.push(
      `Even ${size} may carry only ${printed(row.limitA)} A as it is laid; the load takes ${printed(currentA)} A.`,
    );
    change.push(
      'Cooler air, fewer loaded wires in the bundle, insulation for a higher temperature, or a thicker size on the list.',
    );
  }
  if (!row.meetsFuse) {
    reasons.push(
      `Even ${size} may stand behind ${printed(row.limitA)} A at most; the fuse is ${printed(minFuseA!)} A.`,
    );
    change.push('A smaller fuse, or a second fuse where the thin wire begins.');
  }
  return { reasons, change };
}
