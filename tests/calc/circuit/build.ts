import type { Element, Netlist, NetlistInput, Node } from '../../../calc/circuit/model.ts';

type Of<K extends Element['kind']> = Extract<Element, { kind: K }>;

/** Parts in few words, for tests. */
export const source = (id: string, p: Node, n: Node, volts: number, ohm = 0.01): Of<'source'> => ({
  kind: 'source',
  id,
  p,
  n,
  volts,
  ohm,
});
export const resistor = (id: string, a: Node, b: Node, ohm: number): Of<'resistor'> => ({
  kind: 'resistor',
  id,
  a,
  b,
  ohm,
});
export const fuse = (id: string, a: Node, b: Node, ratingA: number): Of<'fuse'> => ({
  kind: 'fuse',
  id,
  a,
  b,
  ratingA,
  ohm: 0.08 / ratingA,
});
export const wire = (id: string, a: Node, b: Node, ohm = 0.01, limitA = 10): Of<'wire'> => ({
  kind: 'wire',
  id,
  a,
  b,
  areaMm2: 1,
  lengthM: 1,
  ohm,
  limitA,
});
export const diode = (id: string, a: Node, k: Node, forwardV = 0.7): Of<'diode'> => ({
  kind: 'diode',
  id,
  a,
  k,
  forwardV,
});
export const contact = (id: string, a: Node, b: Node, input = id, inverted = false): Of<'switch'> => ({
  kind: 'switch',
  id,
  a,
  b,
  input,
  inverted,
  ohm: 0.001,
});
export const lamp = (id: string, a: Node, b: Node, ohm = 10, extra: Partial<Of<'load'>> = {}): Of<'load'> => ({
  kind: 'load',
  id,
  a,
  b,
  ratedV: 12,
  model: 'resistive',
  ohm,
  onAboveFraction: 0.5,
  ...extra,
});
export const relay = (
  id: string,
  coilP: Node,
  coilN: Node,
  com: Node,
  no: Node | null,
  nc: Node | null = null,
  extra: Partial<Of<'relay'>> = {},
): Of<'relay'> => ({
  kind: 'relay',
  id,
  coilP,
  coilN,
  coilOhm: 90,
  pullInV: 7.2,
  dropOutV: 1.6,
  com,
  no,
  nc,
  contactOhm: 0.005,
  ...extra,
});

/** A netlist of these elements: its inputs are those that its switches name, its loads all that it has. */
export function netlist(...elements: Element[]): Netlist {
  const ids = new Set(elements.flatMap((element) => (element.kind === 'switch' ? [element.input] : [])));
  const inputs: NetlistInput[] = [...ids].map((id) => ({ id, kind: 'switch' }));
  const loads = elements.filter((element) => element.kind === 'load').map((element) => element.id);
  return { id: 'bench', elements, inputs, loads };
}
