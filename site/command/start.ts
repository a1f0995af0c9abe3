import { buildSite } from './build-site.ts';
import { readOptions } from './options.ts';
import { run } from './refusal.ts';
import { serve } from './serve.ts';

await run(async () => {
  const options = readOptions('start', process.argv.slice(2));
  let open = () => {};
  const ready = new Promise<void>((done) => {
    open = done;
  });
  const serving = await serve({ dir: options.out, base: options.base, port: options.port, ready });
  const code = await buildSite(options);
  open();
  if (code !== 0) {
    await serving.close();
    return code;
  }
  console.log(`Loomleaf is at ${serving.url} (Ctrl-C ends it)`);
  await new Promise<void>((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => done());
  });
  await serving.close();
  return 0;
});
