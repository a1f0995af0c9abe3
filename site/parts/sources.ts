/** What a source page says about one source: what calc takes from it, and which published rows judge the answers. */
export interface SourceEntry {
  source: string;
  id: string;
  /** Tables of calc that hold figures of it, with how each was read. */
  taken: { table: string; topic: string; at: string; read: string; rows: number }[];
  /** Rows that the tests compare with: how many, of which kind, where in the source. */
  checks: { kind: string; at: string; read: string; rows: number }[];
}

interface CitedRow {
  source: string;
  at: string;
  read: string;
}

const cited = (value: unknown): value is CitedRow => {
  const row = value as Partial<CitedRow> | null;
  return (
    typeof value === 'object' &&
    row !== null &&
    typeof row.source === 'string' &&
    typeof row.at === 'string' &&
    typeof row.read === 'string'
  );
};

/** "BLADE_RATINGS" → "blade ratings", "bladeRatings" → "blade ratings". */
const spoken = (name: string): string =>
  name
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replaceAll('_', ' ')
    .toLowerCase();
const fileName = (path: string): string => path.slice(path.lastIndexOf('/') + 1).replace(/(\.rows)?\.\w+$/, '');

/** Every cited row inside a value, however deep: a table may be a list, a record of rows, or a record of lists. */
function* rowsIn(value: unknown, depth = 0): Generator<CitedRow> {
  if (typeof value !== 'object' || value === null || depth > 5) return;
  if (cited(value)) yield value;
  for (const inner of Array.isArray(value) ? value : Object.values(value)) yield* rowsIn(inner, depth + 1);
}

/**
 * The list of sources, from the tables themselves and the rows of the tests: nothing on it is written by hand.
 * @param tables calc's table modules by path
 * @param rows published rows by path: files that hold a list of cited rows; others are passed over
 */
export function sourcesOf(
  tables: Readonly<Record<string, Readonly<Record<string, unknown>>>>,
  rows: Readonly<Record<string, unknown>>,
): SourceEntry[] {
  const found = new Map<string, SourceEntry>();
  const entry = (source: string): SourceEntry => {
    let known = found.get(source);
    if (!known) found.set(source, (known = { source, id: '', taken: [], checks: [] }));
    return known;
  };
  for (const path of Object.keys(tables).sort()) {
    for (const [name, table] of Object.entries(tables[path]!)) {
      for (const row of rowsIn(table)) {
        const taken = entry(row.source).taken;
        const same = taken.find((each) => each.table === spoken(name) && each.at === row.at && each.read === row.read);
        if (same) same.rows += 1;
        else taken.push({ table: spoken(name), topic: spoken(fileName(path)), at: row.at, read: row.read, rows: 1 });
      }
    }
  }
  for (const path of Object.keys(rows).sort()) {
    const list = rows[path];
    if (!Array.isArray(list)) continue;
    for (const row of list) {
      if (!cited(row)) continue;
      const checks = entry(row.source).checks;
      const kind = spoken(fileName(path));
      const same = checks.find((each) => each.kind === kind && each.at === row.at && each.read === row.read);
      if (same) same.rows += 1;
      else checks.push({ kind, at: row.at, read: row.read, rows: 1 });
    }
  }
  const entries = [...found.values()].sort((a, b) => a.source.localeCompare(b.source, 'en'));
  for (const [index, each] of entries.entries()) each.id = `source-${index + 1}`;
  return entries;
}
