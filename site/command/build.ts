import { buildSite } from './build-site.ts';
import { readOptions } from './options.ts';
import { run } from './refusal.ts';

await run(() => buildSite(readOptions('build', process.argv.slice(2))));
