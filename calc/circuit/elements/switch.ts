import { checkOhm, type ElementKind } from './element.ts';
import type { Of } from './index.ts';

/** A contact moved by an input: a resistance while made, nothing while broken. A welded one is always made. */
export const switchContact: ElementKind<Of<'switch'>> = {
  terminals: (e) => ({ '1': e.a, '2': e.b }),
  check: (e) => checkOhm(e.id, 'ohm', e.ohm),
  branches: (e) => [
    {
      id: e.id,
      a: e.a,
      b: e.b,
      ohm: e.ohm,
      ...(e.welded === true ? {} : { closedBy: { input: e.input, when: !e.inverted } }),
    },
  ],
};
