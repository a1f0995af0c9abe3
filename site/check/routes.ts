import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Addresses of every page of the site, read from the folder of pages; `[id]` stands for the ids of its folder's kind. */
export function pagesOf(ids: Readonly<Record<string, Iterable<string>>>): Set<string> {
  const pages = new Set<string>();
  for (const file of readdirSync(PAGES, { recursive: true, encoding: 'utf8' }).sort()) {
    if (!file.endsWith('.astro')) continue;
    const path = file.replace(/\.astro$/, '').replace(/(^|\/)index$/, '');
    const route = path === '' ? '/' : `/${path}/`;
    const variable = /\[\w+\]/.exec(route);
    if (!variable) pages.add(route);
    else for (const id of ids[route.split('/')[1] ?? ''] ?? []) pages.add(route.replace(variable[0], id));
  }
  return pages;
}

const PAGES = join(import.meta.dirname, '../pages');
