import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { emptyRecord, type LessonRecord } from './record.ts';

/** The learner's records, kept on this device and nowhere else. */
interface Shelf extends DBSchema {
  lessons: { key: string; value: LessonRecord };
}

export interface LessonStore {
  all(): Promise<LessonRecord[]>;
  /** Changes one record inside one transaction, so that two tabs never lose each other's entries. */
  change(id: string, to: (record: LessonRecord) => LessonRecord): Promise<LessonRecord>;
  clear(): Promise<void>;
  /** What is wrong with keeping, in words for the reader; undefined while all is well. */
  trouble(): string | undefined;
}

const TROUBLE = 'This device does not keep the record: it lasts until this page closes. Print the sheet before.';

/** Opens the shelf. Never fails: where nothing can be kept the record lives in memory, and `trouble` says so. */
export async function openLessons(name = 'loomleaf-lessons'): Promise<LessonStore> {
  const memory = new Map<string, LessonRecord>();
  let trouble: string | undefined;
  let shelf: IDBPDatabase<Shelf> | undefined;
  try {
    shelf = await openDB<Shelf>(name, 1, {
      upgrade(fresh) {
        fresh.createObjectStore('lessons', { keyPath: 'id' });
      },
    });
  } catch {
    trouble = TROUBLE;
  }
  return {
    async all() {
      const kept = (await shelf?.getAll('lessons').catch(() => [])) ?? [];
      return [...new Map([...kept, ...memory.values()].map((record) => [record.id, record])).values()];
    },
    async change(id, to) {
      if (shelf !== undefined) {
        try {
          const transaction = shelf.transaction('lessons', 'readwrite');
          const after = to(memory.get(id) ?? (await transaction.store.get(id)) ?? emptyRecord(id));
          await transaction.store.put(after);
          await transaction.done;
          memory.delete(id);
          trouble = undefined;
          return after;
        } catch {
          trouble = TROUBLE;
        }
      }
      const after = to(memory.get(id) ?? emptyRecord(id));
      memory.set(id, after);
      return after;
    },
    async clear() {
      memory.clear();
      await shelf?.clear('lessons');
    },
    trouble: () => trouble,
  };
}
