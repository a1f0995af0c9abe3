import type { Entry } from '../../read/folder.ts';
import type { Problem } from '../../read/source.ts';
import { didYouMean } from '../../suggest.ts';
import { listAt, type Names, type Rule, textAt } from '../rule.ts';

/** Fields of a file that name other files: the field, and the kind it names. */
const GUIDE_LISTS = { vehicles: 'vehicles', surfaces: 'surfaces', lessons: 'lessons', traits: 'traits' } as const;

/** Whatever a file names is there. */
export const unknownName: Rule = {
  id: 'unknown-name',
  *check({ reading, names, calculators }) {
    for (const entry of reading.entries.guides) {
      for (const [field, kind] of Object.entries(GUIDE_LISTS) as [string, keyof Names][])
        yield* list(entry, [field], listAt(entry.raw, field), kind, names);
      yield* each(entry, ['calculators'], listAt(entry.raw, 'calculators'), 'calculator', calculators);
      const circuit = textAt(entry.raw, 'circuit');
      if (circuit !== undefined && !names.circuits.has(circuit))
        yield unknown(entry, ['circuit'], 'circuit', circuit, names.circuits);
    }
    for (const entry of reading.entries.lessons)
      yield* list(entry, ['after'], listAt(entry.raw, 'after'), 'lessons', names);
    for (const entry of reading.entries.vehicles) {
      yield* list(entry, ['traits'], listAt(entry.raw, 'traits'), 'traits', names);
      for (const [i, ask] of listAt(entry.raw, 'ask').entries())
        yield* list(entry, ['ask', i, 'adds'], listAt(ask, 'adds'), 'traits', names);
      const board = (entry.raw as { board?: unknown } | undefined)?.board;
      for (const [i, place] of listAt(board, 'places').entries())
        yield* list(entry, ['board', 'places', i, 'guides'], listAt(place, 'guides'), 'guides', names);
    }
  },
};

const SINGULAR: Record<keyof Names, string> = {
  guides: 'guide',
  lessons: 'lesson',
  circuits: 'circuit',
  vehicles: 'vehicle type',
  traits: 'trait',
  surfaces: 'surface',
  relays: 'relay form',
};

function* list(
  entry: Entry,
  path: PropertyKey[],
  values: unknown[],
  kind: keyof Names,
  names: Names,
): Generator<Problem> {
  yield* each(entry, path, values, SINGULAR[kind], names[kind]);
}

function* each(
  entry: Entry,
  path: PropertyKey[],
  values: unknown[],
  what: string,
  known: Iterable<string>,
): Generator<Problem> {
  const names = known instanceof Set ? (known as ReadonlySet<string>) : new Set(known);
  for (const [i, value] of values.entries())
    if (typeof value === 'string' && !names.has(value)) yield unknown(entry, [...path, i], what, value, names);
}

function unknown(entry: Entry, path: PropertyKey[], what: string, value: string, known: Iterable<string>): Problem {
  const where = entry.parts ? 'front matter: ' : '';
  return entry.source.problem(entry.offsetOf(path), `${where}no ${what} "${value}".${didYouMean(value, known)}`);
}
