/**
 * What a reader chose to look at is kept as text; lists are written with commas, and an empty one is a choice too. Where
 * what came before matters (a relay that holds itself), the lists of all steps stand in a row, the latest last.
 */

/** Chosen, and nothing in it. */
export const NONE = '-';

/** The things in a chosen list. */
export const listOf = (text: string): string[] => (text === NONE || text === '' ? [] : text.split(','));

/** The text of a list. */
export const textOfList = (list: readonly string[]): string => list.join(',') || NONE;

/** Steps that are kept; nobody holds a relay over more. */
const MOST_STEPS = 200;

export const stepsOf = (text: string): string[] => text.split(';');

/** The latest step. */
export const lastOf = (text: string): string => text.slice(text.lastIndexOf(';') + 1);

/** One step more. */
export const withStep = (text: string, step: string): string => [...stepsOf(text), step].slice(-MOST_STEPS).join(';');
