import { z } from 'zod';

/** Leads to a lesson that teaches what the step asks. */
export const props = z.strictObject({
  /** The lesson's id. */
  of: z.string().min(1),
});
