/**
 * Finding a surface: by what people call it, or by what a magnet, a drop of water, a fingernail, a knock and a bucket of
 * water say. No flame, no smell of burning plastic.
 */

/** Simple tests and what each can say. */
export const SIGNS = {
  magnet: ['holds', 'does not hold'],
  water: ['spreads', 'beads', 'soaks in'],
  fingernail: ['no mark', 'marks', 'dents and comes back'],
  tap: ['rings', 'dull'],
  float: ['floats', 'sinks'],
} as const;
export type Sign = keyof typeof SIGNS;
/** What one test said; null where it was not done or says nothing on this surface. */
export type SignsSeen = { readonly [S in Sign]?: (typeof SIGNS)[S][number] | null | undefined };

export interface SearchableSurface {
  id: string;
  name: string;
  words: readonly string[];
  looks: string;
  /** What the tests say here; a test that can go either way is left out. */
  signs: SignsSeen;
}

export interface SurfaceMatch {
  id: string;
  name: string;
  /** Tests that agree. */
  agrees: Sign[];
  /** Tests that contradict: any of them rules the surface out. */
  contradicts: Sign[];
}

/**
 * Surfaces that the tests do not contradict, those with most agreement first.
 * @param o.signs what each test said, of SIGNS   @param o.surfaces the surfaces to choose from
 * @returns matches, best first, equal ones in the order given; surfaces any test contradicts are left out. No unit
 * @throws RangeError for a word that is not in SIGNS
 * @formula count of agreeing tests; one contradiction rules out
 * @source common practice, no source
 * @example surfacesBySigns({ signs: { magnet: 'holds' }, surfaces: [] }).length // 0
 */
export function surfacesBySigns(o: { signs: SignsSeen; surfaces: readonly SearchableSurface[] }): SurfaceMatch[] {
  const seen = (Object.keys(SIGNS) as Sign[]).filter((sign) => o.signs[sign] != null);
  for (const sign of seen) {
    const allowed: readonly string[] = SIGNS[sign];
    if (!allowed.includes(o.signs[sign] as string)) {
      throw new RangeError(
        `surfacesBySigns: unexpected ${sign} "${o.signs[sign]}", expected one of ${allowed.join(', ')}`,
      );
    }
  }
  return o.surfaces
    .map(({ id, name, signs }) => ({
      id,
      name,
      agrees: seen.filter((sign) => signs[sign] === o.signs[sign]),
      contradicts: seen.filter((sign) => signs[sign] != null && signs[sign] !== o.signs[sign]),
    }))
    .filter(({ contradicts }) => contradicts.length === 0)
    .sort((a, b) => b.agrees.length - a.agrees.length);
}

const wordsIn = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** How well one typed word meets one stored word: whole, as its beginning, or inside it. */
function meets(typed: string, stored: string): number {
  if (stored === typed) return 4;
  if (stored.startsWith(typed)) return 2;
  return typed.length >= 4 && stored.includes(typed) ? 1 : 0;
}

/**
 * Surfaces whose everyday names or looks hold every word typed, best first.
 * @param o.query words typed   @param o.surfaces the surfaces to choose from
 * @returns ids, best first; all of them, in the order given, for an empty query. No unit
 * @throws nothing: what is not found gives an empty list
 * @formula a whole word counts 4, its beginning 2, a part of four letters or more 1; names count twice what looks count
 * @source this project's choice
 * @example surfacesByWords({ query: 'bumper', surfaces: [{ id: 'pp', name: 'Polypropylene', words: ['bumper'], looks: '', signs: {} }] }).join() // 'pp'
 */
export function surfacesByWords(o: { query: string; surfaces: readonly SearchableSurface[] }): string[] {
  const typed = wordsIn(o.query);
  return o.surfaces
    .map((surface) => {
      const names = [surface.name, ...surface.words].flatMap(wordsIn);
      const looks = wordsIn(surface.looks);
      const each = typed.map((word) =>
        Math.max(0, ...names.map((name) => 2 * meets(word, name)), ...looks.map((look) => meets(word, look))),
      );
      const missing = each.some((score) => score === 0);
      return { id: surface.id, score: missing ? 0 : each.reduce((sum, score) => sum + score, 0) };
    })
    .filter(({ score }) => typed.length === 0 || score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ id }) => id);
}
