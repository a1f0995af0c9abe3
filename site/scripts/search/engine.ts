import { type Groups, variantsOf } from './expand.ts';

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
    return { index, groups };
  })();
  // A first load that failed, on a bad connection say, may be tried again.
  opened.catch(() => (opened = undefined));
  return opened;
}

export async function ask(base: string, query: string, filters: Filters, shown: number): Promise<Answer> {
  const { index, groups } = await open(base);
  const asked = variantsOf(query, groups);
  const answers = await Promise.all(asked.map(({ query: words }) => index.search(words || null, { filters })));
  const best = new Map<string, { score: number; result: Raw['results'][number] }>();
  const also: string[] = [];
  answers.forEach((answer, nth) => {
    for (const result of answer.results) {
      const score = result.score * (nth === 0 ? 1 : SYNONYM_WEIGHT);
      const known = best.get(result.id);
      if (known === undefined && nth > 0) also.push(asked[nth]!.instead);
      if (known === undefined || score > known.score) best.set(result.id, { score, result });
    }
  });
  const ranked = [...best.values()].sort((a, b) => b.score - a.score);
  return {
    total: ranked.length,
    hits: await Promise.all(ranked.slice(0, shown).map(({ result }) => result.data())),
    counts: await countsOf(index, asked, filters, answers),
    also: [...new Set(also)],
  };
}

/**
 * How many pages each filter value would leave. For a filter that is set, its other values are counted as if it were
 * not: a reader sees what a change would bring, not zeros. Synonyms widen an answer, so the largest count stands.
 */
async function countsOf(
  index: Pagefind,
  asked: { query: string }[],
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
