import type { CDPSession, Locator, Page } from 'playwright-core';
import { openSite, phone, type Site, slowProcessor } from './browser.ts';
import { median, type Part } from './part.ts';

const SLOWED = 4;
const CHANGES = 20;

/** What a reader feels on the main guide: a changed value, a press, the first paint; and the proof by itself. */
export async function benchLive(dir: string, path: string): Promise<Part> {
  const part: Part = { lines: [], figures: {} };
  const site = await openSite(dir);
  try {
    await changes(site, path, part);
    await typing(site, path, part);
    await presses(site, path, part);
    await proof(site, part);
    for (const network of NETWORKS) await firstPaint(site, path, network, part);
  } finally {
    await site.close();
  }
  return part;
}

async function opened(
  site: Site,
  path: string,
): Promise<{ page: Page; session: CDPSession; close: () => Promise<void> }> {
  const tab = await phone(site);
  await tab.page.goto(site.address(path));
  await tab.page.waitForLoadState('networkidle');
  await tab.page.evaluate(() => window.dispatchEvent(new Event('pointerdown')));
  await tab.page.waitForFunction(() => 'live' in document.documentElement.dataset);
  return tab;
}

/** Time of a page being read before its first number is changed, and between two presses of one hand. */
const READ_MS = 4000;
const PRESS_MS = 200;
/** From the tap on a field to the first key. */
const REACH_MS = 500;
/** What is typed, key by key: lengths as a tape gives them. */
const TYPED = ['3.4', '5.7', '2.3', '6.1', '4.9'];

/**
 * From the change of a job value until every number of the page says the new one; style and paint come after. Steps are
 * pressed as by a hand, some on one number, then on the next; what a step gives is mostly foreseen. A value put in at once,
 * as from a clipboard, never is.
 */
async function changes(site: Site, path: string, part: Part): Promise<void> {
  for (const way of ['stepped', 'pasted'] as const) {
    const { page, session, close } = await opened(site, path);
    await slowProcessor(session, SLOWED);
    const { took, moved } = await page.evaluate(
      async ({ way, count, read, press }) => {
        const steppers = [...document.querySelectorAll<HTMLButtonElement>('.inst [data-stepper$=":1"]')];
        const fields = [...document.querySelectorAll<HTMLInputElement>('[data-in$="RunM"]')];
        // the struck-through former value that fades beside a new one is no number of the page
        const shown = () =>
          [...document.querySelectorAll('[data-out]')].map((each) => {
            const text = each.textContent ?? '';
            return text.slice(each.querySelector(':scope > s')?.textContent?.length ?? 0);
          });
        const rest = (ms: number) => new Promise((done) => setTimeout(done, ms));
        const took: number[] = [];
        let moved = 0;
        await rest(read);
        for (let n = 0; n < count; n++) {
          const before = shown();
          const field = fields[n % fields.length]!;
          if (way === 'pasted') field.value = (Number(field.value) + 0.3).toFixed(1);
          const began = performance.now();
          // the way a press goes: the value is set, everything that follows runs, what was put off to the end of the task too
          if (way === 'pasted') field.dispatchEvent(new Event('change'));
          else steppers[Math.floor(n / 4) % steppers.length]!.click();
          await Promise.resolve();
          await Promise.resolve();
          took.push(performance.now() - began);
          const after = shown();
          moved += after.filter((text, at) => text !== before[at]).length;
          await rest(press);
          const late = shown();
          moved += late.filter((text, at) => text !== after[at]).length * 1e6; // nothing may follow later
        }
        return { took, moved };
      },
      { way, count: CHANGES, read: READ_MS, press: PRESS_MS },
    );
    await close();
    tell(part, way, took.slice(way === 'pasted' ? 5 : 0), took[0]!);
    if (moved >= 1e6) part.lines.push('  SOME NUMBERS CAME LATER');
    else part.lines.push(`  ${moved} numbers moved in ${CHANGES} changes, none later`);
  }
}

function tell({ lines, figures }: Part, way: string, took: readonly number[], first: number): void {
  figures[`${way}Ms`] = median(took);
  figures[`${way}MostMs`] = Math.max(...took);
  lines.push(
    `a job value ${way}, processor ${SLOWED} times slower: every number new after ${median(took).toFixed(1)} ms (median of ${took.length}; slowest ${Math.max(...took).toFixed(1)}, first ${first.toFixed(1)})`,
  );
}

/**
 * The same for numbers typed key by key, in the browser's own events. The page draws the letter first and reads the field
 * in a turn of its own: that turn is timed, where it moved numbers.
 */
async function typing(site: Site, path: string, part: Part): Promise<void> {
  const { page, session, close } = await opened(site, path);
  await page.evaluate(() => {
    const seen = window as { turns?: { ms: number; moved: boolean }[] };
    const turns: { ms: number; moved: boolean }[] = [];
    seen.turns = turns;
    const later = window.setTimeout.bind(window);
    const count = () => document.querySelector('[data-moved]')?.textContent ?? '';
    let numbers = 0;
    new MutationObserver((changes) => {
      numbers += changes.length;
    }).observe(document.querySelector('main')!, { subtree: true, characterData: true, childList: true });
    const timed = (work: () => void): void => {
      const before = numbers;
      const began = performance.now();
      work();
      // what the change put off to the end of its turn comes before this
      queueMicrotask(() =>
        queueMicrotask(() => turns.push({ ms: performance.now() - began, moved: numbers > before && count() !== '' })),
      );
    };
    window.setTimeout = ((work: () => void, ms?: number) =>
      ms === undefined ? later(() => timed(work)) : later(work, ms)) as typeof window.setTimeout;
  });
  await slowProcessor(session, SLOWED);
  await page.waitForTimeout(READ_MS);
  const fields = page.locator('.inst [data-in$="RunM"]');
  const number = await fields.count();
  for (let n = 0; n < CHANGES; n++) {
    await fields.nth(n % number).focus();
    await page.keyboard.press('ControlOrMeta+a');
    await page.waitForTimeout(REACH_MS);
    for (const key of TYPED[n % TYPED.length]!) {
      await page.keyboard.type(key);
      await page.waitForTimeout(PRESS_MS);
    }
  }
  const turns = await page.evaluate(() => (window as { turns?: { ms: number; moved: boolean }[] }).turns!);
  await close();
  const took = turns.filter(({ moved }) => moved).map(({ ms }) => ms);
  tell(part, 'typed', took, took[0]!);
  part.lines.push(
    `  ${CHANGES} numbers typed key by key, ${REACH_MS} ms after the field was reached, ${PRESS_MS} ms a key`,
  );
}

/** Interaction to next paint, as the browser itself measures it (steps of 8 ms). */
async function presses(site: Site, path: string, { lines, figures }: Part): Promise<void> {
  for (const way of ['press', 'key'] as const) {
    const { page, session, close } = await opened(site, path);
    await page.evaluate(() => {
      const seen = window as { slowest?: Record<number, number> };
      const slowest: Record<number, number> = {};
      seen.slowest = slowest;
      new PerformanceObserver((list) => {
        // press, release and click are one interaction: its slowest part counts
        for (const { interactionId: id, duration } of list.getEntries() as (PerformanceEntry & {
          interactionId: number;
        })[])
          if (id > 0) slowest[id] = Math.max(slowest[id] ?? 0, duration);
      }).observe({ type: 'event', durationThreshold: 16, buffered: true } as PerformanceObserverInit);
    });
    await slowProcessor(session, SLOWED);
    await page.waitForTimeout(READ_MS);
    const buttons = page.locator('.inst [data-stepper$=":1"]');
    const number = await buttons.count();
    const field = page.locator('.inst [data-in$="RunM"]').first();
    if (way === 'key') await field.fill('');
    await page.waitForTimeout(READ_MS);
    for (let n = 0; n < CHANGES; n++) {
      if (way === 'press') await pressBare(page, buttons.nth(Math.floor(n / 4) % number), n % 4 === 0);
      else if (n % 4 === 3) await field.press('ControlOrMeta+a');
      else await page.keyboard.type('3.5'[n % 4]!);
      await page.waitForTimeout(PRESS_MS);
    }
    await page.waitForTimeout(300);
    const took = await page.evaluate(() => Object.values((window as { slowest?: Record<number, number> }).slowest!));
    await close();
    const slowest = Math.max(0, ...took);
    figures[`${way}Ms`] = took.length === 0 ? 0 : median(took);
    figures[`${way}MostMs`] = slowest;
    lines.push(
      `a ${way} to the next paint, processor ${SLOWED} times slower: median ${took.length === 0 ? 'under 16' : median(took)} ms, slowest ${slowest} ms of ${CHANGES}, ${took.length} of them over 16 ms`,
    );
  }
}

/** A press and nothing else: the driver's own click first asks the page many things, in the page's own time. */
async function pressBare(page: Page, button: Locator, isNew: boolean): Promise<void> {
  if (isNew) {
    await button.scrollIntoViewIfNeeded();
    await page.waitForTimeout(READ_MS);
  }
  const { x, y, width, height } = (await button.boundingBox())!;
  await page.waitForTimeout(PRESS_MS);
  await page.mouse.click(x + width / 2, y + height / 2);
}

/** The proof that follows a stepper, as the page asks for it, of a circuit of some thirty parts, alone in the browser. */
async function proof(site: Site, { lines, figures }: Part): Promise<void> {
  const { page, session, close } = await phone(site);
  await page.goto(site.address('/404.html'));
  await slowProcessor(session, SLOWED);
  const { took, parts } = await page.evaluate(async (runs) => {
    const load = (path: string) => import(`/source/${path}`);
    const { bigCircuit } = await load('tests/calc/circuit/examples/big.ts');
    const { prove } = await load('calc/index.ts');
    const circuit = bigCircuit({ branches: 6, inputs: 6 });
    const after = prove(circuit, undefined, { faults: false });
    const took: number[] = [];
    for (let run = 0; run < runs; run++) {
      const began = performance.now();
      prove(circuit, undefined, { faults: false, after });
      took.push(performance.now() - began);
      await new Promise((done) => setTimeout(done, 10));
    }
    return { took, parts: Object.keys(circuit.parts).length };
  }, 25);
  await close();
  const steady = took.slice(10);
  figures['browserProofMs'] = median(steady);
  lines.push(
    `proof in the browser of ${parts} parts and 6 inputs, processor ${SLOWED} times slower: ${median(steady).toFixed(1)} ms (median of ${steady.length} after 10; the first ${took[0]!.toFixed(0)} ms)`,
  );
}

interface Network {
  name: string;
  latencyMs: number;
  downKbit: number;
  upKbit: number;
}
/** The phone network that performance audits assume, and the browser tools' own slow 4G, where each request waits longer. */
const NETWORKS: readonly Network[] = [
  { name: 'slow 4G (150 ms, 1.6 Mbit/s)', latencyMs: 150, downKbit: 1638, upKbit: 750 },
  {
    name: 'slow 4G of the browser tools (562 ms a request, 1.44 Mbit/s)',
    latencyMs: 562.5,
    downKbit: 1440,
    upKbit: 675,
  },
];

async function firstPaint(site: Site, path: string, network: Network, { lines, figures }: Part): Promise<void> {
  const paints: number[] = [];
  let shift = 0;
  for (let run = 0; run < 3; run++) {
    const { page, session, close } = await phone(site);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: network.latencyMs,
      downloadThroughput: (network.downKbit * 1024) / 8,
      uploadThroughput: (network.upKbit * 1024) / 8,
    });
    await page.addInitScript(() => {
      const seen = window as { shift?: number };
      seen.shift = 0;
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries() as (PerformanceEntry & { value: number })[]) seen.shift! += entry.value;
      }).observe({ type: 'layout-shift', buffered: true });
    });
    await page.goto(site.address(path));
    await page.waitForLoadState('networkidle');
    await page.waitForTimeout(200);
    const seen = await page.evaluate(() => ({
      paint: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN,
      shift: (window as { shift?: number }).shift ?? Number.NaN,
    }));
    paints.push(seen.paint);
    shift = Math.max(shift, seen.shift);
    await close();
  }
  figures[`firstPaintMs_${network.latencyMs}`] = median(paints);
  figures[`shift_${network.latencyMs}`] = shift;
  lines.push(
    `first paint of ${path}, ${network.name}: ${paints.map((ms) => ms.toFixed(0)).join(', ')} ms; layout shift ${shift.toFixed(3)}`,
  );
}
