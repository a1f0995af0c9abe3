/**
 * The job file: what a device gives away and takes back. A file that is newer, damaged or not ours is refused with the
 * reason, and nothing is overwritten: a good file only adds entries to what is on the device.
 */
import * as z from 'zod/mini';
import type { Job } from './model.ts';

export const JOB_FORMAT = 'loomleaf-job';
export const JOB_VERSION = 1;
/** A whole year of jobs is under 10 MB; more is not a job file. */
const MOST_BYTES = 50_000_000;

const text = z.string().check(z.maxLength(20_000));
const key = z.string().check(z.minLength(1), z.maxLength(200));
const finite = z.number();
const entries = <T extends z.ZodMiniType>(value: T) =>
  z.record(key, z.strictObject({ v: z.nullable(value), at: finite.check(z.gte(0)), by: z.string() }));

const signature = z.strictObject({
  fitter: text,
  checker: text,
  override: z.optional(text),
  values: z.record(key, finite),
  on: text,
});

const check = z.strictObject({ id: key, text, reads: z.boolean() });
const stop = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('step'), id: key }),
  z.strictObject({
    kind: z.literal('hold'),
    id: key,
    point: z.enum(['H1', 'H2', 'H3', 'H4']),
    title: text,
    checks: z.array(check),
  }),
]);

const baseline = z.strictObject({
  issue: finite,
  values: z.record(key, z.strictObject({ label: text, default: finite })),
  figures: z.record(key, z.nullable(finite)),
  findings: z.array(text),
  steps: z.array(text),
  line: z.array(stop),
});

const jobSchema = z.strictObject({
  id: key,
  guide: z.strictObject({ id: key, number: text, title: text }),
  number: text,
  vehicle: text,
  who: text,
  startedOn: text,
  baseline,
  values: entries(finite),
  steps: entries(z.literal(true)),
  checks: entries(z.literal(true)),
  readings: entries(z.strictObject({ typed: text, value: finite })),
  signatures: entries(signature),
  reopened: entries(z.strictObject({ hold: key, reason: text, was: signature })),
  notes: entries(text),
  guides: entries(baseline),
  head: entries(text),
  closed: entries(z.literal(true)),
});

const fileSchema = z.strictObject({
  format: z.literal(JOB_FORMAT),
  version: z.literal(JOB_VERSION),
  savedOn: text,
  jobs: z.array(jobSchema).check(z.minLength(1)),
});

/** The text of a job file. */
export function writeJobFile(jobs: readonly Job[], savedOn: string): string {
  return `${JSON.stringify({ format: JOB_FORMAT, version: JOB_VERSION, savedOn, jobs }, null, 1)}\n`;
}

export type JobFile = { ok: true; jobs: Job[]; savedOn: string } | { ok: false; reason: string };
const refuse = (reason: string): JobFile => ({ ok: false, reason });

/** Reads a job file; says what is wrong with it, where, and never throws. */
export function readJobFile(source: string): JobFile {
  if (source.length > MOST_BYTES) return refuse('This file is over 50 MB. A job file is far smaller.');
  if (!source.trim()) return refuse('This file is empty.');
  let data: unknown;
  try {
    data = JSON.parse(source);
  } catch (e) {
    return refuse(`This file is damaged: it is not whole JSON. ${(e as Error).message}.`);
  }
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return refuse('This is not a job file.');
  const head = data as { format?: unknown; version?: unknown };
  if (head.format !== JOB_FORMAT) return refuse('This is not a job file: it does not say so in its first line.');
  if (typeof head.version === 'number' && head.version > JOB_VERSION) {
    return refuse(
      `This file is of version ${head.version}; this page reads version ${JOB_VERSION}. Load the site again, then try once more.`,
    );
  }
  const read = z.safeParse(fileSchema, data);
  if (!read.success) {
    const issue = read.error.issues[0]!;
    const more = read.error.issues.length - 1;
    const where = issue.path.length ? ` at ${issue.path.map(String).join(' > ')}` : '';
    return refuse(`This file is damaged${where}: ${issue.message}.${more ? ` ${more} more like it.` : ''}`);
  }
  const ids = read.data.jobs.map((j) => j.id);
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  if (twice) return refuse(`This file is damaged: job "${twice}" is in it twice.`);
  return { ok: true, jobs: read.data.jobs as Job[], savedOn: read.data.savedOn };
}
