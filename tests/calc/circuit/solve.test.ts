import { describe, expect, test } from 'vitest';
import { prepare, solveState } from '../../../calc/circuit/solve.ts';
import { contact, diode, lamp, netlist, relay, resistor, source, wire } from './build.ts';

describe('resistances', () => {
  test('a divider, by hand: 12 V over 1 + 2 + 3 ohm', () => {
    const solution = solveState(
      netlist(source('bat', 'b', '0', 12, 1), resistor('r1', 'b', 'm', 2), resistor('r2', 'm', '0', 3)),
      {},
    );
    expect(solution.nodeV['b']).toBeCloseTo(10, 12);
    expect(solution.nodeV['m']).toBeCloseTo(6, 12);
    expect(solution.currentA['bat']).toBeCloseTo(2, 12);
    expect(solution.currentA['r1']).toBeCloseTo(2, 12);
  });

  test('series and parallel rules give the same as the network', () => {
    const parts = [3, 5, 7].map((ohm, k) => resistor(`p${k}`, 'm', '0', ohm));
    const solution = solveState(netlist(source('bat', 'b', '0', 12, 0), resistor('s', 'b', 'm', 2), ...parts), {});
    const parallel = 1 / (1 / 3 + 1 / 5 + 1 / 7);
    expect(solution.currentA['bat']).toBeCloseTo(12 / (2 + parallel + 1e-5), 10);
  });

  test('milliohm wires beside a kilohm lamp keep every digit', () => {
    const solution = solveState(
      netlist(source('bat', 'b', '0', 12, 0.001), wire('w', 'b', 'p', 0.0001), lamp('l', 'p', '0', 1e6)),
      {},
    );
    const currentA = 12 / (1e6 + 0.0011);
    expect(solution.currentA['w']! / currentA).toBeCloseTo(1, 4);
    expect(12 - solution.nodeV['p']!).toBeCloseTo(currentA * 0.0011, 13);
  });

  test('a dead short drives the source to what its own resistance allows', () => {
    const solution = solveState(netlist(source('bat', 'b', '0', 12, 0.01), resistor('short', 'b', '0', 0.001)), {});
    expect(solution.currentA['bat']).toBeCloseTo(12 / 0.011, 6);
  });

  test('an ideal source keeps its voltage', () => {
    const solution = solveState(netlist(source('bat', 'b', '0', 12, 0), lamp('l', 'b', '0', 1)), {});
    expect(solution.loadV['l']).toBeCloseTo(12, 3);
  });

  test('two ideal sources in series are no loop', () => {
    const solution = solveState(
      netlist(source('low', 'm', '0', 12, 0), source('high', 'b', 'm', 12, 0), lamp('l', 'b', '0', 10)),
      {},
    );
    expect(solution.loadV['l']).toBeCloseTo(24, 3);
  });

  test('a part across one node carries nothing', () => {
    const solution = solveState(
      netlist(source('bat', 'b', '0', 12), lamp('l', 'b', '0'), resistor('r', 'b', 'b', 1)),
      {},
    );
    expect(solution.currentA['r']).toBe(0);
  });

  test('volts of a state replace those of the netlist, for that state only', () => {
    const solver = prepare(netlist(source('bat', 'b', '0', 12, 0), lamp('l', 'b', '0')));
    expect(solver.solve({}, { volts: { bat: 24 } }).loadV['l']).toBeCloseTo(24, 3);
    expect(solver.solve({}).loadV['l']).toBeCloseTo(12, 3);
  });
});

describe('what hangs loose', () => {
  const circuit = netlist(
    source('bat', 'b', '0', 12),
    contact('s', 'b', 'x'),
    resistor('r', 'x', 'y', 5),
    lamp('l', 'b', '0'),
  );

  test('is reported, not guessed, island by island', () => {
    expect(solveState(circuit, { s: false }).floating.sort()).toEqual(['x', 'y']);
    expect(solveState(circuit, { s: true }).floating).toEqual([]);
  });

  test('a battery without ground floats, its lamp burns all the same', () => {
    const solution = solveState(netlist(source('bat', 'p', 'n', 12, 1), lamp('l', 'p', 'n', 5)), {});
    expect(solution.islands.map((island) => island.sort())).toEqual([['n', 'p']]);
    expect(solution.loadV['l']).toBeCloseTo(10, 10);
    expect(solution.on['l']).toBe(true);
  });

  test('a load that carries nothing between two islands has no voltage to speak of', () => {
    const strip = lamp('l', 'p', '0', 1, { model: 'strip', groupV: 30 });
    const loose = netlist(source('bat', 'p', 'n', 24, 1), resistor('r', 'p', 'n', 5), strip);
    expect(solveState(loose, {})).toMatchObject({ loadV: { l: 0 }, on: { l: false } });
  });

  test('two loose islands are told apart', () => {
    const solution = solveState(
      netlist(
        source('bat', 'b', '0', 12),
        lamp('l', 'b', '0'),
        resistor('r1', 'p', 'q', 1),
        resistor('r2', 'u', 'v', 1),
      ),
      {},
    );
    expect(solution.islands.map((island) => island.sort()).sort()).toEqual([
      ['p', 'q'],
      ['u', 'v'],
    ]);
  });

  test('no element at all is a circuit too', () => {
    expect(solveState(netlist(), {})).toMatchObject({ settles: true, floating: [], on: {} });
  });
});

describe('diodes', () => {
  test('open below the drop, a fixed drop above', () => {
    const at = (volts: number) =>
      solveState(netlist(source('bat', 'b', '0', volts, 0.01), diode('d', 'b', 'x'), lamp('l', 'x', '0', 10)), {});
    expect(at(0.69).loadV['l']).toBe(0);
    expect(at(12).loadV['l']).toBeCloseTo((12 - 0.7) * (10 / 10.01), 4);
    expect(at(-12).loadV['l']).toBe(0);
  });

  test('the higher of two feeds wins, whatever the order in the file', () => {
    const parts = [
      source('a', 'a', '0', 12),
      source('c', 'c', '0', 14),
      diode('da', 'a', 'x'),
      diode('dc', 'c', 'x'),
      lamp('l', 'x', '0', 10),
    ];
    for (const elements of [parts, parts.toReversed()]) {
      const solution = solveState(netlist(...elements), {});
      expect(solution.currentA['da']).toBe(0);
      expect(solution.loadV['l']).toBeCloseTo(13.3 * (10 / 10.01), 3);
    }
  });

  test('a bridge rectifies both ways', () => {
    for (const volts of [12, -12]) {
      const bridge = [diode('d1', 'p', 'x'), diode('d2', 'n', 'x'), diode('d3', 'y', 'p'), diode('d4', 'y', 'n')];
      const solution = solveState(
        netlist(source('bat', 'p', 'n', volts, 0.01), ...bridge, lamp('l', 'x', 'y', 10)),
        {},
      );
      expect(solution.loadV['l']).toBeCloseTo((12 - 1.4) * (10 / 10.01), 3);
    }
  });

  test('a chain of thirty ends, each dropping its share', () => {
    const chain = Array.from({ length: 30 }, (_, k) => diode(`d${k}`, `n${k}`, `n${k + 1}`, 0.3));
    const solution = solveState(netlist(source('bat', 'n0', '0', 12, 0.01), ...chain, lamp('l', 'n30', '0', 10)), {});
    expect(solution.loadV['l']).toBeCloseTo(3 * (10 / 10.01), 3);
  });
});

describe('electronic loads', () => {
  const fed = (load: ReturnType<typeof lamp>, ohm: number, volts = 12) =>
    solveState(netlist(source('bat', 'b', '0', volts, ohm), load), {});

  test('constant power: the higher root of V² - E·V + P·R = 0', () => {
    const solution = fed(lamp('l', 'b', '0', 0, { model: 'constant-power', powerW: 24 }), 0.5);
    expect(solution.loadV['l']).toBeCloseTo((12 + Math.sqrt(144 - 4 * 24 * 0.5)) / 2, 6);
    expect((solution.loadV['l'] as number) * solution.currentA['l']!).toBeCloseTo(24, 5);
  });

  test('more power than the wire can bring: drops out of regulation and draws like a resistor', () => {
    const solution = fed(lamp('l', 'b', '0', 0, { model: 'constant-power', powerW: 60 }), 1);
    const ohm = 6 ** 2 / 60;
    expect(solution.loadV['l']).toBeCloseTo((12 * ohm) / (1 + ohm), 6);
  });

  test('constant current: as much at 12 V as at 16 V, less below half its voltage', () => {
    const load = lamp('l', 'b', '0', 0, { model: 'constant-current', currentA: 2 });
    expect(fed(load, 0.1).currentA['l']).toBeCloseTo(2, 6);
    expect(fed(load, 0.1, 16).currentA['l']).toBeCloseTo(2, 6);
    expect(fed(load, 0.1, 3).currentA['l']).toBeCloseTo(3 / (3 + 0.1), 6);
  });

  test('nothing runs through them backwards', () => {
    expect(fed(lamp('l', 'b', '0', 0, { model: 'constant-power', powerW: 24 }), 0.1, -12).currentA['l']).toBe(0);
  });

  test('a strip: nothing up to its group voltage, then a resistor', () => {
    const strip = lamp('l', 'b', '0', 1.4, { model: 'strip', groupV: 9.2 });
    expect(fed(strip, 0.1, 9).currentA['l']).toBe(0);
    expect(fed(strip, 0.1).currentA['l']).toBeCloseTo((12 - 9.2) / 1.5, 9);
  });
});

describe('relays', () => {
  const held = netlist(
    source('bat', 'b', '0', 13.8),
    contact('start', 'b', 'c'),
    contact('stop', 'c', 'd', 'stop', true),
    relay('k', 'd', '0', 'b', 'd'),
    lamp('l', 'd', '0', 20),
  );

  test('hold themselves once pulled in, and not before', () => {
    expect(solveState(held, {}).energised).toEqual({ k: false });
    expect(solveState(held, { start: true }).energised).toEqual({ k: true });
    expect(solveState(held, {}, { relays: { k: true } }).on).toEqual({ l: true });
  });

  test('pull in at exactly the pull-in voltage, hold down to exactly the drop-out voltage', () => {
    const coil = (volts: number) =>
      netlist(
        source('bat', 'b', '0', volts, 0.01),
        relay('k', 'b', '0', 'b', null, null, { coilOhm: Number.POSITIVE_INFINITY }),
      );
    expect(solveState(coil(7.2), {}).energised).toEqual({ k: true });
    expect(solveState(coil(7.199), {}).energised).toEqual({ k: false });
    expect(solveState(coil(1.6), {}, { relays: { k: true } }).energised).toEqual({ k: true });
    expect(solveState(coil(1.599), {}, { relays: { k: true } }).energised).toEqual({ k: false });
  });

  test('one that interrupts itself is named, with the bounds of its load', () => {
    const rattle = netlist(
      source('bat', 'b', '0', 13.8),
      contact('s', 'b', 'x'),
      relay('k', 'c', '0', 'x', null, 'c'),
      lamp('l', 'c', '0'),
    );
    const solution = solveState(rattle, { s: true });
    expect(solution).toMatchObject({ settles: false, energised: { k: null }, on: { l: null } });
    expect(solution.reason).toBe('does not settle: k drops its own supply (coil at 13.8 V released, 0.0 V pulled in)');
    expect(solution.loadV['l']).toEqual([0, expect.closeTo(13.78, 1)]);
  });

  test('two that chase each other are both named', () => {
    const chase = netlist(
      source('bat', 'b', '0', 13.8),
      relay('k1', 'x', '0', 'b', 'y', null),
      relay('k2', 'y', '0', 'b', null, 'x'),
    );
    expect(solveState(chase, {}).reason).toBe('does not settle: k1 and k2 move each other in turn');
  });

  test('two that lock each other out race from rest', () => {
    const race = netlist(
      source('bat', 'b', '0', 13.8),
      relay('k1', 'x', '0', 'b', null, 'y'),
      relay('k2', 'y', '0', 'b', null, 'x'),
    );
    expect(solveState(race, {})).toMatchObject({ settles: false, energised: { k1: null, k2: null } });
    expect(solveState(race, {}).reason).toContain('k1 and k2 race');
    expect(solveState(race, {}, { relays: { k1: true } })).toMatchObject({
      settles: true,
      energised: { k1: true, k2: false },
    });
  });

  test('a chain of forty pulls in one after the other', () => {
    const chain = Array.from({ length: 40 }, (_, k) => relay(`k${k}`, `n${k}`, '0', 'b', `n${k + 1}`));
    const circuit = netlist(source('bat', 'b', '0', 13.8), contact('s', 'b', 'n0'), ...chain, lamp('l', 'n40', '0'));
    expect(solveState(circuit, { s: true }).on).toEqual({ l: true });
    expect(solveState(circuit, { s: false }).on).toEqual({ l: false });
  });
});
