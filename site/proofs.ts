import { type Circuit, type Proof, prove } from '../calc/index.ts';
import { stockOf } from '../components/study.ts';
import { workshop } from './workshop.ts';

/** How proving a circuit ended: with a proof, or with one sentence that says why there is none. */
export type Outcome = { proof: Proof } | { failed: string };

/** One copy for the process, for the same reason as the workshop's. By the circuit itself: a changed file is another. */
const shared = globalThis as { [memo]?: WeakMap<Circuit, Outcome> };
const memo: unique symbol = Symbol.for('loomleaf.proofs') as never;

export function rememberProof(circuit: Circuit, outcome: Outcome): void {
  shared[memo] ??= new WeakMap();
  shared[memo].set(circuit, outcome);
}

/** Proof of a circuit at its default job values; undefined where there is none. The check has proven all beforehand. */
export async function proofOf(circuitId: string): Promise<Proof | undefined> {
  const { circuits, shop } = await workshop();
  const circuit = circuits.get(circuitId);
  if (!circuit) return undefined;
  let outcome = shared[memo]?.get(circuit);
  if (!outcome) {
    outcome = proveNow(circuit, { stock: stockOf(shop) });
    rememberProof(circuit, outcome);
  }
  return 'proof' in outcome ? outcome.proof : undefined;
}

/** Proves in this thread. Whatever goes wrong in it is the outcome, not an exception. */
export function proveNow(circuit: Circuit, options: { stock: ReturnType<typeof stockOf> }): Outcome {
  try {
    return { proof: prove(circuit, undefined, options) };
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) };
  }
}
