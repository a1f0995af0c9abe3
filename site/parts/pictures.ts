import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { imageMetadata } from 'astro/assets/utils';
import { contentDir } from '../workshop.ts';

/** Size of a picture of the content folder, so that a page keeps its place; null where the file does not say. */
export async function pictureSize(path: string): Promise<{ width: number; height: number } | null> {
  try {
    const { width, height } = await imageMetadata(await readFile(join(contentDir(), path)), path);
    return { width, height };
  } catch {
    return null;
  }
}
