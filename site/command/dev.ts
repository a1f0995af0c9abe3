import { join } from 'node:path';
import { PROJECT, readOptions } from './options.ts';
import { run } from './refusal.ts';

await run(async () => {
  const { content, base, port } = readOptions('dev', process.argv.slice(2));
  process.env['LOOMLEAF_DRAFTS'] = '1';
  // A preview shows what holds and says what does not; each saved file is checked again.
  const { checkContent } = await import('./check-content.ts');
  await checkContent(content);
  Object.assign(process.env, {
    ASTRO_TELEMETRY_DISABLED: '1',
    LOOMLEAF_CONTENT: content,
    LOOMLEAF_BASE: base,
    LOOMLEAF_CACHE: join(PROJECT, '.loomleaf/dev'),
  });
  const { dev } = await import('astro');
  const server = await dev({ root: PROJECT, server: { port }, logLevel: 'warn' });
  console.log(`Loomleaf previews ${content} at http://localhost:${server.address.port}${base} (Ctrl-C ends it)`);
  await new Promise<void>((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => done());
  });
  await server.stop();
  return 0;
});
