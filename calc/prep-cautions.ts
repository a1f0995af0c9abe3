/**
 * Cautions of a preparation. Each has a condition of its own, so that a test can hold every plan against every condition.
 */

import { PRIMERS, type PrepStepId, STEP_SOLVENT, type SurfaceFacts } from './prep-surface.ts';
import { ENERGY_CLASS_LIMITS } from './surface-energy.ts';
import type { Place, TapeClass } from './tables/tapes.ts';
import { MEASURED_TEMPERATURES } from './thermal.ts';
import { ISOPROPYL_ALCOHOL, vapourPpm } from './vapour.ts';

export interface PrepCaution {
  id: string;
  text: string;
  severity: 'stop' | 'warn' | 'note';
}

export interface CautionContext {
  surface: SurfaceFacts;
  tape: TapeClass;
  place: Place;
  surfaceC: number;
  applyFromC: number;
  steps: readonly PrepStepId[];
  usesTape: boolean;
  position: 'vertical' | 'overhead' | 'level';
  growthMm: number | undefined;
}

interface CautionRule {
  id: string;
  severity: PrepCaution['severity'];
  when(context: CautionContext): boolean;
  text(context: CautionContext): string;
}

const uses = ({ steps }: CautionContext, ...ids: PrepStepId[]): boolean => ids.some((id) => steps.includes(id));
const discolouring = ({ steps }: CautionContext): boolean =>
  Object.values(PRIMERS).some(({ step, discolours }) => discolours && steps.includes(step));

/** Published figures lie on both sides of the border between low and medium. */
const straddles = ({ energy }: SurfaceFacts): boolean =>
  energy !== null &&
  energy.minMnPerM < ENERGY_CLASS_LIMITS.lowBelowMnPerM &&
  energy.maxMnPerM >= ENERGY_CLASS_LIMITS.lowBelowMnPerM;

/** Every general caution with the condition it holds under; a surface adds its own. */
export const PREP_CAUTIONS: readonly CautionRule[] = [
  {
    id: 'maker-first',
    severity: 'note',
    when: () => true,
    text: () =>
      "The vehicle maker's instructions, the labels and safety sheets of the tape, cleaner and primer you hold, and local rules come before this list.",
  },
  {
    id: 'solvent-fire',
    severity: 'warn',
    when: ({ steps }) => steps.some((id) => STEP_SOLVENT[id] !== undefined || id === 'seal'),
    text: () => {
      const { ppm } = vapourPpm({ volumeMl: 2, spaceM3: 3 });
      return `Solvent and primer vapour burns and harms: open the doors, gloves, no flame, no iron or heat gun until it is dry and the smell is gone. 2 ml of alcohol in a closed 3 m³ cab is already ${Math.round(ppm)} ppm; limits of ${ISOPROPYL_ALCOHOL.lowerTwaPpm} and ${ISOPROPYL_ALCOHOL.twaPpm} ppm are in use.`;
    },
  },
  {
    id: 'solvent-harms-surface',
    severity: 'stop',
    when: ({ surface }) => surface.harmful.length > 0,
    text: ({ surface }) =>
      `Never on this surface: ${surface.harmful.map(({ solvent, why }) => `${solvent} (${why})`).join('; ')}.`,
  },
  {
    id: 'stress-cracks',
    severity: 'warn',
    when: ({ surface, usesTape }) => usesTape && ['medium', 'high'].includes(surface.solventStressRisk),
    text: () =>
      'This plastic can crack or craze under solvent where it is stressed: hidden spot first, little liquid, no soaking.',
  },
  {
    id: 'promoter-discolours',
    severity: 'warn',
    when: discolouring,
    text: () => 'The promoter may discolour: hidden spot first, and only inside the footprint of the tape.',
  },
  {
    id: 'surface-stains',
    severity: 'warn',
    when: ({ surface, usesTape }) => usesTape && ['medium', 'high'].includes(surface.discolourRisk),
    text: () => 'This surface stains or fades easily: what you put beside the tape will show.',
  },
  {
    id: 'primer-label',
    severity: 'note',
    when: (context) => uses(context, 'flash-off'),
    text: () => 'How long the primer flashes off is on its label; no general figure is known, so none is printed here.',
  },
  {
    id: 'plasticiser',
    severity: 'warn',
    when: ({ surface, usesTape }) => usesTape && ['medium', 'high'].includes(surface.plasticiserRisk),
    text: () =>
      'Softener comes out of this material and turns adhesive to gum over weeks: a good bond on day one proves nothing.',
  },
  {
    id: 'cold',
    severity: 'stop',
    when: ({ surfaceC, applyFromC, usesTape }) => usesTape && surfaceC < applyFromC,
    text: ({ surfaceC, applyFromC }) =>
      `The surface is at ${Math.round(surfaceC)} °C and tape here goes on at ${applyFromC} °C or more: do not apply before it is warmed.`,
  },
  {
    id: 'cool-side',
    severity: 'warn',
    when: ({ surfaceC, applyFromC, usesTape }) => usesTape && surfaceC >= applyFromC && surfaceC < 18,
    text: ({ surfaceC }) =>
      `At ${Math.round(surfaceC)} °C the bond builds slowly: 21 to 38 °C is best. It sticks today and falls in the cold.`,
  },
  {
    id: 'dew',
    severity: 'warn',
    when: ({ surfaceC, place, usesTape }) => usesTape && (surfaceC < 15 || place.outside),
    text: () =>
      'The surface must be above the dew point: wipe it with dry paper, and if that comes away damp, warm it more.',
  },
  {
    id: 'hot',
    severity: 'stop',
    when: ({ surfaceC, usesTape }) => usesTape && surfaceC > 44,
    text: ({ surfaceC }) =>
      `The surface is at ${Math.round(surfaceC)} °C: let it cool below 44 °C before tape goes on.`,
  },
  {
    id: 'hot-place',
    severity: 'warn',
    when: ({ place, usesTape }) => usesTape && place.id === 'cabin',
    text: () =>
      `A dash top in the sun was logged at ${MEASURED_TEMPERATURES.dashTop.dashC} °C: on or near it check the tape's heat limit.`,
  },
  {
    id: 'engine-bay-heat',
    severity: 'warn',
    when: ({ place }) => place.id === 'engine bay',
    text: () => 'Engine bay: design for 125 °C, oil and cleaning. Keep clear of belts, exhaust and moving parts.',
  },
  {
    id: 'falling-part',
    severity: 'warn',
    when: ({ place, position }) => place.outside || position === 'overhead',
    text: () => 'A falling part can hurt someone: tape alone is never the only fixing above head height or outside.',
  },
  {
    id: 'no-peel',
    severity: 'note',
    when: ({ usesTape }) => usesTape,
    text: () => 'Load the tape in shear or compression only, never so that it peels from an edge.',
  },
  {
    id: 'class-straddles',
    severity: 'note',
    when: ({ surface, usesTape }) => usesTape && straddles(surface),
    text: ({ surface }) =>
      `Published figures for this material run from ${surface.energy?.minMnPerM} to ${surface.energy?.maxMnPerM} mN/m, across the border of ${ENERGY_CLASS_LIMITS.lowBelowMnPerM}: a dyne reading of this part decides, not the table.`,
  },
  {
    id: 'wetting-is-not-ready',
    severity: 'note',
    when: ({ surface, usesTape }) =>
      usesTape && surface.energyClass === 'low' && !surface.procedure.includes('water-break'),
    text: () =>
      'Alcohol wets nearly every plastic, prepared or not, and water beads here even when it is clean: neither says it is ready.',
  },
  {
    id: 'test-fluid-harm',
    severity: 'warn',
    when: ({ surface, usesTape }) => usesTape && straddles(surface),
    text: () =>
      'If you check with dyne fluid: ± 3 mN/m, 2 seconds, never twice on one spot; the fluid harms fertility: gloves, fresh air, not for pregnant workers.',
  },
  {
    id: 'growth',
    severity: 'note',
    when: ({ growthMm, usesTape }) => usesTape && growthMm !== undefined && growthMm >= 0.5,
    text: ({ growthMm }) =>
      `An aluminium profile this long and this surface grow ${growthMm?.toFixed(1)} mm apart over 60 K: use foam, not thin tape, and leave the ends free.`,
  },
];

/** Every caution whose condition holds, the general ones first, then the surface's own. */
export function prepCautions(context: CautionContext): PrepCaution[] {
  const general = PREP_CAUTIONS.filter((rule) => rule.when(context)).map((rule) => ({
    id: rule.id,
    text: rule.text(context),
    severity: rule.severity,
  }));
  return [...general, ...context.surface.cautions];
}
