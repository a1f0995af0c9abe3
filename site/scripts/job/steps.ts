import type { LineState } from '../../../components/job/gate.ts';

/** Steps with a place to tick, and the run that fills with ink behind them. */
export interface Steps {
  render(state: LineState): void;
  numberOf(id: string): number;
}

/**
 * @param o.tick told which step is ticked or unticked
 * @param o.refuse told why a step cannot be ticked yet
 */
export function joinSteps(o: { tick: (id: string, done: boolean) => void; refuse: (why: string) => void }): Steps {
  const rows = [...document.querySelectorAll<HTMLElement>('[data-step]')];
  const numbers = new Map(rows.map((row, index) => [row.dataset['step']!, index + 1]));
  let state: LineState | undefined;
  const boxes = new Map<string, HTMLInputElement>();
  for (const row of rows) {
    const id = row.dataset['step']!;
    const tick = document.createElement('label');
    tick.className = 'tick noprint';
    const box = document.createElement('input');
    box.type = 'checkbox';
    box.setAttribute('aria-label', `Step ${numbers.get(id)} done`);
    tick.append(box);
    row.prepend(tick);
    boxes.set(id, box);
    box.addEventListener('change', () => {
      const why = state?.locked.get(id);
      if (box.checked && why !== undefined) {
        box.checked = false;
        o.refuse(`${why}.`);
      } else o.tick(id, box.checked);
    });
  }

  return {
    numberOf: (id) => numbers.get(id) ?? 0,
    render(now) {
      state = now;
      for (const [id, box] of boxes) {
        const done = now.done.has(id);
        const locked = !done && now.locked.has(id);
        box.checked = done;
        if (locked) box.setAttribute('aria-disabled', 'true');
        else box.removeAttribute('aria-disabled');
        const is = done ? 'done' : id === now.next ? 'here' : locked ? 'locked' : '';
        const row = box.closest<HTMLElement>('[data-step]')!;
        if (is === '') row.removeAttribute('data-is');
        else row.dataset['is'] = is;
      }
      markRun(now);
    },
  };
}

/** Ink behind what is done, a block at what is next: the page's line and the run bar say the same. */
function markRun(now: LineState): void {
  const stops = [...document.querySelectorAll<HTMLElement>('.run .stn:not(.lead, .end)')];
  let here = '';
  const is = new Map<string, string>();
  for (const stop of stops) {
    const steps = [...stop.querySelectorAll<HTMLElement>('[data-step]')].map(({ dataset }) => dataset['step']!);
    const holds = [...stop.querySelectorAll<HTMLElement>('[data-hold]')].map(({ dataset }) => dataset['hold']!);
    const done = steps.every((id) => now.done.has(id)) && holds.every((id) => now.holds.get(id)?.closed);
    const has = steps.length + holds.length > 0;
    const open = now.next === undefined ? now.openHold?.id : undefined;
    const atHere =
      here === '' && ((now.next !== undefined && steps.includes(now.next)) || (open && holds.includes(open)));
    if (atHere) here = stop.id;
    // a stop without steps is passed when what follows it is reached
    is.set(stop.id, atHere ? 'here' : (has ? done : here === '') ? 'done' : '');
  }
  for (const stop of stops) {
    const word = is.get(stop.id)!;
    if (word === '') stop.removeAttribute('data-is');
    else stop.dataset['is'] = word;
  }
  // the run bar has fewer stops: the last one at or before the place stands for it
  let shown: HTMLElement | undefined;
  let passed = false;
  const bar = [...document.querySelectorAll<HTMLElement>('.runbar [data-stop]')];
  const inBar = new Map(bar.map((item) => [item.dataset['stop']!, item]));
  for (const stop of stops) {
    const item = inBar.get(stop.id);
    if (item !== undefined && !passed) shown = item;
    if (stop.id === here) passed = true;
    if (item === undefined) continue;
    const word = is.get(stop.id)!;
    if (word === 'done') item.dataset['is'] = 'done';
    else item.removeAttribute('data-is');
  }
  for (const link of document.querySelectorAll('.runbar [aria-current]')) link.removeAttribute('aria-current');
  if (here !== '' && shown !== undefined) {
    shown.dataset['is'] = 'here';
    shown.querySelector('a')?.setAttribute('aria-current', 'step');
  }
}
