import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { writeJobFile } from '../../components/job/file.ts';
import type { Stop } from '../../components/job/gate.ts';
import { enter, type Job, startJob } from '../../components/job/model.ts';
import { demonstration, jobsOnDevice } from './setup.ts';

const { visit } = demonstration();
const ON = '2026-11-25T09:00:00.000Z';

/** A job as long as any: steps, every fourth ticked, and readings. */
function longJob(id: string, steps: number, readings: number): Job {
  const line: Stop[] = Array.from({ length: steps }, (_, n) => ({ kind: 'step', id: `step-${n}` }));
  let job = startJob({
    id,
    guide: { id: 'cargo-work-light', number: 'NF-001', title: 'Cargo work light' },
    number: id,
    vehicle: `Meals ${id}`,
    who: 'Wenna',
    startedOn: ON,
    baseline: { issue: 1, values: {}, figures: {}, findings: [], steps: line.map((stop) => stop.id), line },
  });
  for (let n = 0; n < steps; n += 4) job = enter(job, 'steps', `step-${n}`, { v: true, at: n + 1, by: 'a' });
  for (let n = 0; n < readings; n++)
    job = enter(job, 'readings', `bench.s${n}.L1`, { v: { typed: `${n}`, value: n }, at: n + 1, by: 'a' });
  return job;
}
const ready = (page: Page) => page.waitForFunction(() => document.documentElement.dataset['jobs'] === 'ready');
async function bringBack(page: Page, text: string): Promise<string> {
  await page.evaluate(() => {
    document.querySelector('#jobs-imported')!.setAttribute('hidden', '');
  });
  await page.setInputFiles('#jobs-import', {
    name: 'jobs.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await page.waitForSelector('#jobs-imported:not([hidden])');
  return (await page.locator('#jobs-imported').textContent())!.trim();
}
/** Fifty ways a file can be damaged: cut, bytes changed, fields gone, types changed, a newer version. */
function damaged(good: string): string[] {
  const files: string[] = ['', '[]', '{}', 'not a file', good.replace('"version": 1', '"version": 2')];
  for (let n = 0; n < 15; n++) files.push(good.slice(0, Math.floor((good.length * (n + 1)) / 17)));
  const keys = [
    'id',
    'guide',
    'number',
    'vehicle',
    'who',
    'startedOn',
    'baseline',
    'values',
    'steps',
    'checks',
    'readings',
    'signatures',
    'reopened',
    'notes',
    'head',
  ];
  for (const key of keys) {
    const file = JSON.parse(good);
    delete file.jobs[0][key];
    files.push(JSON.stringify(file));
  }
  for (const key of keys) {
    const file = JSON.parse(good);
    file.jobs[0][key] = 7;
    files.push(JSON.stringify(file));
  }
  return files;
}

describe('the page of jobs', { timeout: 120_000 }, () => {
  it('brings a file back, refuses fifty damaged ones with a reason, and loses nothing', async () => {
    const { page, context } = await visit('/jobs/');
    await ready(page);
    const here = [longJob('A', 6, 3), longJob('B', 4, 2)];
    expect(await bringBack(page, writeJobFile(here, ON))).toBe('Brought back: 2 new.');
    await page.waitForSelector('#jobs-open li:nth-child(2)');
    const before = await jobsOnDevice(page);
    const files = damaged(writeJobFile([longJob('C', 3, 1)], ON));
    expect(files).toHaveLength(50);
    for (const file of files) {
      const said = await bringBack(page, file);
      expect(said).toMatch(/Nothing was changed\.$/);
      expect(said.length).toBeGreaterThan(30);
    }
    expect(await jobsOnDevice(page)).toBe(before);
    // the same job with one entry more: joined, nothing taken away
    const more = enter(here[0]!, 'notes', 'job', { v: 'Read twice', at: 9, by: 'b' });
    expect(await bringBack(page, writeJobFile([more], ON))).toBe('Brought back: 1 joined with the one here.');
    const after = await jobsOnDevice(page);
    expect(after).toContain('Read twice');
    expect(after.length).toBeGreaterThan(before.length);
    await context.close();
  });

  it('takes a new head and notes, asks before it removes, and hands all jobs over in one file', async () => {
    const { page, context } = await visit('/jobs/');
    await ready(page);
    await bringBack(page, writeJobFile([longJob('A', 6, 3), longJob('B', 4, 2)], ON));
    const row = page.locator('#jobs-open li', { hasText: 'Meals A' });
    await row.locator('summary').click();
    await row.locator('[name=vehicle]').fill('Meals 12');
    await row.locator('[name=vehicle]').press('Tab');
    await page.waitForFunction(() => document.querySelector('#jobs-open')?.textContent?.includes('Meals 12'));
    const saving = page.waitForEvent('download');
    await page.click('#jobs-export');
    expect((await saving).suggestedFilename()).toMatch(/^jobs-\d{4}-\d\d-\d\d\.json$/);
    const renamed = page.locator('#jobs-open li', { hasText: 'Meals 12' });
    await renamed.locator('[data-j=remove]').click();
    await page.getByRole('button', { name: 'Keep it' }).click();
    expect(await page.locator('#jobs-open li').count()).toBe(2);
    await renamed.locator('[data-j=remove]').click();
    await page.getByRole('button', { name: 'Remove it' }).click();
    await page.waitForFunction(() => document.querySelectorAll('#jobs-open li').length === 1);
    expect(await jobsOnDevice(page)).not.toContain('Meals 12');
    // home knows too
    await page.goto(page.url().replace('/jobs/', '/'));
    await page.waitForSelector('#jobs-here a');
    expect(await page.locator('#jobs-here').textContent()).toContain('Step 2 of 4');
    await context.close();
  });

  it('opens a job of 200 steps and 500 readings; the time is printed', async () => {
    const { page, context } = await visit('/jobs/');
    await ready(page);
    await bringBack(page, writeJobFile([longJob('long', 200, 500)], ON));
    await page.reload();
    await ready(page);
    const ms = await page.evaluate(() => performance.getEntriesByName('jobs')[0]!.duration);
    console.log(`a job of 200 steps and 500 readings is read, worked out and shown in ${ms.toFixed(0)} ms`);
    expect(await page.locator('#jobs-open').textContent()).toContain('Step 2 of 200');
    await context.close();
  });

  it.each([
    { path: '/jobs/', bay: 'night' as const, width: 390 },
    { path: '/guides/cargo-work-light/card/', bay: 'day' as const, width: 1280 },
    { path: '/guides/cargo-work-light/card/', bay: 'night' as const, width: 390 },
  ])('$path has no accessibility fault, $bay, $width px', async ({ path, bay, width }) => {
    const { page, context } = await visit(path, { bay, width });
    if (path === '/jobs/') {
      await ready(page);
      await bringBack(page, writeJobFile([longJob('A', 6, 3)], ON));
      await page.locator('#jobs-open summary').click();
    } else await page.waitForFunction(() => document.documentElement.dataset['card'] === 'ready');
    const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200)}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await context.close();
  });
});
