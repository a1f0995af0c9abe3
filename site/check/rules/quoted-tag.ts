import { documentsOf, type Rule } from '../rule.ts';

/** Inside a quotation the parser may lose the second line of a tag without a word. */
export const quotedTag: Rule = {
  id: 'quoted-tag',
  *check({ reading }) {
    for (const { source, parts } of documentsOf(reading))
      for (const { name, offset, brokenInQuote } of parts.tags)
        if (brokenInQuote)
          yield source.problem(offset, `<${name}>: inside a quotation the whole tag stands on one line`);
  },
};
