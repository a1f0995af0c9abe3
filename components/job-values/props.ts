import { z } from 'zod';

/** The guide's named quantities, each with how to measure it. The run bar's drawer holds the same. */
export const props = z.strictObject({});
