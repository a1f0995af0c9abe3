import type { ComponentRule } from '../../components/schemas.ts';
import type { Entry, Reading } from '../read/folder.ts';
import type { Kind } from '../read/kinds.ts';
import type { Problem } from '../read/source.ts';
import type { Workshop } from '../workshop.ts';

/** What a rule looks at: the files as read, the workshop they make, and the names that exist. */
export interface Content {
  reading: Reading;
  workshop: Workshop;
  /** What an author may place, by name, each with what it is held to. */
  components: Readonly<Record<string, ComponentRule>>;
  /** Paths of values that a circuit offers, such as `F1.ratingA`. */
  valuePaths: (circuitId: string) => readonly string[];
  /** Ids of the calculators that have a page. */
  calculators: readonly string[];
  names: Names;
}

/** Ids per kind of file. A file whose content does not hold still counts: its own message is enough. */
export type Names = Readonly<Record<Kind | 'surfaces', ReadonlySet<string>>>;

/** One rule over the whole content. It reports every break, not the first. */
export interface Rule {
  /** The fault in two to four words. */
  id: string;
  check(content: Content): Iterable<Problem>;
}

export type DocumentEntry = Entry<'guides'> | Entry<'lessons'>;

/** Guides and lessons: the files that hold prose and components. */
export function* documentsOf(reading: Reading): Generator<DocumentEntry & { parts: NonNullable<Entry['parts']> }> {
  for (const entry of [...reading.entries.guides, ...reading.entries.lessons]) {
    if (entry.parts) yield entry as DocumentEntry & { parts: NonNullable<Entry['parts']> };
  }
}

/** A field of what an author wrote, when it is there and of the wanted shape; the schema has already judged it. */
export function textAt(raw: unknown, key: string): string | undefined {
  const value = fieldOf(raw, key);
  return typeof value === 'string' ? value : undefined;
}
export function listAt(raw: unknown, key: string): unknown[] {
  const value = fieldOf(raw, key);
  return Array.isArray(value) ? value : [];
}
function fieldOf(raw: unknown, key: string): unknown {
  return raw !== null && typeof raw === 'object' ? (raw as Record<string, unknown>)[key] : undefined;
}
