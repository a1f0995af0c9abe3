/**
 * Small pieces of work done while nothing else is to do, one a turn, in order. Giving new ones drops those still waiting.
 */
export function idleWork(): (pieces: readonly (() => void)[]) => void {
  let waiting: readonly (() => void)[] = [];
  let asked = false;
  const ask = (): void => {
    asked = true;
    whenIdle(next);
  };
  const next = (): void => {
    asked = false;
    const [first, ...rest] = waiting;
    waiting = rest;
    try {
      first?.();
    } finally {
      // a piece that fails is told of, and holds up no other
      if (waiting.length > 0) ask();
    }
  };
  return (pieces) => {
    waiting = pieces;
    if (!asked && pieces.length > 0) ask();
  };
}

/** Behind everything a reader does. Not every browser has a queue for that; its idle turns come late and far apart. */
function whenIdle(work: () => void): void {
  const { scheduler } = window as { scheduler?: { postTask?(work: () => void, how: { priority: string }): unknown } };
  if (scheduler?.postTask !== undefined) void scheduler.postTask(work, { priority: 'background' });
  else if ('requestIdleCallback' in window) window.requestIdleCallback(work);
  else setTimeout(work, 50);
}
