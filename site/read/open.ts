import type { z } from 'zod';
import { type DocumentParts, frontMatterIn, readDocument } from './document.ts';
import type { DocumentFile } from './folder.ts';
import { type DataOf, type DocumentKind, KINDS } from './kinds.ts';
import { type Outline, outlineOf, wordsOf } from './outline.ts';
import { type Place, type Problem, readSource, Source } from './source.ts';
import { readYaml } from './yaml.ts';

/** A guide or lesson with all its parts, for as long as the rules look at it. */
export interface OpenDocument {
  kind: DocumentKind;
  id: string;
  source: Source;
  data: DataOf<DocumentKind> | undefined;
  /** Front matter as its author wrote it; undefined where it is missing or no YAML. */
  raw: unknown;
  /** Where a field of the front matter stands. */
  offsetOf(path: readonly PropertyKey[]): number;
  parts: DocumentParts;
  outline: Outline;
}

/** What stays of a document: no text, no tree. Plain data, so that it can come from another thread. */
export interface ReadDocument {
  kind: DocumentKind;
  id: string;
  file: string;
  path: string;
  data: DataOf<DocumentKind> | undefined;
  outline: Outline;
  words: number;
  /** False where the body is broken and no page can be made of it. */
  sound: boolean;
  /** Links to pages of this site, judged again when every page's parts are known. */
  pageLinks: PageLink[];
}
export interface PageLink extends Place {
  url: string;
  page: string;
  /** What follows `#`; empty where nothing does. */
  part: string;
}

/** A guide that is written but not published; a preview shows it. */
export const isDraft = ({ data }: Pick<ReadDocument, 'data'>): boolean =>
  data !== undefined && 'draft' in data && data.draft;

/** Opens one file. What is wrong in reading it goes to `problems`; a file that is no text opens as nothing. */
export function openDocument({ kind, id, path }: DocumentFile, problems: Problem[]): OpenDocument | undefined {
  const source = readSource(path);
  if (!(source instanceof Source)) {
    problems.push(source);
    return undefined;
  }
  const parts = readDocument(source);
  const outline = outlineOf(parts);
  problems.push(...parts.syntax);
  const front = parts.frontMatter;
  if (!front) {
    // An empty file has a rule of its own; a second message would only repeat it.
    if (source.text.trim() !== '')
      problems.push(
        source.problem(
          0,
          `front matter is missing: the file begins with a line ---, the ${KINDS[kind].one}'s fields, ---`,
        ),
      );
    return { kind, id, source, data: undefined, raw: undefined, offsetOf: () => 0, parts, outline };
  }
  const read = readYaml(source, KINDS[kind].schema as z.ZodType, { ...front, where: 'front matter: ' });
  problems.push(...read.problems);
  return {
    kind,
    id,
    source,
    data: read.data as DataOf<DocumentKind> | undefined,
    raw: read.raw,
    offsetOf: read.offsetOf,
    parts,
    outline,
  };
}

/** Front matter of a file that was found sound before, for a message that must name a place in it. */
export function frontMatterOf(path: string, kind: DocumentKind): Pick<OpenDocument, 'source' | 'offsetOf'> {
  const source = readSource(path);
  if (!(source instanceof Source)) throw new Error(`${path} changed while it was checked`);
  const front = frontMatterIn(source.text);
  if (!front) throw new Error(`${path} changed while it was checked`);
  const { offsetOf } = readYaml(source, KINDS[kind].schema as z.ZodType, { ...front, where: '' });
  return { source, offsetOf };
}

export function closeDocument({ kind, id, source, data, parts, outline }: OpenDocument): ReadDocument {
  return {
    kind,
    id,
    file: source.file,
    path: source.path,
    data,
    outline,
    words: wordsOf(parts),
    sound: parts.syntax.length === 0,
    pageLinks: parts.links.flatMap(({ url, offset }) => {
      if (!url.startsWith('/')) return [];
      const [page = '', part = ''] = url.split('#', 2);
      return [{ url, page, part, ...source.place(offset) }];
    }),
  };
}
