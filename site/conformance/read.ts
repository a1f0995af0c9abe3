import { readFile } from 'node:fs/promises';
import { surfaceRow } from './materials/surface-row.ts';
import type { Row } from './row.ts';

/** A mistake of the person at the keyboard: one clear line, exit code 2. */
export class UsageError extends Error {}

/** Reads and parses one JSON file. */
export async function readJson(file: string): Promise<unknown> {
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    throw new UsageError(`${file}: ${code === 'ENOENT' ? 'no such file' : `cannot be read (${code})`}`);
  }
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new UsageError(`${file}: not JSON: ${(error as Error).message.split('\n')[0]}`);
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What is wrong with something that should be a row, or undefined when it is one. */
function fault(row: unknown): string | undefined {
  if (!isRecord(row)) return 'is not an object';
  if (typeof row['id'] !== 'string') return 'has no id';
  if (!isRecord(row['inputs'])) return `(${row['id']}) has no inputs`;
  if (!isRecord(row['expect'])) return `(${row['id']}) has no expect`;
  if (!isRecord(row['tolerance'])) return `(${row['id']}) has no tolerance`;
  return undefined;
}

/** Reads one file of rows: an array of objects with id, inputs, expect and tolerance. */
export async function readRows(file: string): Promise<Row[]> {
  const parsed = await readJson(file);
  if (!Array.isArray(parsed)) throw new UsageError(`${file}: expected an array of rows`);
  const rows = parsed.map((row: unknown) => surfaceRow(row) ?? row);
  rows.forEach((row, index) => {
    const wrong = fault(row);
    if (wrong !== undefined) throw new UsageError(`${file}: row ${index + 1} ${wrong}`);
  });
  return rows.map((row) => ({ about: '', source: '', at: '', read: '', ...(row as object) }) as Row);
}
