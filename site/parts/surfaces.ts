import { type Surface, workshop } from '../workshop.ts';

/** What a surface can do for tape, in words that need no colour. */
export const BOND = {
  tape: { state: 'pass', word: 'Tape holds' },
  'tape plus fixing': { state: 'warn', word: 'Tape and a fixing' },
  'no tape': { state: 'stop', word: 'No tape' },
} as const;

export const ENERGY = { low: 'Low', medium: 'Medium', high: 'High' } as const;

/** Surfaces that guides meet most often first: whoever looks for one most likely looks for these. */
export async function surfacesByUse(): Promise<Surface[]> {
  const { surfaces, guides } = await workshop();
  const uses = new Map<string, number>();
  for (const { data } of guides) for (const id of data.surfaces) uses.set(id, (uses.get(id) ?? 0) + 1);
  const used = ({ id }: Surface): number => uses.get(id) ?? 0;
  return [...surfaces].sort((a, b) => used(b) - used(a) || a.name.localeCompare(b.name, 'en'));
}
