import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { didYouMean } from '../../suggest.ts';
import { documentsOf, type Rule } from '../rule.ts';

/** A picture is in the content folder, and says in words what it shows. */
export const image: Rule = {
  id: 'image',
  *check({ reading }) {
    for (const { source, parts } of documentsOf(reading)) {
      for (const { url, alt, offset } of parts.images) {
        if (alt.trim() === '') yield source.problem(offset, `picture "${url}": say between [ ] what it shows`);
        if (/^([a-z][a-z0-9+.-]*:|\/)/i.test(url)) {
          yield source.problem(
            offset,
            `picture "${url}": keep it in images/ and name it from this file, such as ../images/…`,
          );
          continue;
        }
        if (!existsSync(resolve(dirname(source.path), decodeURI(url)))) {
          const name = url.slice(url.lastIndexOf('/') + 1);
          yield source.problem(offset, `picture "${url}": no such file.${didYouMean(name, reading.images)}`);
        }
      }
    }
  },
};
