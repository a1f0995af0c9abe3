import type { Circuit, Part, Wire } from '../../../../calc/circuit/model.ts';

/**
 * A made-up circuit of any size for measurements: relays on a bus, each with its own fuse, coil switch, diode pair and
 * lamps. `branches` of five parts each; the first `inputs` inputs are shared round.
 */
export function bigCircuit({ branches, inputs }: { branches: number; inputs: number }): Circuit {
  const parts: Record<string, Part> = { BAT: { kind: 'battery' }, BUS: { kind: 'splice' }, G1: { kind: 'chassis' } };
  const wires: Record<string, Wire> = {};
  const loads: Circuit['intent']['loads'] = {};
  const names = Array.from({ length: inputs }, (_, i) => `in${i}`);
  let count = 0;
  const wire = (from: string, to: string, lengthM: number): void => {
    count++;
    wires[`W${count}`] = { from, to, lengthM, areaMm2: 'auto' };
  };
  parts['F0'] = { kind: 'fuse', form: 'E', ratingA: 60 };
  wires['W0'] = { from: 'BAT.+', to: 'F0.1', lengthM: 0.15, areaMm2: 16 };
  wires['WB'] = { from: 'F0.2', to: 'BUS', lengthM: 1, areaMm2: 16 };
  for (let i = 0; i < branches; i++) {
    const input = names[i % inputs]!;
    parts[`F${i + 1}`] = { kind: 'fuse', form: 'C', ratingA: 'auto' };
    parts[`S${i + 1}`] = { kind: 'switch', input };
    parts[`K${i + 1}`] = { kind: 'relay', form: 'make', coilOhm: 90, maxA: { make: 30 }, suppression: 'diode' };
    parts[`D${i + 1}`] = { kind: 'diode' };
    parts[`L${i + 1}`] = { kind: 'lamp', model: 'resistive', ratedV: 12, powerW: 20 };
    wire('BUS', `F${i + 1}.1`, 0.3);
    wire(`F${i + 1}.2`, `K${i + 1}.30`, 1);
    wire(`F${i + 1}.2`, `S${i + 1}.1`, 1);
    wire(`S${i + 1}.2`, `D${i + 1}.A`, 0.5);
    wire(`D${i + 1}.K`, `K${i + 1}.86`, 0.5);
    wire(`K${i + 1}.85`, 'G1', 0.3);
    wire(`K${i + 1}.87`, `L${i + 1}.+`, 3);
    wire(`L${i + 1}.-`, 'G1', 1);
    loads[`L${i + 1}`] = { when: input };
  }
  return {
    id: 'big',
    title: 'Relays on a bus',
    systemV: 12,
    supply: { restingV: 12.6, chargingV: 14.4, sourceOhm: 0.01 },
    values: {},
    inputs: Object.fromEntries(names.map((name) => [name, { label: `Switch ${name}`, kind: 'switch' as const }])),
    parts,
    wires,
    intent: {
      says: 'Many lamps on many switches.',
      loads,
      keyOut: Object.fromEntries(Object.keys(loads).map((load) => [load, 'Measured only.'])),
    },
    signOffs: [],
  };
}
