import { SWAP } from '../offline/names.ts';

/**
 * The site on the device. Nothing here waits for it: a page works without. A new version says that it is there, and is
 * let in when someone presses, never by itself while a page is open.
 */
const base = import.meta.env.BASE_URL.replace(/\/?$/, '/');

async function register(): Promise<void> {
  const registration = await navigator.serviceWorker.register(`${base}sw.js`, { scope: base });
  // a browser that forbids workers may answer with nothing
  if (!registration) return;
  const offer = (worker: ServiceWorker | null): void => {
    if (worker !== null && navigator.serviceWorker.controller !== null) void announce(worker);
  };
  offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const worker = registration.installing;
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed') offer(worker);
    });
  });
  await navigator.serviceWorker.ready;
  const { keepThisPage } = await import('./keep-pages.ts');
  await keepThisPage(base);
}

async function announce(worker: ServiceWorker): Promise<void> {
  const { toast } = await import('./job/toast.ts');
  const inHand = document.documentElement.dataset['job'] !== undefined;
  toast(
    inHand
      ? 'A newer version of these pages is here. Your job keeps this one until you load it.'
      : 'A newer version of these pages is here.',
    {
      label: 'Load it now',
      run: () => {
        navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
        worker.postMessage(SWAP);
      },
    },
  );
}

function showOffline(): void {
  const flag = document.querySelector<HTMLElement>('[data-offline]');
  if (flag === null) return;
  flag.hidden = navigator.onLine;
  if (!navigator.onLine) void import('./keep-pages.ts').then(({ ageOfThisPage }) => ageOfThisPage(flag));
}

if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  showOffline();
  addEventListener('online', showOffline);
  addEventListener('offline', showOffline);
  // first the page, then the device
  addEventListener('load', () => {
    setTimeout(() => register().catch(() => undefined), 1500);
  });
}
const keep = document.querySelector<HTMLElement>('[data-keep-pages]');
if (keep !== null && 'caches' in window && 'serviceWorker' in navigator)
  void import('./keep-pages.ts').then(({ joinKeep }) => joinKeep(keep, base));
