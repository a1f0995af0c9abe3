import type { Circuit } from '../../../../calc/circuit/model.ts';

/**
 * Four work lamps in a load space. Either door's contact pulls the relay's coil to chassis while the master switch is
 * on; a diode in each door line keeps one door from switching what else hangs on the other.
 */
export const cargoLight: Circuit = {
  id: 'cargo-light',
  title: 'Load-space work light on both doors',
  systemV: 12,
  supply: { restingV: 12.6, chargingV: 14.4, lowestV: 11.5, sourceOhm: 0.01 },
  values: {
    feedRunM: {
      label: 'Battery to relay',
      quantity: 'length',
      default: 1.5,
      min: 0.5,
      max: 8,
      step: 0.1,
      measure: 'Lay a string along the route and measure it.',
    },
    roofRunM: {
      label: 'Relay to the roof splice',
      quantity: 'length',
      default: 4,
      min: 1,
      max: 12,
      step: 0.1,
      measure: 'Measure from the relay up the pillar to the middle of the roof.',
    },
    lampW: { label: 'Power of one lamp', quantity: 'power', default: 9, min: 3, max: 20, step: 1 },
  },
  inputs: {
    master: { label: 'Master switch', kind: 'switch' },
    side: { label: 'Side door', kind: 'door', limitA: 0.3 },
    rear: { label: 'Rear door', kind: 'door', limitA: 0.3 },
  },
  parts: {
    BAT: { kind: 'battery' },
    F1: { kind: 'fuse', form: 'C', ratingA: 5 },
    S1: { kind: 'switch', input: 'master', label: 'Master switch' },
    K1: {
      kind: 'relay',
      form: 'make',
      coilOhm: 90,
      pullInV: 7.2,
      dropOutV: 1.6,
      maxA: { make: 30 },
      suppression: 'diode',
    },
    SIDE: { kind: 'sink', input: 'side', label: 'Side door contact' },
    REAR: { kind: 'sink', input: 'rear', label: 'Rear door contact' },
    D1: { kind: 'diode', forwardV: 0.7, maxA: 1 },
    D2: { kind: 'diode', forwardV: 0.7, maxA: 1 },
    ROOF: { kind: 'splice', label: 'Roof splice' },
    GND: { kind: 'splice', label: 'Return splice' },
    G1: { kind: 'chassis', label: 'Ground stud at the rear pillar' },
    L1: lamp('Front left'),
    L2: lamp('Front right'),
    L3: lamp('Rear left'),
    L4: lamp('Rear right'),
  },
  wires: {
    W1: { from: 'BAT.+', to: 'F1.1', lengthM: 0.15, areaMm2: 2.5, colour: 'RD' },
    W2: { from: 'F1.2', to: 'K1.30', lengthM: 'feedRunM', areaMm2: 2.5, colour: 'RD' },
    W3: { from: 'F1.2', to: 'S1.1', lengthM: 1, areaMm2: 0.75, colour: 'RD-YE' },
    W4: { from: 'S1.2', to: 'K1.86', lengthM: 1, areaMm2: 0.75, colour: 'YE' },
    W5: { from: 'D1.K', to: 'SIDE', lengthM: 2, areaMm2: 0.75, colour: 'BN-WH' },
    W6: { from: 'D2.K', to: 'REAR', lengthM: 4, areaMm2: 0.75, colour: 'BN-GY' },
    W7: { from: 'K1.85', to: 'D1.A', lengthM: 0.2, areaMm2: 0.75, colour: 'BN' },
    W8: { from: 'K1.85', to: 'D2.A', lengthM: 0.2, areaMm2: 0.75, colour: 'BN' },
    W9: { from: 'K1.87', to: 'ROOF', lengthM: 'roofRunM', areaMm2: 2.5, colour: 'YE-RD' },
    W10: { from: 'ROOF', to: 'L1.+', lengthM: 1, areaMm2: 0.75, colour: 'YE-RD' },
    W11: { from: 'ROOF', to: 'L2.+', lengthM: 1, areaMm2: 0.75, colour: 'YE-RD' },
    W12: { from: 'ROOF', to: 'L3.+', lengthM: 1, areaMm2: 0.75, colour: 'YE-RD' },
    W13: { from: 'ROOF', to: 'L4.+', lengthM: 1, areaMm2: 0.75, colour: 'YE-RD' },
    W14: { from: 'L1.-', to: 'GND', lengthM: 1, areaMm2: 0.75, colour: 'BK' },
    W15: { from: 'L2.-', to: 'GND', lengthM: 1, areaMm2: 0.75, colour: 'BK' },
    W16: { from: 'L3.-', to: 'GND', lengthM: 1, areaMm2: 0.75, colour: 'BK' },
    W17: { from: 'L4.-', to: 'GND', lengthM: 1, areaMm2: 0.75, colour: 'BK' },
    W18: { from: 'GND', to: 'G1', lengthM: 0.5, areaMm2: 2.5, colour: 'BK' },
  },
  intent: {
    says: 'I want light in the back whenever I open a door, and a switch to keep it dark while I sleep.',
    loads: {
      L1: { when: 'master and (side or rear)' },
      L2: { when: 'master and (side or rear)' },
      L3: { when: 'master and (side or rear)' },
      L4: { when: 'master and (side or rear)' },
    },
    keyOut: {
      L1: 'Loading is done with the key out.',
      L2: 'Loading is done with the key out.',
      L3: 'Loading is done with the key out.',
      L4: 'Loading is done with the key out.',
    },
  },
  signOffs: [],
};

function lamp(label: string): Circuit['parts'][string] {
  return {
    kind: 'lamp',
    label,
    model: 'resistive',
    ratedV: 12,
    powerW: 'lampW',
    pigtail: { areaMm2: 0.5, lengthM: 0.3 },
  };
}
