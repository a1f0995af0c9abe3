import { z } from 'zod';

/** Chooses one wire: `<GaugeChooser of="W2"/>` reads the guide's circuit; the other props choose for a wire that stands in none. */
export const props = z
  .strictObject({
    /** A wire of the circuit. */
    of: z.string().min(1).optional(),
    /** Current it carries [A]. */
    currentA: z.number().positive().max(1000).optional(),
    /** Copper from source to load and, where the return is wire, back [m]. */
    lengthM: z.number().positive().max(1000).optional(),
    /** Share of the supply it may lose; default the workshop's. */
    dropFraction: z.number().min(0.001).max(0.5).optional(),
    /** Supply [V]; default the workshop's. */
    systemV: z.number().positive().max(60).optional(),
    /** Fuse ahead of it [A]. */
    fuseA: z.number().positive().max(1000).optional(),
    /** Air around it [°C]. */
    ambientC: z.number().min(-40).max(125).optional(),
    /** Loaded wires in its bundle, itself included. */
    bundled: z.int().min(1).max(60).optional(),
    /** Temperature of the copper [°C]; default 60, a warm loom. */
    conductorC: z.number().min(-40).max(150).optional(),
    /** Joints and terminals in series [ohm]. */
    jointOhm: z.number().min(0).max(1).optional(),
  })
  .refine((each) => (each.of === undefined) !== (each.currentA === undefined), {
    message: 'needs either of="W2" or currentA and lengthM',
  })
  .refine((each) => each.of !== undefined || each.lengthM !== undefined, {
    message: 'needs lengthM, the copper there and back',
    path: ['lengthM'],
  });
