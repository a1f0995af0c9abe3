/** What a meter would show between two points of a solved circuit. */

import type { Element, Netlist, Node, Solution } from './model.ts';
import { prepare, type Solver, solverOf } from './solve.ts';

export type MeterReading =
  | { kind: 'volts'; voltageV: number }
  /** Nothing ties the two points together: the display drifts. */
  | { kind: 'floating'; nodes: Node[] };

/**
 * Volts from one point to another (red probe on `from`, black on `to`).
 * A point with no way to chassis reads only against points of its own island.
 * @throws RangeError for a node that the solution does not have.
 */
export function meterReading(
  solution: Solution,
  netlist: Netlist | Solver,
  probes: { from: Node; to: Node },
): MeterReading {
  const { from, to } = probes;
  for (const node of [from, to]) {
    if (!Object.hasOwn(solution.nodeV, node)) {
      const id = 'solve' in netlist ? netlist.netlist.id : netlist.id;
      throw new RangeError(`${id}: unexpected node "${node}", expected a node of the circuit`);
    }
  }
  if (from !== to) {
    const loose = [from, to].filter((node) => solution.floating.includes(node));
    const together = solution.islands.some((island) => island.includes(from) && island.includes(to));
    if (loose.length > 0 && !together) return { kind: 'floating', nodes: loose };
  }
  return { kind: 'volts', voltageV: solution.nodeV[from]! - solution.nodeV[to]! };
}

/** Amps through an element or relay contact, as a clamp around it would show (signed as in `Solution.currentA`). */
export function amps(solution: Solution, id: string): number {
  if (!Object.hasOwn(solution.currentA, id)) {
    throw new RangeError(`unexpected element "${id}", expected one of ${Object.keys(solution.currentA).join(', ')}`);
  }
  return solution.currentA[id]!;
}

/** Current that an ohmmeter sends through what it measures [A]; small enough that diodes stay open. */
const METER_A = 1e-4;
const METER_ID = 'ohmmeter';

/**
 * Ohms between two points with every source disconnected, contacts as the solution has them; Infinity where nothing
 * joins the points. Diodes and LED strips count as open, electronic loads as open too.
 */
export function ohms(solution: Solution, netlist: Netlist | Solver, probes: { from: Node; to: Node }): number {
  const solver = solverOf(netlist);
  for (const node of [probes.from, probes.to]) solver.placeOf(node);
  if (probes.from === probes.to) return 0;
  const elements: Element[] = [];
  for (const element of solver.netlist.elements) {
    if (element.kind === 'source' || element.kind === 'diode') continue;
    if (element.kind === 'load' && element.model !== 'resistive') continue;
    if (element.kind !== 'relay') elements.push(element);
    else elements.push({ ...element, stuck: solution.energised[element.id] === true ? 'energised' : 'released' });
  }
  // A source of 1 V behind 10 kilohm is an ohmmeter: what is left of its volt tells the resistance.
  const meter: Element = { kind: 'source', id: METER_ID, p: probes.from, n: probes.to, volts: 1, ohm: 1 / METER_A };
  const measured = prepare({ ...solver.netlist, elements: [...elements, meter], loads: [] }).solve(solution.inputs);
  const currentA = measured.currentA[METER_ID]!;
  const voltageV = measured.nodeV[probes.from]! - measured.nodeV[probes.to]!;
  return currentA < 1e-12 ? Number.POSITIVE_INFINITY : voltageV / currentA;
}
