import { readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { stripTypeScriptTypes } from 'node:module';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
import { needBrowser } from '../find-browser.ts';
import { ROOT } from './places.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.ts': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};
const SOURCE = '/source/';

export interface Site {
  address: (path: string) => string;
  browser: Browser;
  close: () => Promise<void>;
}

/**
 * A built site as a web server sends it, text compressed, and a browser. Below `/source/` it gives the project's own
 * modules, types stripped, so that a calculation can be timed in the browser by itself.
 */
export async function openSite(dir: string): Promise<Site> {
  const found = needBrowser();
  if ('missing' in found) throw new Error(found.missing);
  const packed = new Map<string, Buffer>();
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://site').pathname);
    const source = path.startsWith(SOURCE);
    let file = source ? join(ROOT, path.slice(SOURCE.length)) : join(dir, path);
    if (path.endsWith('/')) file = join(file, 'index.html');
    const type = TYPES[extname(file)];
    if (!statSync(file, { throwIfNoEntry: false })?.isFile() || (source && extname(file) !== '.ts'))
      return response.writeHead(404).end();
    let body = packed.get(file);
    if (!body) {
      const plain = readFileSync(file);
      body = source
        ? gzipSync(stripTypeScriptTypes(plain.toString()))
        : type === undefined || extname(file) === '.woff2'
          ? plain
          : gzipSync(plain, { level: 9 });
      packed.set(file, body);
    }
    const compressed = body[0] === 0x1f && body[1] === 0x8b && type !== undefined;
    response.writeHead(200, {
      'content-type': type ?? 'application/octet-stream',
      'content-length': body.length,
      ...(compressed && { 'content-encoding': 'gzip' }),
    });
    return response.end(body);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', () => done()));
  const { port } = server.address() as AddressInfo;
  const browser = await chromium.launch({ executablePath: found.path, args: ['--no-sandbox'] });
  return {
    address: (path) => `http://127.0.0.1:${port}${path}`,
    browser,
    close: async () => {
      await browser.close();
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}

/** A page of a phone's size in a profile of its own, with the session that slows it down. */
export async function phone(site: Site): Promise<{ page: Page; session: CDPSession; close: () => Promise<void> }> {
  const context = await site.browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
  const page = await context.newPage();
  return { page, session: await context.newCDPSession(page), close: () => context.close() };
}

export const slowProcessor = (session: CDPSession, times: number) =>
  session.send('Emulation.setCPUThrottlingRate', { rate: times });
