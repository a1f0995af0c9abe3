import { coilCurrent } from './coil.ts';
import { contactNeeded } from './contact.ts';
import { within } from './guard.ts';
import type { LoadKind } from './tables/contacts.ts';
import type { Source } from './tables/rows.ts';
import { atMost, type Verdict } from './verdict.ts';

/**
 * Which contacts of a changeover relay are closed.
 *
 * @param options `coilOn` whether the coil carries its current.
 * @returns `closed30To87`, `closed30To87a`.
 * @throws TypeError when `coilOn` is not true or false.
 * @source DIN 72552 / ISO 7588, as workshop articles give it.
 * @example relayContacts({ coilOn: false }).closed30To87a // true
 */
export function relayContacts({ coilOn }: { coilOn: boolean }): { closed30To87: boolean; closed30To87a: boolean } {
  if (typeof coilOn !== 'boolean') {
    throw new TypeError(`relayContacts: unexpected coilOn ${String(coilOn)}, expected true or false`);
  }
  return { closed30To87: coilOn, closed30To87a: !coilOn };
}

/**
 * Will this relay switch this load, and can this output drive it?
 *
 * @param options `loadA` switched current 0.001 to 1000; `loadKind` resistive, LED driver, motor or filament; `contactA` make-contact (87) rating at this voltage 0.1 to 1000; `coilOhm` 1 to 10 000; `maxV` above 0 to 60; `outputA` the driving output may give 0 to 10 (0: unknown, and the check stops).
 * @returns `contactNeededA`, `contactVerdict`, `coilA`, `coilW`, `outputVerdict`, `sources`.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: contact needed = load / share of its kind; coil A = V/R; output passes if it gives at least that.
 * @source terminal numbers DIN 72552; shares: common practice, no source.
 * @example relayChoice({ loadA: 8, loadKind: 'motor', contactA: 30, coilOhm: 90, maxV: 14.4, outputA: 0.1 }).outputVerdict // stop
 */
export function relayChoice({
  loadA,
  loadKind,
  contactA,
  coilOhm,
  maxV,
  outputA,
}: {
  loadA: number;
  loadKind: LoadKind;
  contactA: number;
  coilOhm: number;
  maxV: number;
  outputA: number;
}): {
  contactNeededA: number;
  contactVerdict: Verdict;
  coilA: number;
  coilW: number;
  outputVerdict: Verdict;
  sources: Source[];
} {
  const where = 'relayChoice';
  within(where, 'loadA', loadA, 0.001, 1000, 'A');
  within(where, 'contactA', contactA, 0.1, 1000, 'A');
  within(where, 'coilOhm', coilOhm, 1, 10_000, 'ohm');
  within(where, 'outputA', outputA, 0, 10, 'A');
  const needed = contactNeeded({ loadA, loadKind });
  const { coilA, coilW } = coilCurrent({ systemV: maxV, coilOhm });
  return {
    contactNeededA: needed.contactA,
    contactVerdict: atMost(needed.contactA, contactA) ? 'pass' : 'stop',
    coilA,
    coilW,
    outputVerdict: atMost(coilA, outputA) ? 'pass' : 'stop',
    sources: [needed.source],
  };
}
