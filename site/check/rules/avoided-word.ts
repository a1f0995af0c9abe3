import type { Term } from '../../schemas/terms.ts';
import type { Rule } from '../rule.ts';

/** One word for one thing: words that terms.yaml says to avoid are pointed out, not refused. */
export const avoidedWord: Rule = {
  id: 'avoided-word',
  *document({ source, parts }, { terms }) {
    const search = searchFor(terms);
    if (!search) return;
    for (const { text, offset } of parts.prose) {
      if (!search.perhaps.test(text)) continue;
      for (const found of text.matchAll(search.words)) {
        const term = search.better.get(found[0].toLowerCase());
        if (term !== undefined)
          yield source.problem(offset + found.index, `"${found[0]}": this workshop says "${term}"`, 'warning');
      }
    }
  },
};

interface Search {
  /** Finds all that `words` finds and a little more, in half the time. */
  perhaps: RegExp;
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
  const any = `(?:${list.join('|')})`;
  const words = new RegExp(`(?<![\\p{L}\\p{N}-])${any}(?![\\p{L}\\p{N}-])`, 'giu');
  const perhaps = new RegExp(`(?<![a-z0-9])${any}(?![a-z0-9])`, 'iu');
  const search = list.length === 0 ? undefined : { perhaps, words, better };
  searches.set(terms, search);
  return search;
}

const literally = (word: string): string => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
