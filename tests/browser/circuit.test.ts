import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demonstration, pagesOf } from './setup.ts';

const { visit } = demonstration();
const CARGO = '/circuits/cargo-work-light/';
const PUMP = '/circuits/rinse-pump/';
const DIAGRAM = '[data-component="CircuitDiagram"]';
const FINDING = '[data-component="FaultFinding"]';
const METER = '[data-component="Meter"]';

const alive = (page: Page) => page.waitForFunction(() => 'live' in document.documentElement.dataset);
const part = (page: Page, id: string) => page.locator(`${DIAGRAM} .part[data-choose="part:${id}"]`).first();
const classOf = (page: Page, id: string) => part(page, id).getAttribute('class');
const toggle = async (page: Page, name: string) => {
  await page.locator(`${DIAGRAM} .tog button`, { hasText: name }).click();
  await alive(page);
};
const state = (page: Page) => page.locator(`${DIAGRAM} > .ib > [data-out="state"]`).textContent();

describe('the circuit bench', () => {
  it('is complete without a script: drawing, words, states and faults', async () => {
    const { page, context } = await visit(CARGO, { script: false });
    expect(await classOf(page, 'W1')).toMatch(/\blive\b/);
    expect(await page.locator(`${DIAGRAM} .words tbody tr`).count()).toBeGreaterThan(25);
    expect(await page.locator('[data-component="TruthTable"] tbody tr').count()).toBe(8);
    expect(await page.locator('.faults tbody tr').count()).toBeGreaterThan(10);
    expect(await page.locator('.needs-script:not([disabled])').count()).toBe(0);
    await context.close();
  });

  it('lights what carries current when an input moves, and the words say the same', async () => {
    const { page, context } = await visit(CARGO);
    await toggle(page, 'Rear doors');
    expect(await classOf(page, 'W8')).toMatch(/\bdead\b/);
    expect(await state(page)).toBe('Master switch on: every load off.');
    expect(await classOf(page, 'SIDE')).toMatch(/\bopen\b/);
    await toggle(page, 'Side door');
    expect(await classOf(page, 'SIDE')).toMatch(/\bmade\b/);
    expect(await classOf(page, 'W7')).toMatch(/\blive\b/);
    await page.locator(`${DIAGRAM} summary`).click();
    const row = page.locator(`${DIAGRAM} .words tr`, { has: page.locator('[data-choose="part:W7"]') });
    const amps = (await row.locator('[data-out="amps"]').textContent())!;
    expect(Number.parseFloat(amps)).toBeGreaterThan(0.1);
    // the same current is written beside the contact that it goes through
    expect(await part(page, 'SIDE').locator('text.a').first().textContent()).toBe(amps);
    await context.close();
  });

  it('shows a part’s figures, pressed in the drawing or by keyboard in the words', async () => {
    const { page, context } = await visit(CARGO);
    await part(page, 'F1').click();
    await alive(page);
    await expect.poll(() => page.locator(`${DIAGRAM} .chosen h4`).textContent()).toMatch(/F1/);
    expect(await classOf(page, 'F1')).toMatch(/\bchosen\b/);
    await page.locator(`${DIAGRAM} summary`).focus();
    await page.keyboard.press('Enter');
    await page.locator(`${DIAGRAM} .words [data-choose="part:W2"]`).focus();
    await page.keyboard.press('Enter');
    expect(await page.locator(`${DIAGRAM} .chosen h4`).textContent()).toMatch(/W2/);
    expect(await classOf(page, 'F1')).not.toMatch(/\bchosen\b/);
    expect(await page.locator(`${DIAGRAM} .words [data-choose="part:W2"]`).getAttribute('aria-pressed')).toBe('true');
    await context.close();
  });

  it('keeps a self-hold relay through press and release', async () => {
    const { page, context } = await visit(PUMP);
    await page.locator('[data-component="TruthTable"] [data-choose="on:-"]').first().click();
    await alive(page);
    await expect.poll(() => state(page)).toMatch(/every load off/);
    await toggle(page, 'Start button');
    await toggle(page, 'Start button');
    expect(await state(page)).toBe('Start button released, stop button released: Rinse pump on.');
    await toggle(page, 'Stop button');
    await toggle(page, 'Stop button');
    expect(await state(page)).toBe('Start button released, stop button released: every load off.');
    await context.close();
  });

  it('shows a fault where it is and what it does', async () => {
    const { page, context } = await visit(CARGO);
    await page.locator(`${FINDING} select[data-choose="fault"]`).selectOption('open:F1');
    await alive(page);
    await expect.poll(() => classOf(page, 'F1')).toMatch(/\bfault\b/);
    expect(await state(page)).toMatch(/every load off/);
    expect(await page.locator(`${DIAGRAM} [data-out="faultWords"]`).textContent()).toBe('Fault put in: F1 blown.');
    await context.close();
  });

  it('hides a fault, takes readings, refuses the wrong name and takes the right one', { timeout: 60_000 }, async () => {
    const { page, context } = await visit(CARGO);
    await page.locator(`${FINDING} [data-any="hidden"]`).click();
    await alive(page);
    await expect.poll(() => page.locator(`${FINDING} .ih`).textContent()).toMatch(/Find it/);
    expect(await page.locator(`${DIAGRAM} .part.live, ${DIAGRAM} .part.live-up`).count()).toBe(0);
    await page.locator(`${METER} [data-toggle^="notes:"]`).first().click();
    expect(await page.locator(`${FINDING} [data-each="notes"] tr`).count()).toBe(1);
    const guesses = await page
      .locator(`${FINDING} select[data-choose="guess"] option:not([value=""])`)
      .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
    const verdict = page.locator(`${FINDING} [data-out="verdict"]`);
    let right = '';
    let wrong = 0;
    for (const guess of guesses) {
      await page.locator(`${FINDING} select[data-choose="guess"]`).selectOption(guess);
      const said = (await verdict.textContent())!;
      if (said.startsWith('Right: ')) {
        right = guess;
        break;
      }
      expect(said).toMatch(/^Not this: /);
      wrong += 1;
    }
    expect(right, `one of ${guesses.length} is right, ${wrong} were not`).not.toBe('');
    await page.locator(`${FINDING} [data-clear]`).click();
    await expect.poll(() => page.locator(`${FINDING} .ih`).textContent()).toMatch(/Sound/);
    await context.close();
  });

  it('moves its arrows only under the pointer, three times, and not for a reader who wants less motion', async () => {
    const moving = (page: Page) =>
      page
        .locator(`${DIAGRAM} .arrow`)
        .first()
        .evaluate((arrow) => {
          const { animationName, animationDuration, animationIterationCount } = getComputedStyle(arrow);
          return `${animationName} ${animationDuration} ${animationIterationCount}`;
        });
    const { page, context } = await visit(CARGO);
    expect(await moving(page)).toMatch(/^none/);
    await page.locator(`${DIAGRAM} > .ib > .wide`).hover();
    expect(await moving(page)).toMatch(/^along(-level)? 1\.4s 3$/);
    await context.close();
    const still = await visit(CARGO, { reducedMotion: true });
    await still.page.locator(`${DIAGRAM} > .ib > .wide`).hover();
    expect(await moving(still.page)).toMatch(/^none/);
    await still.context.close();
  });

  it('prints live wires solid black and the rest as two lines, no wider than the paper', async () => {
    const { page, context } = await visit('/circuits/boat-winch/', { width: 720 });
    await page.emulateMedia({ media: 'print' });
    const seen = await page.evaluate((diagram) => {
      const stroke = (selector: string) => getComputedStyle(document.querySelector(`${diagram} ${selector}`)!).stroke;
      const svg = document.querySelector(`${diagram} svg.circuit`)!.getBoundingClientRect();
      const sheet = document.querySelector(`${diagram} .ib`)!.getBoundingClientRect();
      return { live: stroke('.core.live'), dead: stroke('.core.dead'), fits: svg.right <= sheet.right };
    }, DIAGRAM);
    expect(seen).toEqual({ live: 'rgb(0, 0, 0)', dead: 'rgb(255, 255, 255)', fits: true });
    await context.close();
  });

  it('letters at 12 px or more, and says so where it must be moved sideways', async () => {
    for (const path of pagesOf('circuits')) {
      const { page, context } = await visit(path, { width: 390 });
      const seen = await page.evaluate((diagram) => {
        const wide = document.querySelector<HTMLElement>(`${diagram} > .ib > .wide`)!;
        const hint = document.querySelector<HTMLElement>(`${diagram} .swipe`)!;
        const svg = wide.querySelector('svg')!;
        const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
        const sizes = [...svg.querySelectorAll('text')].map((text) =>
          Number.parseFloat(getComputedStyle(text).fontSize),
        );
        return {
          least: Math.min(...sizes) * scale,
          page: document.documentElement.scrollWidth,
          silent: wide.scrollWidth > wide.clientWidth + 1 && hint.getClientRects().length === 0,
        };
      }, DIAGRAM);
      expect(seen.least, path).toBeGreaterThanOrEqual(12);
      expect(seen.page, path).toBeLessThanOrEqual(390);
      expect(seen.silent, path).toBe(false);
      await context.close();
    }
  }, 120_000);

  it.each(['day', 'night'] as const)(
    'has no violation with a fault in and all opened, by %s',
    async (bay) => {
      const { page, context } = await visit(PUMP, { bay });
      await page.locator(`${FINDING} [data-any="hidden"]`).click();
      await alive(page);
      await page.locator(`${METER} [data-toggle^="notes:"]`).first().click();
      await page.locator(`${FINDING} [data-choose="reveal:yes"]`).click();
      await part(page, 'F1').click();
      await page.evaluate(() => {
        for (const details of document.querySelectorAll('details')) details.open = true;
      });
      const { violations, passes } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
      expect(passes.length).toBeGreaterThan(0);
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
      await context.close();
    },
    60_000,
  );
});
