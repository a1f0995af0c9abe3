import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { close, createIndex, type PagefindIndex } from 'pagefind';

/** Files of the search tool that the site does not use: its own interface, its worker. */
const UNUSED = /ui\.(js|css)$|^pagefind-(highlight|worker)\.js$/;

interface Place {
  file: string;
  content: string | undefined;
  done: boolean;
}

/** The index of the search page, made while the pages are made: the search tool's own process reads one beside the next. */
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
   * Keeps the place of a page that begins; gives back where goes what the search reads of it, nothing where it is not in
   * the search. Pages are added in the order in which they began, whichever is done first, so that the same content gives
   * the same index.
   */
  begin(file: string): (content: string | undefined) => void {
    const place: Place = { file, content: undefined, done: false };
    this.#places.push(place);
    return (content) => {
      place.content = content;
      place.done = true;
      while (this.#places[0]?.done) this.#add(this.#places.shift()!);
    };
  }

  #add({ file, content }: Place): void {
    if (content === undefined) return;
    this.#adding.push(this.#index.addHTMLFile({ sourcePath: file, content }).then(whole));
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
