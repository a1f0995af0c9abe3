/** The bench sheet: what a meter should read in every state, and between which limits. */
import type { Measured } from './diagnose.ts';
import type { Circuit, InputState, Solution } from './model.ts';
import type { Proof } from './prove.ts';

/** One reading that the sheet asks for. */
export interface Probe {
  /** Names the reading in a job; does not change when the circuit's figures do. */
  key: string;
  inputs: InputState;
  /** Inputs that are on. */
  on: string[];
  kind: 'load' | 'fuse' | 'standby';
  /** Load, fuse or battery read. */
  id: string;
  /** Expected at charging voltage [V] or [A]; standby at resting voltage [A]. */
  predicted: number;
  low: number;
  high: number;
  unit: 'V' | 'A';
  /** The same reading as `diagnose` takes it; standby is read with everything off. */
  of: Measured;
}

/**
 * How far a sound reading may lie from the solved one, beside the spread of the supply: parts and a workshop's meter.
 * Common practice, no source.
 */
export const BENCH_TOLERANCE = { fraction: 0.1, leastV: 0.3, leastA: 0.05, standbyA: 0.005, offV: 0.5 } as const;

/** States on the sheet; more than these no one reads: all off, all on and each input alone come first. */
const MOST_STATES = 16;

/**
 * Readings to take on the bench, state by state: volts at every load, amps through every fuse that the job fits while it
 * carries any, and the standby current with everything off.
 *
 * @param circuit as its author wrote it
 * @param proof of that circuit
 * @returns probes in the order of the truth table; limits span resting to charging voltage and the tolerance
 * @source limits: common practice, no source (`BENCH_TOLERANCE`)
 */
export function benchProbes(circuit: Circuit, proof: Proof): Probe[] {
  const fuses = Object.entries(circuit.parts).flatMap(([id, part]) => (part.kind === 'fuse' ? [id] : []));
  const loads = Object.keys(circuit.intent.loads);
  const probes: Probe[] = [];
  for (const state of statesOf(proof)) {
    const on = Object.keys(circuit.inputs).filter((id) => state.inputs[id]);
    const key = on.join('+') || 'off';
    const add = (kind: Probe['kind'], id: string, rest: number, charge: number, unit: Probe['unit'], of: Measured) => {
      const least = unit === 'V' ? BENCH_TOLERANCE.leastV : BENCH_TOLERANCE.leastA;
      const slack = Math.max(least, BENCH_TOLERANCE.fraction * Math.max(rest, charge));
      const low = Math.max(0, Math.min(rest, charge) - slack);
      const high = Math.max(rest, charge) + slack;
      probes.push({ key: `${key}.${id}`, inputs: state.inputs, on, kind, id, predicted: charge, low, high, unit, of });
    };
    for (const id of loads) {
      const rest = voltsOf(state.resting, id);
      const charge = voltsOf(state.charging, id);
      if (rest === undefined || charge === undefined) continue;
      add('load', id, rest, charge, 'V', { load: id });
      const probe = probes.at(-1)!;
      // a load that is off may float a little; above this it glows or a wire feeds it
      if (state.charging.on[id] === false && probe.predicted < BENCH_TOLERANCE.offV) {
        probe.low = 0;
        probe.high = BENCH_TOLERANCE.offV;
      }
    }
    for (const id of fuses) {
      const rest = Math.abs(state.resting.currentA[id] ?? 0);
      const charge = Math.abs(state.charging.currentA[id] ?? 0);
      if (Math.max(rest, charge) >= BENCH_TOLERANCE.leastA) add('fuse', id, rest, charge, 'A', { amps: id });
    }
    if (on.length === 0) {
      const battery = Object.keys(circuit.parts).find((id) => circuit.parts[id]!.kind === 'battery');
      if (battery === undefined) continue;
      const predicted = state.drawMa / 1000;
      const slack = Math.max(BENCH_TOLERANCE.standbyA, BENCH_TOLERANCE.fraction * predicted);
      probes.push({
        key: `${key}.standby`,
        inputs: state.inputs,
        on,
        kind: 'standby',
        id: battery,
        predicted,
        low: Math.max(0, predicted - slack),
        high: predicted + slack,
        unit: 'A',
        of: { amps: battery },
      });
    }
  }
  return probes;
}

function statesOf(proof: Proof): Proof['states'] {
  if (proof.states.length <= MOST_STATES) return proof.states;
  const weight = (inputs: InputState) => {
    const count = Object.values(inputs).filter(Boolean).length;
    return count <= 1 ? count : count === Object.keys(inputs).length ? 0.5 : count;
  };
  const first = [...proof.states]
    .sort((a, b) => weight(a.inputs) - weight(b.inputs) || a.n - b.n)
    .slice(0, MOST_STATES);
  return first.sort((a, b) => a.n - b.n);
}

function voltsOf(solution: Solution, load: string): number | undefined {
  const volts = solution.loadV[load];
  return typeof volts === 'number' ? Math.abs(volts) : undefined;
}
