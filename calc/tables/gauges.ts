import { cite, type Row } from './rows.ts';

/**
 * Three families of size that share names and differ in copper: 12 AWG is 3.31 mm², 12 SAE 2.96 mm², and what vehicle
 * makers print beside it is 2.5 mm² in one place and 3.0 mm² in another. Gauge numbers 0, -1, -2, -3 stand for 1/0 to 4/0.
 */

/** SAE J1128 / J1127: least conductor area by SAE size, 3 to 11 % below the AWG size of the same number. */
export const SAE_AREAS: readonly Row<{ gaugeSae: number; areaCmil: number }>[] = cite(
  {
    source: 'SAE J1128 / J1127 areas, as chandlers and battery-cable pages reprint them',
    at: 'area table',
    read: 'seen',
    unit: 'cmil',
  },
  [
    { gaugeSae: 20, areaCmil: 1072, read: 'memory' },
    { gaugeSae: 18, areaCmil: 1537 },
    { gaugeSae: 16, areaCmil: 2336 },
    { gaugeSae: 14, areaCmil: 3702 },
    { gaugeSae: 12, areaCmil: 5833 },
    { gaugeSae: 10, areaCmil: 9343, read: 'memory' },
    { gaugeSae: 8, areaCmil: 14_810 },
    { gaugeSae: 6, areaCmil: 24_538 },
    { gaugeSae: 4, areaCmil: 37_360 },
    { gaugeSae: 2, areaCmil: 62_450 },
    { gaugeSae: 1, areaCmil: 77_790, read: 'memory' },
    { gaugeSae: 0, areaCmil: 98_980 },
    { gaugeSae: -1, areaCmil: 125_100, read: 'memory' },
    { gaugeSae: -2, areaCmil: 158_600 },
    { gaugeSae: -3, areaCmil: 205_500 },
  ],
);

/** The metric name SAE gives to its own gauge numbers. */
export const SAE_METRIC_NAMES: readonly Row<{ gaugeSae: number; metricNameMm2: number }>[] = cite(
  {
    source: 'motorcycle wiring notes, metric-to-AWG table (SAE metric names)',
    at: 'table',
    read: 'seen',
    unit: 'mm2',
  },
  [
    { gaugeSae: 22, metricNameMm2: 0.35, read: 'memory' },
    { gaugeSae: 20, metricNameMm2: 0.5 },
    { gaugeSae: 18, metricNameMm2: 0.8 },
    { gaugeSae: 16, metricNameMm2: 1 },
    { gaugeSae: 14, metricNameMm2: 2 },
    { gaugeSae: 12, metricNameMm2: 3 },
    { gaugeSae: 10, metricNameMm2: 5 },
    { gaugeSae: 8, metricNameMm2: 8 },
    { gaugeSae: 6, metricNameMm2: 13 },
    { gaugeSae: 4, metricNameMm2: 19 },
    { gaugeSae: 2, metricNameMm2: 32, read: 'memory' },
    { gaugeSae: 1, metricNameMm2: 40, read: 'memory' },
    { gaugeSae: 0, metricNameMm2: 50, read: 'memory' },
  ],
);

/** The metric size European vehicle makers print beside an AWG number: names only, always less copper. Never size by it. */
export const VEHICLE_METRIC_NAMES: readonly Row<{ gaugeAwg: number; nearestMetricMm2: number }>[] = cite(
  {
    source: "European vehicle maker's wiring manual",
    at: 'wire size conversion chart',
    read: 'seen',
    unit: 'mm2',
  },
  [
    { gaugeAwg: 22, nearestMetricMm2: 0.35 },
    { gaugeAwg: 20, nearestMetricMm2: 0.5 },
    { gaugeAwg: 18, nearestMetricMm2: 0.75, read: 'memory' },
    { gaugeAwg: 16, nearestMetricMm2: 1 },
    { gaugeAwg: 14, nearestMetricMm2: 1.5 },
    { gaugeAwg: 12, nearestMetricMm2: 2.5 },
    { gaugeAwg: 10, nearestMetricMm2: 4, read: 'memory' },
    { gaugeAwg: 8, nearestMetricMm2: 6 },
    { gaugeAwg: 6, nearestMetricMm2: 10, read: 'memory' },
    { gaugeAwg: 4, nearestMetricMm2: 16 },
    { gaugeAwg: 2, nearestMetricMm2: 25 },
  ],
);
