import { cite, type Row } from './rows.ts';

/**
 * ISO 6722-1 / ISO 19642: maximum resistance of road-vehicle cable at 20 °C. From memory but for 1.5 mm²; sources
 * differ in the third figure (0.35: 52.0 and 54.4, 4: 4.70 and 4.71, 6: 3.10 and 3.14).
 */
export const ISO_6722: readonly Row<{ areaMm2: number; resistanceOhmPerM: number }>[] = cite(
  { source: 'ISO 6722-1 / ISO 19642', at: 'conductor resistance table', read: 'memory', unit: 'milliohm/m' },
  [
    { areaMm2: 0.22, resistanceOhmPerM: 0.0848 },
    { areaMm2: 0.35, resistanceOhmPerM: 0.052 },
    { areaMm2: 0.5, resistanceOhmPerM: 0.0371 },
    { areaMm2: 0.75, resistanceOhmPerM: 0.0247 },
    { areaMm2: 1, resistanceOhmPerM: 0.0185 },
    { areaMm2: 1.25, resistanceOhmPerM: 0.0149 },
    { areaMm2: 1.5, resistanceOhmPerM: 0.0127, read: 'seen' },
    { areaMm2: 2, resistanceOhmPerM: 0.00942 },
    { areaMm2: 2.5, resistanceOhmPerM: 0.0076 },
    { areaMm2: 3, resistanceOhmPerM: 0.00615 },
    { areaMm2: 4, resistanceOhmPerM: 0.00471 },
    { areaMm2: 5, resistanceOhmPerM: 0.00394 },
    { areaMm2: 6, resistanceOhmPerM: 0.00314 },
    { areaMm2: 8, resistanceOhmPerM: 0.00238 },
    { areaMm2: 10, resistanceOhmPerM: 0.00182 },
    { areaMm2: 12, resistanceOhmPerM: 0.00152 },
    { areaMm2: 16, resistanceOhmPerM: 0.00116 },
    { areaMm2: 20, resistanceOhmPerM: 0.000955 },
    { areaMm2: 25, resistanceOhmPerM: 0.000743 },
    { areaMm2: 30, resistanceOhmPerM: 0.000647 },
    { areaMm2: 35, resistanceOhmPerM: 0.000527 },
    { areaMm2: 40, resistanceOhmPerM: 0.000473 },
    { areaMm2: 50, resistanceOhmPerM: 0.000368 },
    { areaMm2: 60, resistanceOhmPerM: 0.000315 },
    { areaMm2: 70, resistanceOhmPerM: 0.000259 },
    { areaMm2: 95, resistanceOhmPerM: 0.000196 },
    { areaMm2: 120, resistanceOhmPerM: 0.000153 },
  ],
);
