import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Content } from './rule.ts';

/**
 * Every page of the site, read from the folder of pages, with the parts that content gives it. `undefined` means that
 * the page's parts are its layout's own and are judged on the built page instead.
 */
export function routesOf(content: Content): Map<string, readonly string[] | undefined> {
  const routes = new Map<string, readonly string[] | undefined>();
  const ids: Record<string, Iterable<string>> = { ...content.names, calculators: content.calculators };
  const anchors = new Map<string, readonly string[]>();
  for (const kind of ['guides', 'lessons'] as const)
    for (const { id, outline } of content.reading.entries[kind])
      if (outline) anchors.set(`/${kind}/${id}/`, outline.anchors);

  for (const page of pageFiles()) {
    const path = page.replace(/\.astro$/, '').replace(/(^|\/)index$/, '');
    const route = path === '' ? '/' : `/${path}/`;
    const variable = /\[\w+\]/.exec(route);
    if (!variable) {
      routes.set(route, undefined);
      continue;
    }
    const kind = route.split('/')[1] ?? '';
    for (const id of ids[kind] ?? []) {
      const address = route.replace(variable[0], id);
      routes.set(address, anchors.get(address));
    }
  }
  return routes;
}

const PAGES = join(import.meta.dirname, '../pages');

function pageFiles(): string[] {
  return readdirSync(PAGES, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.astro'))
    .sort();
}
