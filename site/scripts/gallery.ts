import { lineState } from '../../components/job/gate.ts';
import { enter, type Growing, type Job, type Signature, startJob, valuesOf } from '../../components/job/model.ts';
import { DEFAULT_UNITS } from '../../components/unit-choice.ts';
import { joinHolds } from './job/holds.ts';
import { lineOf } from './job/line.ts';

type Put = (part: Growing, key: string, v: unknown) => void;

const signature = (runM: number, override?: string): Signature => ({
  fitter: 'R. Fitter',
  checker: override === undefined ? 'S. Checker' : '',
  ...(override !== undefined && { override }),
  values: { runM },
  on: '2026-11-25T09:14:00',
});
const done = (put: Put, hold: string): void => {
  put('checks', `${hold}.agreed`, true);
  put('readings', `${hold}.standby`, { typed: '12', value: 12 });
};
/** What the job of each case holds when the page opens. */
const BEGINNINGS: Readonly<Record<string, (put: Put, hold: string) => void>> = {
  'hold-begun': (put, hold) => put('checks', `${hold}.agreed`, true),
  'hold-closed'(put, hold) {
    done(put, hold);
    put('signatures', hold, signature(4));
  },
  'hold-moved'(put, hold) {
    done(put, hold);
    put('signatures', hold, signature(3));
  },
  'hold-passed': (put, hold) => put('signatures', hold, signature(4, 'Customer waits; reading tomorrow')),
  'hold-again'(put, hold) {
    done(put, hold);
    put('reopened', `${hold}.1`, { hold, reason: 'Lamp moved to the other side', was: signature(4) });
  },
};

/**
 * A hold point in a job of its own: it begins in the state its case is named after and can be worked from there, by the
 * code that works it in a guide. The job is kept nowhere.
 */
function begin(root: HTMLElement): void {
  let job: Job = startJob({
    id: 'gallery',
    guide: { id: 'gallery', number: '000', title: 'Gallery' },
    number: '4711',
    vehicle: 'Library bus 3',
    who: 'R. Fitter',
    startedOn: '2026-11-25T08:00:00',
    baseline: {
      issue: 1,
      values: { runM: { label: 'Fuse to relay', default: 3 } },
      figures: {},
      findings: [],
      steps: [],
      line: [],
    },
  });
  const line = lineOf(root);
  let at = Date.parse('2026-11-25T09:14:00');
  const put: Put = (part, key, v) => {
    job = enter(job, part, key, { v, at: ++at, by: 'gallery' } as never);
    holds.render(job, lineState({ line, job, values: valuesOf(job) }));
  };
  const holds = joinHolds(
    {
      check: (key, is) => put('checks', key, is || null),
      read: (key, reading) => put('readings', key, reading),
      sign: (hold, by) => put('signatures', hold, { ...by, values: valuesOf(job), on: new Date().toISOString() }),
      open(hold, reason, was) {
        put('reopened', `${hold}.${at}`, { hold, reason, was });
        put('signatures', hold, null);
      },
      units: () => DEFAULT_UNITS,
      movedWords: (moved) => moved.map(({ was, now }) => `Fuse to relay was ${was} m, now ${now} m`).join('. '),
      who: () => job.who,
    },
    root,
  );
  put('values', 'runM', 4);
  const hold = root.querySelector<HTMLElement>('[data-hold]')!.dataset['hold']!;
  BEGINNINGS[root.dataset['inJob']!]?.(put, hold);
}

for (const root of document.querySelectorAll<HTMLElement>('[data-in-job]')) begin(root);

/** Shows the groups, down to the one that the address names at once, then each in a picture of its own. */
async function showGroups(): Promise<void> {
  const groups = [...document.querySelectorAll<HTMLElement>('.later')];
  const show = (group: HTMLElement) => group.classList.remove('later');
  const named = document.getElementById(location.hash.slice(1));
  const last = groups.findIndex((group) => group.contains(named));
  groups.slice(0, last + 1).forEach(show);
  if (last >= 0) named?.scrollIntoView();
  for (const group of groups.slice(last + 1)) {
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    show(group);
  }
}
await showGroups();
