import { alongPath, type Path } from '../paths.ts';
import { perObject } from '../per-object.ts';
import type { Look } from './rule.ts';

/** What a chassis short on a wire drives through the fuse ahead of it. */
export interface ShortCurrent {
  wire: string;
  /** The fuse that should open: the smallest on the way. */
  fuse: string;
  ratingA: number;
  /** At the far end of the wire with the lowest supply, and where the wire begins with the highest [A]. */
  farA: number;
  nearA: number;
}

/**
 * Short-circuit currents of every wire that lies behind a fuse, along the way of least resistance from a source.
 *
 * Lamps and other loads that hang on the way are left out: a dead short leaves them little. Wires that a source reaches
 * without a fuse are the matter of another rule.
 */
export const shortCurrents = perObject((look: Look): ShortCurrent[] => {
  return look.of('wire').flatMap((wire) => {
    const ways = [wire.a, wire.b].flatMap((node) => (look.isReturn(node) ? [] : (look.fed.get(node) ?? [])));
    if (ways.some((way) => way.lastFuse === undefined)) return [];
    const best = new Map<string, Path>();
    for (const way of ways) {
      const known = best.get(way.lastFuse!);
      if (known === undefined || way.ohm < known.ohm) best.set(way.lastFuse!, way);
    }
    return [...best.values()].flatMap((way): ShortCurrent[] => {
      const source = look.element.get(way.start);
      if (source?.kind !== 'source') return [];
      const lowestV = Math.max(0, (look.written?.lowestV ?? source.volts) - way.dropV);
      const highestV = Math.max(0, (look.written?.highestV ?? source.volts) - way.dropV);
      const nearA = highestV / Math.max(way.ohm, 1e-4);
      return [{ wire: wire.id, ...smallest(way), farA: lowestV / Math.max(way.ohm + wire.ohm, 1e-4), nearA }];
    });
  });
});

function smallest(way: Path): { fuse: string; ratingA: number } {
  let found = { fuse: '', ratingA: Number.POSITIVE_INFINITY };
  for (const { element } of alongPath(way)) {
    if (element.kind === 'fuse' && element.ratingA <= found.ratingA)
      found = { fuse: element.id, ratingA: element.ratingA };
  }
  return found;
}
