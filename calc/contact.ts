import { oneOf, positive, within } from './guard.ts';
import { CONTACT_SHARES, INRUSH_MULTIPLES, LOAD_KINDS, type LoadKind } from './tables/contacts.ts';
import { LOW_ENERGY_CONTACT, TABLE_11_4 } from './tables/faa.ts';
import { type Source, sourceOf } from './tables/rows.ts';

/** Up to this voltage a system counts as 12 V; above it, to `HIGHEST_V`, as the harder 28 V [V]. */
const LOW_SYSTEM_V = 16;
const HIGHEST_V = 32;

/**
 * Rating a switch needs for a load: the factor multiplies the load, it does not divide the contact.
 *
 * @param options `systemV` above 0 to 32 (up to 16 counts as 12 V, above as 28 V); `loadType` lamp, inductive (relay or solenoid), resistive or motor; `currentA` steady current 0 to 1000.
 * @returns `contactA`, `factor`, `source`; null for a kind of load the table does not list.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: contact = factor × steady current.
 * @source FAA AC 43.13-1B Table 11-4.
 * @example switchRating({ systemV: 12, loadType: 'lamp', currentA: 4 })?.contactA // 20
 */
export function switchRating({
  systemV,
  loadType,
  currentA,
  table = TABLE_11_4,
}: {
  systemV: number;
  loadType: string;
  currentA: number;
  table?: typeof TABLE_11_4;
}): { contactA: number; factor: number; source: Source } | null {
  const where = 'switchRating';
  positive(where, 'systemV', systemV, 'V');
  within(where, 'systemV', systemV, 0, HIGHEST_V, 'V');
  within(where, 'currentA', currentA, 0, 1000, 'A');
  const column = systemV <= LOW_SYSTEM_V ? 12 : 28;
  const row = table.find((each) => each.systemV === column && each.loadType === loadType);
  if (row === undefined) return null;
  return { contactA: row.factor * currentA, factor: row.factor, source: sourceOf('switch rating factor', row) };
}

/**
 * First current of a load when it is switched on, as a multiple of its steady current.
 *
 * @param options `loadType` incandescent lamp, motor or LED strip with resistors.
 * @returns `multiple`, the range `low` to `high` that sources span, `source`; null for another kind. Loads with input capacitors are not in it: measure them.
 * @throws nothing: an unlisted load is null.
 * @source switch maker's application page; LED strip: common practice, no source.
 * @example inrushMultiple({ loadType: 'motor' })?.multiple // 6
 */
export function inrushMultiple({
  loadType,
}: {
  loadType: string;
}): { multiple: number; low: number; high: number; source: Source } | null {
  const row = INRUSH_MULTIPLES.find((each) => each.loadType === loadType);
  if (row === undefined) return null;
  return { multiple: row.multiple, low: row.low, high: row.high, source: sourceOf('inrush', row) };
}

/**
 * Make-contact rating the workshop asks for a load: its own rule, simpler than the table of `switchRating`.
 *
 * @param options `loadA` switched current 0 to 1000; `loadKind` resistive, LED driver, motor or filament.
 * @returns `contactA` needed, `share` of its rating the contact may switch, `source`.
 * @throws TypeError or RangeError when a value is out of range or the kind unknown.
 * Formula: contact = load / share.
 * @source common practice, no source.
 * @example contactNeeded({ loadA: 8, loadKind: 'motor' }).contactA // 20
 */
export function contactNeeded({ loadA, loadKind }: { loadA: number; loadKind: LoadKind }): {
  contactA: number;
  share: number;
  source: Source;
} {
  within('contactNeeded', 'loadA', loadA, 0, 1000, 'A');
  oneOf('contactNeeded', 'loadKind', loadKind, LOAD_KINDS);
  const row = CONTACT_SHARES.find((each) => each.loadKind === loadKind)!;
  return { contactA: loadA / row.share, share: row.share, source: sourceOf('share of a contact', row) };
}

/**
 * May a plain silver contact switch this little? Below either limit its film is never broken through: take a contact made
 * for low energy.
 *
 * @param options `volts` 0 to 100, `currentA` 0 to 1000.
 * @returns `serves`, `minV`, `minA`, `source`.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: volts ≥ 8 and amperes ≥ 0.5.
 * @source FAA AC 43.13-1B par. 11-53g.
 * @example silverContactServes({ volts: 12, currentA: 0.1 }).serves // false
 */
export function silverContactServes({ volts, currentA }: { volts: number; currentA: number }): {
  serves: boolean;
  minV: number;
  minA: number;
  source: Source;
} {
  within('silverContactServes', 'volts', volts, 0, 100, 'V');
  within('silverContactServes', 'currentA', currentA, 0, 1000, 'A');
  const row = LOW_ENERGY_CONTACT[0]!;
  return {
    serves: volts >= row.minV && currentA >= row.minA,
    minV: row.minV,
    minA: row.minA,
    source: sourceOf('least load of a silver contact', row),
  };
}
