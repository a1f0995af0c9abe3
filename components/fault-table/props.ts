import { z } from 'zod';

/** What each single fault does: `<FaultTable/>`, or of one part: `<FaultTable of="K1"/>`. */
export const props = z.strictObject({
  /** Only faults of this part or wire. */
  of: z.string().min(1).optional(),
});
