import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Circuit, fuseFor, gaugeFor, prove, sizeCircuit } from '../../../calc/index.ts';
import { bigCircuit } from './examples/big.ts';
import { cargoLight } from './examples/cargo-light.ts';

/** The cargo light with nothing decided. */
function open(change: (circuit: Circuit) => void = () => {}): Circuit {
  const circuit = structuredClone(cargoLight);
  for (const part of Object.values(circuit.parts)) if (part.kind === 'fuse') part.ratingA = 'auto';
  for (const wire of Object.values(circuit.wires)) wire.areaMm2 = 'auto';
  change(circuit);
  return circuit;
}

/** The same with lamps that draw more the less voltage reaches them. */
const electronic = (): Circuit =>
  open((circuit) => {
    for (const id of ['L1', 'L2', 'L3', 'L4']) {
      const lamp = circuit.parts[id]!;
      if (lamp.kind === 'lamp') lamp.model = 'constant-power';
    }
  });

describe('sizes of a circuit with nothing decided', () => {
  const { sizes, choices, problems } = sizeCircuit(open());

  test('are found', () => {
    expect(problems).toEqual([]);
    expect(sizes).toMatchInlineSnapshot(`
      {
        "areaMm2": {
          "W1": 4,
          "W10": 0.75,
          "W11": 0.75,
          "W12": 0.75,
          "W13": 0.75,
          "W14": 0.75,
          "W15": 0.75,
          "W16": 0.75,
          "W17": 0.75,
          "W18": 4,
          "W2": 4,
          "W3": 0.5,
          "W4": 0.5,
          "W5": 0.5,
          "W6": 0.5,
          "W7": 0.5,
          "W8": 0.5,
          "W9": 4,
        },
        "ratingA": {
          "F1": 5,
        },
      }
    `);
  });

  test('are what the calculators answer to the question that stands beside each', () => {
    for (const [id, choice] of Object.entries(choices)) {
      if (choice.kind === 'fuse') {
        expect(fuseFor(choice.question), id).toMatchObject({ found: true, ratingA: choice.ratingA });
      } else {
        expect(gaugeFor(choice.question), id).toMatchObject({ found: true, areaMm2: choice.areaMm2 });
      }
    }
  });

  test('leave every load within its drop and every rule silent', () => {
    const proof = prove(open());
    expect(proof.findings).toEqual([]);
    for (const lamp of ['L1', 'L2', 'L3', 'L4']) expect(proof.figures[lamp]!['dropFraction']).toBeLessThan(0.03);
  });

  test('come out the same every time', () => {
    expect(sizeCircuit(open()).sizes).toEqual(sizes);
  });
});

const run = fc.record({
  feedRunM: fc.double({ min: 0.5, max: 8, noNaN: true }),
  roofRunM: fc.double({ min: 1, max: 12, noNaN: true }),
  lampW: fc.double({ min: 3, max: 20, noNaN: true }),
});

test('hardly a wire is thicker than what stands beside it asks for', () => {
  let wires = 0;
  const thicker: number[] = [];
  for (const circuit of [open(), electronic()]) {
    fc.assert(
      fc.property(run, (values) => {
        for (const choice of Object.values(sizeCircuit(circuit, values).choices)) {
          if (choice.kind === 'fuse') continue;
          wires++;
          const answer = gaugeFor(choice.question);
          if (answer.found && answer.areaMm2 !== choice.areaMm2) thicker.push(choice.areaMm2 / answer.areaMm2);
        }
      }),
      { seed: 11, numRuns: 100 },
    );
  }
  // Sizes only grow from round to round: where a fuse grows late, a wire may have been made for the smaller one.
  expect(thicker.length).toBeLessThan(wires / 200);
  for (const times of thicker) expect(times).toBeGreaterThan(1);
});

test('whatever the job values, sizes are proven or refused, never wrong', () => {
  fc.assert(
    fc.property(run, (values) => {
      const proof = prove(open(), values, { faults: false });
      const refused = proof.findings.filter((each) => each.rule === 'no-fuse-fits' || each.rule === 'no-wire-fits');
      if (refused.length === 0) expect(proof.findings).toEqual([]);
      // The pigtails stand behind 5 A at most: more lamp than that has no answer.
      const { currentA } = proof.choices['F1']!.question;
      expect(refused.length > 0).toBe(currentA > 4);
      expect(proof.figures['F1']!['currentA']!).toBeLessThanOrEqual(currentA * (1 + 1e-9));
    }),
    { seed: 7, numRuns: 60 },
  );
});

test('thicker wire for a longer run, larger fuse for more load', () => {
  const short = sizeCircuit(open(), { roofRunM: 2 }).sizes;
  const long = sizeCircuit(open(), { roofRunM: 12 }).sizes;
  expect(long.areaMm2['W9']!).toBeGreaterThan(short.areaMm2['W9']!);
  expect(sizeCircuit(open(), { lampW: 3 }).sizes.ratingA['F1']!).toBeLessThan(short.ratingA['F1']!);
});

test('a fixed thin wire caps the fuse, and the refusal names it', () => {
  const { problems, sizes } = sizeCircuit(open(), { lampW: 16 });
  expect(problems).toEqual([
    {
      rule: 'no-fuse-fits',
      part: 'F1',
      message: 'No fuse fits at F1. The load needs a 10 A fuse, but pigtail of L1 may stand behind 5 A at most.',
      cure: 'A thicker or cooler pigtail of L1, or a fuse of its own where it begins. Less load behind this fuse.',
    },
  ]);
  // Kept on the side of the wire: the fuse may blow, the pigtail does not burn.
  expect(sizes.ratingA['F1']).toBe(5);
});

test('a wire that no size serves is refused and drawn at the thickest', () => {
  const { problems, sizes } = sizeCircuit(
    open((circuit) => {
      circuit.wires['W9']!.lengthM = 900;
    }),
  );
  expect(sizes.areaMm2['W9']).toBe(50);
  expect(problems.map((each) => [each.rule, each.part])).toContainEqual(['no-wire-fits', 'W9']);
  expect(problems.find((each) => each.part === 'W9')!.message).toMatch(/^No wire fits at W9\. Even 50 mm² loses /);
});

test('an electronic load is sized at the lowest supply, where it draws most', () => {
  const { choices } = sizeCircuit(electronic());
  const fuse = choices['F1']!;
  // Four lamps of 9 W at some 11.2 V, and the coil.
  expect(fuse.question.currentA).toBeGreaterThan((4 * 9) / 11.5);
  expect(fuse.question.currentA).toBeLessThan((4 * 9) / 11.5 + 0.4);
});

test('inrush of the loads behind it raises a fuse', () => {
  const withInrush = (inrushA: number) =>
    sizeCircuit(
      open((circuit) => {
        for (const id of ['L1', 'L2', 'L3', 'L4']) Object.assign(circuit.parts[id]!, { inrushA, inrushMs: 5 });
      }),
      { lampW: 3 },
    );
  expect(withInrush(1).sizes.ratingA['F1']).toBe(2);
  expect(withInrush(3).sizes.ratingA['F1']).toBe(4);
  expect(withInrush(3).choices['F1']!.question).toMatchObject({ inrushA: 12, inrushMs: 5 });
});

test('what the workshop keeps is what it gets', () => {
  const stock = { fusesA: [5, 10, 20], wiresMm2: [1, 2.5, 6], continuousFraction: 0.8, dropFraction: 0.05 };
  const { sizes } = sizeCircuit(open(), {}, stock);
  expect(new Set(Object.values(sizes.areaMm2))).toEqual(new Set([1, 2.5]));
  expect(sizes.ratingA).toEqual({ F1: 5 });
});

test('each branch gets its own fuse, and the bus stands behind the large one', () => {
  const { sizes, problems } = sizeCircuit(bigCircuit({ branches: 6, inputs: 6 }));
  expect(problems).toEqual([]);
  expect(sizes.ratingA).toEqual({ F1: 3, F2: 3, F3: 3, F4: 3, F5: 3, F6: 3 });
  // Between the 60 A fuse and a branch fuse a short is fed through 60 A.
  expect(sizes.areaMm2['W1']).toBe(10);
  expect(sizes.areaMm2['W3']).toBe(0.5);
});
