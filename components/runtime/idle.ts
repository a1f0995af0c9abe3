/**
 * Small pieces of work done while nothing else is to do, one a turn, in order. Giving new ones drops those still waiting.
 */
export function idleWork(): (pieces: readonly (() => void)[]) => void {
  let waiting: readonly (() => void)[] = [];
  let asked = false;
  const ask = (): void => {
    asked = true;
    // not every browser tells when it is idle
    if ('requestIdleCallback' in window) window.requestIdleCallback(next);
    else setTimeout(next, 50);
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
