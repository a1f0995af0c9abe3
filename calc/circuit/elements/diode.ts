import { within } from '../../guard.ts';
import { type ElementKind, LEAST_OHM } from './element.ts';
import type { Of } from './index.ts';

/** Open below its forward voltage, a fixed drop above it (and never backwards). */
export const diode: ElementKind<Of<'diode'>> = {
  terminals: (e) => ({ A: e.a, K: e.k }),
  check: (e) => {
    within(e.id, 'forwardV', e.forwardV, 0, 1000, 'V');
  },
  branches: (e) => [
    { id: e.id, a: e.a, b: e.k, ohm: e.open === true ? Number.POSITIVE_INFINITY : LEAST_OHM, fromV: e.forwardV },
  ],
};
