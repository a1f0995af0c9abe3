import { isDraft } from '../../read/open.ts';
import type { Problem } from '../../read/source.ts';
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

  /** Parts of other pages, and guides that are not published: known when every guide and lesson has been read. */
  *whole({ documents }) {
    const pages = new Map(documents.map((document) => [`/${document.kind}/${document.id}/`, document]));
    for (const from of documents) {
      for (const { url, page, part, line, col } of from.pageLinks) {
        const target = pages.get(page);
        // Parts of any other page are its layout's own; they are judged on the built page.
        if (!target) continue;
        const say = (message: string): Problem => ({
          file: from.file,
          line,
          col,
          message: `link "${url}": ${message}`,
          severity: 'error',
        });
        const { anchors } = target.outline;
        if (isDraft(target) && !isDraft(from)) yield say('that guide is a draft and is not published');
        else if (part !== '' && !anchors.includes(part))
          yield say(`that page has no part "${part}".${didYouMean(part, anchors)}`);
      }
    }
  },
};
