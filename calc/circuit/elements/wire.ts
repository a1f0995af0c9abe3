import { positive, within } from '../../guard.ts';
import { checkOhm, type ElementKind } from './element.ts';
import type { Of } from './index.ts';

/** A conductor: its copper resistance, whichever way the current runs. */
export const wire: ElementKind<Of<'wire'>> = {
  terminals: (e) => ({ a: e.a, b: e.b }),
  check(e) {
    positive(e.id, 'areaMm2', e.areaMm2, 'mm2');
    within(e.id, 'lengthM', e.lengthM, 0, 10_000, 'm');
    checkOhm(e.id, 'ohm', e.ohm);
  },
  branches: (e) => [{ id: e.id, a: e.a, b: e.b, ohm: e.ohm }],
};
