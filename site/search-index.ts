import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join, sep } from 'node:path';
import { close, createIndex } from 'pagefind';
import { searchText } from './search-text.ts';

/** Files of the search tool's own interface, which the site does not use. */
const INTERFACE = /ui\.(js|css)$|^pagefind-highlight\.js$/;
const AT_ONCE = 64;

/** Indexes a built site for its search page. Pages say with `data-pagefind-body` what of them is found. */
export async function indexSite(dir: string, language: string): Promise<void> {
  try {
    const { index, errors } = await createIndex({ forceLanguage: language.split('-')[0] ?? 'en' });
    if (!index) throw new Error(errors.join('\n'));
    const files = readdirSync(dir, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.html'));
    files.sort();
    for (let at = 0; at < files.length; at += AT_ONCE) {
      const adding = files.slice(at, at + AT_ONCE).flatMap((file) => {
        const content = searchText(readFileSync(join(dir, file), 'utf8'));
        return content === undefined ? [] : [index.addHTMLFile({ sourcePath: file.split(sep).join('/'), content })];
      });
      // These calls do not throw; they say in `errors` what went wrong.
      for (const added of await Promise.all(adding))
        if (added.errors.length > 0) throw new Error(added.errors.join('\n'));
    }
    const written = await index.writeFiles({ outputPath: join(dir, 'pagefind') });
    if (written.errors.length > 0) throw new Error(written.errors.join('\n'));
  } finally {
    await close();
  }
  const folder = join(dir, 'pagefind');
  for (const name of readdirSync(folder)) if (INTERFACE.test(name)) rmSync(join(folder, name));
}
