/** The short selector at the job: twelve surfaces, their steps in a line each, warming first when it is cold. */
import { WARM_TO_C } from './application-temperature.ts';
import { within } from './guard.ts';
import { type Cited, COMMON_PRACTICE } from './tables/cited.ts';

export interface PrepLine {
  surface: string;
  steps: readonly string[];
  /** null where no tape goes on, so no primer either. */
  primer: boolean | null;
}

/** "Wipe" is a lint-free cloth with alcohol and water, one direction, a clean cloth each pass; hidden spot first. */
export const PREP_LINES: Cited & { rows: readonly PrepLine[] } = {
  rows: [
    {
      surface: 'painted steel',
      steps: ['wipe', 'light scuff only if matt finish is allowed', 'wipe', 'dry', 'press'],
      primer: false,
    },
    {
      surface: 'bare aluminium',
      steps: ['wipe', 'fine abrasive to remove oxide', 'wipe', 'fit within 30 min'],
      primer: false,
    },
    { surface: 'stainless', steps: ['wipe', 'fine abrasive', 'wipe', 'dry'], primer: false },
    { surface: 'galvanised', steps: ['wipe', 'remove white rust', 'wipe', 'adhesion primer'], primer: true },
    { surface: 'powder coat', steps: ['wipe', 'scuff', 'wipe', 'adhesion primer'], primer: true },
    { surface: 'GRP gelcoat', steps: ['remove wax', 'wipe', 'scuff', 'wipe'], primer: false },
    {
      surface: 'polypropylene',
      steps: ['wipe', 'adhesion primer for low-energy plastic', 'wait as its label says'],
      primer: true,
    },
    { surface: 'ABS', steps: ['wipe with mild alcohol mix only', 'dry'], primer: false },
    { surface: 'plywood', steps: ['seal', 'dry', 'wipe; screw instead where allowed'], primer: true },
    { surface: 'glass', steps: ['wipe', 'adhesion primer for glass', 'wait'], primer: true },
    { surface: 'rubber or soft vinyl', steps: ['do not tape: fix mechanically'], primer: null },
    {
      surface: 'wrap film',
      steps: ['do not tape to the film: get agreement, cut a window, prepare what is under it'],
      primer: null,
    },
  ],
  ...COMMON_PRACTICE,
};

/**
 * Ordered steps for one of twelve surfaces, with warming first when the surface is cold.
 * @param o.surface one of PREP_LINES
 * @param o.surfaceC [°C] of the panel, not the room, -20 to 60
 * @param o.where 'inside' or 'outside'
 * @returns `steps` in order; `primer` 'yes', 'no' or '-'; `verdict` 'pass' or 'warn'; `fullStrengthH` [h]
 * @throws RangeError for an unknown surface or place or a temperature outside the range
 * @formula below 15 °C warming comes first and the verdict is warn; outside adds a back-up fixing
 * @source common practice, no source: follow the label of the tape and primer you hold
 * @example prepSelect({ surface: 'polypropylene', surfaceC: 12, where: 'inside' }).verdict // 'warn'
 */
export function prepSelect(o: { surface: string; surfaceC: number; where: 'inside' | 'outside' }): {
  steps: string[];
  primer: 'yes' | 'no' | '-';
  verdict: 'pass' | 'warn';
  fullStrengthH: number;
} {
  const row = PREP_LINES.rows.find(({ surface }) => surface === o.surface);
  if (row === undefined) {
    const known = PREP_LINES.rows.map(({ surface }) => surface).join(', ');
    throw new RangeError(`prepSelect: unexpected surface "${o.surface}", expected one of ${known}`);
  }
  const surfaceC = within('prepSelect', 'surfaceC', o.surfaceC, -20, 60, '°C');
  if (o.where !== 'inside' && o.where !== 'outside') {
    throw new RangeError(`prepSelect: unexpected where "${String(o.where)}", expected inside or outside`);
  }
  const cold = surfaceC < WARM_TO_C;
  const first = cold ? [`warm surface and part to ${WARM_TO_C} C or more first`] : [];
  const last = o.where === 'outside' ? ['back-up fixing'] : [];
  return {
    steps: [...first, ...row.steps, ...last],
    primer: row.primer === null ? '-' : row.primer ? 'yes' : 'no',
    verdict: cold ? 'warn' : 'pass',
    fullStrengthH: 72,
  };
}
