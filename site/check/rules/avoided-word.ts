import { documentsOf, type Rule } from '../rule.ts';

/** One word for one thing: words that terms.yaml says to avoid are pointed out, not refused. */
export const avoidedWord: Rule = {
  id: 'avoided-word',
  *check({ reading, workshop }) {
    const better = new Map<string, string>();
    for (const { term, avoid } of workshop.terms) for (const word of avoid) better.set(word.toLowerCase(), term);
    if (better.size === 0) return;
    const words = [...better.keys()].sort((a, b) => b.length - a.length).map(literally);
    const search = new RegExp(`(?<![\\p{L}\\p{N}-])(${words.join('|')})(?![\\p{L}\\p{N}-])`, 'giu');
    for (const { source, parts } of documentsOf(reading)) {
      for (const { text, offset } of parts.prose) {
        for (const found of text.matchAll(search)) {
          const term = better.get(found[0].toLowerCase());
          if (term !== undefined)
            yield source.problem(offset + found.index, `"${found[0]}": this workshop says "${term}"`, 'warning');
        }
      }
    }
  },
};

const literally = (word: string): string => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
