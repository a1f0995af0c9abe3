import { readKept, valuesKey } from '../../../components/runtime/keep.ts';
import { live } from '../../../components/runtime/live.ts';

/**
 * A card: blank with the guide's own values as built, with the values of a link or of the guide's page where there are
 * any, or as it stands in a job.
 */
const card = document.querySelector<HTMLElement>('[data-card]')!;
const path = card.dataset['guidePath']!;
const id = new URLSearchParams(location.search).get('job');
document.querySelector('[data-print]')?.addEventListener('click', () => print());

const page = await live();
if (page !== null) {
  if (id !== null) {
    const { fillCard } = await import('./card-job.ts');
    await fillCard(card, page, id);
  } else if (!location.hash.includes('=')) {
    const kept = readKept(valuesKey(path));
    if (kept !== null) page.apply(kept);
  }
  const { drawQr } = await import('./qr.ts');
  drawQr(card, page, path);
}
document.documentElement.dataset['card'] = 'ready';
