import { mkdirSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Refusal } from '../../site/command/refusal.ts';
import { type Serving, serve } from '../../site/command/serve.ts';
import { scratchFolder, start, TINY } from './spawn.ts';

const dir = scratchFolder();
const site = join(dir, 'site');
mkdirSync(join(site, 'guides/one'), { recursive: true });
writeFileSync(join(dir, 'secret.txt'), 'outside');
writeFileSync(join(site, '.loomleaf-site'), 'hidden');
for (const [name, text] of Object.entries({
  'index.html': 'home',
  '404.html': 'lost',
  'guides/one/index.html': 'guide',
  'a.css': 'a{}',
  'b.js': '1',
  'c.wasm': '',
  'd.svg': '<svg/>',
  'e f.txt': 'space',
  'g.unknown': 'x',
}))
  writeFileSync(join(site, name), text);

interface Answer {
  status: number;
  type: string | undefined;
  location: string | undefined;
  text: string;
}

/** Asks with the path as it is written: `fetch` would tidy up what this server must withstand. */
function ask(url: string, path: string, method = 'GET'): Promise<Answer> {
  const { hostname, port } = new URL(url);
  return new Promise((done, fail) => {
    const asked = request({ hostname, port, path, method, agent: false }, (response) => {
      let text = '';
      response.on('data', (chunk) => (text += chunk));
      response.on('end', () =>
        done({
          status: response.statusCode ?? 0,
          type: response.headers['content-type'],
          location: response.headers.location,
          text,
        }),
      );
    });
    asked.on('error', fail);
    asked.end();
  });
}

describe('the server', () => {
  let serving: Serving;
  beforeAll(async () => {
    serving = await serve({ dir: site, base: '/sub/', port: 0 });
  });
  afterAll(() => serving.close());

  it.each([
    ['/sub/', 200, 'text/html; charset=utf-8', 'home'],
    ['/sub/guides/one/', 200, 'text/html; charset=utf-8', 'guide'],
    ['/sub/guides/one/?q=1', 200, 'text/html; charset=utf-8', 'guide'],
    ['/sub/a.css', 200, 'text/css; charset=utf-8', 'a{}'],
    ['/sub/b.js', 200, 'text/javascript; charset=utf-8', '1'],
    ['/sub/c.wasm', 200, 'application/wasm', ''],
    ['/sub/d.svg', 200, 'image/svg+xml; charset=utf-8', '<svg/>'],
    ['/sub/e%20f.txt', 200, 'text/plain; charset=utf-8', 'space'],
    ['/sub/g.unknown', 200, 'application/octet-stream', 'x'],
    ['/sub/nothing/', 404, 'text/html; charset=utf-8', 'lost'],
    ['/sub/a.css/', 404, 'text/html; charset=utf-8', 'lost'],
    ['/sub/guides/', 404, 'text/html; charset=utf-8', 'lost'],
    ['/', 404, 'text/plain; charset=utf-8', 'This site lives under /sub/\n'],
    ['/sub/%E0%A4%A', 400, 'text/plain; charset=utf-8', 'This address cannot be read.\n'],
  ])('answers %s with %i', async (path, status, type, text) => {
    expect(await ask(serving.url, path)).toMatchObject({ status, type, text });
  });

  it.each([
    '/sub/../secret.txt',
    '/sub/%2e%2e/secret.txt',
    '/sub/..%2fsecret.txt',
    '/sub/guides/..%5c..%5csecret.txt',
    '/sub/.loomleaf-site',
    '/sub/a.css%00.html',
  ])('gives nothing away for %s', async (path) => {
    expect(await ask(serving.url, path)).toMatchObject({ status: 404 });
  });

  it('leads to the address with a slash, on this host', async () => {
    expect(await ask(serving.url, '/sub')).toMatchObject({ status: 301, location: '/sub/' });
    expect(await ask(serving.url, '/sub/guides/one?q=1')).toMatchObject({
      status: 301,
      location: '/sub/guides/one/?q=1',
    });
  });

  it('answers HEAD without a body and refuses to be written to', async () => {
    expect(await ask(serving.url, '/sub/', 'HEAD')).toMatchObject({ status: 200, text: '' });
    expect(await ask(serving.url, '/sub/', 'POST')).toMatchObject({ status: 405 });
  });

  it('refuses a port that is taken', async () => {
    const port = Number(new URL(serving.url).port);
    const refused = serve({ dir: site, base: '/', port });
    await expect(refused).rejects.toThrow(Refusal);
    await expect(refused).rejects.toThrow(`Port ${port} is in use; choose another: --port ${port + 1}`);
  });
});

describe('start', () => {
  it('builds, serves, says where in one line, and ends clean', async () => {
    const { child, ended } = start('start', ['--content', TINY, '--out', join(dir, 'started'), '--port', '0']);
    const url = await new Promise<string>((done, fail) => {
      let out = '';
      child.stdout?.on('data', (chunk) => {
        out += chunk;
        const said = /^Loomleaf is at (http:\/\/localhost:\d+\/) \(Ctrl-C ends it\)$/m.exec(out);
        if (said) done(said[1]!);
      });
      void ended.then(({ err }) => fail(new Error(err)));
    });
    const home = await fetch(url);
    expect(await home.text()).toContain('Corner Bench');
    expect((await fetch(`${url}pagefind/pagefind.js`)).status).toBe(200);
    child.kill('SIGINT');
    expect((await ended).code).toBe(0);
  }, 180_000);
});
