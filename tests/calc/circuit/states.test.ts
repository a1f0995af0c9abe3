import { describe, expect, test } from 'vitest';
import { combinations } from '../../../calc/circuit/coverage.ts';
import { sequence, truthTable } from '../../../calc/circuit/states.ts';
import { contact, lamp, netlist, relay, source } from './build.ts';

const held = netlist(
  source('bat', 'b', '0', 13.8),
  contact('start', 'b', 'd'),
  relay('k', 'd', 'g', 'b', 'd'),
  contact('stop', 'g', '0', 'stop', true),
  lamp('l', 'd', '0', 20),
);
const plain = netlist(
  source('bat', 'b', '0', 13.8),
  contact('s', 'b', 'c'),
  contact('t', 'c', 'd'),
  relay('k', 'd', '0', 'b', 'e'),
  lamp('l', 'e', '0', 20),
);

describe('truth table', () => {
  test('counts like a binary number, the last input fastest', () => {
    const { rows, coverage, latching, reached } = truthTable(plain);
    expect(rows.map(({ n, inputs }) => [n, inputs])).toEqual([
      [0, { s: false, t: false }],
      [1, { s: false, t: true }],
      [2, { s: true, t: false }],
      [3, { s: true, t: true }],
    ]);
    expect(rows.map(({ solution }) => solution.on['l'])).toEqual([false, false, false, true]);
    expect(coverage).toEqual({
      complete: true,
      inputs: 2,
      combinations: 4,
      of: 4,
      statement: 'all 4 combinations of 2 inputs',
    });
    expect({ latching, reached }).toEqual({ latching: false, reached: [] });
  });

  test('repeats for every supply', () => {
    const { rows } = truthTable(plain, { supplyVariants: [{ bat: 13.8 }, { bat: 6 }] });
    expect(rows.map(({ volts, solution }) => [volts!['bat'], solution.on['l']])).toEqual([
      [13.8, false],
      [13.8, false],
      [13.8, false],
      [13.8, true],
      [6, false],
      [6, false],
      [6, false],
      [6, false],
    ]);
  });

  test('finds the state that only a history leads to, with the way there', () => {
    const { latching, reached } = truthTable(held);
    expect(latching).toBe(true);
    expect(reached).toHaveLength(1);
    expect(reached[0]).toMatchObject({
      inputs: { start: false, stop: false },
      solution: { on: { l: true }, energised: { k: true } },
    });
    expect(reached[0]!.path).toEqual([
      { start: true, stop: false },
      { start: false, stop: false },
    ]);
  });

  test('a supply that sags and recovers is a history too', () => {
    const sensing = netlist(
      source('bat', 'b', '0', 12.8),
      relay('k', 'b', '0', 'b', 'c', null, { pullInV: 12.4, dropOutV: 10.8, coilOhm: 400 }),
      lamp('l', 'c', '0', 50),
    );
    const { latching, reached } = truthTable(sensing, { supplyVariants: [{ bat: 12.8 }, { bat: 11.6 }] });
    expect(latching).toBe(true);
    expect(reached.map(({ volts, solution }) => [volts, solution.on['l']])).toEqual([[{ bat: 11.6 }, true]]);
  });

  test('no inputs: one state', () => {
    const { rows, coverage } = truthTable(netlist(source('bat', 'b', '0', 12), lamp('l', 'b', '0')));
    expect(rows).toHaveLength(1);
    expect(coverage.statement).toBe('the one state of a circuit without inputs');
  });
});

describe('races', () => {
  test('two relays that lock each other out: both ends are named', () => {
    const race = netlist(
      source('bat', 'b', '0', 13.8),
      contact('s', 'b', 'c'),
      relay('k1', 'x', '0', 'c', null, 'y'),
      relay('k2', 'y', '0', 'c', null, 'x'),
    );
    const { races } = truthTable(race);
    expect(races).toHaveLength(1);
    expect(races[0]).toMatchObject({ inputs: { s: true }, relays: ['k1', 'k2'], endless: true });
    expect(races[0]!.rests).toEqual([
      { k1: true, k2: false },
      { k1: false, k2: true },
    ]);
  });

  test('relays that pull in together and rest alike in any order are no race', () => {
    const pair = netlist(
      source('bat', 'b', '0', 13.8),
      contact('s', 'b', 'c'),
      relay('k1', 'c', '0', 'b', 'x'),
      relay('k2', 'c', '0', 'x', 'y'),
      lamp('l', 'y', '0'),
    );
    expect(truthTable(pair).races).toEqual([]);
  });

  test('a relay that interrupts itself is no race', () => {
    const rattle = netlist(source('bat', 'b', '0', 13.8), contact('s', 'b', 'x'), relay('k', 'c', '0', 'x', null, 'c'));
    expect(truthTable(rattle).races).toEqual([]);
  });
});

describe('sequence', () => {
  test('each step begins where the step before ended', () => {
    const steps = [{}, { start: true }, {}, { stop: true }, {}].map((inputs) => ({ inputs }));
    expect(sequence(held, steps).map(({ solution }) => solution.on['l'])).toEqual([false, true, true, false, false]);
  });

  test('may begin anywhere', () => {
    expect(sequence(held, [{ inputs: {} }], { relays: { k: true } })[0]!.solution.on).toEqual({ l: true });
  });
});

describe('coverage', () => {
  const ids = Array.from({ length: 14 }, (_, k) => `i${k}`);

  test('12 inputs are still all combinations', () => {
    expect(combinations(ids.slice(0, 12)).states).toHaveLength(4096);
  });

  test('beyond: none, all, each alone, all but each, every pair, each once, and a sentence that says so', () => {
    const { states, coverage } = combinations(ids);
    expect(states).toHaveLength(2 + 28 + 91);
    expect(new Set(states.map((state) => JSON.stringify(state))).size).toBe(states.length);
    expect(coverage.statement).toBe(
      '121 of 16384 combinations of 14 inputs: none, all, each alone, all but each one, and every pair; the others were not looked at',
    );
  });

  test('without the pairs where even those are too many', () => {
    const { states, coverage } = combinations(ids, 100);
    expect(states).toHaveLength(30);
    expect(coverage.complete).toBe(false);
  });
});
