import { type HoldState, type LineState, missingFor } from '../../../components/job/gate.ts';
import { type Job, type Reading, type Signature, standing } from '../../../components/job/model.ts';
import { readReading } from '../../../components/job/reading.ts';
import { ask, clock } from './words.ts';

export interface HoldDeeds {
  check(key: string, done: boolean): void;
  read(key: string, reading: Reading | null): void;
  sign(hold: string, signature: Omit<Signature, 'values' | 'on'>): void;
  open(hold: string, reason: string, was: Signature): void;
  units(): Parameters<typeof readReading>[2];
  /** "Fuse to relay was 3 m, now 4 m". */
  movedWords(moved: HoldState['moved']): string;
  who(): string;
}

/** Hold points that can be signed. Returns what shows the state of the line on them. */
export function joinHolds(
  deeds: HoldDeeds,
  root: ParentNode = document,
): { render: (job: Job, state: LineState) => void } {
  const renders = [...root.querySelectorAll<HTMLElement>('.hold[data-hold]')].map((hold) => joinHold(hold, deeds));
  return {
    render(job, state) {
      for (const render of renders) render(job, state);
    },
  };
}

function joinHold(hold: HTMLElement, deeds: HoldDeeds): (job: Job, state: LineState) => void {
  const id = hold.dataset['hold']!;
  const find = <E extends HTMLElement>(what: string): E => hold.querySelector<E>(what)!;
  const [fitter, checker] = [
    find<HTMLInputElement>('[data-sign="fitter"]'),
    find<HTMLInputElement>('[data-sign="checker"]'),
  ];
  const close = find<HTMLButtonElement>('[data-hold-close]');
  const missing = find('[data-hold-missing]');
  const state = find('[data-hold-state]');
  const moved = find('[data-hold-moved]');
  const passing = find('[data-hold-pass]');
  const reopen = find<HTMLDetailsElement>('[data-hold-reopen]');
  const old = find('[data-hold-old]');
  let now: HoldState | undefined;
  let prefilled = false;

  for (const input of [fitter, checker]) {
    input.disabled = false;
    input.addEventListener('input', () => say());
  }
  close.hidden = missing.hidden = passing.hidden = false;
  for (const row of hold.querySelectorAll<HTMLElement>('[data-check]')) {
    const key = `${id}.${row.dataset['check']}`;
    const box = row.querySelector<HTMLInputElement>('input.box');
    if (box) {
      box.disabled = false;
      box.addEventListener('change', () => deeds.check(key, box.checked));
    }
    const field = row.querySelector<HTMLInputElement>('[data-reading]');
    if (!field) continue;
    const bad = row.querySelector<HTMLElement>('[data-reading-bad]')!;
    field.disabled = false;
    const refuse = (message: string): void => {
      bad.hidden = message === '';
      bad.querySelector('span')!.textContent = message;
      if (message === '') field.removeAttribute('aria-invalid');
      else field.setAttribute('aria-invalid', 'true');
    };
    field.addEventListener('input', () => refuse(''));
    field.addEventListener('change', () => {
      const typed = field.value.trim();
      if (typed === '') {
        refuse('');
        return deeds.read(key, null);
      }
      const read = readReading(typed, field.dataset['unit'] ?? '', deeds.units());
      refuse(read.ok ? '' : read.message);
      if (read.ok) deeds.read(key, { typed, value: read.value });
    });
  }

  const say = (): void => {
    if (now === undefined) return;
    const words = missingFor(now, fitter.value, checker.value);
    missing.textContent = words === '' ? 'All in. The contact may close.' : words;
    close.setAttribute('aria-disabled', String(words !== ''));
  };
  close.addEventListener('click', () => {
    if (now === undefined || missingFor(now, fitter.value, checker.value) !== '') return missing.focus();
    deeds.sign(id, { fitter: fitter.value.trim(), checker: checker.value.trim() });
  });
  const name = find<HTMLInputElement>('[data-pass="name"]');
  const reason = find<HTMLInputElement>('[data-pass="reason"]');
  find('[data-hold-override]').addEventListener('click', () => {
    if (!ask(name) || !ask(reason)) return;
    deeds.sign(id, { fitter: name.value.trim(), checker: '', override: reason.value.trim() });
    reason.value = '';
  });
  const why = find<HTMLInputElement>('[data-reopen="reason"]');
  find('[data-hold-open]').addEventListener('click', () => {
    if (now?.signature === undefined || !ask(why)) return;
    deeds.open(id, why.value.trim(), now.signature);
    why.value = '';
    reopen.open = false;
  });

  return (job, line) => {
    const each = line.holds.get(id);
    if (each === undefined) return;
    const before = now?.closed;
    now = each;
    for (const row of hold.querySelectorAll<HTMLElement>('[data-check]')) {
      const key = `${id}.${row.dataset['check']}`;
      const box = row.querySelector<HTMLInputElement>('input.box');
      if (box) box.checked = standing(job.checks, key) === true;
      const field = row.querySelector<HTMLInputElement>('[data-reading]');
      const reading = standing(job.readings, key);
      if (field && field !== document.activeElement && field.getAttribute('aria-invalid') === null)
        field.value = reading?.typed ?? '';
      row.querySelector('span.box')?.classList.toggle('on', reading !== undefined);
    }
    if (!prefilled && fitter.value === '') {
      fitter.value = deeds.who();
      prefilled = true;
    }
    const { signature, closed } = each;
    const word = closed ? 'closed' : each.moved.length > 0 ? 'moved' : '';
    if (word === '') hold.removeAttribute('data-is');
    else hold.dataset['is'] = word;
    const stop = hold.closest<HTMLElement>('.stn')!;
    // a hold point inside a station stands in a stop of its own
    stop.classList.toggle('open', !closed);
    const passed = closed && signature?.override !== undefined;
    hold.toggleAttribute('data-passed', passed);
    find('[data-hold-word]').textContent = passed ? ' passed' : ' closed';
    reopen.hidden = !closed;
    state.textContent = closed
      ? closedWords(job, each, hold)
      : line.openHold?.id === id
        ? 'The line is open here. What follows stays locked until it is signed.'
        : 'Work stops here until every check is done and signed.';
    moved.hidden = each.moved.length === 0;
    moved.querySelector('span')!.textContent =
      each.moved.length === 0 ? '' : `${deeds.movedWords(each.moved)}. Check again and sign again.`;
    const struck = Object.values(job.reopened)
      .flatMap(({ v, at }) => (v !== null && v.hold === id ? [{ ...v, at }] : []))
      .sort((a, b) => a.at - b.at);
    old.hidden = struck.length === 0;
    old.replaceChildren(
      ...struck.map(({ was, reason: given, at }) => {
        const item = document.createElement('li');
        const gone = document.createElement('s');
        gone.className = 'reopened';
        gone.textContent = signedBy(was);
        item.append(gone, ` Opened again ${clock(new Date(at).toISOString())}: ${given}`);
        return item;
      }),
    );
    say();
    // who closed it by key finds the next stop, not a vanished button
    if (before === false && closed && hold.contains(document.activeElement)) reopen.querySelector('summary')?.focus();
  };
}

const signedBy = ({ fitter, checker, override, on }: Signature): string =>
  override === undefined
    ? `${fitter} and ${checker} · ${clock(on)}`
    : `${fitter} · ${clock(on)} · passed without its checks: ${override}`;

function closedWords(job: Job, state: HoldState, hold: HTMLElement): string {
  const readings = [...hold.querySelectorAll<HTMLInputElement>('[data-reading]')].flatMap(({ dataset }) => {
    const reading = standing(job.readings, `${state.id}.${dataset['reading']}`);
    if (reading === undefined) return [];
    return [/[a-zΩ°µ]/i.test(reading.typed) ? reading.typed : `${reading.typed} ${dataset['unit']}`];
  });
  return [state.signature === undefined ? '' : signedBy(state.signature), ...readings].filter(Boolean).join(' · ');
}
