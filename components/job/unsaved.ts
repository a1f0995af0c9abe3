/**
 * Entries that were made as the page was left: storage of jobs answers later than a page closes, so they are laid in
 * local storage, which answers at once, and taken up when the job is opened next.
 */
import { type Entry, enter, GROWING, type Growing, type Job } from './model.ts';

export interface Unsaved {
  part: Growing;
  key: string;
  entry: Entry<unknown>;
}
const keyOf = (job: string): string => `loomleaf:1:unsaved:${job}`;

/** Lays entries down for a job, over what lies there already. Where local storage is closed they are lost. */
export function layDown(job: string, entries: readonly Unsaved[]): void {
  if (entries.length === 0) return;
  try {
    localStorage.setItem(keyOf(job), JSON.stringify([...lying(job), ...entries]));
  } catch {
    // closed or full: nothing else answers before the page is gone
  }
}

/** The job with what lies there for it, and whether anything did. The heap of entries decides which of two stands. */
export function takeUp(job: Job): { job: Job; some: boolean } {
  const entries = lying(job.id);
  let out = job;
  for (const { part, key, entry } of entries) out = enter(out, part, key, entry as never);
  return { job: out, some: entries.length > 0 };
}

/** Clears what lies there, once it is where it belongs. */
export function clearUnsaved(job: string): void {
  try {
    localStorage.removeItem(keyOf(job));
  } catch {
    // then there is nothing to clear either
  }
}

function lying(job: string): Unsaved[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(job)) ?? '[]');
    return Array.isArray(kept) ? kept.filter(isUnsaved) : [];
  } catch {
    return [];
  }
}

function isUnsaved(kept: unknown): kept is Unsaved {
  const { part, key, entry } = (kept ?? {}) as Partial<Unsaved>;
  return (
    (GROWING as readonly unknown[]).includes(part) &&
    typeof key === 'string' &&
    typeof entry?.at === 'number' &&
    typeof entry.by === 'string' &&
    'v' in entry
  );
}
