import { cite, type Row } from './rows.ts';

/**
 * IEC 60228: maximum resistance of copper conductors at 20 °C by nominal area. A ceiling, not a typical value: a real
 * conductor comes out lower, and resistivity over area lower still.
 */
export type ConductorRow = Row<{ areaMm2: number; resistanceOhmPerM: number }>;

/** nominal area [mm²], maximum resistance [milliohm/m, printed as ohm/km] */
type Pair = readonly [number, number];

const table = /* @__NO_SIDE_EFFECTS__ */ (at: string, pairs: readonly Pair[]): readonly ConductorRow[] =>
  cite(
    { source: 'IEC 60228, as cable makers reprint it', at, read: 'seen', unit: 'ohm/km' },
    pairs.map(([areaMm2, milliohm]) => ({ areaMm2, resistanceOhmPerM: milliohm / 1000 })),
  );

export const CLASS_1_PLAIN = table('class 1, solid, plain copper', [
  [0.5, 36],
  [0.75, 24.5],
  [1, 18.1],
  [1.5, 12.1],
  [2.5, 7.41],
  [4, 4.61],
  [6, 3.08],
  [10, 1.83],
  [16, 1.15],
  [25, 0.727],
  [35, 0.524],
  [50, 0.387],
  [70, 0.268],
  [95, 0.193],
  [120, 0.153],
  [150, 0.124],
]);

export const CLASS_2_PLAIN = table('class 2, stranded, plain copper', [
  [0.5, 36],
  [0.75, 24.5],
  [1, 18.1],
  [1.5, 12.1],
  [2.5, 7.41],
  [4, 4.61],
  [6, 3.08],
  [10, 1.83],
  [16, 1.15],
  [25, 0.727],
  [35, 0.524],
  [50, 0.387],
  [70, 0.268],
  [95, 0.193],
  [120, 0.153],
  [150, 0.124],
  [185, 0.0991],
  [240, 0.0754],
]);

export const CLASS_2_TINNED = table('class 2, stranded, metal-coated copper', [
  [0.5, 36.7],
  [0.75, 24.8],
  [1, 18.2],
  [1.5, 12.2],
  [2.5, 7.56],
  [4, 4.7],
  [6, 3.11],
  [10, 1.84],
  [16, 1.16],
  [25, 0.734],
  [35, 0.529],
  [50, 0.391],
  [70, 0.27],
  [95, 0.195],
  [120, 0.154],
  [150, 0.126],
  [185, 0.1],
  [240, 0.0762],
]);

/** The workshop's default: flexible plain copper, what most vehicle cable is made of. */
export const CLASS_5_PLAIN = table('class 5, flexible, plain copper', [
  [0.5, 39],
  [0.75, 26],
  [1, 19.5],
  [1.5, 13.3],
  [2.5, 7.98],
  [4, 4.95],
  [6, 3.3],
  [10, 1.91],
  [16, 1.21],
  [25, 0.78],
  [35, 0.554],
  [50, 0.386],
  [70, 0.272],
  [95, 0.206],
  [120, 0.161],
  [150, 0.129],
  [185, 0.106],
  [240, 0.0801],
]);

export const CLASS_5_TINNED = table('class 5, flexible, metal-coated copper', [
  [0.5, 40.1],
  [0.75, 26.7],
  [1, 20],
  [1.5, 13.7],
  [2.5, 8.21],
  [4, 5.09],
  [6, 3.39],
  [10, 1.95],
  [16, 1.24],
  [25, 0.795],
  [35, 0.565],
  [50, 0.393],
  [70, 0.277],
  [95, 0.21],
  [120, 0.164],
  [150, 0.132],
  [185, 0.108],
  [240, 0.0817],
]);
