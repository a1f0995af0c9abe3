import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { galleryCases } from '../../components/gallery.ts';
import { demonstration } from './setup.ts';

const { visit } = demonstration();
const WIDTHS = [320, 820, 1440] as const;
const BAYS = ['day', 'night'] as const;
const forms = BAYS.flatMap((bay) => WIDTHS.map((width) => ({ bay, width })));
/** Height of the window, and so of one picture: the whole gallery is taller than a picture may be. */
const HEIGHT_PX = 3000;
/** A pixel differs when a colour is this far off [of 255]; a picture when more pixels do: half an exclamation mark. */
const COLOUR_OFF = 8;
const PIXELS_OFF = 8;

/** The whole page in pictures, as base64. */
async function pictures(page: Page): Promise<string[]> {
  const session = await page.context().newCDPSession(page);
  const tall = await page.evaluate(() => document.documentElement.scrollHeight);
  const taken: string[] = [];
  for (let y = 0; y < tall; y += HEIGHT_PX) {
    await page.evaluate(async (top) => {
      scrollTo(0, top);
      for (let frame = 0; frame < 2; frame++) await new Promise((done) => requestAnimationFrame(done));
    }, y);
    taken.push((await session.send('Page.captureScreenshot', { optimizeForSpeed: true })).data);
  }
  return taken;
}

/** Pixels in which two pictures differ, counted by the browser. */
async function pixelsOff(page: Page, one: string, two: string): Promise<number> {
  if (one === two) return 0;
  return page.evaluate(
    async ({ both, off }) => {
      const [a, b] = await Promise.all(
        both.map(async (data) => {
          const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
          const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
          const sheet = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
          sheet.drawImage(bitmap, 0, 0);
          return sheet.getImageData(0, 0, bitmap.width, bitmap.height);
        }),
      );
      if (a!.width !== b!.width || a!.height !== b!.height) return Number.POSITIVE_INFINITY;
      let count = 0;
      for (let at = 0; at < a!.data.length; at += 4) {
        const far = [0, 1, 2].some((colour) => Math.abs(a!.data[at + colour]! - b!.data[at + colour]!) > off);
        if (far) count++;
      }
      return count;
    },
    { both: [one, two], off: COLOUR_OFF },
  );
}

describe('the gallery', () => {
  it.each(forms)(
    'by $bay at $width px is drawn the same twice, and fits',
    { timeout: 60_000 },
    async ({ bay, width }) => {
      const drawn: string[][] = [];
      for (let time = 0; time < 2; time++) {
        const { page, context } = await visit('/gallery/', { bay, width, height: HEIGHT_PX, reducedMotion: true });
        await page.waitForLoadState('networkidle');
        await page.evaluate(() => document.fonts.ready.then(() => undefined));
        expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
        drawn.push(await pictures(page));
        if (time === 1) {
          const [first, second] = drawn as [string[], string[]];
          expect(first.length).toBeGreaterThan(1);
          expect(second.length).toBe(first.length);
          for (const [n, picture] of first.entries())
            expect(await pixelsOff(page, picture, second[n]!), `picture ${n + 1}`).toBeLessThanOrEqual(PIXELS_OFF);
        }
        await context.close();
      }
    },
  );

  it('tells two pictures apart where a single mark differs', async () => {
    const { page, context } = await visit('/gallery/', { width: 820, height: HEIGHT_PX, reducedMotion: true });
    const before = await pictures(page);
    await page
      .locator('main h3')
      .first()
      .evaluate((title) => title.append('!'));
    const after = await pictures(page);
    expect(await pixelsOff(page, before[0]!, before[0]!)).toBe(0);
    expect(await pixelsOff(page, before[0]!, after[0]!)).toBeGreaterThan(PIXELS_OFF);
    await context.close();
  });

  it('shows other colours by night than by day, in every group', async () => {
    const pictures: string[][] = [];
    for (const bay of BAYS) {
      const { page, context } = await visit('/gallery/', { bay, width: 820 });
      const own: string[] = [];
      for (const stop of await page.locator('main .stn[id]').all())
        own.push(
          await stop.evaluate(
            (each) => `${each.id} ${getComputedStyle(each).color} ${getComputedStyle(document.body).backgroundColor}`,
          ),
        );
      pictures.push(own);
      await context.close();
    }
    expect(pictures[0]!.length).toBe(pictures[1]!.length);
    for (const [n, day] of pictures[0]!.entries()) expect(pictures[1]![n]).not.toBe(day);
  });

  it('holds every case, each with something to see', async () => {
    const { page, context } = await visit('/gallery/', { width: 1440 });
    const shown = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('.case[id]')].map((each) => {
        const { width, height } = each.getBoundingClientRect();
        return { id: each.id, seen: width > 40 && height > 30 && (each.textContent ?? '').trim().length > 0 };
      }),
    );
    expect(shown.filter(({ seen }) => !seen)).toEqual([]);
    expect(shown.map(({ id }) => id)).toEqual(expect.arrayContaining(galleryCases().map(({ id }) => `case-${id}`)));
    await context.close();
  });

  it('keeps every entry shut and says so without a script', async () => {
    const { page, context } = await visit('/gallery/', { width: 820, script: false });
    expect(await page.locator('main input:not([disabled])').count()).toBe(0);
    expect(await page.locator('.case[id]').count()).toBe(galleryCases().length);
    await context.close();
  });
});
