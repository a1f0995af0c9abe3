import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import * as calc from '../../calc/index.ts';

/**
 * Reads the public surface of calc with the compiler: every name that index.ts hands on, and the words that stand above
 * it. The figures printed in examples are computed again here, so that none of them can grow stale.
 */
const root = new URL('../../', import.meta.url).pathname;
const entry = `${root}calc/index.ts`;
const settings = ts.getParsedCommandLineOfConfigFile(
  `${root}tsconfig.json`,
  {},
  {
    ...ts.sys,
    onUnRecoverableConfigFileDiagnostic: (each) => {
      throw new Error(ts.flattenDiagnosticMessageText(each.messageText, ' '));
    },
  },
)!.options;
// Neither DOM nor Node: whatever calc needs beyond the language itself does not compile here.
const program = ts.createProgram([entry], {
  ...settings,
  noEmit: true,
  noUnusedLocals: false,
  lib: ['lib.es2024.d.ts'],
  types: [],
});
const checker = program.getTypeChecker();

interface Named {
  name: string;
  /** File inside calc where it is written. */
  file: string;
  /** The docblock above it, whole. */
  text: string;
  kind: 'function' | 'constant' | 'type';
}

const named: Named[] = checker
  .getExportsOfModule(checker.getSymbolAtLocation(program.getSourceFile(entry)!)!)
  .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol))
  .flatMap((symbol): Named[] => {
    const node = symbol.declarations?.[0];
    if (node === undefined || ts.isSourceFile(node)) return [];
    const holder = ts.isVariableDeclaration(node) ? node.parent.parent : node;
    const text = ts
      .getJSDocCommentsAndTags(holder)
      .filter(ts.isJSDoc)
      .map((doc) => doc.getText())
      .join('\n');
    const kind = ts.isFunctionDeclaration(node) ? 'function' : ts.isVariableDeclaration(node) ? 'constant' : 'type';
    return [{ name: symbol.name, file: node.getSourceFile().fileName.replace(`${root}calc/`, ''), text, kind }];
  });

it('compiles calc with no DOM and no Node, so it needs neither', () => {
  const messages = ts.getPreEmitDiagnostics(program).map((each) => {
    const at = each.file === undefined ? '' : each.file.fileName.replace(root, '');
    return `${at}: ${ts.flattenDiagnosticMessageText(each.messageText, ' ')}`;
  });
  expect(messages).toEqual([]);
});

it('hands on these names and no others', async () => {
  const lines = named.map(({ name, kind, file }) => `${kind} ${name} (${file})`).sort();
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot('./public-surface.txt');
});

it('describes every function and constant', () => {
  expect(named.filter(({ kind, text }) => kind !== 'type' && text === '').map(({ name }) => name)).toEqual([]);
});

/** Files of the materials and circuits blocks, whose examples need whole surfaces and circuits: their own tests show them. */
const elsewhere: readonly string[] =
  (ts.sys.readFile(`${root}calc/materials.ts`) ?? '').match(/[a-z-]+\.ts(?=')/g) ?? [];
const calculations = named.filter(
  ({ kind, file }) => kind === 'function' && !file.startsWith('circuit/') && !elsewhere.includes(file),
);

it('finds the calculations', () => {
  expect(calculations.length).toBeGreaterThan(60);
});

describe.each(calculations.map(({ name, text }) => [name, text] as const))('%s', (_name, text) => {
  it('says what it takes, what it gives, when it throws and where it stands', () => {
    expect(text).toMatch(/@param/);
    expect(text).toMatch(/@returns/);
    expect(text).toMatch(/@throws/);
    expect(text).toMatch(/@source \S/);
  });

  it('shows an example that still comes out as printed', () => {
    const example =
      /@example\s+([\s\S]*?)(?=\n\s*\*\s*@|\*\/)/
        .exec(text)?.[1]
        ?.replace(/\n\s*\*\s?/g, ' ')
        .trim() ?? '';
    const [, code, printed] = /^(.*?)\s*\/\/\s*(.+)$/.exec(example) ?? [];
    if (code === undefined || printed === undefined) throw new Error(`no "code // figure" in: ${example}`);
    const names = Object.keys(calc);
    const got: unknown = new Function(...names, `return (${code});`)(...Object.values(calc));
    expect(asPrinted(got, printed)).toBe(printed);
  });
});

/** The value as the example prints it: a number to as many decimals, a word bare or in quotes, a list with commas. */
function asPrinted(value: unknown, printed: string): string {
  if (typeof value === 'string') return printed.startsWith("'") ? `'${value}'` : value;
  if (typeof value !== 'number') return Array.isArray(value) ? value.join(', ') : String(value);
  const decimals = /^-?\d+(?:\.(\d+))?$/.exec(printed)?.[1]?.length ?? 0;
  return value.toFixed(decimals);
}
