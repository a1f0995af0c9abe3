import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, it } from 'vitest';
import { demonstration, pageTypes } from './setup.ts';

const { visit } = demonstration();
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

describe('accessibility of every page type', () => {
  const cases = pageTypes().flatMap(({ type, path }) => [
    { type, path, bay: 'day' as const, width: 1280 },
    { type, path, bay: 'night' as const, width: 390 },
  ]);
  it.each(cases)('$type, $bay, $width px: no violation', async ({ type, path, bay, width }) => {
    const { page, context } = await visit(path, { bay, width });
    const { violations, passes } = await new AxeBuilder({ page })
      .withTags(TAGS)
      // the gallery shows one instrument many times, so its regions share their names
      .disableRules(type === 'gallery' ? ['landmark-unique'] : [])
      .setLegacyMode(true)
      .analyze();
    const told = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
    expect(told).toEqual([]);
    expect(passes.length).toBeGreaterThan(10);
    await context.close();
  });
});
