import { type OfflineList, PAGES_CACHE } from '../offline/names.ts';

const here = (): string => location.origin + location.pathname;

/** The page that is open, its card and its pictures: it was loaded before the worker could see it. */
export async function keepThisPage(base: string): Promise<void> {
  const pages = await caches.open(PAGES_CACHE);
  const list = await offlineList(base);
  const path = location.pathname.slice(base.length);
  const page = list?.pages[path];
  if (!list || page === undefined) return;
  const wanted = [path, ...(list.pages[`${path}card/`] ? [`${path}card/`] : []), ...page.images];
  for (const each of wanted) {
    const url = location.origin + base + each;
    if (!(await pages.match(url))) await pages.add(new Request(url, { cache: 'no-cache' })).catch(() => undefined);
  }
}

async function offlineList(base: string): Promise<OfflineList | undefined> {
  try {
    const answer =
      (await caches.match(`${base}offline.json`, { ignoreSearch: true })) ?? (await fetch(`${base}offline.json`));
    return answer.ok ? ((await answer.json()) as OfflineList) : undefined;
  } catch {
    return undefined;
  }
}

/** "Offline copy, 2 days old": by the date that the copy was served with. */
export async function ageOfThisPage(flag: HTMLElement): Promise<void> {
  const copy = await caches.match(here(), { ignoreSearch: true });
  const served = Date.parse(copy?.headers.get('date') ?? '');
  const days = Math.floor((Date.now() - served) / 86_400_000);
  const age = Number.isNaN(days) ? '' : days < 1 ? ', from today' : `, ${days} ${days === 1 ? 'day' : 'days'} old`;
  flag.querySelector('span')!.textContent = `Offline copy${age}`;
}

const mb = (bytes: number): string => `${(bytes / 1_000_000).toFixed(1)} MB`;

/** "Keep this vehicle type on this device", with what it weighs and how far it is. */
export async function joinKeep(box: HTMLElement, base: string): Promise<void> {
  const button = box.querySelector<HTMLButtonElement>('button')!;
  const progress = box.querySelector<HTMLProgressElement>('progress')!;
  const say = (text: string): void => {
    box.querySelector('[data-keep-says]')!.textContent = text;
  };
  const list = await offlineList(base);
  if (!list) return;
  const paths = (JSON.parse(box.dataset['keepPages'] ?? '[]') as string[]).filter((path) => list.pages[path]);
  const images = [...new Set(paths.flatMap((path) => list.pages[path]!.images))];
  const weight = (each: string): number => list.pages[each]?.bytes ?? list.images[each] ?? 0;
  const all = [...paths, ...images];
  const total = all.reduce((sum, each) => sum + weight(each), 0);
  const url = (each: string): string => location.origin + base + each;
  const missing = async (): Promise<string[]> => {
    const pages = await caches.open(PAGES_CACHE);
    const gone: string[] = [];
    for (const each of all) if (!(await pages.match(url(each)))) gone.push(each);
    return gone;
  };
  const show = async (): Promise<void> => {
    const left = await missing();
    button.hidden = left.length === 0;
    say(
      left.length === 0
        ? `On this device: ${paths.length} pages, ${mb(total)}.`
        : `${paths.length} pages, ${mb(total)}${left.length < all.length ? `; ${mb(left.reduce((s, e) => s + weight(e), 0))} to go` : ''}.`,
    );
  };
  await show();
  button.disabled = false;
  button.addEventListener('click', async () => {
    button.disabled = true;
    progress.hidden = false;
    const left = await missing();
    progress.max = Math.max(
      1,
      left.reduce((sum, each) => sum + weight(each), 0),
    );
    progress.value = 0;
    const pages = await caches.open(PAGES_CACHE);
    try {
      for (const each of left) {
        await pages.add(new Request(url(each), { cache: 'no-cache' }));
        progress.value += weight(each);
        say(`${mb(progress.value)} of ${mb(progress.max)}`);
      }
      // asks the browser not to clear it when room runs short; it may say no
      await navigator.storage?.persist?.();
      await show();
    } catch (fault) {
      say(
        (fault as Error).name === 'QuotaExceededError'
          ? 'This device has no room for it. What came so far is kept.'
          : 'Broken off: no signal. What came so far is kept; press again for the rest.',
      );
    }
    progress.hidden = true;
    button.disabled = false;
  });
}
