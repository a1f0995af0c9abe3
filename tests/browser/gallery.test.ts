import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { galleryCases } from '../../components/gallery.ts';
import { allShown, demonstration, type Visit, type VisitOptions } from './setup.ts';

const { visit } = demonstration();
const WIDTHS = [320, 820, 1440] as const;
const BAYS = ['day', 'night'] as const;
type Bay = (typeof BAYS)[number];
/** Height of the window, and so of one picture: the whole gallery is taller than a picture may be. */
const HEIGHT_PX = 6000;
/** A pixel differs when a colour is this far off [of 255]; a picture when more pixels do: half an exclamation mark. */
const COLOUR_OFF = 8;
const PIXELS_OFF = 8;

/** The whole page in pictures from the top down, or the first of them, as base64. */
async function pictures(page: Page, most = Number.POSITIVE_INFINITY): Promise<string[]> {
  const session = await page.context().newCDPSession(page);
  const tall = await page.evaluate(() => document.documentElement.scrollHeight);
  const taken: string[] = [];
  for (let y = 0; y < tall && taken.length < most; y += HEIGHT_PX) {
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

/**
 * The gallery in its own letters and with its pictures. A reader's page that starts before its fonts are there stays
 * without them, so that no line moves, and loads pictures when they come near: what is compared must not hang on who was
 * first.
 */
async function gallery(options: VisitOptions): Promise<Visit> {
  const seen = await visit('/mark.svg', { height: HEIGHT_PX, reducedMotion: true, ...options });
  await seen.page.route('**/gallery/', async (route) => {
    const answer = await route.fetch();
    const html = (await answer.text())
      .replaceAll('font-display:optional', 'font-display:block')
      .replaceAll('loading="lazy" decoding="async"', 'loading="eager" decoding="sync"')
      .replace(/<meta http-equiv="content-security-policy"[^>]*>/, ''); // it would refuse the changed style
    await route.fulfill({ response: answer, body: html });
  });
  await seen.page.goto(seen.address('/gallery/'));
  await seen.page.evaluate(() => document.fonts.ready.then(() => undefined));
  await allShown(seen.page);
  return seen;
}

const toBay = (page: Page, bay: Bay): Promise<void> =>
  page.evaluate((named) => {
    document.documentElement.dataset['bay'] = named;
  }, bay);

/** Colour of each group's words, with that of the page behind it. */
const coloursOf = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('main .stn[id]')].map(
      (each) => `${getComputedStyle(each).color} on ${getComputedStyle(document.body).backgroundColor}`,
    ),
  );

describe('the gallery', () => {
  it.each(WIDTHS)('at %i px fits and is drawn the same twice, in both bays', async (width) => {
    const drawn: Record<Bay, string[]>[] = [];
    // the second time the other bay comes first, so that neither leaves anything behind in what follows
    for (const bays of [BAYS, BAYS.toReversed()]) {
      const { page, context } = await gallery({ bay: bays[0]!, width });
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      const own = { day: [] as string[], night: [] as string[] };
      for (const bay of bays) {
        await toBay(page, bay);
        own[bay] = await pictures(page);
      }
      drawn.push(own);
      if (drawn.length === 2)
        for (const bay of BAYS) {
          const [first, second] = drawn.map((each) => each[bay]) as [string[], string[]];
          expect(first.length).toBeGreaterThan(2);
          expect(second.length).toBe(first.length);
          for (const [n, picture] of first.entries())
            expect(
              await pixelsOff(page, picture, second[n]!),
              `${bay}, from ${n * HEIGHT_PX} px down`,
            ).toBeLessThanOrEqual(PIXELS_OFF);
        }
      await context.close();
    }
  });

  it('tells two pictures apart where a single mark differs, and the bays by every group', async () => {
    const { page, context } = await gallery({ width: 820 });
    const [before] = await pictures(page, 1);
    await page.evaluate(() => document.querySelector('main h3')!.append('!'));
    const [after] = await pictures(page, 1);
    expect(await pixelsOff(page, before!, before!)).toBe(0);
    expect(await pixelsOff(page, before!, after!)).toBeGreaterThan(PIXELS_OFF);
    const day = await coloursOf(page);
    await toBay(page, 'night');
    const night = await coloursOf(page);
    expect(day.length).toBeGreaterThan(10);
    expect(night.length).toBe(day.length);
    for (const [n, colours] of day.entries()) expect(night[n]).not.toBe(colours);
    await context.close();
  });

  it.each([
    { form: 'on the screen', width: 1440, script: true, media: 'screen' },
    { form: 'on paper', width: 820, script: true, media: 'print' },
    { form: 'without a script', width: 320, script: false, media: 'screen' },
  ] as const)('holds every case $form, each with something to see', async ({ width, script, media }) => {
    const { page, context } = await gallery({ width, script });
    await page.emulateMedia({ media });
    const shown = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('.case[id]')].map((each) => {
        const { width, height } = each.getBoundingClientRect();
        return { id: each.id, seen: width > 40 && height > 30 && (each.textContent ?? '').trim() !== '' };
      }),
    );
    expect(shown.filter(({ seen }) => !seen)).toEqual([]);
    expect(shown.map(({ id }) => id)).toEqual(expect.arrayContaining(galleryCases().map(({ id }) => `case-${id}`)));
    if (!script) expect(await page.locator('main input:not([disabled]):visible').count()).toBe(0);
    await context.close();
  });

  it('is there at once down to the place that the address names, and stays there', async () => {
    const { page, context } = await visit('/gallery/#whole-truthtable', { width: 390 });
    await page.waitForFunction(() => document.querySelector('#whole-truthtable:not(.later)') !== null);
    await allShown(page);
    const top = await page.locator('#whole-truthtable').evaluate((each) => each.getBoundingClientRect().top);
    expect(Math.abs(top)).toBeLessThan(200);
    await context.close();
  });

  it('shows hold points of a job in each state, and lets them be worked', async () => {
    const { page, context, faults } = await visit('/gallery/');
    await allShown(page);
    // biome-ignore lint/performance/useDomNodeTextContent: what is hidden in a state must not count
    const says = (id: string) => page.locator(`#case-hold-${id} .hold`).innerText();
    expect(await says('begun')).toMatch(/The line is open here.*Needs 1 check and a checker\./s);
    expect(await says('closed')).toMatch(/^Hold 2 closed: .*R\. Fitter and S\. Checker.*12 mA\s+Open it again$/s);
    expect(await says('moved')).toContain('Fuse to relay was 3 m, now 4 m. Check again and sign again.');
    expect(await says('passed')).toMatch(/^Hold 2 passed: .*passed without its checks: Customer waits/s);
    const signs = (id: string) => page.locator(`#case-hold-${id} .hh .when-passed:visible`).count();
    expect([await signs('closed'), await signs('passed'), await signs('moved')]).toEqual([0, 1, 0]);
    expect(await says('again')).toContain('Lamp moved to the other side');
    const moved = page.locator('#case-hold-moved');
    await moved.getByLabel('Checker').fill('S. Checker');
    await moved.getByRole('button', { name: 'Close the line' }).click();
    expect(await says('moved')).toMatch(/^Hold 2 closed: /);
    expect(faults).toEqual([]);
    await context.close();
  });
});
