/** Single faults: what can go wrong with one part, and what the circuit then does. */
import { CHASSIS, type Element, type Netlist, type Node } from './model.ts';
import type { Patch } from './solve.ts';

/**
 * One thing wrong. `id` is an element, or a relay's contact as `K1.no`, `K1.nc`.
 * - `open`: no longer conducts: a broken wire, a blown fuse, a dirty contact, a burnt-out lamp
 * - `short`: a wire rubbed through to the chassis at node `at`
 * - `welded`: a switch that stays made, or a relay contact that stays where it is
 * - `coil-open`: a relay's coil broken
 * - `bridged`: a diode that no longer blocks
 * - `reversed`: a battery connected the wrong way round
 */
export type Fault =
  | { kind: 'open' | 'welded' | 'coil-open' | 'bridged' | 'reversed'; id: string }
  | { kind: 'short'; id: string; at: Node };

/** Resistance of a wire that touches the chassis [ohm]. */
export const CHASSIS_SHORT_OHM = 0.001;
/** A fuse opens from this many times its rating, within about a second. */
export const BLOWS_AT_TIMES_RATING = 2;

/** `contacts` is the study of opens and chassis shorts at one end; `full` adds all the rest. */
export type FaultSet = 'contacts' | 'full';

/** Every single fault of a netlist, element by element. */
export function faultsOf(netlist: Netlist, set: FaultSet = 'full'): Fault[] {
  const full = set === 'full';
  const faults: Fault[] = [];
  const poles = new Set<Node>([CHASSIS]);
  for (const element of netlist.elements) if (element.kind === 'source') poles.add(element.p).add(element.n);
  for (const element of netlist.elements) {
    const { id, kind } = element;
    if (kind === 'wire' || kind === 'fuse' || kind === 'switch') faults.push({ kind: 'open', id });
    else if (full && (kind === 'load' || kind === 'diode' || kind === 'resistor')) faults.push({ kind: 'open', id });
    if (kind === 'relay') {
      for (const name of contactsOf(element)) faults.push({ kind: 'open', id: `${id}.${name}` });
    }
    if (!full) continue;
    if (kind === 'switch') faults.push({ kind: 'welded', id });
    if (kind === 'diode') faults.push({ kind: 'bridged', id });
    if (kind === 'source') faults.push({ kind: 'reversed', id });
    if (kind === 'relay') {
      for (const name of contactsOf(element)) faults.push({ kind: 'welded', id: `${id}.${name}` });
      faults.push({ kind: 'coil-open', id });
    }
  }
  for (const element of netlist.elements) {
    if (element.kind !== 'wire') continue;
    const ends = [element.b, element.a].filter((node) => !poles.has(node));
    for (const at of full ? new Set(ends) : ends.slice(0, 1)) faults.push({ kind: 'short', id: element.id, at });
  }
  return faults;
}

function contactsOf(relay: Extract<Element, { kind: 'relay' }>): ('no' | 'nc')[] {
  return [...(relay.no === null ? [] : (['no'] as const)), ...(relay.nc === null ? [] : (['nc'] as const))];
}

/** The fault in one line of workshop words. */
export function describeFault(netlist: Netlist, fault: Fault): string {
  const { id } = fault;
  switch (fault.kind) {
    case 'open': {
      const kind = netlist.elements.find((element) => element.id === id)?.kind;
      if (kind === 'fuse') return `${id} blown`;
      if (kind === 'load') return `${id} burnt out`;
      return kind === 'wire' ? `${id} broken` : `${id} does not make contact`;
    }
    case 'short':
      return `${id} touches the chassis at ${fault.at}`;
    case 'welded':
      return `${id} welded`;
    case 'coil-open':
      return `coil of ${id} broken`;
    case 'bridged':
      return `${id} no longer blocks`;
    case 'reversed':
      return `${id} connected the wrong way round`;
  }
}

/**
 * The netlist with a fault in it, to be solved and drawn like any other.
 * @throws RangeError when the netlist has no such part, or the part cannot fail that way.
 */
export function applyFault(netlist: Netlist, fault: Fault): Netlist {
  const [owner, contact] = ownerOf(netlist, fault.id);
  const impossible = () => new RangeError(`${netlist.id}: ${fault.id} (${owner.kind}) cannot be ${fault.kind}`);
  const replaced = (element: Element, extra: Element[] = []): Netlist => ({
    ...netlist,
    elements: [...netlist.elements.map((one) => (one === owner ? element : one)), ...extra],
  });
  if (fault.kind === 'short') {
    if (owner.kind !== 'wire') throw impossible();
    return replaced(owner, [{ kind: 'resistor', id: shortId(fault), a: fault.at, b: CHASSIS, ohm: CHASSIS_SHORT_OHM }]);
  }
  if (owner.kind === 'relay') {
    if (fault.kind === 'open' && contact !== undefined) return replaced({ ...owner, [contact]: null });
    if (fault.kind === 'welded' && contact !== undefined) {
      return replaced({ ...owner, stuck: contact === 'no' ? 'energised' : 'released' });
    }
    if (fault.kind === 'coil-open' && contact === undefined) {
      return replaced({ ...owner, coilOhm: Number.POSITIVE_INFINITY, stuck: 'released' });
    }
    throw impossible();
  }
  if (fault.kind === 'welded' && owner.kind === 'switch') return replaced({ ...owner, welded: true });
  if (fault.kind === 'reversed' && owner.kind === 'source') return replaced({ ...owner, volts: -owner.volts });
  if (owner.kind === 'diode') {
    if (fault.kind === 'open') return replaced({ ...owner, open: true });
    if (fault.kind === 'bridged') return replaced({ kind: 'resistor', id: owner.id, a: owner.a, b: owner.k, ohm: 0 });
  }
  if (fault.kind === 'open' && owner.kind !== 'diode') return replaced({ ...owner, ohm: Number.POSITIVE_INFINITY });
  throw impossible();
}

/** The same, in the solver's terms: quicker than a new netlist. `volts` are the source voltages of the state. */
export function patchOf(netlist: Netlist, fault: Fault, volts: Record<string, number> = {}): Patch {
  const { id } = fault;
  const [owner, contact] = ownerOf(netlist, id);
  switch (fault.kind) {
    case 'open':
      return { open: [id], volts };
    case 'short':
      return { short: { at: fault.at, ohm: CHASSIS_SHORT_OHM }, volts };
    case 'welded':
      return contact === undefined ? { welded: [id], volts } : { stuck: { [owner.id]: contact === 'no' }, volts };
    case 'coil-open':
      return { open: [id], stuck: { [id]: false }, volts };
    case 'bridged':
      return { bridged: [id], volts };
    case 'reversed':
      return { volts: { ...volts, [id]: -(volts[id] ?? (owner.kind === 'source' ? owner.volts : 0)) } };
  }
}

/** Id of the element that `applyFault` adds for a short. */
export function shortId(fault: Fault): string {
  return `${fault.id}.short`;
}

function ownerOf(netlist: Netlist, id: string): [Element, 'no' | 'nc' | undefined] {
  const whole = netlist.elements.find((element) => element.id === id);
  if (whole !== undefined) return [whole, undefined];
  for (const name of ['no', 'nc'] as const) {
    const relay = netlist.elements.find((element) => element.kind === 'relay' && `${element.id}.${name}` === id);
    if (relay !== undefined) return [relay, name];
  }
  throw new RangeError(`${netlist.id}: unexpected element "${id}" in a fault, expected one of the circuit's`);
}
