import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** A site is built beside the place it goes to and takes that place whole; until then the old one stands. */
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

export function buildBeside(out: string): Beside {
  const parent = dirname(out);
  mkdirSync(parent, { recursive: true });
  tidy(out);
  const begun = join(parent, `.${basename(out)}-building-${process.pid}`);
  const old = join(parent, `.${basename(out)}-old-${process.pid}`);
  const site = join(begun, 'site');
  const cache = join(begun, 'cache');
  rmSync(begun, { recursive: true, force: true });
  mkdirSync(site, { recursive: true });
  mkdirSync(cache);
  return {
    site,
    cache,
    swap() {
      if (existsSync(out)) renameSync(out, old);
      try {
        renameSync(site, out);
      } catch (error) {
        if (existsSync(old)) renameSync(old, out);
        throw error;
      }
      rmSync(old, { recursive: true, force: true });
    },
    clear() {
      rmSync(begun, { recursive: true, force: true });
    },
  };
}

/** Clears up after builds that were killed: half a site goes, an old site that lost its place gets it back. */
function tidy(out: string): void {
  const parent = dirname(out);
  const left = new RegExp(`^\\.${basename(out).replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}-(building|old)-(\\d+)$`);
  for (const name of readdirSync(parent)) {
    const found = left.exec(name);
    if (!found || alive(Number(found[2]))) continue;
    const path = join(parent, name);
    if (found[1] === 'old' && !existsSync(out)) renameSync(path, out);
    else rmSync(path, { recursive: true, force: true });
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
