/**
 * Told of the pages of a build: when a page begins, by its address below the base path, and when it is drawn, whatever came
 * of it; soon after that it stands in its file. Several pages are on the way at once, and the order in which they begin is
 * the same every time.
 */
export type PageWatch = (path: string) => () => void;

/** Set by the build, called by the pages' middleware: two module graphs of one process meet in the global object. */
const shared = globalThis as { [watch]?: PageWatch | undefined };
const watch: unique symbol = Symbol.for('loomleaf.rendered') as never;

export function watchPages(told: PageWatch | undefined): void {
  shared[watch] = told;
}

export const pageWatch = (): PageWatch | undefined => shared[watch];
