import { type Job, startJob } from '../../../components/job/model.ts';

/** A job with nothing entered. */
export const blank = (id = 'job-1'): Job =>
  startJob({
    id,
    guide: { id: 'cargo-work-light', number: '001', title: 'Cargo work light' },
    number: '2611-18',
    vehicle: 'Meals 7',
    who: 'Wenna',
    startedOn: '2026-11-25T09:00:00Z',
    baseline: { issue: 6, values: {}, figures: {}, findings: [], steps: ['park', 'fuse'], line: [] },
  });
