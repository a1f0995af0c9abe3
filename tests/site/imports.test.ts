import { readdirSync, readFileSync } from 'node:fs';
import { dirname, extname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const CODE = new Set(['.ts', '.mjs', '.astro', '.mdx']);

/** Every file of a room, as a path from the root. */
function filesOf(room: string, wanted: (name: string) => boolean): string[] {
  return readdirSync(join(root, room), { recursive: true, encoding: 'utf8' })
    .map((name) => join(room, name))
    .filter(wanted);
}

/** What a file imports: `import … from '…'`, `export … from '…'`, `import '…'` and `import('…')`. */
function importsOf(file: string): string[] {
  const text = readFileSync(join(root, file), 'utf8');
  const found = text.matchAll(
    /(?:^|[\n};]\s*)(?:(?:import|export)\s[^'"`;]*?from\s*|import\s*)(['"])([^'"\n]+)\1|\bimport\((['"])([^'"\n]+)\3\)/g,
  );
  return [...found].map((each) => (each[2] ?? each[4])!);
}

/** The file an import means, as a path from the root; a package or a virtual module stays as it is written. */
const targetOf = (file: string, specifier: string): string =>
  specifier.startsWith('.') ? relative(root, resolve(root, dirname(file), specifier)) : specifier;

/** Rooms a room may import from, and through which door. */
const MAY: Record<string, (target: string, file: string) => boolean> = {
  calc: (target) => target.startsWith(`calc${sep}`),
  components: (target) => target.startsWith(`components${sep}`) || target === join('calc', 'index.ts'),
  site: (target, file) =>
    target.startsWith(`site${sep}`) ||
    target.startsWith(`components${sep}`) ||
    target === join('calc', 'index.ts') ||
    // The conformance runner checks the circuit solver's inner steps, which no page may lean on.
    (file.startsWith(join('site', 'conformance')) && target.startsWith(join('calc', 'circuit'))),
};
/** Whether an import names one of our own files. */
const isOurs = (target: string): boolean => /^(?:calc|components|site|content|tests)[\\/]/.test(target);

describe.each(Object.keys(MAY))('%s', (room) => {
  const files = filesOf(room, (name) => CODE.has(extname(name)));

  it('has files to look at', () => {
    expect(files.length).toBeGreaterThan(3);
  });

  it('imports only from where its data comes', () => {
    const stray = files.flatMap((file) =>
      importsOf(file)
        .map((specifier) => ({ file, specifier, target: targetOf(file, specifier) }))
        .filter(({ target }) => (room === 'calc' || isOurs(target) ? !MAY[room]!(target, file) : false))
        .map(({ specifier }) => `${file} imports ${specifier}`),
    );
    expect(stray).toEqual([]);
  });

  it('names the file it imports with its ending, so that it runs without a build', () => {
    const bare = files.flatMap((file) =>
      importsOf(file)
        .filter((specifier) => specifier.startsWith('.') && extname(specifier.split('?')[0]!) === '')
        .map((specifier) => `${file} imports ${specifier}`),
    );
    expect(bare).toEqual([]);
  });
});

describe('content', () => {
  it('holds data only: no guide imports, exports or computes', () => {
    const guides = filesOf('content', (name) => extname(name) === '.mdx');
    const code = guides.flatMap((file) => {
      const prose = readFileSync(join(root, file), 'utf8').replace(/^---\n[\s\S]*?\n---\n/, '');
      return /^(?:import|export)\s/m.test(prose) ? [file] : [];
    });
    expect(code).toEqual([]);
    expect(filesOf('content', (name) => ['.ts', '.js', '.mjs'].includes(extname(name)))).toEqual([]);
  });
});

it('reads every way to import', () => {
  expect(importsOf(join('calc', 'voltage-drop.ts'))).toEqual(['./conductor.ts', './guard.ts']);
  expect(importsOf(join('calc', 'index.ts'))).toContain('./voltage-drop.ts');
});

it('would catch an import that runs the wrong way', () => {
  const may = (file: string, specifier: string) => MAY[file.split('/')[0]!]!(targetOf(file, specifier), file);
  expect(may('calc/fuse.ts', './guard.ts')).toBe(true);
  expect(may('calc/fuse.ts', '../components/index.ts')).toBe(false);
  expect(may('calc/fuse.ts', 'node:fs')).toBe(false);
  expect(may('components/fuse-sizer/model.ts', '../../calc/fuse.ts')).toBe(false);
  expect(may('components/fuse-sizer/model.ts', '../../site/pages/index.astro')).toBe(false);
  expect(may('site/pages/index.astro', '../../calc/index.ts')).toBe(true);
  expect(may('site/pages/index.astro', '../../calc/circuit/solve.ts')).toBe(false);
});
