import { describe, expect, it } from 'vitest';
import { demonstration, pageTypes } from './setup.ts';

const { visit } = demonstration();
const GUIDE = '/guides/cargo-work-light/';
const PAGE = /\/Type\s*\/Page\b(?!s)/g;

describe('ways of reading', () => {
  it.each([GUIDE, '/', '/search/'])('%s fits at 200 % zoom of a 1280 px window', async (path) => {
    const { page, context } = await visit(path, { width: 640 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(640);
    await context.close();
  });

  it('keeps the line, the choices and the focus in forced colours', async () => {
    const { page, context, address } = await visit(GUIDE, { forcedColours: true });
    const seen = await page.evaluate(() => {
      const line = (selector: string) => getComputedStyle(document.querySelector(selector)!, '::before');
      const set = getComputedStyle(document.querySelector('.v.set')!);
      return {
        page: getComputedStyle(document.body).backgroundColor,
        lead: line('.stn.lead > .rail').backgroundColor,
        edge: line('.stn[data-wire] > .rail').borderLeftColor,
        set: `${set.borderBottomWidth} ${set.borderBottomStyle}`,
      };
    });
    expect(seen.lead).not.toBe(seen.page);
    expect(seen.edge).not.toBe(seen.page);
    expect(seen.set).toBe('2px solid');

    // what is chosen has a frame that what is not chosen has not
    await page.goto(address('/search/'));
    const choices = await page.evaluate(() =>
      [':has(> input:checked)', ':not(:has(> input:checked))'].map((state) => {
        const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(document.querySelector(`.opt${state}`)!);
        return { outlineStyle, outlineWidth, outlineColor };
      }),
    );
    expect(choices[0]).toMatchObject({ outlineStyle: 'solid', outlineWidth: '3px' });
    expect(choices[0]!.outlineColor).not.toBe(seen.page);
    expect(choices[1]!.outlineStyle).toBe('none');

    // whatever the keyboard reaches says so
    const reached = new Set<string>();
    for (let n = 0; n < 12; n++) {
      await page.keyboard.press('Tab');
      const focus = await page.evaluate(() => {
        const at = document.activeElement!;
        const framed = at.matches('input') ? at.closest('.opt, .q')! : at;
        const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(framed);
        return { at: `${at.tagName} ${at.className}`, outlineStyle, outlineWidth, outlineColor };
      });
      reached.add(focus.at);
      expect(focus, focus.at).toMatchObject({ outlineStyle: 'solid', outlineWidth: '3px' });
      expect(focus.outlineColor, focus.at).not.toBe(seen.page);
    }
    expect(reached.size).toBeGreaterThan(4);
    await context.close();
  });

  it('moves nothing for a reader who asked for less motion', async () => {
    const { page, context } = await visit(GUIDE, { reducedMotion: true });
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll('*')]
        .filter((element) => {
          const { animationName, transitionDuration } = getComputedStyle(element);
          return animationName !== 'none' || transitionDuration.split(',').some((time) => Number.parseFloat(time) > 0);
        })
        .map((element) => element.className),
    );
    expect(moving).toEqual([]);
    await context.close();
  });

  it('prints black on white from the night bay, without bars and buttons', async () => {
    const { page, context } = await visit(GUIDE, { bay: 'night' });
    await page.emulateMedia({ media: 'print' });
    const seen = await page.evaluate(() => ({
      paper: getComputedStyle(document.body).backgroundColor,
      ink: getComputedStyle(document.body).color,
      shown: ['.runbar', '.top .tools', '.btn', '.stepper > button', '.foot nav'].filter((selector) =>
        [...document.querySelectorAll<HTMLElement>(selector)].some((element) => element.getClientRects().length > 0),
      ),
      lost: [...document.querySelectorAll('main :is(tr, g)[data-is~="pick"]')].filter(
        (each) => each.getClientRects().length === 0 && !each.closest('details:not([open])'),
      ).length,
      picks: document.querySelectorAll('main :is(tr, g)[data-is~="pick"]').length > 2,
      columns: new Set(
        [...document.querySelectorAll('.stn > .body > .inst:not(.noprint)')].map((each) =>
          Math.round(each.getBoundingClientRect().left),
        ),
      ).size,
    }));
    expect(seen).toEqual({
      paper: 'rgb(255, 255, 255)',
      ink: 'rgb(0, 0, 0)',
      shown: [],
      lost: 0,
      picks: true,
      columns: 1,
    });
    await context.close();
  });

  it('prints every page type on A4, and says how many sheets', async () => {
    const counts: string[] = [];
    for (const { type, path } of pageTypes().filter((each) => each.type !== 'gallery')) {
      const { page, context } = await visit(path);
      const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true });
      const text = pdf.toString('latin1');
      const sheets = [...text.matchAll(PAGE)].length;
      expect(sheets, type).toBeGreaterThan(0);
      // A4 in points
      expect(text, type).toMatch(/\/MediaBox\s*\[\s*0 0 59[45](\.\d+)? 84[12](\.\d+)?\s*\]/);
      counts.push(`${type} ${sheets}`);
      await context.close();
    }
    console.log(`sheets of A4: ${counts.join(', ')}`);
  }, 120_000);
});
