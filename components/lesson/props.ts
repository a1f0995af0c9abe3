import { z } from 'zod';

/** Parts to try things out in take nothing: their entries are the reader's. */
export const tryOut = z.strictObject({});
