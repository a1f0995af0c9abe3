import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demonstration, pagesOf } from './setup.ts';

const { visit } = demonstration();
const GUIDE = '/guides/cargo-work-light/';
const LOAD = '/calculators/load-current/';
const WIRE = '/calculators/wire-size/';

const alive = (page: Page) => page.waitForFunction(() => 'live' in document.documentElement.dataset);
/** The first touch of a page, with nothing changed. */
const wake = async (page: Page): Promise<void> => {
  await page.evaluate(() => window.dispatchEvent(new Event('pointerdown')));
  await alive(page);
};
const type = async (page: Page, field: string, text: string): Promise<void> => {
  await page.locator(field).fill(text);
  await page.locator(field).press('Tab');
  await alive(page);
};
const read = (page: Page, field: string) =>
  page.locator(`[data-calculator] [data-out="${field}"]`).first().textContent();
/** Room between the run bar, or the top of the screen, and a station [px], once the page stands still. */
const roomAbove = (page: Page, station: string) =>
  page.evaluate(async (id) => {
    for (let frame = 0; frame < 20; frame++) await new Promise((done) => requestAnimationFrame(done));
    const bar = document.querySelector('.runbar')!.getBoundingClientRect();
    return document.getElementById(id)!.getBoundingClientRect().top - (bar.top === 0 ? bar.bottom : 0);
  }, station);
const hash = (page: Page) => decodeURIComponent(new URL(page.url()).hash);

describe('a page as built', () => {
  it('says what the browser works out, to the last character, on every page that computes', {
    timeout: 240_000,
  }, async () => {
    const { page, context, address } = await visit('/');
    for (const path of [...pagesOf('guides'), ...pagesOf('calculators')]) {
      await page.goto(address(path));
      const changes = await page.evaluate(async () => {
        const main = document.querySelector('main')!;
        // what is drawn only where a script is: fields, and what a job in hand adds
        const text = () =>
          [
            ...main.querySelectorAll(
              '[data-component] :is([data-out], [data-state], [data-attr]), [data-component][data-state]',
            ),
          ]
            .filter((each) => !each.closest('template'))
            .map((each) => {
              const bound = (each.getAttribute('data-attr') ?? '')
                .split(' ')
                .map((pair) => pair.slice(0, Math.max(0, pair.lastIndexOf(':'))));
              const attributes = bound
                .filter((name) => name !== '')
                .map((name) => `${name}=${each.getAttribute(name)}`);
              return `${each.getAttribute('data-out') ?? each.getAttribute('data-state')}: ${each.hasAttribute('data-out') ? each.textContent : ''} ${each.getAttribute('data-is') ?? ''} ${attributes.join(' ')}`;
            });
        const before = text();
        window.dispatchEvent(new Event('pointerdown'));
        for (let wait = 0; wait < 400 && !('live' in document.documentElement.dataset); wait++) {
          await new Promise((done) => setTimeout(done, 25));
        }
        const after = text();
        return before.flatMap((was, at) => (was === after[at] ? [] : [`${was} -> ${after[at]}`])).slice(0, 5);
      });
      expect(changes, path).toEqual([]);
    }
    await context.close();
  });

  it('loads no more than its first script until it is touched', async () => {
    const { page, context, requests } = await visit(GUIDE);
    await page.waitForLoadState('load');
    const heavy = () => requests.filter((path) => /\/(study|work)\.[^/]*\.js$/.test(path)).length;
    expect(heavy()).toBe(0);
    await wake(page);
    expect(heavy()).toBe(2);
    await context.close();
  });

  it('keeps its entries shut and its numbers right without a script', async () => {
    const { page, context } = await visit(LOAD, { script: false });
    expect(await page.locator('#in-powerW').isDisabled()).toBe(true);
    expect(await read(page, 'answer')).toBe('2.18');
    expect(await page.locator('noscript').first().textContent()).toMatch(/worked example/);
    await context.close();
  });
});

describe('an entry', () => {
  it('counts although it is typed while the page still loads', async () => {
    const { page, context } = await visit(LOAD);
    await type(page, '#in-powerW', '60');
    await page.waitForFunction(() => document.querySelector('[data-out="answer"]')?.textContent === '5.45');
    await context.close();
  });

  it('stays as typed when the page becomes ready in the middle of it', async () => {
    const { page, context } = await visit(LOAD);
    let release = (): void => {};
    const held = new Promise<void>((go) => (release = go));
    await page.route(/\/work\.[^/]*\.js$/, async (route) => {
      await held;
      await route.continue();
    });
    await page.locator('#in-powerW').click();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('6');
    release();
    await alive(page);
    await page.keyboard.type('0');
    expect(await page.inputValue('#in-powerW')).toBe('60');
    await page.keyboard.press('Tab');
    await page.waitForFunction(() => document.querySelector('[data-out="answer"]')?.textContent === '5.45');
    await context.close();
  });

  it('may be pressed before the page is ready: the press is not lost', async () => {
    const { page, context } = await visit(LOAD);
    await page.locator('[data-stepper="powerW:1"]').click();
    await alive(page);
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#in-powerW')?.value === '25');
    await context.close();
  });

  it('takes a comma, units, feet and AWG, and shows them as the reader chose', async () => {
    const { page, context } = await visit(WIRE);
    await type(page, '#in-designA', '2500 mA');
    expect(await page.locator('#in-designA').inputValue()).toBe('2.5');
    await type(page, '#in-oneWayM', '8 ft');
    expect(await page.locator('#in-oneWayM').inputValue()).toBe('2.44');
    await type(page, '#in-oneWayM', '3,5');
    expect(await page.locator('#in-oneWayM').inputValue()).toBe('3.5');
    expect(await page.locator('[data-calculator] .work').first().textContent()).toContain('3.5\u00a0m');
    await context.close();
  });

  it('is refused beside its field, and nothing uses it', async () => {
    const { page, context } = await visit(LOAD);
    await type(page, '#in-powerW', '60');
    const answer = await read(page, 'answer');
    await type(page, '#in-powerW', '9000');
    const field = page.locator('#in-powerW');
    const message = page.locator('#in-powerW-error');
    await message.waitFor();
    expect(await message.textContent()).toBe(
      'Power must be 0.1 to 3000 W. Add up the lamp labels; do not type amps here. Still using 60\u00a0W.',
    );
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await field.getAttribute('aria-describedby')).toContain('in-powerW-error');
    expect(await field.inputValue()).toBe('9000');
    expect(await read(page, 'answer')).toBe(answer);
    expect(await page.locator('.inst .held').first().isVisible()).toBe(true);
    expect(hash(page)).not.toContain('9000');
    await type(page, '#in-powerW', 'six');
    expect(await message.textContent()).toMatch(/^"six" is not a number\./);
    await page.locator('[data-stepper="powerW:1"]').click();
    expect(await message.isVisible()).toBe(false);
    expect(await field.inputValue()).toBe('61');
    expect(await field.getAttribute('aria-invalid')).toBeNull();
    await context.close();
  });

  it('that another entry made wrong is marked, and the answer stands on the last good set', async () => {
    const { page, context } = await visit('/calculators/strip-current/');
    await wake(page);
    const answer = await read(page, 'answer');
    await page.locator('#in-labelV').selectOption('24');
    await page.locator('#in-stringV-error').waitFor();
    expect(await page.locator('#in-systemV-error').isVisible()).toBe(true);
    expect(await read(page, 'answer')).toBe(answer);
    await type(page, '#in-stringV', '19');
    await type(page, '#in-systemV', '28.8');
    await page.waitForFunction((was) => document.querySelector('[data-out="answer"]')?.textContent !== was, answer);
    expect(await page.locator('.inst .held').first().isVisible()).toBe(false);
    await context.close();
  });

  it('goes back to its default with one press, and the focus to its field', async () => {
    const { page, context } = await visit(LOAD);
    await type(page, '#in-powerW', '60');
    await page.locator('[data-reset="powerW"]').click();
    expect(await page.locator('#in-powerW').inputValue()).toBe('24');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('in-powerW');
    await page.waitForFunction(() => location.hash === '');
    await context.close();
  });
});

describe('a change', () => {
  it('is said once, in words, after the hand has rested', async () => {
    const { page, context } = await visit(LOAD);
    await wake(page);
    await page.evaluate(() => {
      const said: string[] = [];
      (window as never as { said: string[] }).said = said;
      const region = [...document.querySelectorAll('[role="status"]')].at(-1)!;
      new MutationObserver(() => region.textContent && said.push(region.textContent)).observe(region, {
        childList: true,
      });
    });
    for (let press = 0; press < 5; press++) await page.locator('[data-stepper="powerW:1"]').click();
    await page.waitForFunction(() => (window as never as { said: string[] }).said.length > 0);
    expect(await page.evaluate(() => (window as never as { said: string[] }).said)).toEqual([
      'Design current: 2.64 amps, was 2.18 amps.',
    ]);
    await context.close();
  });

  it('strikes the old number beside the new for four seconds', async () => {
    const { page, context } = await visit(GUIDE);
    await wake(page);
    const wire = page.locator('.v[data-props*="W2.lengthM"]').first();
    await wire.scrollIntoViewIfNeeded();
    const was = await wire.locator('[data-out="value"]').textContent();
    await page.evaluate(async () => {
      const field = document.querySelector<HTMLInputElement>('#job-feedRunM-in')!;
      field.value = '9';
      field.dispatchEvent(new Event('change'));
      // marks come with the frame after the numbers
      for (let frame = 0; frame < 2; frame++) await new Promise((done) => requestAnimationFrame(done));
    });
    expect(await wire.locator('s').textContent()).toBe(was);
    expect(await wire.getAttribute('class')).toContain('was');
    await page.waitForTimeout(4600);
    expect(await wire.locator('s').textContent()).toBe('');
    expect(await wire.getAttribute('class')).not.toContain('was');
    await context.close();
  });

  it('opens the drawer at the number that was tapped', async () => {
    const { page, context } = await visit(GUIDE, { width: 390, touch: true });
    await page.locator('main a.v.set[data-open="feedRunM"]').first().click();
    await page.waitForFunction(() => document.querySelector('[data-drawer]')?.matches(':popover-open') === true);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('drawer-feedRunM-in');
    await context.close();
  });
});

describe('a change that was foreseen', () => {
  const numbers = (page: Page) =>
    page.evaluate(() =>
      [...document.querySelectorAll('main [data-out]')].map((each) => {
        const struck = each.querySelector(':scope > s')?.textContent?.length ?? 0;
        return `${each.getAttribute('data-out')}: ${(each.textContent ?? '').slice(struck)}`;
      }),
    );

  const openedAnew = async (page: Page) => {
    const there = page.url();
    await page.goto('about:blank');
    await page.goto(there);
    await alive(page);
    return numbers(page);
  };

  it('says the same as a page opened with that value: a step', async () => {
    const { page, context } = await visit(GUIDE);
    await wake(page);
    const up = page.locator('.inst [data-stepper="feedRunM:1"]').first();
    await up.click();
    await page.waitForTimeout(1500); // idle: the next step is worked out
    await up.click();
    await page.waitForFunction(() => location.hash.includes('feedRunM=3.2'));
    const stepped = await numbers(page);
    expect(await openedAnew(page)).toEqual(stepped);
    await context.close();
  });

  it('says the same as a page opened with that value: a number typed key by key', async () => {
    const { page, context } = await visit(GUIDE);
    await wake(page);
    const field = page.locator('.inst [data-in="feedRunM"]').first();
    await field.focus();
    await page.keyboard.press('ControlOrMeta+a');
    for (const key of '4.7') {
      await page.waitForTimeout(500); // idle: the next keys are worked out
      await page.keyboard.type(key);
    }
    await page.waitForFunction(() => location.hash.includes('feedRunM=4.7'));
    const typed = await numbers(page);
    expect(await openedAnew(page)).toEqual(typed);
    await context.close();
  });
});

describe('the answer of a calculator', () => {
  it('stays in sight on a phone while its numbers are put in, and off paper', async () => {
    const { page, context } = await visit(WIRE, { width: 390 });
    const says = page.locator('.at-hand > .says');
    const size = says.locator('[data-out="answer"]');
    expect(await size.textContent()).toBe('1.5');
    await type(page, '#in-oneWayM', '16');
    await page.waitForFunction(() => document.querySelector('.says [data-out="answer"]')?.textContent === '2.5');
    const foot = await says.evaluate((each) => innerHeight - each.getBoundingClientRect().bottom);
    expect(Math.abs(foot)).toBeLessThanOrEqual(1);
    // what is refused leaves the last good answer, and it says so
    await page.locator('#in-oneWayM').fill('a lot');
    await page.locator('#in-oneWayM').press('Tab');
    await says.locator('.held').waitFor();
    expect(await size.textContent()).toBe('2.5');
    await type(page, '#in-oneWayM', '16');
    await says.locator('.held').waitFor({ state: 'hidden' });
    // no field that takes the focus lies under it
    for (const field of await page.locator('.at-hand :is(input, select)').all()) {
      await field.focus();
      const [place, strip] = await Promise.all([field.boundingBox(), says.boundingBox()]);
      expect(place!.y + place!.height).toBeLessThanOrEqual(strip!.y + 1);
    }
    await page.emulateMedia({ media: 'print' });
    expect(await says.isVisible()).toBe(false);
    await context.close();
  });

  it('stands beside them on a desk, once', async () => {
    const { page, context } = await visit(WIRE, { width: 1440 });
    expect(await page.locator('.at-hand > .says').isVisible()).toBe(false);
    await context.close();
  });
});

describe('a link', () => {
  it('carries the whole state, and wins over what the device keeps', async () => {
    const { page, context, address } = await visit(LOAD);
    await type(page, '#in-powerW', '60');
    await type(page, '#in-minV', '10');
    await page.waitForFunction(() => location.hash.includes('minV=10'));
    await page.goto(address(`/`));
    await page.goto(address(LOAD));
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#in-minV')?.value === '10.0');
    await page.goto(address('/'));
    await page.goto(address(`${LOAD}#powerW=48`));
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#in-powerW')?.value === '48');
    // all that the link does not name is the page's default, not the device's
    expect(await page.locator('#in-minV').inputValue()).toBe('11.0');
    // opening it wrote nothing
    await page.goto(address('/'));
    await page.goto(address(LOAD));
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#in-powerW')?.value === '60');
    await context.close();
  });

  it('with junk in it leaves the page as built', async () => {
    const { page, context } = await visit(`${LOAD}#powerW=1e999&minV=%E0%A4%A&ratedV=-3&model=magic&__proto__=1`);
    await alive(page);
    expect(await read(page, 'answer')).toBe('2.18');
    expect(await page.locator('#in-model').inputValue()).toBe('constant power');
    await context.close();
  });

  it('to a heading still leads there', async () => {
    const { page, context } = await visit(`${GUIDE}#cable`);
    expect(new URL(page.url()).hash).toBe('#cable');
    await wake(page);
    expect(new URL(page.url()).hash).toBe('#cable');
    await context.close();
  });

  it('to a station leads to just below the run bar, past pictures that are not there yet', async () => {
    for (const width of [390, 1440]) {
      const { page, context } = await visit(`${GUIDE}#bench`, { width });
      await page.evaluate(() => document.fonts.ready.then(() => undefined));
      const room = await roomAbove(page, 'bench');
      expect(room, `${width} px`).toBeGreaterThanOrEqual(0);
      expect(room, `${width} px`).toBeLessThan(48);
      await context.close();
    }
  });
});

describe('parts of a page that are out of sight', () => {
  it('are not laid out, and are right and in their place when the reader comes there', async () => {
    for (const width of [390, 1440]) {
      const { page, context } = await visit(GUIDE, { width });
      const height = () => page.evaluate(() => document.documentElement.scrollHeight);
      const built = await height();
      await wake(page);
      await page.waitForFunction(() => document.querySelectorAll('main .apart').length > 8);
      // a picture or a number may take a pixel more or less
      expect(Math.abs((await height()) - built), `${width} px`).toBeLessThanOrEqual(2);
      const skipped = () =>
        page.evaluate(
          () =>
            [...document.querySelectorAll('.apart > :first-child')].filter(
              (each) => !each.checkVisibility({ contentVisibilityAuto: true }),
            ).length,
        );
      expect(await skipped(), `${width} px`).toBeGreaterThan(5);
      // a step changes numbers there too, and no link misses its aim
      await page.locator('.inst [data-stepper="feedRunM:1"]').first().click();
      await page.evaluate(() => {
        location.hash = '#bench';
      });
      const room = await roomAbove(page, 'bench');
      expect(room, `${width} px`).toBeGreaterThanOrEqual(0);
      expect(room, `${width} px`).toBeLessThan(48);
      // on paper all of it stands
      await page.emulateMedia({ media: 'print' });
      const kept = await page.evaluate(() =>
        [...document.querySelectorAll('.apart')].map((each) => getComputedStyle(each).contentVisibility),
      );
      expect(new Set(kept), `${width} px, print`).toEqual(new Set(['visible']));
      await context.close();
    }
  });

  it('are measured anew at another width', async () => {
    const { page, context } = await visit(GUIDE, { width: 1440 });
    await wake(page);
    await page.waitForFunction(() => document.querySelectorAll('main .apart').length > 8);
    const before = await page.evaluate(() =>
      document.querySelector<HTMLElement>('.apart')?.style.getPropertyValue('contain-intrinsic-block-size'),
    );
    await page.setViewportSize({ width: 500, height: 800 });
    await page.waitForFunction((was) => {
      const part = document.querySelector<HTMLElement>('.apart');
      return part !== null && part.style.getPropertyValue('contain-intrinsic-block-size') !== was;
    }, before);
    const live = await page.evaluate(() => document.documentElement.scrollHeight);
    const plain = await page.evaluate(() => {
      for (const part of document.querySelectorAll('.apart')) part.classList.remove('apart');
      return document.documentElement.scrollHeight;
    });
    expect(Math.abs(live - plain)).toBeLessThanOrEqual(2);
    await context.close();
  });
});

describe("the reader's units", () => {
  it('change every number, hold on other pages, and change no value', async () => {
    const { page, context, address } = await visit(GUIDE);
    await wake(page);
    const wire = page.locator('.v[data-props*="W2.areaMm2"]').first();
    const metric = (await wire.textContent())!;
    expect(metric).toContain('mm²');
    await page.locator('[data-units="wire"][value="awg"]').first().dispatchEvent('click');
    await page.locator('[data-units="length"][value="ft"]').first().dispatchEvent('click');
    await page.waitForFunction(() =>
      document.querySelector('.v[data-props*="W2.areaMm2"]')?.textContent?.includes('AWG'),
    );
    expect(await page.locator('#job-feedRunM .u').first().textContent()).toContain('ft');
    expect(hash(page)).toBe('');
    await page.goto(address(WIRE));
    await page.waitForFunction(() => document.querySelector('[data-out="sizeUnit"]')?.textContent === 'AWG');
    await page.goto(address(GUIDE));
    await page.waitForFunction(() =>
      document.querySelector('.v[data-props*="W2.areaMm2"]')?.textContent?.includes('AWG'),
    );
    await page.locator('[data-units="wire"][value="mm2"]').first().dispatchEvent('click');
    await page.locator('[data-units="length"][value="m"]').first().dispatchEvent('click');
    await page.waitForFunction(
      (was) => document.querySelector('.v[data-props*="W2.areaMm2"]')?.textContent?.endsWith(was),
      metric.replace(/^.*?(?=mm²)/, ''),
    );
    await context.close();
  });
});

describe('hands in gloves', () => {
  it.each([390, 1280])('find steppers of 56 px and nothing under 44 px at %i px', async (width) => {
    const { page, context } = await visit(LOAD, { width, touch: width < 700 });
    await wake(page);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('[data-stepper], [data-local], [data-calculator] summary')]
        .map((each) => ({
          of: each.id || each.dataset['stepper'] || each.textContent,
          ...each.getBoundingClientRect().toJSON(),
        }))
        .filter(({ of, width: wide, height }) => height < (String(of).includes(':') ? 56 : 44) || wide < 44)
        .map(({ of, width: wide, height }) => `${of}: ${wide} × ${height}`),
    );
    expect(small).toEqual([]);
    await context.close();
  });
});
