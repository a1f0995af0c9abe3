import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { buildSite } from '../../site/command/build-site.ts';
import { parseOptions } from './options.ts';
import type { Part } from './part.ts';
import { ROOT, SCRATCH } from './places.ts';

/**
 * `npm run bench`: measures, asserts nothing. Seconds say as much about the machine as about the program, so what is to
 * be compared is measured side by side in one run.
 */
const MAIN_GUIDE = '/guides/cargo-work-light/';

const { parts, guides } = parseOptions(process.argv.slice(2));
const figures: Record<string, number> = {};
const load = async () => (existsSync('/proc/loadavg') ? (await import('node:os')).loadavg()[0]?.toFixed(1) : undefined);

async function part(name: string, measure: () => Promise<Part> | Part): Promise<void> {
  if (!parts.includes(name)) return;
  const busy = await load();
  console.log(`\n== ${name}${busy === undefined ? '' : ` (machine load before: ${busy})`}`);
  const measured = await measure();
  console.log(measured.lines.join('\n'));
  Object.assign(figures, measured.figures);
}

let demonstration: Promise<string> | undefined;
/** The demonstration, built once for all parts that look at it. */
function site(): Promise<string> {
  demonstration ??= (async () => {
    const out = join(SCRATCH, 'demonstration');
    const code = await buildSite({ content: join(ROOT, 'content'), out, base: '/', port: 0 });
    if (code !== 0) throw new Error('The demonstration does not build');
    return out;
  })();
  return demonstration;
}

await part('circuit', async () => (await import('./circuit.ts')).benchCircuit());
await part('bench-sheet', async () => (await import('./bench-sheet.ts')).benchSheet());
await part('checker', async () => (await import('./builds.ts')).benchChecker(5000));
await part('builds', async () => (await import('./builds.ts')).benchBuilds(guides));
await part('search', async () => {
  const { builtWith } = await import('./builds.ts');
  const lines: string[] = [];
  const figures: Record<string, number> = {};
  for (const count of guides) {
    if (!existsSync(builtWith(count))) {
      lines.push(`search over ${count} guides: not built yet, run the part "builds" with it`);
      continue;
    }
    const one = await (await import('./search.ts')).benchSearch(builtWith(count), count);
    lines.push(...one.lines);
    Object.assign(figures, one.figures);
  }
  return { lines, figures };
});
await part('weight', async () => (await import('./weight.ts')).benchWeight(await site(), MAIN_GUIDE));
await part('live', async () => (await import('./live.ts')).benchLive(await site(), MAIN_GUIDE));

console.log(
  `\n${JSON.stringify(Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, Math.round(value * 1000) / 1000])))}`,
);
