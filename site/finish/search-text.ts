/** Stands in a page that is in the search, on the element that is. */
const SEARCHED = ' data-pagefind-body';
const TAG = /<(\/?)([a-zA-Z][\w-]*)((?:\s+[^\s=>"/]+(?:="[^"]*")?)*)\s*(\/?)>/g;
const TITLE = /<title>[^<]*<\/title>/;
const EMPTY = new Set('area base br col embed hr img input link meta source track wbr'.split(' '));
const NO_TEXT = new Set(['script', 'style', 'template', 'svg']);
/** A button is no text, save a term: it stands in a sentence. */
const CONTROL = /^(?!.*\sclass="term")/;
const IGNORED = /\sdata-pagefind-ignore(?=[\s=]|$)/;
const FOR_SEARCH = /\sdata-pagefind-/;
const HIDDEN = /\shidden(?=\s|$)/;
const ID = /\sid="[^"]*"/;

/**
 * What the search tool has to read of a built page, a tenth of its size or less: what it would leave out anyway is cut
 * before it parses. Reads markup as the site writes it, every attribute in double quotes. Undefined where the page is not
 * in the search.
 */
export function searchText(html: string): string | undefined {
  const marked = html.indexOf(SEARCHED);
  if (marked < 0) return undefined;
  let text = '';
  /** Elements open, the one that is searched included. */
  let open = 0;
  let read = html.lastIndexOf('<', marked);
  TAG.lastIndex = read;
  for (let tag = TAG.exec(html); tag !== null; tag = TAG.exec(html)) {
    const [, closing, name, attributes, alone] = tag as unknown as [string, string, string, string, string];
    text += html.slice(read, tag.index);
    read = TAG.lastIndex;
    if (closing) {
      text += `</${name}>`;
      open--;
    } else if (alone || EMPTY.has(name)) text += ' ';
    else if (NO_TEXT.has(name) || IGNORED.test(attributes) || (name === 'button' && CONTROL.test(attributes))) {
      read = endOf(name, html, read);
      TAG.lastIndex = read;
    } else {
      text += `<${name}${FOR_SEARCH.test(attributes) ? attributes.replace(HIDDEN, '') : (ID.exec(attributes)?.[0] ?? '')}>`;
      open++;
    }
    if (open === 0) break;
  }
  return `<html><head>${TITLE.exec(html)?.[0] ?? ''}</head><body>${text}</body></html>`;
}

/** Where the element ends whose opening tag ends at `from`. Only tags of its own name are looked at, so it is quick. */
function endOf(name: string, html: string, from: number): number {
  const own = new RegExp(`<(/?)${name}(?=[\\s>/])[^>]*>`, 'g');
  own.lastIndex = from;
  for (let open = 1; ; ) {
    const tag = own.exec(html);
    if (tag === null) return html.length;
    open += tag[1] === '/' ? -1 : 1;
    if (open === 0) return own.lastIndex;
  }
}
