import type { Change } from '../../../components/job/drift.ts';
import type { LineState } from '../../../components/job/gate.ts';
import { type Growing, headOf, type Job, standing } from '../../../components/job/model.ts';
import { toast } from './toast.ts';
import { clock } from './words.ts';

export interface PanelDeeds {
  write(part: Growing, key: string, v: unknown): void;
  exportJob(): void;
  link(): string;
  numberOf(step: string): number;
  putAside(): void;
  takeOver(): void;
  /** Address of the job's card. */
  card: string;
}

/** The sheet of the job in hand, under the guide's title. */
export function joinPanel(deeds: PanelDeeds): {
  render: (job: Job, state: LineState, changes: readonly Change[]) => void;
  trouble: (message: string) => void;
} {
  const panel = document.querySelector<HTMLElement>('#job-panel')!;
  const find = <E extends HTMLElement>(what: string): E => panel.querySelector<E>(what)!;
  const out = (name: string, text: string): void => {
    const element = find(`[data-job="${name}"]`);
    if (element.textContent !== text) element.textContent = text;
  };
  panel.hidden = false;
  const go = document.querySelector<HTMLAnchorElement>('[data-go]');
  const start = document.querySelector<HTMLButtonElement>('[data-job-start]');
  if (start) start.textContent = 'Start another job';
  find<HTMLAnchorElement>('[data-job-card]').href = deeds.card;

  const notes = find<HTMLTextAreaElement>('[data-job-notes]');
  notes.addEventListener('change', () => deeds.write('notes', 'job', notes.value.trim() || null));
  find('[data-job-aside]').addEventListener('click', () => deeds.putAside());
  find('[data-job-export]').addEventListener('click', () => deeds.exportJob());
  find('[data-job-share]').addEventListener('click', async () => {
    const link = deeds.link();
    const field = find<HTMLInputElement>('[data-job-link]');
    field.value = link;
    find('[data-job-linked]').hidden = false;
    try {
      await navigator.clipboard.writeText(link);
      toast('Link copied. It carries the job values and nothing else.');
    } catch {
      // the browser keeps its clipboard to itself: the field is there to copy from
      field.focus();
      field.select();
    }
  });
  const finish = find<HTMLButtonElement>('[data-job-finish]');
  finish.addEventListener('click', () => {
    if (finish.getAttribute('aria-disabled') === 'true') return toast(finish.dataset['why'] ?? '');
    deeds.write('closed', 'job', finish.dataset['closed'] === 'true' ? null : true);
  });
  find('[data-job-takeover]').addEventListener('click', () => deeds.takeOver());

  return {
    trouble(message) {
      const line = find('[data-job-trouble]');
      line.hidden = false;
      line.querySelector('span')!.textContent = message;
      toast(message, { label: 'Export the job', run: () => deeds.exportJob() });
    },
    render(job, state, changes) {
      const head = headOf(job);
      out('number', head.number);
      out('vehicle', head.vehicle);
      out('who', `${head.who}, begun ${clock(job.startedOn)}`);
      const whole = state.next === undefined && state.openHold === undefined;
      const done = `${state.done.size} of ${state.stepsTotal} steps`;
      out('progress', whole ? `All ${state.stepsTotal} steps done, every hold point closed` : done);
      if (document.activeElement !== notes) notes.value = standing(job.notes, 'job') ?? '';
      if (go) {
        const { openHold, next } = state;
        const hold = next === undefined ? openHold : undefined;
        go.textContent =
          next !== undefined
            ? `Carry on at step ${deeds.numberOf(next)}`
            : hold !== undefined
              ? `Carry on at ${holdName(hold.id)}`
              : 'All done: the job card';
        go.href = next !== undefined ? `#step-${next}` : hold !== undefined ? `#${hold.id}` : deeds.card;
      }
      const closed = standing(job.closed, 'job') === true;
      finish.dataset['closed'] = String(closed);
      finish.textContent = closed ? 'Bring back into the bays' : 'Finish the job';
      finish.dataset['why'] = 'Steps or hold points are still open.';
      finish.setAttribute('aria-disabled', String(!whole && !closed));

      find('[data-job-drift]').hidden = changes.length === 0;
      find('[data-job-changes]').replaceChildren(
        ...changes.map(({ kind, what, was, now }) => {
          const item = document.createElement('li');
          item.textContent =
            kind === 'finding'
              ? `${now === 'new' ? 'New finding' : 'Finding gone'}: ${what}`
              : kind === 'step' || kind === 'check'
                ? `${kind === 'step' ? `Step "${what}"` : what}: ${now}`
                : `${what}: was ${was}, now ${now}`;
          return item;
        }),
      );
    },
  };
}

const holdName = (id: string): string =>
  document
    .querySelector(`[data-hold="${CSS.escape(id)}"]`)
    ?.getAttribute('data-point')
    ?.replace('H', 'hold ') ?? id;
