/** The state of the circuit that a page is looking at: which inputs are on, with which fault in it, and how that is solved. */
import {
  type Circuit,
  describeFault,
  type Fault,
  faultBench,
  faultsOf,
  type Proof,
  type Solution,
} from '../../calc/index.ts';
import { listOf, textOfList } from '../chosen.ts';
import type { JobContext } from '../context.ts';

export interface Looked {
  /** Inputs that are on, in the circuit's order. */
  on: string[];
  solution: Solution;
  fault: Fault | undefined;
  /** The fault in workshop words; empty where the circuit is sound. */
  faultWords: string;
  blown: string[];
  hot: string[];
}

/** Name of a fault in links and choices. */
export const faultKey = (fault: Fault): string =>
  fault.kind === 'short' ? `${fault.kind}:${fault.id}:${fault.at}` : `${fault.kind}:${fault.id}`;

/** Inputs that are on, as text: the choice that a control of a state makes. */
export function onKey(circuit: Circuit, inputs: Readonly<Record<string, boolean>>): string {
  return textOfList(Object.keys(circuit.inputs).filter((id) => inputs[id]));
}

/** What is looked at before anyone chooses: the first state in which most loads are on. */
function startOf(circuit: Circuit, proof: Proof): string {
  let best = proof.states[0]!;
  const count = (state: typeof best) => Object.values(state.charging.on).filter((on) => on === true).length;
  for (const state of proof.states) if (count(state) > count(best)) best = state;
  return onKey(circuit, best.inputs);
}

// One look serves every component of the page: a view is asked for by each, and solving is not free.
let last: { proof: Proof; on: string; fault: string; looked: Looked } | undefined;
let bench: { proof: Proof; solve: ReturnType<typeof faultBench>['solve'] } | undefined;

/** The state that the page looks at, or null where there is no circuit or it could not be worked out. */
export function looked(job: JobContext): Looked | null {
  const { circuit, study, chosen } = job;
  if (circuit === null || study === null) return null;
  const { proof } = study;
  const on = chosen['on'] ?? startOf(circuit, proof);
  const fault = chosen['fault'] ?? '';
  if (last?.proof === proof && last.on === on && last.fault === fault) return last.looked;
  const wanted = listOf(on);
  const ids = Object.keys(circuit.inputs).filter((id) => wanted.includes(id));
  const inputs = Object.fromEntries(Object.keys(circuit.inputs).map((id) => [id, ids.includes(id)]));
  const found = fault === '' ? undefined : faultsOf(proof.netlist).find((each) => faultKey(each) === fault);
  const state = proof.states.find((each) => onKey(circuit, each.inputs) === textOfList(ids));
  let result: Looked;
  if (found === undefined && state !== undefined) {
    result = { on: ids, solution: state.charging, fault: undefined, faultWords: '', blown: [], hot: [] };
  } else {
    if (bench?.proof !== proof) bench = { proof, solve: faultBench(proof.netlist).solve };
    const { solution, blown, hot } = bench.solve(found, { inputs });
    const faultWords = found === undefined ? '' : describeFault(proof.netlist, found);
    result = { on: ids, solution, fault: found, faultWords, blown, hot };
  }
  last = { proof, on, fault, looked: result };
  return result;
}

/** Words for the two positions of an input. */
const POSITIONS: Record<string, [string, string]> = {
  door: ['shut', 'open'],
  ignition: ['out', 'on'],
  switch: ['off', 'on'],
  push: ['released', 'pressed'],
  signal: ['off', 'on'],
};

/** "open", "shut", "on": the author's word or the kind's. */
export function positionOf(circuit: Circuit, id: string, on: boolean): string {
  const input = circuit.inputs[id]!;
  return (on ? input.on : input.off) ?? POSITIONS[input.kind]![on ? 1 : 0];
}

/** "Side door open, master on": the inputs that are on, or all of them where none is. */
export function inputsInWords(circuit: Circuit, on: readonly string[]): string {
  const ids = Object.keys(circuit.inputs);
  const named = on.length > 0 ? ids.filter((id) => on.includes(id)) : ids;
  const words = named.map(
    (id) => `${circuit.inputs[id]!.label.toLowerCase()} ${positionOf(circuit, id, on.includes(id))}`,
  );
  const text = words.join(', ');
  return text === '' ? 'Always' : text[0]!.toUpperCase() + text.slice(1);
}

/** A load's own word: its label, else its id. */
export const loadName = (circuit: Circuit, id: string): string => circuit.parts[id]?.label ?? id;

/** Current below which a conductor counts as carrying none [A]: a meter in the hand reads zero. */
export const LIVE_A = 0.001;
