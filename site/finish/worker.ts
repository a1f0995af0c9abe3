import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { buildOffline } from '../offline/build.ts';
import { type Weighed, weigh } from '../offline/weigh.ts';
import type { Start, Told } from './finish.ts';
import { releaseMemory } from './release.ts';
import { SearchIndex } from './search-index.ts';
import { searchText } from './search-text.ts';

const { dir, language, base } = workerData as Start;
const port = parentPort!;
const search = SearchIndex.open(language);
const weighed = new Map<string, Weighed>();

interface Page {
  file: string;
  index: (content: string | undefined) => void;
}
/** Pages that began and are not drawn, by their count. */
const begun = new Map<number, Page>();
/** Pages that are drawn and not read. The last ones are left alone: they may not stand in their files yet. */
const drawn: Page[] = [];
const LAST = 32;

/** The file that a page of this address is written to. */
const fileOf = (path: string): string =>
  /^\/404\/?$/.test(path) ? '404.html' : path.slice(1).replace(/(^|\/)$/, '$1index.html');

// One message after the other: the index is opened before the first page is read.
let last: Promise<void> = Promise.resolve();
port.on('message', (told: Told) => {
  last = last.then(() => take(told));
});

async function take(told: Told): Promise<void> {
  const index = await search;
  switch (told.kind) {
    case 'begin': {
      const file = fileOf(told.path);
      if (file.endsWith('.html')) begun.set(told.nth, { file, index: index.begin(file) });
      return;
    }
    case 'drawn': {
      const page = begun.get(told.nth);
      if (page === undefined) return; // no page of words
      begun.delete(told.nth);
      drawn.push(page);
      if (drawn.length <= LAST) return;
      const next = drawn.shift()!;
      if (!read(next)) drawn.push(next);
      return;
    }
    case 'finish':
      for (const page of drawn) {
        if (read(page)) continue;
        if (existsSync(join(dir, page.file)))
          throw new Error(`${page.file}: no ${END} in it, so the search cannot read it`);
        page.index(undefined);
      }
      // The search tool's process needs most when it writes.
      releaseMemory();
      await index.write(dir);
      await buildOffline({ dir, base, weighed });
      port.postMessage('finished');
      return;
    case 'close':
      await index.close();
      port.close();
  }
}

/** Behind it stand scripts only: what the search reads is there, and a file that grows after all is weighed again. */
const END = '</html>';

/** Reads a page that stands in its file to the end; false while it does not. */
function read({ file, index }: Page): boolean {
  let bytes: Buffer;
  try {
    bytes = readFileSync(join(dir, file));
  } catch {
    return false;
  }
  if (bytes.lastIndexOf(END) < 0) return false;
  weighed.set(file, weigh(bytes, base));
  index(searchText(bytes.toString()));
  return true;
}
