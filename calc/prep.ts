/**
 * The plan for sticking something to a surface: steps in order, cautions, what may carry it, when it may be loaded.
 *
 * Facts of the surface are data (see prep-surface.ts), facts of tapes and places are tables; nothing here knows a surface
 * by name. There is always an answer: where tape is no good, the answer is how to do without it.
 */
import { APPLICATION_GATE, WARM_TO_C } from './application-temperature.ts';
import { DWELL_REFERENCE_C, dwellTimeMin } from './dwell.ts';
import { oneOf, within } from './guard.ts';
import { type PrepCaution, prepCautions } from './prep-cautions.ts';
import { type PrepStep, prepStep, type StepContext } from './prep-steps.ts';
import { PREP_STEPS, PRIMERS, type PrepStepId, STEP_SOLVENT, type SurfaceFacts } from './prep-surface.ts';
import type { Cited } from './tables/cited.ts';
import { PLACES, type Place, SOILS, type Soil, TAPES, type TapeClass } from './tables/tapes.ts';
import { BACK_UP_ABOVE_G, TAPE_AREA_CM2_PER_KG, TAPE_POSITIONS } from './tape.ts';
import { EXPANSION, thermalMismatch } from './thermal.ts';

/** What carries the part: from tape alone to no tape at all. */
export type Fixing = 'tape may carry' | 'tape plus fixing' | 'fixing only' | 'fix mechanically';

/** Tape area against what hangs on it. */
export interface Need {
  neededCm2?: number;
  haveCm2?: number;
  neededLengthMm?: number;
}

export interface PrepPlan {
  steps: PrepStep[];
  cautions: PrepCaution[];
  fixing: Fixing;
  /** Why, one reason a line; the first decided. */
  fixingReasons: string[];
  need: Need;
  /** When it may be loaded [h] after pressing; null where no tape is used. */
  loadAfterH: number | null;
  fullStrengthH: number | null;
  verdict: 'pass' | 'warn' | 'stop';
  sources: Cited[];
}

export interface PrepOptions {
  surface: SurfaceFacts;
  /** Tape class, an id of TAPES; acrylic foam by default. */
  tape?: string;
  /** Where it sits, an id of PLACES; cabin by default. */
  place?: string;
  /** [°C] of the surface now, -40 to 90; 21 by default. */
  surfaceC?: number;
  /** What is on it now, one of SOILS; light by default. */
  soil?: Soil;
  /** [kg] of what hangs on it, 0 to 100. */
  massKg?: number;
  /** [m] of tape, 0 to 50. */
  lengthM?: number;
  /** [mm] of tape width, 1 to 500. */
  widthMm?: number;
  /** [cm²] of tape, 0 to 100000, where length and width are not given. */
  areaCm2?: number;
  /** 'vertical' by default; 'level' lies on top. */
  position?: 'vertical' | 'overhead' | 'level';
  /** A trial came out weak, so the promoter is wanted even where it is not the rule. */
  weakTrial?: boolean;
  /** People sit or walk where it could fall. */
  nearPeople?: boolean;
}

/** Above this mass no tape [kg]. */
const TAPE_UP_TO_KG = 5;
/** No load at all before this [h] (common practice, no source). */
const FIRST_LOAD_H = 1;
/** Factor on the area where a surface gives none: the most careful one. */
const CAREFUL_FACTOR = 1.5;
/** A part gets warm and cold over about this range [K] in service. */
const SERVICE_SWING_K = 60;

/**
 * Plans how to stick something to a surface, or why not to.
 * @param o.surface facts of the surface; see SurfaceFacts
 * @param o.tape id of TAPES   @param o.place id of PLACES   @param o.soil one of SOILS
 * @param o.surfaceC [°C] now, -40 to 90   @param o.massKg [kg], 0 to 100   @param o.lengthM [m], 0 to 50
 * @param o.widthMm [mm], 1 to 500   @param o.areaCm2 [cm²], 0 to 100000   @param o.position 'vertical', 'overhead' or 'level'
 * @returns `steps` in order; `cautions`; `fixing` with reasons; `need` [cm²], [mm]; `loadAfterH` and `fullStrengthH` [h]; `verdict`; `sources`
 * @throws RangeError for values outside those ranges or unknown words
 * @formula area = kg × 60 cm²/kg × position × surface; load at 90 % (24 h) or full bond (72 h), on log time
 * @source each row of data names its own; order of steps and the 30 minutes: common practice, no source
 * @example prepPlan({ surface: glass, tape: 'acrylic-foam', place: 'cabin' }).fixing // 'tape may carry'
 */
export function prepPlan(o: PrepOptions): PrepPlan {
  const where = 'prepPlan';
  const { surface } = o;
  const tape = named(where, 'tape', TAPES, o.tape ?? 'acrylic-foam');
  const place = named(where, 'place', PLACES, o.place ?? 'cabin');
  const surfaceC = within(where, 'surfaceC', o.surfaceC ?? DWELL_REFERENCE_C, -40, 90, '°C');
  const soil = oneOf(where, 'soil', o.soil ?? 'light', SOILS);
  const position = oneOf(where, 'position', o.position ?? 'vertical', ['vertical', 'overhead', 'level']);
  const massKg = optional(where, 'massKg', o.massKg, 0, 100, 'kg');
  const widthMm = optional(where, 'widthMm', o.widthMm, 1, 500, 'mm');
  const lengthM = optional(where, 'lengthM', o.lengthM, 0, 50, 'm');
  const given = optional(where, 'areaCm2', o.areaCm2, 0, 1e5, 'cm²');
  const areaCm2 = given ?? (widthMm === undefined || lengthM === undefined ? undefined : widthMm * lengthM * 10);

  const need = areaNeed({ surface, massKg, areaCm2, widthMm, position });
  const decided = fixingFor({ surface, tape, place, massKg, need, position, nearPeople: o.nearPeople ?? false });
  const usesTape = decided.fixing === 'tape may carry' || decided.fixing === 'tape plus fixing';
  const applyFromC = Math.max(tape.applyFromC, place.applyFromC);
  const times = usesTape ? loadTimes({ fixing: decided.fixing, surfaceC }) : null;

  const ids = stepIds({
    surface,
    tape,
    place,
    soil,
    surfaceC,
    applyFromC,
    fixing: decided.fixing,
    weakTrial: o.weakTrial ?? false,
  });
  const context: StepContext = {
    surface,
    tape,
    place,
    surfaceC,
    warmToC: Math.min(Math.max(WARM_TO_C, applyFromC), surface.warmMaxC),
    need,
    widthMm,
    areaCm2,
    loadAfterH: times?.loadAfterH ?? 0,
    fullStrengthH: times?.fullStrengthH ?? 0,
  };
  const cautions = prepCautions({
    surface,
    tape,
    place,
    surfaceC,
    applyFromC,
    steps: ids,
    usesTape,
    position,
    growthMm: growth(surface, lengthM),
  });
  return {
    steps: ids.map((id) => prepStep(id, context)),
    cautions,
    fixing: decided.fixing,
    fixingReasons: decided.reasons,
    need,
    loadAfterH: times?.loadAfterH ?? null,
    fullStrengthH: times?.fullStrengthH ?? null,
    verdict: verdict({ decided: decided.fixing, usesTape, surfaceC, applyFromC }),
    sources: [...surface.sources, cite(tape), cite(place)],
  };
}

function named<T extends { id: string }>(where: string, name: string, rows: readonly T[], id: string): T {
  const found = rows.find((row) => row.id === id);
  if (found === undefined) {
    const known = rows.map((row) => row.id).join(', ');
    throw new RangeError(`${where}: unexpected ${name} "${id}", expected one of ${known}`);
  }
  return found;
}

const optional = (
  where: string,
  name: string,
  value: number | undefined,
  min: number,
  max: number,
  unit: string,
): number | undefined => (value === undefined ? undefined : within(where, name, value, min, max, unit));

const cite = ({ source, at, read }: Cited): Cited => ({ source, at, read });

function areaNeed(o: {
  surface: SurfaceFacts;
  massKg: number | undefined;
  areaCm2: number | undefined;
  widthMm: number | undefined;
  position: 'vertical' | 'overhead' | 'level';
}): Need {
  const need: Need = {};
  if (o.areaCm2 !== undefined) need.haveCm2 = o.areaCm2;
  if (o.massKg === undefined) return need;
  const position = o.position === 'overhead' ? TAPE_POSITIONS.overhead : TAPE_POSITIONS.vertical;
  need.neededCm2 = o.massKg * TAPE_AREA_CM2_PER_KG.value * position * (o.surface.areaFactor ?? CAREFUL_FACTOR);
  if (o.widthMm !== undefined) need.neededLengthMm = (need.neededCm2 * 100) / o.widthMm;
  return need;
}

/** What may carry it. Reasons that rule tape out come first; what only asks for a back-up comes after. */
function fixingFor(o: {
  surface: SurfaceFacts;
  tape: TapeClass;
  place: Place;
  massKg: number | undefined;
  need: Need;
  position: 'vertical' | 'overhead' | 'level';
  nearPeople: boolean;
}): { fixing: Fixing; reasons: string[] } {
  const { surface, tape, place, massKg, need } = o;
  const silicone = surface.bond === 'no tape' && tape.silicone && surface.siliconeTape === true;
  if (surface.bond === 'no tape' && !silicone) return { fixing: 'fix mechanically', reasons: [surface.bondWhy] };

  const against: string[] = [];
  if (place.highestC > tape.holdsToC) {
    against.push(
      `${place.name}: design for ${place.highestC} °C, and ${tape.name} holds to about ${tape.holdsToC} °C.`,
    );
  }
  if (massKg !== undefined && massKg > TAPE_UP_TO_KG) {
    against.push(`${massKg} kg: over ${TAPE_UP_TO_KG} kg no tape, use fixings.`);
  }
  if (need.neededCm2 !== undefined && need.haveCm2 !== undefined && need.haveCm2 < need.neededCm2) {
    const have = need.haveCm2.toFixed(1);
    against.push(`Tape area ${have} cm², needed ${need.neededCm2.toFixed(1)} cm²: more tape, or fixings.`);
  }
  if (['medium', 'high'].includes(surface.plasticiserRisk) && tape.plasticiser === 'poor') {
    against.push(`${tape.name} softens with what comes out of this material.`);
  }
  if (against.length > 0) return { fixing: 'fixing only', reasons: against };

  const backUp: string[] = [];
  if (surface.bond === 'tape plus fixing' || silicone) backUp.push(surface.bondWhy);
  if (o.position === 'overhead') backUp.push('Overhead: a falling part hurts someone.');
  if (place.outside) backUp.push('Outside: weather, washing and speed work on the edge of the tape.');
  if (o.nearPeople) backUp.push('People are where it could fall.');
  if (massKg !== undefined && massKg * 1000 > BACK_UP_ABOVE_G) {
    backUp.push(`${massKg} kg: over ${BACK_UP_ABOVE_G / 1000} kg a back-up fixing.`);
  }
  if (backUp.length > 0) return { fixing: 'tape plus fixing', reasons: backUp };
  return { fixing: 'tape may carry', reasons: ['Light, inside, not overhead, on a surface that takes tape.'] };
}

/** 90 % of the bond is enough for a light part inside and warm; anything else waits for all of it. */
function loadTimes(o: { fixing: Fixing; surfaceC: number }): { loadAfterH: number; fullStrengthH: number } {
  const fullStrengthH = dwellTimeMin({ fraction: 1 }) / 60;
  const warm = o.surfaceC >= APPLICATION_GATE.warnBelowC;
  const early = o.fixing === 'tape may carry' && warm;
  const loadAfterH = Math.max(FIRST_LOAD_H, early ? dwellTimeMin({ fraction: 0.9 }) / 60 : fullStrengthH);
  return { loadAfterH, fullStrengthH };
}

function stepIds(o: {
  surface: SurfaceFacts;
  tape: TapeClass;
  place: Place;
  soil: Soil;
  surfaceC: number;
  applyFromC: number;
  fixing: Fixing;
  weakTrial: boolean;
}): PrepStepId[] {
  const { surface, tape, place, soil, surfaceC } = o;
  if (o.fixing === 'fix mechanically' || o.fixing === 'fixing only') return ['inspect', 'mechanical-fix'];
  const wanted = new Set<PrepStepId>(['inspect', ...surface.procedure, 'dry', 'apply', 'press', 'dwell']);
  const abrades = surface.abrade.use === 'always' || (surface.abrade.use === 'oxide' && soil === 'oxide');

  if (surfaceC < Math.max(WARM_TO_C, o.applyFromC)) wanted.add('warm');
  if (surfaceC > APPLICATION_GATE.refuseAboveC) wanted.add('cool');
  if (soil === 'oil' || soil === 'wax') wanted.add('degrease');
  if (soil === 'wax') wanted.add('soap-water');
  if (abrades) wanted.add('abrade');
  // Alcohol on a porous surface only soaks in: dust is vacuumed off there.
  if (abrades && !surface.porous) wanted.add('ipa-wipe-2');

  if (surface.primer !== null && primerWanted(surface.primer, tape, place, soil, o.weakTrial)) {
    wanted.add(PRIMERS[surface.primer.kind].step).add('flash-off');
    if (PRIMERS[surface.primer.kind].discolours) wanted.add('spot-test');
  }
  if (o.fixing === 'tape plus fixing') wanted.add('mechanical-fix');
  return inOrder(withoutHarm(wanted, surface));
}

/** A tape that grips low-energy plastic by itself needs no promoter for it. */
function primerWanted(
  primer: NonNullable<SurfaceFacts['primer']>,
  tape: TapeClass,
  place: Place,
  soil: Soil,
  weakTrial: boolean,
): boolean {
  if (primer.kind === 'cpo' && tape.lowEnergy) return weakTrial;
  if (tape.silicone) return false;
  if (primer.use === 'always') return true;
  if (primer.use === 'outside') return place.outside || weakTrial || soil === 'oxide';
  return weakTrial;
}

/** A solvent that harms the surface never gets on it: its step goes, and soap and water take the place of a cleaner. */
function withoutHarm(wanted: Set<PrepStepId>, surface: SurfaceFacts): Set<PrepStepId> {
  const banned = new Set(surface.harmful.map(({ solvent }) => solvent));
  for (const id of [...wanted]) {
    const solvent = STEP_SOLVENT[id];
    if (solvent === undefined || !banned.has(solvent)) continue;
    wanted.delete(id);
    if ((solvent === 'alcohol' || solvent === 'degreaser') && !surface.porous) wanted.add('soap-water');
  }
  const primed = Object.values(PRIMERS).some(({ step }) => wanted.has(step));
  if (!primed) wanted.delete('flash-off');
  return wanted;
}

const inOrder = (wanted: ReadonlySet<PrepStepId>): PrepStepId[] => PREP_STEPS.filter((id) => wanted.has(id));

function verdict(o: { decided: Fixing; usesTape: boolean; surfaceC: number; applyFromC: number }): PrepPlan['verdict'] {
  if (!o.usesTape) return 'stop';
  if (o.surfaceC < o.applyFromC || o.surfaceC > APPLICATION_GATE.refuseAboveC) return 'stop';
  return o.surfaceC < APPLICATION_GATE.warnBelowC ? 'warn' : 'pass';
}

/** How far an aluminium profile and the surface grow apart over the swing of a year [mm]. */
function growth(surface: SurfaceFacts, lengthM: number | undefined): number | undefined {
  const row = EXPANSION.find(({ material }) => material === surface.expansion);
  const aluminium = EXPANSION.find(({ material }) => material === 'aluminium');
  if (row === undefined || aluminium === undefined || lengthM === undefined || lengthM === 0) return undefined;
  return thermalMismatch({
    lengthMm: Math.min(lengthM, 20) * 1000,
    deltaK: SERVICE_SWING_K,
    alpha1PerK: aluminium.perK,
    alpha2PerK: row.perK,
  }).growthMm;
}
