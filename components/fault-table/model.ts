import { type Circuit, describeFault, type FaultResult, type FaultStudy, type Proof } from '../../calc/index.ts';
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

/** Faults that do the same stand on one line: from outside they look alike. */
export function faultLines(circuit: Circuit, proof: Proof, faults: FaultStudy, of: string | undefined): FaultLine[] {
  const alike = new Map<string, FaultResult[]>();
  for (const result of faults.results) {
    if (of !== undefined && proof.origin.ownerOf[result.fault.id.replace(/\.(no|nc)$/, '')] !== of) continue;
    const key = JSON.stringify([result.changed, result.blown, result.hot]);
    alike.set(key, [...(alike.get(key) ?? []), result]);
  }
  return [...alike.values()].map((group) => {
    const [first] = group as [FaultResult];
    const hot = [...new Set(Object.values(first.hot).flat())];
    return {
      choose: `fault:${faultKey(first.fault)}`,
      faults: [...new Set(group.map(({ fault }) => describeFault(proof.netlist, fault)))].join('; '),
      seen: seen(circuit, proof, faults, first),
      danger: hot.length > 0 ? `${hot.join(', ')} overheats and no fuse opens` : '',
    };
  });
}

function seen(circuit: Circuit, proof: Proof, faults: FaultStudy, result: FaultResult): string {
  const parts: string[] = [];
  const blown = [...new Set(Object.values(result.blown).flat())];
  if (blown.length > 0) parts.push(`${blown.join(' and ')} blows`);
  const restless = result.changed.some(({ settles }) => !settles);
  if (restless) parts.push('a relay rattles');
  for (const load of Object.keys(circuit.intent.loads)) {
    // the study's rows are the proof's states at charging voltage, in the same order
    const states = result.changed.filter(({ n, on }) => on[load] !== proof.states[n]?.charging.on[load]);
    if (states.length === 0) continue;
    const off = states.filter(({ on }) => on[load] === false);
    const lit = states.filter(({ on }) => on[load] === true);
    const when = (list: typeof states) => {
      const { inputs } = faults.rows.find(({ n }) => n === list[0]!.n)!;
      const words = inputsInWords(
        circuit,
        Object.keys(inputs).filter((id) => inputs[id]),
      );
      return list.length === 1
        ? `with ${words.toLowerCase()}`
        : `in ${list.length} states, first ${words.toLowerCase()}`;
    };
    if (off.length > 0) parts.push(`${loadName(circuit, load)} stays off ${when(off)}`);
    if (lit.length > 0) parts.push(`${loadName(circuit, load)} comes on ${when(lit)}`);
  }
  return parts.length === 0 ? 'Nothing to be seen at the loads' : capital(parts.join('. '));
}

const capital = (text: string) => text[0]!.toUpperCase() + text.slice(1);
