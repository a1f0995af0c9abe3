import { KINDS } from '../../read/kinds.ts';
import { documentsOf, type Rule } from '../rule.ts';

/** A guide or lesson says something. */
export const emptyDocument: Rule = {
  id: 'empty-document',
  *check({ reading }) {
    for (const { kind, source, parts } of documentsOf(reading)) {
      const { one } = KINDS[kind];
      if (source.text.trim() === '') yield source.problem(0, `empty ${one}: the file holds nothing`);
      else if (
        parts.prose.length === 0 &&
        parts.tags.length === 0 &&
        parts.syntax.length === 0 &&
        parts.code.length === 0
      )
        yield source.problem(source.text.trimEnd().length, `empty ${one}: nothing stands behind the front matter`);
    }
  },
};
