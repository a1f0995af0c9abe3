import { describe, expect, test } from 'vitest';
import { solveState } from '../../../calc/circuit/solve.ts';
import { type Circuit, circuitProblems, netlistOf, prove, supplyVolts } from '../../../calc/index.ts';
import { bigCircuit } from './examples/big.ts';
import { cargoLight } from './examples/cargo-light.ts';

/** The cargo light with something wrong; what `spoil` does is the whole difference. */
function spoiled(spoil: (circuit: Circuit) => void): Circuit {
  const circuit = structuredClone(cargoLight);
  spoil(circuit);
  return circuit;
}
const problemsOf = (spoil: (circuit: Circuit) => void) =>
  circuitProblems(spoiled(spoil)).map(({ path, message }) => `${path.join('.')}: ${message}`);

describe('a circuit without problems', () => {
  test('has none reported', () => {
    expect(circuitProblems(cargoLight)).toEqual([]);
    expect(circuitProblems(bigCircuit({ branches: 6, inputs: 6 }))).toEqual([]);
  });

  const { netlist, origin } = netlistOf(cargoLight);
  const element = (id: string) => netlist.elements.find((each) => each.id === id);

  test('becomes elements between named points', () => {
    expect(element('BAT')).toMatchObject({ kind: 'source', p: 'BAT.+', n: '0', volts: 14.4, ohm: 0.01 });
    expect(element('W2')).toMatchObject({ kind: 'wire', a: 'F1.2', b: 'K1.30', areaMm2: 2.5, lengthM: 1.5 });
    expect(element('F1')).toMatchObject({ kind: 'fuse', a: 'F1.1', b: 'F1.2', ratingA: 5, ohm: 0.016 });
    expect(element('K1')).toMatchObject({ kind: 'relay', coilP: 'K1.86', coilN: 'K1.85', no: 'K1.87', nc: null });
    expect(element('SIDE')).toMatchObject({ kind: 'switch', a: 'SIDE', b: '0', input: 'side', inverted: false });
    expect(netlist.loads).toEqual(['L1', 'L2', 'L3', 'L4']);
    expect(netlist.inputs[1]).toEqual({ id: 'side', kind: 'door', limitA: 0.3 });
  });

  test('splices and ground points merge what meets there', () => {
    expect(element('W10')).toMatchObject({ a: 'ROOF', b: 'L1.+' });
    expect(element('W18')).toMatchObject({ a: 'GND', b: '0' });
    expect(origin.nodeOf['G1']).toBe('0');
  });

  test('a built-in clamp lies across the coil with its stripe at 86', () => {
    expect(element('K1.clamp')).toMatchObject({ kind: 'diode', a: 'K1.85', k: 'K1.86' });
    expect(origin.ownerOf['K1.clamp']).toBe('K1');
  });

  test('a pigtail is two thin wires in series with the load', () => {
    expect(element('L1.pigtail+')).toMatchObject({ kind: 'wire', a: 'L1.+', b: 'L1.lead+', areaMm2: 0.5, limitA: 5 });
    expect(element('L1.pigtail-')).toMatchObject({ kind: 'wire', a: 'L1.lead-', b: 'L1.-', lengthM: 0.3 });
    expect(element('L1')).toMatchObject({ kind: 'load', a: 'L1.lead+', b: 'L1.lead-', ohm: 16 });
    expect(origin.ownerOf['L1.pigtail-']).toBe('L1');
  });

  test('follows its job values', () => {
    const other = netlistOf(cargoLight, { feedRunM: 6, lampW: 18 }).netlist.elements;
    expect(other.find((each) => each.id === 'W2')).toMatchObject({ lengthM: 6 });
    expect(other.find((each) => each.id === 'L1')).toMatchObject({ ohm: 8 });
    expect(() => netlistOf(cargoLight, { lampW: Number.NaN })).toThrow(
      'unexpected lampW NaN, expected a finite number',
    );
  });

  test('has batteries that follow the supply', () => {
    expect(supplyVolts(cargoLight, undefined, 'resting')).toEqual({ BAT: 12.6 });
    expect(supplyVolts(cargoLight, undefined, 'lowest')).toEqual({ BAT: 11.5 });
  });

  test('needs a size for what is auto', () => {
    const open = spoiled((circuit) => {
      circuit.wires['W2']!.areaMm2 = 'auto';
    });
    expect(() => netlistOf(open)).toThrow('areaMm2 of W2 is auto and no size was given');
    expect(netlistOf(open, {}, { ratingA: {}, areaMm2: { W2: 4 } }).netlist.elements).toContainEqual(
      expect.objectContaining({ id: 'W2', areaMm2: 4 }),
    );
  });
});

describe('parts that become several elements', () => {
  const circuit = spoiled((c) => {
    c.inputs['key'] = { label: 'Key', kind: 'ignition' };
    c.parts['IGN'] = { kind: 'feed', input: 'key', fuseA: 10 };
    c.parts['X1'] = { kind: 'connector', poles: 2, contactOhm: 0.004, maxA: 8 };
    c.parts['S2'] = { kind: 'switch', input: 'master', changeover: true };
    c.parts['G2'] = { kind: 'chassis', ohm: 0.02 };
    c.parts['K2'] = { kind: 'relay', form: 'changeover', coilOhm: 90, maxA: {}, suppression: 'resistor' };
    c.parts['R1'] = { kind: 'resistor', ohm: 100, join: { '2': 'G2' } };
    c.wires['Y1'] = { from: 'IGN', to: 'S2.1', lengthM: 1, areaMm2: 1 };
    c.wires['Y2'] = { from: 'S2.2', to: 'X1.1a', lengthM: 1, areaMm2: 1 };
    c.wires['Y3'] = { from: 'X1.1b', to: 'K2.86', lengthM: 1, areaMm2: 1 };
    c.wires['Y4'] = { from: 'K2.85', to: 'G2', lengthM: 1, areaMm2: 1 };
    c.wires['Y5'] = { from: 'S2.3', to: 'K2.30', lengthM: 1, areaMm2: 1 };
    c.wires['Y6'] = { from: 'K2.87', to: 'R1.1', lengthM: 1, areaMm2: 1 };
  });
  const { netlist } = netlistOf(circuit);
  const element = (id: string) => netlist.elements.find((each) => each.id === id);

  test('are without problems', () => expect(circuitProblems(circuit)).toEqual([]));

  test('a feed is the vehicle fuse and a contact of its input', () => {
    expect(element('IGN')).toMatchObject({ kind: 'fuse', a: 'BAT.+', b: 'IGN.fused', ratingA: 10 });
    expect(element('IGN.contact')).toMatchObject({ kind: 'switch', a: 'IGN.fused', b: 'IGN', input: 'key' });
  });

  test('a changeover switch is two contacts that exclude each other', () => {
    expect(element('S2.2')).toMatchObject({ kind: 'switch', inverted: false });
    expect(element('S2.3')).toMatchObject({ kind: 'switch', inverted: true });
  });

  test('a connector is a contact per wired pole; a spare pole is nothing', () => {
    expect(element('X1.1')).toMatchObject({ kind: 'resistor', ohm: 0.004, joint: true, maxA: 8 });
    expect(element('X1.2')).toBeUndefined();
  });

  test('a ground point with resistance is one, a joined terminal sits on its target', () => {
    expect(element('G2')).toMatchObject({ kind: 'resistor', a: 'G2', b: '0', ohm: 0.02, joint: true });
    expect(element('R1')).toMatchObject({ b: 'G2' });
    expect(element('Y4')).toMatchObject({ b: 'G2' });
  });

  test('a changeover relay with an open throw has none there; a resistor clamp is seven coils', () => {
    expect(element('K2')).toMatchObject({ no: 'K2.87', nc: null, pullInV: 7.2 });
    expect(element('K2.clamp')).toMatchObject({ kind: 'resistor', ohm: 630 });
  });

  test('and solve', () => {
    const state = solveState(netlist, { key: true, master: true });
    expect(state.energised['K2']).toBe(true);
  });
});

describe('a circuit that cannot be solved says where and why', () => {
  const cases: [string, (c: Circuit) => void, string[]][] = [
    [
      'unknown terminal',
      (c) => {
        c.wires['W2']!.to = 'K1.87b';
      },
      [
        'wires.W2.to: Unknown terminal "K1.87b": relay K1 has K1.85, K1.86, K1.30, K1.87; did you mean "K1.87"?',
        'parts.K1: Terminal K1.30 (common contact) is wired to nothing',
      ],
    ],
    [
      'terminal not named',
      (c) => {
        c.wires['W1']!.to = 'F1';
      },
      [
        'wires.W1.to: Terminal of fuse F1 is not named, expected one of F1.1, F1.2',
        'parts.F1: Terminal F1.1 (source side) is wired to nothing',
      ],
    ],
    [
      'unknown part',
      (c) => {
        c.wires['W9']!.to = 'ROFF';
      },
      ['wires.W9.to: Unknown part "ROFF" in terminal "ROFF"; did you mean "ROOF"?'],
    ],
    [
      'part wired to nothing',
      (c) => {
        c.parts['D3'] = { kind: 'diode' };
      },
      ['parts.D3: Diode D3 is wired to nothing'],
    ],
    [
      'a wire from a terminal to itself',
      (c) => {
        c.wires['W20'] = { from: 'K1.87', to: 'K1.87', lengthM: 1, areaMm2: 1 };
      },
      ['wires.W20.to: Wire W20 runs from K1.87 to itself'],
    ],
    [
      'two parts with one id but for case',
      (c) => {
        c.parts['f1'] = { kind: 'fuse', form: 'C', ratingA: 5, join: { '1': 'F1.1', '2': 'S1.1' } };
      },
      ['parts.f1: Id "f1" is the same as "F1" but for case or kind, expected an id of its own'],
    ],
    [
      'negative length',
      (c) => {
        c.wires['W2']!.lengthM = -2;
      },
      ['wires.W2.lengthM: Unexpected lengthM of wire W2 -2 m, expected above 0'],
    ],
    [
      'unknown job value',
      (c) => {
        c.wires['W2']!.lengthM = 'feedRun';
      },
      [
        'wires.W2.lengthM: Unknown job value "feedRun" for lengthM of wire W2, expected one of feedRunM, roofRunM, lampW or a number; did you mean "feedRunM"?',
      ],
    ],
    [
      'job value of another kind',
      (c) => {
        c.wires['W2']!.lengthM = 'lampW';
      },
      ['wires.W2.lengthM: Job value "lampW" is a power, expected a length in m for lengthM of wire W2'],
    ],
    [
      'feed without a battery',
      (c) => {
        c.parts['IGN'] = { kind: 'feed', fuseA: 5, from: 'BTA' };
        c.wires['W20'] = { from: 'IGN', to: 'S1.1', lengthM: 1, areaMm2: 1 };
      },
      ['parts.IGN.from: Unknown battery "BTA" for feed IGN, expected one of BAT; did you mean "BAT"?'],
    ],
    [
      'unknown input',
      (c) => {
        c.parts['SIDE'] = { kind: 'sink', input: 'sid' };
      },
      [
        'parts.SIDE.input: Unknown input "sid" for sink SIDE, expected one of master, side, rear; did you mean "side"?',
        'inputs.side: Input "side" works no part, expected a feed, sink or switch with input: side',
      ],
    ],
    [
      'a source without resistance',
      (c) => {
        c.parts['BAT'] = { kind: 'battery', sourceOhm: 0 };
        c.parts['BAT2'] = { kind: 'battery', sourceOhm: 0, join: { '+': 'BAT.+' } };
      },
      [
        'parts.BAT.sourceOhm: Unexpected sourceOhm of battery BAT 0 ohm, expected above 0',
        'parts.BAT2.sourceOhm: Unexpected sourceOhm of battery BAT2 0 ohm, expected above 0',
      ],
    ],
    [
      'a battery joined across itself',
      (c) => {
        c.parts['BAT'] = { kind: 'battery', join: { '-': 'BAT.+' } };
      },
      ['parts.BAT: Battery BAT has both ends, + and -, on one point: nothing can flow through it'],
    ],
    [
      'intent that does not read, and a load without one',
      (c) => {
        c.intent.loads = { L1: { when: 'master or door' }, L2: { when: 'always' }, L3: { when: 'never' } };
      },
      [
        'intent.loads: No intent for L4, expected a line that says when the customer wants it on',
        'intent.loads.L1.when: "master or door": Unexpected "door" at character 11, expected an input (master, side, rear)',
      ],
    ],
    [
      'a load with power and current',
      (c) => {
        c.parts['L1'] = { kind: 'lamp', model: 'resistive', ratedV: 12, powerW: 5, currentA: 1 };
      },
      ['parts.L1: L1 has both powerW and currentA, expected one of them'],
    ],
    [
      'a sign-off without a day',
      (c) => {
        c.signOffs = [{ rule: 'back-feed', parts: ['W99'], by: 'Robin Ash', on: '2025-02-30', reason: 'Tried it.' }];
      },
      [
        'signOffs.0.on: Unexpected date "2025-02-30", expected a day such as 2025-03-31',
        'signOffs.0.parts.0: Unknown part "W99" in the sign-off; did you mean "W9"?',
      ],
    ],
  ];
  for (const [title, spoil, messages] of cases) {
    test(title, () => {
      expect(problemsOf(spoil)).toEqual(messages);
      expect(() => prove(spoiled(spoil))).toThrow(messages[0]!.replace(/^[^:]*: /, ''));
    });
  }

  test('two thousand parts are refused at once', () => {
    const circuit = bigCircuit({ branches: 400, inputs: 6 });
    expect(Object.keys(circuit.parts).length).toBeGreaterThan(2000);
    const started = performance.now();
    expect(circuitProblems(circuit).map((each) => each.message)).toEqual([
      '2004 parts, expected at most 400: split the circuit',
      '3202 wires, expected at most 1200: split the circuit',
    ]);
    expect(() => prove(circuit)).toThrow('2004 parts');
    expect(performance.now() - started).toBeLessThan(2000);
  });

  test('names that every object has are not taken for known ones', () => {
    const messages = problemsOf((c) => {
      c.wires['W2']!.to = 'constructor.1';
      c.wires['W3']!.lengthM = 'toString';
    });
    expect(messages.join('\n')).toContain('Unknown part "constructor"');
    expect(messages.join('\n')).toContain('Unknown job value "toString"');
  });
});
