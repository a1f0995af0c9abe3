/** Every kind of element, by name: the only place that lists them. */
import type { Element } from '../model.ts';
import { diode } from './diode.ts';
import type { ElementKind } from './element.ts';
import { fuse } from './fuse.ts';
import { load } from './load.ts';
import { relay } from './relay.ts';
import { resistor } from './resistor.ts';
import { source } from './source.ts';
import { switchContact } from './switch.ts';
import { wire } from './wire.ts';

export { type Armature, type Branch, type ElementKind, LEAST_OHM } from './element.ts';

export type Of<K extends Element['kind']> = Extract<Element, { kind: K }>;

const kinds: { [K in Element['kind']]: ElementKind<Of<K>> } = {
  source,
  wire,
  fuse,
  resistor,
  load,
  switch: switchContact,
  relay,
  diode,
};

/** What the solver needs to know of an element. Throws RangeError for a kind that is not there. */
export function kindOf(element: Element): ElementKind {
  const kind = Object.hasOwn(kinds, element.kind) ? kinds[element.kind] : undefined;
  if (kind === undefined) {
    const known = Object.keys(kinds).join(', ');
    throw new RangeError(`${element.id}: unexpected kind "${element.kind}", expected one of ${known}`);
  }
  return kind as ElementKind;
}
