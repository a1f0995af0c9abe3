import type { Hit } from './engine.ts';

/** Text with `<mark>` from the index as nodes: whatever else stands in it stays text. */
export function excerptNodes(excerpt: string): Node[] {
  const parsed = new DOMParser().parseFromString(excerpt, 'text/html');
  return [...parsed.body.childNodes].map((node) => {
    if (node.nodeName !== 'MARK') return document.createTextNode(node.textContent ?? '');
    const mark = document.createElement('mark');
    mark.textContent = node.textContent;
    return mark;
  });
}

const FACTS = ['number', 'vehicles', 'volts', 'time', 'holds'] as const;

/** One result as a station: symbol, name, what is found in it, facts. */
export function resultRow(template: HTMLTemplateElement, hit: Hit, symbols: ReadonlySet<string>): Element {
  const row = (template.content.cloneNode(true) as DocumentFragment).firstElementChild!;
  const link = row.querySelector('a')!;
  link.href = hit.url;
  row.querySelector('strong')!.textContent = hit.meta['title'] ?? hit.url;
  const kind = hit.meta['work'] ?? hit.meta['page'] ?? '';
  row.querySelector('use')!.setAttribute('href', `#s-${symbols.has(kind) ? kind : 'page'}`);
  row.querySelector('.excerpt')!.append(...excerptNodes(hit.excerpt));
  const part = hit.sub_results?.find(({ url }) => url.includes('#'));
  const at = row.querySelector<HTMLElement>('.at')!;
  if (part !== undefined && part.url !== hit.url) {
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
