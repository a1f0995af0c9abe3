/// <reference lib="webworker" />
import { cleanupOutdatedCaches, matchPrecache, precacheAndRoute } from 'workbox-precaching';
import { registerRoute } from 'workbox-routing';
import { ASSETS_CACHE, NEXT_CACHE, PAGES_CACHE, SWAP } from './names.ts';

/**
 * The site without a signal. Frame, search, calculators and jobs are on the device from the first visit; a page is there
 * once it was visited or kept. A version is taken whole: until a reader lets the next one in, every page on the device
 * stays as it is, so that nothing changes under a job in hand.
 */
declare const self: ServiceWorkerGlobalScope;
declare const LOOMLEAF_BASE: string;
declare const LOOMLEAF_FILES: { url: string; revision: string | null }[];

precacheAndRoute(LOOMLEAF_FILES, {
  ignoreURLParametersMatching: [/./], // ?job= and ?q= are read by the page itself
  cleanURLs: false,
});
cleanupOutdatedCaches();

const inside = (url: URL): boolean => url.origin === self.location.origin && url.pathname.startsWith(LOOMLEAF_BASE);
const plain = (url: URL): string => url.origin + url.pathname;

registerRoute(
  ({ request, url }) => request.mode === 'navigate' && inside(url),
  async ({ url }) => {
    const pages = await caches.open(PAGES_CACHE);
    const kept = await pages.match(plain(url));
    if (kept) return kept;
    try {
      const answer = await fetch(plain(url), { redirect: 'follow' });
      // an address without its last slash is answered by another address: the browser must go there itself
      if (answer.redirected) return Response.redirect(answer.url + url.search);
      if (answer.ok) await pages.put(plain(url), answer.clone()).catch(() => undefined);
      return answer;
    } catch {
      return (await matchPrecache(`${LOOMLEAF_BASE}offline/`)) ?? Response.error();
    }
  },
);

// Files of a version that a page from the network already belongs to, and pictures.
registerRoute(
  ({ request, url }) =>
    request.method === 'GET' && inside(url) && /^(_astro|images)\//.test(url.pathname.slice(LOOMLEAF_BASE.length)),
  async ({ request, url }) => {
    const kept = await caches.match(plain(url));
    if (kept) return kept;
    const answer = await fetch(request);
    const cache = url.pathname.includes('/_astro/') ? ASSETS_CACHE : PAGES_CACHE;
    if (answer.ok) await (await caches.open(cache)).put(plain(url), answer.clone()).catch(() => undefined);
    return answer;
  },
);

self.addEventListener('install', (event) => event.waitUntil(fetchKept()));
self.addEventListener('activate', (event) => event.waitUntil(takeOver()));
self.addEventListener('message', (event) => {
  if (event.data === SWAP) void self.skipWaiting();
});

/** Every page on the device anew, for when this version is let in. Without them the version is not installed. */
async function fetchKept(): Promise<void> {
  await caches.delete(NEXT_CACHE);
  if (self.registration.active === null) return;
  const next = await caches.open(NEXT_CACHE);
  for (const { url } of await (await caches.open(PAGES_CACHE)).keys())
    await next.put(url, await fetch(url, { cache: 'no-cache' }));
}

async function takeOver(): Promise<void> {
  const next = await caches.open(NEXT_CACHE);
  const pages = await caches.open(PAGES_CACHE);
  for (const request of await next.keys()) {
    const page = await next.match(request);
    // what the new version no longer has goes
    if (page?.ok) await pages.put(request, page);
    else await pages.delete(request);
  }
  await caches.delete(NEXT_CACHE);
  await caches.delete(ASSETS_CACHE);
  await self.clients.claim();
}
