import { describe, expect, it } from 'vitest';
import { demonstration, pagesOf } from './setup.ts';

const { visit } = demonstration();
const SHEETS = ['job', 'shop', 'bench', 'customer', 'labels'];
/** A4 within its margins, at 96 px an inch: 210 less 24 mm wide, 297 less 25 mm high. */
const PAGE = { width: 703, height: 1028 };
/** Sheets that may take so many sides; the customer's takes one. */
const MOST_SIDES: Readonly<Record<string, number>> = { job: 2, shop: 3, bench: 2, customer: 1, labels: 1 };

const pagesIn = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

describe('cards on paper', { timeout: 120_000 }, () => {
  it('fit their sides for every guide, nothing cut off, without a script too', async () => {
    const { page, context } = await visit('/terms/', { ...PAGE, script: false });
    await page.emulateMedia({ media: 'print' });
    const guides = pagesOf('guides');
    expect(guides.length).toBeGreaterThan(10);
    const wide: string[] = [];
    for (const path of guides) {
      await page.goto(new URL(`${path}card/`, page.url()).href);
      const over = await page
        .locator('.sheet')
        .evaluateAll(
          (sheets, width) =>
            sheets.flatMap((sheet) =>
              [...sheet.querySelectorAll<HTMLElement>('*')].some(
                (each) => each.getBoundingClientRect().right > width + 1 && !each.closest('.vh'),
              )
                ? [sheet.getAttribute('data-sheet')]
                : [],
            ),
          PAGE.width,
        );
      for (const sheet of over) wide.push(`${path}: ${sheet}`);
    }
    expect(wide).toEqual([]);
    await context.close();
  });

  it.each(['cargo-work-light', 'parasitic-drain', 'side-work-lamps'])(
    '%s prints each sheet on its sides and no blank one',
    async (guide) => {
      const { page, context } = await visit(`/guides/${guide}/card/`, { script: false });
      const has = await page
        .locator('.sheet')
        .evaluateAll((sheets) => sheets.map((each) => each.getAttribute('data-sheet')!));
      let sum = 0;
      for (const sheet of has) {
        for (const other of SHEETS.filter((each) => has.includes(each)))
          await page.locator(`#on-${other}`).setChecked(other === sheet);
        const sides = pagesIn(await page.pdf({ preferCSSPageSize: true }));
        expect(sides, `${guide}, ${sheet}`).toBeGreaterThan(0);
        expect(sides, `${guide}, ${sheet}`).toBeLessThanOrEqual(MOST_SIDES[sheet]!);
        sum += sides;
      }
      for (const sheet of has) await page.locator(`#on-${sheet}`).setChecked(true);
      expect(pagesIn(await page.pdf({ preferCSSPageSize: true }))).toBe(sum);
      await context.close();
    },
  );

  it('is black and white in print, in the night bay too, with the code that opens the guide', async () => {
    const { page, context } = await visit('/guides/cargo-work-light/card/', { bay: 'night' });
    await page.emulateMedia({ media: 'print' });
    await page.locator('[data-qr] path').waitFor();
    expect((await page.locator('[data-qr]').boundingBox())?.width).toBeGreaterThanOrEqual(76); // 2 cm
    const colours = await page.locator('.sheet').evaluateAll((sheets) => {
      const found = new Set<string>();
      for (const sheet of sheets)
        for (const each of [sheet, ...sheet.querySelectorAll('*')]) {
          const { color, backgroundColor, borderTopColor, borderTopWidth, fill, stroke } = getComputedStyle(each);
          const used = [color, backgroundColor, ...(borderTopWidth === '0px' ? [] : [borderTopColor])];
          if (each instanceof SVGElement) used.push(fill, stroke);
          for (const colour of used) {
            const parts = /^rgba?\((\d+), (\d+), (\d+)(?:, ([\d.]+))?\)/.exec(colour);
            if (!parts || parts[4] === '0') continue;
            if (new Set(parts.slice(1, 4)).size > 1)
              found.add(`${each.tagName}.${each.getAttribute('class')}: ${colour}`);
          }
        }
      return [...found];
    });
    expect(colours).toEqual([]);
    await context.close();
  });
});
