import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { close, createIndex, type PagefindIndex } from 'pagefind';
import type { Rendered } from './rendered.ts';
import { searchText } from './search-text.ts';

/** Files of the search tool that the site does not use: its own interface, its worker. */
const UNUSED = /ui\.(js|css)$|^pagefind-(highlight|worker)\.js$/;

interface Place {
  path: string;
  content: string | undefined;
  done: boolean;
}

/**
 * The index of the search page, made while the pages are made: each is handed over as soon as it is rendered, and is read
 * by the search tool's own process beside the next one.
 */
export class SearchIndex {
  readonly #index: PagefindIndex;
  readonly #adding: Promise<void>[] = [];
  /** Pages that have begun and are not added yet. */
  readonly #places: Place[] = [];

  private constructor(index: PagefindIndex) {
    this.#index = index;
  }

  static async open(language: string): Promise<SearchIndex> {
    const { index, errors } = await createIndex({ forceLanguage: language.split('-')[0] ?? 'en' });
    if (!index) throw new Error(errors.join('\n'));
    return new SearchIndex(index);
  }

  /**
   * Keeps the place of a page that begins; gives back where what it says goes. Pages are added in the order in which they
   * began, whichever is done first, so that the same content gives the same index.
   */
  begin(path: string): (page: Rendered | undefined) => void {
    const place: Place = { path, content: undefined, done: false };
    this.#places.push(place);
    return (page) => {
      // A page says with `data-pagefind-body` what of it is found; one without it is left out.
      place.content = page && searchText(page);
      place.done = true;
      while (this.#places[0]?.done) this.#add(this.#places.shift()!);
    };
  }

  #add({ path, content }: Place): void {
    if (content === undefined) return;
    const sourcePath = `${path.replace(/^\/|\/$/g, '')}/index.html`.replace(/^\//, '');
    this.#adding.push(this.#index.addHTMLFile({ sourcePath, content }).then(whole));
  }

  /** Writes the index of all pages taken so far into a built site. */
  async write(dir: string): Promise<void> {
    await Promise.all(this.#adding);
    const folder = join(dir, 'pagefind');
    await this.#index.writeFiles({ outputPath: folder }).then(whole);
    for (const name of readdirSync(folder)) if (UNUSED.test(name)) rmSync(join(folder, name));
  }

  /** Ends the search tool's process, whatever became of the index. */
  async close(): Promise<void> {
    await Promise.allSettled(this.#adding);
    await close();
  }
}

/** The tool does not throw; it says in `errors` what went wrong. */
function whole({ errors }: { errors: string[] }): void {
  if (errors.length > 0) throw new Error(errors.join('\n'));
}
