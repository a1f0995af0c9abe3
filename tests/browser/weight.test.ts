import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { DIST, demonstration, watchShift } from './setup.ts';

const { visit } = demonstration();
const GUIDE = '/guides/cargo-work-light/';
const kB = (bytes: number): number => Math.round(bytes / 100) / 10;
const packed = (path: string): number => gzipSync(readFileSync(join(DIST, path)), { level: 9 }).length;

describe('weight of the main guide', () => {
  it('keeps page, style and first script small, and the fonts within their share', async () => {
    const { page, context, requests } = await visit(GUIDE);
    await page.waitForLoadState('load');
    await page.waitForTimeout(1500);
    const of = (ending: RegExp): number =>
      requests.filter((path) => ending.test(path)).reduce((sum, path) => sum + packed(path), 0);
    const html = packed(`${GUIDE}index.html`);
    const css = of(/\.css$/);
    const js = of(/\.js$/);
    const fonts = requests
      .filter((path) => path.endsWith('.woff2'))
      .reduce((sum, path) => sum + readFileSync(join(DIST, path)).length, 0);
    console.log(`main guide, gzip: HTML ${kB(html)} kB, CSS ${kB(css)} kB, JS ${kB(js)} kB; fonts ${kB(fonts)} kB`);
    expect(js).toBeLessThanOrEqual(15_000);
    expect(html + css + js).toBeLessThanOrEqual(60_000);
    expect(fonts).toBeLessThanOrEqual(70_000);
    await context.close();
  });

  it.each([GUIDE, '/', '/search/?q=lamp', '/calculators/fuse-size/'])(
    '%s does not shift while it loads',
    async (path) => {
      const { page, context, address } = await visit('/404.html', { width: 390 });
      await watchShift(page);
      await page.goto(address(path), { waitUntil: 'load' });
      // pictures far down load when they come near, so the network is not waited for: fonts and scripts are in by then
      await page.evaluate(() => document.fonts.ready.then(() => undefined));
      await page.waitForTimeout(1500);
      expect(await page.evaluate(() => (window as { shift?: number }).shift)).toBeLessThanOrEqual(0.001);
      await context.close();
    },
  );
});
