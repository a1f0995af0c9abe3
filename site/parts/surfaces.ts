import { type Surface, type Workshop, workshop } from '../workshop.ts';

/** What a surface can do for tape, in words that need no colour. */
export const BOND = {
  tape: { state: 'pass', word: 'Tape holds' },
  'tape plus fixing': { state: 'warn', word: 'Tape and a fixing' },
  'no tape': { state: 'stop', word: 'No tape' },
} as const;

export const ENERGY = { low: 'Low', medium: 'Medium', high: 'High' } as const;

const sorted = new WeakMap<Workshop, Surface[]>();

/** Surfaces that guides meet most often first: whoever looks for one most likely looks for these. */
export async function surfacesByUse(): Promise<readonly Surface[]> {
  const shop = await workshop();
  let surfaces = sorted.get(shop);
  if (!surfaces) {
    const uses = new Map<string, number>();
    for (const { data } of shop.guides) for (const id of data.surfaces) uses.set(id, (uses.get(id) ?? 0) + 1);
    const used = ({ id }: Surface): number => uses.get(id) ?? 0;
    surfaces = [...shop.surfaces].sort((a, b) => used(b) - used(a) || a.name.localeCompare(b.name, 'en'));
    sorted.set(shop, surfaces);
  }
  return surfaces;
}
