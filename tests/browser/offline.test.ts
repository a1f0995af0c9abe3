import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demonstration } from './setup.ts';

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
    await keep.waitFor({ state: 'visible' });
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
});
