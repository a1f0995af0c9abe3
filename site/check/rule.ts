import type { Circuit } from '../../calc/index.ts';
import type { ComponentRule } from '../../components/schemas.ts';
import type { Outcome } from '../proofs.ts';
import type { Reading } from '../read/folder.ts';
import type { Kind } from '../read/kinds.ts';
import type { OpenDocument, ReadDocument } from '../read/open.ts';
import type { Problem } from '../read/source.ts';
import type { Term } from '../schemas/terms.ts';

/** Ids per kind of file. A file whose content does not hold still counts: its own message is enough. */
export type Names = Readonly<Record<Kind, ReadonlySet<string>>>;

/** What a workshop's names mean: all that a document may refer to. Plain data, so that other threads can have it. */
export interface Known {
  names: Names;
  /** Circuits that hold, by id. */
  circuits: Map<string, Circuit>;
  terms: readonly Term[];
  images: readonly string[];
  /** Ids of the calculators that have a page. */
  calculators: readonly string[];
  /** Every page's address. */
  pages: ReadonlySet<string>;
}

/** `Known`, with what an author may place and the values that its circuits offer. */
export interface Content extends Known {
  components: Readonly<Record<string, ComponentRule>>;
  /** Paths of values that a circuit offers, such as `F1.ratingA`. */
  valuePaths(circuitId: string): readonly string[];
}

/** The whole folder, when every document has been read and closed. */
export interface Whole {
  content: Content;
  reading: Reading;
  documents: readonly ReadDocument[];
  /** Of every circuit that can be read. */
  proofs: ReadonlyMap<string, Outcome>;
}

/** One rule. It reports every break, not the first. */
export interface Rule {
  /** The fault in two to four words. */
  id: string;
  /** Looks at one guide or lesson. */
  document?(document: OpenDocument, content: Content): Iterable<Problem>;
  /** Looks at everything together. */
  whole?(whole: Whole): Iterable<Problem>;
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
export function fieldOf(raw: unknown, key: string): unknown {
  return raw !== null && typeof raw === 'object' ? (raw as Record<string, unknown>)[key] : undefined;
}
