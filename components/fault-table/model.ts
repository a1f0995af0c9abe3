import { type Circuit, describeFault, type FaultResult, type FaultStudy, type Proof } from '../../calc/index.ts';
import { inTrade } from '../circuit-view/fault-words.ts';
import { faultKey, inputsInWords, loadName } from '../circuit-view/state.ts';

export interface FaultTableProps {
  of?: string | undefined;
}

export interface FaultLine {
  /** Choice that shows the first of these faults. */
  choose: string;
  /** Faults that do the same, in words. */
  faults: string;
  /** What is seen. */
  seen: string;
  danger: string;
}

/** Faults that do the same stand on one line: from outside they look alike. What harms comes first, then what shows most. */
export function faultLines(circuit: Circuit, proof: Proof, faults: FaultStudy, of: string | undefined): FaultLine[] {
  const alike = new Map<string, FaultResult[]>();
  for (const result of faults.results) {
    if (of !== undefined && proof.origin.ownerOf[result.fault.id.replace(/\.(no|nc)$/, '')] !== of) continue;
    const key = JSON.stringify([result.changed, result.blown, result.hot]);
    alike.set(key, [...(alike.get(key) ?? []), result]);
  }
  const weight = ({ hot, blown, changed }: FaultResult) =>
    Object.keys(hot).length * 1e6 + Object.keys(blown).length * 1e3 + changed.length;
  return [...alike.values()]
    .sort(([a], [b]) => weight(b!) - weight(a!))
    .map((group) => {
      const [first] = group as [FaultResult];
      const hot = [...new Set(Object.values(first.hot).flat())];
      return {
        choose: `fault:${faultKey(first.fault)}`,
        faults: inTrade(together(group.map(({ fault }) => describeFault(proof.netlist, fault)))),
        seen: seen(circuit, proof, faults, first),
        danger:
          hot.length > 0
            ? `${inTrade(list(hot))} ${hot.length === 1 ? 'overheats' : 'overheat'} and no fuse opens`
            : '',
      };
    });
}

/** "W1, W2 broken; F1 blown": what fails in the same way is named together. */
function together(words: readonly string[]): string {
  const ways = new Map<string, Set<string>>();
  const whole: string[] = [];
  for (const text of words) {
    // which end of a wire it is does not matter here
    const [, id, way] = /^(\S+) (.+?)(?: at \S+)?$/.exec(text) ?? [];
    if (id === undefined || way === undefined || id === 'coil') whole.push(text);
    else ways.set(way, (ways.get(way) ?? new Set()).add(id));
  }
  const grouped = [...ways].map(([way, ids]) => `${list([...ids], 'or')} ${way}`);
  return [...grouped, ...new Set(whole)].join('; ');
}

const list = (words: readonly string[], last = 'and'): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;

const NUMBERS = ['', '', 'both', 'all three', 'all four', 'all five', 'all six'];

/** Loads by one name: "all four lamps" where every load of the circuit's lamps is meant. */
function named(circuit: Circuit, loads: readonly string[]): string {
  const all = Object.keys(circuit.intent.loads);
  if (loads.length > 1 && loads.length === all.length) {
    const kinds = new Set(loads.map((id) => circuit.parts[id]?.kind));
    const noun =
      kinds.size === 1 && kinds.has('lamp') ? 'lamps' : kinds.size === 1 && kinds.has('strip') ? 'strips' : 'loads';
    return `${NUMBERS[loads.length] ?? `all ${loads.length}`} ${noun}`;
  }
  return list(loads.map((id) => loadName(circuit, id)));
}

function seen(circuit: Circuit, proof: Proof, faults: FaultStudy, result: FaultResult): string {
  const parts: string[] = [];
  const blown = [...new Set(Object.values(result.blown).flat())];
  if (blown.length > 0) parts.push(`${inTrade(list(blown))} ${blown.length === 1 ? 'blows' : 'blow'}`);
  if (result.changed.some(({ settles }) => !settles)) parts.push('a relay rattles');
  // loads that change alike, in the same states, are said together
  const alike = new Map<string, { loads: string[]; is: boolean; states: number[] }>();
  for (const load of Object.keys(circuit.intent.loads)) {
    for (const is of [false, true]) {
      const states = result.changed
        // the study's rows are the proof's states at charging voltage, in the same order
        .filter(({ n, on }) => on[load] === is && proof.states[n]?.charging.on[load] !== is)
        .map(({ n }) => n);
      if (states.length === 0) continue;
      const usual = proof.states.filter(({ charging }) => charging.on[load] === !is).length;
      const key = `${is} ${states.length === usual ? 'always' : states.join()}`;
      const group = alike.get(key) ?? { loads: [], is, states: states.length === usual ? [] : states };
      group.loads.push(load);
      alike.set(key, group);
    }
  }
  for (const { loads, is, states } of alike.values()) {
    const verb = loads.length > 1 ? (is ? 'come' : 'stay') : is ? 'comes' : 'stays';
    // in every state that should show the other
    if (states.length === 0) {
      parts.push(
        `${named(circuit, loads)} ${is ? (loads.length > 1 ? 'are' : 'is') : verb} ${is ? 'always on' : 'off'}`,
      );
      continue;
    }
    const row = faults.rows.find(({ n }) => n === states[0])!;
    const words = inputsInWords(
      circuit,
      Object.keys(row.inputs).filter((id) => row.inputs[id]),
    ).toLowerCase();
    const more =
      states.length > 1 ? ` and in ${states.length - 1} more ${states.length === 2 ? 'state' : 'states'}` : '';
    parts.push(`${named(circuit, loads)} ${verb} ${is ? 'on' : 'off'} with ${words}${more}`);
  }
  return parts.length === 0 ? 'Nothing to be seen at the loads' : parts.map(capital).join('. ');
}

const capital = (text: string) => text[0]!.toUpperCase() + text.slice(1);
