import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { allShown, demonstration, pageTypes } from './setup.ts';

const { visit } = demonstration();
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** What the other bay and a phone can change; the rest is the same markup. */
const OF_LOOKS = ['color-contrast', 'target-size', 'scrollable-region-focusable', 'button-name', 'link-name', 'region'];

async function violations(page: Page, axe: (builder: AxeBuilder) => AxeBuilder): Promise<string[]> {
  const found = await axe(new AxeBuilder({ page })).setLegacyMode(true).analyze();
  expect(found.passes.length).toBeGreaterThan(0);
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
}

describe('accessibility of every page type, on a desk by day and on a phone by night', () => {
  it.each(pageTypes())(
    '$type: no violation',
    async ({ type, path }) => {
      const { page, context } = await visit(path, { width: 1280, bay: 'day' });
      await allShown(page);
      // the gallery shows one instrument many times, so its regions share their names
      const off = type === 'gallery' ? ['landmark-unique'] : [];
      expect(await violations(page, (axe) => axe.withTags(TAGS).disableRules(off)), 'day, 1280 px').toEqual([]);
      await page.setViewportSize({ width: 390, height: 800 });
      await page.evaluate(() => (document.documentElement.dataset['bay'] = 'night'));
      expect(await violations(page, (axe) => axe.withRules(OF_LOOKS)), 'night, 390 px').toEqual([]);
      await context.close();
    },
    120_000,
  );
});
