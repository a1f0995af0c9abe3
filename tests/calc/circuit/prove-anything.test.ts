import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type Circuit,
  circuitProblems,
  prove,
  splitTerminalRef,
  terminalsOf,
  UnprovableError,
} from '../../../calc/index.ts';
import { cargoLight } from './examples/cargo-light.ts';

const terminals = Object.entries(cargoLight.parts).flatMap(([id, part]) =>
  terminalsOf(part).map(({ name }) => (name === '' ? id : `${id}.${name}`)),
);
const wires = Object.keys(cargoLight.wires);
const parts = Object.keys(cargoLight.parts);

/** Ways in which a circuit file goes wrong under a tired author's hands. */
const slip = fc.oneof(
  fc.record({ kind: fc.constant('move' as const), wire: fc.constantFrom(...wires), to: fc.constantFrom(...terminals) }),
  fc.record({ kind: fc.constant('drop' as const), wire: fc.constantFrom(...wires) }),
  fc.record({ kind: fc.constant('lose' as const), part: fc.constantFrom(...parts) }),
  fc.record({ kind: fc.constant('join' as const), part: fc.constantFrom(...parts), to: fc.constantFrom(...terminals) }),
  fc.record({ kind: fc.constant('open' as const), wire: fc.constantFrom(...wires) }),
  fc.record({
    kind: fc.constant('bridge' as const),
    from: fc.constantFrom(...terminals),
    to: fc.constantFrom(...terminals),
    lengthM: fc.constantFrom(0.01, 1, 900),
  }),
);

type Slip = typeof slip extends fc.Arbitrary<infer Made> ? Made : never;

function apply(slips: Slip[]): Circuit {
  const circuit = structuredClone(cargoLight);
  for (const [at, one] of slips.entries()) {
    if (one.kind === 'move' && circuit.wires[one.wire]) circuit.wires[one.wire]!.to = one.to;
    else if (one.kind === 'drop') delete circuit.wires[one.wire];
    else if (one.kind === 'open' && circuit.wires[one.wire]) circuit.wires[one.wire]!.areaMm2 = 'auto';
    else if (one.kind === 'lose') delete circuit.parts[one.part];
    else if (one.kind === 'join' && circuit.parts[one.part]) {
      const terminal = terminalsOf(circuit.parts[one.part]!)[0]!;
      circuit.parts[one.part]!.join = { [terminal.name]: one.to };
    } else if (one.kind === 'bridge') {
      circuit.wires[`X${at}`] = { from: one.from, to: one.to, lengthM: one.lengthM, areaMm2: 1 };
    }
  }
  return circuit;
}

test('whatever is done to a circuit, it is proven or its problems are named; nothing crashes, nothing hangs', () => {
  let proven = 0;
  fc.assert(
    fc.property(fc.array(slip, { minLength: 1, maxLength: 4 }), (slips) => {
      const circuit = apply(slips);
      const problems = circuitProblems(circuit);
      for (const { path, message } of problems) {
        expect(message.length).toBeGreaterThan(10);
        expect(path.length).toBeGreaterThan(0);
      }
      if (problems.length > 0) {
        expect(() => prove(circuit)).toThrow(UnprovableError);
        return;
      }
      proven++;
      const proof = prove(circuit, {}, { faults: false });
      for (const finding of proof.findings) {
        expect(finding.message).not.toMatch(/NaN|undefined|Infinity/);
        for (const id of finding.parts.map((part) => splitTerminalRef(part).part)) {
          expect([...Object.keys(circuit.parts), ...Object.keys(circuit.wires)]).toContain(id);
        }
      }
      // What a person sees wrong in the table, a finding says.
      if (proof.differences.length > 0) expect(proof.findings.length).toBeGreaterThan(0);
    }),
    { seed: 11, numRuns: 250 },
  );
  expect(proven).toBeGreaterThan(40);
});
