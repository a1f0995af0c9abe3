import { didYouMean } from '../../suggest.ts';
import { routesOf } from '../routes.ts';
import { documentsOf, type Rule } from '../rule.ts';

/** Links inside the site lead somewhere, down to the part of the page. */
export const deadLink: Rule = {
  id: 'dead-link',
  *check(content) {
    const routes = routesOf(content);
    for (const { source, parts, outline } of documentsOf(content.reading)) {
      for (const { url, offset } of parts.links) {
        if (/^([a-z][a-z0-9+.-]*:|\/\/)/i.test(url)) {
          if (/^(javascript|data|vbscript|file):/i.test(url))
            yield source.problem(offset, `link "${url}": this kind of address is not allowed`);
          continue;
        }
        const [path, anchor] = cut(url, '#');
        if (path !== '' && !path.startsWith('/')) {
          yield source.problem(offset, `link "${url}": write it from the root of the site, such as /guides/…/`);
          continue;
        }
        const [page] = cut(path, '?');
        if (page.startsWith('/images/')) {
          const picture = page.slice('/images/'.length);
          if (!content.reading.images.includes(picture))
            yield source.problem(
              offset,
              `link "${url}": no picture "${picture}" in images/.${didYouMean(picture, content.reading.images)}`,
            );
          continue;
        }
        const withSlash = page === '' || page.endsWith('/') ? page : `${page}/`;
        if (withSlash !== '' && !routes.has(withSlash)) {
          yield source.problem(offset, `link "${url}": no such page.${didYouMean(withSlash, routes.keys())}`);
          continue;
        }
        if (withSlash !== page)
          yield source.problem(offset, `link "${url}": the address ends in a slash: ${withSlash}`);
        if (anchor === '') continue;
        const anchors = withSlash === '' ? outline?.anchors : routes.get(withSlash);
        if (anchors && !anchors.includes(anchor))
          yield source.problem(
            offset,
            `link "${url}": the page has no part "#${anchor}".${didYouMean(anchor, anchors)}`,
          );
      }
    }
  },
};

function cut(text: string, mark: string): [string, string] {
  const at = text.indexOf(mark);
  return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + 1)];
}
