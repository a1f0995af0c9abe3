import { KINDS } from '../../read/kinds.ts';
import type { Rule } from '../rule.ts';

/** Content is data: components are given to it, values come from the circuit. */
export const javascript: Rule = {
  id: 'javascript',
  *document({ kind, source, parts }) {
    const one = `a ${KINDS[kind].one}`;
    for (const { offset, kind: code } of parts.code)
      yield source.problem(
        offset,
        code === 'module'
          ? `${one} has no import or export: its components are given to it`
          : `${one} has no JavaScript: write the text itself, or <Value of="…"/> for a figure`,
      );
    for (const tag of parts.tags) for (const { offset, message } of tag.faults) yield source.problem(offset, message);
  },
};
