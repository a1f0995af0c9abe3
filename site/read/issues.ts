import type { z } from 'zod';
import { didYouMean } from '../suggest.ts';

/** A schema's complaint in an author's words, with where it is: a path, and the key when the key itself is wrong. */
export interface Complaint {
  path: PropertyKey[];
  key?: string;
  missing?: boolean;
  message: string;
}

type Issue = z.core.$ZodIssue;

/** Every issue of one parse as complaints. `field` is what the author calls one: a field of a file, a property of a tag. */
export function complaints(issues: readonly Issue[], data: unknown, schema: z.ZodType, field: string): Complaint[] {
  return issues.flatMap((issue) => complain(issue, [], data, schema, field));
}

function complain(issue: Issue, base: PropertyKey[], data: unknown, schema: z.ZodType, field: string): Complaint[] {
  const path = [...base, ...issue.path];
  const value = at(data, path);
  const name = path.map(String).join('.');

  if (issue.code === 'unrecognized_keys') {
    const known = keysAt(schema, data, path);
    return issue.keys.map((key) => ({
      path,
      key,
      // In `{ label: Ground, rear }` the comma ends the text; the rest is read as a field without a value.
      message: `unknown ${path.length === 0 ? field : `${field} in "${name}":`} "${key}".${at(value, [key]) === null ? ' A text with a comma in it stands in quotes.' : didYouMean(key, known)}`,
    }));
  }
  if (issue.code === 'invalid_key') {
    const key = String(path.at(-1));
    const why = issue.issues[0] ? wording(issue.issues[0], key) : 'is not a name that fits here';
    return [{ path: path.slice(0, -1), key, message: `name "${key}" ${why}` }];
  }
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    if (value !== undefined) {
      const values = issue.errors.flatMap((branch) =>
        branch.flatMap((inner) => (inner.code === 'invalid_value' && inner.path.length === 0 ? inner.values : [])),
      );
      if (values.length > 0) return [{ path, message: `"${name}" ${oneOf(values, value)}` }];
      // Of several forms an author may write, the one whose outer shape fits is the one he meant.
      const meant = issue.errors.find(
        (branch) => !branch.some((inner) => inner.code === 'invalid_type' && inner.path.length === 0),
      );
      if (meant) return meant.flatMap((inner) => complain(inner, path, data, schema, field));
    }
    const kinds = issue.errors.flatMap((branch) =>
      branch.flatMap((inner) =>
        inner.code === 'invalid_type' && inner.path.length === 0 ? [typeName(inner.expected)] : [],
      ),
    );
    if (value !== undefined && kinds.length > 0)
      return [{ path, message: `"${name}" must be ${[...new Set(kinds)].join(' or ')}, got ${shown(value)}` }];
  }
  // What holds of several fields together says itself which it means.
  if (issue.code === 'custom' && (path.length === 0 || value === undefined))
    return [{ path, missing: path.length > 0, message: issue.message }];
  if (value === undefined) return [{ path, missing: true, message: `"${name}" is missing` }];
  return [{ path, message: `"${name}" ${wording(issue, value)}` }];
}

function wording(issue: Issue, value: unknown): string {
  // A schema's own message says what must hold; the stock ones do not speak the author's language.
  if (issue.code === 'custom') return issue.message;
  if (/^(must|is|has|needs) /.test(issue.message)) return `${issue.message}, got ${shown(value)}`;
  switch (issue.code) {
    case 'invalid_type':
      if (issue.expected === 'string' && typeof value === 'number')
        return `must be text: put ${shown(value)} in quotes`;
      return `must be ${typeName(issue.expected)}, got ${shown(value)}`;
    case 'invalid_value':
      return oneOf(issue.values, value);
    case 'too_big':
      return issue.origin === 'number' || issue.origin === 'int'
        ? `must be ${issue.inclusive === false ? 'less than' : 'at most'} ${issue.maximum}, got ${shown(value)}`
        : `must hold at most ${issue.maximum}, got ${size(value)}`;
    case 'too_small':
      return issue.origin === 'number' || issue.origin === 'int'
        ? `must be ${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}, got ${shown(value)}`
        : `must hold at least ${issue.minimum}, got ${size(value)}`;
    case 'invalid_union':
      return 'options' in issue && Array.isArray(issue.options)
        ? oneOf(issue.options as string[], value)
        : `does not fit, got ${shown(value)}`;
    default:
      return issue.message;
  }
}

function oneOf(values: readonly unknown[], value: unknown): string {
  const list = [...new Set(values)].map((known) => JSON.stringify(known)).join(', ');
  const meant = typeof value === 'string' ? didYouMean(value, values.map(String)) : '';
  return `must be one of ${list}, got ${shown(value)}${meant === '' ? '' : `.${meant}`}`;
}

const TYPE_NAMES: Record<string, string> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list',
  object: 'a group of fields',
  record: 'a group of fields',
  null: 'null',
};
const typeName = (expected: string): string => TYPE_NAMES[expected] ?? expected;

const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (value !== null && typeof value === 'object') return 'a group of fields';
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…"` : text;
};
const size = (value: unknown): string =>
  Array.isArray(value) || typeof value === 'string' ? String(value.length) : shown(value);

function at(data: unknown, path: readonly PropertyKey[]): unknown {
  let value = data;
  for (const key of path) {
    if (value === null || typeof value !== 'object') return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

/** Field names that a schema knows at a path, for "did you mean". */
function keysAt(schema: z.ZodType, data: unknown, path: readonly PropertyKey[]): string[] {
  let options: z.core.$ZodTypeDef[] = [def(schema)];
  let value = data;
  for (const key of path) {
    options = options.flatMap((one) => branches(one, value)).flatMap((one) => step(one, key));
    value = at(value, [key]);
  }
  const last = value;
  return options
    .flatMap((one) => branches(one, last))
    .flatMap((one) => ('shape' in one ? Object.keys(one.shape as object) : []));
}

type Def = z.core.$ZodTypeDef;
type Inner = { _zod: { def: Def } };
const def = (schema: unknown): Def => (schema as Inner)._zod.def;

/** Looks through wrappers and unions; a discriminated union keeps only the branch that the data names. */
function branches(one: Def, value: unknown): Def[] {
  const any = one as unknown as Record<string, unknown>;
  if ('innerType' in any) return branches(def(any['innerType']), value);
  if (one.type === 'pipe') return branches(def(any['in']), value);
  if (one.type === 'lazy') return branches(def((any['getter'] as () => unknown)()), value);
  if (one.type === 'union') {
    const all = (any['options'] as unknown[]).flatMap((option) => branches(def(option), value));
    const by = any['discriminator'];
    if (typeof by !== 'string') return all;
    const named = at(value, [by]);
    const chosen = all.filter((option) => {
      const field = 'shape' in option ? (option.shape as Record<string, unknown>)[by] : undefined;
      return field !== undefined && (field as z.ZodType).safeParse(named).success;
    });
    return chosen.length > 0 ? chosen : all;
  }
  return [one];
}

function step(one: Def, key: PropertyKey): Def[] {
  const any = one as unknown as Record<string, unknown>;
  if (one.type === 'object') {
    const field = (any['shape'] as Record<PropertyKey, unknown>)[key];
    return field === undefined ? [] : [def(field)];
  }
  if (one.type === 'record') return [def(any['valueType'])];
  if (one.type === 'array') return [def(any['element'])];
  if (one.type === 'tuple') {
    const item = (any['items'] as unknown[])[Number(key)];
    return item === undefined ? [] : [def(item)];
  }
  return [];
}
