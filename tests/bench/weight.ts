import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { openSite, phone } from './browser.ts';
import { kB, type Part } from './part.ts';

/** What a page loads by itself, compressed, and what its first touch loads after. */
export async function benchWeight(dir: string, path: string): Promise<Part> {
  const site = await openSite(dir);
  try {
    const { page, close } = await phone(site);
    const loaded: string[] = [];
    page.on('request', (request) => loaded.push(new URL(request.url()).pathname));
    await page.goto(site.address(path));
    await page.waitForLoadState('networkidle');
    const first = [...new Set(loaded)];
    loaded.length = 0;
    await page.evaluate(() => window.dispatchEvent(new Event('pointerdown')));
    await page.waitForFunction(() => 'live' in document.documentElement.dataset);
    await page.waitForLoadState('networkidle');
    const late = [...new Set(loaded)];
    await close();
    const bytes = (file: string): number => {
      const plain = readFileSync(join(dir, file.endsWith('/') ? `${file}index.html` : file));
      return file.endsWith('.woff2') ? plain.length : gzipSync(plain, { level: 9 }).length;
    };
    const sum = (files: readonly string[], ending: string): number =>
      files.filter((file) => file.endsWith(ending)).reduce((total, file) => total + bytes(file), 0);
    const html = bytes(path);
    const css = sum(first, '.css');
    const js = sum(first, '.js');
    const fonts = sum(first, '.woff2');
    const lateJs = sum(late, '.js');
    return {
      lines: [
        `${path}: HTML ${kB(html)} + CSS ${kB(css)} + JavaScript ${kB(js)} = ${kB(html + css + js)} compressed; fonts ${kB(fonts)}`,
        `  with the first touch: ${kB(lateJs)} of JavaScript more in ${late.length} files: ${late
          .map((file) => ({ file, size: bytes(file) }))
          .sort((a, b) => b.size - a.size)
          .slice(0, 6)
          .map(({ file, size }) => `${file.replace(/^.*\/|\.[\w-]{8}\.js$/g, '')} ${kB(size)}`)
          .join(', ')} …`,
      ],
      figures: { pageBytes: html + css + js, firstJsBytes: js, lateJsBytes: lateJs, fontBytes: fonts },
    };
  } finally {
    await site.close();
  }
}
