/** A word without its marks, in small letters. */
export const bare = (word: string): string => word.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

/**
 * Whether a word found is the word asked for, or begins with it, or differs in its ending only ("batteries", "battery").
 * Words of up to three letters must be the beginning of what is found.
 */
export function sameWord(asked: string, found: string): boolean {
  const [a, b] = [bare(asked), bare(found)];
  if (a === '' || b === '') return false;
  if (b.startsWith(a)) return true;
  if (a.length <= 3) return false;
  let same = 0;
  while (same < a.length && a[same] === b[same]) same += 1;
  return same >= Math.max(3, a.length - 3);
}
