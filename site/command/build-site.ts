import { cpSync, existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Finishing } from '../finish/finish.ts';
import { watchPages } from '../finish/page-watch.ts';
import { releaseMemory } from '../finish/release.ts';
import { checkContent, count } from './check-content.ts';
import { MARKER, type Options, PROJECT } from './options.ts';
import { buildBeside } from './swap.ts';

/** Checks, then builds beside and swaps. Returns the exit code; on any failure the last good site stands as it was. */
export async function buildSite(options: Options): Promise<number> {
  const began = performance.now();
  const since = (from: number) => ((performance.now() - from) / 1000).toFixed(1);
  const checked = await checkContent(options.content);
  if (checked.errors > 0) {
    console.error(`${count(checked.errors, 'error')}: nothing was built, ${options.out} is as it was`);
    return 1;
  }

  const beside = buildBeside(options.out, join(PROJECT, '.loomleaf'));
  // An interrupted build takes away what it began; the handlers end the process themselves, so none is left behind.
  const stop = (signal: 'SIGINT' | 'SIGTERM' | 'SIGHUP') => {
    beside.clear();
    console.error(`Stopped: ${options.out} is as it was`);
    process.exit(signal === 'SIGINT' ? 130 : 143);
  };
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  for (const signal of signals) process.on(signal, stop);
  let finishing: Finishing | undefined;
  try {
    const pagesFrom = performance.now();
    finishing = new Finishing({ dir: beside.site, language: checked.workshop.shop.language, base: options.base });
    watchPages(finishing.watch);
    await buildPages(options, beside.site, beside.cache);
    const pictures = join(options.content, 'images');
    if (existsSync(pictures)) cpSync(pictures, join(beside.site, 'images'), { recursive: true });
    const pages = countPages(beside.site);
    const searchFrom = performance.now();
    const finished = finishing.finish();
    // The search tool's process needs most when it writes, so this thread gives back what it can while the other does too.
    releaseMemory();
    await finished;
    const done = performance.now();
    writeFileSync(join(beside.site, MARKER), 'Written by Loomleaf; the next build replaces this folder.\n');
    beside.swap();
    console.log(
      `${count(pages, 'page')} built into ${options.out} in ${since(began)} s (check ${checked.seconds.toFixed(1)}, pages ${((searchFrom - pagesFrom) / 1000).toFixed(1)}, search ${((done - searchFrom) / 1000).toFixed(1)})`,
    );
    return 0;
  } catch (error) {
    console.error(error instanceof Error ? (error.stack ?? error.message) : error);
    console.error(`Not built: ${options.out} is as it was`);
    return 1;
  } finally {
    watchPages(undefined);
    await finishing?.close();
    for (const signal of signals) process.off(signal, stop);
    beside.clear();
  }
}

/** Names that the generator would read from the surroundings in place of this build's own. */
const GENERATORS_OWN = ['BASE_URL', 'SITE', 'MODE', 'DEV', 'PROD', 'SSR', 'ASSETS_PREFIX'];

async function buildPages({ content, base }: Options, site: string, cache: string): Promise<void> {
  for (const name of GENERATORS_OWN) delete process.env[name];
  Object.assign(process.env, {
    NODE_ENV: 'production',
    ASTRO_TELEMETRY_DISABLED: '1',
    LOOMLEAF_CONTENT: content,
    LOOMLEAF_OUT: site,
    LOOMLEAF_BASE: base,
    LOOMLEAF_CACHE: cache,
  });
  // The generator asks where it runs, not where its files are.
  process.chdir(PROJECT);
  const { build } = await import('astro');
  await build({ root: PROJECT, logLevel: 'warn' });
}

const countPages = (dir: string): number =>
  readdirSync(dir, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.html')).length;
