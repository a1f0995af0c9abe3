import { describe, expect, it } from 'vitest';
import { driftOf } from '../../../components/job/drift.ts';
import { lineState, missingFor, type Stop } from '../../../components/job/gate.ts';
import { enter, type Job } from '../../../components/job/model.ts';
import { blank } from './blank.ts';

const line: Stop[] = [
  {
    kind: 'hold',
    id: 'h1',
    point: 'H1',
    title: 'before you start',
    checks: [
      { id: 'sleep', text: 'Sleep current', reads: true },
      { id: 'ground', text: 'Ground point found', reads: false },
    ],
  },
  { kind: 'step', id: 'park' },
  { kind: 'step', id: 'fuse' },
  { kind: 'hold', id: 'h3', point: 'H3', title: 'before the fuse goes in', checks: [] },
  { kind: 'step', id: 'power' },
];
const values = { runM: 4 };
const at = (job: Job) => lineState({ line, job, values });
const sign = (job: Job, id: string, more: { override?: string; values?: Record<string, number> } = {}) =>
  enter(job, 'signatures', id, {
    v: {
      fitter: 'Wenna',
      checker: 'Hedy',
      values: more.values ?? values,
      on: '2026-11-25T09:00:00Z',
      ...(more.override ? { override: more.override } : {}),
    },
    at: 9,
    by: 'a',
  });
const withChecks = (job: Job) =>
  enter(enter(job, 'readings', 'h1.sleep', { v: { typed: '24', value: 24 }, at: 1, by: 'a' }), 'checks', 'h1.ground', {
    v: true,
    at: 1,
    by: 'a',
  });

describe('the line', () => {
  it('is stopped by an open hold point, and every step after it says so', () => {
    const state = at(blank());
    expect(state.openHold?.id).toBe('h1');
    expect(state.openHold?.missing.map((c) => c.id)).toEqual(['sleep', 'ground']);
    expect(state.next).toBeUndefined();
    expect(state.locked.get('power')).toBe('Hold 1 is open: before you start');
  });

  it('a signature without its checks does not close it, with an override it does', () => {
    expect(at(sign(blank(), 'h1')).openHold?.id).toBe('h1');
    expect(at(sign(blank(), 'h1', { override: 'meter broken; read at hand-over' })).next).toBe('park');
  });

  it('steps go in order up to the next hold point', () => {
    let job = sign(withChecks(blank()), 'h1');
    expect(at(job).next).toBe('park');
    expect(at(job).locked.get('fuse')).toBe('Step 1 first');
    job = enter(job, 'steps', 'park', { v: true, at: 2, by: 'a' });
    job = enter(job, 'steps', 'fuse', { v: true, at: 2, by: 'a' });
    expect(at(job)).toMatchObject({ next: undefined, openHold: { id: 'h3' } });
    job = sign(job, 'h3');
    expect(at(job).next).toBe('power');
    expect(at(job).done.size).toBe(2);
  });

  it('opens again when a job value moves after signing, and says which', () => {
    const job = sign(withChecks(blank()), 'h1', { values: { runM: 3.5 } });
    expect(at(job).openHold?.moved).toEqual([{ name: 'runM', was: 3.5, now: 4 }]);
  });

  it('says what is missing', () => {
    const open = at(blank()).openHold!;
    expect(missingFor(open, 'Wenna', '')).toBe('Needs 2 checks and a checker.');
    const ready = at(withChecks(blank())).openHold!;
    expect(missingFor(ready, '', '')).toBe('Needs a fitter and a checker.');
    expect(missingFor(ready, 'Wenna', ' wenna ')).toBe('Needs a second person.');
    expect(missingFor(ready, 'Wenna', 'Hedy')).toBe('');
  });
});

describe('a guide that changed since the job began', () => {
  const hold = (text: string): Stop => ({
    kind: 'hold',
    id: 'h1',
    point: 'H1',
    title: 'before you start',
    checks: [{ id: 'ground', text, reads: false }],
  });
  const was = {
    issue: 6,
    values: { runM: { label: 'Run', default: 4 } },
    figures: { 'F1.ratingA': 5 },
    findings: ['x'],
    steps: ['a', 'b'],
    line: [hold('Ground found')],
  };

  it('shows findings, figures, values, steps and issue, and nothing when nothing changed', () => {
    expect(driftOf(was, structuredClone(was))).toEqual([]);
    const now = {
      issue: 7,
      values: { runM: { label: 'Run', default: 5 } },
      figures: { 'F1.ratingA': null },
      findings: ['y'],
      steps: ['a', 'c'],
      line: [hold('Ground clean')],
    };
    expect(driftOf(was, now).map((c) => [c.kind, c.what, c.was, c.now])).toEqual([
      ['finding', 'y', '', 'new'],
      ['finding', 'x', 'found', 'gone'],
      ['figure', 'F1.ratingA', '5', 'no answer'],
      ['value', 'Run', '4', '5'],
      ['step', 'c', 'not there', 'new'],
      ['step', 'b', 'there', 'gone'],
      ['check', 'H1: Ground clean', 'not there', 'new'],
      ['check', 'H1: Ground found', 'there', 'gone'],
      ['issue', 'Issue of the guide', '6', '7'],
    ]);
  });
});
