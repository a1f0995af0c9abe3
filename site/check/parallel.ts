import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { DocumentFile } from '../read/folder.ts';
import { checkDocuments, contentOf, type DocumentsChecked } from './documents.ts';
import type { Content, Known } from './rule.ts';

/** Below this a second thread takes longer to start than it saves. */
const WORTH_A_THREAD = 400;
const AT_ONCE = 50;

export interface Share {
  files: DocumentFile[];
  known: Known;
  /** One shared counter: whoever is free takes the next files. */
  taken: Int32Array<SharedArrayBuffer>;
}

/** Checks documents on every core that is worth starting, this thread included. */
export async function checkInParallel(
  files: DocumentFile[],
  known: Known,
  content: Content,
): Promise<DocumentsChecked> {
  const helpers = Math.min(availableParallelism() - 1, 3, Math.floor(files.length / WORTH_A_THREAD));
  if (helpers < 1) return checkDocuments(files, content);
  const share: Share = { files, known, taken: new Int32Array(new SharedArrayBuffer(4)) };
  const others = Array.from({ length: helpers }, () => helper(share));
  // Lets the helpers begin loading before this thread is busy.
  await new Promise((done) => setImmediate(done));
  const shares = [checkDocuments(nextOf(share), content), ...(await Promise.all(others))];
  return {
    documents: shares.flatMap(({ documents }) => documents),
    problems: shares.flatMap(({ problems }) => problems),
  };
}

export const checkShare = (share: Share): DocumentsChecked => checkDocuments(nextOf(share), contentOf(share.known));

function* nextOf({ files, taken }: Share): Generator<DocumentFile> {
  for (;;) {
    const from = Atomics.add(taken, 0, AT_ONCE);
    if (from >= files.length) return;
    yield* files.slice(from, from + AT_ONCE);
  }
}

function helper(share: Share): Promise<DocumentsChecked> {
  return new Promise((done, fail) => {
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { workerData: share });
    worker.once('message', done);
    worker.once('error', fail);
  });
}
