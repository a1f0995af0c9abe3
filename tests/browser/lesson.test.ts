import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demonstration, pagesOf } from './setup.ts';

const { visit } = demonstration();
const LESSON = '/lessons/iron-tip-heat/';
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const ready = (page: Page) => page.waitForSelector('html[data-lesson="ready"]');
/** Tabs until the element in focus fits, and fails where it never does. */
async function tabTo(page: Page, fits: string): Promise<void> {
  for (let i = 0; i < 120; i++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((selector) => document.activeElement?.matches(selector) ?? false, fits)) return;
  }
  throw new Error(`The keyboard never reaches ${fits}`);
}

describe('a lesson by keyboard alone', () => {
  it('is read, practised, answered, missed, signed, and stands on the path', async () => {
    const { page, context } = await visit(LESSON);
    await ready(page);
    await tabTo(page, '#lesson-read');
    await page.keyboard.press('Space');
    for (let piece = 0; piece < 3; piece++) {
      await tabTo(page, `#practice-${piece}`);
      await page.keyboard.press('Space');
    }

    // first question: the second option is wrong, says why, and leaves the others open
    await tabTo(page, '[data-question="q04"] input');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, '[data-question="q04"] [data-check]');
    await page.keyboard.press('Enter');
    const says = page.locator('[data-question="q04"] [data-says]');
    expect(await says.textContent()).toMatch(/^Not this\. .+\. Pick once more\.$/);
    expect(await page.evaluate(() => document.activeElement?.matches('[data-question="q04"] input'))).toBe(true);
    expect(await page.locator('[data-question="q04"] input:disabled').count()).toBe(0);
    await page.keyboard.press('ArrowUp');
    await tabTo(page, '[data-question="q04"] [data-check]');
    await page.keyboard.press('Enter');
    expect(await says.textContent()).toMatch(/^Right\. /);
    expect(await page.locator('[data-question="q04"] .others li').count()).toBe(2);
    // what comes next has the focus
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-question'))).toBe('q05');

    for (const [question, downs] of [
      ['q05', 1],
      ['q06', 2],
    ] as const) {
      await tabTo(page, `[data-question="${question}"] input`);
      await page.keyboard.press('Space');
      for (let i = 0; i < downs; i++) await page.keyboard.press('ArrowDown');
      await tabTo(page, `[data-question="${question}"] [data-check]`);
      await page.keyboard.press('Enter');
      expect(await page.locator(`[data-question="${question}"] [data-says]`).textContent()).toMatch(/^Right\. /);
    }

    // the contact stays open until everything is there
    await tabTo(page, '[data-signoff-close]');
    await page.keyboard.press('Enter');
    expect(await page.locator('[data-signoff-missing]').textContent()).toBe(
      'Not yet. Needs 3 criteria to accept, the piece, the learner, the trainer.',
    );
    await page.keyboard.press('Space');
    for (const box of ['#accept-1', '#accept-2']) {
      await tabTo(page, box);
      await page.keyboard.press('Space');
    }
    for (const [field, text] of [
      ['piece', 'Five pads, board 3'],
      ['learner', 'Asha P.'],
      ['trainer', 'Rosa Marten'],
    ]) {
      await tabTo(page, `[data-signoff-field="${field}"]`);
      await page.keyboard.type(text!);
    }
    await tabTo(page, '[data-signoff-close]');
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-signoff][data-is="closed"]');
    expect(await page.locator('[data-signoff-state]').textContent()).toMatch(
      /^Asha P\. made: Five pads, board 3\. Signed by Rosa Marten, /,
    );

    // kept on the device
    await page.reload();
    await ready(page);
    expect(await page.locator('#lesson-read').isChecked()).toBe(true);
    expect(await page.locator('[data-question="q05"] [data-says]').textContent()).toMatch(/^Right\. /);
    expect(await page.locator('[data-signoff]').getAttribute('data-is')).toBe('closed');
    await page.goto(new URL('/lessons/', page.url()).href);
    await ready(page);
    expect(await page.locator('[data-line="iron-tip-heat"] [data-line-words]').textContent()).toMatch(/^RM, /);
    expect(await page.locator('[data-signed-count]').textContent()).toBe('1 of 10 signed');
    expect(await page.locator('[data-due-words]').textContent()).toMatch(/^Nothing is due today/);

    // days later the missed one is due, alone, and its question is open again
    await page.clock.install({ time: Date.now() + 40 * 24 * 3600_000 });
    await page.reload();
    await ready(page);
    expect(await page.locator('[data-due] li').count()).toBe(1);
    await page.locator('[data-due] a').focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/#question-q04$/);
    await ready(page);
    expect(await page.locator('[data-question="q04"] [data-again]').isVisible()).toBe(true);
    expect(await page.locator('[data-question="q04"] [data-check]').isVisible()).toBe(true);
    expect(await page.locator('[data-question="q05"] [data-check]').isVisible()).toBe(false);

    // opened again for a reason, which stays
    await page.locator('[data-signoff-reopen] summary').focus();
    await page.keyboard.press('Enter');
    await tabTo(page, '[data-signoff-field="reason"]');
    await page.keyboard.type('Pad lifted on the next job');
    await tabTo(page, '[data-signoff-open]');
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-signoff]:not([data-is="closed"])');
    expect(await page.locator('[data-signoff-old]').textContent()).toContain(
      'Opened again: Pad lifted on the next job',
    );
    await context.close();
  });

  it('gives no answer away in its source, and reads whole without a script', async () => {
    const { page, context } = await visit(LESSON, { script: false });
    const html = await page.content();
    expect(html).not.toContain('Oxide stops heat and wetting');
    expect(html).not.toMatch(/data-right|"right"/);
    expect(await page.locator('.ask').count()).toBe(3);
    expect(await page.locator('#check noscript').textContent()).toContain('ask your trainer');
    expect(await page.locator('.signoff').textContent()).toContain('Tip is silver over its whole face');
    expect(await page.locator('.try .read').textContent()).toMatch(/\d+\s*°C/);
    await context.close();
  });
});

describe('parts to try out', () => {
  it('follow an entry with number, picture and words', async () => {
    const { page, context } = await visit(LESSON);
    const part = page.locator('[data-component="PadHeat"]');
    const curve = part.locator('path[data-attr="d:curve"]');
    const before = await curve.getAttribute('d');
    await part.locator('[data-local="face"]').selectOption('black with oxide');
    await page.waitForFunction(() =>
      document.querySelector('[data-component="PadHeat"] .flag')?.textContent?.includes('Cold joint'),
    );
    expect(await curve.getAttribute('d')).not.toBe(before);
    expect(await part.locator('svg[role="img"]').first().getAttribute('aria-label')).toContain('cold joint');
    await part.locator('[data-local="tipC"]').fill('4000');
    await page.keyboard.press('Tab');
    expect(await part.locator('[data-error="tipC"]').textContent()).toContain('Iron must be 200 to 450 °C.');
    await context.close();
  });
});

describe('sheets to sign', () => {
  it.each([...pagesOf('lessons').map((path) => (path === '/lessons/sheet/' ? path : `${path}sheet/`))])(
    '%s prints on one page',
    async (path) => {
      const { page, context } = await visit(path);
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length).toBe(1);
      await context.close();
    },
  );
});

describe('accessibility', () => {
  const pages = [
    '/lessons/',
    LESSON,
    '/lessons/primer-tape-pressure/',
    '/lessons/strip-and-tin/',
    `${LESSON}sheet/`,
    '/lessons/sheet/',
  ];
  const cases = pages.flatMap((path) => [
    { path, bay: 'day' as const, width: 1280 },
    { path, bay: 'night' as const, width: 390 },
  ]);
  it.each(cases)('$path, $bay, $width px: no violation, no sideways scroll', async ({ path, bay, width }) => {
    const { page, context } = await visit(path, { bay, width });
    if (path !== `${LESSON}sheet/` && path !== '/lessons/sheet/') await ready(page);
    const { violations } = await new AxeBuilder({ page }).withTags(TAGS).setLegacyMode(true).analyze();
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`),
    ).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await context.close();
  });
});
