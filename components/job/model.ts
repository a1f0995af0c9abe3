/**
 * A job: one guide, one vehicle, today. It is a heap of entries, each with the time it was made and the tab that made
 * it, so that two tabs, two devices or a file brought back never lose each other's work: the newer entry wins, one by
 * one. Nothing is ever deleted from a job; taking something back is an entry too.
 */

import type { Stop } from './gate.ts';

/** One thing written down. `null` takes it back. */
export interface Entry<T> {
  v: T | null;
  /** Milliseconds since 1970, of the device that wrote it. */
  at: number;
  /** Who wrote it, to break a tie: an id of the tab. */
  by: string;
}
export type Entries<T> = Record<string, Entry<T>>;

/** A meter reading as typed and as understood, in the unit of its place on the sheet. */
export interface Reading {
  typed: string;
  value: number;
}

/** A closed hold point: who signed, and the job values as they stood. */
export interface Signature {
  fitter: string;
  checker: string;
  /** Passing it without its checks needs a reason, and prints on the card. */
  override?: string | undefined;
  values: Record<string, number>;
  on: string;
}

/** What the guide was when the job began, to show later what changed in it that matters. */
export interface Baseline {
  issue: number;
  values: Record<string, { label: string; default: number }>;
  /** Figures by value path, such as `F1.ratingA`. */
  figures: Record<string, number | null>;
  findings: string[];
  steps: string[];
  /** Steps and hold points in reading order: lists and cards show progress without the guide. */
  line: Stop[];
}

export interface Job {
  id: string;
  guide: { id: string; number: string; title: string };
  /** As the workshop writes them. */
  number: string;
  vehicle: string;
  who: string;
  startedOn: string;
  baseline: Baseline;
  values: Entries<number>;
  steps: Entries<true>;
  checks: Entries<true>;
  readings: Entries<Reading>;
  signatures: Entries<Signature>;
  /** Why a closed hold point was opened again, by hold id and time. */
  reopened: Entries<{ hold: string; reason: string; was: Signature }>;
  notes: Entries<string>;
  /** The guide as it was when someone took over its changes, under `now`. */
  guides: Entries<Baseline>;
  /** Head fields changed after the start: number, vehicle, who. */
  head: Entries<string>;
  /** Put away from the list of jobs in the bays; kept on the device. */
  closed: Entries<true>;
}

/** The parts of a job that grow; everything else is fixed when it starts. */
export const GROWING = [
  'values',
  'steps',
  'checks',
  'readings',
  'signatures',
  'reopened',
  'notes',
  'guides',
  'head',
  'closed',
] as const;
export type Growing = (typeof GROWING)[number];
type ValueIn<K extends Growing> = Job[K] extends Entries<infer T> ? T : never;

/** A job with nothing in it yet. */
export function startJob(o: {
  id: string;
  guide: Job['guide'];
  number: string;
  vehicle: string;
  who: string;
  startedOn: string;
  baseline: Baseline;
}): Job {
  return {
    ...o,
    values: {},
    steps: {},
    checks: {},
    readings: {},
    signatures: {},
    reopened: {},
    notes: {},
    guides: {},
    head: {},
    closed: {},
  };
}

/** Which of two entries stands: the later; on the same millisecond the one whose writer sorts last, then its text. */
function later<T>(a: Entry<T>, b: Entry<T>): Entry<T> {
  if (a.at !== b.at) return a.at > b.at ? a : b;
  if (a.by !== b.by) return a.by > b.by ? a : b;
  return JSON.stringify(a.v) >= JSON.stringify(b.v) ? a : b;
}

/** One entry put into a job; returns a new job. An older entry than the one that stands changes nothing. */
export function enter<K extends Growing>(job: Job, part: K, key: string, entry: Entry<ValueIn<K>>): Job {
  const entries = job[part] as Entries<ValueIn<K>>;
  const old = Object.hasOwn(entries, key) ? entries[key] : undefined;
  if (old && later(old, entry) === old) return job;
  return { ...job, [part]: { ...entries, [key]: entry } };
}

/** All entries of two versions of one job. Order, repetition and grouping of merges do not matter. */
export function mergeJobs(a: Job, b: Job): Job {
  if (a.id !== b.id) throw new TypeError(`Cannot merge job "${b.id}" into job "${a.id}": they are different jobs`);
  let out = a;
  for (const part of GROWING) {
    for (const [key, entry] of Object.entries(b[part])) out = enter(out, part, key, entry as never);
  }
  return out;
}

/** What stands under a key, or undefined where nothing was entered or it was taken back. */
export function standing<T>(entries: Entries<T>, key: string): T | undefined {
  return Object.hasOwn(entries, key) ? (entries[key]!.v ?? undefined) : undefined;
}

/** Everything that stands, by key. */
export function allStanding<T>(entries: Entries<T>): Record<string, T> {
  const out: Record<string, T> = {};
  for (const key of Object.keys(entries)) {
    const v = standing(entries, key);
    if (v !== undefined) out[key] = v;
  }
  return out;
}

/** Job number, vehicle and fitter as they stand now. */
export function headOf(job: Job): { number: string; vehicle: string; who: string } {
  const now = (key: 'number' | 'vehicle' | 'who') => standing(job.head, key) ?? job[key];
  return { number: now('number'), vehicle: now('vehicle'), who: now('who') };
}

/** The guide that the job goes by: as it was at the start, or as it was when its changes were taken over. */
export const guideOf = (job: Job): Baseline => standing(job.guides, 'now') ?? job.baseline;

/** Job values of the job: what was set, the guide's default for the rest. */
export function valuesOf(job: Job): Record<string, number> {
  const values: Record<string, number> = {};
  for (const [name, { default: usual }] of Object.entries(guideOf(job).values))
    values[name] = standing(job.values, name) ?? usual;
  return values;
}

/** Time of the last entry [ms since 1970], or 0 for a job with none. */
export function lastTouched(job: Job): number {
  return Math.max(0, ...GROWING.flatMap((part) => Object.values(job[part]).map((e) => e.at)));
}
