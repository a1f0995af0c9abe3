import type { Problem, Source } from '../../read/source.ts';
import { didYouMean } from '../../suggest.ts';
import { fieldOf, listAt, type Names, type Rule, textAt } from '../rule.ts';

/** Lists of a guide's front matter that name other files, with the kind they name. */
const GUIDE_LISTS = { vehicles: 'vehicles', surfaces: 'surfaces', lessons: 'lessons', traits: 'traits' } as const;
const SINGULAR: Record<keyof Names, string> = {
  guides: 'guide',
  lessons: 'lesson',
  circuits: 'circuit',
  vehicles: 'vehicle type',
  traits: 'trait',
  surfaces: 'surface',
  relays: 'relay form',
};

/** Whatever a file names is there. */
export const unknownName: Rule = {
  id: 'unknown-name',
  *document(document, { names, calculators }) {
    const ask = inFile(document, 'front matter: ');
    const { kind, raw } = document;
    const circuit = textAt(raw, 'circuit');
    if (circuit !== undefined) yield* ask(['circuit'], circuit, 'circuit', names.circuits);
    if (kind === 'lessons') {
      yield* ask(['after'], listAt(raw, 'after'), 'lesson', names.lessons);
      return;
    }
    for (const [field, of] of Object.entries(GUIDE_LISTS) as [string, keyof Names][])
      yield* ask([field], listAt(raw, field), SINGULAR[of], names[of]);
    yield* ask(['calculators'], listAt(raw, 'calculators'), 'calculator', calculators);
  },

  *whole({ reading, content: { names } }) {
    for (const vehicle of reading.entries.vehicles) {
      const ask = inFile(vehicle, '');
      yield* ask(['traits'], listAt(vehicle.raw, 'traits'), 'trait', names.traits);
      for (const [i, question] of listAt(vehicle.raw, 'ask').entries())
        yield* ask(['ask', i, 'adds'], listAt(question, 'adds'), 'trait', names.traits);
      for (const [i, place] of listAt(fieldOf(vehicle.raw, 'board'), 'places').entries())
        yield* ask(['board', 'places', i, 'guides'], listAt(place, 'guides'), 'guide', names.guides);
    }
  },
};

interface File {
  source: Source;
  offsetOf(path: readonly PropertyKey[]): number;
}

function inFile({ source, offsetOf }: File, where: string) {
  return function* (
    path: readonly PropertyKey[],
    given: unknown[] | string,
    what: string,
    known: Iterable<string>,
  ): Generator<Problem> {
    const names = known instanceof Set ? (known as ReadonlySet<string>) : new Set(known);
    for (const [i, name] of [given].flat().entries()) {
      if (typeof name !== 'string' || names.has(name)) continue;
      const offset = offsetOf(typeof given === 'string' ? path : [...path, i]);
      yield source.problem(offset, `${where}no ${what} "${name}".${didYouMean(name, names)}`);
    }
  };
}
