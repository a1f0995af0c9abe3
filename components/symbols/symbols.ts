import { readSymbol } from './read.ts';

const files = import.meta.glob<string>('./svg/*.svg', { query: '?raw', import: 'default', eager: true });

/** Drawing by symbol name, read once a build. */
export const symbols: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(files).map(([path, file]) => {
    const name = path.slice('./svg/'.length, -'.svg'.length);
    return [name, readSymbol(name, file)];
  }),
);

/** The symbol that stands for a part of a circuit on the page line, by the part's kind. */
const BY_KIND: Readonly<Record<string, string>> = {
  sink: 'door',
  splice: 'join',
};

/** Name of a drawing for a station: the symbol it names, else its part's kind, else a plain node. */
export function symbolFor(symbol: string | undefined, kind: string | undefined): string {
  const name = symbol ?? (kind === undefined ? 'node' : (BY_KIND[kind] ?? kind));
  return name in symbols ? name : 'node';
}
