import type { Hit } from './engine.ts';
import { bare } from './same-word.ts';

/** Text with `<mark>` from the index as nodes: whatever else stands in it stays text. */
export function excerptNodes(excerpt: string): Node[] {
  const parsed = new DOMParser().parseFromString(excerpt, 'text/html');
  return [...parsed.body.childNodes].map((node) => {
    const text = node.textContent ?? '';
    return node.nodeName === 'MARK' ? markOf(text) : document.createTextNode(text);
  });
}

function markOf(text: string): Node {
  const mark = document.createElement('mark');
  mark.textContent = text;
  return mark;
}

/** The words of the page that answered the question, without the marks around them. */
const foundIn = ({ raw_content = '', locations = [] }: Hit): ReadonlySet<string> => {
  const words = raw_content.split(/\s+/);
  return new Set(locations.map((at) => bare(words[at] ?? '')));
};

/** A text with these words marked. */
const marked = (text: string, words: ReadonlySet<string>): Node[] =>
  text.split(/(\s+)/).map((piece) => {
    const isFound = piece.trim() !== '' && words.has(bare(piece));
    return isFound ? markOf(piece) : document.createTextNode(piece);
  });

const FACTS = ['number', 'vehicles', 'volts', 'time', 'holds'] as const;

/** One result as a station: symbol, name, what is found in it, facts. */
export function resultRow(template: HTMLTemplateElement, hit: Hit, symbols: ReadonlySet<string>): Element {
  const row = (template.content.cloneNode(true) as DocumentFragment).firstElementChild!;
  const link = row.querySelector('a')!;
  link.href = hit.url;
  row.querySelector('strong')!.textContent = hit.meta['title'] ?? hit.url;
  const kind = hit.meta['work'] ?? hit.meta['page'] ?? '';
  row.querySelector('use')!.setAttribute('href', `#s-${symbols.has(kind) ? kind : 'page'}`);
  // found in a part of the page: what stands there, and the way to it; else what the page is about
  const part = hit.sub_results?.find(({ url }) => url.includes('#'));
  const isOfPart = part !== undefined && !hit.sub_results?.some(({ url }) => !url.includes('#'));
  const summary = hit.meta['summary'];
  row
    .querySelector('.excerpt')!
    .append(...(isOfPart || !summary ? excerptNodes(part?.excerpt ?? hit.excerpt) : marked(summary, foundIn(hit))));
  const at = row.querySelector<HTMLElement>('.at')!;
  if (isOfPart) {
    const inside = document.createElement('a');
    inside.href = part.url;
    inside.textContent = part.title;
    at.append('Go to ', inside);
  } else at.remove();
  const facts = row.querySelector('.meta')!;
  for (const name of FACTS) {
    const value = hit.meta[name];
    if (!value) continue;
    const fact = document.createElement('span');
    fact.textContent = value;
    facts.append(fact);
  }
  return row;
}
