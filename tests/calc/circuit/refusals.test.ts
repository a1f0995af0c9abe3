import { describe, expect, test } from 'vitest';
import { applyFault, singleFaults } from '../../../calc/circuit/faults.ts';
import { meterReading, ohms } from '../../../calc/circuit/meter.ts';
import type { Element } from '../../../calc/circuit/model.ts';
import { prepare, solveState } from '../../../calc/circuit/solve.ts';
import { truthTable } from '../../../calc/circuit/states.ts';
import { contact, diode, fuse, lamp, netlist, relay, resistor, source, wire } from './build.ts';

const sound = netlist(source('bat', 'b', '0', 12), contact('s', 'b', 'x'), lamp('l', 'x', '0'));

describe('a netlist that cannot be meant', () => {
  test.each<[string, Element[], RegExp]>([
    ['two elements with one id', [resistor('r', 'a', '0', 1), resistor('r', 'b', '0', 1)], /two elements are called r/],
    [
      'an element named like a contact',
      [relay('k', 'a', '0', 'a', 'b'), resistor('k.no', 'b', '0', 1)],
      /two elements are called k\.no/,
    ],
    [
      'two ideal sources side by side',
      [source('a', 'x', '0', 12, 0), source('b', 'x', '0', 12, 0)],
      /loop of ideal sources: b, a/,
    ],
    [
      'three ideal sources in a ring',
      [source('a', 'x', '0', 12, 0), source('b', 'y', 'x', 12, 0), source('c', 'y', '0', 24, 0)],
      /loop of ideal sources: c, a, b:/,
    ],
    [
      'an ideal source closed by a joint',
      [resistor('j', 'x', '0', 0), source('a', 'x', '0', 12, 0)],
      /loop of ideal sources: a, j/,
    ],
    ['a source on one node', [source('a', 'x', 'x', 12, 1)], /a: a loop of ideal sources: both poles are on node x/],
    ['a negative length', [{ ...wire('w', 'a', 'b'), lengthM: -1 }], /w: unexpected lengthM -1 m/],
    ['a wire without thickness', [{ ...wire('w', 'a', 'b'), areaMm2: 0 }], /w: unexpected areaMm2 0 mm2/],
    ['a negative resistance', [resistor('r', 'a', 'b', -1)], /r: unexpected ohm -1 ohm/],
    ['a resistance that is no number', [resistor('r', 'a', 'b', Number.NaN)], /r: unexpected ohm NaN/],
    ['a fuse rated 0', [{ ...fuse('f', 'a', 'b', 5), ratingA: 0 }], /f: unexpected ratingA 0 A/],
    [
      'a drop-out above the pull-in',
      [relay('k', 'a', '0', 'b', 'c', null, { dropOutV: 9 })],
      /k: unexpected dropOutV 9 V/,
    ],
    ['a diode that drives', [diode('d', 'a', 'b', -1)], /d: unexpected forwardV -1 V/],
    ['a strip without group voltage', [lamp('l', 'a', 'b', 1, { model: 'strip' })], /l: unexpected groupV undefined/],
    ['a node without name', [resistor('r', '', '0', 1)], /r: unexpected node {2}at terminal 1/],
    [
      'a kind that is not there',
      [{ ...resistor('r', 'a', 'b', 1), kind: 'coilgun' } as unknown as Element],
      /r: unexpected kind "coilgun"/,
    ],
  ])('%s', (_, elements, message) => {
    expect(() => prepare(netlist(...elements))).toThrow(message);
  });

  test('a switch of an unknown input', () => {
    expect(() => prepare({ ...sound, inputs: [] })).toThrow(/s: unexpected input "s", expected one of none/);
  });

  test('a load that is not there', () => {
    expect(() => prepare({ ...sound, loads: ['lamp'] })).toThrow(/unexpected load "lamp", expected one of l/);
  });
});

describe('a question that cannot be meant', () => {
  test.each<[string, () => unknown, RegExp]>([
    ['an unknown input', () => solveState(sound, { key: true }), /unexpected input "key", expected one of s/],
    [
      'an unknown relay',
      () => solveState(sound, {}, { relays: { k: true } }),
      /unexpected relay "k", expected one of none/,
    ],
    ['volts of no source', () => solveState(sound, {}, { volts: { l: 3 } }), /unexpected source "l"/],
    [
      'volts that are no number',
      () => solveState(sound, {}, { volts: { bat: Number.NaN } }),
      /bat: unexpected volts NaN/,
    ],
    [
      'a meter on an unknown node',
      () => meterReading(solveState(sound, {}), sound, { from: 'q', to: '0' }),
      /unexpected node "q"/,
    ],
    [
      'an ohmmeter on an unknown node',
      () => ohms(solveState(sound, {}), sound, { from: 'q', to: '0' }),
      /unexpected node "q"/,
    ],
    ['a fault in no element', () => applyFault(sound, { kind: 'open', id: 'w1' }), /unexpected element "w1"/],
    [
      'a fault that the part cannot have',
      () => applyFault(sound, { kind: 'welded', id: 'l' }),
      /l \(load\) cannot be welded/,
    ],
  ])('%s', (_, ask, message) => {
    expect(ask).toThrow(message);
  });
});

describe('2,000 parts', () => {
  /** A square net of resistors with lamps, switches and diodes hung into it. */
  function big(parts: number) {
    const elements: Element[] = [source('bat', 'n0', '0', 13.8)];
    const side = 28;
    for (let k = 1; elements.length < parts; k++) {
      const [from, to] = [`n${(k * 7) % (side * side)}`, `n${(k * 13 + 5) % (side * side)}`];
      if (from === to) continue;
      if (k % 9 === 0) elements.push(lamp(`l${k}`, from, '0', 20 + (k % 50)));
      else if (k % 31 === 0) elements.push(diode(`d${k}`, from, to));
      else if (k % 97 === 0) elements.push(contact(`s${k}`, from, to));
      else elements.push(resistor(`r${k}`, from, to, 0.05 + (k % 7) / 10));
    }
    return netlist(...elements);
  }
  const circuit = big(2000);

  test('one state is solved, and the node law holds in it', () => {
    const solution = solveState(circuit, {});
    expect(solution.settles).toBe(true);
    const intoA: Record<string, number> = {};
    for (const element of circuit.elements) {
      const currentA = solution.currentA[element.id]!;
      const [a, b] =
        element.kind === 'source'
          ? [element.n, element.p]
          : element.kind === 'diode'
            ? [element.a, element.k]
            : [(element as { a: string }).a, (element as { b: string }).b];
      intoA[a] = (intoA[a] ?? 0) - currentA;
      intoA[b] = (intoA[b] ?? 0) + currentA;
    }
    expect(Math.max(...Object.values(intoA).map(Math.abs))).toBeLessThan(1e-9);
  });

  test('too many inputs: the table says what it covered', () => {
    const { rows, coverage } = truthTable(circuit);
    expect(coverage.complete).toBe(false);
    expect(coverage.of).toBe(2 ** circuit.inputs.length);
    expect(rows).toHaveLength(coverage.combinations);
    expect(coverage.statement).toMatch(/combinations of \d+ inputs: none, all, each alone/);
  });

  test('the single-fault study keeps to what it can afford and says so', () => {
    const some = circuit.elements.slice(0, 40).map((element) => ({ kind: 'open', id: element.id }) as const);
    const { coverage, results } = singleFaults(circuit, { faults: some.slice(1) });
    expect(results).toHaveLength(39);
    expect(coverage.complete).toBe(false);
  });
});
