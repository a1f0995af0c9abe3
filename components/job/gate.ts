/** Which steps may be done now: they are done in order, and a hold point stops the line until it is signed. */
import { type Job, type Signature, standing } from './model.ts';

/** The guide's line: its steps and hold points in reading order. */
export type Stop =
  | { kind: 'step'; id: string }
  | { kind: 'hold'; id: string; point: 'H1' | 'H2' | 'H3' | 'H4'; title: string; checks: HoldCheck[] };

export interface HoldCheck {
  id: string;
  text: string;
  /** Needs a reading, not just a tick. */
  reads: boolean;
}

export interface HoldState {
  id: string;
  closed: boolean;
  signature: Signature | undefined;
  /** Checks still without a tick or reading. */
  missing: HoldCheck[];
  /** Job values that moved since it was signed: it is open again. */
  moved: { name: string; was: number; now: number }[];
}

export interface LineState {
  /** Steps that are ticked and count. */
  done: Set<string>;
  /** The step to do next; undefined when a hold point stands before it or all is done. */
  next: string | undefined;
  /** The first hold point that is not closed. */
  openHold: HoldState | undefined;
  /** Why a step cannot be ticked yet, by step id. */
  locked: Map<string, string>;
  holds: Map<string, HoldState>;
  stepsTotal: number;
}

function holdState(job: Job, stop: Stop & { kind: 'hold' }, values: Readonly<Record<string, number>>): HoldState {
  const signature = standing(job.signatures, stop.id);
  const missing = stop.checks.filter((c) =>
    c.reads ? standing(job.readings, `${stop.id}.${c.id}`) === undefined : !standing(job.checks, `${stop.id}.${c.id}`),
  );
  const moved = Object.entries(signature?.values ?? {}).flatMap(([name, was]) => {
    const now = values[name];
    return now !== undefined && now !== was ? [{ name, was, now }] : [];
  });
  const closed =
    signature !== undefined && moved.length === 0 && (missing.length === 0 || signature.override !== undefined);
  return { id: stop.id, closed, signature, missing, moved };
}

/**
 * State of the whole line for a job.
 * @param o.line steps and hold points in reading order
 * @param o.values job values as they stand now, defaults included
 */
export function lineState(o: { line: readonly Stop[]; job: Job; values: Readonly<Record<string, number>> }): LineState {
  const done = new Set<string>();
  const locked = new Map<string, string>();
  const holds = new Map<string, HoldState>();
  let next: string | undefined;
  let openHold: HoldState | undefined;
  let number = 0;
  let nextNumber = 0;
  for (const stop of o.line) {
    if (stop.kind === 'hold') {
      const state = holdState(o.job, stop, o.values);
      holds.set(stop.id, state);
      if (!state.closed && !openHold) openHold = state;
      continue;
    }
    number += 1;
    const ticked = standing(o.job.steps, stop.id) === true;
    if (openHold) {
      const at = o.line.find((s) => s.kind === 'hold' && s.id === openHold!.id) as Stop & { kind: 'hold' };
      locked.set(stop.id, `Hold ${at.point.slice(1)} is open: ${at.title}`);
      if (ticked) done.add(stop.id);
    } else if (ticked) done.add(stop.id);
    else if (next === undefined) {
      next = stop.id;
      nextNumber = number;
    } else locked.set(stop.id, `Step ${nextNumber} first`);
  }
  return { done, next, openHold, locked, holds, stepsTotal: number };
}

/** What still stands between a hold point and its signature, in words; empty when it may be closed. */
export function missingFor(state: HoldState, fitter: string, checker: string): string {
  const needs: string[] = [];
  const n = state.missing.length;
  if (n) needs.push(`${n} ${n === 1 ? 'check' : 'checks'}`);
  if (!fitter.trim()) needs.push('a fitter');
  if (!checker.trim()) needs.push('a checker');
  if (!needs.length && fitter.trim().toLowerCase() === checker.trim().toLowerCase()) return 'Needs a second person.';
  if (!needs.length) return '';
  const last = needs.pop();
  return `Needs ${needs.length ? `${needs.join(', ')} and ` : ''}${last}.`;
}
