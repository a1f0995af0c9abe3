import { type Rule, textAt } from '../rule.ts';

/** The number on the card leads to one guide. */
export const sameNumber: Rule = {
  id: 'same-number',
  *check({ reading }) {
    const seen = new Map<string, string>();
    for (const { source, raw, offsetOf } of reading.entries.guides) {
      const number = textAt(raw, 'number');
      if (number === undefined) continue;
      const other = seen.get(number);
      if (other === undefined) seen.set(number, source.file);
      else yield source.problem(offsetOf(['number']), `front matter: number "${number}" is already that of ${other}`);
    }
  },
};
