/**
 * What the solver needs to know of a part: its terminals, its branches, and the rules of its moving contact if it has one.
 *
 * A branch is a two-ended share of the equations. The solver knows branches only, never kinds of parts: a new kind of
 * part is a file in this folder and a line in `index.ts`.
 */
import type { Element, Node } from '../model.ts';

export interface Branch {
  /** The element's id; contacts of a relay as `K1.no`, `K1.nc`. */
  id: string;
  a: Node;
  b: Node;
  /** Series resistance; 0 counts as `LEAST_OHM`, Infinity as an open part. */
  ohm: number;
  /** A source inside that lifts `a` above `b` by so much; its current is counted as delivered. */
  emfV?: number;
  /** Carries nothing below this voltage and (v - fromV) / ohm above: diode, strip. */
  fromV?: number;
  /** Conductance [S] at a given voltage, where it is not constant; must not grow faster than the current allows. */
  chordS?: (voltageV: number) => number;
  /** Conducts only while this input or relay is in this position. */
  closedBy?: { input: string; when: boolean } | { relay: string; when: boolean };
}

/** A contact's moving side. */
export interface Armature {
  /** Id of the branch that pulls it. */
  coilId: string;
  /** Where it rests before anything is connected; a stuck one never leaves it. */
  rest: boolean;
  stuck: boolean;
  /** Position after the coil has seen |voltageV| in the present position. */
  next(voltageV: number, energised: boolean): boolean;
}

export interface ElementKind<E extends Element = Element> {
  /** Terminal name (DIN 72552 where one is set down) to node. */
  terminals(element: E): Record<string, Node>;
  /** Throws TypeError or RangeError when the element cannot be meant. */
  check(element: E): void;
  branches(element: E): Branch[];
  armature?(element: E): Armature;
  /** |V| from which the element counts as on; only what the customer can see on or off has it. */
  onFromV?(element: E): number;
}

/**
 * What a resistance of 0 is taken as [ohm]: a tenth of the best crimp, 1 mV at 100 A.
 * Not smaller, because the rounding of 14 V over it must stay below 1 nA.
 */
export const LEAST_OHM = 1e-5;

/** Resistance that may be 0 or, for an open part, Infinity. */
export function checkOhm(id: string, name: string, ohm: number): void {
  if (typeof ohm !== 'number' || Number.isNaN(ohm)) {
    throw new TypeError(`${id}: unexpected ${name} ${String(ohm)}, expected a resistance in ohm`);
  }
  if (ohm < 0) throw new RangeError(`${id}: unexpected ${name} ${ohm} ohm, expected 0 or more`);
}
