import { UNIT_OPTIONS, type UnitChoice } from '../unit-choice.ts';

/**
 * What outlives a visit: changed numbers in the link and on the device, the choice of units on the device. Only changes
 * are written, so a link without them is the page as its author left it, and a link with any is a whole state: what the
 * receiver has on his own device is then left alone.
 */

/** Numbers and choices of a page that may be kept, by name. */
export type Kept = Record<string, number | string>;

const VERSION = 'loomleaf:1';
export const valuesKey = (pathname: string): string => `${VERSION}:values:${pathname}`;
export const UNITS_KEY = `${VERSION}:units`;

/** `#feedRunM=8&load=motor`; empty where nothing is changed. */
export function toHash(kept: Kept): string {
  const pairs = Object.entries(kept).map(([name, value]) => `${name}=${encodeURIComponent(String(value))}`);
  return pairs.length === 0 ? '' : `#${pairs.join('&')}`;
}

/** The pairs of a fragment; null where it is none of ours (a heading's anchor). Values are checked by who uses them. */
export function fromHash(hash: string): Record<string, string> | null {
  if (!hash.includes('=')) return null;
  const pairs: Record<string, string> = {};
  for (const pair of hash.replace(/^#/, '').split('&')) {
    const at = pair.indexOf('=');
    if (at < 1) continue;
    try {
      pairs[pair.slice(0, at)] = decodeURIComponent(pair.slice(at + 1));
    } catch {
      // a broken escape: that pair is no entry of ours
    }
  }
  return pairs;
}

/** Storage may be full, forbidden or absent; the page then works without it. */
export function readKept(key: string): Record<string, unknown> | null {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    return typeof stored === 'object' && stored !== null && !Array.isArray(stored)
      ? (stored as Record<string, unknown>)
      : null;
  } catch {
    return null;
  }
}

export function writeKept(key: string, kept: object): void {
  try {
    if (Object.keys(kept).length === 0) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(kept));
  } catch {
    // nothing to do: the link still carries the state
  }
}

/** A stored choice of units, over the workshop's; whatever is not a choice is dropped. */
export function unitsFrom(stored: Record<string, unknown> | null, shop: UnitChoice): UnitChoice {
  const units: Record<string, string> = { ...shop };
  for (const [choice, options] of Object.entries(UNIT_OPTIONS)) {
    const wanted = stored?.[choice];
    if (typeof wanted === 'string' && (options as readonly string[]).includes(wanted)) units[choice] = wanted;
  }
  return units as unknown as UnitChoice;
}
