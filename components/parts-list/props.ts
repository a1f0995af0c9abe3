import { z } from 'zod';

/** What to take from the shelf and what to cut: `<PartsList/>`. */
export const props = z.strictObject({
  /** Also list every wire to cut, with both ends. */
  cuts: z.boolean().optional(),
});
