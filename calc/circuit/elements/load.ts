import { positive, within } from '../../guard.ts';
import { type Branch, checkOhm, type ElementKind } from './element.ts';
import type { Of } from './index.ts';

type Load = Of<'load'>;

/**
 * Share of its rated voltage below which an electronic load stops regulating and draws like a resistor, so that its
 * current falls to nothing with the voltage and stays continuous. Common practice, no source: converters shut down
 * somewhere between a half and three quarters of their rated voltage.
 */
export const REGULATES_FROM_FRACTION = 0.5;

/** Below this an electronic load counts as reversed [V]: not at 0, where a rounding error would decide. */
const REVERSED_V = -1e-9;

/**
 * What the customer wants on: a resistor, an LED strip (nothing below the drop of one group, a resistor above), or an
 * electronic load of constant power or constant current. The electronic ones carry nothing backwards.
 */
export const load: ElementKind<Load> = {
  terminals: (e) => ({ '+': e.a, '-': e.b }),
  check(e) {
    positive(e.id, 'ratedV', e.ratedV, 'V');
    within(e.id, 'onAboveFraction', e.onAboveFraction, 0, 2);
    checkOhm(e.id, 'ohm', e.ohm);
    if (e.model === 'strip') within(e.id, 'groupV', e.groupV, 0, 1000, 'V');
    if (e.model === 'constant-power') within(e.id, 'powerW', e.powerW, 0, 1e6, 'W');
    if (e.model === 'constant-current') within(e.id, 'currentA', e.currentA, 0, 1e5, 'A');
  },
  branches(e) {
    const ends = { id: e.id, a: e.a, b: e.b };
    // A burnt-out load has infinite resistance whatever its model.
    if (e.model === 'resistive' || e.ohm === Number.POSITIVE_INFINITY) return [{ ...ends, ohm: e.ohm }];
    if (e.model === 'strip') return [{ ...ends, ohm: e.ohm, fromV: e.groupV! }];
    return [{ ...ends, ohm: 1, chordS: chord(e) }];
  },
  onFromV: (e) => e.onAboveFraction * e.ratedV,
};

function chord(e: Load): NonNullable<Branch['chordS']> {
  const kneeV = REGULATES_FROM_FRACTION * e.ratedV;
  const powerW = e.powerW ?? 0;
  const currentA = e.currentA ?? 0;
  return e.model === 'constant-power'
    ? (v) => (v < REVERSED_V ? 0 : powerW / Math.max(v, kneeV) ** 2)
    : (v) => (v < REVERSED_V ? 0 : currentA / Math.max(v, kneeV));
}
