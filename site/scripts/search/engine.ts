import { type Groups, variantsOf, wordsOf } from './expand.ts';
import { sameWord } from './same-word.ts';

/** What the index answers, as far as it is used here. */
interface Raw {
  results: { id: string; score: number; data(): Promise<Hit> }[];
  filters: Counts;
}
export interface Hit {
  url: string;
  excerpt: string;
  meta: Readonly<Record<string, string>>;
  sub_results?: readonly { title: string; url: string; excerpt: string }[];
  raw_content?: string;
  /** Places of the words that were found, counted in `raw_content`. */
  locations?: readonly number[];
}
export type Counts = Readonly<Record<string, Readonly<Record<string, number>>>>;
export type Filters = Readonly<Record<string, string>>;

interface Pagefind {
  options(options: object): Promise<void>;
  init(): Promise<void>;
  filters(): Promise<Counts>;
  search(query: string | null, options: { filters: Filters }): Promise<Raw>;
}

export interface Answer {
  total: number;
  hits: Hit[];
  /** Pages left under each filter value, of this query with the other filters. */
  counts: Counts;
  /** Synonyms that found something the reader's own words did not. */
  also: string[];
  /** Words of the question that stand on no page and were left out. */
  unknown: string[];
}

/** A synonym counts less than the word that was typed. */
const SYNONYM_WEIGHT = 0.6;

let opened: Promise<{ index: Pagefind; groups: Groups }> | undefined;

/** Loads index and synonyms once; the first call takes the time. */
export function open(base: string): Promise<{ index: Pagefind; groups: Groups }> {
  opened ??= (async () => {
    const [index, groups] = await Promise.all([
      import(/* @vite-ignore */ `${base}pagefind/pagefind.js`) as Promise<Pagefind>,
      fetch(`${base}synonyms.json`).then((response) => (response.ok ? (response.json() as Promise<Groups>) : [])),
    ]);
    await index.options({ baseUrl: base, excerptLength: 24 });
    await index.init();
    // Without this an answer carries no counts.
    await index.filters();
    return { index, groups };
  })();
  // A first load that failed, on a bad connection say, may be tried again.
  opened.catch(() => (opened = undefined));
  return opened;
}

const words = new Map<string, Promise<boolean>>();

/**
 * Whether a word stands on any page. For a word it does not know, the index answers with the longest beginning of it that
 * it does know ("hoist" → "h"): such an answer is none.
 */
function known(index: Pagefind, word: string): Promise<boolean> {
  let answer = words.get(word);
  if (!answer) {
    answer = (async () => {
      const first = (await index.search(word, { filters: {} })).results[0];
      if (!first) return false;
      const { raw_content: content = '', locations = [] } = await first.data();
      const standing = content.split(/\s+/);
      return locations.some((at) => sameWord(word, standing[at] ?? ''));
    })();
    words.set(word, answer);
  }
  return answer;
}

/** The words of a question, parted into those that stand somewhere and those that do not. */
async function sorted(index: Pagefind, query: string): Promise<{ standing: string[]; unknown: string[] }> {
  const all = wordsOf(query);
  const stands = await Promise.all(all.map((word) => known(index, word)));
  return { standing: all.filter((_, nth) => stands[nth]), unknown: all.filter((_, nth) => !stands[nth]) };
}

export async function ask(base: string, query: string, filters: Filters, shown: number): Promise<Answer> {
  const { index, groups } = await open(base);
  const variants = variantsOf(query, groups);
  const checked = await Promise.all(variants.map(async (each) => ({ ...each, ...(await sorted(index, each.query)) })));
  const own = checked[0]!;
  // A synonym that stands nowhere helps nobody. The reader's own words are asked for as far as they stand.
  const asked = checked
    .filter(({ instead, standing, unknown }) =>
      instead === '' ? query.trim() === '' || standing.length > 0 : unknown.length === 0,
    )
    .map((each) => ({ ...each, query: each.instead === '' ? own.standing.join(' ') : each.query }));
  const answers = await Promise.all(asked.map(({ query: question }) => index.search(question || null, { filters })));
  const best = new Map<string, { score: number; result: Raw['results'][number] }>();
  const also: string[] = [];
  answers.forEach((answer, nth) => {
    const { instead } = asked[nth]!;
    for (const result of answer.results) {
      const score = result.score * (instead === '' ? 1 : SYNONYM_WEIGHT);
      const before = best.get(result.id);
      if (before === undefined && instead !== '') also.push(instead);
      if (before === undefined || score > before.score) best.set(result.id, { score, result });
    }
  });
  const ranked = [...best.values()].sort((a, b) => b.score - a.score);
  return {
    total: ranked.length,
    hits: await Promise.all(ranked.slice(0, shown).map(({ result }) => result.data())),
    counts: await countsOf(index, asked, filters, answers),
    also: [...new Set(also)],
    unknown: also.length > 0 || asked.length > 1 ? [] : own.unknown,
  };
}

/**
 * How many pages each filter value would leave. For a filter that is set, its other values are counted as if it were
 * not: a reader sees what a change would bring, not zeros. Synonyms widen an answer, so the largest count stands.
 */
async function countsOf(
  index: Pagefind,
  asked: readonly { query: string }[],
  filters: Filters,
  answers: readonly Raw[],
): Promise<Counts> {
  const counts: Record<string, Record<string, number>> = {};
  const take = (name: string, values: Readonly<Record<string, number>> | undefined): void => {
    counts[name] ??= {};
    for (const [value, count] of Object.entries(values ?? {}))
      counts[name][value] = Math.max(counts[name][value] ?? 0, count);
  };
  for (const answer of answers)
    for (const [name, values] of Object.entries(answer.filters)) if (!(name in filters)) take(name, values);
  for (const name of Object.keys(filters)) {
    const others = Object.fromEntries(Object.entries(filters).filter(([other]) => other !== name));
    const free = await Promise.all(asked.map(({ query }) => index.search(query || null, { filters: others })));
    for (const answer of free) take(name, answer.filters[name]);
  }
  return counts;
}
