import { readJobFile } from '../../../components/job/file.ts';
import { rememberJobs, takeInHand } from '../../../components/job/hint.ts';
import { guideOf, headOf, type Job, standing } from '../../../components/job/model.ts';
import { openJobs } from '../../../components/job/store.ts';
import { exportJobs } from './export.ts';
import { fillRow, type Summary, summaryOf } from './summary.ts';

/** The page of jobs: every job on the device, its head, its notes, the way out and back. */
const find = <E extends HTMLElement>(id: string): E => document.getElementById(id) as E;
const [opened, finished] = [find('jobs-open'), find('jobs-finished')];
const guides = opened.dataset['guides'] ?? '/guides/';
const issues = JSON.parse(find('guides-here').textContent ?? '{}') as Record<string, number>;
const rowOf = find<HTMLTemplateElement>('job-row');
const moreOf = find<HTMLTemplateElement>('job-more');
const sure = find<HTMLDialogElement>('job-sure');

performance.mark('jobs-from');
const store = await openJobs();
const tell = (message: string, kind: 'pass' | 'stop'): void => {
  const line = find('jobs-imported');
  line.hidden = false;
  line.className = `flag ${kind}`;
  line.querySelector('use')!.setAttribute('href', `#i-${kind}`);
  line.querySelector('span')!.textContent = message;
};
const trouble = (message: string): void => {
  const line = find('jobs-trouble');
  line.hidden = false;
  line.querySelector('span')!.textContent = message;
};
const known = store.trouble();
if (known) trouble(known.message);
store.onTrouble(({ message }) => trouble(message));

/** Rows stay in place while they are being edited; only their words follow. */
const rows = new Map<string, HTMLLIElement>();

function rowFor(id: string): HTMLLIElement {
  const known = rows.get(id);
  if (known) return known;
  const row = document.createElement('li');
  row.append(rowOf.content.cloneNode(true), moreOf.content.cloneNode(true));
  const form = row.querySelector('form')!;
  form.addEventListener('submit', (event) => event.preventDefault());
  form.addEventListener('change', (event) => {
    const field = event.target as HTMLInputElement;
    const value = field.value.trim();
    if (field.name === 'notes') void store.write(id, 'notes', 'job', value || null);
    else if (value !== '') void store.write(id, 'head', field.name, value);
    else void render(); // a head field is never empty: what stood comes back
  });
  row.querySelector('[data-j="export"]')!.addEventListener('click', async () => {
    const job = await store.get(id);
    if (job) exportJobs([job]);
  });
  row.querySelector('[data-j="remove"]')!.addEventListener('click', async () => {
    const job = await store.get(id);
    if (!job) return;
    const { number, vehicle } = headOf(job);
    sure.querySelector('[data-j="what"]')!.textContent = `Job ${number}, ${vehicle}: ${job.guide.title}.`;
    sure.returnValue = 'keep';
    sure.showModal();
    sure.addEventListener(
      'close',
      () => {
        if (sure.returnValue !== 'remove') return;
        takeInHand(job.guide.id, null);
        void store.remove(id);
      },
      { once: true },
    );
  });
  rows.set(id, row);
  return row;
}

function fill(job: Job, summary: Summary): HTMLLIElement {
  const row = rowFor(job.id);
  const guide = `${guides}${job.guide.id}/`;
  const ask = `?job=${encodeURIComponent(job.id)}`;
  fillRow(row, summary, guide + ask);
  const issue = issues[job.guide.id];
  const says = row.querySelector('[data-j="says"]')!;
  if (issue === undefined) says.textContent += ' The guide is not in this site any more.';
  else if (issue !== guideOf(job).issue)
    says.textContent += ` The guide changed: issue ${guideOf(job).issue} then, ${issue} now. Open it to see what.`;
  row.querySelector<HTMLAnchorElement>('[data-j="card"]')!.href = `${guide}card/${ask}`;
  row.querySelector('summary')!.setAttribute('aria-label', `More about job ${summary.number}`);
  const entries: Record<string, string> = { ...headOf(job), notes: standing(job.notes, 'job') ?? '' };
  for (const field of row.querySelectorAll<HTMLInputElement>('[name]'))
    if (field !== document.activeElement) field.value = entries[field.name] ?? '';
  return row;
}

async function render(): Promise<void> {
  const jobs = await store.list();
  rememberJobs(jobs.length > 0);
  const all = jobs
    .map((job) => ({ job, summary: summaryOf(job) }))
    .sort((a, b) => b.summary.touched - a.summary.touched);
  for (const [id, row] of rows)
    if (!jobs.some((job) => job.id === id)) {
      row.remove();
      rows.delete(id);
    }
  for (const [list, done] of [
    [opened, false],
    [finished, true],
  ] as const) {
    const mine = all.filter(({ summary }) => summary.finished === done);
    const filled = mine.map(({ job, summary }) => fill(job, summary));
    // rows that already stand in this order are left alone, with the focus that may be in them
    if (filled.length !== list.children.length || filled.some((row, i) => list.children[i] !== row))
      list.replaceChildren(...filled);
  }
  find('jobs-none').hidden = all.some(({ summary }) => !summary.finished);
  find('jobs-none-finished').hidden = all.some(({ summary }) => summary.finished);
  find<HTMLButtonElement>('jobs-export').disabled = jobs.length === 0;
}

find('jobs-export').addEventListener('click', async () => exportJobs(await store.list()));
const input = find<HTMLInputElement>('jobs-import');
input.disabled = false;
input.addEventListener('change', async () => {
  const file = input.files?.[0];
  if (!file) return;
  const read = readJobFile(await file.text());
  input.value = '';
  if (!read.ok) return tell(`${read.reason} Nothing was changed.`, 'stop');
  const here = new Set((await store.list()).map(({ id }) => id));
  try {
    await store.putAll(read.jobs);
  } catch (fault) {
    return tell(`${(fault as Error).message} Nothing was brought in.`, 'stop');
  }
  const added = read.jobs.filter(({ id }) => !here.has(id)).length;
  const merged = read.jobs.length - added;
  const words = [added > 0 ? `${added} new` : '', merged > 0 ? `${merged} joined with the one here` : ''];
  tell(`Brought back: ${words.filter(Boolean).join(', ')}.`, 'pass');
});

store.onChange(() => void render());
await render();
performance.measure('jobs', 'jobs-from');
document.documentElement.dataset['jobs'] = 'ready';
