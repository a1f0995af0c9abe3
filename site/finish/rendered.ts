/**
 * Takes the pages of a build. Asked when a page begins, with its address below the base path; gives back where its bytes
 * go when it is done, nothing where it came to none: whoever hands them over has them no more. Several pages are on the
 * way at once, and the order in which they began is the same every time.
 */
export type PageTaker = (path: string) => (page: Uint8Array<ArrayBuffer> | undefined) => void;

/** Set by the build, called by the pages' middleware: two module graphs of one process meet in the global object. */
const shared = globalThis as { [taker]?: PageTaker | undefined };
const taker: unique symbol = Symbol.for('loomleaf.rendered') as never;

export function takeRendered(take: PageTaker | undefined): void {
  shared[taker] = take;
}

export const renderedTaker = (): PageTaker | undefined => shared[taker];
