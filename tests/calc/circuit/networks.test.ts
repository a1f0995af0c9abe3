import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Element, Netlist } from '../../../calc/circuit/model.ts';
import { prepare, solveState } from '../../../calc/circuit/solve.ts';
import { truthTable } from '../../../calc/circuit/states.ts';
import { sweep } from '../../../calc/circuit/sweep.ts';
import { contact, diode, lamp, netlist, relay, resistor, source } from './build.ts';

const RUNS = { numRuns: 300 };
const node = (k: number) => (k === 0 ? '0' : `n${k}`);
const place = fc.tuple(fc.nat(7), fc.nat(7)).filter(([a, b]) => a !== b);
/** From a good joint to a warning lamp. */
const ohm = fc.double({ min: -3, max: 4, noNaN: true }).map((power) => 10 ** power);
const volts = fc.double({ min: -30, max: 30, noNaN: true });

const resistors = fc
  .array(fc.tuple(place, ohm), { minLength: 1, maxLength: 16 })
  .map((all) => all.map(([[a, b], r], k) => resistor(`r${k}`, node(a), node(b), r)));
const sources = fc
  .array(fc.tuple(place, volts, ohm), { minLength: 1, maxLength: 3 })
  .map((all) => all.map(([[a, b], v, r], k) => source(`v${k}`, node(a), node(b), v, r)));
const linear = fc.tuple(sources, resistors).map(([some, others]) => netlist(...some, ...others));

/** Anything at all: diodes, strips, electronic loads, switches and relays besides. */
const anything = fc
  .tuple(
    sources,
    resistors,
    fc.array(place, { maxLength: 4 }),
    fc.array(fc.tuple(place, fc.constantFrom('resistive', 'strip', 'constant-current', 'constant-power')), {
      maxLength: 3,
    }),
    fc.array(place, { maxLength: 3 }),
    fc.array(fc.tuple(place, place), { maxLength: 2 }),
  )
  .map(([some, others, diodes, loads, switches, relays]) =>
    netlist(
      ...some,
      ...others,
      ...diodes.map(([a, b], k) => diode(`d${k}`, node(a), node(b))),
      ...loads.map(([[a, b], model], k) =>
        lamp(`l${k}`, node(a), node(b), 5, { model, groupV: 4, currentA: 0.5, powerW: 5 }),
      ),
      ...switches.map(([a, b], k) => contact(`s${k}`, node(a), node(b))),
      ...relays.map(([[a, b], [c, d]], k) => relay(`k${k}`, node(a), node(b), node(c), node(d), node(7 - d))),
    ),
  );

/** Sum of the currents into each node, and the power of all elements together. */
function laws(circuit: Netlist, inputs: Record<string, boolean> = {}) {
  const solver = prepare(circuit);
  const solution = solver.solve(inputs);
  const intoA: Record<string, number> = {};
  let powerW = 0;
  let deliveredW = 0;
  for (const branch of solver.branches) {
    const shown = solution.currentA[branch.id]!;
    const currentA = branch.emfV === undefined ? shown : -shown;
    intoA[branch.a] = (intoA[branch.a] ?? 0) - currentA;
    intoA[branch.b] = (intoA[branch.b] ?? 0) + currentA;
    const watts = currentA * (solution.nodeV[branch.a]! - solution.nodeV[branch.b]!);
    powerW += watts;
    deliveredW = Math.max(deliveredW, Math.abs(watts));
  }
  return { solution, worstA: Math.max(0, ...Object.values(intoA).map(Math.abs)), powerW, deliveredW };
}

describe('every network', () => {
  test('keeps the node law within 1 nA, and its power in balance', () => {
    fc.assert(
      fc.property(anything, fc.array(fc.boolean(), { minLength: 3, maxLength: 3 }), (circuit, on) => {
        const inputs = Object.fromEntries(circuit.inputs.map(({ id }, k) => [id, on[k]!]));
        const { worstA, powerW, deliveredW } = laws(circuit, inputs);
        expect(worstA).toBeLessThanOrEqual(1e-9);
        expect(Math.abs(powerW)).toBeLessThanOrEqual(1e-7 * Math.max(1, deliveredW));
      }),
      RUNS,
    );
  });

  test('has no diode that carries backwards or blocks above its drop', () => {
    fc.assert(
      fc.property(anything, (circuit) => {
        const { solution } = laws(circuit);
        for (const element of circuit.elements) {
          if (element.kind !== 'diode') continue;
          const voltageV = solution.nodeV[element.a]! - solution.nodeV[element.k]!;
          const currentA = solution.currentA[element.id]!;
          expect(currentA).toBeGreaterThanOrEqual(-1e-9);
          expect(voltageV).toBeLessThanOrEqual(element.forwardV + 1e-8 + 3.1e-5 * currentA);
        }
      }),
      RUNS,
    );
  });

  test('is solved the same whatever the order of its parts', () => {
    fc.assert(
      fc.property(linear, (circuit) => {
        const [one, other] = [
          solveState(circuit, {}),
          solveState({ ...circuit, elements: circuit.elements.toReversed() }, {}),
        ];
        for (const { id } of circuit.elements) {
          const scale = Math.max(1, Math.abs(one.currentA[id]!));
          expect(Math.abs(one.currentA[id]! - other.currentA[id]!)).toBeLessThanOrEqual(1e-9 * scale);
        }
        expect(other.floating.toSorted()).toEqual(one.floating.toSorted());
      }),
      RUNS,
    );
  });

  test('is solved the same where its equations were laid out for one that is wired alike, or not', () => {
    fc.assert(
      fc.property(anything, anything, ohm, (circuit, stranger, times) => {
        const sound = prepare(circuit);
        const other: Netlist = {
          ...circuit,
          elements: circuit.elements.map((each) =>
            each.kind === 'resistor' ? { ...each, ohm: each.ohm * times } : each,
          ),
        };
        const after = prepare(other, circuit);
        expect(after.nodes).toBe(sound.nodes); // taken over, not laid out anew
        prepare(stranger);
        for (const solver of [after, prepare(other, stranger)])
          expect(solver.solve({})).toEqual(prepare({ ...other }).solve({}));
      }),
      RUNS,
    );
  });

  test('names as floating exactly the nodes that no part ties to chassis', () => {
    fc.assert(
      fc.property(linear, (circuit) => {
        const tied = new Set(['0']);
        const ends = circuit.elements.map((element) =>
          element.kind === 'source'
            ? [element.p, element.n]
            : [(element as { a: string }).a, (element as { b: string }).b],
        );
        for (let size = 0; size !== tied.size; ) {
          size = tied.size;
          for (const pair of ends) if (pair.some((end) => tied.has(end!))) for (const end of pair) tied.add(end!);
        }
        const loose = [...new Set(ends.flat())].filter((end) => !tied.has(end!)).sort();
        expect(solveState(circuit, {}).floating.sort()).toEqual(loose);
      }),
      RUNS,
    );
  });
});

describe('linear networks', () => {
  test('superpose: all sources together do what each alone adds up to', () => {
    fc.assert(
      fc.property(linear, (circuit) => {
        const solver = prepare(circuit);
        const ids = circuit.elements.flatMap((element) => (element.kind === 'source' ? [element.id] : []));
        const together = solver.solve({});
        const alone = ids.map((id) =>
          solver.solve(
            {},
            { volts: Object.fromEntries(ids.map((other) => [other, other === id ? volt(circuit, id) : 0])) },
          ),
        );
        for (const { id } of circuit.elements) {
          const sum = alone.reduce((total, one) => total + one.currentA[id]!, 0);
          const scale = Math.max(1, ...alone.map((one) => Math.abs(one.currentA[id]!)));
          expect(Math.abs(together.currentA[id]! - sum)).toBeLessThanOrEqual(1e-8 * scale);
        }
      }),
      RUNS,
    );
  });

  test('are reciprocal: 1 V here drives the current there that 1 V there drives here', () => {
    fc.assert(
      fc.property(resistors, place, place, (others, [a, b], [c, d]) => {
        // Two ports, each a source of 1 ohm; one pushes, the other only listens.
        const ports = (here: number, there: number) =>
          netlist(source('p', node(a), node(b), here, 1), source('q', node(c), node(d), there, 1), ...others);
        const there = solveState(ports(1, 0), {}).currentA['q']!;
        const here = solveState(ports(0, 1), {}).currentA['p']!;
        expect(Math.abs(there - here)).toBeLessThanOrEqual(1e-10);
      }),
      RUNS,
    );
  });

  test('built of series and parallel parts agree with the school rules', () => {
    type Tree = { ohm: number } | { series: Tree[] } | { parallel: Tree[] };
    const { tree } = fc.letrec<{ tree: Tree }>((tie) => ({
      tree: fc.oneof(
        { maxDepth: 3 },
        ohm.map((value) => ({ ohm: value })),
        fc.array(tie('tree'), { minLength: 1, maxLength: 3 }).map((series) => ({ series })),
        fc.array(tie('tree'), { minLength: 1, maxLength: 3 }).map((parallel) => ({ parallel })),
      ),
    }));
    const total = (part: Tree): number =>
      'ohm' in part
        ? part.ohm
        : 'series' in part
          ? part.series.reduce((sum, one) => sum + total(one), 0)
          : 1 / part.parallel.reduce((sum, one) => sum + 1 / total(one), 0);
    let joints = 0;
    const build = (part: Tree, from: string, to: string, into: Element[]): void => {
      if ('ohm' in part) into.push(resistor(`r${into.length}`, from, to, part.ohm));
      else if ('parallel' in part) for (const one of part.parallel) build(one, from, to, into);
      else {
        let at = from;
        for (const [k, one] of part.series.entries()) {
          const next = k === part.series.length - 1 ? to : `m${joints++}`;
          build(one, at, next, into);
          at = next;
        }
      }
    };
    fc.assert(
      fc.property(tree, (part) => {
        const elements: Element[] = [];
        build(part, 'x', '0', elements);
        const { currentA } = solveState(netlist(source('v', 'x', '0', 12, 1), ...elements), {});
        expect(currentA['v']! / (12 / (1 + total(part)))).toBeCloseTo(1, 9);
      }),
      RUNS,
    );
  });
});

function volt(circuit: Netlist, id: string): number {
  const found = circuit.elements.find((element) => element.id === id);
  return found?.kind === 'source' ? found.volts : 0;
}

test('states looked at in passing are the states worked out one by one', () => {
  let settled = 0;
  fc.assert(
    fc.property(anything, fc.boolean(), (sound, burns) => {
      const burnt = (each: Element): Element =>
        each.kind === 'load' && each.id === 'l0' && burns ? { ...each, ohm: Number.POSITIVE_INFINITY } : each;
      const circuit = { ...sound, elements: sound.elements.map(burnt) };
      const plain = truthTable(circuit, { races: 'none' });
      const swept = sweep(prepare(circuit), { races: 'none' }).table();
      expect(swept.rows.length).toBe(plain.rows.length);
      expect(swept.reached.length).toBe(plain.reached.length);
      for (const [n, { solution: one }] of [...swept.rows, ...swept.reached].entries()) {
        const other = [...plain.rows, ...plain.reached][n]!.solution;
        expect([one.inputs, one.energised, one.settles, one.on]).toEqual([
          other.inputs,
          other.energised,
          other.settles,
          other.on,
        ]);
        if (!one.settles) continue;
        settled++;
        for (const part of ['loadV', 'sourceV', 'currentA', 'nodeV'] as const) {
          expect(Object.keys(one[part])).toEqual(Object.keys(other[part]));
          for (const [id, value] of Object.entries(other[part])) expect(one[part][id]).toBeCloseTo(value as number, 6);
        }
        expect(one.islands).toEqual(other.islands);
      }
    }),
    RUNS,
  );
  expect(settled).toBeGreaterThan(300);
});
