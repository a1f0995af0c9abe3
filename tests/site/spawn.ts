import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

export const ROOT = join(import.meta.dirname, '../..');
export const TINY = join(ROOT, 'tests/site/tiny-workshop');

/** As a shell has it: without what the test runner sets for itself, which the generator would take for its own. */
const ENVIRONMENT = Object.fromEntries(
  Object.entries(process.env).filter(
    ([name]) => !/^(VITEST|VITE_)|^(NODE_ENV|TEST|MODE|DEV|PROD|SSR|BASE_URL)$/.test(name),
  ),
);

export interface Ended {
  code: number | null;
  out: string;
  err: string;
}

/** Starts a command as its npm script does. */
export function start(command: string, args: readonly string[]): { child: ChildProcess; ended: Promise<Ended> } {
  const script = `./site/command/${command}.ts`;
  const child = spawn(process.execPath, ['--import', './site/command/preload.mjs', script, ...args], {
    cwd: ROOT,
    env: ENVIRONMENT,
  });
  let out = '';
  let err = '';
  child.stdout.on('data', (chunk) => (out += chunk));
  child.stderr.on('data', (chunk) => (err += chunk));
  const ended = new Promise<Ended>((done) => child.on('close', (code) => done({ code, out, err })));
  return { child, ended };
}

export const run = (command: string, args: readonly string[]): Promise<Ended> => start(command, args).ended;

/** A folder of the test file's own, gone when the file is done. */
export function scratchFolder(): string {
  const dir = mkdtempSync(join(tmpdir(), 'loomleaf-'));
  afterAll(() => rmSync(dir, { recursive: true, force: true }));
  return dir;
}
