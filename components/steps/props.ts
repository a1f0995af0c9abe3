import { z } from 'zod';

/** The steps of a station. Numbers run through the whole guide. */
export const steps = z.strictObject({});

/** One act, with what to look for. */
export const step = z.strictObject({
  /** Its name in jobs and links: unique in the guide, kept when the text is reworded. */
  id: z.string().regex(/^[a-z][a-z0-9-]*$/, 'must be lower case letters, digits and hyphens'),
});
