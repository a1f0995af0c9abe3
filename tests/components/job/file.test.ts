import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJobFile, writeJobFile } from '../../../components/job/file.ts';
import { enter, type Job } from '../../../components/job/model.ts';
import { blank } from './blank.ts';

const full = (): Job => {
  let job = blank();
  job = enter(job, 'values', 'rearRunM', { v: 6.25, at: 5, by: 'a' });
  job = enter(job, 'readings', 'h1.sleep', { v: { typed: '24,5 mA', value: 24.5 }, at: 6, by: 'a' });
  job = enter(job, 'signatures', 'h1', {
    v: { fitter: 'Wenna', checker: 'Hedy', values: { rearRunM: 6.25 }, on: '2026-11-25T09:40:00Z' },
    at: 7,
    by: 'a',
  });
  return job;
};
const saved = () => writeJobFile([full()], '2026-11-25T10:00:00Z');
const reason = (text: string) => {
  const read = readJobFile(text);
  return read.ok ? 'accepted' : read.reason;
};

describe('job file', () => {
  it('comes back as it went out', () => {
    expect(readJobFile(saved())).toEqual({ ok: true, jobs: [full()], savedOn: '2026-11-25T10:00:00Z' });
  });

  it('says why it refuses', () => {
    expect(reason('')).toBe('This file is empty.');
    expect(reason('[]')).toBe('This is not a job file.');
    expect(reason('{"format":"other"}')).toBe('This is not a job file: it does not say so in its first line.');
    expect(reason('{"format":"loomleaf-job","version":2}')).toBe(
      'This file is of version 2; this page reads version 1. Load the site again, then try once more.',
    );
    expect(reason(saved().slice(0, -20))).toMatch(/^This file is damaged: it is not whole JSON\. /);
    const damaged = saved().replace('6.25', '"six"');
    expect(reason(damaged)).toMatch(/^This file is damaged at jobs > 0 > values > rearRunM > v: /);
    const twice = JSON.parse(saved());
    twice.jobs.push(twice.jobs[0]);
    expect(reason(JSON.stringify(twice))).toBe('This file is damaged: job "job-1" is in it twice.');
  });

  it('never throws and never accepts a job that is not whole, whatever is cut out or put in', () => {
    const text = saved();
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.nat(40), fc.string({ maxLength: 8 }), (at, cut, put) => {
        const read = readJobFile(text.slice(0, at) + put + text.slice(at + cut));
        if (read.ok) for (const job of read.jobs) expect(Object.keys(job).sort()).toEqual(Object.keys(full()).sort());
        else expect(read.reason.length).toBeGreaterThan(10);
      }),
      { numRuns: 400 },
    );
  });
});
