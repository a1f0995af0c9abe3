import { z } from 'zod';

/** A number inside a sentence: `<Value of="F1.ratingA"/>`, `<Value of="rearRunM"/>`. */
export const props = z.strictObject({
  /** A job value's name, or a part, wire or `supply` with one of its figures. */
  of: z.string().min(1),
});
