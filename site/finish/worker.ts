import { parentPort, workerData } from 'node:worker_threads';
import { buildOffline } from '../offline/build.ts';
import { type Weighed, weigh } from '../offline/weigh.ts';
import type { Start, Told } from './finish.ts';
import { releaseMemory } from './release.ts';
import { SearchIndex } from './search-index.ts';
import { searchText } from './search-text.ts';

const { language, base } = workerData as Start;
const port = parentPort!;
const search = SearchIndex.open(language);
const weighed = new Map<string, Weighed>();
/** The file that a page of this address is written to. */
const fileOf = (path: string): string => path.slice(1).replace(/(^|\/)$/, '$1index.html');
/** Pages that began and are not done, by their count. */
const underWay = new Map<number, { file: string; index: (content: string | undefined) => void }>();
let began = 0;
const utf8 = new TextDecoder();

// One message after the other: the index is opened before the first page is taken.
let last: Promise<void> = Promise.resolve();
port.on('message', (told: Told) => {
  last = last.then(() => take(told));
});

async function take(told: Told): Promise<void> {
  const index = await search;
  switch (told.kind) {
    case 'begin': {
      const file = fileOf(told.path);
      underWay.set(began++, { file, index: index.begin(file) });
      return;
    }
    case 'done': {
      const { nth, page } = told;
      const place = underWay.get(nth)!;
      underWay.delete(nth);
      if (page) weighed.set(place.file, weigh(page, base));
      place.index(page && searchText(utf8.decode(page)));
      return;
    }
    case 'finish':
      // The search tool's process needs most when it writes.
      releaseMemory();
      await index.write(told.dir);
      await buildOffline({ dir: told.dir, base, weighed });
      port.postMessage('finished');
      return;
    case 'close':
      await index.close();
      port.close();
  }
}
