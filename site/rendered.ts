/** Takes each page of a build: its address below the base path, and its markup. */
export type PageTaker = (path: string, html: string) => void;

/** Set by the build, called by the pages' middleware: two module graphs of one process meet in the global object. */
const shared = globalThis as { [taker]?: PageTaker | undefined };
const taker: unique symbol = Symbol.for('loomleaf.rendered') as never;

export function takeRendered(take: PageTaker | undefined): void {
  shared[taker] = take;
}

export const renderedTaker = (): PageTaker | undefined => shared[taker];
