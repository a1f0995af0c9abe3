import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allStanding,
  type Entry,
  enter,
  headOf,
  lastTouched,
  mergeJobs,
  standing,
} from '../../../components/job/model.ts';
import { blank } from './blank.ts';

const entry = fc.record({
  v: fc.oneof(fc.constant(null), fc.integer({ min: 0, max: 3 })),
  at: fc.integer({ min: 0, max: 5 }),
  by: fc.constantFrom('a', 'b'),
});
const writes = fc.array(fc.tuple(fc.constantFrom('rearRunM', 'feedRunM', '__proto__', 'constructor'), entry), {
  maxLength: 12,
});
const jobWith = (list: [string, Entry<number>][]) => list.reduce((j, [key, e]) => enter(j, 'values', key, e), blank());

describe('merging jobs', () => {
  it('does not depend on order, repetition or grouping', () => {
    fc.assert(
      fc.property(writes, writes, writes, (x, y, z) => {
        const [a, b, c] = [jobWith(x), jobWith(y), jobWith(z)];
        expect(mergeJobs(a, b)).toEqual(mergeJobs(b, a));
        expect(mergeJobs(a, a)).toEqual(a);
        expect(mergeJobs(mergeJobs(a, b), c)).toEqual(mergeJobs(a, mergeJobs(b, c)));
      }),
    );
  });

  it('keeps both tabs when they wrote different things, and the later when they wrote the same', () => {
    const left = enter(enter(blank(), 'steps', 'park', { v: true, at: 10, by: 'left' }), 'values', 'runM', {
      v: 6,
      at: 10,
      by: 'left',
    });
    const right = enter(enter(blank(), 'notes', 'n1', { v: 'sill is wet', at: 11, by: 'right' }), 'values', 'runM', {
      v: 7,
      at: 12,
      by: 'right',
    });
    const both = mergeJobs(left, right);
    expect(standing(both.steps, 'park')).toBe(true);
    expect(standing(both.notes, 'n1')).toBe('sill is wet');
    expect(standing(both.values, 'runM')).toBe(7);
  });

  it('refuses two different jobs, naming both', () => {
    expect(() => mergeJobs(blank('a'), blank('b'))).toThrow(
      'Cannot merge job "b" into job "a": they are different jobs',
    );
  });
});

describe('entries', () => {
  it('taking something back is an entry too, and an older entry does not undo it', () => {
    let job = enter(blank(), 'steps', 'park', { v: true, at: 1, by: 'a' });
    job = enter(job, 'steps', 'park', { v: null, at: 3, by: 'a' });
    job = enter(job, 'steps', 'park', { v: true, at: 2, by: 'b' });
    expect(standing(job.steps, 'park')).toBeUndefined();
    expect(allStanding(job.steps)).toEqual({});
    expect(lastTouched(job)).toBe(3);
  });

  it('never changes the job it was given', () => {
    const job = blank();
    enter(job, 'values', 'runM', { v: 1, at: 1, by: 'a' });
    expect(job).toEqual(blank());
  });

  it('head fields entered later stand before those of the start', () => {
    const job = enter(blank(), 'head', 'vehicle', { v: 'Meals 4', at: 1, by: 'a' });
    expect(headOf(job)).toEqual({ number: '2611-18', vehicle: 'Meals 4', who: 'Wenna' });
  });
});
