import {
  PAINT_PROMOTER_FLASH_OFF,
  PRIMER_HYGIENE,
  PRIMER_PRACTICE,
  PRIMERS,
  prepPlan,
  SOILS,
  type Soil,
} from '../../../calc/index.ts';
import { type Row, type Shape, type Value, word } from '../row.ts';
import { fact } from './fact.ts';
import { surfaceCalled } from './surfaces.ts';

const isSoil = (value: string): value is Soil => (SOILS as readonly string[]).includes(value);

/** The plan a row asks for; what its `about` adds to the surface and the soil is in plain words there. */
function planFor(inputs: Record<string, Value>, row: Row) {
  const surface = surfaceCalled(word(inputs, 'surface'));
  const soil = word(inputs, 'soil');
  if (surface === undefined || !isSoil(soil)) return undefined;
  const outside = /outdoor|outside|long life/.test(row.about);
  return {
    surface,
    steps: prepPlan({
      surface: surface.facts,
      soil,
      place: outside ? 'outside' : 'cabin',
      weakTrial: /weak bond/.test(row.about),
    }).steps.map(({ id }) => id as string),
  };
}

/** Of a list of step ids, those that are so: asked for `must`, for `mustNot`, or for pairs in order. */
const held = (steps: readonly string[], wanted: Value | undefined): Value[] =>
  ((wanted ?? []) as readonly string[]).filter((id) => steps.includes(id));
const absent = (steps: readonly string[], barred: Value | undefined): Value[] =>
  ((barred ?? []) as readonly string[]).filter((id) => !steps.includes(id));
const inOrder = (steps: readonly string[], pairs: Value | undefined): Value[] =>
  ((pairs ?? []) as readonly (readonly [string, string])[]).filter(
    ([first, then]) => steps.includes(first) && steps.includes(then) && steps.indexOf(first) < steps.indexOf(then),
  );

/** Preparation by surface, and the primers. */
export const prep: readonly Shape[] = [
  {
    needs: ['surface', 'soil'],
    gives: ['must', 'mustNot', 'before', 'energyClass'],
    answer: (inputs, row) => {
      const plan = planFor(inputs, row);
      if (plan === undefined) return undefined;
      const { must, mustNot, before } = row.expect;
      // A row lists sets, not an answer: what comes back is how much of each set the plan keeps.
      return {
        must: held(plan.steps, must),
        mustNot: absent(plan.steps, mustNot),
        before: inOrder(plan.steps, before),
        energyClass: plan.surface.facts.energyClass,
      };
    },
  },
  fact(/primer classes/, {
    ...Object.fromEntries(Object.values(PRIMERS).map(({ step, suits }) => [step, suits])),
    mayDiscolour: Object.values(PRIMERS)
      .filter(({ discolours }) => discolours)
      .map(({ step }) => step)
      .reverse(),
    thinCoat: PRIMER_PRACTICE.thinCoat,
    flashOff: PRIMER_PRACTICE.flashOff,
  }),
  {
    needs: ['surface', 'visible'],
    gives: ['prime-universal'],
    answer: (inputs) =>
      inputs['visible'] === true ? { 'prime-universal': PRIMER_PRACTICE.onVisibleFaces } : undefined,
  },
  {
    needs: ['use'],
    gives: ['min_minutes', 'max_minutes'],
    answer: (inputs) =>
      /paint/.test(word(inputs, 'use'))
        ? { min_minutes: PAINT_PROMOTER_FLASH_OFF.minMinutes, max_minutes: PAINT_PROMOTER_FLASH_OFF.maxMinutes }
        : undefined,
  },
  fact(/put primer on/, {
    oneDirection: PRIMER_HYGIENE.oneDirection,
    dipOnce: PRIMER_HYGIENE.dipOnce,
    disposableApplicator: PRIMER_HYGIENE.disposableApplicator,
  }),
  {
    // A surface's own row: its published figures against the surface's file.
    needs: ['surfaceName'],
    may: ['aliases'],
    gives: [
      'energyMin_mN_m',
      'energyMax_mN_m',
      'basis',
      'energyClass',
      'porous',
      'plasticiserRisk',
      'discolourRisk',
      'solventStressRisk',
      'waterAngle_deg',
    ],
    answer: (inputs) => {
      const found = surfaceCalled(word(inputs, 'surfaceName'));
      if (found === undefined) return undefined;
      const { energy, waterAngleDeg, ...data } = found.data;
      return {
        energyMin_mN_m: energy?.minMnPerM ?? null,
        energyMax_mN_m: energy?.maxMnPerM ?? null,
        basis: energy?.basis ?? null,
        waterAngle_deg: waterAngleDeg,
        energyClass: data.energyClass,
        porous: data.porous,
        plasticiserRisk: data.plasticiserRisk,
        discolourRisk: data.discolourRisk,
        solventStressRisk: data.solventStressRisk,
      };
    },
  },
];
