/**
 * Light where it is wanted: points, strips, tubes, the lumen method, bounce from walls.
 *
 * A flat Lambertian strip sends π times its peak intensity, a round diffusing tube π² times its. Near a strip the point
 * formula is far too bright; from five lengths away it holds.
 */
import { positive, within } from './guard.ts';
import { REFLECTANCES, type ReflectanceRow } from './tables/reflectance.ts';

const DEG = Math.PI / 180;

/**
 * Illuminance from a point source.
 * @param o.intensityCd [cd], 0 to 1000000; candela, not lumen: 300 lm in all directions are 24 cd
 * @param o.distanceM [m], 0.01 to 1000
 * @param o.angleDeg [°] between the ray and the normal of the surface, 0 to 90; 0 by default
 * @returns illuminance [lx]
 * @throws RangeError outside those ranges
 * @formula E = I·cos θ/d²
 * @source inverse square and cosine law (study-help article; exam community note)
 * @example pointLx({ intensityCd: 1000, distanceM: 2, angleDeg: 60 }) // 125
 */
export function pointLx(o: { intensityCd: number; distanceM: number; angleDeg?: number }): number {
  const intensity = within('pointLx', 'intensityCd', o.intensityCd, 0, 1e6, 'cd');
  const distance = within('pointLx', 'distanceM', o.distanceM, 0.01, 1000, 'm');
  const angle = within('pointLx', 'angleDeg', o.angleDeg ?? 0, 0, 90, '°');
  return (intensity * Math.cos(angle * DEG)) / distance ** 2;
}

/**
 * Illuminance on a surface parallel to a flat Lambertian strip, under it.
 * @param o.fluxLmPerM [lm/m], 0 to 100000; diffuser losses taken off already
 * @param o.lengthM [m], 0.001 to 10000
 * @param o.distanceM [m] square to the strip, 0.01 to 1000
 * @param o.offsetAlongM [m] along the strip from its middle, -10000 to 10000; 0 by default
 * @returns illuminance [lx]
 * @throws RangeError outside those ranges
 * @formula E = (F/π)·d²·[x/(2d²(x² + d²)) + atan(x/d)/(2d³)] between the two ends; a very long strip gives F/(2d)
 * @source Lambert cosine law, integrated along the strip
 * @example stripLx({ fluxLmPerM: 600, lengthM: 1, distanceM: 0.5 }) // 491
 */
export function stripLx(o: { fluxLmPerM: number; lengthM: number; distanceM: number; offsetAlongM?: number }): number {
  const flux = within('stripLx', 'fluxLmPerM', o.fluxLmPerM, 0, 1e5, 'lm/m');
  const length = within('stripLx', 'lengthM', o.lengthM, 0.001, 1e4, 'm');
  const d = within('stripLx', 'distanceM', o.distanceM, 0.01, 1000, 'm');
  const offset = within('stripLx', 'offsetAlongM', o.offsetAlongM ?? 0, -1e4, 1e4, 'm');
  const upTo = (x: number) => x / (2 * d ** 2 * (x ** 2 + d ** 2)) + Math.atan(x / d) / (2 * d ** 3);
  return (flux / Math.PI) * d ** 2 * (upTo(length / 2 - offset) - upTo(-length / 2 - offset));
}

/** From this many lengths away a strip may be taken as a point. */
export const POINT_FROM_LENGTHS = 5;

/**
 * Least distance from which a lamp may be taken as a point.
 * @param o.lengthM [m] largest dimension of the lamp, 0 to 100
 * @returns distance [m]
 * @throws RangeError outside that range
 * @formula five times the largest dimension
 * @source exam community note on illuminance
 * @example pointFromM({ lengthM: 1 }) // 5
 */
export function pointFromM(o: { lengthM: number }): number {
  return POINT_FROM_LENGTHS * within('pointFromM', 'lengthM', o.lengthM, 0, 100, 'm');
}

/**
 * How far the point formula is off close to a strip.
 * @param o.fluxLmPerM [lm/m], above 0 to 100000
 * @param o.lengthM [m], 0.001 to 10000
 * @param o.distanceM [m], 0.01 to 1000
 * @returns `pointLx` and `stripLx` [lx]; `overPercent` [%] the point formula is too high
 * @throws RangeError outside those ranges
 * @formula point: I = F·L/π at the strip's middle; against stripLx
 * @source derived from the two formulas above
 * @example pointError({ fluxLmPerM: 600, lengthM: 1, distanceM: 0.5 }).overPercent // 55.6
 */
export function pointError(o: { fluxLmPerM: number; lengthM: number; distanceM: number }): {
  pointLx: number;
  stripLx: number;
  overPercent: number;
} {
  positive('pointError', 'fluxLmPerM', o.fluxLmPerM, 'lm/m');
  const strip = stripLx(o);
  const point = pointLx({ intensityCd: (o.fluxLmPerM * o.lengthM) / Math.PI, distanceM: o.distanceM });
  return { pointLx: point, stripLx: strip, overPercent: (point / strip - 1) * 100 };
}

/**
 * Flux of a line source from its peak intensity.
 * @param o.peakIntensityCd [cd] square to the axis, 0 to 1000000
 * @param o.shape 'round diffusing tube' or 'flat strip'
 * @returns flux [lm]
 * @throws RangeError outside that range or for another shape
 * @formula π²·I for a round diffusing tube (measured lamps 9.15 to 9.30), π·I for a flat Lambertian strip
 * @source IES Lighting Handbook, page 8-41; Lambert
 * @example lineFluxLm({ peakIntensityCd: 100, shape: 'round diffusing tube' }) // 986.96
 */
export function lineFluxLm(o: { peakIntensityCd: number; shape: 'round diffusing tube' | 'flat strip' }): number {
  const peak = within('lineFluxLm', 'peakIntensityCd', o.peakIntensityCd, 0, 1e6, 'cd');
  if (o.shape === 'round diffusing tube') return Math.PI ** 2 * peak;
  if (o.shape === 'flat strip') return Math.PI * peak;
  throw new RangeError(
    `lineFluxLm: unexpected shape "${String(o.shape)}", expected round diffusing tube or flat strip`,
  );
}

/**
 * Illuminance from a very long round diffusing tube. About a third of a flat strip's: half the light goes the other way.
 * @param o.fluxLmPerM [lm/m], 0 to 100000
 * @param o.distanceM [m], 0.01 to 1000
 * @returns illuminance [lx]
 * @throws RangeError outside those ranges
 * @formula E = (π/2)·(F/π²)/d = F/(2·π·d)
 * @source IES Lighting Handbook, page 8-41 (F = π²·I)
 * @example tubeLx({ fluxLmPerM: 600, distanceM: 0.5 }) // 190.99
 */
export function tubeLx(o: { fluxLmPerM: number; distanceM: number }): number {
  const flux = within('tubeLx', 'fluxLmPerM', o.fluxLmPerM, 0, 1e5, 'lm/m');
  return flux / (2 * Math.PI * within('tubeLx', 'distanceM', o.distanceM, 0.01, 1000, 'm'));
}

/**
 * Reflectance of a surface from the table.
 * @param o.surface as in the table, such as 'white' or 'dark carpet'
 * @param o.table rows; REFLECTANCES by default
 * @returns `found` with the row (a share, 0 to 1), or reasons
 * @throws nothing: a surface that is not listed is not found
 * @formula table look-up
 * @source lamp maker encyclopaedia table; lighting software help page; rows marked common practice
 * @example reflectanceOf({ surface: 'white' }).row?.reflectance // 0.8
 */
export function reflectanceOf(o: { surface: string; table?: readonly ReflectanceRow[] }): {
  found: boolean;
  row?: ReflectanceRow;
  reasons: string[];
} {
  const table = o.table ?? REFLECTANCES;
  const row = table.find(({ surface }) => surface === o.surface);
  if (row !== undefined) return { found: true, row, reasons: [] };
  return { found: false, reasons: [`no surface "${o.surface}"; listed: ${table.map((r) => r.surface).join('; ')}`] };
}

/**
 * Mean indirect light in a closed box. An order of magnitude, no more.
 * @param o.fluxLm [lm], 0 to 1000000
 * @param o.areaM2 [m²] of all inner faces, above 0 to 10000
 * @param o.reflectance mean share given back, 0 to 0.95; leave mirrors and chrome out
 * @returns illuminance [lx]
 * @throws RangeError outside those ranges
 * @formula E = F·ρ/(A·(1 - ρ))
 * @source integrating cavity
 * @example bounceLx({ fluxLm: 600, areaM2: 12, reflectance: 0.4 }) // 33.33
 */
export function bounceLx(o: { fluxLm: number; areaM2: number; reflectance: number }): number {
  const flux = within('bounceLx', 'fluxLm', o.fluxLm, 0, 1e6, 'lm');
  const area = positive('bounceLx', 'areaM2', within('bounceLx', 'areaM2', o.areaM2, 0, 1e4, 'm²'), 'm²');
  const rho = within('bounceLx', 'reflectance', o.reflectance, 0, 0.95);
  return (flux * rho) / (area * (1 - rho));
}

/**
 * Lamps for a floor by the lumen method.
 * @param o.lengthM [m], 0.2 to 30
 * @param o.widthM [m], 0.2 to 10
 * @param o.levelLx [lx] wanted, 10 to 1000: 50 to walk through, 150 load space, 300 picking, 500 bench
 * @param o.useFraction utilisation, 0.2 to 0.9: 0.5 for pale lining, 0.3 for bare dark steel
 * @param o.keepFraction maintenance, 0.5 to 1
 * @param o.lampLm [lm] of one lamp, 20 to 20000
 * @returns `areaM2` [m²]; `neededLm` and `givenLm` [lm], needed rounded up; `lamps`, a count; `levelLx` [lx] reached
 * @throws RangeError outside those ranges
 * @formula needed = L·W·lux/(use·keep); level = lamps·lm·use·keep/area
 * @source lumen method; levels and factors: common practice, no source
 * @example lightLevel({ lengthM: 3, widthM: 1.7, levelLx: 150, useFraction: 0.5, keepFraction: 0.8, lampLm: 540 }).lamps // 4
 */
export function lightLevel(o: {
  lengthM: number;
  widthM: number;
  levelLx: number;
  useFraction: number;
  keepFraction: number;
  lampLm: number;
}): { areaM2: number; neededLm: number; lamps: number; givenLm: number; levelLx: number } {
  const areaM2 =
    within('lightLevel', 'lengthM', o.lengthM, 0.2, 30, 'm') * within('lightLevel', 'widthM', o.widthM, 0.2, 10, 'm');
  const level = within('lightLevel', 'levelLx', o.levelLx, 10, 1000, 'lx');
  const use = within('lightLevel', 'useFraction', o.useFraction, 0.2, 0.9);
  const keep = within('lightLevel', 'keepFraction', o.keepFraction, 0.5, 1);
  const lamp = within('lightLevel', 'lampLm', o.lampLm, 20, 20000, 'lm');
  const exact = (areaM2 * level) / (use * keep);
  const lamps = Math.ceil(exact / lamp - 1e-9);
  const givenLm = lamps * lamp;
  return { areaM2, neededLm: Math.ceil(exact - 1e-9), lamps, givenLm, levelLx: (givenLm * use * keep) / areaM2 };
}

/**
 * Hides the LEDs: how deep a lip must be so that no eye at a usual place looks into them.
 * @param o.ledM [m] height above the floor, 0.1 to 4
 * @param o.eyeM [m] height of the eye, 0.5 to 2.2, below the LED; seated about 1.2, standing about 1.6
 * @param o.nearM [m] nearest eye, 0.1 to 10
 * @param o.lipGapMm [mm] level distance from LED to lip, 2 to 200
 * @param o.lipMm [mm] depth of the lip below the LED, 0 to 200
 * @returns `lipNeededMm` [mm]; `hiddenBeyondM` [m], null when there is no lip; `verdict` 'pass' or 'note'
 * @throws RangeError outside those ranges or with the eye not below the LED
 * @formula lip = (led - eye)·gap/near; hidden beyond = (led - eye)·gap/lip
 * @source straight-line sight; shiny floors mirror the LED, so look there too
 * @example aimAngle({ ledM: 1.85, eyeM: 1.6, nearM: 0.6, lipGapMm: 12, lipMm: 6 }).lipNeededMm // 5
 */
export function aimAngle(o: { ledM: number; eyeM: number; nearM: number; lipGapMm: number; lipMm: number }): {
  heightGapM: number;
  lipNeededMm: number;
  hiddenBeyondM: number | null;
  verdict: 'pass' | 'note';
} {
  const led = within('aimAngle', 'ledM', o.ledM, 0.1, 4, 'm');
  const eye = within('aimAngle', 'eyeM', o.eyeM, 0.5, 2.2, 'm');
  const near = within('aimAngle', 'nearM', o.nearM, 0.1, 10, 'm');
  const gap = within('aimAngle', 'lipGapMm', o.lipGapMm, 2, 200, 'mm');
  const lip = within('aimAngle', 'lipMm', o.lipMm, 0, 200, 'mm');
  const heightGapM = led - eye;
  if (heightGapM <= 0) throw new RangeError(`aimAngle: unexpected eyeM ${eye} m, expected below ledM ${led} m`);
  const lipNeededMm = (heightGapM * gap) / near;
  return {
    heightGapM,
    lipNeededMm,
    hiddenBeyondM: lip === 0 ? null : (heightGapM * gap) / lip,
    // At equality the check passes; 1e-9 takes up the last binary digits of a product such as 0.25 × 12.
    verdict: lip + 1e-9 >= lipNeededMm ? 'pass' : 'note',
  };
}
