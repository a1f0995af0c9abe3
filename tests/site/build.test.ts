import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { MARKER } from '../../site/command/options.ts';
import { buildOffline } from '../../site/offline/build.ts';
import { deadLinks, pagesIn } from './built-site.ts';
import { type Ended, run, scratchFolder, start, TINY } from './spawn.ts';

const MINUTES = 60_000;
const dir = scratchFolder();
const at = (name: string) => join(dir, name);
const read = (file: string) => readFileSync(file, 'utf8');

describe('a build', () => {
  let plain: Ended;
  let based: Ended;
  // Two at once, of one workshop, to two places under two paths: neither may touch the other's files.
  beforeAll(async () => {
    [plain, based] = await Promise.all([
      run('build', ['--content', TINY, '--out', at('plain')]),
      run('build', ['--content', TINY, '--out', at('based'), '--base', '/sub/path/']),
    ]);
  }, 5 * MINUTES);

  it('makes a whole site of another workshop and says so in one line', () => {
    for (const { code, out, err } of [plain, based]) {
      expect(err).toBe('');
      expect(out).toMatch(/^\d+ pages built into \S+ in [\d.]+ s \(check [\d.]+, pages [\d.]+, search [\d.]+\)\n$/);
      expect(code).toBe(0);
    }
    const pages = pagesIn(at('plain'));
    for (const page of ['/', '/guides/cart-lamp/', '/vehicles/hand-cart/', '/lessons/crimping/', '/search/', '/terms/'])
      expect(pages).toContain(page);
    expect(read(at('plain/index.html'))).toContain('Corner Bench');
    expect(read(at('plain/guides/cart-lamp/index.html'))).toContain('Lamp on a hand cart');
    expect(existsSync(at(`plain/${MARKER}`))).toBe(true);
  });

  it('puts the same pages under a base path', () => {
    expect(pagesIn(at('based'))).toEqual(pagesIn(at('plain')));
    const links = [...read(at('based/guides/cart-lamp/index.html')).matchAll(/ (?:href|src)="(\/[^"]*)"/g)];
    expect(links.length).toBeGreaterThan(5);
    expect(links.map(([, link]) => link!).filter((link) => !link.startsWith('/sub/path/'))).toEqual([]);
  });

  it('leaves no link to nowhere, down to the parts of pages', () => {
    expect(deadLinks(at('plain'), '/')).toEqual([]);
    expect(deadLinks(at('based'), '/sub/path/')).toEqual([]);
  });

  it('carries the pictures and a search index without its stock interface', () => {
    expect(read(at('plain/images/lamp.svg'))).toBe(read(join(TINY, 'images/lamp.svg')));
    const index = readdirSync(at('plain/pagefind'));
    expect(index).toContain('pagefind.js');
    expect(index.filter((name) => /ui\.|highlight/.test(name))).toEqual([]);
  });

  it.each([
    ['plain', '/'],
    ['based', '/sub/path/'],
  ])('lists for reading offline what the files on the disk weigh (%s)', async (name, base) => {
    const again = at(`${name}-again`);
    cpSync(at(name), again, { recursive: true });
    for (const file of ['offline.json', 'sw.js', MARKER]) rmSync(join(again, file));
    await buildOffline({ dir: again, base, weighed: new Map() });
    for (const file of ['offline.json', 'sw.js']) expect(read(join(again, file))).toBe(read(join(at(name), file)));
    expect(Object.keys(JSON.parse(read(join(again, 'offline.json'))).pages)).toContain('guides/cart-lamp/');
  });

  it('leaves nothing beside the site', () => {
    expect(readdirSync(dir).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  it(
    'keeps the last good site when content does not hold, and writes nothing',
    async () => {
      cpSync(TINY, at('broken'), { recursive: true });
      writeFileSync(at('broken/guides/second.mdx'), '---\ntitle: Second\n---\n\nText.\n');
      writeFileSync(at('plain/kept.txt'), 'the last good site');
      const again = await run('build', ['--content', at('broken'), '--out', at('plain')]);
      expect(again.code).toBe(1);
      expect(again.err).toContain('guides/second.mdx:2:1 front matter: "summary" is missing\n');
      expect(again.err).toContain(`nothing was built, ${at('plain')} is as it was\n`);
      expect(read(at('plain/kept.txt'))).toBe('the last good site');

      const fresh = await run('build', ['--content', at('broken'), '--out', at('never')]);
      expect(fresh.code).toBe(1);
      expect(existsSync(at('never'))).toBe(false);
      expect(readdirSync(dir).filter((name) => name.startsWith('.'))).toEqual([]);
    },
    2 * MINUTES,
  );

  it(
    'keeps the last good site when it is interrupted',
    async () => {
      writeFileSync(at('plain/kept.txt'), 'the last good site');
      const { child, ended } = start('build', ['--content', TINY, '--out', at('plain')]);
      const begun = await until(
        () => readdirSync(dir).some((name) => /^\.plain-building-\d+$/.test(name)),
        2 * MINUTES,
      );
      expect(begun).toBe(true);
      child.kill('SIGINT');
      const { code, err } = await ended;
      expect(code).toBe(130);
      expect(err).toContain(`Stopped: ${at('plain')} is as it was\n`);
      expect(read(at('plain/kept.txt'))).toBe('the last good site');
      expect(readdirSync(dir).filter((name) => name.startsWith('.'))).toEqual([]);
    },
    3 * MINUTES,
  );

  it('clears up after a build that was killed, and gives the old site its place back', async () => {
    // What a killed build leaves: half a site, and the old one moved aside. No process has this number.
    mkdirSync(at('.rescued-building-999999999/site'), { recursive: true });
    mkdirSync(at('.rescued-old-999999999'));
    writeFileSync(at(`.rescued-old-999999999/${MARKER}`), '');
    writeFileSync(at('.rescued-old-999999999/kept.txt'), 'the old site');
    const { buildBeside } = await import('../../site/command/swap.ts');
    const beside = buildBeside(at('rescued'), at('work'));
    expect(read(at('rescued/kept.txt'))).toBe('the old site');
    writeFileSync(join(beside.site, 'new.txt'), 'the new site');
    beside.swap();
    beside.clear();
    expect(readdirSync(at('rescued'))).toEqual(['new.txt']);
    expect(readdirSync(dir).filter((name) => name.startsWith('.'))).toEqual([]);
  });
});

async function until(holds: () => boolean, forMs: number): Promise<boolean> {
  const end = Date.now() + forMs;
  while (Date.now() < end) {
    if (holds()) return true;
    await new Promise((done) => setTimeout(done, 20));
  }
  return false;
}
