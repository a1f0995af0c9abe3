import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { type Circuit, circuitProblems } from '../../calc/index.ts';
import { stockOf } from '../../components/study.ts';
import { type Outcome, rememberProof } from '../proofs.ts';
import type { Shop } from '../schemas/shop.ts';
import { ProofCache } from './proof-cache.ts';

/** A proof that takes longer is given up with a message. */
export const PROOF_LIMIT_S = 30;

export interface ProvingOptions {
  limitS?: number;
  /** Where proofs are kept between runs; none: nothing is kept. */
  cacheDir?: string | undefined;
}

/**
 * Proves every circuit that can be read, on other threads and each within a time limit: a circuit may be too hard, and a
 * check must still end. Proofs of unchanged circuits come from the last run.
 */
export async function proveAll(
  circuits: ReadonlyMap<string, Circuit>,
  shop: Shop,
  { limitS = PROOF_LIMIT_S, cacheDir }: ProvingOptions = {},
): Promise<Map<string, Outcome>> {
  const stock = stockOf(shop);
  const cache = new ProofCache(cacheDir);
  const outcomes = new Map<string, Outcome>();
  const waiting: Circuit[] = [];
  for (const [id, circuit] of circuits) {
    if (circuitProblems(circuit).length > 0) continue;
    const proof = cache.get(circuit, stock);
    if (proof) outcomes.set(id, { proof });
    else waiting.push(circuit);
  }
  const lanes = Math.min(waiting.length, Math.max(1, availableParallelism()));
  await Promise.all(
    Array.from({ length: lanes }, async () => {
      const lane = new Lane(stock, limitS);
      for (let circuit = waiting.shift(); circuit; circuit = waiting.shift()) {
        const outcome = await lane.prove(circuit);
        outcomes.set(circuit.id, outcome);
        if ('proof' in outcome) cache.put(circuit, stock, outcome.proof);
      }
      await lane.end();
    }),
  );
  for (const [id, outcome] of outcomes) rememberProof(circuits.get(id)!, outcome);
  return outcomes;
}

/** One thread that proves one circuit after another, and is replaced when it takes too long. */
class Lane {
  readonly #stock: ReturnType<typeof stockOf>;
  readonly #limitS: number;
  #worker: Worker | undefined;

  constructor(stock: ReturnType<typeof stockOf>, limitS: number) {
    this.#stock = stock;
    this.#limitS = limitS;
  }

  prove(circuit: Circuit): Promise<Outcome> {
    const worker = (this.#worker ??= new Worker(new URL('./proof-worker.ts', import.meta.url)));
    return new Promise((done) => {
      const finish = (outcome: Outcome, lost: boolean) => {
        clearTimeout(timer);
        worker.off('message', answered);
        worker.off('error', broke);
        if (lost) {
          this.#worker = undefined;
          // A thread that is given up may still fail; nobody waits for it any more.
          worker.on('error', () => {});
          void worker.terminate();
        }
        done(outcome);
      };
      const answered = (outcome: Outcome) => finish(outcome, false);
      const broke = (error: Error) => finish({ failed: `the proof broke off: ${error.message}` }, true);
      const tooLong = `the proof took longer than ${this.#limitS} s: split the circuit into smaller ones`;
      const timer = setTimeout(() => finish({ failed: tooLong }, true), this.#limitS * 1000);
      worker.on('message', answered);
      worker.on('error', broke);
      worker.postMessage({ circuit, stock: this.#stock });
    });
  }

  async end(): Promise<void> {
    await this.#worker?.terminate();
  }
}
