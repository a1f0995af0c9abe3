import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { z } from 'zod';
import { shopSchema } from '../schemas/shop.ts';
import { synonymsSchema, termsSchema } from '../schemas/terms.ts';
import { type DocumentParts, readDocument } from './document.ts';
import { type DataOf, KIND_NAMES, KINDS, type Kind } from './kinds.ts';
import { type Outline, outlineOf } from './outline.ts';
import { type Problem, readSource, Source, shownPath } from './source.ts';
import { readYaml } from './yaml.ts';

/** One content file as read. `data` is there when its schema accepts it; `parts` when it is MDX. */
export interface Entry<K extends Kind = Kind> {
  kind: K;
  id: string;
  source: Source;
  data: DataOf<K> | undefined;
  /** What its author wrote, whether it holds or not. */
  raw: unknown;
  parts: DocumentParts | undefined;
  outline: Outline | undefined;
  /** Where a field stands in the file. */
  offsetOf(path: readonly PropertyKey[]): number;
}
/** A file of which the folder holds exactly one. */
export interface Single<T> {
  source: Source;
  data: T | undefined;
  offsetOf(path: readonly PropertyKey[]): number;
}

/** Everything of a content folder, with what was wrong in reading it. The rules look at this. */
export interface Reading {
  dir: string;
  entries: { [K in Kind]: Entry<K>[] };
  shop: Single<z.infer<typeof shopSchema>> | undefined;
  terms: Single<z.infer<typeof termsSchema>> | undefined;
  synonyms: Single<z.infer<typeof synonymsSchema>> | undefined;
  /** Pictures under `images/`, by their path below it. */
  images: string[];
  problems: Problem[];
}

export function readFolder(dir: string): Reading {
  const problems: Problem[] = [];
  const reading: Reading = {
    dir,
    entries: { guides: [], lessons: [], circuits: [], vehicles: [], traits: [], relays: [] },
    shop: undefined,
    terms: undefined,
    synonyms: undefined,
    images: filesUnder(join(dir, 'images')),
    problems,
  };
  for (const kind of KIND_NAMES) {
    for (const path of filesUnder(join(dir, kind))) {
      const entry = readEntry(kind, join(dir, kind, path), problems);
      if (entry) (reading.entries[kind] as Entry[]).push(entry);
    }
  }
  reading.shop = readSingle(join(dir, 'shop.yaml'), shopSchema, problems, true);
  reading.terms = readSingle(join(dir, 'terms.yaml'), termsSchema, problems, false);
  reading.synonyms = readSingle(join(dir, 'synonyms.yaml'), synonymsSchema, problems, false);
  return reading;
}

function readEntry<K extends Kind>(kind: K, path: string, problems: Problem[]): Entry<K> | undefined {
  const { ending, one, schema } = KINDS[kind];
  if (!path.endsWith(ending)) {
    problems.push(fileProblem(path, `not read: a ${one} is a file that ends in ${ending}`));
    return undefined;
  }
  const source = readSource(path);
  if (!(source instanceof Source)) {
    problems.push(source);
    return undefined;
  }
  const id = basename(path).slice(0, -ending.length);
  if (ending === '.yaml') {
    const { data, raw, problems: found, offsetOf } = readYaml(source, schema as z.ZodType);
    problems.push(...found);
    return {
      kind,
      id,
      source,
      data: data as DataOf<K> | undefined,
      raw,
      parts: undefined,
      outline: undefined,
      offsetOf,
    };
  }
  const parts = readDocument(source);
  problems.push(...parts.syntax);
  const outline = outlineOf(source, parts);
  if (!parts.frontMatter) {
    // An empty file has a rule of its own; a second message would only repeat it.
    if (source.text.trim() !== '')
      problems.push(
        source.problem(0, `front matter is missing: the file begins with a line ---, the ${one}'s fields, ---`),
      );
    return { kind, id, source, data: undefined, raw: undefined, parts, outline, offsetOf: () => 0 };
  }
  const read = readYaml(source, schema as z.ZodType, { ...parts.frontMatter, where: 'front matter: ' });
  problems.push(...read.problems);
  const { raw, offsetOf } = read;
  return { kind, id, source, data: read.data as DataOf<K> | undefined, raw, parts, outline, offsetOf };
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
  const { data, problems: found, offsetOf } = readYaml(source, schema);
  problems.push(...found);
  return { source, data, offsetOf };
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
