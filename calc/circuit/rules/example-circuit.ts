import type { Circuit } from '../model.ts';

/** A fuse, a switch and a lamp: nothing to complain of. Rules that need a circuit as written change it for their examples. */
const SOUND: Circuit = {
  id: 'example',
  title: 'A lamp on a switch',
  systemV: 12,
  supply: { restingV: 12.6, chargingV: 14.4, sourceOhm: 0.01 },
  values: {},
  inputs: { master: { label: 'Master switch', kind: 'switch' } },
  parts: {
    BAT: { kind: 'battery' },
    F1: { kind: 'fuse', form: 'C', ratingA: 5 },
    S1: { kind: 'switch', input: 'master' },
    L1: { kind: 'load', model: 'resistive', ratedV: 12, powerW: 20 },
    G1: { kind: 'chassis' },
  },
  wires: {
    W1: { from: 'BAT.+', to: 'F1.1', lengthM: 0.15, areaMm2: 2.5 },
    W2: { from: 'F1.2', to: 'S1.1', lengthM: 1, areaMm2: 1.5 },
    W3: { from: 'S1.2', to: 'L1.+', lengthM: 2, areaMm2: 1.5 },
    W4: { from: 'L1.-', to: 'G1', lengthM: 1, areaMm2: 1.5 },
  },
  intent: {
    says: 'A lamp that I can switch.',
    loads: { L1: { when: 'master' } },
    keyOut: { L1: 'Used with the key out.' },
  },
  signOffs: [],
};

/** Parts and wires that put a relay between switch and lamp. */
export const WITH_RELAY: Pick<Circuit, 'parts' | 'wires'> = {
  parts: {
    K1: { kind: 'relay', form: 'make', coilOhm: 90, maxA: { make: 30 }, suppression: 'diode' },
  },
  wires: {
    W3: { from: 'S1.2', to: 'K1.86', lengthM: 1, areaMm2: 1.5 },
    W5: { from: 'F1.2', to: 'K1.30', lengthM: 1, areaMm2: 1.5 },
    W6: { from: 'K1.87', to: 'L1.+', lengthM: 2, areaMm2: 1.5 },
    W7: { from: 'K1.85', to: 'G1', lengthM: 0.3, areaMm2: 1.5 },
  },
};

type Change = Partial<Circuit>;

/** The sound circuit with changes: maps are merged by key, the rest is replaced; later changes win. */
export function exampleCircuit(...changes: Change[]): Circuit {
  const circuit: Circuit = {
    ...SOUND,
    inputs: { ...SOUND.inputs },
    parts: { ...SOUND.parts },
    wires: { ...SOUND.wires },
  };
  for (const { inputs, parts, wires, intent, ...rest } of changes) {
    Object.assign(circuit, rest);
    Object.assign(circuit.inputs, inputs);
    Object.assign(circuit.parts, parts);
    Object.assign(circuit.wires, wires);
    circuit.intent = { ...circuit.intent, ...intent };
  }
  return circuit;
}
