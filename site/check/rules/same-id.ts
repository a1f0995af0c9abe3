import { extname } from 'node:path';
import { KIND_NAMES, KINDS } from '../../read/kinds.ts';
import { id as idSchema } from '../../schemas/fields.ts';
import type { Rule } from '../rule.ts';

/** A file's name is its id and its address: it has a plain form, and no other file has it, in capitals or not. */
export const sameId: Rule = {
  id: 'same-id',
  *check({ reading }) {
    for (const kind of KIND_NAMES) {
      const seen = new Map<string, string>();
      for (const { id, source } of reading.entries[kind]) {
        const other = seen.get(id.toLowerCase());
        if (other !== undefined) {
          yield source.problem(0, `same ${KINDS[kind].one} id as ${other}: "${id}" would have one address with it`);
          continue;
        }
        seen.set(id.toLowerCase(), source.file);
        if (!idSchema.safeParse(id).success)
          yield source.problem(
            0,
            `file name "${id}${extname(source.file)}" is the ${KINDS[kind].one}'s id: lower case letters, digits and single hyphens`,
          );
      }
    }
  },
};
