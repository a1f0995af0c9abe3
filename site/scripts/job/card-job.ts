import { lineState } from '../../../components/job/gate.ts';
import { allStanding, headOf, type Job, standing } from '../../../components/job/model.ts';
import { openJobs } from '../../../components/job/store.ts';
import type { Page } from '../../../components/runtime/page.ts';
import { lineOf } from './line.ts';
import { clock } from './words.ts';

/** Notes that a card keeps in its job: where a fuse is, what was printed last. */
const PLACE = 'place.';
const PRINTED = 'printed';
const BENCH = 'bench.';

/** Puts a job on the card: values, ticks, readings, signatures. */
export async function fillCard(card: HTMLElement, page: Page, id: string): Promise<void> {
  const store = await openJobs();
  let job = await store.get(id);
  if (job === undefined || job.guide.id !== card.dataset['card']) {
    const line = card.querySelector<HTMLElement>('[data-card-trouble]')!;
    line.hidden = false;
    line.querySelector('span')!.textContent =
      job === undefined
        ? 'That job is not on this device. This is the blank card.'
        : `That job is on another guide: ${job.guide.title}. This is the blank card.`;
    return;
  }
  const set = (entry: Job): void => {
    job = entry;
    page.apply(allStanding(entry.values));
    page.readings.value = Object.fromEntries(
      Object.entries(allStanding(entry.readings)).flatMap(([key, reading]) =>
        key.startsWith(BENCH) ? [[key.slice(BENCH.length), reading]] : [],
      ),
    );
    show(card, page, entry);
  };
  // a card shows a job and changes nothing in it
  page.handOver(() => undefined);
  set(job);
  store.onChange((changed) => {
    if (changed !== id) return;
    void store.get(id).then((stored) => stored && set(stored));
  });

  const places = card.querySelector<HTMLElement>('[data-card-places]')!;
  const cells = [
    ...new Set([...card.querySelectorAll<HTMLElement>('[data-place]')].map(({ dataset }) => dataset['place']!)),
  ];
  places.hidden = cells.length === 0;
  for (const fuse of cells) {
    const label = document.createElement('label');
    label.className = 'field';
    label.textContent = `Where ${fuse} is`;
    const input = document.createElement('input');
    input.maxLength = 120;
    input.autocomplete = 'off';
    input.value = standing(job.notes, PLACE + fuse) ?? '';
    input.addEventListener('change', () => void store.write(id, 'notes', PLACE + fuse, input.value.trim() || null));
    label.append(input);
    places.append(label);
  }

  stale(card, page, job);
  addEventListener('beforeprint', () => {
    const note = JSON.stringify({ on: new Date().toISOString(), values: page.values.peek() });
    void store.write(id, 'notes', PRINTED, note);
  });
}

/** How many job values moved since the card was last printed. */
function stale(card: HTMLElement, page: Page, job: Job): void {
  const note = standing(job.notes, PRINTED);
  if (note === undefined) return;
  let last: { on: string; values: Record<string, number> };
  try {
    last = JSON.parse(note);
  } catch {
    return;
  }
  const moved = Object.entries(page.values.peek()).filter(([name, value]) => last.values?.[name] !== value).length;
  if (moved === 0) return;
  const line = card.querySelector<HTMLElement>('[data-card-stale]')!;
  line.hidden = false;
  line.querySelector('span')!.textContent =
    `${moved} ${moved === 1 ? 'number' : 'numbers'} changed since the card of ${clock(last.on)}. Bin that one.`;
}

function show(card: HTMLElement, page: Page, job: Job): void {
  const { number, vehicle, who } = headOf(job);
  const now = clock(new Date().toISOString());
  const words: Record<string, string> = { number, vehicle, who, printed: now, date: now.split(',')[0]! };
  for (const [name, text] of Object.entries(words))
    for (const element of card.querySelectorAll(`[data-card="${name}"]`)) element.textContent = text;
  for (const cell of card.querySelectorAll<HTMLElement>('[data-place]'))
    cell.textContent = standing(job.notes, PLACE + cell.dataset['place']) ?? '';

  const state = lineState({ line: lineOf(card), job, values: page.values.peek() });
  for (const row of card.querySelectorAll<HTMLElement>('[data-step]')) {
    const done = state.done.has(row.dataset['step']!);
    row.querySelector('.box')?.classList.toggle('on', done);
    row.dataset['is'] = done ? 'done' : '';
  }
  for (const hold of card.querySelectorAll<HTMLElement>('[data-hold]')) {
    const key = hold.dataset['hold']!;
    const each = state.holds.get(key)!;
    for (const check of hold.querySelectorAll<HTMLElement>('[data-check]')) {
      const at = `${key}.${check.dataset['check']}`;
      check.querySelector('.box')?.classList.toggle('on', standing(job.checks, at) === true);
      const place = check.querySelector('[data-reading]');
      if (place) place.textContent = standing(job.readings, at)?.typed ?? '';
    }
    const sign = each.closed ? each.signature : undefined;
    const put = (name: string, text: string): void => {
      hold.querySelector(`[data-sign="${name}"]`)!.textContent = text;
    };
    put('fitter', sign?.fitter ?? '');
    put('checker', sign?.checker ?? '');
    put('on', sign === undefined ? '' : clock(sign.on));
    const over = hold.querySelector<HTMLElement>('[data-sign="override"]')!;
    over.hidden = sign?.override === undefined;
    over.textContent =
      sign?.override === undefined ? '' : `Passed without its checks by ${sign.fitter}: ${sign.override}`;
    const old = hold.querySelector<HTMLElement>('[data-card-old]')!;
    const struck = Object.values(job.reopened).flatMap(({ v }) => (v !== null && v.hold === key ? [v] : []));
    old.hidden = struck.length === 0;
    old.replaceChildren(
      ...struck.flatMap(({ was, reason }) => {
        const gone = document.createElement('s');
        gone.textContent = `${was.fitter}${was.checker === '' ? '' : ` and ${was.checker}`}, ${clock(was.on)}`;
        return [gone, ` Opened again: ${reason}. `];
      }),
    );
    hold.closest('.stn')?.classList.toggle('open', !each.closed);
  }
  for (const stop of card.querySelectorAll<HTMLElement>('.pline > .stn[data-station]')) {
    const steps = [...stop.querySelectorAll<HTMLElement>('[data-step]')];
    const holds = [...stop.querySelectorAll<HTMLElement>('[data-hold]')];
    const done =
      steps.every(({ dataset }) => dataset['is'] === 'done') &&
      holds.every(({ dataset }) => state.holds.get(dataset['hold']!)?.closed);
    if (done && steps.length + holds.length > 0) stop.dataset['is'] = 'done';
    else stop.removeAttribute('data-is');
  }
}
