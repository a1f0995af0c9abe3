import { openSite, phone } from './browser.ts';
import { median, type Part } from './part.ts';

const QUESTIONS = [
  'relay',
  'fuse',
  'ground',
  'load lamp',
  'camera',
  'tape',
  'door switch',
  'charging',
  'beacon',
  'trailer',
];

/** Time from a typed question to its answer on the page, first with nothing loaded, then warm. */
export async function benchSearch(dir: string, guides: number): Promise<Part> {
  const site = await openSite(dir);
  try {
    const cold: number[] = [];
    const warm: number[] = [];
    for (let run = 0; run < 3; run++) {
      const { page, close } = await phone(site);
      await page.goto(site.address('/search/'));
      await page.waitForLoadState('load');
      const ask = (question: string): Promise<number> =>
        page.evaluate(async (text) => {
          const input = document.querySelector<HTMLInputElement>('#search [name=q]')!;
          const status = document.querySelector('#search-status')!;
          const began = performance.now();
          const answered = new Promise<number>((done) => {
            const look = (): void => {
              if (status.textContent?.includes(`“${text}”`) && document.querySelector('#search .results > *'))
                done(performance.now() - began);
            };
            new MutationObserver(look).observe(document.querySelector('#search')!, {
              childList: true,
              characterData: true,
              subtree: true,
            });
          });
          input.value = text;
          input.dispatchEvent(new Event('input', { bubbles: true }));
          return answered;
        }, question);
      cold.push(await ask('lamp'));
      for (const question of QUESTIONS) await ask(question);
      for (const question of [...QUESTIONS].reverse()) warm.push(await ask(question));
      await close();
    }
    return {
      lines: [
        `search over ${guides} guides, from the typed letter to the rows on the page: first answer cold ${cold.map((ms) => ms.toFixed(0)).join(', ')} ms`,
        `  warm, ${warm.length} questions: median ${median(warm).toFixed(0)} ms, slowest ${Math.max(...warm).toFixed(0)} ms (the page waits a moment after each letter, which is counted)`,
      ],
      figures: {
        [`searchColdMs_${guides}`]: median(cold),
        [`searchWarmMs_${guides}`]: median(warm),
        [`searchWarmMostMs_${guides}`]: Math.max(...warm),
      },
    };
  } finally {
    await site.close();
  }
}
