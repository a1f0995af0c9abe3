import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Addresses of the pages of a built site, below its base path. */
export function pagesIn(dir: string): string[] {
  return readdirSync(dir, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('index.html'))
    .map((path) => `/${path.slice(0, -'index.html'.length)}`)
    .sort();
}

/** Links of every page that lead to no file, or to no part of their page. */
export function deadLinks(dir: string, base: string): string[] {
  const pages = new Map<string, { html: string; ids: Set<string> }>();
  const load = (page: string) => {
    let found = pages.get(page);
    if (!found) {
      const html = readFileSync(join(dir, page, 'index.html'), 'utf8');
      found = { html, ids: new Set([...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => unescaped(id!))) };
      pages.set(page, found);
    }
    return found;
  };
  const dead: string[] = [];
  for (const page of pagesIn(dir)) {
    const { html } = load(page);
    const markup = html.replace(/<script[\s\S]*?<\/script>/g, '');
    for (const [, raw] of markup.matchAll(/<(?:a|link|img|script|use|source)\b[^>]*?\s(?:href|src)="([^"]*)"/g)) {
      const link = unescaped(raw!);
      if (/^[a-z]+:/i.test(link)) continue;
      const [path = '', part] = link.split('#', 2);
      const [file] = path.split('?');
      let target = page;
      if (file) {
        if (!file.startsWith(base)) {
          dead.push(`${page} -> ${link}`);
          continue;
        }
        target = `/${decodeURI(file.slice(base.length))}`;
        const found = join(dir, target);
        if (!existsSync(found) || (statSync(found).isDirectory() && !existsSync(join(found, 'index.html')))) {
          dead.push(`${page} -> ${link}`);
          continue;
        }
      }
      // The gallery shows components apart from the pages that they lead about in.
      if (page === '/gallery/' && target === page) continue;
      if (part && target.endsWith('/') && !load(target).ids.has(decodeURIComponent(part)))
        dead.push(`${page} -> ${link}`);
    }
  }
  return dead;
}

const REFERS = /\s(for|aria-labelledby|aria-describedby|aria-controls|popovertarget)="([^"]*)"/g;

/** Parts of a page that share a name, and names that a part refers to and no other part has. */
export function wrongNames(dir: string): string[] {
  return pagesIn(dir).flatMap((page) => {
    const markup = readFileSync(join(dir, page, 'index.html'), 'utf8').replace(/<(script|style)[\s\S]*?<\/\1>/g, '');
    const names = [...markup.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id!);
    const known = new Set(names);
    const twice = names
      .filter((name, at) => names.indexOf(name) !== at)
      .map((name) => `${page}: two parts named ${name}`);
    const missing = [...markup.matchAll(REFERS)].flatMap(([, attribute, ids]) =>
      ids!.split(' ').flatMap((id) => (known.has(id) ? [] : [`${page}: ${attribute} names ${id}, which is not there`])),
    );
    return [...twice, ...missing];
  });
}

const unescaped = (text: string): string => text.replace(/&#38;|&amp;/g, '&').replace(/&quot;|&#34;/g, '"');
