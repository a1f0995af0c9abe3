import { describe, expect, it } from 'vitest';
import { demonstration } from './setup.ts';

const { visit } = demonstration();
const GUIDE = '/guides/cargo-work-light/';

describe('one step at a time', () => {
  it('shows one step and nothing else, goes on and back by button and key, and gives the page back', async () => {
    const { page, context, faults } = await visit(GUIDE, { width: 390, touch: true });
    const open = page.getByRole('button', { name: 'One step at a time' });
    await open.click();
    const now = page.locator('[data-onestep-now]');
    await expect
      .poll(() => now.textContent())
      .toBe(`Step 1 of ${await page.locator('.steps > li[data-step]').count()}`);
    const shown = page.locator('.steps > li[data-step]:visible');
    expect(await shown.count()).toBe(1);
    expect(await page.locator('.inst:visible').count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Back' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Next' }).click();
    await page.keyboard.press('ArrowRight');
    expect(await now.textContent()).toMatch(/^Step 3 of /);
    await page.keyboard.press('ArrowLeft');
    expect(await now.textContent()).toMatch(/^Step 2 of /);
    // larger than on the page, and under its own number though the steps before it are hidden
    const look = await shown.first().evaluate((step) => {
      const { fontSize, counterSet } = getComputedStyle(step);
      return { size: Number.parseFloat(fontSize), counterSet };
    });
    expect(look.size).toBeGreaterThan(22);
    expect(look.counterSet).toBe('step 2');
    await page.keyboard.press('Escape');
    expect(await shown.count()).toBeGreaterThan(20);
    expect(await open.evaluate((button) => document.activeElement === button)).toBe(true);
    expect(faults).toEqual([]);
    await context.close();
  });

  it('stops at hold points on the way', async () => {
    const { page, context } = await visit(GUIDE, { width: 390 });
    await page.getByRole('button', { name: 'One step at a time' }).click();
    const now = page.locator('[data-onestep-now]');
    await expect.poll(() => now.textContent()).toMatch(/^Step 1 /);
    let words = '';
    for (let i = 0; i < 30 && !words.startsWith('Hold 1'); i++) {
      await page.keyboard.press('ArrowRight');
      words = (await now.textContent()) ?? '';
    }
    expect(words).toMatch(/^Hold 1: ./);
    expect(await page.locator('.hold:visible').count()).toBe(1);
    expect(await page.locator('.steps > li[data-step]:visible').count()).toBe(0);
    await context.close();
  });
});
