import type { Term } from '../../schemas/terms.ts';
import type { Rule } from '../rule.ts';

/** One word for one thing: words that terms.yaml says to avoid are pointed out, not refused. */
export const avoidedWord: Rule = {
  id: 'avoided-word',
  *document({ source, parts }, { terms }) {
    const search = searchFor(terms);
    // Most documents hold none of the words: one quick look at the whole text says so.
    if (!search?.anywhere.test(source.text.toLowerCase())) return;
    for (const { text, offset } of parts.prose) {
      for (const found of text.matchAll(search.words)) {
        const term = search.better.get(found[0].toLowerCase());
        if (term !== undefined)
          yield source.problem(offset + found.index, `"${found[0]}": this workshop says "${term}"`, 'warning');
      }
    }
  },
};

interface Search {
  anywhere: RegExp;
  words: RegExp;
  /** The word to use, by the word to avoid in lower case. */
  better: Map<string, string>;
}
const searches = new WeakMap<readonly Term[], Search | undefined>();

/** One expression for all words of a workshop, made once. */
function searchFor(terms: readonly Term[]): Search | undefined {
  if (searches.has(terms)) return searches.get(terms);
  const better = new Map(terms.flatMap(({ term, avoid }) => avoid.map((word) => [word.toLowerCase(), term] as const)));
  // The longest first, so that "leisure battery bank" is not cut short.
  const list = [...better.keys()].sort((a, b) => b.length - a.length).map(literally);
  const words = new RegExp(`(?<![\\p{L}\\p{N}-])(?:${list.join('|')})(?![\\p{L}\\p{N}-])`, 'giu');
  const search = list.length === 0 ? undefined : { anywhere: new RegExp(list.join('|')), words, better };
  searches.set(terms, search);
  return search;
}

const literally = (word: string): string => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
