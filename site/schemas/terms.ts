import { z } from 'zod';
import { line } from './fields.ts';

/** content/terms.yaml: the words this workshop uses, and those it does not. */
export const termsSchema = z.strictObject({
  terms: z.array(
    z.strictObject({
      term: line,
      meaning: line,
      /** Words not to use for it in guides; the check warns. */
      avoid: z.array(line).default([]),
    }),
  ),
});
/** content/synonyms.yaml: a query word found in a group also finds the group's other words. */
export const synonymsSchema = z.strictObject({
  groups: z.array(z.strictObject({ term: line, also: z.array(line).min(1) })),
});
export type Term = z.infer<typeof termsSchema>['terms'][number];
export type SynonymGroup = z.infer<typeof synonymsSchema>['groups'][number];
