import { cite, type Row } from './rows.ts';

export type ShortMetal = 'copper' | 'aluminium' | 'steel';

/** Constants of k = c × √(ln(1 + (end − start)/(b + start))), the law behind the printed values. */
export const ADIABATIC_CONSTANTS: readonly Row<{ metal: ShortMetal; factor: number; offsetC: number }>[] = cite(
  { source: 'IEC 60364-5-54', at: 'annex A, formula for k', read: 'memory', unit: 'A s^0.5/mm2, °C' },
  [
    { metal: 'copper', factor: 226, offsetC: 234.5 },
    { metal: 'aluminium', factor: 148, offsetC: 228 },
    { metal: 'steel', factor: 78, offsetC: 202 },
  ],
);

/** Printed k: what a square millimetre of conductor stands for one second before its insulation is hurt. */
export type KRow = Row<{
  conductor: ShortMetal;
  insulation: string;
  startC: number;
  endC: number;
  kAS05PerMm2: number;
}>;

export const K_VALUES: readonly KRow[] = cite(
  {
    source: 'BS 7671 / IEC 60364-5-54 values, as a cable knowledge page reprints them',
    at: 'table of k',
    read: 'memory',
    unit: 'A s^0.5/mm2',
  },
  [
    { conductor: 'copper', insulation: 'PVC 70 °C', startC: 70, endC: 160, kAS05PerMm2: 115, read: 'seen' },
    {
      conductor: 'copper',
      insulation: 'PVC 70 °C over 300 mm2',
      startC: 70,
      endC: 140,
      kAS05PerMm2: 103,
      read: 'seen',
    },
    { conductor: 'copper', insulation: 'PVC 90 °C', startC: 90, endC: 160, kAS05PerMm2: 100, read: 'seen' },
    { conductor: 'copper', insulation: 'PVC 90 °C over 300 mm2', startC: 90, endC: 140, kAS05PerMm2: 86, read: 'seen' },
    { conductor: 'copper', insulation: 'rubber 60 °C', startC: 60, endC: 200, kAS05PerMm2: 141, read: 'seen' },
    { conductor: 'copper', insulation: 'rubber 85 °C', startC: 85, endC: 220, kAS05PerMm2: 134 },
    { conductor: 'copper', insulation: 'XLPE or EPR 90 °C', startC: 90, endC: 250, kAS05PerMm2: 143, read: 'seen' },
    { conductor: 'copper', insulation: 'silicone 185 °C', startC: 180, endC: 350, kAS05PerMm2: 132, read: 'seen' },
    { conductor: 'aluminium', insulation: 'PVC 70 °C', startC: 70, endC: 160, kAS05PerMm2: 76, read: 'seen' },
    { conductor: 'aluminium', insulation: 'PVC 70 °C over 300 mm2', startC: 70, endC: 140, kAS05PerMm2: 68 },
    { conductor: 'aluminium', insulation: 'PVC 90 °C', startC: 90, endC: 160, kAS05PerMm2: 66 },
    { conductor: 'aluminium', insulation: 'PVC 90 °C over 300 mm2', startC: 90, endC: 140, kAS05PerMm2: 57 },
    { conductor: 'aluminium', insulation: 'rubber 60 °C', startC: 60, endC: 200, kAS05PerMm2: 93 },
    { conductor: 'aluminium', insulation: 'rubber 85 °C', startC: 85, endC: 220, kAS05PerMm2: 89 },
    { conductor: 'aluminium', insulation: 'XLPE or EPR 90 °C', startC: 90, endC: 250, kAS05PerMm2: 94 },
    { conductor: 'aluminium', insulation: 'silicone 185 °C', startC: 180, endC: 350, kAS05PerMm2: 87 },
  ],
);

/** Longest time for which no heat is taken to leave the conductor [s]; beyond it the law is too strict and says nothing. */
export const ADIABATIC_LONGEST_S = 5;
