import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import type { OfflineList } from './names.ts';
import { type Weighed, weigh } from './weigh.ts';

/** On the device from the first visit: the frame, and what a fitter needs wherever he stands. Addresses below the base. */
const FROM_THE_START =
  /^(index\.html|(search|jobs|offline|guides|surfaces|lessons|terms|calculators)\/index\.html|(calculators|vehicles)\/[^/]+\/index\.html|jobs\/card\/index\.html|404\.html|_astro\/.*\.(js|css|woff2)|pagefind\/.*|synonyms\.json|mark\.svg|manifest\.webmanifest|icons\/.*\.png|offline\.json)$/;

/** Address of a file as a reader asks for it. */
const addressOf = (file: string): string => file.replace(/(^|\/)index\.html$/, '$1');

/**
 * Writes the worker of a built site and the list of what its pages weigh. What is weighed already is not read again, save
 * where the file has another size.
 */
export async function buildOffline({
  dir,
  base,
  weighed,
}: {
  dir: string;
  base: string;
  weighed: ReadonlyMap<string, Weighed>;
}): Promise<void> {
  const files = readdirSync(dir, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .sort();

  const list: OfflineList = { version: '', pages: {}, images: {} };
  const entries: { url: string; revision: string | null }[] = [];
  const enter = (file: string, { digest }: Weighed): void => {
    if (!FROM_THE_START.test(file)) return;
    // a name with a hash of its own content never changes
    const revision = file.startsWith('_astro/') ? null : digest.slice(0, 20);
    entries.push({ url: base + addressOf(file), revision });
  };
  // any change of any file is another version
  const whole = createHash('sha256');
  for (const file of files) {
    const stat = statSync(join(dir, file));
    if (!stat.isFile()) continue;
    const known = weighed.get(file);
    const weight = known?.bytes === stat.size ? known : weigh(readFileSync(join(dir, file)), base);
    const { digest, bytes, images } = weight;
    whole.update(file).update('\0').update(digest);
    enter(file, weight);
    if (file.startsWith('images/')) list.images[file] = bytes;
    if (file.endsWith('index.html') && !FROM_THE_START.test(file)) list.pages[addressOf(file)] = { bytes, images };
  }
  list.version = whole.digest('hex').slice(0, 20);
  const written = Buffer.from(`${JSON.stringify(list)}\n`);
  writeFileSync(join(dir, 'offline.json'), written);
  enter('offline.json', weigh(written, base));

  const made = await build({
    configFile: false,
    root: dir,
    publicDir: false,
    logLevel: 'silent',
    define: {
      LOOMLEAF_BASE: JSON.stringify(base),
      LOOMLEAF_FILES: JSON.stringify(entries),
      'process.env.NODE_ENV': '"production"',
    },
    build: {
      write: false,
      target: 'es2022',
      lib: {
        entry: join(import.meta.dirname, 'worker.ts'),
        formats: ['iife'],
        name: 'worker',
        fileName: () => 'sw.js',
      },
    },
  });
  const { output } = (Array.isArray(made) ? made[0]! : made) as { output: { type: string; code?: string }[] };
  const code = output.find(({ type }) => type === 'chunk')?.code;
  if (code === undefined) throw new Error('The worker of the offline site was not built: the bundler gave no code');
  writeFileSync(join(dir, 'sw.js'), `${code}\n// ${list.version}\n`);
}
