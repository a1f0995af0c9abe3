import { type Document, isCollection, isMap, isNode, isScalar, parseDocument } from 'yaml';
import type { z } from 'zod';
import { complaints } from './issues.ts';
import { readPlainYaml } from './plain-yaml.ts';
import type { Problem, Source } from './source.ts';

/** A checked YAML text: its data when the schema accepts it, and the way from a path in it to an offset in the file. */
export interface YamlReading<T> {
  data: T | undefined;
  /** What stands in the file, whether the schema accepts it or not; undefined where the YAML itself is broken. */
  raw: unknown;
  problems: Problem[];
  /** Offset of the value at a path, or of the nearest thing above it that stands in the file. */
  offsetOf(path: readonly PropertyKey[]): number;
}

/**
 * Reads `text`, which begins at `start` in the source, against a schema. All problems, not the first.
 * `where` heads each message ("front matter: "), so that it says which part of a file is meant.
 */
export function readYaml<S extends z.ZodType>(
  source: Source,
  schema: S,
  part: { text: string; start: number; where: string } = { text: source.text, start: 0, where: '' },
): YamlReading<z.infer<S>> {
  const { text, start, where } = part;
  const plain = readPlainYaml(text);
  if (plain !== undefined) {
    const result = schema.safeParse(plain);
    if (result.success) return { data: result.data, raw: plain, problems: [], offsetOf: offsets(text, start) };
  }

  const document: Document = parseDocument(text, { prettyErrors: false });
  const offsetOf = offsets(text, start);
  const problems = document.errors.map((error) =>
    source.problem(start + error.pos[0], `${where}${yamlWording(error.message, text.slice(error.pos[0]))}`),
  );
  if (problems.length > 0) return { data: undefined, raw: undefined, problems, offsetOf };
  let raw: unknown;
  try {
    raw = document.toJS({ maxAliasCount: 20 }) ?? {};
  } catch {
    const problem = source.problem(start, `${where}aliases repeat too much`);
    return { data: undefined, raw: undefined, problems: [problem], offsetOf };
  }
  const result = schema.safeParse(raw);
  if (result.success) return { data: result.data, raw, problems, offsetOf };
  for (const complaint of complaints(result.error.issues, raw, schema, 'field')) {
    const offset =
      complaint.key !== undefined
        ? keyOffset(document, complaint.path, complaint.key)
        : complaint.missing
          ? holderOffset(document, complaint.path.slice(0, -1))
          : offsetIn(document, complaint.path);
    problems.push(source.problem(start + offset, `${where}${complaint.message}`));
  }
  return { data: undefined, raw, problems, offsetOf };
}

/** Places by path. The text is parsed again when first asked: thousands of sound files then keep no tree in memory. */
function offsets(text: string, start: number): YamlReading<unknown>['offsetOf'] {
  let document: Document | undefined;
  return (path) => {
    document ??= parseDocument(text, { prettyErrors: false });
    return start + thingOffset(document, path);
  };
}

/** The parser's complaints that authors meet most, in their words; `text` begins where the complaint points. */
function yamlWording(message: string, text: string): string {
  const said = message.replace(/\s+/g, ' ').trim();
  if (said.startsWith('Map keys must be unique'))
    return `"${/^[^:\s]*/.exec(text)![0]}" is there twice; each name stands once`;
  if (said.startsWith('Nested mappings are not allowed in compact')) return 'a text with ": " in it stands in quotes';
  const quote = /^Missing closing (["'])/.exec(said)?.[1];
  if (quote) return `a text in quotes is not closed: ${quote} is missing`;
  const bracket = /^Flow (?:sequence|map) in block collection .* end with a ([\]}])/.exec(said)?.[1];
  if (bracket) return `a list or group is not closed: ${bracket} is missing`;
  return `YAML: ${said}`;
}

/** Where a value stands; of a group or list, where its name stands. */
function thingOffset(document: Document, path: readonly PropertyKey[]): number {
  const last = path.at(-1);
  return typeof last === 'string' && isCollection(document.getIn(path, true))
    ? keyOffset(document, path.slice(0, -1), last)
    : offsetIn(document, path);
}

/** Where the key stands that holds a map, so that "missing" points at the thing that lacks the field. */
function holderOffset(document: Document, path: readonly PropertyKey[]): number {
  if (path.length === 0) return 0;
  const last = path.at(-1)!;
  if (typeof last === 'string') return keyOffset(document, path.slice(0, -1), last);
  return offsetIn(document, path);
}

function keyOffset(document: Document, path: readonly PropertyKey[], key: string): number {
  const map = path.length === 0 ? document.contents : document.getIn(path, true);
  if (isMap(map)) {
    for (const pair of map.items) {
      if (isScalar(pair.key) && String(pair.key.value) === key && pair.key.range) return pair.key.range[0];
    }
  }
  return offsetIn(document, path);
}

function offsetIn(document: Document, path: readonly PropertyKey[]): number {
  for (let length = path.length; length > 0; length--) {
    const node: unknown = document.getIn(path.slice(0, length), true);
    if (isNode(node) && node.range) return node.range[0];
  }
  return 0;
}
