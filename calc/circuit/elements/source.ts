import { finite } from '../../guard.ts';
import { checkOhm, type ElementKind } from './element.ts';
import type { Of } from './index.ts';

/** A battery or generator: a voltage behind its internal resistance. A negative voltage is a reversed battery. */
export const source: ElementKind<Of<'source'>> = {
  terminals: (e) => ({ '+': e.p, '-': e.n }),
  check(e) {
    finite(e.id, 'volts', e.volts);
    checkOhm(e.id, 'ohm', e.ohm);
    if (e.p === e.n) throw new RangeError(`${e.id}: a loop of ideal sources: both poles are on node ${e.p}`);
  },
  branches: (e) => [{ id: e.id, a: e.p, b: e.n, ohm: e.ohm, emfV: e.volts }],
};
