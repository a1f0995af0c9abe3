import { cpSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { check, problemLine } from '../../site/check/check.ts';
import { deadLinks, pagesIn, wrongNames } from './built-site.ts';
import { ROOT, run, scratchFolder, TINY } from './spawn.ts';

const CONTENT = join(ROOT, 'content');
const dir = scratchFolder();
const proving = { cacheDir: undefined };

describe('the demonstration', () => {
  const site = resolve(process.env['LOOMLEAF_DIST'] ?? join(ROOT, 'dist'));

  it('holds against every rule', async () => {
    const { problems, workshop } = await check(CONTENT, { proving });
    expect(problems.map(problemLine)).toEqual([]);
    expect(workshop.guides.length).toBeGreaterThanOrEqual(4);
    expect(workshop.vehicles.length).toBeGreaterThanOrEqual(3);
  }, 120_000);

  it('is built: a page for every guide, vehicle type, lesson, surface and circuit', async () => {
    if (!existsSync(join(site, 'index.html'))) throw new Error(`No built site in ${site}: run npm run build first`);
    const { workshop } = await check(CONTENT, { proving });
    const pages = new Set(pagesIn(site));
    const wanted = (['guides', 'vehicles', 'lessons', 'surfaces'] as const).flatMap((kind) =>
      workshop[kind].map(({ id }) => `/${kind}/${id}/`),
    );
    wanted.push(...[...workshop.circuits.keys()].map((id) => `/circuits/${id}/`));
    expect(wanted.filter((page) => !pages.has(page))).toEqual([]);
  }, 120_000);

  it('has no link to nowhere, down to the parts of pages', () => {
    expect(deadLinks(site, '/')).toEqual([]);
  });

  it('names each part of a page once, and refers to no part that is not there', () => {
    expect(wrongNames(site)).toEqual([]);
  });
});

describe('adding is adding one file', () => {
  it('a vehicle type, a surface, a guide, each beside the demonstration', async () => {
    const content = join(dir, 'content');
    cpSync(CONTENT, content, { recursive: true });
    add(content, 'vehicles', 'panel-van.yaml', 'milk-float.yaml', /^name: .*$/m, 'name: Milk float');
    add(content, 'surfaces', 'glass.yaml', 'milk-crate.yaml', /^name: .*$/m, 'name: Milk crate');
    add(content, 'guides', 'cargo-work-light.mdx', 'milk-light.mdx', /^number: .*$/m, "number: '98765'", (text) =>
      text.replace(/^vehicles: .*$/m, 'vehicles: [milk-float]').replace(/^surfaces: .*$/m, 'surfaces: [milk-crate]'),
    );
    const { problems, workshop } = await check(content, { proving });
    expect(problems.map(problemLine)).toEqual([]);
    expect(workshop.vehicles.map(({ id }) => id)).toContain('milk-float');
    expect(workshop.surfaces.map(({ id }) => id)).toContain('milk-crate');
    expect(workshop.guides.find(({ id }) => id === 'milk-light')?.data.vehicles).toEqual(['milk-float']);
  }, 120_000);

  it('and the site has its page', async () => {
    const content = join(dir, 'tiny');
    cpSync(TINY, content, { recursive: true });
    add(content, 'vehicles', 'hand-cart.yaml', 'milk-float.yaml', /^name: .*$/m, 'name: Milk float');
    add(content, 'guides', 'cart-lamp.mdx', 'milk-light.mdx', /^number: .*$/m, "number: '002'", (text) =>
      text.replace(/^vehicles: .*$/m, 'vehicles: [milk-float]').replace(/^title: .*$/m, 'title: Lamp on a milk float'),
    );
    const site = join(dir, 'site');
    const { code, err } = await run('build', ['--content', content, '--out', site]);
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(readFileSync(join(site, 'vehicles/milk-float/index.html'), 'utf8')).toContain('Lamp on a milk float');
    expect(readFileSync(join(site, 'guides/milk-light/index.html'), 'utf8')).toContain('Lamp on a milk float');
  }, 180_000);
});

/** Adds one file to a workshop: another's copy under a new name, with one thing changed. */
function add(
  content: string,
  kind: string,
  from: string,
  name: string,
  find: RegExp,
  put: string,
  also: (text: string) => string = (text) => text,
): void {
  const text = readFileSync(join(content, kind, from), 'utf8');
  expect(text).toMatch(find);
  writeFileSync(join(content, kind, name), also(text.replace(find, put)));
}
