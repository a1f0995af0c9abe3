import { positive } from '../../guard.ts';
import { checkOhm, type ElementKind } from './element.ts';
import type { Of } from './index.ts';

/** A fuse that has not blown: its cold resistance. A blown one has infinite resistance. */
export const fuse: ElementKind<Of<'fuse'>> = {
  terminals: (e) => ({ '1': e.a, '2': e.b }),
  check(e) {
    positive(e.id, 'ratingA', e.ratingA, 'A');
    checkOhm(e.id, 'ohm', e.ohm);
  },
  branches: (e) => [{ id: e.id, a: e.a, b: e.b, ohm: e.ohm }],
};
