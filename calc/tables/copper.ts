import { cite, type Row } from './rows.ts';

/**
 * What copper and aluminium are. Each resistivity belongs to its own temperature coefficient; mixing the two sets gives
 * a figure that is in no book. `iacs` is annealed copper wire; `element` is the pure metal of handbooks, 2.7 % lower.
 */
export type MetalRow = Row<{
  metal: 'copper' | 'copper pure element' | 'aluminium';
  resistivityOhmMm2PerM: number;
  tempCoefficientPerK: number;
  referenceC: number;
}>;

export const METALS: readonly MetalRow[] = [
  {
    metal: 'copper',
    resistivityOhmMm2PerM: 0.017241,
    tempCoefficientPerK: 0.00393,
    referenceC: 20,
    unit: 'ohm mm2/m, 1/K',
    source: 'International Annealed Copper Standard (IACS)',
    at: '100 % conductivity at 20 °C',
    read: 'seen',
  },
  {
    metal: 'copper pure element',
    resistivityOhmMm2PerM: 0.01678,
    tempCoefficientPerK: 0.004041,
    referenceC: 20,
    unit: 'ohm mm2/m, 1/K',
    source: 'Kuphaldt, Lessons in Electric Circuits (open textbook)',
    at: 'vol. I ch. 12, specific resistance and temperature coefficient tables',
    read: 'seen',
  },
  {
    metal: 'aluminium',
    resistivityOhmMm2PerM: 0.028264,
    tempCoefficientPerK: 0.00403,
    referenceC: 20,
    unit: 'ohm mm2/m, 1/K',
    source: 'IEC 60889, hard-drawn aluminium wire',
    at: 'resistivity at 20 °C',
    read: 'memory',
  },
];

/** Temperature coefficient that the correction factors of IEC 60228 are built on; not the one of annealed copper. */
export const IEC_60228_COEFFICIENT: Row<{ tempCoefficientPerK: number }> = {
  tempCoefficientPerK: 0.004,
  unit: '1/K',
  source: 'IEC 60228 correction factors, as a cable maker reprints them',
  at: 'table of Kt',
  read: 'seen',
};

/** Rounded resistivities that whole trades size by: each holds an allowance for warmth or for stranding. */
export const TRADE_RESISTIVITIES: readonly Row<{ use: string; resistivityOhmCmilPerFt: number }>[] = cite(
  { unit: 'ohm cmil/ft', source: '', at: '', read: 'seen' },
  [
    {
      use: 'small craft',
      resistivityOhmCmilPerFt: 10.75,
      source: 'ABYC E-11, as quoted in a boating forum and by chandlers',
      at: 'E-11.14.2.6 formula; annealed copper at about 29 °C',
    },
    {
      use: 'building wire',
      resistivityOhmCmilPerFt: 12.9,
      source: 'solar trade mailing list, taught formula',
      at: 'posting on voltage drop; stranded copper at 75 °C',
    },
  ],
);
