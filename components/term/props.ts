import { z } from 'zod';

/** A word of the trade, explained where it stands: `<Term of="back-feed">feeds back</Term>`. */
export const props = z.strictObject({
  /** The term as terms.yaml has it. */
  of: z.string().min(1),
});
