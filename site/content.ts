import { guides, lessons } from 'virtual:loomleaf/documents';
import type { AstroComponentFactory } from 'astro/runtime/server/index.js';

/** The body of a guide or lesson, to be placed as `<Content components={…} />`. */
export function contentOf(kind: 'guides' | 'lessons', id: string): Promise<AstroComponentFactory> {
  const load = (kind === 'guides' ? guides : lessons)[id];
  if (!load) throw new RangeError(`No ${kind === 'guides' ? 'guide' : 'lesson'} "${id}" to show`);
  return load();
}
