import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demonstration } from './setup.ts';

const { visit } = demonstration();
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const live = (page: Page) => page.waitForSelector('html[data-live]');
const answer = (page: Page) => page.locator('.prep-selector .inst');

describe('the selector', () => {
  it('fetches the facts of all surfaces only when somebody uses it', async () => {
    const { page, context } = await visit('/surfaces/');
    const asked: string[] = [];
    page.on('request', (request) => asked.push(new URL(request.url()).pathname));
    await page.mouse.wheel(0, 400);
    await page.waitForTimeout(200);
    expect(asked).not.toContain('/surfaces/facts.json');
    await page.locator('#prep-in-query').focus();
    await live(page);
    expect(asked).toContain('/surfaces/facts.json');
    await context.close();
  });

  it('finds a surface by words, takes it, and keeps the choice in the link', async () => {
    const { page, context } = await visit('/surfaces/');
    await page.locator('#prep-in-query').fill('bumper');
    await live(page);
    await page.waitForFunction(
      () => document.querySelector('[data-each="matches"] .opt [data-out="name"]')?.textContent === 'Polypropylene',
    );
    await page
      .getByRole('link', { name: /^Polypropylene/ })
      .first()
      .press('Enter');
    await page.waitForFunction(
      () => document.querySelector('.prep-selector .inst h3')?.textContent === 'Polypropylene',
    );
    expect(new URL(page.url()).pathname).toBe('/surfaces/');
    expect(await answer(page).locator('.prep > li').count()).toBeGreaterThan(5);
    await page.waitForFunction(() => location.hash.includes('surface=pp'));
    await page.reload();
    await page.waitForFunction(
      () => document.querySelector('.prep-selector .inst h3')?.textContent === 'Polypropylene',
    );
    await context.close();
  });

  it('rules surfaces out by simple tests, down to the careful way', async () => {
    const { page, context } = await visit('/surfaces/');
    await page.locator('details.tests summary').click();
    await live(page);
    await page.locator('#prep-in-magnet').selectOption('does not hold');
    await page.locator('#prep-in-float').selectOption('floats');
    await page.waitForFunction(() => document.querySelector('[data-out="found"]')?.textContent?.includes('that fit'));
    const found = page.locator('[data-each="matches"]');
    expect(await found.textContent()).toContain('Polypropylene');
    expect(await found.textContent()).not.toContain('Bare steel');
    await page.locator('#prep-in-query').fill('zebra');
    await page.waitForFunction(() => document.querySelectorAll('[data-each="matches"] > li').length === 1);
    expect(await page.locator('[data-out="found"]').textContent()).toMatch(/^Nothing on the list fits/);
    await page
      .getByRole('link', { name: /not in the list/ })
      .first()
      .click();
    await page.waitForFunction(() =>
      document.querySelector('.prep-selector .inst h3')?.textContent?.includes('not in the list'),
    );
    expect(await answer(page).locator('.prep').textContent()).toMatch(/25 × 25 mm patch/);
    await context.close();
  });

  it.each([
    ['surfaceC', '400', /Surface temperature must be −20 to 80 °C/],
    ['surfaceC', 'warm', /is not a number/],
    ['massG', '-5', /Mass must be 1 g to 100 kg/],
    ['lengthMm', '12 A', /is a current; this needs a length/],
    ['widthMm', '', /Empty\. Type a length/],
    ['widthMm', '1e99', /Tape width|not a/],
  ])('refuses %s "%s" beside the field and keeps the last good answer', async (name, text, message) => {
    const { page, context } = await visit('/surfaces/abs/');
    const field = page.locator(`[data-local="${name}"]`);
    await field.fill(text);
    await page.keyboard.press('Tab');
    await live(page);
    const error = page.locator(`[data-error="${name}"]`);
    await error.waitFor();
    expect(await error.textContent()).toMatch(message);
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await answer(page).textContent()).not.toMatch(/NaN|undefined|Infinity/);
    expect(await answer(page).locator('.held').isVisible()).toBe(true);
    await context.close();
  });

  it('says so when a cold panel stops it, and takes the time that follows', async () => {
    const { page, context } = await visit('/surfaces/powder-coat/');
    expect(await answer(page).locator('.read b').first().textContent()).toMatch(/^24\s*h/);
    await page.locator('[data-local="surfaceC"]').fill('8');
    await page.keyboard.press('Tab');
    await page.waitForFunction(() =>
      document.querySelector('.prep-selector .ih .flag')?.textContent?.includes('Too cold'),
    );
    expect(await answer(page).locator('.prep > li').first().textContent()).toMatch(/^\s*Warm the surface/);
    expect(await answer(page).locator('.gantt > li').first().textContent()).toContain('Warm');
    await page.locator('[data-local="massG"]').fill('8 kg');
    await page.keyboard.press('Tab');
    await page.waitForFunction(
      () => document.querySelector('.prep-selector .read .words')?.textContent === 'Fix it mechanically',
    );
    await context.close();
  });

  it('is whole without a script: the answer for its defaults, and every surface in a table', async () => {
    const { page, context } = await visit('/surfaces/', { script: false });
    expect(await answer(page).locator('.prep > li').count()).toBeGreaterThan(4);
    expect(await page.locator('.matrix tbody tr').count()).toBeGreaterThanOrEqual(30);
    await page.locator('[data-each="matches"] .opt').first().click();
    expect(new URL(page.url()).pathname).toMatch(/^\/surfaces\/[a-z-]+\/$/);
    await context.close();
  });
});

describe('accessibility', () => {
  const pages = [
    '/surfaces/',
    '/surfaces/powder-coat/',
    '/surfaces/silicone/',
    '/calculators/',
    ...['lap-splice', 'loom-size', 'crimp-pull', 'solder-heat', 'ground-point'].map((id) => `/calculators/${id}/`),
  ];
  const cases = pages.flatMap((path) => [
    { path, bay: 'day' as const, width: 1280 },
    { path, bay: 'night' as const, width: 320 },
  ]);
  it.each(cases)('$path, $bay, $width px: no violation, no sideways scroll', async ({ path, bay, width }) => {
    const { page, context } = await visit(path, { bay, width });
    const { violations } = await new AxeBuilder({ page }).withTags(TAGS).setLegacyMode(true).analyze();
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`),
    ).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await context.close();
  });
});
