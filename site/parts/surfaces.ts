import type { Surface } from '../workshop.ts';

/** What a surface can do for tape, in words that need no colour. */
export const BOND = {
  tape: { state: 'pass', word: 'Tape holds' },
  'tape plus fixing': { state: 'warn', word: 'Tape and a fixing' },
  'no tape': { state: 'stop', word: 'No tape' },
} as const;

export const ENERGY = { low: 'Low', medium: 'Medium', high: 'High' } as const;

/** Steps in a word each, in order, for a list: "scuff, wipe, prime". */
export function stepWords(surface: Surface): string {
  const { abrade, primer, procedure } = surface;
  const words = [
    ...(abrade.use === 'always' ? ['scuff'] : []),
    ...(procedure.length > 0 ? ['wipe'] : []),
    ...(primer?.use === 'always' ? ['prime'] : primer ? ['prime at need'] : []),
    ...(surface.bond === 'no tape' ? ['fix mechanically'] : ['tape']),
  ];
  const text = words.join(', ');
  return text.charAt(0).toUpperCase() + text.slice(1);
}
