import { describe, expect, test } from 'vitest';
import { type Circuit, cutList, partsList, prove } from '../../../calc/index.ts';
import { cargoLight } from './examples/cargo-light.ts';

function changed(change: (circuit: Circuit) => void): Circuit {
  const circuit = structuredClone(cargoLight);
  change(circuit);
  return circuit;
}

describe('a good circuit', () => {
  const proof = prove(cargoLight);

  test('raises nothing', () => {
    expect(proof.findings).toEqual([]);
    expect(proof.stops).toBe(0);
    expect(proof.differences).toEqual([]);
    expect(proof.unmatchedSignOffs).toEqual([]);
  });

  test('has every state, with the engine off and on', () => {
    expect(proof.coverage).toMatchObject({ complete: true, of: 8 });
    const lit = proof.states.filter((state) => state.charging.on['L1']).map((state) => state.inputs);
    expect(lit).toEqual([
      { master: true, side: false, rear: true },
      { master: true, side: true, rear: false },
      { master: true, side: true, rear: true },
    ]);
    const volts = (n: number) => [proof.states[n]!.resting.loadV['L1'], proof.states[n]!.charging.loadV['L1']];
    const [resting, charging] = volts(7) as [number, number];
    expect(charging / resting).toBeCloseTo(14.4 / 12.6, 2);
  });

  test('names the current a fuse was sized for, the one at the lowest supply for an electronic load', () => {
    const driven = prove(
      changed((circuit) => {
        circuit.parts['F1'] = { kind: 'fuse', form: 'C', ratingA: 'auto' };
        const lamp = circuit.parts['L1'];
        if (lamp && 'model' in lamp) Object.assign(lamp, { model: 'constant-power' });
      }),
    );
    const choice = driven.choices['F1']!;
    expect(driven.figures['F1']!['currentA']).toBe(choice.question.currentA);
    expect(driven.figures['F1']!['currentA']).toBeGreaterThan(0);
  });

  test('gives the figures that a guide names', () => {
    // Four lamps of 16 ohm behind some 80 milliohm at 14.4 V, and a 90 ohm coil less a diode.
    const lamps = (4 * 14.4) / 16;
    expect(proof.figures['K1']!['contactCurrentA']).toBeGreaterThan(lamps * 0.96);
    expect(proof.figures['K1']!['contactCurrentA']).toBeLessThan(lamps);
    expect(proof.figures['F1']).toMatchObject({ ratingA: 5 });
    expect(proof.figures['F1']!['currentA']).toBeCloseTo(
      proof.figures['K1']!['contactCurrentA']! + proof.figures['K1']!['coilCurrentA']!,
      3,
    );
    expect(proof.figures['W2']).toMatchObject({ areaMm2: 2.5, lengthM: 1.5, limitA: 20 });
    expect(proof.figures['supply']).toMatchObject({ restingV: 12.6, chargingV: 14.4, standbyMa: 0 });
    expect(proof.standbyMa).toBe(0);
  });

  test('is studied for every single fault, unless that is left out', () => {
    expect(proof.faults!.results.length).toBeGreaterThan(60);
    expect(prove(cargoLight, {}, { faults: false }).faults).toBeUndefined();
  });

  test('outlives a trip through JSON, for a cache', () => {
    expect(JSON.parse(JSON.stringify(proof))).toEqual(proof);
  });
});

test('a 7.5 A fuse in front of a 0.5 mm² pigtail that allows 5 A is a stop that names fuse, wire and limits', () => {
  const proof = prove(
    changed((circuit) => {
      circuit.parts['F1'] = { kind: 'fuse', form: 'C', ratingA: 7.5 };
    }),
  );
  expect(proof.stops).toBe(4);
  expect(proof.findings[0]).toEqual({
    rule: 'fuse-over-wire',
    severity: 'stop',
    parts: ['F1', 'L1.pigtail+'],
    states: [],
    message: 'Fuse F1 (7.5 A) is larger than the plus pigtail of L1 (0.5 mm², at most 5 A) allows.',
    why: 'The wire becomes the fuse and sets fire to what it touches.',
    cure: 'Fit a fuse of at most 5 A, or a wire that allows 7.5 A, or a fuse of its own where the wire gets thin.',
  });
});

describe('a circuit that does something else than the customer asked for', () => {
  const proof = prove(
    changed((circuit) => {
      circuit.intent.loads['L1'] = { when: 'master and side' };
    }),
    {},
    { faults: false },
  );

  test('says for which load, in which state', () => {
    expect(proof.findings.map((each) => [each.severity, each.rule, each.message])).toEqual([
      ['stop', 'wrong-truth-table', 'Lamp L1 is on (12.3 V), wanted off, with master switch on and rear door open.'],
    ]);
  });

  test('lists the differences at both supplies', () => {
    const inputs = { master: true, side: false, rear: true };
    expect(proof.differences).toEqual([
      { load: 'L1', inputs, supply: 'resting', is: true, wanted: false },
      { load: 'L1', inputs, supply: 'charging', is: true, wanted: false },
    ]);
  });
});

describe('a sign-off', () => {
  const signed = (parts: string[]) =>
    prove(
      changed((circuit) => {
        circuit.intent.loads['L1'] = { when: 'master and side' };
        circuit.signOffs = [
          { rule: 'wrong-truth-table', parts, by: 'Robin Ash', on: '2025-03-31', reason: 'Agreed with the customer.' },
        ];
      }),
      {},
      { faults: false },
    );

  test('that matches lets the circuit pass and is shown with the finding', () => {
    const proof = signed(['L1']);
    expect(proof.stops).toBe(0);
    expect(proof.findings[0]).toMatchObject({ severity: 'stop', signedOff: { by: 'Robin Ash' } });
  });

  test('that matches nothing is itself a stop', () => {
    const proof = signed(['L2']);
    expect(proof.stops).toBe(2);
    expect(proof.unmatchedSignOffs).toHaveLength(1);
    expect(proof.findings.at(-1)).toMatchObject({
      rule: 'sign-off-unmatched',
      severity: 'stop',
      message: 'The sign-off of wrong-truth-table for L2 by Robin Ash matches no finding.',
    });
  });
});

describe('a circuit that remembers', () => {
  /** Push to start, push to stop: the relay holds itself through a diode. */
  const hold: Circuit = {
    id: 'self-hold',
    title: 'Lamp that holds itself',
    systemV: 12,
    supply: { restingV: 12.6, chargingV: 14.4, sourceOhm: 0.01 },
    values: {},
    inputs: { start: { label: 'Start', kind: 'push' }, stop: { label: 'Stop', kind: 'push' } },
    parts: {
      BAT: { kind: 'battery' },
      F1: { kind: 'fuse', form: 'C', ratingA: 5 },
      S1: { kind: 'switch', input: 'start' },
      S2: { kind: 'switch', input: 'stop', inverted: true },
      K1: { kind: 'relay', form: 'make', coilOhm: 90, maxA: { make: 30 }, suppression: 'resistor' },
      D1: { kind: 'diode' },
      L1: { kind: 'load', model: 'resistive', ratedV: 12, powerW: 20 },
      G1: { kind: 'chassis' },
    },
    wires: {
      W1: { from: 'BAT.+', to: 'F1.1', lengthM: 0.15, areaMm2: 2.5 },
      W2: { from: 'F1.2', to: 'K1.30', lengthM: 1, areaMm2: 1.5 },
      W3: { from: 'F1.2', to: 'S1.1', lengthM: 1, areaMm2: 1 },
      W4: { from: 'S1.2', to: 'K1.86', lengthM: 1, areaMm2: 1 },
      W5: { from: 'K1.87', to: 'D1.A', lengthM: 0.1, areaMm2: 1 },
      W6: { from: 'D1.K', to: 'K1.86', lengthM: 0.1, areaMm2: 1 },
      W7: { from: 'K1.85', to: 'S2.1', lengthM: 1, areaMm2: 1 },
      W8: { from: 'S2.2', to: 'G1', lengthM: 0.3, areaMm2: 1 },
      W9: { from: 'K1.87', to: 'L1.+', lengthM: 2, areaMm2: 1.5 },
      W10: { from: 'L1.-', to: 'G1', lengthM: 0.5, areaMm2: 1.5 },
    },
    intent: {
      says: 'One push on, one push off.',
      loads: { L1: { when: 'start and not stop' } },
      sequence: [
        { on: [], loads: [] },
        { on: ['start'], loads: ['L1'] },
        { on: [], loads: ['L1'] },
        { on: ['stop'], loads: [] },
        { on: [], loads: [] },
      ],
      keyOut: { L1: 'Used with the key out.' },
    },
    signOffs: [],
  };

  test('is judged by its sequence', () => {
    const proof = prove(hold, {}, { faults: false });
    expect(proof.latching).toBe(true);
    expect(proof.steps.map((step) => step.charging.on['L1'])).toEqual([false, true, true, false, false]);
    expect(proof.findings).toEqual([]);
  });

  test('without a sequence, the state that it remembers is a difference', () => {
    const { sequence: _, ...intent } = hold.intent;
    const proof = prove({ ...hold, intent }, {}, { faults: false });
    expect(proof.findings.map((each) => each.message)).toEqual([
      'Load L1 is on (12.4 V), wanted off, with everything off.',
    ]);
  });

  test('a wrong step is named', () => {
    const sequence = [...hold.intent.sequence!];
    sequence[2] = { on: [], loads: [] };
    const proof = prove({ ...hold, intent: { ...hold.intent, sequence } }, {}, { faults: false });
    expect(proof.findings.map((each) => [each.rule, each.parts])).toEqual([['wrong-truth-table', ['L1']]]);
  });
});

describe('the parts list', () => {
  const proof = prove(cargoLight, {}, { faults: false });

  test('counts what is fitted and adds up wire with slack', () => {
    const list = partsList(cargoLight, proof).map(({ what, count, lengthM }) => [count, what, lengthM]);
    expect(list).toMatchInlineSnapshot(`
      [
        [
          1,
          "Fuse 5 A, medium blade",
          undefined,
        ],
        [
          1,
          "Fuse holder, medium blade",
          undefined,
        ],
        [
          1,
          "Switch",
          undefined,
        ],
        [
          1,
          "Relay, make contact, diode built in",
          undefined,
        ],
        [
          1,
          "Relay socket",
          undefined,
        ],
        [
          2,
          "Diode",
          undefined,
        ],
        [
          1,
          "Front left",
          undefined,
        ],
        [
          1,
          "Front right",
          undefined,
        ],
        [
          1,
          "Rear left",
          undefined,
        ],
        [
          1,
          "Rear right",
          undefined,
        ],
        [
          2,
          "Wire 2.5 mm², RD",
          1.85,
        ],
        [
          1,
          "Wire 2.5 mm², YE-RD",
          4.4,
        ],
        [
          1,
          "Wire 2.5 mm², BK",
          0.55,
        ],
        [
          1,
          "Wire 0.75 mm², RD-YE",
          1.1,
        ],
        [
          1,
          "Wire 0.75 mm², YE",
          1.1,
        ],
        [
          1,
          "Wire 0.75 mm², BN-WH",
          2.2,
        ],
        [
          1,
          "Wire 0.75 mm², BN-GY",
          4.4,
        ],
        [
          2,
          "Wire 0.75 mm², BN",
          0.5,
        ],
        [
          4,
          "Wire 0.75 mm², YE-RD",
          4.4,
        ],
        [
          4,
          "Wire 0.75 mm², BK",
          4.4,
        ],
        [
          6,
          "Crimp terminal for 2.5 mm²",
          undefined,
        ],
        [
          20,
          "Crimp terminal for 0.75 mm²",
          undefined,
        ],
      ]
    `);
  });

  test('cuts no wire shorter than its route, in whole centimetres', () => {
    for (const cut of cutList(cargoLight, proof)) {
      expect(cut.cutM).toBeGreaterThanOrEqual(cut.routeM + 0.05);
      expect(Math.round(cut.cutM * 100)).toBeCloseTo(cut.cutM * 100, 6);
    }
    expect(cutList(cargoLight, proof, { slackFraction: 0.05 })[1]).toEqual({
      wire: 'W2',
      areaMm2: 2.5,
      routeM: 1.5,
      cutM: 1.58,
      from: 'F1.2',
      to: 'K1.30',
      colour: 'RD',
      label: undefined,
    });
    expect(() => cutList(cargoLight, proof, { slackFraction: -1 })).toThrow('unexpected slackFraction -1');
  });
});
