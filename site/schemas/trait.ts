import { z } from 'zod';
import { line, source } from './fields.ts';

/** content/traits/*.yaml: something about a vehicle that a fitter must know; it brings its caution and its survey step. */
export const traitSchema = z.strictObject({
  name: line,
  caution: line,
  /** What to do about it in the survey. */
  survey: line,
  holdPoint: z.enum(['H1', 'H2', 'H3', 'H4']),
  severity: z.enum(['stop', 'warn', 'note']),
  /** Whose instructions come first. */
  deferTo: line.nullable(),
  source,
});
export type TraitData = z.infer<typeof traitSchema>;
