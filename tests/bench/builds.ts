import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { generateBare, generateWorkshop } from './generate.ts';
import type { Part } from './part.ts';
import { ROOT, SCRATCH } from './places.ts';
import { type Usage, watched } from './watched.ts';

const NODE = [process.execPath, '--import', './site/command/preload.mjs'] as const;

/** Folder of the site that this run built with so many guides. */
export const builtWith = (guides: number): string => join(SCRATCH, `${guides}/site`);

/**
 * The same guides built by Loomleaf (checked, proven, drawn, searchable, readable offline) and as bare Astro MDX, one
 * after the other in one run. Ratios hold on any machine; seconds do not.
 */
export async function benchBuilds(sizes: readonly number[]): Promise<Part> {
  const part: Part = { lines: [], figures: {} };
  for (const guides of sizes) {
    const folder = join(SCRATCH, String(guides));
    rmSync(folder, { recursive: true, force: true });
    generateWorkshop(join(folder, 'content'), guides);
    generateBare(join(folder, 'bare'), guides);
    const bare = await watched(process.execPath, [join(ROOT, 'node_modules/astro/bin/astro.mjs'), 'build'], {
      cwd: join(folder, 'bare'),
    });
    mustHold('bare Astro', bare);
    rmSync(join(folder, 'bare'), { recursive: true });
    const ours = await build(guides, folder);
    mustHold('Loomleaf', ours);
    const ratio = ours.seconds / bare.seconds;
    part.figures[`buildRatio_${guides}`] = ratio;
    if (ours.peakMb !== undefined) part.figures[`buildPeakMb_${guides}`] = ours.peakMb;
    const cpu =
      ours.cpuS === undefined || bare.cpuS === undefined
        ? ''
        : `; processor time ${ours.cpuS.toFixed(0)} s to ${bare.cpuS.toFixed(0)} s, ${(ours.cpuS / bare.cpuS).toFixed(2)} times`;
    part.lines.push(
      `${guides} guides: ${ours.seconds.toFixed(1)} s, bare Astro MDX ${bare.seconds.toFixed(1)} s: ${ratio.toFixed(2)} times${cpu}`,
      `  most memory of all processes: ${memory(ours)}, bare ${memory(bare)}`,
      `  ${/^\d+ pages built.*$/m.exec(ours.output)?.[0].replace(/ into \S+/, '') ?? ''}`,
    );
  }
  return part;
}

const build = (guides: number, folder: string): Promise<Usage> =>
  watched(
    NODE[0],
    [...NODE.slice(1), 'site/command/build.ts', '--content', join(folder, 'content'), '--out', builtWith(guides)],
    { cwd: ROOT },
  );

/** The check alone, as its own process. */
export async function benchChecker(guides: number): Promise<Part> {
  const folder = join(SCRATCH, `${guides}-checked`);
  rmSync(folder, { recursive: true, force: true });
  generateWorkshop(join(folder, 'content'), guides);
  const run = await watched(
    NODE[0],
    [...NODE.slice(1), 'site/command/check.ts', '--content', join(folder, 'content')],
    { cwd: ROOT },
  );
  mustHold('the check', run);
  rmSync(folder, { recursive: true });
  const told = Number(/checked in ([\d.]+) s/.exec(run.output)?.[1]);
  return {
    lines: [
      `${guides} guides checked in ${told.toFixed(1)} s, ${run.seconds.toFixed(1)} s with the start of the program; processor time ${run.cpuS?.toFixed(1) ?? 'unknown'} s; most memory ${memory(run)}`,
    ],
    figures: { [`checkS_${guides}`]: told },
  };
}

const memory = ({ peakMb }: Usage): string => (peakMb === undefined ? 'unknown' : `${(peakMb / 1024).toFixed(2)} GB`);

function mustHold(what: string, { code, output }: Usage): void {
  if (code !== 0) throw new Error(`${what} ended with code ${code}:\n${output.slice(-3000)}`);
}
