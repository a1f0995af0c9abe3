import { inHand } from '../../../components/job/hint.ts';

/**
 * A guide's way into its job. Everything about jobs is fetched when there is one: when one is in hand on this guide, when
 * the address names one, or when someone starts one.
 */
const article = document.querySelector<HTMLElement>('[data-guide]');
const guide = article?.dataset['guide'];
const form = document.querySelector<HTMLFormElement>('#job-start');
const start = document.querySelector<HTMLButtonElement>('[data-job-start]');

if (guide !== undefined && form !== null && start !== null) {
  const named = new URLSearchParams(location.search).get('job');
  const id = named ?? inHand(guide);
  if (id !== null) void import('./in-hand.ts').then(({ openJob }) => openJob(guide, id));

  start.disabled = false;
  start.addEventListener('click', () => {
    form.hidden = !form.hidden;
    start.setAttribute('aria-expanded', String(!form.hidden));
    if (!form.hidden) form.querySelector('input')?.focus();
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const button = form.querySelector('button');
    if (button) button.disabled = true;
    void import('./in-hand.ts').then(({ beginJob }) => beginJob(guide, new FormData(form)));
  });
}
