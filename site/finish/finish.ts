import { Worker } from 'node:worker_threads';
import type { PageWatch } from './page-watch.ts';

/** What the finishing thread is told, in this order: pages that begin and are drawn, then once to finish; last to close. */
export type Told =
  /** `nth` counts the pages that began. */
  | { kind: 'begin'; nth: number; path: string }
  | { kind: 'drawn'; nth: number }
  | { kind: 'finish' }
  | { kind: 'close' };

/** What the thread is started with. */
export interface Start {
  /** Folder that the site is built into. */
  dir: string;
  language: string;
  base: string;
}

/**
 * What is made of the pages once they are drawn: the search's index and the list for reading offline. A thread of its own
 * reads each page while the next is drawn.
 */
export class Finishing {
  readonly #thread: Worker;
  readonly #failed: Promise<never>;
  readonly #ended: Promise<void>;
  #began = 0;

  constructor(start: Start) {
    this.#thread = new Worker(new URL('./worker.ts', import.meta.url), { workerData: start });
    this.#failed = new Promise((_, fail) => this.#thread.once('error', fail));
    this.#failed.catch(() => {}); // told by `finish`
    this.#ended = new Promise((done) => this.#thread.once('exit', () => done()));
  }

  readonly watch: PageWatch = (path) => {
    const nth = this.#began++;
    this.#tell({ kind: 'begin', nth, path });
    return () => this.#tell({ kind: 'drawn', nth });
  };

  /** Writes what is left to write into the site, all of whose files are there. Throws what went wrong until now. */
  async finish(): Promise<void> {
    const finished = new Promise<void>((done) => this.#thread.once('message', () => done()));
    this.#tell({ kind: 'finish' });
    const gone = this.#ended.then(() => {
      throw new Error('The thread that finishes the site ended before it was done');
    });
    await Promise.race([finished, this.#failed, gone]);
  }

  /** Ends the thread and the search tool's process, whatever became of the pages. */
  async close(): Promise<void> {
    this.#tell({ kind: 'close' });
    await this.#ended;
  }

  #tell(message: Told): void {
    this.#thread.postMessage(message);
  }
}
