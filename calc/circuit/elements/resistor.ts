import { checkOhm, type ElementKind } from './element.ts';
import type { Of } from './index.ts';

export const resistor: ElementKind<Of<'resistor'>> = {
  terminals: (e) => ({ '1': e.a, '2': e.b }),
  check: (e) => checkOhm(e.id, 'ohm', e.ohm),
  branches: (e) => [{ id: e.id, a: e.a, b: e.b, ohm: e.ohm }],
};
