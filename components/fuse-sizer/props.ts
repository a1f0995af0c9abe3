import { z } from 'zod';

/** Sizes one fuse: `<FuseSizer of="F1"/>` reads the guide's circuit; the other props size a fuse that stands in none. */
export const props = z
  .strictObject({
    /** A fuse of the circuit. */
    of: z.string().min(1).optional(),
    /** Steady current [A]. */
    currentA: z.number().positive().max(1000).optional(),
    /** First current when switched on [A]. */
    inrushA: z.number().min(0).max(10_000).optional(),
    /** How long it lasts [ms]. */
    inrushMs: z.number().min(0).max(1000).optional(),
    /** Thinnest wire behind the fuse [mm²]. */
    thinnestMm2: z.number().positive().max(120).optional(),
    /** Share of its rating the fuse may carry for ever; default the workshop's. */
    continuousFraction: z.number().min(0.5).max(1).optional(),
  })
  .refine((each) => (each.of === undefined) !== (each.currentA === undefined), {
    message: 'needs either of="F1" or currentA={2.2}',
  })
  .refine((each) => each.of !== undefined || each.thinnestMm2 !== undefined, {
    message: 'needs thinnestMm2, the thinnest wire behind the fuse',
    path: ['thinnestMm2'],
  });
