import { cite, type Row } from './rows.ts';

/** Single conductor in free air at 30 °C, by insulation rating; the book marks 20 to 16 AWG as estimates. */
export interface FreeAirRow {
  gaugeAwg: number;
  at60CA: number;
  /** Absent for 20 to 16 AWG. */
  at75CA?: number;
  at90CA: number;
}

export const FREE_AIR: readonly Row<FreeAirRow>[] = cite(
  {
    source: 'Kuphaldt, Lessons in Electric Circuits (open textbook), table taken from the NEC',
    at: 'vol. I ch. 12, conductor ampacity',
    read: 'memory',
    unit: 'A',
  },
  [
    { gaugeAwg: 20, at60CA: 9, at90CA: 12.5, read: 'seen' },
    { gaugeAwg: 18, at60CA: 13, at90CA: 18 },
    { gaugeAwg: 16, at60CA: 18, at90CA: 24, read: 'seen' },
    { gaugeAwg: 14, at60CA: 25, at75CA: 30, at90CA: 35, read: 'seen' },
    { gaugeAwg: 12, at60CA: 30, at75CA: 35, at90CA: 40 },
    { gaugeAwg: 10, at60CA: 40, at75CA: 50, at90CA: 55, read: 'seen' },
    { gaugeAwg: 8, at60CA: 60, at75CA: 70, at90CA: 80, read: 'seen' },
    { gaugeAwg: 6, at60CA: 80, at75CA: 95, at90CA: 105 },
    { gaugeAwg: 4, at60CA: 105, at75CA: 125, at90CA: 140, read: 'seen' },
    { gaugeAwg: 2, at60CA: 140, at75CA: 170, at90CA: 190, read: 'seen' },
    { gaugeAwg: 1, at60CA: 165, at75CA: 195, at90CA: 220 },
    { gaugeAwg: 0, at60CA: 195, at75CA: 230, at90CA: 260, read: 'seen' },
    { gaugeAwg: -1, at60CA: 225, at75CA: 265, at90CA: 300, read: 'seen' },
    { gaugeAwg: -2, at60CA: 260, at75CA: 310, at90CA: 350 },
    { gaugeAwg: -3, at60CA: 300, at75CA: 360, at90CA: 405, read: 'seen' },
  ],
);
