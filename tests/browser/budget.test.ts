import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, describe, expect, it } from 'vitest';
import { DIST, demonstration, pagesOf, pageTypes, watchShift } from './setup.ts';

const { visit, address } = demonstration();

/** Most that a page may load by itself [bytes], text compressed: page, style and scripts; of it scripts; fonts besides. */
const USUAL = { page: 60_000, script: 15_000, fonts: 70_000 };
/** Pages that do nothing without their script, and load it at once: the search with its index, jobs, a lesson's questions. */
const SCRIPTED: Readonly<Record<string, number>> = { search: 36_000, jobs: 20_000, lesson: 18_000 };
/** Holds every component in every state, for those who build this site. */
const LARGER: Readonly<Record<string, number>> = { gallery: 95_000 };

const LATE_MS = 400;

const packed = (path: string): number => gzipSync(readFileSync(join(DIST, path)), { level: 9 }).length;

describe('every page type on a phone', () => {
  const told: string[] = [];
  afterAll(() => console.log(told.join('\n')));

  it.each(pageTypes())('$type keeps its budget, asks no other host and does not shift', async ({ type, path }) => {
    const { page, context, requests } = await visit('/mark.svg', { width: 390 });
    const hosts = new Set<string>();
    page.on('request', (request) => hosts.add(new URL(request.url()).origin));
    await watchShift(page);
    // the rest of the style comes late, as on a weak signal: the first screen is there before it, and stays where it is
    await page.route('**/*.css', async (route) => {
      await new Promise((done) => setTimeout(done, LATE_MS));
      await route.continue();
    });
    requests.length = 0;
    await page.goto(address(path));
    // pictures far down load when they come near, so the network is not waited for: fonts and scripts are in by then
    await page.waitForLoadState('load');
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    await page.waitForTimeout(300);
    const loaded = [...new Set(requests)];
    const sum = (ending: string): number =>
      loaded.filter((file) => file.endsWith(ending)).reduce((total, file) => total + packed(file), 0);
    const script = sum('.js');
    const whole = packed(path.endsWith('/') ? `${path}index.html` : path) + sum('.css') + script;
    const fonts = loaded
      .filter((file) => file.endsWith('.woff2'))
      .reduce((total, file) => total + readFileSync(join(DIST, file)).length, 0);
    // the first look, then the whole page, so that what comes into view late is seen to keep its place too
    const { shift, paintMs, sheetMs } = await page.evaluate(async () => {
      for (let at = 0; at < document.body.scrollHeight; at += innerHeight) {
        scrollTo(0, at);
        await new Promise((done) => requestAnimationFrame(done));
      }
      await new Promise((done) => setTimeout(done, 100));
      const sheets = performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.css'));
      return {
        shift: (window as { shift?: number }).shift ?? Number.NaN,
        paintMs: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN,
        sheetMs: Math.min(...sheets.map((sheet) => (sheet as PerformanceResourceTiming).responseEnd)),
      };
    });
    told.push(
      `${type.padEnd(14)} ${(whole / 1000).toFixed(1).padStart(6)} kB, of it script ${(script / 1000).toFixed(1).padStart(4)} kB; fonts ${(fonts / 1000).toFixed(1)} kB; shift ${shift.toFixed(3)}`,
    );
    expect([...hosts]).toEqual([new URL(address('/')).origin]);
    expect(script).toBeLessThanOrEqual(SCRIPTED[type] ?? USUAL.script);
    expect(whole).toBeLessThanOrEqual(LARGER[type] ?? USUAL.page);
    expect(fonts).toBeLessThanOrEqual(USUAL.fonts);
    expect(paintMs).toBeLessThan(sheetMs);
    expect(shift).toBe(0);
    await context.close();
  });
});

describe('pages of every kind', () => {
  // all guides, calculators and circuits are opened where their numbers and drawings are looked at; the surfaces are one
  // sheet of facts each, all put through the same steps without a browser: of them every fourth
  const paths = [...['vehicles', 'lessons'].flatMap(pagesOf), ...pagesOf('surfaces').filter((_, n) => n % 4 === 0)];
  const TABS = 3;

  it('open without a console message, a failed script or a missing file', { timeout: 240_000 }, async () => {
    expect(paths.length).toBeGreaterThan(30);
    const left = [...paths];
    const tab = async (): Promise<void> => {
      const { page, context, faults } = await visit('/');
      for (let path = left.shift(); path !== undefined; path = left.shift()) {
        const answer = await page.goto(address(path));
        expect(answer?.status(), path).toBe(200);
        // what a first touch loads belongs to the page
        await page.evaluate(() => window.dispatchEvent(new Event('pointerdown')));
        if ((await page.locator('#page-data').count()) > 0)
          await page.waitForFunction(() => 'live' in document.documentElement.dataset);
        expect(faults, path).toEqual([]);
      }
      await context.close();
    };
    await Promise.all(Array.from({ length: TABS }, tab));
  });
});
