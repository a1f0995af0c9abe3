import { existsSync, readdirSync, statSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { didYouMean } from '../suggest.ts';
import { Refusal } from './refusal.ts';

/** What every command is told. */
export interface Options {
  /** The workshop's folder, absolute. */
  content: string;
  /** Where the site goes, absolute. */
  out: string;
  /** Path the site lives under, a slash at both ends. */
  base: string;
  port: number;
}

/** File that marks an output folder as written by Loomleaf: only such a folder is ever replaced. */
export const MARKER = '.loomleaf-site';

export const PROJECT = resolve(import.meta.dirname, '../..');

const KNOWN = { content: 'DIR', out: 'DIR', base: 'PATH', port: 'NUMBER' } as const;

export function usage(command: string): string {
  return `npm run ${command} -- [--content DIR] [--out DIR] [--base /sub/path/] [--port 4321]`;
}

/** Reads the command line; whatever does not hold is a refusal in one line, before anything is touched. */
export function readOptions(command: string, argv: readonly string[]): Options {
  const given: Partial<Record<keyof typeof KNOWN, string>> = {};
  const { tokens } = parseArgs({
    args: [...argv],
    options: Object.fromEntries(Object.keys(KNOWN).map((name) => [name, { type: 'string' }])),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  for (const token of tokens) {
    if (token.kind === 'positional')
      throw new Refusal(`Unexpected "${token.value}": ${command} takes options only. Usage: ${usage(command)}`);
    if (token.kind !== 'option') continue;
    if (!(token.name in KNOWN)) {
      const meant = didYouMean(token.name, Object.keys(KNOWN)).replace('"', '"--');
      throw new Refusal(`Unknown option ${token.rawName}.${meant} Usage: ${usage(command)}`);
    }
    const name = token.name as keyof typeof KNOWN;
    if (token.value === undefined || token.value === '' || (!token.inlineValue && token.value.startsWith('--')))
      throw new Refusal(`${token.rawName} needs a value: ${token.rawName} ${KNOWN[name]}`);
    if (given[name] !== undefined) throw new Refusal(`${token.rawName} is given twice`);
    given[name] = token.value;
  }
  const content = resolve(given.content ?? join(PROJECT, 'content'));
  const out = resolve(given.out ?? join(PROJECT, 'dist'));
  checkContent(given.content ?? content, content);
  checkOut(given.out ?? out, out, content);
  return { content, out, base: baseOf(given.base ?? '/'), port: portOf(given.port ?? '4321') };
}

function checkContent(named: string, dir: string): void {
  if (!existsSync(dir)) throw new Refusal(`--content: there is no folder "${named}"`);
  if (!statSync(dir).isDirectory()) throw new Refusal(`--content: "${named}" is a file, expected a folder`);
}

function checkOut(named: string, dir: string, content: string): void {
  const holds = (outer: string, inner: string): boolean => {
    const path = relative(outer, inner);
    return path === '' || (!path.startsWith('..') && !path.startsWith('/'));
  };
  if (holds(dir, content) || holds(content, dir))
    throw new Refusal(`--out: "${named}" and the content folder lie in one another; give the site a folder of its own`);
  if (holds(dir, PROJECT))
    throw new Refusal(`--out: "${named}" holds Loomleaf itself; give the site a folder of its own`);
  if (!existsSync(dir)) return;
  if (!statSync(dir).isDirectory()) throw new Refusal(`--out: "${named}" is a file, expected a folder`);
  if (readdirSync(dir).length > 0 && !existsSync(join(dir, MARKER)))
    throw new Refusal(
      `--out: "${named}" holds files that Loomleaf did not write; nothing was touched. Give an empty or new folder.`,
    );
}

function baseOf(given: string): string {
  const trimmed = given.replace(/^\/+|\/+$/g, '');
  if (!/^[A-Za-z0-9._~/-]*$/.test(trimmed) || trimmed.split('/').some((part) => part === '..' || part === '.'))
    throw new Refusal(
      `--base: "${given}" is no path; expected letters, digits and hyphens between slashes, such as /sub/path/`,
    );
  if (trimmed.includes('//')) throw new Refusal(`--base: "${given}" has an empty part between two slashes`);
  return trimmed === '' ? '/' : `/${trimmed}/`;
}

function portOf(given: string): number {
  const port = Number(given);
  if (!Number.isInteger(port) || port < 0 || port > 65535 || given.trim() === '')
    throw new Refusal(`--port: "${given}" is no port; expected a whole number from 0 to 65535`);
  return port;
}
