import { type BenchDiagnosis, type Circuit, diagnose, type Fault, type Proof } from '../../calc/index.ts';
import { inputsInWords, loadName } from '../circuit-view/state.ts';
import type { View } from '../contract.ts';

/** Causes that are named; more than these no one checks before measuring again. */
const NAMED = 3;
/** Faults named of one cause: the rest read the same. */
const MEMBERS = 3;
/** A cause that explains this much less than the best one is not named. */
const BEHIND = 1;

/** What goes wrong most often on a vehicle comes first among faults that read the same. Common practice, no source. */
const OFTEN: readonly ((fault: Fault, circuit: Circuit) => boolean)[] = [
  ({ id }, { parts }) => parts[id]?.kind === 'chassis',
  ({ kind, id }, { parts }) => kind === 'open' && parts[id]?.kind === 'fuse',
  ({ id }, { parts }) => parts[owner(id)]?.kind === 'connector',
  ({ kind }) => kind === 'coil-open',
  ({ id }, { parts }) => parts[owner(id)]?.kind === 'switch' || parts[owner(id)]?.kind === 'relay',
  ({ kind, id }, { wires }) => kind === 'open' && wires[id] !== undefined,
];
const owner = (id: string): string => id.split('.')[0]!;
const rank = (fault: Fault, circuit: Circuit): number => {
  const at = OFTEN.findIndex((is) => is(fault, circuit));
  return at < 0 ? OFTEN.length : at;
};

/** "Ground point G1 does not make contact": the fault with the author's word for the part. */
function named(circuit: Circuit, fault: Fault, words: string): string {
  const id = owner(fault.id);
  const label = circuit.parts[id]?.label ?? circuit.wires[id]?.label;
  const plain = circuit.parts[id]?.kind === 'chassis' && fault.kind === 'open' ? `ground point ${id} open` : words;
  return label === undefined ? plain : `${plain} (${label.charAt(0).toLowerCase()}${label.slice(1)})`;
}

/** The first causes in words, one row each, and the reading that would part them. */
export function causesInWords(
  circuit: Circuit,
  proof: Proof,
  { causes, next, soundMisfit }: BenchDiagnosis,
): { fits: string; causes: View[]; next: string } {
  const best = causes[0];
  if (best === undefined || best.misfit >= soundMisfit)
    return {
      fits: 'No single fault explains these readings. Read again, then look for two faults.',
      causes: [],
      next: '',
    };
  const first = causes.slice(0, NAMED).filter(({ misfit }) => misfit < best.misfit + BEHIND);
  const rows = first.map(({ faults, words }): View => {
    const sorted = faults
      .map((fault, i) => ({ fault, words: words[i]! }))
      .sort((a, b) => rank(a.fault, circuit) - rank(b.fault, circuit));
    const said = sorted.slice(0, MEMBERS).map((each) => named(circuit, each.fault, each.words));
    const more = sorted.length - said.length;
    return { text: `${said.join(', or ')}${more > 0 ? `. ${more} more read the same` : ''}.` };
  });
  const lead = String(rows[0]!['text']);
  return {
    fits: `${best.misfit < 0.5 ? 'These readings fit' : 'Nearest fit'}: ${lead}`,
    causes: rows.slice(1),
    next:
      next === undefined
        ? beyond(
            circuit,
            proof,
            first.flatMap(({ faults }) => faults),
          )
        : nextOnSheet(circuit, next),
  };
}

function nextOnSheet(circuit: Circuit, { kind, id, on }: NonNullable<BenchDiagnosis['next']>): string {
  const where =
    kind === 'load' ? `volts at ${loadName(circuit, id)}` : kind === 'fuse' ? `current at ${id}` : 'standby';
  return `Measure next: ${where}, ${inputsInWords(circuit, on).toLowerCase()}.`;
}

/** Where the sheet cannot part them any further, a point of the circuit can. */
function beyond(circuit: Circuit, proof: Proof, faults: readonly Fault[]): string {
  if (faults.length < 2) return '';
  const { next } = diagnose(proof.netlist, [], { faults: faults.slice(0, 8) });
  if (next === undefined) return '';
  const on = Object.keys(next.inputs).filter((id) => next.inputs[id]);
  const where =
    'load' in next.of
      ? `across ${loadName(circuit, next.of.load)}`
      : 'from' in next.of
        ? `from ${next.of.from} to chassis`
        : '';
  return `Measure next: volts ${where}, ${inputsInWords(circuit, on).toLowerCase()}.`;
}
