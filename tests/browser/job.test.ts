import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demonstration, jobsOnDevice } from './setup.ts';

const { visit, address } = demonstration();
const GUIDE = '/guides/cargo-work-light/';
const NOTE = 'Owner owes for the last visit';

/** Starts a job as a fitter does and waits until it is in hand. */
async function start(page: Page, number = '2611-18'): Promise<void> {
  await page.click('[data-job-start]');
  await page.fill('#job-start [name=number]', number);
  await page.fill('#job-start [name=vehicle]', 'Library 3');
  await page.fill('#job-start [name=who]', 'Wenna');
  await page.click('#job-start button');
  await page.waitForFunction(() => document.documentElement.dataset['job'] !== undefined);
}
const inHand = (page: Page) => page.waitForFunction(() => document.documentElement.dataset['job'] !== undefined);
const tick = (page: Page, step: string) => page.locator(`[data-step="${step}"] .tick input`).check();
async function set(page: Page, name: string, text: string): Promise<void> {
  const field = page.locator(`#job-${name}-in`);
  await field.fill(text);
  await field.press('Enter');
}
/** Waits until what was entered is on the device. */
async function stored(page: Page, what: string): Promise<void> {
  await expect.poll(() => jobsOnDevice(page), { timeout: 10_000 }).toContain(what);
}
async function closeFirstHold(page: Page): Promise<void> {
  for (const step of ['sentence', 'traits', 'find-doors', 'door-limit', 'runs', 'lamp-places', 'baseline'])
    await tick(page, step);
  await page.fill('[data-hold=h1] [data-reading=sleep-before]', '24,5 mA');
  await page.fill('[data-hold=h1] [data-reading=rest-volts]', '12,6');
  await page.keyboard.press('Tab');
  await page.locator('#check-traits-done').check();
  await page.locator('#check-door-limits').check();
  await page.fill('[data-hold=h1] [data-sign=checker]', 'Hedy');
  await page.click('[data-hold=h1] [data-hold-close]');
  await page.waitForSelector('[data-hold=h1][data-is=closed]');
}

describe('a job in hand', { timeout: 120_000 }, () => {
  it('says one number everywhere: sentence, gauge, diagram, parts list, printed card; and after a reload', async () => {
    const { page, context } = await visit(GUIDE);
    await start(page);
    await set(page, 'rearRunM', '5.3');
    await stored(page, '"rearRunM":{"v":5.3');
    const length = '5.3';
    const look = async () => ({
      sentence: await page.locator('[data-step="runs"] [data-props*="rearRunM"] [data-out="value"]').textContent(),
      cut: await page.locator('[data-step="cut-lamp"] [data-props*="W10.lengthM"] [data-out="value"]').textContent(),
      size: await page.locator('[data-step="cut-lamp"] [data-props*="W10.areaMm2"] [data-out="value"]').textContent(),
      drop: await page.locator('[data-step="sleeve"] [data-props*="L3.dropV"] [data-out="value"]').textContent(),
      diagram: await page.locator('#bench [data-component="CircuitDiagram"]').textContent(),
      parts: await page.locator('#battery table.cuts').textContent(),
    });
    await page.waitForFunction(() => document.querySelector('#battery table.cuts')?.textContent?.includes('5.57'));
    const now = await look();
    expect(now.sentence).toBe(length);
    expect(now.cut).toBe(length);
    // 5 % slack of the workshop on the run
    expect(now.parts).toContain('W10');
    expect(now.parts).toContain('5.57');
    expect(now.diagram).toContain(length);
    await page.reload();
    await inHand(page);
    await page.waitForFunction(() => document.querySelector('#battery table.cuts')?.textContent?.includes('5.57'));
    expect(await look()).toEqual(now);

    await page.goto(`${address(GUIDE)}card/?job=${await page.evaluate(() => document.documentElement.dataset['job'])}`);
    await page.waitForFunction(() => document.documentElement.dataset['card'] === 'ready');
    await page.emulateMedia({ media: 'print' });
    const card = {
      values: await page.locator('.pvals [data-props*="rearRunM"]').textContent(),
      parts: await page.locator('[data-sheet=shop] [data-component=PartsList]').textContent(),
      label: await page.locator('.plabels [data-props*="W10.areaMm2"] [data-out=value]').first().textContent(),
      job: await page.locator('[data-sheet=job] [data-card=number]').textContent(),
    };
    expect(card.values).toContain(length);
    expect(card.parts).toContain('5.57');
    expect(card.label).toBe(now.size);
    expect(card.job).toBe('2611-18');
    expect(await page.locator('[data-qr] path').getAttribute('d')).toMatch(/^M\d/);
    await context.close();
  });

  it('stops at a hold point, closes it, opens it when a value moves, and asks a reason to open it by hand', async () => {
    const { page, context } = await visit(GUIDE);
    await start(page);
    // out of order: refused, in words
    await page.locator('[data-step="dead"] .tick input').click({ force: true });
    expect(await page.locator('.toast').textContent()).toContain('Hold 1 is open');
    expect(await page.locator('[data-step="dead"] .tick input').isChecked()).toBe(false);
    await closeFirstHold(page);
    expect(await page.locator('[data-hold=h1] [data-hold-state]').textContent()).toMatch(
      /Wenna and Hedy · .* · 24,5 mA · 12,6 V/,
    );
    expect(await page.locator('[data-go]').textContent()).toBe('Carry on at step 8');
    expect(await page.locator('#survey').getAttribute('data-is')).toBe('done');
    expect(await page.locator('.runbar [data-is=here]').getAttribute('data-stop')).toBe('battery');

    await set(page, 'feedRunM', '8');
    await page.waitForSelector('[data-hold=h1][data-is=moved]');
    expect(await page.locator('[data-hold=h1] [data-hold-moved]').textContent()).toMatch(
      /Fuse to relay was 3\.0.m, now 8\.0.m/,
    );
    await set(page, 'feedRunM', '3');
    await page.waitForSelector('[data-hold=h1][data-is=closed]');

    await page.click('[data-hold=h1] [data-hold-reopen] summary');
    await page.click('[data-hold=h1] [data-hold-open]');
    expect(await page.locator('[data-hold=h1]').getAttribute('data-is')).toBe('closed');
    await page.fill('[data-hold=h1] [data-reopen=reason]', 'meter was on the wrong range');
    await page.click('[data-hold=h1] [data-hold-open]');
    await page.waitForSelector('[data-hold=h1]:not([data-is])');
    expect(await page.locator('[data-hold=h1] .old s').textContent()).toContain('Wenna and Hedy');

    // past it without its checks: with a name and a reason, which print
    await page.locator('[data-hold=h1] [data-hold-pass] summary').click();
    await page.fill('[data-hold=h1] [data-pass=name]', 'Idris');
    await page.fill('[data-hold=h1] [data-pass=reason]', 'van leaves at noon');
    await page.click('[data-hold=h1] [data-hold-override]');
    await page.waitForSelector('[data-hold=h1][data-is=closed]');
    await stored(page, 'van leaves at noon');
    await page.goto(`${address(GUIDE)}card/?job=${await page.evaluate(() => document.documentElement.dataset['job'])}`);
    await page.waitForFunction(() => document.documentElement.dataset['card'] === 'ready');
    expect(await page.locator('[data-sheet=job] [data-hold=h1] [data-sign=override]').textContent()).toBe(
      'Passed without its checks by Idris: van leaves at noon',
    );
    await context.close();
  });

  it('keeps what two tabs enter, and each shows the other’s', async () => {
    const { page, context } = await visit(GUIDE);
    await start(page);
    const other = await context.newPage();
    await other.goto(address(GUIDE));
    await inHand(other);
    await Promise.all([tick(page, 'sentence'), set(other, 'feedRunM', '4.2')]);
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#job-feedRunM-in')?.value === '4.2');
    await other.waitForFunction(() => document.querySelector<HTMLInputElement>('[data-step=sentence] input')?.checked);
    await tick(other, 'traits');
    await set(page, 'lampRunM', '6');
    await other.waitForFunction(() => document.querySelector<HTMLInputElement>('#job-lampRunM-in')?.value === '6.0');
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('[data-step=traits] input')?.checked);
    await page.reload();
    await inHand(page);
    expect(await page.inputValue('#job-feedRunM-in')).toBe('4.2');
    expect(await page.locator('.tick input:checked').count()).toBe(2);
    await context.close();
  });

  it('judges bench readings and names what would explain one that lies outside', async () => {
    const { page, context } = await visit(GUIDE);
    await start(page);
    const read = async (key: string, text: string) => {
      await page.fill(`[data-read="${key}"]`, text);
      await page.press(`[data-read="${key}"]`, 'Tab');
    };
    const says = (key: string) => page.locator(`tr:has([data-read="${key}"]) [data-out="flagText"]`).textContent();
    await read('master+side+rear.L1', '13,9');
    expect(await says('master+side+rear.L1')).toBe('In limits');
    await read('off.standby', '0.002 A');
    expect(await says('off.standby')).toBe('In limits');
    await read('master+side.L1', 'twelve');
    expect(await page.locator('tr:has([data-read="master+side.L1"]) [data-read-bad]').textContent()).toContain(
      'not a number',
    );
    await read('master+side.L1', '0');
    await page.waitForSelector('.causes:not([hidden])');
    expect(await says('master+side.L1')).toBe('Outside');
    // the lamp lights with both doors open and not with the side door alone: its diode or its wire
    expect(await page.locator('.causes').textContent()).toMatch(/These readings fit: .*(D1|W7)/);
    expect(await page.locator('.causes [data-out=next]').textContent()).toMatch(/^Measure next: /);
    await stored(page, '13,9');
    await page.reload();
    await inHand(page);
    await page.waitForSelector('.causes:not([hidden])');
    expect(await page.inputValue('[data-read="master+side+rear.L1"]')).toBe('13,9');
    await context.close();
  });

  it('hands the customer nothing of the workshop’s own', async () => {
    const { page, context } = await visit(GUIDE);
    await start(page);
    await page.fill('[data-job-notes]', NOTE);
    await page.press('[data-job-notes]', 'Tab');
    await closeFirstHold(page);
    await stored(page, NOTE);
    await page.goto(`${address(GUIDE)}card/?job=${await page.evaluate(() => document.documentElement.dataset['job'])}`);
    await page.waitForFunction(() => document.documentElement.dataset['card'] === 'ready');
    const sheet = (await page.locator('[data-sheet=customer]').textContent())!;
    expect(sheet).toContain('Library 3');
    expect(sheet).toContain('Load light fuse');
    for (const own of [NOTE, 'Wenna', 'Hedy', '24,5', 'Hold', 'Printed']) expect(sheet).not.toContain(own);
    await context.close();
  });

  it('keeps what was entered in the moment before the page is left', async () => {
    const { page, context } = await visit(GUIDE);
    await start(page);
    await set(page, 'feedRunM', '4');
    await page.click('[data-job-notes]');
    await page.keyboard.type('Second battery under the seat');
    await page.goto('about:blank');
    await page.goto(address(GUIDE));
    await inHand(page);
    expect(await page.inputValue('#job-feedRunM-in')).toBe('4.0');
    expect(await page.inputValue('[data-job-notes]')).toBe('Second battery under the seat');
    await stored(page, '"feedRunM":{"v":4');
    expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('unsaved')))).toEqual([]);
    await context.close();
  });

  it('takes a link with values to a job only when told to', async () => {
    const { page, context } = await visit(GUIDE);
    await start(page);
    await set(page, 'feedRunM', '4');
    await stored(page, '"feedRunM":{"v":4');
    await page.goto('about:blank');
    await page.goto(`${address(GUIDE)}#feedRunM=7`);
    await inHand(page);
    await page.waitForSelector('.toast button');
    expect(await page.inputValue('#job-feedRunM-in')).toBe('4.0');
    expect(await page.locator('.toast').textContent()).toContain('The link brings other values: Fuse to relay 7.0');
    await page.getByRole('button', { name: 'Use them in the job' }).click();
    await stored(page, '"feedRunM":{"v":7');
    await context.close();
  });

  it('goes on in words where storage is closed', async () => {
    const { page, context } = await visit('/terms/');
    await context.addInitScript(() => {
      Object.defineProperty(window, 'indexedDB', {
        value: {
          open: () => {
            throw new DOMException('closed', 'SecurityError');
          },
        },
      });
    });
    await page.goto(address(GUIDE));
    await start(page);
    await tick(page, 'sentence');
    expect(await page.locator('[data-job-trouble]').textContent()).toContain('does not let the page keep jobs');
    expect(await page.locator('[data-step=sentence] .tick input').isChecked()).toBe(true);
    const saving = page.waitForEvent('download');
    await page.locator('[data-job-export]').click();
    expect((await saving).suggestedFilename()).toBe('job-2611-18.json');
    await context.close();
  });

  it.each([
    { bay: 'day' as const, width: 1280 },
    { bay: 'night' as const, width: 390 },
  ])('has no accessibility fault with a job in hand, $bay, $width px', async ({ bay, width }) => {
    const { page, context } = await visit(GUIDE, { bay, width });
    await start(page);
    await closeFirstHold(page);
    const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await context.close();
  });
});
