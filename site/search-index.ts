import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';

/** Files of the search tool's own interface, which the site does not use. */
const INTERFACE = /ui\.(js|css)$|^pagefind-highlight\.js$/;

/** Indexes a built site for its search page. Pages say with `data-pagefind-body` what of them is found. */
export async function indexSite(dir: string, language: string): Promise<void> {
  try {
    const { index, errors } = await createIndex({ forceLanguage: language.split('-')[0] ?? 'en' });
    if (!index) throw new Error(errors.join('\n'));
    // These calls do not throw; they say in `errors` what went wrong.
    const added = await index.addDirectory({ path: dir });
    if (added.errors.length > 0) throw new Error(added.errors.join('\n'));
    const written = await index.writeFiles({ outputPath: join(dir, 'pagefind') });
    if (written.errors.length > 0) throw new Error(written.errors.join('\n'));
  } finally {
    await close();
  }
  const folder = join(dir, 'pagefind');
  for (const name of readdirSync(folder)) if (INTERFACE.test(name)) rmSync(join(folder, name));
}
