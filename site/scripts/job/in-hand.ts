import { effect } from '@preact/signals-core';
import { baselineOf } from '../../../components/job/baseline.ts';
import { type Change, driftOf } from '../../../components/job/drift.ts';
import { lineState } from '../../../components/job/gate.ts';
import { rememberJobs, takeInHand } from '../../../components/job/hint.ts';
import {
  allStanding,
  type Baseline,
  enter,
  guideOf,
  type Job,
  mergeJobs,
  standing,
  startJob,
} from '../../../components/job/model.ts';
import { type JobStore, openJobs } from '../../../components/job/store.ts';
import { clearUnsaved, layDown, takeUp, type Unsaved } from '../../../components/job/unsaved.ts';
import { live, readPageData } from '../../../components/runtime/live.ts';
import type { Page } from '../../../components/runtime/page.ts';
import { inWords, show } from '../../../components/show.ts';
import { KIND_OF_QUANTITY } from '../../../components/units.ts';
import { exportJobs } from './export.ts';
import { joinHolds } from './holds.ts';
import { lineOf } from './line.ts';
import { joinPanel } from './panel.ts';
import { joinSteps } from './steps.ts';
import { toast } from './toast.ts';

/** Keys of bench readings among a job's readings; the rest belong to hold points. */
const BENCH = 'bench.';
/** Entries made in quick steps are written together. */
const TOGETHER_MS = 120;

const guideHere = async (page: Page): Promise<Baseline> => {
  const { data } = page;
  let study = null;
  if (data.circuit !== null) {
    const { studyOf } = await import('../../../components/study.ts');
    const values = Object.fromEntries(Object.entries(data.circuit.values).map(([name, spec]) => [name, spec.default]));
    study = studyOf(data, values);
  }
  return baselineOf({ issue: data.guide?.issue ?? 0, circuit: data.circuit, study, line: lineOf(document) });
};

/** Starts a job on the guide of this page and takes it in hand. */
export async function beginJob(guide: string, entries: FormData): Promise<void> {
  const [store, page] = await Promise.all([openJobs(), live()]);
  const data = readPageData();
  if (page === null || data?.guide == null) return;
  const text = (name: string): string => String(entries.get(name) ?? '').trim();
  const job = startJob({
    id: crypto.randomUUID(),
    guide: { id: guide, number: data.guide.number, title: data.guide.title },
    number: text('number'),
    vehicle: text('vehicle'),
    who: text('who'),
    startedOn: new Date().toISOString(),
    baseline: await guideHere(page),
  });
  await store.put(job);
  // what was set on the page before the start belongs to the job
  for (const [name, value] of Object.entries(page.values.peek()))
    if (value !== job.baseline.values[name]?.default) await store.write(job.id, 'values', name, value);
  await inHand(guide, job.id, store, page);
  toast(`Job ${job.number} is open. Everything you enter stays on this device.`);
}

/** Takes a job in hand that is on this device. */
export async function openJob(guide: string, id: string): Promise<void> {
  const [store, page] = await Promise.all([openJobs(), live()]);
  if (page === null) return;
  const job = await store.get(id);
  if (job === undefined || job.guide.id !== guide) {
    takeInHand(guide, null);
    return toast('That job is not on this device any more.');
  }
  await inHand(guide, id, store, page);
}

async function inHand(guide: string, id: string, store: JobStore, page: Page): Promise<void> {
  let job = (await store.get(id))!;
  const left = takeUp(job);
  if (left.some) {
    job = await store.put(left.job);
    clearUnsaved(id);
  }
  const here = await guideHere(page);
  const { line } = here;
  takeInHand(guide, id);
  rememberJobs(true);
  const form = document.querySelector<HTMLFormElement>('#job-start');
  if (form) form.hidden = true;

  // ---- entries go to the device one by one, and come back as the job stands, other tabs' entries included
  let gone = false;
  const unsaved = new Set<Unsaved>();
  const write: JobStore['write'] = async (...entry) => {
    try {
      const stored = await store.write(...entry);
      // entries made while this one was being written stand here already
      job = mergeJobs(job, stored);
      return stored;
    } catch (fault) {
      gone = true;
      toast('This job was removed in another tab. What you enter now is not kept.');
      throw fault;
    }
  };
  const put = <K extends Parameters<JobStore['write']>[1]>(part: K, key: string, v: Job[K][string]['v']): void => {
    if (gone) return;
    // shown at once; the device's own entry, made a moment later, takes its place
    const entry = { v, at: Date.now(), by: '' };
    job = enter(job, part, key, entry as never);
    render();
    const waiting: Unsaved = { part, key, entry };
    unsaved.add(waiting);
    write(id, part, key, v)
      .catch(() => undefined)
      .finally(() => unsaved.delete(waiting));
  };

  // ---- values: the job's go on the page; what is changed on the page goes into the job
  const setValues = (): void => {
    const set = allStanding(job.values);
    const now = page.values.peek();
    // working the circuit out again is dear, and most news from other tabs is of other things
    if (Object.entries(now).every(([name, value]) => (set[name] ?? page.data.circuit?.values[name]?.default) === value))
      return;
    page.apply(set);
    const refused = Object.entries(set).filter(([name, value]) => page.values.peek()[name] !== value);
    if (refused.length > 0)
      toast(`Not used, because the guide no longer takes it: ${refused.map(([name]) => labelOf(name)).join(', ')}.`);
  };
  const labelOf = (name: string): string => page.data.circuit?.values[name]?.label ?? name;
  const wordsOf = (name: string, value: number): string => {
    const spec = page.data.circuit?.values[name];
    return spec === undefined
      ? String(value)
      : inWords(show(value, KIND_OF_QUANTITY[spec.quantity], page.units.peek(), spec.step));
  };
  let timer = 0;
  const flush = (): void => {
    clearTimeout(timer);
    timer = 0;
    for (const [name, value] of Object.entries(page.values.peek())) {
      const usual = page.data.circuit?.values[name]?.default;
      if ((standing(job.values, name) ?? usual) === value) continue;
      put('values', name, value === usual ? null : value);
    }
  };
  const linked = location.hash.includes('=') ? { ...page.values.peek() } : undefined;
  page.handOver(() => {
    clearTimeout(timer);
    timer = window.setTimeout(flush, TOGETHER_MS);
    render();
  });

  // ---- readings of the bench sheet
  const benchReadings = () =>
    Object.fromEntries(
      Object.entries(allStanding(job.readings)).flatMap(([key, reading]) =>
        key.startsWith(BENCH) ? [[key.slice(BENCH.length), reading]] : [],
      ),
    );

  // ---- what is on the page
  const steps = joinSteps({ tick: (step, done) => put('steps', step, done || null), refuse: (why) => toast(why) });
  const holds = joinHolds({
    check: (key, done) => put('checks', key, done || null),
    read: (key, reading) => put('readings', key, reading),
    sign: (hold, by) =>
      put('signatures', hold, { ...by, values: { ...page.values.peek() }, on: new Date().toISOString() }),
    open: (hold, reason, was) => {
      put('reopened', `${hold}.${Date.now()}`, { hold, reason, was });
      put('signatures', hold, null);
    },
    units: () => page.units.peek(),
    movedWords: (moved) =>
      moved
        .map(({ name, was, now }) => `${labelOf(name)} was ${wordsOf(name, was)}, now ${wordsOf(name, now)}`)
        .join('. '),
    who: () => standing(job.head, 'who') ?? job.who,
  });
  const panel = joinPanel({
    write: (part, key, v) => put(part, key, v as never),
    exportJob: () => exportJobs([job]),
    link: () => {
      const pairs = Object.entries(page.values.peek()).filter(
        ([name, value]) => value !== page.data.circuit?.values[name]?.default,
      );
      return (
        location.origin + location.pathname + (pairs.length ? `#${pairs.map(([n, v]) => `${n}=${v}`).join('&')}` : '')
      );
    },
    numberOf: steps.numberOf,
    putAside: () => {
      flush();
      takeInHand(guide, null);
      location.assign(location.pathname);
    },
    takeOver: () => put('guides', 'now', here),
    card: `${location.pathname}card/?job=${encodeURIComponent(id)}`,
  });
  function render(): void {
    const state = lineState({ line, job, values: page.values.peek() });
    steps.render(state);
    holds.render(job, state);
    panel.render(job, state, changesOf(job, here));
  }

  setValues();
  render();
  const early = page.readings.peek();
  page.readings.value = { ...early, ...benchReadings() };
  let coming = false;
  effect(() => {
    const readings = page.readings.value;
    if (coming) return;
    for (const key of new Set([...Object.keys(readings), ...Object.keys(benchReadings())])) {
      const [now, kept] = [readings[key], standing(job.readings, BENCH + key)];
      if (now?.typed !== kept?.typed || now?.value !== kept?.value) put('readings', BENCH + key, now ?? null);
    }
  });
  store.onChange((changed) => {
    if (changed !== id) return;
    void store.get(id).then((stored) => {
      if (stored === undefined) return;
      const merged = mergeJobs(job, stored);
      if (merged === job) return;
      // what was just entered here and is not written yet comes first
      if (timer !== 0) flush();
      job = mergeJobs(job, stored);
      coming = true;
      setValues();
      const readings = benchReadings();
      if (JSON.stringify(readings) !== JSON.stringify(page.readings.peek())) page.readings.value = readings;
      coming = false;
      render();
    });
  });
  const troubled = (message: string) => panel.trouble(message);
  const trouble = store.trouble();
  if (trouble) troubled(trouble.message);
  store.onTrouble(({ message }) => troubled(message));
  // a page that is put away may not come back: what is typed and not yet entered counts
  let typing: EventTarget | null = null;
  document.addEventListener('input', ({ target }) => (typing = target));
  document.addEventListener('change', () => (typing = null), true);
  const leave = (): void => {
    typing?.dispatchEvent(new Event('change', { bubbles: true }));
    if (timer !== 0) flush();
    layDown(id, [...unsaved]);
  };
  addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && leave());

  // ---- a link that brings other values: the job's stand until someone says otherwise
  if (linked !== undefined) {
    const other = Object.entries(linked).filter(([name, value]) => page.values.peek()[name] !== value);
    if (other.length > 0)
      toast(
        `The link brings other values: ${other.map(([name, v]) => `${labelOf(name)} ${wordsOf(name, v)}`).join(', ')}. The job's own stand.`,
        {
          label: 'Use them in the job',
          run: () => page.set(Object.fromEntries(other)),
        },
      );
  }
  document.documentElement.dataset['job'] = id;
}

const changesOf = (job: Job, here: Baseline): Change[] => driftOf(guideOf(job), here);
