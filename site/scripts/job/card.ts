import { readKept, UNITS_KEY, valuesKey } from '../../../components/runtime/keep.ts';
import { live } from '../../../components/runtime/live.ts';

/**
 * A card: blank with the guide's own values as built, with the values of a link or of the guide's page where there are
 * any, or as it stands in a job.
 */
const card = document.querySelector<HTMLElement>('[data-card]')!;
const path = card.dataset['guidePath']!;
const id = new URLSearchParams(location.search).get('job');
document.querySelector('[data-print]')?.addEventListener('click', () => print());

const kept = readKept(valuesKey(path));
const linked = (): boolean => location.hash.includes('=');
/** A card with the guide's own values is complete as built: nothing is worked out again, and little is loaded. */
const asBuilt = id === null && !linked() && kept === null && readKept(UNITS_KEY) === null;

const page = asBuilt ? null : await live();
if (page !== null) {
  if (id !== null) {
    const { fillCard } = await import('./card-job.ts');
    await fillCard(card, page, id);
  } else if (!linked() && kept !== null) page.apply(kept);
}
const { drawQr } = await import('./qr.ts');
drawQr(card, page, path);
if (asBuilt)
  addEventListener('hashchange', () => {
    if (linked()) location.reload();
  });
document.documentElement.dataset['card'] = 'ready';
