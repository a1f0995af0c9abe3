/**
 * Jobs on the device. Every write reads the stored job, merges and writes it back inside one transaction, so that two
 * tabs never lose each other's entries; other tabs are told and merge too. Where storage is full or blocked the job
 * goes on in memory, and whoever listens is told in words.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { type Entry, enter, type Growing, type Job, mergeJobs } from './model.ts';

interface Shelf extends DBSchema {
  jobs: { key: string; value: Job; indexes: { guide: string } };
}

export interface Trouble {
  kind: 'blocked' | 'full' | 'failed';
  message: string;
}

export interface JobStore {
  list(): Promise<Job[]>;
  get(id: string): Promise<Job | undefined>;
  /** Adds a job or merges into the one with its id. */
  put(job: Job): Promise<Job>;
  /** Writes one entry. Answers with the job as it stands, other tabs' entries included. */
  write<K extends Growing>(id: string, part: K, key: string, v: Job[K][string]['v']): Promise<Job>;
  /** Adds many jobs or none of them. */
  putAll(jobs: readonly Job[]): Promise<void>;
  remove(id: string): Promise<void>;
  /** Called when another tab, or this one, changed a job. Returns a function that stops it. */
  onChange(listen: (id: string) => void): () => void;
  /** What is wrong with storage, or undefined. */
  trouble(): Trouble | undefined;
  onTrouble(listen: (trouble: Trouble) => void): () => void;
}

const describe = (e: unknown): Trouble => {
  const name = e instanceof Error ? e.name : '';
  if (name === 'QuotaExceededError') {
    return {
      kind: 'full',
      message: 'This device has no room left. Work goes on, but only until this page closes. Export the job now.',
    };
  }
  if (name === 'SecurityError' || name === 'InvalidStateError' || name === 'NotAllowedError') {
    return {
      kind: 'blocked',
      message:
        'This browser does not let the page keep jobs. Work goes on, but only until this page closes. Export the job before.',
    };
  }
  return {
    kind: 'failed',
    message: 'The job could not be saved. Work goes on, but only until this page closes. Export the job now.',
  };
};

/** Opens the shelf of jobs. Never fails: without storage it keeps jobs in memory and says so through `trouble`. */
export async function openJobs(o: { name?: string; now?: () => number; tab?: string } = {}): Promise<JobStore> {
  const now = o.now ?? (() => Date.now());
  const tab = o.tab ?? crypto.randomUUID();
  const memory = new Map<string, Job>();
  const listeners = new Set<(id: string) => void>();
  const troubled = new Set<(t: Trouble) => void>();
  let trouble: Trouble | undefined;
  let db: IDBPDatabase<Shelf> | undefined;
  const report = (e: unknown) => {
    trouble = describe(e);
    for (const listen of troubled) listen(trouble);
  };
  try {
    db = await openDB<Shelf>(o.name ?? 'loomleaf-jobs', 1, {
      upgrade(fresh) {
        fresh.createObjectStore('jobs', { keyPath: 'id' }).createIndex('guide', 'guide.id');
      },
    });
  } catch (e) {
    report(e);
  }
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(o.name ?? 'loomleaf-jobs');
  if (channel) channel.onmessage = (m: MessageEvent<string>) => tell(m.data);
  const tell = (id: string) => {
    for (const listen of listeners) listen(id);
  };
  const changed = (id: string) => {
    channel?.postMessage(id);
    tell(id);
  };

  /** Reads, changes and writes one job in one transaction; falls back to memory. */
  async function update(id: string, change: (stored: Job | undefined) => Job): Promise<Job> {
    const inMemory = memory.get(id);
    if (db) {
      try {
        const tx = db.transaction('jobs', 'readwrite');
        const stored = await tx.store.get(id);
        const before = stored && inMemory ? mergeJobs(stored, inMemory) : (stored ?? inMemory);
        const after = change(before);
        await tx.store.put(after);
        await tx.done;
        memory.delete(id);
        if (trouble) trouble = undefined;
        changed(id);
        return after;
      } catch (e) {
        report(e);
        let stored: Job | undefined;
        try {
          stored = await db.get('jobs', id);
        } catch {
          // Reading failed as well; what is in memory is all there is.
        }
        const after = change(stored && inMemory ? mergeJobs(stored, inMemory) : (stored ?? inMemory));
        memory.set(id, after);
        changed(id);
        return after;
      }
    }
    const after = change(inMemory);
    memory.set(id, after);
    changed(id);
    return after;
  }

  const merged = (job: Job | undefined, id: string): Job | undefined => {
    const kept = memory.get(id);
    return job && kept ? mergeJobs(job, kept) : (job ?? kept);
  };

  const put = (job: Job) => update(job.id, (stored) => (stored ? mergeJobs(stored, job) : job));
  return {
    async list() {
      const stored = db ? await db.getAll('jobs').catch(() => []) : [];
      const ids = new Set([...stored.map((j) => j.id), ...memory.keys()]);
      return [...ids].map(
        (id) =>
          merged(
            stored.find((j) => j.id === id),
            id,
          )!,
      );
    },
    async get(id) {
      const stored = db ? await db.get('jobs', id).catch(() => undefined) : undefined;
      return merged(stored, id);
    },
    put,
    write(id, part, key, v) {
      return update(id, (stored) => {
        if (!stored) throw new Error(`There is no job "${id}" on this device`);
        return enter(stored, part, key, { v, at: now(), by: tab } as Entry<never>);
      });
    },
    async putAll(jobs) {
      if (!db) {
        for (const job of jobs) await put(job);
        return;
      }
      try {
        const tx = db.transaction('jobs', 'readwrite');
        for (const job of jobs) {
          const stored = await tx.store.get(job.id);
          await tx.store.put(stored ? mergeJobs(stored, job) : job);
        }
        await tx.done;
      } catch (e) {
        report(e);
        throw new Error(describe(e).message);
      }
      for (const job of jobs) changed(job.id);
    },
    async remove(id) {
      memory.delete(id);
      if (db) await db.delete('jobs', id);
      changed(id);
    },
    onChange(listen) {
      listeners.add(listen);
      return () => listeners.delete(listen);
    },
    trouble: () => trouble,
    onTrouble(listen) {
      troubled.add(listen);
      return () => troubled.delete(listen);
    },
  };
}
