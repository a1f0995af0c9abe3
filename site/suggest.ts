import { nearestName } from '../calc/index.ts';

/** ` Did you mean "F1"?`, or nothing where no known word is near; goes behind a sentence that ends in a full stop. */
export function didYouMean(word: string, known: Iterable<string>): string {
  const meant = nearestName(word, known);
  return meant === undefined ? '' : ` Did you mean "${meant}"?`;
}
