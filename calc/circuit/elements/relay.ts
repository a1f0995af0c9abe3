import { positive, within } from '../../guard.ts';
import { type Branch, checkOhm, type ElementKind } from './element.ts';
import type { Of } from './index.ts';

/** Coil a resistor, contacts moved by it. */
export const relay: ElementKind<Of<'relay'>> = {
  terminals(e) {
    return {
      '86': e.coilP,
      '85': e.coilN,
      '30': e.com,
      ...(e.no === null ? {} : { '87': e.no }),
      ...(e.nc === null ? {} : { '87a': e.nc }),
    };
  },
  check(e) {
    checkOhm(e.id, 'coilOhm', e.coilOhm);
    checkOhm(e.id, 'contactOhm', e.contactOhm);
    positive(e.id, 'pullInV', e.pullInV, 'V');
    within(e.id, 'dropOutV', e.dropOutV, 0, e.pullInV, 'V');
  },
  branches(e) {
    const branches: Branch[] = [{ id: e.id, a: e.coilP, b: e.coilN, ohm: e.coilOhm }];
    for (const [name, node] of [
      ['no', e.no],
      ['nc', e.nc],
    ] as const) {
      if (node === null) continue;
      const closedBy = { relay: e.id, when: name === 'no' };
      branches.push({ id: `${e.id}.${name}`, a: e.com, b: node, ohm: e.contactOhm, closedBy });
    }
    return branches;
  },
  /** Pulls in from `pullInV`; once in, holds down to `dropOutV`. The coil does not mind which way the current runs. */
  armature: (e) => ({
    coilId: e.id,
    rest: e.stuck === 'energised',
    stuck: e.stuck !== undefined,
    next: (voltageV, energised) => Math.abs(voltageV) >= (energised ? e.dropOutV : e.pullInV),
  }),
};
