import { describe, expect, it } from 'vitest';
import { demonstration } from './setup.ts';

const { visit } = demonstration();
const GUIDE = '/guides/cargo-work-light/';

describe('the main job', () => {
  it('leads from the vehicle to the guide in two taps on a phone', async () => {
    const { page, context } = await visit('/', { width: 360, touch: true });
    await page.getByRole('navigation', { name: 'Vehicle types' }).getByRole('link', { name: 'Panel van' }).click();
    expect(await page.locator('h1').textContent()).toBe('Panel van');
    await page
      .locator('#guides')
      .getByRole('link', { name: /Cargo work light/ })
      .click();
    expect(new URL(page.url()).pathname).toBe(GUIDE);
    await context.close();
  });

  it('follows a longer run with the wire, the drop and the marks of change', async () => {
    const { page, context } = await visit(GUIDE);
    const wire = page.locator('[data-props*="W2.areaMm2"] [data-out="value"]').first();
    const drop = page.locator('#cable .inst').first().locator('[data-out="drop"]').first();
    const before = { wire: Number(await wire.textContent()), drop: Number(await drop.textContent()) };
    const field = page.locator('#job-feedRunM-in');
    await field.click();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('12', { delay: 60 });
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.querySelector('#cable > .rail .mark')?.textContent?.includes('12.0'));
    expect(Number(await wire.textContent())).toBeGreaterThan(before.wire);
    // a thicker wire on a longer run: the loss stays under the limit that the chooser names
    const share = Number(
      await page.locator('#cable .inst').first().locator('[data-out="share"]').first().textContent(),
    );
    const limit = Number(
      await page.locator('#cable .inst').first().locator('[data-out="limit"]').first().textContent(),
    );
    expect(share).toBeLessThanOrEqual(limit);
    // the sentence, the run bar and the sleeve on the line say the same
    expect(await page.locator('#cable > .rail .mark').textContent()).toContain('12');
    expect(await page.locator('.runbar [data-stop="cable"]').textContent()).toContain('12');
    await context.close();
  });

  it('reads whole without a script: numbers, formula and source stand in the page', async () => {
    const { page, context } = await visit(GUIDE, { script: false });
    const text = await page.locator('#fuse').textContent();
    expect(text).toMatch(/Fuse sizer/);
    expect(text).toMatch(/ISO 8820-3/);
    expect(await page.locator('#fuse .read b').first().textContent()).toMatch(/^\d+(\.\d+)?\s*A/);
    const unfilled = await page.evaluate(() =>
      [...document.querySelectorAll('[data-out]')]
        .filter(
          (each) => !each.closest('template, [hidden]') && /NaN|undefined|null|\[object/.test(each.textContent ?? ''),
        )
        .map((each) => each.outerHTML.slice(0, 120)),
    );
    expect(unfilled).toEqual([]);
    await context.close();
  });
});
