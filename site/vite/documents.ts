import { join } from 'node:path';
import type { Plugin } from 'vite';
import { filesUnder } from '../read/folder.ts';
import { KINDS, type Kind } from '../read/kinds.ts';

const NAME = 'virtual:loomleaf/documents';
const SHARE = /^\0virtual:loomleaf\/documents\/(guides|lessons)\/(\d+)$/;
/** Bodies in one module of the built generator: a thousand modules of one body each take longer to write and load. */
const AT_ONCE = 100;

/**
 * The MDX bodies of guides and lessons as one module: id → a function that loads it. Content collections would keep
 * their list in the project folder, where two builds at once overwrite each other's.
 */
export function documents(dir: string): Plugin {
  let alone = false;
  const bodiesOf = (kind: Kind) => {
    const { ending } = KINDS[kind];
    return filesUnder(join(dir, kind))
      .filter((path) => path.endsWith(ending))
      .map((path) => ({ id: path.slice(path.lastIndexOf('/') + 1, -ending.length), file: join(dir, kind, path) }));
  };
  return {
    name: 'loomleaf-documents',
    // While previewing each body is a module of its own: a changed one alone is read again.
    configResolved: ({ command }) => {
      alone = command === 'serve';
    },
    resolveId: (id) => (id === NAME || id.startsWith(`${NAME}/`) ? `\0${id}` : undefined),
    load(id) {
      const share = SHARE.exec(id);
      if (share) {
        const at = Number(share[2]) * AT_ONCE;
        const bodies = bodiesOf(share[1] as Kind).slice(at, at + AT_ONCE);
        const imports = bodies.map(({ file }, n) => `import body${n} from ${JSON.stringify(file)};`);
        const entries = bodies.map(({ id }, n) => `  ${JSON.stringify(id)}: body${n},`);
        return `${imports.join('\n')}\nexport const bodies = {\n${entries.join('\n')}\n};`;
      }
      if (id !== `\0${NAME}`) return undefined;
      return (['guides', 'lessons'] satisfies Kind[])
        .map((kind) => {
          const lines = bodiesOf(kind).map(({ id, file }, n) => {
            const key = JSON.stringify(id);
            return alone
              ? `  ${key}: () => import(${JSON.stringify(file)}).then((module) => module.default),`
              : `  ${key}: () => import('${NAME}/${kind}/${Math.floor(n / AT_ONCE)}').then(({ bodies }) => bodies[${key}]),`;
          });
          return `export const ${kind} = {\n${lines.join('\n')}\n};`;
        })
        .join('\n');
    },
  };
}
