import { createReadStream, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { checkContent, count } from '../command/check-content.ts';

/** While previewing: every change in the content folder is checked and shown, and its pictures are served. */
export function preview(dir: string, base: string): Plugin {
  return {
    name: 'loomleaf-preview',
    apply: 'serve',
    configureServer(server) {
      const prefix = `${base.replace(/\/$/, '')}/images/`;
      server.middlewares.use((request, response, next) => {
        const path = decodeURIComponent((request.url ?? '').split('?')[0] ?? '');
        const at = path.startsWith(prefix) ? prefix.length : path.startsWith('/images/') ? '/images/'.length : 0;
        const file = join(dir, 'images', path.slice(at));
        if (at === 0 || path.includes('..') || !statSync(file, { throwIfNoEntry: false })?.isFile()) return next();
        if (file.endsWith('.svg')) response.setHeader('content-type', 'image/svg+xml');
        createReadStream(file).pipe(response);
      });

      server.watcher.add(dir);
      let waiting: ReturnType<typeof setTimeout> | undefined;
      server.watcher.on('all', (_, path) => {
        if (!path.startsWith(dir)) return;
        clearTimeout(waiting);
        // Editors save in several moves; one check is enough for all of them.
        waiting = setTimeout(async () => {
          const { errors } = await checkContent(dir);
          console.log(errors === 0 ? 'Content holds' : count(errors, 'error'));
          for (const environment of Object.values(server.environments)) {
            environment.moduleGraph.invalidateAll();
            environment.hot.send({ type: 'full-reload' });
          }
        }, 120);
      });
    },
  };
}
