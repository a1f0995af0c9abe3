import type { Rule } from '../rule.ts';

/** The title heads the page already. */
export const titleHeading: Rule = {
  id: 'title-heading',
  *document({ source, parts }) {
    for (const { depth, offset } of parts.headings)
      if (depth === 1) yield source.problem(offset, "a heading of level 1 is the title's own: begin with ##");
  },
};
