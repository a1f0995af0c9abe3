/**
 * Mounting tape under load: how much area a mass needs, what stress that is, and how hard to press.
 *
 * Creep over years governs, so the area looks generous: a short test holds the same mass on a tenth of it. Shear and
 * compression only; no allowable peel was found that is not one maker's figure.
 */
import { positive, within } from './guard.ts';
import type { Cited } from './tables/cited.ts';
import { convert } from './units.ts';

/** Long-term tape area for a hanging mass. */
export const TAPE_AREA_CM2_PER_KG = {
  value: 60,
  unit: 'cm²/kg',
  source: 'foam tape supplier web page on how much tape to use',
  at: 'text',
  read: 'seen',
} as const;

/** The older rule in its own units, for reading other people's guides: 4 in² a pound is 56.89 cm²/kg. */
export const TAPE_AREA_IN2_PER_LB = {
  value: 4,
  unit: 'in²/lb',
  source: 'common practice, no source',
  at: '-',
  read: 'common practice',
} as const;

/** Standard gravity [m/s²]. */
export const GRAVITY_M_PER_S2 = 9.80665;

/**
 * Converts an area rule in square inches a pound to square centimetres a kilogram.
 * @param o.areaIn2PerLb [in²/lb], above 0 to 100
 * @returns the same rule [cm²/kg]
 * @throws RangeError outside that range
 * @formula × 2.54² / 0.45359237
 * @source exact definitions of the inch and the pound
 * @example areaCm2PerKg({ areaIn2PerLb: 4 }) // 56.89
 */
export function areaCm2PerKg(o: { areaIn2PerLb: number }): number {
  const area = within('areaCm2PerKg', 'areaIn2PerLb', o.areaIn2PerLb, 0, 100, 'in²/lb');
  positive('areaCm2PerKg', 'areaIn2PerLb', area, 'in²/lb');
  return convert({ value: area, from: 'in2', to: 'cm2' }) / convert({ value: 1, from: 'lb', to: 'kg' });
}

/**
 * Tape area and length that a mass needs under steady load.
 * @param o.massKg [kg], above 0 to 50
 * @param o.widthMm [mm] of the tape, 3 to 100
 * @param o.cm2PerKg [cm²/kg], 10 to 1000; 60, the long-term rule, by default
 * @returns `areaCm2` [cm²] and `lengthMm` [mm]
 * @throws RangeError outside those ranges
 * @formula area = mass × rule; length = area / width
 * @source foam tape supplier web page on how much tape to use (60 cm²/kg)
 * @example tapeForMass({ massKg: 0.3, widthMm: 12 }).lengthMm // 150
 */
export function tapeForMass(o: { massKg: number; widthMm: number; cm2PerKg?: number }): {
  areaCm2: number;
  lengthMm: number;
} {
  const mass = positive('tapeForMass', 'massKg', within('tapeForMass', 'massKg', o.massKg, 0, 50, 'kg'), 'kg');
  const width = within('tapeForMass', 'widthMm', o.widthMm, 3, 100, 'mm');
  const rule = within('tapeForMass', 'cm2PerKg', o.cm2PerKg ?? TAPE_AREA_CM2_PER_KG.value, 10, 1000, 'cm²/kg');
  const areaCm2 = mass * rule;
  return { areaCm2, lengthMm: (areaCm2 * 100) / width };
}

/**
 * Mean shear stress in the tape from a hanging mass. To compare designs, never as an allowable.
 * @param o.massKg [kg], 0 to 50
 * @param o.areaCm2 [cm²], above 0 to 100000
 * @param o.accelerationMPerS2 [m/s²], 0 to 2000; standard gravity by default
 * @returns stress [kPa]
 * @throws RangeError outside those ranges
 * @formula τ = m·a/A
 * @source mechanics
 * @example tapeShearKpa({ massKg: 1, areaCm2: 60 }) // 1.634
 */
export function tapeShearKpa(o: { massKg: number; areaCm2: number; accelerationMPerS2?: number }): number {
  const mass = within('tapeShearKpa', 'massKg', o.massKg, 0, 50, 'kg');
  const area = positive('tapeShearKpa', 'areaCm2', within('tapeShearKpa', 'areaCm2', o.areaCm2, 0, 1e5, 'cm²'), 'cm²');
  const a = within('tapeShearKpa', 'accelerationMPerS2', o.accelerationMPerS2 ?? GRAVITY_M_PER_S2, 0, 2000, 'm/s²');
  // N/cm² is ten kPa
  return (mass * a * 10) / area;
}

/** Pressure that makes the adhesive flow into the surface; 15 psi is 103.4 kPa and sources round it to 100. */
export const PRESS_PRESSURE = {
  minKpa: 100,
  minPsi: 15,
  source:
    'foam tape supplier web page (application advice); tape converter web page (surface preparation, pressure, dwell)',
  at: 'pressure answer',
  read: 'seen',
} as const;

/**
 * Force that presses a tape patch at a given pressure, all at once. A hand cannot do that on a long strip: roll along it.
 * @param o.widthMm [mm], 1 to 500
 * @param o.lengthMm [mm] of the patch under the roller or thumb, 1 to 20000
 * @param o.pressureKpa [kPa], 1 to 1000; 100 by default
 * @returns `forceN` [N] and `forceKgf` [kgf]
 * @throws RangeError outside those ranges
 * @formula F = p·A
 * @source mechanics; the pressure from tape supplier pages
 * @example pressForce({ widthMm: 25, lengthMm: 100 }).forceN // 250
 */
export function pressForce(o: { widthMm: number; lengthMm: number; pressureKpa?: number }): {
  forceN: number;
  forceKgf: number;
} {
  const width = within('pressForce', 'widthMm', o.widthMm, 1, 500, 'mm');
  const length = within('pressForce', 'lengthMm', o.lengthMm, 1, 20000, 'mm');
  const pressure = within('pressForce', 'pressureKpa', o.pressureKpa ?? PRESS_PRESSURE.minKpa, 1, 1000, 'kPa');
  const forceN = (pressure * width * length) / 1000;
  return { forceN, forceKgf: forceN / GRAVITY_M_PER_S2 };
}

/**
 * Tape thickness that takes up rigid parts that do not match.
 * @param o.mismatchMm [mm] largest gap between the parts, 0 to 5
 * @returns least tape thickness [mm]
 * @throws RangeError outside that range
 * @formula twice the mismatch
 * @source foam tape supplier web page (application advice), thickness answer
 * @example tapeThicknessMm({ mismatchMm: 0.5 }) // 1
 */
export function tapeThicknessMm(o: { mismatchMm: number }): number {
  return 2 * within('tapeThicknessMm', 'mismatchMm', o.mismatchMm, 0, 5, 'mm');
}

/** How tape may be loaded, and what was not found. */
export const PEEL_ADVICE: Cited & { allowableN: null; advice: string } = {
  allowableN: null,
  advice: 'shear or compression only; add a mechanical stop for anything overhead or heavy',
  source: 'common practice, no source',
  at: '-',
  read: 'common practice',
};

/** What hangs how: the factor on the area rule. */
export const TAPE_POSITIONS = { vertical: 1, overhead: 1.5 } as const;
export type TapePosition = keyof typeof TAPE_POSITIONS;

/** What it is stuck to: the factor on the area rule. A surface that is not here gets fixings. */
export const TAPE_SURFACES = {
  'painted steel': 1,
  'bare aluminium': 1,
  'GRP gelcoat': 1.2,
  'powder coat': 1.5,
  'polypropylene with primer': 1.5,
} as const;
export type TapeSurface = keyof typeof TAPE_SURFACES;

/** Above this a part always gets a mechanical back-up [g]. */
export const BACK_UP_ABOVE_G = 500;

/**
 * Will this tape hold this part? Area had against area needed, and whether a back-up fixing is asked for.
 * @param o.massG [g] of part and wire, 1 to 5000: over 5 kg no tape, use fixings
 * @param o.tapeMm [mm] width, 3 to 100
 * @param o.runMm [mm] length, 10 to 20000
 * @param o.position 'vertical' or 'overhead'
 * @param o.surface one of TAPE_SURFACES
 * @returns `haveCm2` and `neededCm2` [cm²]; `marginRatio` had over needed; `verdict` 'pass' or 'stop'; `backUpFixing`
 * @throws RangeError outside those ranges or for an unknown position or surface
 * @formula have = width × length/100; needed = kg × 60 × position × surface; back-up if overhead or over 500 g
 * @source 60 cm²/kg from a foam tape supplier page; factors: common practice, no source
 * @example tapeHold({ massG: 420, tapeMm: 9, runMm: 2100, position: 'overhead', surface: 'painted steel' }).marginRatio // 5
 */
export function tapeHold(o: {
  massG: number;
  tapeMm: number;
  runMm: number;
  position: TapePosition;
  surface: TapeSurface;
}): {
  haveCm2: number;
  neededCm2: number;
  marginRatio: number;
  verdict: 'pass' | 'stop';
  backUpFixing: boolean;
} {
  const mass = within('tapeHold', 'massG', o.massG, 1, 5000, 'g (over 5 kg use fixings)');
  const width = within('tapeHold', 'tapeMm', o.tapeMm, 3, 100, 'mm');
  const run = within('tapeHold', 'runMm', o.runMm, 10, 20000, 'mm');
  const position = TAPE_POSITIONS[o.position];
  if (position === undefined) {
    throw new RangeError(`tapeHold: unexpected position "${o.position}", expected vertical or overhead`);
  }
  const surface = TAPE_SURFACES[o.surface];
  if (surface === undefined) {
    const known = Object.keys(TAPE_SURFACES).join(', ');
    throw new RangeError(
      `tapeHold: unexpected surface "${o.surface}", expected one of ${known}; not listed means fixings`,
    );
  }
  const haveCm2 = (width * run) / 100;
  const neededCm2 = (mass / 1000) * TAPE_AREA_CM2_PER_KG.value * position * surface;
  return {
    haveCm2,
    neededCm2,
    marginRatio: haveCm2 / neededCm2,
    verdict: haveCm2 >= neededCm2 ? 'pass' : 'stop',
    backUpFixing: o.position === 'overhead' || mass > BACK_UP_ABOVE_G,
  };
}
