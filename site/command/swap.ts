import { cpSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** A site is built apart and takes its place whole; until then the old one stands. */
export interface Beside {
  /** The new site grows here. */
  site: string;
  /** For files that only this build needs. */
  cache: string;
  /** Puts the new site in place of the old. */
  swap(): void;
  /** Takes away whatever was begun; after a swap there is nothing left to take. */
  clear(): void;
}

/**
 * The site grows under `workshop`, one folder a process, because what it is generated from must find the project's
 * packages; it is then moved beside its place, so that the last step is a rename on one disk.
 */
export function buildBeside(out: string, workshop: string): Beside {
  const parent = dirname(out);
  mkdirSync(parent, { recursive: true });
  mkdirSync(workshop, { recursive: true });
  tidy(out, workshop);
  const work = join(workshop, `build-${process.pid}`);
  const next = join(parent, `.${basename(out)}-building-${process.pid}`);
  const old = join(parent, `.${basename(out)}-old-${process.pid}`);
  const site = join(work, 'site');
  const cache = join(work, 'cache');
  for (const dir of [work, next]) rmSync(dir, { recursive: true, force: true });
  for (const dir of [site, cache, next]) mkdirSync(dir, { recursive: true });
  return {
    site,
    cache,
    swap() {
      move(site, next);
      if (existsSync(out)) renameSync(out, old);
      try {
        renameSync(next, out);
      } catch (error) {
        if (existsSync(old)) renameSync(old, out);
        throw error;
      }
      rmSync(old, { recursive: true, force: true });
    },
    clear() {
      for (const dir of [work, next]) rmSync(dir, { recursive: true, force: true });
    },
  };
}

/** Moves a folder onto an empty one; between two disks that is a copy. */
function move(from: string, to: string): void {
  try {
    renameSync(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EXDEV') throw error;
    cpSync(from, to, { recursive: true });
  }
}

/** Clears up after builds that were killed: half a site goes, an old site that lost its place gets it back. */
function tidy(out: string, workshop: string): void {
  const parent = dirname(out);
  const left = new RegExp(`^\\.${basename(out).replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}-(building|old)-(\\d+)$`);
  for (const name of readdirSync(parent)) {
    const found = left.exec(name);
    if (!found || alive(Number(found[2]))) continue;
    const path = join(parent, name);
    if (found[1] === 'old' && !existsSync(out)) renameSync(path, out);
    else rmSync(path, { recursive: true, force: true });
  }
  for (const name of readdirSync(workshop)) {
    const pid = /^build-(\d+)$/.exec(name)?.[1];
    if (pid !== undefined && !alive(Number(pid))) rmSync(join(workshop, name), { recursive: true, force: true });
  }
}

function alive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
