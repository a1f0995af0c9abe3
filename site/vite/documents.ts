import { join } from 'node:path';
import type { Plugin } from 'vite';
import { filesUnder } from '../read/folder.ts';
import { KINDS, type Kind } from '../read/kinds.ts';

const NAME = 'virtual:loomleaf/documents';

/**
 * The MDX bodies of guides and lessons as one module: id → a function that loads it. Content collections would keep
 * their list in the project folder, where two builds at once overwrite each other's.
 */
export function documents(dir: string): Plugin {
  return {
    name: 'loomleaf-documents',
    resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
    load(id) {
      if (id !== `\0${NAME}`) return undefined;
      return (['guides', 'lessons'] satisfies Kind[])
        .map((kind) => {
          const { ending } = KINDS[kind];
          const lines = filesUnder(join(dir, kind))
            .filter((path) => path.endsWith(ending))
            .map((path) => {
              const file = join(dir, kind, path);
              const name = path.slice(path.lastIndexOf('/') + 1, -ending.length);
              return `  ${JSON.stringify(name)}: () => import(${JSON.stringify(file)}),`;
            });
          return `export const ${kind} = {\n${lines.join('\n')}\n};`;
        })
        .join('\n');
    },
  };
}
