import { didYouMean } from '../../suggest.ts';
import type { Rule } from '../rule.ts';

/** Links inside the site lead somewhere, down to the part of the page. */
export const deadLink: Rule = {
  id: 'dead-link',
  *document({ source, parts, outline }, { pages, images }) {
    for (const { url, offset } of parts.links) {
      const say = (message: string) => source.problem(offset, `link "${url}": ${message}`);
      if (/^([a-z][a-z0-9+.-]*:|\/\/)/i.test(url)) {
        if (!/^(https?:|mailto:|tel:)/i.test(url))
          yield say('expected a page of this site, or https:, mailto: or tel:');
        continue;
      }
      if (url.startsWith('#')) {
        const part = url.slice(1);
        if (!outline.anchors.includes(part))
          yield say(`this page has no part "${part}".${didYouMean(part, outline.anchors)}`);
        continue;
      }
      if (!url.startsWith('/')) {
        yield say('write it from the root of the site, such as /guides/…/');
        continue;
      }
      const page = url.split(/[?#]/)[0]!;
      if (page.startsWith('/images/')) {
        const picture = page.slice('/images/'.length);
        if (!images.includes(picture)) yield say(`no picture "${picture}" in images/.${didYouMean(picture, images)}`);
        continue;
      }
      const address = page.endsWith('/') ? page : `${page}/`;
      if (!pages.has(address)) yield say(`no such page.${didYouMean(address, pages)}`);
      else if (address !== page) yield say(`addresses end in a slash: ${address}`);
    }
  },

  /** Parts of other pages: known when every guide and lesson has been read. */
  *whole({ documents }) {
    const parts = new Map(documents.map(({ kind, id, outline }) => [`/${kind}/${id}/`, outline.anchors]));
    for (const { file, partLinks } of documents) {
      for (const { url, page, part, line, col } of partLinks) {
        const known = parts.get(page);
        // Parts of any other page are its layout's own; they are judged on the built page.
        if (!known || known.includes(part)) continue;
        const message = `link "${url}": that page has no part "${part}".${didYouMean(part, known)}`;
        yield { file, line, col, message, severity: 'error' };
      }
    }
  },
};
