/**
 * One step or hold point a screen. The page itself is shown through a filter, so numbers, entries and ticks on the step
 * are the same ones as on the whole page. The screen is kept awake where the browser allows it.
 */
const root = document.documentElement;
const bar = document.querySelector<HTMLElement>('[data-onestep]')!;
const now = bar.querySelector<HTMLElement>('[data-onestep-now]')!;
const stops = [...document.querySelectorAll<HTMLElement>('.steps > li[data-step], .hold[data-hold]')];
const steps = stops.filter((stop) => stop.dataset['step'] !== undefined);

let at = 0;
let opener: HTMLElement | undefined;
let awake: WakeLockSentinel | undefined;

/** Called when the button that opens it is pressed. */
export function oneStep(button: HTMLElement): void {
  if (stops.length === 0) return;
  opener = button;
  const here = stops.findIndex((stop) => stop.matches('[data-is~="next"], .next') || stop.closest('.stn.here'));
  root.dataset['onestep'] = '';
  bar.hidden = false;
  show(Math.max(0, here));
  keepAwake();
}

function show(index: number): void {
  at = Math.min(stops.length - 1, Math.max(0, index));
  for (const [i, stop] of stops.entries()) stop.toggleAttribute('data-focused', i === at);
  const stop = stops[at]!;
  const place = stop.closest('.stn');
  const station = place?.parentElement?.closest('.stn') ?? place;
  for (const each of document.querySelectorAll('.stn')) {
    each.toggleAttribute('data-focused', each === place || each === station);
  }
  const number = steps.indexOf(stop) + 1;
  // the page's counter skips what is hidden
  if (number > 0) stop.style.setProperty('counter-set', `step ${number}`);
  const title = stop.dataset['title'] ?? '';
  now.textContent =
    number > 0 ? `Step ${number} of ${steps.length}` : `Hold ${stop.dataset['point']?.slice(1)}: ${title}`;
  const [back, next] = bar.querySelectorAll<HTMLButtonElement>('[data-onestep-by]');
  back!.disabled = at === 0;
  next!.disabled = at === stops.length - 1;
  window.scrollTo(0, 0);
}

function close(): void {
  const stop = stops[at]!;
  delete root.dataset['onestep'];
  bar.hidden = true;
  for (const each of document.querySelectorAll('[data-focused]')) each.removeAttribute('data-focused');
  for (const each of steps) each.style.removeProperty('counter-set');
  void awake?.release();
  awake = undefined;
  stop.scrollIntoView({ block: 'center' });
  opener?.focus({ preventScroll: true });
}

async function keepAwake(): Promise<void> {
  if (!('onestep' in root.dataset) || document.visibilityState !== 'visible') return;
  try {
    awake = await navigator.wakeLock?.request('screen');
  } catch {
    // battery saver, or not allowed here: the screen goes dark as it always does
  }
}

bar.addEventListener('click', (event) => {
  const button = event.target instanceof Element ? event.target.closest<HTMLElement>('button') : null;
  if (button?.dataset['onestepBy'] !== undefined) show(at + Number(button.dataset['onestepBy']));
  else if (button?.hasAttribute('data-onestep-close')) close();
});
document.addEventListener('keydown', (event) => {
  if (
    !('onestep' in root.dataset) ||
    (event.target instanceof Element && event.target.matches('input, select, textarea'))
  )
    return;
  if (event.key === 'ArrowRight' || event.key === 'PageDown') show(at + 1);
  else if (event.key === 'ArrowLeft' || event.key === 'PageUp') show(at - 1);
  else if (event.key === 'Escape') close();
  else return;
  event.preventDefault();
});
document.addEventListener('visibilitychange', keepAwake);
