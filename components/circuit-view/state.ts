/** The state of the circuit that a page is looking at: which inputs are on, with which fault in it, and how that is solved. */
import {
  type Circuit,
  type Fault,
  faultBench,
  faultsOf,
  type Proof,
  type RelayState,
  type Solution,
} from '../../calc/index.ts';
import { lastOf, listOf, stepsOf, textOfList } from '../chosen.ts';
import type { JobContext } from '../context.ts';
import { sayFault } from './fault-words.ts';

export interface Looked {
  /** Inputs that are on, in the circuit's order. */
  on: string[];
  /** Steps that led here, this one last, as they are chosen; one where nothing came before. */
  steps: string[];
  solution: Solution;
  fault: Fault | undefined;
  /** The fault in workshop words; empty where the circuit is sound. */
  faultWords: string;
  blown: string[];
  hot: string[];
  /** The fault is one to be found: what only a meter could tell is not shown. */
  hidden: boolean;
}

/** Name of a fault in links and choices. */
export const faultKey = (fault: Fault): string =>
  fault.kind === 'short' ? `${fault.kind}:${fault.id}:${fault.at}` : `${fault.kind}:${fault.id}`;

export const faultOfKey = (proof: Proof, key: string): Fault | undefined =>
  key === '' ? undefined : faultsOf(proof.netlist).find((each) => faultKey(each) === key);

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

/** Positions of all inputs where these are on. */
export const inputsOf = (circuit: Circuit, on: readonly string[]): Record<string, boolean> =>
  Object.fromEntries(Object.keys(circuit.inputs).map((id) => [id, on.includes(id)]));

const relaysOf = (solution: Solution): RelayState =>
  Object.fromEntries(Object.entries(solution.energised).map(([id, energised]) => [id, energised === true]));

type Bench = ReturnType<typeof faultBench>['solve'];
// One look serves every component of the page: a view is asked for by each, and solving is not free.
let last: { proof: Proof; on: string; fault: string; hidden: boolean; looked: Looked } | undefined;
let bench: { proof: Proof; solve: Bench } | undefined;

export function benchOf(proof: Proof): Bench {
  if (bench?.proof !== proof) bench = { proof, solve: faultBench(proof.netlist).solve };
  return bench.solve;
}

/** The state that the page looks at, or null where there is no circuit or it could not be worked out. */
export function looked(job: JobContext): Looked | null {
  const { circuit, study, chosen } = job;
  if (circuit === null || study === null) return null;
  const { proof } = study;
  const on = chosen['on'] ?? startOf(circuit, proof);
  const hidden = (chosen['hidden'] ?? '') !== '';
  const fault = hidden ? chosen['hidden']! : (chosen['fault'] ?? '');
  if (last?.proof === proof && last.on === on && last.fault === fault && last.hidden === hidden) return last.looked;

  const steps = stepsOf(on);
  const wanted = listOf(lastOf(on));
  const ids = Object.keys(circuit.inputs).filter((id) => wanted.includes(id));
  const found = faultOfKey(proof, fault);
  const state =
    steps.length === 1 ? proof.states.find((each) => onKey(circuit, each.inputs) === textOfList(ids)) : undefined;
  let result: Looked;
  if (found === undefined && state !== undefined) {
    const sound = { fault: undefined, faultWords: '', blown: [], hot: [], hidden };
    result = { on: ids, steps, solution: state.charging, ...sound };
  } else {
    const solve = benchOf(proof);
    // where the steps only grew by some, the relays stand as the steps before left them
    const before = last?.proof === proof && last.fault === fault && on.startsWith(`${last.on};`) ? last : undefined;
    let relays = before ? relaysOf(before.looked.solution) : undefined;
    let end: ReturnType<Bench> | undefined;
    for (const step of steps.slice(before?.looked.steps.length ?? 0)) {
      end = solve(found, { inputs: inputsOf(circuit, listOf(step)), relays });
      relays = relaysOf(end.solution);
    }
    const { solution, blown, hot } = end!;
    const faultWords = found === undefined || hidden ? '' : sayFault(proof.netlist, found);
    result = { on: ids, steps, solution, fault: found, faultWords, blown, hot, hidden };
  }
  last = { proof, on, fault, hidden, looked: result };
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

/** What moved from step to step: "Start button pressed, start button released". */
export function movesInWords(circuit: Circuit, steps: readonly string[]): string {
  const moves = steps.flatMap((step, n) => {
    const [now, before] = [listOf(step), n === 0 ? [] : listOf(steps[n - 1]!)];
    return Object.keys(circuit.inputs)
      .filter((id) => now.includes(id) !== before.includes(id))
      .map((id) => `${circuit.inputs[id]!.label.toLowerCase()} ${positionOf(circuit, id, now.includes(id))}`);
  });
  const text = moves.join(', ');
  return text === '' ? '' : text[0]!.toUpperCase() + text.slice(1);
}

/** Steps before this one that are said. */
const MOST_SAID = 6;

/** What led here, where something did: "Before: start button pressed." */
export function stepsInWords(circuit: Circuit, look: Looked): string {
  const before = movesInWords(circuit, look.steps.slice(-MOST_SAID, -1)).toLowerCase();
  return look.steps.length < 2 ? '' : `Before: ${before === '' ? 'everything off' : before}.`;
}

/** A load's own word: its label, else its id. */
export const loadName = (circuit: Circuit, id: string): string => circuit.parts[id]?.label ?? id;

/** Current below which a conductor counts as carrying none [A]: a meter in the hand reads zero. */
export const LIVE_A = 0.001;
