import { parentPort, workerData } from 'node:worker_threads';
import { checkShare, type Share } from './parallel.ts';

parentPort?.postMessage(checkShare(workerData as Share));
