import { z } from 'zod';

/** What can hurt, burn or break here, and whose instructions come first. */
export const caution = z.strictObject({
  severity: z.enum(['stop', 'warn', 'note']),
  /** Whose text goes before this page: "Vehicle maker's instructions". */
  defer: z.string().min(1).optional(),
});

/** Something worth knowing that is no danger. */
export const note = z.strictObject({});
