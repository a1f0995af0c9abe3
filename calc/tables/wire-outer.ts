import type { Cited } from './cited.ts';

/** Outer and conductor diameters of vehicle wire [mm], as one maker prints them for a standard. */
export interface WireOuterRow extends Cited {
  standard: string;
  areaMm2?: number;
  awg?: number;
  strands: number;
  strandMm: number;
  conductorMm: number;
  /** Largest outer diameter: what holes, grommets and sleeves are sized by. */
  outerMaxMm: number;
  outerNominalMm?: number;
  wallMm: number;
  wallMinMm: number;
  /** At 20 °C. */
  resistanceMohmPerM?: number;
  temperatureMinC: number;
  temperatureMaxC: number;
}

const PAGE = { source: 'wire maker data pages stating compliance (open repository)', read: 'seen' } as const;

const iso = ([areaMm2, strands, strandMm, conductorMm, resistanceMohmPerM, wallMm, wallMinMm, outerMaxMm]: readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
]): WireOuterRow => ({
  standard: 'ISO 6722 thin wall',
  areaMm2,
  strands,
  strandMm,
  conductorMm,
  resistanceMohmPerM,
  wallMm,
  wallMinMm,
  outerMaxMm,
  temperatureMinC: -40,
  temperatureMaxC: 105,
  at: 'thin-wall PVC wire, asymmetric strand',
  ...PAGE,
});

const sae =
  (standard: string, at: string, temperatureMaxC: number) =>
  ([awg, strands, strandMm, conductorMm, wallMm, wallMinMm, outerNominalMm, outerMaxMm]: readonly [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ]): WireOuterRow => ({
    standard,
    awg,
    strands,
    strandMm,
    conductorMm,
    wallMm,
    wallMinMm,
    outerNominalMm,
    outerMaxMm,
    temperatureMinC: -40,
    temperatureMaxC,
    at,
    ...PAGE,
  });

/**
 * The symmetric-strand type of 0.35 mm² is usually 1.30 at most (recalled); size by the larger figure.
 * SAE conductors are thinner than the true gauge, and the same number is not the same copper as an AWG wire.
 */
export const WIRE_OUTERS: readonly WireOuterRow[] = [
  ...(
    [
      [0.35, 12, 0.2, 0.8, 54.4, 0.25, 0.2, 1.4],
      [0.5, 16, 0.2, 1, 37.1, 0.28, 0.22, 1.6],
      [0.75, 24, 0.2, 1.2, 24.7, 0.3, 0.24, 1.9],
      [1, 32, 0.2, 1.3, 18.5, 0.3, 0.24, 2.1],
      [1.5, 30, 0.25, 1.6, 12.7, 0.3, 0.24, 2.4],
      [2, 30, 0.3, 1.9, 9.42, 0.35, 0.28, 2.8],
      [2.5, 50, 0.25, 2.1, 7.6, 0.35, 0.28, 3],
      [3, 45, 0.31, 2.4, 6.15, 0.4, 0.32, 3.4],
      [4, 56, 0.3, 2.6, 4.71, 0.4, 0.32, 3.7],
      [6, 84, 0.3, 3.2, 3.14, 0.4, 0.32, 4.3],
      [16, 126, 0.4, 5.2, 1.16, 0.65, 0.52, 7.2],
    ] as const
  ).map(iso),
  ...(
    [
      [20, 7, 0.32, 1, 0.58, 0.41, 2.2, 2.4],
      [18, 19, 0.23, 1.2, 0.58, 0.41, 2.4, 2.5],
      [16, 19, 0.29, 1.5, 0.58, 0.41, 2.6, 2.9],
      [14, 19, 0.36, 1.8, 0.58, 0.41, 3, 3.2],
      [12, 19, 0.45, 2.3, 0.66, 0.46, 3.6, 3.8],
      [10, 19, 0.58, 3, 0.79, 0.55, 4.5, 4.7],
      [8, 50, 0.45, 3.7, 0.94, 0.66, 5.6, 6],
    ] as const
  ).map(sae('SAE J1128 general purpose', 'general purpose PVC wire', 80)),
  ...(
    [
      [24, 7, 0.2, 0.6, 0.4, 0.28, 1.4, 1.5],
      [22, 7, 0.26, 0.8, 0.4, 0.28, 1.6, 1.7],
      [20, 7, 0.32, 1, 0.4, 0.28, 1.8, 1.9],
      [18, 19, 0.23, 1.2, 0.4, 0.28, 2, 2.2],
      [16, 19, 0.29, 1.5, 0.4, 0.28, 2.3, 2.4],
      [14, 19, 0.36, 1.8, 0.4, 0.28, 2.6, 2.7],
      [12, 19, 0.45, 2.3, 0.46, 0.32, 3.2, 3.3],
      [10, 19, 0.58, 3, 0.5, 0.35, 3.9, 4],
      [8, 50, 0.45, 3.7, 0.55, 0.39, 4.8, 4.9],
    ] as const
  ).map(sae('SAE J1128 thin wall', 'thin-wall PVC wire', 85)),
];

/** Cross-linked types of SAE J1128, thinnest wall first; the letters are the standard's own. Outer diameters were not seen. */
export const SAE_WALLS: Cited & {
  thinToThick: readonly string[];
  temperatureMinC: number;
  temperatureMaxC: number;
} = {
  thinToThick: ['TXL', 'GXL', 'SXL'],
  temperatureMinC: -51,
  temperatureMaxC: 125,
  source: 'wire trade pages on SAE J1128',
  at: 'text',
  read: 'seen',
};
