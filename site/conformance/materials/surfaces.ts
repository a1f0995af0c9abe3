import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parse } from 'yaml';
import type { SurfaceFacts } from '../../../calc/index.ts';
import { type SurfaceData, surfaceFacts, surfaceSchema } from '../../schemas/surface.ts';

const FOLDER = join(import.meta.dirname, '../../../content/surfaces');

export interface KnownSurface {
  data: SurfaceData;
  facts: SurfaceFacts;
}

let read: KnownSurface[] | undefined;

/** Every surface of the workshop's content; read once. */
export function knownSurfaces(): readonly KnownSurface[] {
  read ??= readdirSync(FOLDER)
    .filter((file) => file.endsWith('.yaml'))
    .sort()
    .map((file) => {
      const data = surfaceSchema.parse(parse(readFileSync(join(FOLDER, file), 'utf8')));
      return { data, facts: surfaceFacts(basename(file, '.yaml'), data) };
    });
  return read;
}

const letters = (word: string): string[] => word.toLowerCase().match(/[a-z0-9]+/g) ?? [];

/** A surface by its id, its name, or the search word that a question's own words hold most of. */
export function surfaceCalled(called: string): KnownSurface | undefined {
  const all = knownSurfaces();
  const exact = all.find(({ facts }) => facts.id === called || facts.name === called);
  if (exact !== undefined) return exact;
  const asked = new Set(letters(called));
  let best: KnownSurface | undefined;
  let most = 0;
  for (const surface of all) {
    for (const word of [surface.data.name, ...surface.data.words]) {
      const parts = letters(word);
      const score = parts.every((part) => asked.has(part)) ? parts.length : 0;
      if (score > most) {
        most = score;
        best = surface;
      }
    }
  }
  return best;
}
