import { existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { DIST, demonstration, TYPES } from './setup.ts';

const { visit, address } = demonstration();
const GUIDE = '/guides/cargo-work-light/';

/** Waits until the worker holds the page and the address is on the device. */
async function onDevice(page: Page, path: string): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, { timeout: 60_000 });
  await page.waitForFunction(
    (url) => caches.match(url, { ignoreSearch: true }).then((found) => found !== undefined),
    path,
    { timeout: 60_000 },
  );
}
async function cut(context: BrowserContext): Promise<void> {
  await context.setOffline(true);
}

describe('without a signal', { timeout: 180_000 }, () => {
  it('opens what was visited, the frame, search and calculators; a job goes on; the rest says so', async () => {
    const visited = await visit(GUIDE, { offline: true });
    const { page, context } = visited;
    await onDevice(page, GUIDE);
    await onDevice(page, `${GUIDE}card/`);
    await page.click('[data-job-start]');
    await page.fill('#job-start [name=number]', '2611-18');
    await page.fill('#job-start [name=vehicle]', 'Library 3');
    await page.fill('#job-start [name=who]', 'Wenna');
    await page.click('#job-start button');
    await page.waitForFunction(() => document.documentElement.dataset['job'] !== undefined);
    await cut(context);
    await page.reload();
    await page.waitForFunction(() => document.documentElement.dataset['job'] !== undefined);
    await page.fill('#job-rearRunM-in', '5.3');
    await page.press('#job-rearRunM-in', 'Enter');
    await page.waitForFunction(() => document.querySelector('#battery table.cuts')?.textContent?.includes('5.57'));
    await page.waitForTimeout(500);
    await page.reload();
    await page.waitForFunction(() => document.querySelector('#battery table.cuts')?.textContent?.includes('5.57'));
    expect(await page.locator('[data-offline]').textContent()).toContain('Offline copy');
    await page.goto(address(`${GUIDE}card/`));
    await page.waitForFunction(() => document.documentElement.dataset['card'] === 'ready');
    for (const [path, title] of [
      ['/', 'Point at the vehicle.'],
      ['/calculators/fuse-size/', /./],
      ['/jobs/', 'Job cards'],
      ['/guides/roof-beacon/', 'Not on this device'],
    ] as const) {
      await page.goto(address(path));
      expect(await page.locator('h1').first().textContent()).toMatch(title);
    }
    await page.goto(address('/search/?q=beacon'));
    await page.waitForFunction(
      () => document.body.textContent?.includes('Roof beacon') || document.body.textContent?.includes('beacon'),
    );
    await context.setOffline(false);
    await context.close();
    visited.faults.length = 0; // a cut line is what the browser reports here
  });

  it('keeps a vehicle type with its guides, says its size, and opens them with the line cut', async () => {
    const visited = await visit('/vehicles/panel-van/', { offline: true });
    const { page, context } = visited;
    await onDevice(page, '/offline.json');
    await page.reload();
    const keep = page.locator('[data-keep-pages]');
    await keep.locator('button:enabled').waitFor();
    expect(await keep.locator('[data-keep-says]').textContent()).toMatch(/^\d+ pages, [\d.]+ MB/);
    await keep.locator('button').click();
    await page.waitForFunction(
      () => /^On this device: \d+ pages/.test(document.querySelector('[data-keep-says]')?.textContent ?? ''),
      undefined,
      { timeout: 90_000 },
    );
    await cut(context);
    const first = await page.locator('#guides a[href*="/guides/"]').first().getAttribute('href');
    await page.goto(address(first!));
    expect(await page.locator('h1').textContent()).not.toBe('Not on this device');
    expect(await page.locator('[data-step]').count()).toBeGreaterThan(5);
    await context.setOffline(false);
    await context.close();
    visited.faults.length = 0;
  });

  it('announces a new version, keeps the old one under a job in hand, and lets the new one in when told', async () => {
    let issue = 1;
    const server = createServer((request, response) => {
      const path = decodeURIComponent(new URL(request.url ?? '/', 'http://site').pathname);
      const file = join(DIST, path, path.endsWith('/') ? 'index.html' : '');
      if (!existsSync(file)) return void response.writeHead(404).end();
      const type = TYPES[extname(file)] ?? 'application/octet-stream';
      const text = extname(file) === '.html' || path === '/sw.js';
      let body: Buffer | string = readFileSync(file);
      if (text) body = String(body).replace('<body', `<body data-issue="${issue}"`);
      // a version differs in its worker
      if (path === '/sw.js') body += `// ${issue}`;
      response.writeHead(200, { 'content-type': type }).end(body);
    });
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    const at = server.address();
    const origin = `http://127.0.0.1:${typeof at === 'object' && at ? at.port : 0}`;
    const { page, context } = await visit('/terms/', { offline: true });
    await page.goto(origin + GUIDE);
    await onDevice(page, GUIDE);
    await page.click('[data-job-start]');
    for (const name of ['number', 'vehicle', 'who']) await page.fill(`#job-start [name=${name}]`, name);
    await page.click('#job-start button');
    await page.waitForFunction(() => document.documentElement.dataset['job'] !== undefined);
    issue = 2;
    await page.evaluate(() =>
      navigator.serviceWorker
        .getRegistration()
        .then((each) => each?.update())
        .then(() => undefined),
    );
    await page.getByText('Your job keeps this one until you load it').waitFor({ timeout: 90_000 });
    await page.reload();
    expect(await page.locator('body').getAttribute('data-issue')).toBe('1');
    await page.getByRole('button', { name: 'Load it now' }).click({ timeout: 60_000 });
    await page.waitForFunction(() => document.body?.dataset['issue'] === '2', undefined, { timeout: 60_000 });
    await page.waitForFunction(() => document.documentElement.dataset['job'] !== undefined);
    await context.close();
    server.close();
  });
});
