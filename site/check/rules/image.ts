import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { didYouMean } from '../../suggest.ts';
import type { Rule } from '../rule.ts';

/** A picture is in the content folder, and says in words what it shows. */
export const image: Rule = {
  id: 'image',
  *document({ source, parts }, { images }) {
    for (const { url, alt, offset } of parts.images) {
      if (alt.trim() === '') yield source.problem(offset, `picture "${url}": say between [ ] what it shows`);
      if (/^([a-z][a-z0-9+.-]*:|\/)/i.test(url)) {
        yield source.problem(
          offset,
          `picture "${url}": keep it in images/ and name it from this file, such as ../images/…`,
        );
      } else if (!existsSync(resolve(dirname(source.path), decoded(url)))) {
        const name = url.slice(url.lastIndexOf('/') + 1);
        yield source.problem(offset, `picture "${url}": no such file.${didYouMean(name, images)}`);
      }
    }
  },
};

function decoded(url: string): string {
  try {
    return decodeURI(url);
  } catch {
    return url;
  }
}
