/** What a reader chose to look at is kept as text; lists are written with commas, and an empty one is a choice too. */

/** Chosen, and nothing in it. */
export const NONE = '-';

/** The things in a chosen list. */
export const listOf = (text: string): string[] => (text === NONE || text === '' ? [] : text.split(','));

/** The text of a list. */
export const textOfList = (list: readonly string[]): string => list.join(',') || NONE;
