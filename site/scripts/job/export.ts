import { writeJobFile } from '../../../components/job/file.ts';
import { headOf, type Job } from '../../../components/job/model.ts';

const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[^\w-]+/g, '-')
    .replace(/^-+|-+$/g, '') || 'job';

/** Hands one or many jobs over as one file. */
export function exportJobs(jobs: readonly Job[]): void {
  const on = new Date().toISOString();
  const file = new Blob([writeJobFile(jobs, on)], { type: 'application/json' });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = jobs.length === 1 ? `job-${plain(headOf(jobs[0]!).number)}.json` : `jobs-${on.slice(0, 10)}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
