import { z } from 'zod';

/** The survey steps and cautions that the guide's vehicle types and its own traits bring. */
export const props = z.strictObject({});
