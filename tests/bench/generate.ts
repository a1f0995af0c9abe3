import { cpSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { schemas } from '../../components/schemas.ts';

const ROOT = join(import.meta.dirname, '../..');
const DEMONSTRATION = join(ROOT, 'content');

/** A guide of the demonstration under another id and number. */
interface Copy {
  id: string;
  text: string;
}

/** As many guides as asked for: the demonstration's, over and over. Twenty guides share their twenty circuits, as a workshop's do. */
function copies(guides: number): Copy[] {
  const folder = join(DEMONSTRATION, 'guides');
  const originals = readdirSync(folder)
    .filter((name) => name.endsWith('.mdx'))
    .sort()
    .map((name) => ({ id: name.slice(0, -4), text: readFileSync(join(folder, name), 'utf8') }));
  return Array.from({ length: guides }, (_, n) => {
    const { id, text } = originals[n % originals.length]!;
    const round = Math.floor(n / originals.length);
    return {
      id: round === 0 ? id : `${id}-${round + 1}`,
      text: text
        .replace(/^number: .*$/m, `number: '${String(n + 1).padStart(4, '0')}'`)
        .replace(/^title: (.*)$/m, (line, title: string) =>
          round === 0 ? line : `title: ${variant(title, round + 1)}`,
        ),
    };
  });
}

/** A title told apart, inside its quotes where it has some. */
const variant = (title: string, n: number): string => title.replace(/'?$/, (end) => `, variant ${n}${end}`);

/** A workshop's folder with that many guides; everything else is the demonstration's. */
export function generateWorkshop(dir: string, guides: number): void {
  cpSync(DEMONSTRATION, dir, { recursive: true, filter: (path) => path !== join(DEMONSTRATION, 'guides') });
  mkdirSync(join(dir, 'guides'));
  for (const { id, text } of copies(guides)) writeFileSync(join(dir, `guides/${id}.mdx`), text);
}

/**
 * The same guides as a project of Astro and its MDX integration alone: a collection, the same two pages a guide (the guide
 * and its card), and for each component an element that holds what stands inside it.
 */
export function generateBare(dir: string, guides: number): void {
  const write = (path: string, text: string) => {
    mkdirSync(join(dir, path, '..'), { recursive: true });
    writeFileSync(join(dir, path), text);
  };
  mkdirSync(dir, { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(dir, 'node_modules'));
  write('package.json', '{ "type": "module" }\n');
  write(
    'astro.config.mjs',
    `import mdx from '@astrojs/mdx';
export default { site: 'https://example.org', trailingSlash: 'always', integrations: [mdx()], markdown: { syntaxHighlight: false } };
`,
  );
  write(
    'src/content.config.ts',
    `import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
export const collections = { guides: defineCollection({ loader: glob({ base: './guides', pattern: '*.mdx' }) }) };
`,
  );
  write('src/Plain.astro', '<div><slot /></div>\n');
  const names = Object.keys(schemas);
  for (const path of ['index', 'card'])
    write(
      `src/pages/guides/[id]/${path}.astro`,
      `---
import { getCollection, render } from 'astro:content';
import Plain from '../../../Plain.astro';
export async function getStaticPaths() {
  return (await getCollection('guides')).map((guide) => ({ params: { id: guide.id }, props: { guide } }));
}
const { guide } = Astro.props;
const { Content } = await render(guide);
const components = { ${names.map((name) => `${name}: Plain`).join(', ')} };
---
<!doctype html>
<html lang="en"><head><meta charset="utf-8" /><title>{guide.data.title}</title></head>
<body><main><h1>{guide.data.title}</h1><Content components={components} /></main></body></html>
`,
    );
  for (const { id, text } of copies(guides)) write(`guides/${id}.mdx`, text);
}
