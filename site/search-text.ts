const TAG = /<(\/?)([a-zA-Z][\w-]*)((?:\s+[^\s=>"/]+(?:="[^"]*")?)*)\s*(\/?)>/g;
const EMPTY = new Set([
  'area',
  'base',
  'br',
  'col',
  'embed',
  'hr',
  'img',
  'input',
  'link',
  'meta',
  'source',
  'track',
  'wbr',
]);
const NO_TEXT = new Set(['script', 'style', 'template', 'svg', 'button']);
const IGNORED = /\sdata-pagefind-ignore(?=[\s=]|$)/;
const KEPT = /\s(?:id|data-[\w-]+)(?:="[^"]*")?/g;

/**
 * What the search tool has to read of a built page, a tenth of its size or less: what it would leave out anyway is cut
 * before it parses. Reads markup as the site writes it, every attribute in double quotes. Undefined where the page is not
 * in the search.
 */
export function searchText(html: string): string | undefined {
  if (!html.includes('data-pagefind-body')) return undefined;
  const title = /<title>[^<]*<\/title>/.exec(html)?.[0] ?? '';
  const from = html.indexOf('<body');
  let text = '';
  let read = 0;
  /** Elements open inside the one that is cut; 0 = nothing is cut. */
  let cut = 0;
  const body = html.slice(from);
  for (const tag of body.matchAll(TAG)) {
    const [whole, closing, name, attributes, alone] = tag as unknown as [string, string, string, string, string];
    if (cut === 0) text += body.slice(read, tag.index);
    read = tag.index + whole.length;
    const empty = alone !== '' || EMPTY.has(name);
    if (cut > 0) cut += closing ? -1 : empty ? 0 : 1;
    else if (closing) text += `</${name}>`;
    else if (empty) text += ' ';
    else if (NO_TEXT.has(name) || IGNORED.test(attributes)) cut = 1;
    else text += `<${name}${attributes.match(KEPT)?.join('') ?? ''}>`;
  }
  return `<html><head>${title}</head>${text}</html>`;
}
