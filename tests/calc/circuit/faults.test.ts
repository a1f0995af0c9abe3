import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { combinations } from '../../../calc/circuit/coverage.ts';
import { diagnose, faultSignature } from '../../../calc/circuit/diagnose.ts';
import {
  applyFault,
  describeFault,
  type Fault,
  faultBench,
  faultsOf,
  singleFaults,
  solveFault,
} from '../../../calc/circuit/faults.ts';
import { amps, meterReading, ohms } from '../../../calc/circuit/meter.ts';
import { type NeutralFile, readPattern } from '../../../calc/circuit/neutral.ts';
import { prepare, solveState } from '../../../calc/circuit/solve.ts';
import { contact, diode, fuse, lamp, netlist, relay, source, wire } from './build.ts';

const file = JSON.parse(readFileSync(new URL('rows/patterns.json', import.meta.url), 'utf8')) as NeutralFile;

/** Battery, fuse, switch, relay, lamp: the coil behind its own fuse. */
const circuit = netlist(
  source('bat', 'b', '0', 13.8, 0.01),
  wire('w1', 'b', 'f1a'),
  fuse('f1', 'f1a', 'f1b', 10),
  wire('w2', 'f1b', 'k30'),
  fuse('f2', 'f1a', 'f2b', 2),
  contact('s', 'f2b', 'k86'),
  relay('k', 'k86', '0', 'k30', 'k87'),
  diode('d', '0', 'k86'),
  wire('w3', 'k87', 'lp'),
  lamp('l', 'lp', 'lm', 6),
  wire('w4', 'lm', '0'),
);

describe('the list of single faults', () => {
  test('contacts only: opens, then chassis shorts at one end of each wire', () => {
    expect(faultsOf(circuit, 'contacts').map((fault) => describeFault(circuit, fault))).toEqual([
      'w1 broken',
      'f1 blown',
      'w2 broken',
      'f2 blown',
      's does not make contact',
      'k.no does not make contact',
      'w3 broken',
      'w4 broken',
      'w1 touches the chassis at f1a',
      'w2 touches the chassis at k30',
      'w3 touches the chassis at lp',
      'w4 touches the chassis at lm',
    ]);
  });

  test('in full: both ends, welded contacts, broken coil, shorted diode, burnt lamp, reversed battery besides', () => {
    const more = faultsOf(circuit).map((fault) => describeFault(circuit, fault));
    expect(more).toEqual(
      expect.arrayContaining([
        's welded',
        'k.no welded',
        'coil of k broken',
        'd no longer blocks',
        'l burnt out',
        'bat connected the wrong way round',
        'w3 touches the chassis at k87',
      ]),
    );
  });
});

describe('what a fault does', () => {
  const study = singleFaults(circuit);
  const of = (fault: Fault) => study.results.find((one) => JSON.stringify(one.fault) === JSON.stringify(fault))!;

  test('a broken wire keeps the lamp off', () => {
    expect(of({ kind: 'open', id: 'w2' })).toMatchObject({
      changed: [{ n: 1, on: { l: false }, settles: true }],
      blown: {},
      hot: {},
    });
  });

  test('a short behind the relay blows its fuse in the state that feeds it, and only there', () => {
    expect(of({ kind: 'short', id: 'w3', at: 'lp' })).toMatchObject({
      changed: [{ n: 1, on: { l: false } }],
      blown: { 1: ['f1'] },
      hot: {},
    });
  });

  test('a short ahead of the fuse leaves the wire hot', () => {
    expect(of({ kind: 'short', id: 'w1', at: 'f1a' })).toMatchObject({ blown: {}, hot: { 0: ['w1'], 1: ['w1'] } });
  });

  test('a welded contact keeps the lamp on', () => {
    expect(of({ kind: 'welded', id: 'k.no' }).changed).toEqual([{ n: 0, on: { l: true }, settles: true }]);
    expect(of({ kind: 'welded', id: 's' }).changed).toEqual([{ n: 0, on: { l: true }, settles: true }]);
  });

  test('a suppression diode that no longer blocks shorts the coil and blows its fuse', () => {
    expect(of({ kind: 'bridged', id: 'd' })).toMatchObject({
      changed: [{ n: 1, on: { l: false } }],
      blown: { 1: ['f2'] },
    });
  });

  test('a reversed battery drives the suppression diode until the fuse blows', () => {
    expect(of({ kind: 'reversed', id: 'bat' }).blown).toEqual({ 1: ['f2'] });
  });

  test('a burnt-out lamp is off, though its voltage is there', () => {
    expect(of({ kind: 'open', id: 'l' }).changed).toEqual([{ n: 1, on: { l: false }, settles: true }]);
    const { solution } = solveFault(circuit, { kind: 'open', id: 'l' }, { inputs: { s: true } });
    expect(solution.loadV['l']).toBeGreaterThan(13);
    expect(solution.on['l']).toBe(false);
  });

  test('a broken coil is as good as no relay', () => {
    expect(of({ kind: 'coil-open', id: 'k' }).changed).toEqual([{ n: 1, on: { l: false }, settles: true }]);
  });
});

describe('two ways to the same faulty circuit', () => {
  test.each(file.patterns)('$id: patched and rebuilt give the same voltages', (pattern) => {
    const sound = readPattern(file, pattern);
    const bench = faultBench(sound);
    let compared = 0;
    for (const fault of faultsOf(sound)) {
      const rebuilt = prepare(applyFault(sound, fault));
      for (const inputs of combinations(sound.inputs.map(({ id }) => id)).states) {
        const { solution, blown } = bench.solve(fault, { inputs });
        if (blown.length > 0) continue;
        const other = rebuilt.solve(inputs);
        expect(other.settles, `${JSON.stringify(fault)} ${JSON.stringify(inputs)}`).toBe(solution.settles);
        for (const id of sound.loads) {
          for (const [k, voltageV] of [solution.loadV[id]!].flat().entries()) {
            expect([other.loadV[id]!].flat()[k]).toBeCloseTo(voltageV, 6);
            compared++;
          }
        }
      }
    }
    expect(compared).toBeGreaterThan(20);
  });

  test('a study tells the same as solving each state for itself', () => {
    for (const pattern of file.patterns.slice(0, 8)) {
      const sound = readPattern(file, pattern);
      const { rows, results } = singleFaults(sound);
      for (const { fault, changed, blown } of results) {
        for (const { n, inputs } of rows) {
          const alone = solveFault(sound, fault, { inputs });
          const plain = solveState(sound, inputs);
          const differs =
            plain.settles !== alone.solution.settles ||
            sound.loads.some((id) => plain.on[id] !== alone.solution.on[id]);
          expect(
            changed.some((row) => row.n === n),
            `${pattern.id} ${JSON.stringify(fault)} ${n}`,
          ).toBe(differs);
          expect(blown[n] ?? []).toEqual(alone.blown);
        }
      }
    }
  });
});

describe('a meter', () => {
  const on = solveState(circuit, { s: true });
  const off = solveState(circuit, { s: false });

  test('reads volts between any two points, either way round', () => {
    const forward = meterReading(on, circuit, { from: 'lp', to: 'lm' });
    expect(forward).toEqual({ kind: 'volts', voltageV: on.loadV['l'] });
    expect(meterReading(on, circuit, { from: 'lm', to: 'lp' })).toEqual({
      kind: 'volts',
      voltageV: -(on.loadV['l'] as number),
    });
  });

  test('says when a point hangs in the air', () => {
    const loose = netlist(source('bat', 'b', '0', 12), wire('w', 'p', 'q'), lamp('l', 'b', '0'));
    const solution = solveState(loose, {});
    expect(meterReading(solution, loose, { from: 'p', to: '0' })).toEqual({ kind: 'floating', nodes: ['p'] });
    expect(meterReading(solution, loose, { from: 'p', to: 'q' })).toEqual({ kind: 'volts', voltageV: 0 });
  });

  test('reads amps through a part and a contact', () => {
    expect(amps(on, 'k.no')).toBeCloseTo(amps(on, 'l'), 9);
    expect(amps(off, 'k.no')).toBe(0);
    expect(() => amps(on, 'k.nc')).toThrow(/unexpected element "k.nc"/);
  });

  test('reads ohms with the supply off', () => {
    expect(ohms(on, circuit, { from: 'lp', to: '0' })).toBeCloseTo(
      1 / (1 / 6.01 + 1 / (90 + 0.001 + 0.04 + 0.008 + 0.01 + 0.005 + 0.01)),
      3,
    );
    expect(ohms(off, circuit, { from: 'lp', to: '0' })).toBeCloseTo(6.01, 6);
    expect(ohms(off, circuit, { from: 'k30', to: 'k87' })).toBe(Number.POSITIVE_INFINITY);
    expect(ohms(off, circuit, { from: 'b', to: 'f1a' })).toBeCloseTo(0.01, 6);
    expect(ohms(off, circuit, { from: 'b', to: 'b' })).toBe(0);
  });
});

describe('diagnosis', () => {
  test('the planted fault is among those that fit its own readings, whatever it is', () => {
    const bench = faultBench(circuit);
    for (const fault of faultsOf(circuit)) {
      const readings = [{ s: false }, { s: true }].flatMap((inputs) => {
        const { solution } = bench.solve(fault, { inputs });
        return [
          { inputs, of: { load: 'l' }, is: solution.loadV['l'] as number },
          { inputs, of: { amps: 'f2' }, is: solution.currentA['f2']! },
        ];
      });
      const { suspects, fitting } = diagnose(circuit, readings);
      expect(suspects.slice(0, fitting).map((suspect) => suspect.words)).toContain(describeFault(circuit, fault));
    }
  });

  test('nothing wrong fits sound readings', () => {
    const { suspects } = diagnose(circuit, [
      { inputs: { s: true }, of: { load: 'l' }, is: true },
      { inputs: {}, of: { amps: 'bat' }, is: 0 },
    ]);
    expect(suspects[0]!.fault).toBeUndefined();
  });

  test('names a next reading that parts those that fit', () => {
    const { suspects, fitting, next } = diagnose(circuit, [{ inputs: { s: true }, of: { load: 'l' }, is: false }]);
    expect(fitting).toBeGreaterThan(5);
    const answers = suspects.slice(0, fitting).map(({ fault }) => {
      const { solution } = solveFault(circuit, fault, { inputs: next!.inputs });
      const reading = 'from' in next!.of ? meterReading(solution, circuit, next!.of) : undefined;
      return reading?.kind === 'volts' ? reading.voltageV.toFixed(0) : 'none';
    });
    expect(new Set(answers).size).toBeGreaterThan(1);
  });

  test('each contradiction names its reading and what was expected instead', () => {
    const { suspects } = diagnose(circuit, [{ inputs: { s: true }, of: { load: 'l' }, is: 0 }]);
    const sound = suspects.find((suspect) => suspect.fault === undefined)!;
    expect(sound.contradicts).toEqual([{ reading: 0, expected: expect.closeTo(13.3, 0) }]);
  });

  test('a reading of nothing known is refused', () => {
    expect(() => diagnose(circuit, [{ inputs: {}, of: { load: 'x' }, is: 1 }])).toThrow(/unexpected "x" in a reading/);
    expect(() => diagnose(circuit, [{ inputs: {}, of: { amps: 'f1' }, is: true }])).toThrow(/must be of a load/);
  });

  test('a signature lists loads, fuses and sources in every state', () => {
    expect(faultSignature(circuit, { kind: 'welded', id: 'k.no' })).toMatchObject([
      { inputs: { s: false }, on: { l: true }, fuseA: { f2: expect.closeTo(0, 9) }, blown: [] },
      { inputs: { s: true }, on: { l: true }, blown: [] },
    ]);
  });
});

describe('loads that an electronic part keeps from ground', () => {
  const strips = netlist(
    source('bat', 'b', '0', 13.8, 0.01),
    fuse('f1', 'b', 'f1b', 10),
    contact('s', 'f1b', 'k86'),
    relay('k', 'k86', '0', 'f1b', 'k87'),
    wire('w1', 'k87', 'lp'),
    lamp('l', 'lp', 'lm', 1, { model: 'strip', groupV: 8 }),
    wire('w2', 'lm', '0'),
    lamp('l2', 'b', '0', 1, { model: 'strip', groupV: 8 }),
  );

  test('a strip beyond a break is off, in the study as in one state solved for itself', () => {
    const { rows, results } = singleFaults(strips);
    const bench = faultBench(strips);
    for (const { fault, changed } of results) {
      for (const { n, inputs } of rows) {
        const sound = bench.solve(undefined, { inputs }).solution;
        const { solution } = bench.solve(fault, { inputs });
        const studied = changed.find((each) => each.n === n)?.on ?? sound.on;
        for (const id of strips.loads)
          expect(studied[id], `${describeFault(strips, fault)}, ${JSON.stringify(inputs)}, ${id}`).toBe(
            solution.on[id],
          );
      }
    }
    const broken = results.find(({ fault }) => fault.kind === 'open' && fault.id === 'f1')!;
    expect(broken.changed.map(({ on }) => on)).toEqual([{ l: false, l2: true }]);
  });
});
