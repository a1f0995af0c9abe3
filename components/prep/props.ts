import { z } from 'zod';
import { PLACE_IDS, TAPE_IDS } from '../../calc/index.ts';

/** How to prepare one surface for one tape: `<PrepSteps surface="abs" tape="acrylic-foam" place="cabin"/>`. */
export const prepSteps = z.strictObject({
  /** Surface of the workshop. */
  surface: z.string().min(1),
  tape: z.enum(TAPE_IDS as [string, ...string[]]),
  place: z.enum(PLACE_IDS as [string, ...string[]]),
  /** Mass that hangs on it [kg]. */
  massKg: z.number().min(0).max(100).optional(),
  /** Tape width [mm] and length [m]. */
  widthMm: z.number().min(1).max(500).optional(),
  lengthM: z.number().min(0).max(50).optional(),
  position: z.enum(['vertical', 'overhead', 'level']).optional(),
});

/** The selector: with `surface` for that one, without for any. */
export const prepSelector = z.strictObject({
  surface: z.string().min(1).optional(),
  tape: z.enum(TAPE_IDS as [string, ...string[]]).optional(),
  place: z.enum(PLACE_IDS as [string, ...string[]]).optional(),
  position: z.enum(['vertical', 'overhead', 'level']).optional(),
  /** Temperature of the surface to begin with [°C]. */
  surfaceC: z.number().min(-20).max(80).optional(),
  massKg: z.number().min(0.001).max(100).optional(),
  widthMm: z.number().min(1).max(500).optional(),
  lengthM: z.number().min(0.01).max(50).optional(),
});
