import { within } from '../../guard.ts';
import type { ElementKind } from './element.ts';
import type { Of } from './index.ts';

/** What is left of its slope [ohm]: 0.3 mV at 10 A, 3 mV at 100 A. */
const SLOPE_OHM = 3e-5;

/** Open below its forward voltage, a fixed drop above it (and never backwards). */
export const diode: ElementKind<Of<'diode'>> = {
  terminals: (e) => ({ A: e.a, K: e.k }),
  check: (e) => {
    within(e.id, 'forwardV', e.forwardV, 0, 1000, 'V');
  },
  branches: (e) => [
    { id: e.id, a: e.a, b: e.k, ohm: e.open === true ? Number.POSITIVE_INFINITY : SLOPE_OHM, fromV: e.forwardV },
  ],
};
