import { KINDS } from '../../read/kinds.ts';
import type { Rule } from '../rule.ts';

/** A guide or lesson says something. */
export const emptyDocument: Rule = {
  id: 'empty-document',
  *document({ kind, source, parts }) {
    const { one } = KINDS[kind];
    if (source.text.trim() === '') yield source.problem(0, `empty ${one}: the file holds nothing`);
    else if ([parts.prose, parts.tags, parts.syntax, parts.code, parts.images].every(({ length }) => length === 0))
      yield source.problem(source.text.trimEnd().length, `empty ${one}: nothing stands behind the front matter`);
  },
};
