import { extname } from 'node:path';
import { KINDS, type Kind } from '../../read/kinds.ts';
import { type Problem, shownPath } from '../../read/source.ts';
import { id as idSchema } from '../../schemas/fields.ts';
import type { Rule } from '../rule.ts';

/** Addresses that a page of the site has already. */
const TAKEN: Partial<Record<Kind, readonly string[]>> = { lessons: ['sheet'] };

/** A file's name is its id and its address: it has a plain form, and no other file has it, in capitals or not. */
export const sameId: Rule = {
  id: 'same-id',
  *whole({ reading }) {
    const seen = new Map<string, string>();
    const files: { kind: Kind; id: string; path: string }[] = [
      ...reading.documents,
      ...Object.values(reading.entries).flatMap((entries) =>
        entries.map(({ kind, id, source }) => ({ kind, id, path: source.path })),
      ),
    ];
    for (const { kind, id, path } of files) {
      const { one } = KINDS[kind];
      const key = `${kind} ${id.toLowerCase()}`;
      const other = seen.get(key);
      if (other !== undefined)
        yield at(path, `same ${one} id as ${shownPath(other)}: "${id}" would have one address with it`);
      else {
        seen.set(key, path);
        if (!idSchema.safeParse(id).success)
          yield at(
            path,
            `file name "${id}${extname(path)}" is the ${one}'s id: lower case letters, digits, single hyphens`,
          );
        else if (TAKEN[kind]?.includes(id))
          yield at(path, `the address /${kind}/${id}/ is taken by a page of the site: give the ${one} another name`);
      }
    }
  },
};

const at = (path: string, message: string): Problem => ({
  file: shownPath(path),
  line: 1,
  col: 1,
  message,
  severity: 'error',
});
