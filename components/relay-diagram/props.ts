import { z } from 'zod';

/** One relay, its terminals and what it does now: `<RelayDiagram of="K1"/>`. */
export const props = z.strictObject({
  /** A relay of the circuit. */
  of: z.string().min(1),
});
