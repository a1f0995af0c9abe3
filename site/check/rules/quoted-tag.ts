import type { Rule } from '../rule.ts';

/** Inside a quotation the parser may lose the second line of a tag without a word. */
export const quotedTag: Rule = {
  id: 'quoted-tag',
  *document({ source, parts }) {
    for (const { name, offset, brokenInQuote } of parts.tags)
      if (brokenInQuote) yield source.problem(offset, `<${name}>: inside a quotation the whole tag stands on one line`);
  },
};
