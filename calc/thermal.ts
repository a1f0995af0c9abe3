/**
 * Heat and the joint: how hot a place gets, how two materials grow apart, and what that asks of the tape.
 */
import { positive, within } from './guard.ts';
import type { Cited } from './tables/cited.ts';

export interface ExpansionRow extends Cited {
  material: string;
  perK: number;
}

const HANDBOOK = { source: 'handbook coefficients, recalled', at: '-', read: 'memory' } as const;

/** Linear expansion [1/K] near room temperature. Plastics vary with filler by half as much again. */
export const EXPANSION: readonly ExpansionRow[] = [
  { material: 'steel', perK: 12e-6, ...HANDBOOK },
  { material: 'stainless steel', perK: 17e-6, ...HANDBOOK },
  { material: 'aluminium', perK: 23e-6, ...HANDBOOK },
  { material: 'copper', perK: 17e-6, ...HANDBOOK },
  { material: 'glass', perK: 9e-6, ...HANDBOOK },
  { material: 'GRP', perK: 25e-6, ...HANDBOOK },
  { material: 'acrylic', perK: 70e-6, ...HANDBOOK },
  { material: 'polycarbonate', perK: 68e-6, ...HANDBOOK },
  { material: 'ABS', perK: 90e-6, ...HANDBOOK },
  { material: 'polypropylene', perK: 110e-6, ...HANDBOOK },
];

/**
 * How far two parts stuck together grow apart, and the shear that puts into the tape at each end.
 * @param o.lengthMm [mm], above 0 to 20000
 * @param o.deltaK [K] change of temperature, -200 to 200
 * @param o.alpha1PerK [1/K] of the one part, 0 to 0.001
 * @param o.alpha2PerK [1/K] of the other, 0 to 0.001
 * @param o.tapeThicknessMm [mm], above 0 to 10, if a shear strain is wanted
 * @returns `growthMm` [mm], 0 or more; `shearStrainRatio` at each end when a thickness is given
 * @throws RangeError outside those ranges
 * @formula growth = L·|ΔT·(α1 - α2)|; strain = growth/2 over the tape's thickness
 * @source mechanics; coefficients: see EXPANSION
 * @example thermalMismatch({ lengthMm: 1000, deltaK: 60, alpha1PerK: 23e-6, alpha2PerK: 12e-6 }).growthMm // 0.66
 */
export function thermalMismatch(o: {
  lengthMm: number;
  deltaK: number;
  alpha1PerK: number;
  alpha2PerK: number;
  tapeThicknessMm?: number;
}): { growthMm: number; shearStrainRatio?: number } {
  const where = 'thermalMismatch';
  const length = positive(where, 'lengthMm', within(where, 'lengthMm', o.lengthMm, 0, 20000, 'mm'), 'mm');
  const delta = within(where, 'deltaK', o.deltaK, -200, 200, 'K');
  const alpha1 = within(where, 'alpha1PerK', o.alpha1PerK, 0, 0.001, '1/K');
  const alpha2 = within(where, 'alpha2PerK', o.alpha2PerK, 0, 0.001, '1/K');
  const growthMm = Math.abs(length * delta * (alpha1 - alpha2));
  if (o.tapeThicknessMm === undefined) return { growthMm };
  const thickness = within(where, 'tapeThicknessMm', o.tapeThicknessMm, 0.01, 10, 'mm');
  return { growthMm, shearStrainRatio: growthMm / 2 / thickness };
}

export interface PlaceTemperature extends Cited {
  place: string;
  lowestC: number;
  highestC: number;
  note?: string;
}

/** Design temperatures by place. */
export const PLACE_TEMPERATURES: readonly PlaceTemperature[] = [
  {
    place: 'interior',
    lowestC: -40,
    highestC: 85,
    source: 'public design-condition template in an open repository',
    at: 'environment list',
    read: 'seen',
    note: 'Not the standard itself. A dash top in the sun gets hotter.',
  },
  {
    place: 'engine bay',
    lowestC: -40,
    highestC: 125,
    source: 'public design-condition template in an open repository',
    at: 'environment list',
    read: 'seen',
    note: 'Not the standard itself.',
  },
];

/** What people have measured: why 85 °C is no upper bound for a strip on a sunlit dash. */
export const MEASURED_TEMPERATURES = {
  dashTop: {
    ambientC: 27.5,
    dashC: 94.6,
    cameraBodyC: 70,
    source: 'vehicle camera forum, infrared thermometer log',
    at: 'post',
    read: 'seen',
  },
  console: {
    consoleF: 150,
    consoleC: (150 - 32) / 1.8,
    bootBelowF: 120,
    source: 'hobby page with logging thermometers',
    at: 'text',
    read: 'seen',
  },
} as const;
