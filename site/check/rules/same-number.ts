import { frontMatterOf } from '../../read/open.ts';
import type { Rule } from '../rule.ts';

/** The number on the card leads to one guide. */
export const sameNumber: Rule = {
  id: 'same-number',
  *whole({ documents }) {
    const seen = new Map<string, string>();
    for (const { kind, file, path, data } of documents) {
      if (kind !== 'guides' || !data || !('number' in data)) continue;
      const other = seen.get(data.number);
      if (other === undefined) {
        seen.set(data.number, file);
        continue;
      }
      // The file was closed long ago; where the number stands in it is asked only now that it matters.
      const { source, offsetOf } = frontMatterOf(path, kind);
      yield source.problem(offsetOf(['number']), `front matter: number "${data.number}" is already that of ${other}`);
    }
  },
};
