import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join, resolve } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';

/**
 * One browser and one static server over a built demonstration, for the tests of a file. The folder is `LOOMLEAF_DIST`,
 * else `dist`; the test run builds it first.
 */
export const DIST = resolve(process.env['LOOMLEAF_DIST'] ?? 'dist');

export const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};

/** Where browsers are found, in the order they are tried; `CHROMIUM` names another. */
const BROWSERS = ['chromium-headless-shell', 'chromium', 'google-chrome-stable', 'google-chrome', 'chromium-browser'];

export function browserPath(): string {
  const named = process.env['CHROMIUM'];
  if (named) return named;
  for (const name of BROWSERS)
    for (const dir of (process.env['PATH'] ?? '').split(':').concat('/usr/bin'))
      if (dir !== '' && existsSync(join(dir, name))) return join(dir, name);
  throw new Error(
    `No Chromium or Chrome found. Install one, such as the package chromium-headless-shell, or set CHROMIUM.`,
  );
}

function serve(dir: string): Promise<Server> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://site').pathname);
    let file = join(dir, path);
    if (path.endsWith('/')) file = join(file, 'index.html');
    if (!file.startsWith(dir) || !existsSync(file) || statSync(file).isDirectory()) {
      response.writeHead(404, { 'content-type': 'text/html; charset=utf-8' }).end(readFileSync(join(dir, '404.html')));
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' });
    response.end(readFileSync(file));
  });
  return new Promise((done) => server.listen(0, '127.0.0.1', () => done(server)));
}

export interface Visit {
  page: Page;
  context: BrowserContext;
  /** Console errors and warnings, script errors and answers of 400 and more. A test that expects one takes it out. */
  faults: string[];
  /** Paths of all that was loaded. */
  requests: string[];
  address: (path: string) => string;
}
export interface VisitOptions {
  width?: number;
  height?: number;
  bay?: 'day' | 'night';
  /** Without scripts when false. */
  script?: boolean;
  touch?: boolean;
  reducedMotion?: boolean;
  forcedColours?: boolean;
  /** Lets the page's worker keep the site on the device; otherwise each visit is a first one. */
  offline?: boolean;
}

/** Starts browser and server for a file's tests and stops them after. Call once, at the top. */
export function demonstration(): {
  visit: (path: string, options?: VisitOptions) => Promise<Visit>;
  address: (path: string) => string;
} {
  let browser: Browser;
  let server: Server;
  let origin = '';
  const visits: Visit[] = [];

  beforeAll(async () => {
    if (!existsSync(join(DIST, 'index.html'))) throw new Error(`No built site in ${DIST}: run npm run build first`);
    server = await serve(DIST);
    const at = server.address();
    origin = `http://127.0.0.1:${typeof at === 'object' && at ? at.port : 0}`;
    browser = await chromium.launch({ executablePath: browserPath(), args: ['--no-sandbox'] });
  });
  afterAll(async () => {
    await browser?.close();
    server?.close();
    const faults = visits.flatMap((visit) => visit.faults);
    expect(faults, 'console, script and network faults of all visits').toEqual([]);
  });

  return {
    address: (path) => origin + path,
    async visit(path, options = {}) {
      const { width = 1280, height = width < 700 ? 800 : 900, bay = 'day', script = true } = options;
      const context = await browser.newContext({
        viewport: { width, height },
        colorScheme: bay === 'night' ? 'dark' : 'light',
        javaScriptEnabled: script,
        hasTouch: options.touch ?? false,
        reducedMotion: options.reducedMotion ? 'reduce' : 'no-preference',
        forcedColors: options.forcedColours ? 'active' : 'none',
        serviceWorkers: options.offline ? 'allow' : 'block',
      });
      const page = await context.newPage();
      const visit: Visit = { page, context, faults: [], requests: [], address: (at) => origin + at };
      visits.push(visit);
      page.on('console', (message) => {
        // the browser's driver says so itself where workers are kept out
        if (message.text().startsWith('Service Worker registration blocked')) return;
        if (['error', 'warning'].includes(message.type())) visit.faults.push(`${path}: ${message.text()}`);
      });
      page.on('pageerror', (error) => visit.faults.push(`${path}: ${error.message}`));
      page.on('response', (response) => {
        visit.requests.push(new URL(response.url()).pathname);
        if (response.status() >= 400) visit.faults.push(`${path}: ${response.status()} ${response.url()}`);
      });
      await page.goto(origin + path);
      return visit;
    },
  };
}

/** Paths of built pages under a folder of the site: `pagesOf('guides')`. */
export function pagesOf(folder: string): string[] {
  const dir = join(DIST, folder);
  if (!existsSync(dir)) return [];
  return readdirSync(dir, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join(dir, entry.name, 'index.html')))
    .map(({ name }) => `/${folder}/${name}/`)
    .sort();
}

/** One page of each type that the built site has. */
export function pageTypes(): { type: string; path: string }[] {
  const one = (type: string, folder: string): { type: string; path: string }[] =>
    pagesOf(folder)
      .slice(0, 1)
      .map((path) => ({ type, path }));
  const fixed = ['guides', 'calculators', 'surfaces', 'lessons', 'search', 'terms', 'sources', 'jobs', 'gallery']
    .filter((folder) => existsSync(join(DIST, folder, 'index.html')))
    .map((folder) => ({ type: folder, path: `/${folder}/` }));
  return [
    { type: 'home', path: '/' },
    ...fixed,
    ...one('vehicle', 'vehicles'),
    { type: 'guide', path: '/guides/cargo-work-light/' },
    { type: 'job card', path: '/guides/cargo-work-light/card/' },
    ...one('calculator', 'calculators'),
    ...one('circuit', 'circuits'),
    ...one('surface', 'surfaces'),
    ...one('lesson', 'lessons'),
    { type: 'not found', path: '/404.html' },
  ];
}

/** Waits until a page that shows its groups one after the other shows them all. */
export const allShown = (page: Page): Promise<unknown> =>
  page.waitForFunction(() =>
    [...document.querySelectorAll('.later')].every((each) => getComputedStyle(each).display !== 'none'),
  );

/** Sums up what moves without a hand in pages opened from here on, as `window.shift`. */
export const watchShift = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const seen = window as { shift?: number };
    seen.shift = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & { value: number; hadRecentInput: boolean })[])
        if (!entry.hadRecentInput) seen.shift! += entry.value;
    }).observe({ type: 'layout-shift', buffered: true });
  });

/** All jobs on the device, as text that two looks can be compared by. */
export const jobsOnDevice = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((done) => {
        const open = indexedDB.open('loomleaf-jobs');
        open.onsuccess = () => {
          const all = open.result.transaction('jobs').objectStore('jobs').getAll();
          all.onsuccess = () => {
            open.result.close();
            done(JSON.stringify(all.result));
          };
        };
      }),
  );
