import { describe, expect, it } from 'vitest';
import { demonstration, watchShift } from './setup.ts';

const { visit, address } = demonstration();
const NAMES = '.results a.todo strong';

describe('search', () => {
  it('finds a guide by the customer’s words that stand nowhere in its title', async () => {
    const { page, context } = await visit('/search/?q=load+lamp', { width: 360 });
    await page.waitForSelector(NAMES);
    const first = (await page.locator(NAMES).allTextContents()).slice(0, 3);
    expect(first).toContain('Cargo work light on side and rear doors');
    await context.close();
  });

  it('also asks for the trade’s other words, and says so', async () => {
    const { page, context } = await visit('/search/');
    await page.getByRole('searchbox').fill('earth');
    await page.waitForFunction(() => document.querySelector('#search-status')?.textContent?.includes('“earth”'));
    expect(await page.locator(NAMES).count()).toBeGreaterThan(0);
    expect(await page.locator('#search-status').textContent()).toContain('ground');
    await context.close();
  });

  it('counts before a filter is set, and holds the count after', async () => {
    const { page, context } = await visit('/search/?q=fuse');
    await page.waitForSelector(NAMES);
    const chip = page.locator('label.opt', { hasText: 'Lights' });
    const promised = Number(await chip.locator('.count').textContent());
    expect(promised).toBeGreaterThan(0);
    await chip.click();
    await page.waitForFunction(() => location.search.includes('work=lighting'));
    await page.waitForFunction(() => document.querySelector('#search-status')?.textContent?.includes('Lights'));
    const found = await page.locator('#search-status').textContent();
    expect(Number(/^\d+/.exec(found ?? '')?.[0])).toBe(promised);
    // the address carries the whole question
    await page.reload();
    await page.waitForFunction(() => document.querySelector('#search-status')?.textContent?.includes('Lights'));
    expect(await page.locator('#search-status').textContent()).toBe(found);
    await context.close();
  });

  it('shows answers on a phone’s first screen, with the filters one press away', async () => {
    const { page, context } = await visit('/search/?q=beacon', { width: 390 });
    await page.waitForSelector(NAMES);
    const bottom = await page
      .locator(NAMES)
      .first()
      .evaluate((each) => each.getBoundingClientRect().bottom);
    expect(bottom).toBeLessThan(700);
    const narrow = page.getByRole('button', { name: 'Narrow down' });
    const chip = page.locator('label.opt', { hasText: 'Warning lamps' });
    expect(await chip.isVisible()).toBe(false);
    await narrow.click();
    expect(await narrow.getAttribute('aria-expanded')).toBe('true');
    await chip.click();
    await page.waitForFunction(() => location.search.includes('work=warning'));
    expect(await page.locator('#narrow').textContent()).toBe('Narrowed to Warning lamps');
    await page.locator('#narrow').click();
    expect(await chip.isVisible()).toBe(false);
    await context.close();
  });

  it('says what a page is about, its found words marked, or the part where they stand', async () => {
    const { page, context } = await visit('/search/?q=beacon');
    await page.waitForSelector(NAMES);
    const first = page.locator('.results .stn').first();
    expect(await first.locator('.excerpt').textContent()).toMatch(/^One switch turns the beacon on/);
    expect(await first.locator('mark').allTextContents()).toContain('beacon');
    await page.getByRole('searchbox').fill('isopropyl');
    await page.waitForFunction(() => document.querySelector('#search-status')?.textContent?.includes('“isopropyl”'));
    const inPart = page.locator('.results .stn', { has: page.locator('.at a[href*="#"]') }).first();
    expect(await inPart.locator('.excerpt mark').first().textContent()).toMatch(/isopropyl/i);
    await context.close();
  });

  it('says what was asked when nothing is found, and drops the last filter on demand', async () => {
    const { page, context } = await visit('/search/?q=winch');
    await page.waitForSelector(NAMES);
    await page.locator('#vehicle').selectOption('motorcycle');
    await page.waitForSelector('#search-nothing:not([hidden])');
    expect(await page.locator('.asked-for').textContent()).toBe('Nothing found for “winch”, Motorcycle.');
    await page.getByRole('button', { name: 'Drop “Motorcycle”' }).click();
    await page.waitForSelector(NAMES);
    expect(new URL(page.url()).search).toBe('?q=winch');
    await context.close();
  });

  it('is worked with the keyboard alone', async () => {
    const { page, context } = await visit('/search/?q=lamp');
    await page.waitForSelector(NAMES);
    await page.getByRole('searchbox').focus();
    await page.keyboard.press('ArrowDown');
    const name = await page.evaluate(() => document.activeElement?.querySelector('strong')?.textContent);
    expect(name).toBe(await page.locator(NAMES).first().textContent());
    await page.keyboard.press('ArrowUp');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('q');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/(guides|lessons|calculators|surfaces)\//);
    await context.close();
  });

  it('does not let a slow answer to an old question stand over a new one', async () => {
    const { page, context } = await visit('/search/?q=lamp');
    await page.waitForSelector(NAMES);
    let held: (() => void) | undefined;
    const slow = new Promise<void>((go) => (held = go));
    await page.route('**/pagefind/index/*', async (route) => {
      await slow;
      await route.continue();
    });
    await page.getByRole('searchbox').fill('winch');
    await page.waitForTimeout(200);
    await page.getByRole('searchbox').fill('lamp');
    await page.waitForTimeout(200);
    held?.();
    const says = (): Promise<string | null> => page.locator('#search-status').textContent();
    await page.waitForFunction(() => document.querySelector('#search-status')?.textContent?.includes('“lamp”'));
    await page.waitForTimeout(400);
    expect(await says()).toContain('“lamp”');
    await context.close();
  });

  it('moves nothing when its answers come', async () => {
    const { page, context } = await visit('/404.html', { width: 390 });
    await watchShift(page);
    await page.goto(address('/search/?q=lamp'));
    await page.waitForSelector(NAMES);
    await page.waitForTimeout(300);
    expect(await page.evaluate(() => (window as { shift?: number }).shift)).toBeLessThanOrEqual(0.001);
    await context.close();
  });

  it('tells a reader without scripts where to go instead', async () => {
    const { page, context } = await visit('/search/', { script: false });
    await page.getByRole('link', { name: 'list of guides' }).click();
    expect(new URL(page.url()).pathname).toBe('/guides/');
    await context.close();
  });
});
