import { createReadStream, type Stats } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { Refusal } from './refusal.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.avif': 'image/avif',
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpeg': 'image/jpeg',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
  '.yaml': 'text/plain; charset=utf-8',
};

export interface ServeOptions {
  dir: string;
  /** Path the site lives under, a slash at both ends. */
  base: string;
  /** 0 = any free port. */
  port: number;
  /** Waited for before the first answer: the port is taken before a long build, so that a busy one shows at once. */
  ready?: Promise<unknown>;
}
export interface Serving {
  url: string;
  close(): Promise<void>;
}

/** Serves a built site on this machine only. Files are read per request, so that a site built anew shows at once. */
export async function serve(options: ServeOptions): Promise<Serving> {
  const server = createServer(async (request, response) => {
    try {
      await options.ready;
      if (request.method !== 'GET' && request.method !== 'HEAD')
        return plain(response, 405, 'Only reading is possible here.');
      await answer(options, request.url ?? '/', request.method === 'HEAD', response);
    } catch {
      if (!response.headersSent) plain(response, 500, 'The page could not be read.');
      else response.destroy();
    }
  });
  await listen(server, options.port);
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://localhost:${port}${options.base}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

async function answer(
  { dir, base }: ServeOptions,
  url: string,
  head: boolean,
  response: ServerResponse,
): Promise<void> {
  const [rawPath = '/', query] = url.split('?', 2);
  let path: string;
  try {
    path = decodeURIComponent(rawPath);
  } catch {
    return plain(response, 400, 'This address cannot be read.');
  }
  if (`${path}/` === base) return redirect(response, base, query);
  if (!path.startsWith(base)) return plain(response, 404, `This site lives under ${base}`);
  const inside = path.slice(base.length);
  // No part of an address may climb out of the site or name a hidden file.
  if (inside.split(/[/\\]/).some((part) => part.startsWith('.')) || inside.includes('\0'))
    return notFound(dir, head, response);

  let file = join(dir, inside);
  let found = await stats(file);
  if (found?.isDirectory()) {
    if (!path.endsWith('/')) return redirect(response, `${rawPath}/`, query);
    file = join(file, 'index.html');
    found = await stats(file);
  } else if (path.endsWith('/')) found = undefined;
  if (!found?.isFile()) return notFound(dir, head, response);
  send(response, 200, file, found, head);
}

async function notFound(dir: string, head: boolean, response: ServerResponse): Promise<void> {
  const file = join(dir, '404.html');
  const found = await stats(file);
  if (found?.isFile()) send(response, 404, file, found, head);
  else plain(response, 404, 'There is no such page.');
}

function send(response: ServerResponse, status: number, file: string, { size }: Stats, head: boolean): void {
  response.writeHead(status, {
    'content-type': TYPES[extname(file).toLowerCase()] ?? 'application/octet-stream',
    'content-length': size,
    // Files under _astro carry a hash in their names; everything else may change with the next build.
    'cache-control': file.includes('/_astro/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    'x-content-type-options': 'nosniff',
  });
  if (head) response.end();
  else
    createReadStream(file)
      .on('error', () => response.destroy())
      .pipe(response);
}

function redirect(response: ServerResponse, path: string, query: string | undefined): void {
  // A path that begins with two slashes would name another host.
  const location = path.replace(/^\/+/, '/') + (query === undefined ? '' : `?${query}`);
  response.writeHead(301, { location }).end();
}

function plain(response: ServerResponse, status: number, text: string): void {
  response
    .writeHead(status, { 'content-type': 'text/plain; charset=utf-8', 'x-content-type-options': 'nosniff' })
    .end(`${text}\n`);
}

const stats = (file: string): Promise<Stats | undefined> => stat(file).catch(() => undefined);

function listen(server: Server, port: number): Promise<void> {
  return new Promise((done, fail) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') fail(new Refusal(`Port ${port} is in use; choose another: --port ${port + 1}`));
      else if (error.code === 'EACCES')
        fail(new Refusal(`Port ${port} is not open to this user; choose one above 1023`));
      else fail(error);
    });
    server.listen(port, 'localhost', done);
  });
}
