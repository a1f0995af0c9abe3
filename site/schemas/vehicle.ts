import { z } from 'zod';
import { id, line } from './fields.ts';

const point = z.tuple([z.number(), z.number()]);

/**
 * Side view of a vehicle type on a 1000 × 420 peg grid, nose to the left: own drawing, as SVG path data.
 * The loom runs from the battery along the trunk; each place hangs off it.
 */
export const boardSchema = z.strictObject({
  /** Outline, closed path. */
  body: line,
  /** Windows, doors, seams: open paths. */
  detail: z.array(line).default([]),
  /** Wheels: centre and radius. */
  wheels: z.array(z.tuple([z.number(), z.number(), z.number()])).default([]),
  /** Middle of the battery, or of the plug where the vehicle has none. */
  battery: point,
  /** Corner points of the trunk, from the battery on. */
  trunk: z.array(point).min(2),
  /** Numbered places, in the order of the loom: where parts go. */
  places: z
    .array(
      z.strictObject({
        id,
        name: line,
        at: point,
        /** Where its branch leaves the trunk. */
        from: point,
        /** Guides that fit something here. */
        guides: z.array(id).default([]),
      }),
    )
    .min(1),
});

/** content/vehicles/*.yaml: a vehicle type, never a brand. */
export const vehicleSchema = z.strictObject({
  name: line,
  /** Order on the home page. */
  order: z.int(),
  systemV: z.union([z.literal(12), z.literal(24)]),
  /** Lowest and highest voltage to design for at the load [V]. */
  designMinV: z.number().min(9).max(32),
  designMaxV: z.number().min(9).max(32),
  /** Typical battery [Ah]; 0 = none of its own. */
  batteryAh: z.number().min(0),
  body: line,
  /** What the demonstration or the workshop uses it for. */
  use: line,
  traits: z.array(id),
  /** Questions of the survey; a yes adds traits. */
  ask: z.array(z.strictObject({ question: line, adds: z.array(id).min(1) })).default([]),
  board: boardSchema,
});
export type VehicleData = z.infer<typeof vehicleSchema>;
export type Board = z.infer<typeof boardSchema>;
