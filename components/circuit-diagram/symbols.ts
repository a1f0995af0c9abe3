import { readSymbol } from '../symbols/read.ts';

const files = import.meta.glob<string>('./symbols/*.svg', { query: '?raw', import: 'default', eager: true });

/** Inside of each circuit symbol, on a 48 × 48 grid, current from the top to the bottom of its middle. */
export const circuitSymbols: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(files).map(([path, file]) => {
    const name = path.slice('./symbols/'.length, -'.svg'.length);
    return [name, readSymbol(name, file)];
  }),
);
