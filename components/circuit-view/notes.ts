/** Readings that a reader took of a fault to be found, kept in a chosen list: state, what was probed. The value follows from the fault. */
import { CHASSIS, meterReading, type Proof, type Reading } from '../../calc/index.ts';
import { listOf, stepsOf } from '../chosen.ts';
import type { JobContext } from '../context.ts';
import { say } from '../show.ts';
import { benchOf, faultOfKey, inputsInWords, inputsOf } from './state.ts';

/** Name of the chosen list. */
export const NOTES = 'notes';

const MARK = { list: '+', step: '>', part: '~' } as const;

/** Key of one reading: `side+rear~K1.30~0` volts between two points, `side~@W2` amps through one. */
export const noteOf = (steps: readonly string[], ...what: readonly string[]): string =>
  [steps.map((step) => step.replaceAll(',', MARK.list)).join(MARK.step), ...what].join(MARK.part);

export interface Note {
  key: string;
  /** Where and in which state, in words. */
  words: string;
  value: string;
  reading: Reading;
}

/** Every reading taken, as the circuit with the hidden fault gives it. */
export function notesOf(job: JobContext, proof: Proof): Note[] {
  const circuit = job.circuit!;
  const solve = benchOf(proof);
  const fault = faultOfKey(proof, job.chosen['hidden'] ?? job.chosen['fault'] ?? '');
  return listOf(job.chosen[NOTES] ?? '').flatMap((key): Note[] => {
    const [state = '', red = '', black] = key.split(MARK.part);
    const steps = stepsOf(state.replaceAll(MARK.step, ';').replaceAll(MARK.list, ','));
    let relays: Record<string, boolean> | undefined;
    let before = relays;
    let end = solve(fault, { inputs: inputsOf(circuit, listOf(steps[0]!)) });
    for (const [n, step] of steps.entries()) {
      before = relays;
      if (n > 0) end = solve(fault, { inputs: inputsOf(circuit, listOf(step)), relays });
      relays = Object.fromEntries(Object.entries(end.solution.energised).map(([id, on]) => [id, on === true]));
    }
    const inputs = inputsOf(circuit, listOf(steps.at(-1)!));
    const when = inputsInWords(circuit, listOf(steps.at(-1)!)).toLowerCase();
    if (red.startsWith('@')) {
      const id = red.slice(1);
      const a = end.solution.currentA[id];
      if (a === undefined) return [];
      return [
        {
          key,
          words: `clamp round ${id}, ${when}`,
          value: say(Math.abs(a), 'current', job.units),
          reading: { inputs, relays: before, of: { amps: id }, is: a },
        },
      ];
    }
    const node = (ref: string) => (ref === CHASSIS ? CHASSIS : proof.origin.nodeOf[ref]);
    const [from, to] = [node(red), node(black ?? '')];
    if (from === undefined || to === undefined) return [];
    const shown = meterReading(end.solution, proof.netlist, { from, to });
    const volts = shown.kind === 'volts' ? shown.voltageV : 0;
    return [
      {
        key,
        words: `${placeWords(red)} to ${placeWords(black ?? '')}, ${when}`,
        value: shown.kind === 'volts' ? say(volts, 'voltage', job.units) : 'drifts',
        reading: { inputs, relays: before, of: { from, to }, is: volts },
      },
    ];
  });
}

export const placeWords = (ref: string): string => (ref === CHASSIS ? 'the chassis' : ref.replace('.', ' '));
