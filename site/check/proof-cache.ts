import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import type { Circuit, Proof } from '../../calc/index.ts';
import { filesUnder } from '../read/folder.ts';

const CALC = join(import.meta.dirname, '../../calc');
const MOST_KEPT = 2000;

/**
 * Proofs kept between runs. A proof is found again by the circuit, the stock it was sized from and every line of calc
 * that made it, so a change of any of them proves anew. A folder that cannot be written costs time, not correctness.
 */
export class ProofCache {
  readonly #dir: string | undefined;
  #engine: string | undefined;

  constructor(dir: string | undefined) {
    this.#dir = dir;
  }

  get(circuit: Circuit, stock: unknown): Proof | undefined {
    if (this.#dir === undefined) return undefined;
    const file = this.#file(circuit, stock);
    try {
      const proof = deserialize(readFileSync(file)) as Proof;
      utimesSync(file, new Date(), new Date());
      return proof;
    } catch {
      return undefined;
    }
  }

  put(circuit: Circuit, stock: unknown, proof: Proof): void {
    if (this.#dir === undefined) return;
    const file = this.#file(circuit, stock);
    try {
      mkdirSync(this.#dir, { recursive: true });
      // Another build may write the same proof: each writes its own file and the last to finish stands.
      const own = `${file}.${process.pid}`;
      writeFileSync(own, serialize(proof));
      renameSync(own, file);
      this.#prune(this.#dir);
    } catch {
      // Not kept: the next run proves it again.
    }
  }

  #file(circuit: Circuit, stock: unknown): string {
    this.#engine ??= engine();
    const key = createHash('sha256')
      .update(this.#engine)
      .update(JSON.stringify([circuit, stock]))
      .digest('hex');
    return join(this.#dir!, `${key.slice(0, 40)}.proof`);
  }

  #prune(dir: string): void {
    const files = readdirSync(dir);
    if (files.length <= MOST_KEPT) return;
    const byAge = files.map((name) => ({ name, at: statSync(join(dir, name)).mtimeMs })).sort((a, b) => a.at - b.at);
    for (const { name } of byAge.slice(0, files.length - MOST_KEPT)) rmSync(join(dir, name), { force: true });
  }
}

function engine(): string {
  const hash = createHash('sha256').update(process.version);
  for (const path of filesUnder(CALC)) hash.update(path).update(readFileSync(join(CALC, path)));
  return hash.digest('hex');
}
