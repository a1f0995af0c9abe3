import { parentPort } from 'node:worker_threads';
import type { Circuit } from '../../calc/index.ts';
import type { stockOf } from '../../components/study.ts';
import { proveNow } from '../proofs.ts';

parentPort?.on('message', ({ circuit, stock }: { circuit: Circuit; stock: ReturnType<typeof stockOf> }) => {
  parentPort?.postMessage(proveNow(circuit, { stock }));
});
