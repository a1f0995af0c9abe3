import { describe, expect, it } from 'vitest';
import { demonstration, pageTypes } from './setup.ts';

const { visit, address } = demonstration();

describe('the frame', () => {
  it.each(pageTypes())('$type fits 320 px without a sideways scroll', async ({ path }) => {
    const { page, context } = await visit(path, { width: 320 });
    const wide = await page.evaluate(() => ({
      page: document.documentElement.scrollWidth,
      who: [...document.querySelectorAll('body *')]
        .filter(
          (element) => element.getBoundingClientRect().right > innerWidth + 1 && !element.closest('.scrollx, .vh'),
        )
        .map((element) => `${element.tagName}.${element.getAttribute('class')}`)
        .slice(0, 5),
    }));
    expect(wide.page, wide.who.join(' ')).toBeLessThanOrEqual(320);
    await context.close();
  });

  it.each(pageTypes())('$type has one h1, one main part and headings in order', async ({ path }) => {
    const { page, context } = await visit(path, { script: false });
    const outline = await page.evaluate(() => ({
      lang: document.documentElement.lang,
      mains: document.querySelectorAll('main').length,
      description: document.querySelector('meta[name=description]')?.getAttribute('content') ?? '',
      styles: document.querySelectorAll('[style]').length,
      levels: [...document.querySelectorAll('h1,h2,h3,h4')]
        .filter((heading) => !heading.closest('[popover], template'))
        .map((heading) => Number(heading.tagName[1])),
    }));
    expect(outline.lang).not.toBe('');
    expect(outline.mains).toBe(1);
    expect(outline.description.length).toBeGreaterThan(20);
    expect(outline.styles).toBe(0);
    expect(outline.levels.filter((level) => level === 1)).toHaveLength(1);
    expect(outline.levels[0]).toBe(1);
    outline.levels.forEach((level, index) => {
      if (index > 0)
        expect(level, `heading ${index + 1} of ${outline.levels}`).toBeLessThanOrEqual(outline.levels[index - 1]! + 1);
    });
    await context.close();
  });

  it('keeps the reader’s bay, and shows it before the first paint', async () => {
    const { page, context } = await visit('/', { bay: 'day' });
    const board = (): Promise<string> => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    const day = await board();
    expect(await page.evaluate(() => document.documentElement.dataset['bay'])).toBe('day');
    await page.getByRole('button', { name: 'Night bay' }).click();
    const night = await board();
    expect(night).not.toBe(day);
    // On the next page the bay stands while the head is still being read: no flash of the other one.
    await page.addInitScript(() => {
      new MutationObserver(() => {
        if (document.body)
          (window as { bayAtBody?: string }).bayAtBody ??= document.documentElement.dataset['bay'] ?? 'none';
      }).observe(document, { childList: true, subtree: true });
    });
    await page.goto(address('/guides/'));
    expect(await page.evaluate(() => (window as { bayAtBody?: string }).bayAtBody)).toBe('night');
    expect(await board()).toBe(night);
    await expect(page.getByRole('button', { name: 'Day bay' }).isVisible()).resolves.toBe(true);
    await context.close();
  });

  it('opens the page names on a phone without a script', async () => {
    const { page, context } = await visit('/', { width: 390, script: false });
    const names = page.getByRole('navigation', { name: 'Pages', exact: true });
    expect(await names.isVisible()).toBe(false);
    await page.getByRole('button', { name: 'Menu' }).click();
    expect(await names.isVisible()).toBe(true);
    await names.getByRole('link', { name: 'Calculators' }).click();
    expect(new URL(page.url()).pathname).toBe('/calculators/');
    await context.close();
  });

  it('is walked by keyboard: skip link first, focus always to be seen', async () => {
    const { page, context } = await visit('/');
    const seen: string[] = [];
    for (let stop = 0; stop < 30; stop++) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const element = document.activeElement!;
        const style = getComputedStyle(element);
        const parent = element.closest('.opt, .q, .pin');
        const ring = parent ? getComputedStyle(parent) : style;
        const peg = element.querySelector('.ring');
        return {
          name: (element.getAttribute('aria-label') ?? element.textContent ?? '').trim().slice(0, 40),
          shown:
            style.outlineStyle !== 'none' ||
            ring.outlineStyle !== 'none' ||
            (peg !== null && getComputedStyle(peg).stroke !== 'none'),
        };
      });
      seen.push(at.name);
      expect(at.shown, `focus ring on “${at.name}”`).toBe(true);
    }
    expect(seen[0]).toBe('Skip to the page');
    expect(seen.indexOf('Guides')).toBeLessThan(seen.indexOf('Search'));
    await context.close();
  });

  it.each([320, 390])('gives every control of the guide page 44 px to touch at %i px', async (width) => {
    const { page, context } = await visit('/guides/cargo-work-light/', { width, touch: true });
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('button, a[href], input, select, summary')]
        .filter((element) => {
          const box = element.getBoundingClientRect();
          if (box.width === 0 || element.closest('[popover]:not(:popover-open), .vh, [hidden]')) return false;
          // words in a sentence are let off, as WCAG 2.5.8 does
          if (getComputedStyle(element).display === 'inline' || element.matches('p .v, li .v, .term, .say .v'))
            return false;
          const host = element.closest('label') ?? document.querySelector(`label[for='${element.id}']`) ?? element;
          const area = host.getBoundingClientRect();
          return Math.max(box.height, area.height) < 43 || Math.max(box.width, area.width) < 43;
        })
        .map((element) => `${element.tagName}.${element.className} “${element.textContent?.trim().slice(0, 30)}”`),
    );
    expect(small).toEqual([]);
    await context.close();
  });
});
