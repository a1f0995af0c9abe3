import { positive, within } from './guard.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * What a camera sees: the blind strip at its foot, how far it reaches, how wide it is at a distance. A camera adds to mirrors
 * and a banksman, it replaces neither.
 *
 * @param options `heightM` 0.1 to 10; `tiltDeg` below level 0 to 90; `verticalDeg` 1 to 170; `horizontalDeg` 1 to 179; `atM` distance to check 0.05 to 100.
 * @returns `blindM`, `farEdgeM` (null: to the horizon), `widthM` at the distance.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: blind = h / tan(tilt + v/2), 0 from 90°; far = h / tan(tilt − v/2), horizon at 0 and above; width = 2 × (d cos tilt + h sin tilt) × tan(horizontal/2).
 * @source pinhole geometry; lens distortion ignored.
 * @example cameraView({ heightM: 2.2, tiltDeg: 40, verticalDeg: 80, horizontalDeg: 120, atM: 2 }).blindM // 0.39
 */
export function cameraView({
  heightM,
  tiltDeg,
  verticalDeg,
  horizontalDeg,
  atM,
}: {
  heightM: number;
  tiltDeg: number;
  verticalDeg: number;
  horizontalDeg: number;
  atM: number;
}): { blindM: number; farEdgeM: number | null; widthM: number } {
  const where = 'cameraView';
  within(where, 'heightM', heightM, 0.1, 10, 'm');
  within(where, 'tiltDeg', tiltDeg, 0, 90, '°');
  within(where, 'verticalDeg', verticalDeg, 1, 170, '°');
  within(where, 'horizontalDeg', horizontalDeg, 1, 179, '°');
  positive(where, 'atM', atM, 'm');
  within(where, 'atM', atM, 0.05, 100, 'm');
  const nearDeg = tiltDeg + verticalDeg / 2;
  const farDeg = tiltDeg - verticalDeg / 2;
  const tilt = radians(tiltDeg);
  return {
    blindM: nearDeg >= 90 ? 0 : heightM / Math.tan(radians(nearDeg)),
    farEdgeM: farDeg <= 0 ? null : heightM / Math.tan(radians(farDeg)),
    widthM: 2 * (atM * Math.cos(tilt) + heightM * Math.sin(tilt)) * Math.tan(radians(horizontalDeg) / 2),
  };
}
