import type { Cited } from './cited.ts';

/** A solder: where it starts and ends melting. Between the two it is paste, and a joint moved then is a bad joint. */
export interface SolderAlloy extends Cited {
  alloy: string;
  solidusC: number;
  liquidusC: number;
  densityGPerCm3: number;
  leadFree: boolean;
  note?: string;
}

const TABLE = { source: 'alloy property table (web)', at: 'row', read: 'seen' } as const;
const row = (
  alloy: string,
  solidusC: number,
  liquidusC: number,
  densityGPerCm3: number,
  note?: string,
): SolderAlloy => ({
  alloy,
  solidusC,
  liquidusC,
  densityGPerCm3,
  leadFree: !alloy.includes('Pb'),
  ...TABLE,
  ...(note === undefined ? {} : { note }),
});

/** SAC305 is Sn96.5Ag3.0Cu0.5, SAC387 Sn95.5Ag3.8Cu0.7, and so on: silver, then copper. */
export const SOLDER_ALLOYS: readonly SolderAlloy[] = [
  row('Sn63Pb37', 183, 183, 8.4),
  row('Sn62.5Pb36.1Ag1.4', 179, 179, 8.41),
  row('Sn60Pb40', 183, 191, 8.5, 'Other pages give 188 or 190 for the liquidus.'),
  row('Sn55Pb45', 183, 200, 8.68),
  row('Sn50Pb50', 183, 212, 8.87),
  row('Sn45Pb55', 183, 227, 9.07),
  row('Sn40Pb60', 183, 238, 9.28),
  row('Sn90Pb10', 183, 213, 7.55),
  row('SAC305', 217, 220, 7.38),
  row('SAC387', 217, 220, 7.44),
  row('SAC405', 217, 220, 7.44),
  row('SAC105', 215, 227, 7.32),
  row('SAC0307', 217, 228, 7.33),
  row('SAC0107', 217, 228, 7.32),
  row('SAC0807', 216, 225, 7.33),
  row('SAC263', 217, 224, 7.36),
  row('Sn96.5Ag3.5', 221, 221, 7.37),
  row('Sn95Ag5', 221, 240, 7.4),
  row('Sn90Ag10', 221, 295, 7.51),
  row('Sn99.3Cu0.7', 227, 227, 7.31),
  row('Sn97Cu3', 227, 300, 7.32),
];

/** One source's word on the temperature of the tip. They span 280 to 398 °C: no single number is "the" setting. */
export interface TipTemperature extends Cited {
  id: string;
  alloys: readonly string[];
  tipC: readonly [number, number];
  smallJointC?: number;
  maxC?: number;
}

/** Iron temperatures that makers and courses give. */
export const TIP_TEMPERATURES: readonly TipTemperature[] = [
  {
    id: 'space practice',
    alloys: ['SnPb'],
    tipC: [280, 280],
    maxC: 320,
    source: 'ESA PSS-01-738 as quoted by an inspector',
    at: '3.5.7, second-hand',
    read: 'seen',
  },
  {
    id: 'alloy maker',
    alloys: ['Sn63Pb37', 'SAC305'],
    tipC: [315, 315],
    source: 'solder alloy maker article on hand soldering',
    at: 'text (most fluxes hold to 350 °C)',
    read: 'seen',
  },
  {
    id: 'trainer',
    alloys: ['any'],
    tipC: [371, 398],
    smallJointC: 343,
    source: 'electronics trainer question page',
    at: 'answer',
    read: 'seen',
  },
  {
    id: 'distributor',
    alloys: ['Sn60Pb40', 'Sn99.5Cu0.5'],
    tipC: [320, 360],
    source: 'distributor article on tips',
    at: 'text',
    read: 'seen',
  },
  {
    id: 'panel',
    alloys: ['any'],
    tipC: [(600 - 32) / 1.8, (700 - 32) / 1.8],
    source: 'assembly trade expert panel (2007)',
    at: 'answer (600 to 700 °F)',
    read: 'seen',
  },
];
