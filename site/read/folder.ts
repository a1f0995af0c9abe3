import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { z } from 'zod';
import { shopSchema } from '../schemas/shop.ts';
import { synonymsSchema, termsSchema } from '../schemas/terms.ts';
import { type DataKind, type DataOf, DOCUMENT_KINDS, type DocumentKind, KIND_NAMES, KINDS } from './kinds.ts';
import { type Problem, readSource, Source, shownPath } from './source.ts';
import { readYaml } from './yaml.ts';

/** One YAML file as read. `data` is there when its schema accepts it. */
export interface Entry<K extends DataKind = DataKind> {
  kind: K;
  id: string;
  source: Source;
  data: DataOf<K> | undefined;
  /** What its author wrote, whether it holds or not. */
  raw: unknown;
  /** Where a field stands in the file. */
  offsetOf(path: readonly PropertyKey[]): number;
}
/** A file of which the folder holds exactly one. */
export interface Single<T> {
  source: Source;
  data: T | undefined;
}
/** A guide or lesson by its name, not opened yet: there may be thousands, so they are opened one by one. */
export interface DocumentFile {
  kind: DocumentKind;
  id: string;
  path: string;
}

/** Everything of a content folder but the bodies of guides and lessons, with what was wrong in reading it. */
export interface Reading {
  dir: string;
  entries: { [K in DataKind]: Entry<K>[] };
  documents: DocumentFile[];
  shop: Single<z.infer<typeof shopSchema>> | undefined;
  terms: Single<z.infer<typeof termsSchema>> | undefined;
  synonyms: Single<z.infer<typeof synonymsSchema>> | undefined;
  /** Pictures under `images/`, by their path below it. */
  images: string[];
  problems: Problem[];
}

export function readFolder(dir: string): Reading {
  const problems: Problem[] = [];
  const entries = Object.fromEntries(KIND_NAMES.map((kind) => [kind, [] as Entry[]])) as unknown as Reading['entries'];
  const documents: DocumentFile[] = [];
  for (const kind of KIND_NAMES) {
    const { ending, one } = KINDS[kind];
    for (const name of filesUnder(join(dir, kind))) {
      const path = join(dir, kind, name);
      const id = basename(name).slice(0, -ending.length);
      if (!name.endsWith(ending))
        problems.push(fileProblem(path, `not read: a ${one} is a file that ends in ${ending}`));
      else if (isDocumentKind(kind)) documents.push({ kind, id, path });
      else {
        const entry = readEntry(kind, id, path, problems);
        if (entry) (entries[kind] as Entry[]).push(entry);
      }
    }
  }
  return {
    dir,
    entries,
    documents,
    shop: readSingle(join(dir, 'shop.yaml'), shopSchema, problems, true),
    terms: readSingle(join(dir, 'terms.yaml'), termsSchema, problems, false),
    synonyms: readSingle(join(dir, 'synonyms.yaml'), synonymsSchema, problems, false),
    images: filesUnder(join(dir, 'images')),
    problems,
  };
}

const isDocumentKind = (kind: string): kind is DocumentKind => (DOCUMENT_KINDS as readonly string[]).includes(kind);

function readEntry<K extends DataKind>(kind: K, id: string, path: string, problems: Problem[]): Entry<K> | undefined {
  const source = readSource(path);
  if (!(source instanceof Source)) {
    problems.push(source);
    return undefined;
  }
  const { data, raw, problems: found, offsetOf } = readYaml(source, KINDS[kind].schema as z.ZodType);
  problems.push(...found);
  return { kind, id, source, data: data as DataOf<K> | undefined, raw, offsetOf };
}

function readSingle<S extends z.ZodType>(
  path: string,
  schema: S,
  problems: Problem[],
  needed: boolean,
): Single<z.infer<S>> | undefined {
  let source: Source | Problem;
  try {
    source = readSource(path);
  } catch {
    if (needed) problems.push(fileProblem(path, 'is missing: it names the workshop and its defaults'));
    return undefined;
  }
  if (!(source instanceof Source)) {
    problems.push(source);
    return undefined;
  }
  const { data, problems: found } = readYaml(source, schema);
  problems.push(...found);
  return { source, data };
}

const fileProblem = (path: string, message: string): Problem => ({
  file: shownPath(path),
  line: 1,
  col: 1,
  message,
  severity: 'error',
});

/** Paths below a folder, sorted, hidden files left out; none where there is no such folder. */
export function filesUnder(dir: string): string[] {
  let entries: { parentPath: string; name: string; isFile(): boolean }[];
  try {
    entries = readdirSync(dir, { recursive: true, withFileTypes: true });
  } catch {
    return [];
  }
  return entries
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.'))
    .map((entry) => join(entry.parentPath, entry.name).slice(dir.length + 1))
    .sort();
}
