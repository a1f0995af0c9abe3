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
      const file = shownPath(path);
      const key = `${kind} ${id.toLowerCase()}`;
      const other = seen.get(key);
      if (other !== undefined) yield at(file, `same ${one} id as ${other}: "${id}" would have one address with it`);
      else {
        seen.set(key, file);
        if (!idSchema.safeParse(id).success)
          yield at(
            file,
            `file name "${id}${extname(path)}" is the ${one}'s id: lower case letters, digits, single hyphens`,
          );
        else if (TAKEN[kind]?.includes(id))
          yield at(file, `the address /${kind}/${id}/ is taken by a page of the site: give the ${one} another name`);
      }
    }
  },
};

const at = (file: string, message: string): Problem => ({ file, line: 1, col: 1, message, severity: 'error' });
