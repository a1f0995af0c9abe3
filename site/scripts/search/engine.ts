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

/** A synonym counts less than the word that was typed; the workshop's own word for it counts nearly as much. */
const SYNONYM_WEIGHT = 0.5;
const OWN_WORD_WEIGHT = 0.85;
/** A page whose author wrote down that a customer types just this, or these words among others. */
const FORESEEN = 2;
const FORESEEN_IN_PART = 1.3;
/** So many of the best are looked at for what their authors foresaw. */
const LOOKED_AT = 12;

let opened: Promise<{ index: Pagefind; groups: Groups }> | undefined;

/** Loads index and synonyms once; the first call takes the time. */
export function open(base: string): Promise<{ index: Pagefind; groups: Groups }> {
  opened ??= (async () => {
    const [index, groups] = await Promise.all([
      import(/* @vite-ignore */ `${base}pagefind/pagefind.js`) as Promise<Pagefind>,
      fetch(`${base}synonyms.json`).then((response) => (response.ok ? (response.json() as Promise<Groups>) : [])),
    ]);
    // In this thread: a worker of its own sends a message for every page of every answer, which takes twice as long.
    await index.options({ baseUrl: base, excerptLength: 24, noWorker: true });
    await index.init();
    // Without this an answer carries no counts.
    await index.filters();
    return { index, groups };
  })();
  // A first load that failed, on a bad connection say, may be tried again.
  opened.catch(() => (opened = undefined));
  return opened;
}

/** The index keeps one record a page and writes each answer into it: a second question at the same time would garble it. */
let busy: Promise<unknown> = Promise.resolve();
function oneAtATime<T>(work: () => Promise<T>): Promise<T> {
  const turn = busy.then(work, work);
  busy = turn;
  return turn;
}
const copyOf = async (result: Raw['results'][number]): Promise<Hit> => ({ ...(await result.data()) });

const words = new Map<string, boolean>();
const beginsWith = (asked: string, found: string): boolean =>
  found
    .toLowerCase()
    .replace(/^[^\p{L}\p{N}]+/u, '')
    .startsWith(asked);

/**
 * Whether a word stands on any page. For a word it does not know, the index answers with the longest beginning of it that
 * it does know ("hoist" → "h"): such an answer is none. A synonym must stand there as it is: its stem may be another
 * word ("puller" → "pull").
 */
async function known(index: Pagefind, word: string, as: (asked: string, found: string) => boolean): Promise<boolean> {
  const key = `${word} ${as === sameWord}`;
  const before = words.get(key);
  if (before !== undefined) return before;
  const first = (await index.search(word, { filters: {} })).results[0];
  let found = false;
  if (first) {
    const { raw_content: content = '', locations = [], meta } = await first.data();
    const standing = content.split(/\s+/);
    found =
      locations.some((at) => as(word, standing[at] ?? '')) ||
      // found in what the author foresaw, which is no text of the page
      wordsOf(meta['asked'] ?? '').some((each) => as(word, each));
  }
  words.set(key, found);
  return found;
}

/** The words of a question, parted into those that stand somewhere and those that do not. */
async function sorted(
  index: Pagefind,
  query: string,
  instead: string,
): Promise<{ standing: string[]; unknown: string[] }> {
  const all = wordsOf(query);
  const put = new Set(wordsOf(instead));
  const parted = { standing: [] as string[], unknown: [] as string[] };
  for (const word of all) {
    const stands = await known(index, word, put.has(word) ? beginsWith : sameWord);
    parted[stands ? 'standing' : 'unknown'].push(word);
  }
  return parted;
}

/** Answers a question; null where it is no longer wanted by the time its turn comes. */
export async function ask(
  base: string,
  query: string,
  filters: Filters,
  shown: number,
  wanted: () => boolean,
): Promise<Answer | null> {
  const { index, groups } = await open(base);
  return oneAtATime(async () => (wanted() ? answer(index, groups, query, filters, shown) : null));
}

async function answer(
  index: Pagefind,
  groups: Groups,
  query: string,
  filters: Filters,
  shown: number,
): Promise<Answer> {
  const checked = [];
  for (const each of variantsOf(query, groups))
    checked.push({ ...each, ...(await sorted(index, each.query, each.instead)) });
  const typed = checked[0]!;
  // A synonym that stands nowhere helps nobody. The reader's own words are asked for as far as they stand.
  const asked = checked
    .filter(({ instead, standing, unknown }) =>
      instead === '' ? query.trim() === '' || standing.length > 0 : unknown.length === 0,
    )
    .map((each) => ({ ...each, query: each.instead === '' ? typed.standing.join(' ') : each.query }));
  const answers: Raw[] = [];
  for (const { query: question } of asked) answers.push(await index.search(question || null, { filters }));
  const best = new Map<string, { score: number; result: Raw['results'][number] }>();
  const also: string[] = [];
  answers.forEach(({ results }, nth) => {
    const { instead, own: ownWord } = asked[nth]!;
    const weight = instead === '' ? 1 : ownWord ? OWN_WORD_WEIGHT : SYNONYM_WEIGHT;
    for (const result of results) {
      const score = result.score * weight;
      const before = best.get(result.id);
      if (before === undefined && instead !== '') also.push(instead);
      if (before === undefined || score > before.score) best.set(result.id, { score, result });
    }
  });
  const ranked = [...best.values()].sort((a, b) => b.score - a.score);
  const near: { hit: Hit; score: number }[] = [];
  for (const { score, result } of ranked.slice(0, Math.max(shown, LOOKED_AT))) {
    const hit = await copyOf(result);
    near.push({ hit, score: score * foreseen(hit.meta['asked'] ?? '', query) });
  }
  near.sort((a, b) => b.score - a.score);
  return {
    total: ranked.length,
    hits: near.slice(0, shown).map(({ hit }) => hit),
    counts: await countsOf(index, asked, filters, answers),
    also: [...new Set(also)],
    unknown: also.length > 0 || asked.length > 1 ? [] : typed.unknown,
  };
}

/** How much more a page counts because its author foresaw the question. */
function foreseen(asked: string, query: string): number {
  const question = wordsOf(query);
  if (asked === '' || question.length === 0) return 1;
  const phrases = asked.split('|').map(wordsOf);
  if (phrases.some((phrase) => phrase.join(' ') === question.join(' '))) return FORESEEN;
  return phrases.some((phrase) => question.every((word) => phrase.includes(word))) ? FORESEEN_IN_PART : 1;
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
  for (const { filters: left } of answers)
    for (const [name, values] of Object.entries(left)) if (!(name in filters)) take(name, values);
  for (const name of Object.keys(filters)) {
    const others = Object.fromEntries(Object.entries(filters).filter(([other]) => other !== name));
    for (const { query } of asked) take(name, (await index.search(query || null, { filters: others })).filters[name]);
  }
  return counts;
}
