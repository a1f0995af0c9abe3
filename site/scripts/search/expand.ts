/** A group of words that find each other; the first is the workshop's own. */
export type Groups = readonly (readonly string[])[];

/** A way to ask the same thing, with the word that was put in. */
export interface Variant {
  query: string;
  /** Words that stand in place of the reader's; empty for the reader's own. */
  instead: string;
  /** That word is the workshop's own. */
  own: boolean;
}

/** More than this makes a search slow and its answer vague. */
const MOST = 6;

/**
 * The query as typed and as the trade also says it: "earth" also asks for "ground" and "chassis". The longest synonym
 * in the query is exchanged first ("auxiliary battery" before "battery"). Never more than six questions.
 */
export function variantsOf(query: string, groups: Groups): Variant[] {
  const typed = query.trim().replace(/\s+/g, ' ');
  const variants: Variant[] = [{ query: typed, instead: '', own: false }];
  if (typed === '') return variants;
  const hits = groups
    .flatMap((group) => group.map((word) => ({ word, group, at: placeOf(word, typed) })))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => b.word.length - a.word.length);
  const asked = new Set([typed.toLowerCase()]);
  for (const { word, group, at } of hits) {
    for (const other of group) {
      const changed = typed.slice(0, at) + other + typed.slice(at + word.length);
      if (variants.length >= MOST) return variants;
      if (asked.has(changed.toLowerCase())) continue;
      asked.add(changed.toLowerCase());
      // several words mean something together: "warning light" is not any light with any warning
      const isPhrase = changed === other && other.includes(' ');
      variants.push({ query: isPhrase ? `"${other}"` : changed, instead: other, own: other === group[0] });
    }
  }
  return variants;
}

/** Where the word stands whole in the query, or -1. */
function placeOf(word: string, query: string): number {
  const lower = query.toLowerCase();
  for (let at = lower.indexOf(word); at >= 0; at = lower.indexOf(word, at + 1)) {
    const before = lower[at - 1] ?? ' ';
    const after = lower[at + word.length] ?? ' ';
    if (!/[\p{L}\p{N}]/u.test(before) && !/[\p{L}\p{N}]/u.test(after)) return at;
  }
  return -1;
}

/** The words of a query as the index sees them: lower case, without the marks between them. */
export const wordsOf = (query: string): string[] =>
  [...new Set(query.toLowerCase().split(/[^\p{L}\p{N}.+-]+/u))].filter((word) => /[\p{L}\p{N}]/u.test(word));
