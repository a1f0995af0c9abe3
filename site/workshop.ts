import { resolve } from 'node:path';
import type { Circuit } from '../calc/circuit/model.ts';
import { type Entry, type Reading, readFolder } from './read/folder.ts';
import type { DataOf, Kind } from './read/kinds.ts';
import { type Outline, wordsOf } from './read/outline.ts';
import type { Problem } from './read/source.ts';
import { circuitOf } from './schemas/circuit.ts';
import type { GuideData } from './schemas/guide.ts';
import type { LessonData } from './schemas/lesson.ts';
import type { RelayData } from './schemas/relay.ts';
import { type Shop, shopSchema } from './schemas/shop.ts';
import type { SynonymGroup, Term } from './schemas/terms.ts';
import type { TraitData } from './schemas/trait.ts';
import type { VehicleData } from './schemas/vehicle.ts';

/** What a file is called and where it lies. */
interface Named {
  id: string;
  file: string;
}
export type Vehicle = VehicleData & Named;
export type Trait = TraitData & Named;
export type Relay = RelayData & Named;
export interface Guide extends Named {
  data: GuideData;
  outline: Outline;
  words: number;
}
export interface Lesson extends Named {
  data: LessonData;
  outline: Outline;
  words: number;
}

/** A workshop's content, read and typed. Files that do not hold are left out; `problems` says which and why. */
export interface Workshop {
  dir: string;
  shop: Shop;
  /** In the order of the home page. */
  vehicles: Vehicle[];
  traits: Trait[];
  relays: Relay[];
  terms: Term[];
  synonyms: SynonymGroup[];
  circuits: Map<string, Circuit>;
  /** By number, then id. Drafts are in it only while previewing. */
  guides: Guide[];
  /** In the order of the study path. */
  lessons: Lesson[];
  /** What reading found; the check adds what its rules find. */
  problems: Problem[];
}

/** One copy for the process: the command line and the pages it builds are two module graphs of one run. */
const shared = globalThis as { [memo]?: Map<string, Promise<Workshop>> };
const memo: unique symbol = Symbol.for('loomleaf.workshop') as never;

/** The content folder that this run works on. */
export const contentDir = (): string => resolve(process.env['LOOMLEAF_CONTENT'] ?? 'content');

/** The workshop of a content folder, read once a process. */
export function workshop(dir = contentDir()): Promise<Workshop> {
  shared[memo] ??= new Map();
  let found = shared[memo].get(dir);
  if (!found) {
    found = Promise.resolve(workshopOf(readFolder(dir)));
    shared[memo].set(dir, found);
  }
  return found;
}

/** Puts a workshop that is already read where the pages look for it; a preview puts each new reading. */
export function remember(shop: Workshop): void {
  shared[memo] ??= new Map();
  shared[memo].set(shop.dir, Promise.resolve(shop));
}

export function workshopOf(reading: Reading): Workshop {
  const { entries } = reading;
  return {
    dir: reading.dir,
    shop: reading.shop?.data ?? UNNAMED,
    vehicles: named(entries.vehicles).sort((a, b) => a.order - b.order || byId(a, b)),
    traits: named(entries.traits).sort(byId),
    relays: named(entries.relays).sort(byId),
    terms: [...(reading.terms?.data?.terms ?? [])].sort((a, b) => a.term.localeCompare(b.term, 'en')),
    synonyms: reading.synonyms?.data?.groups ?? [],
    circuits: new Map(
      whole(entries.circuits)
        .sort(byId)
        .map(({ id, data }) => [id, circuitOf(id, data)]),
    ),
    guides: documents(entries.guides).sort((a, b) => a.data.number.localeCompare(b.data.number, 'en') || byId(a, b)),
    lessons: documents(entries.lessons).sort((a, b) => a.data.order - b.data.order || byId(a, b)),
    problems: reading.problems,
  };
}

const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

type Whole<K extends Kind> = Entry<K> & { data: DataOf<K> };
const whole = <K extends Kind>(entries: Entry<K>[]): Whole<K>[] =>
  entries.filter((entry): entry is Whole<K> => entry.data !== undefined);

const named = <K extends Kind>(entries: Entry<K>[]): (DataOf<K> & Named)[] =>
  whole(entries).map((entry) => ({ ...entry.data, id: entry.id, file: entry.source.file }));

function documents<K extends 'guides' | 'lessons'>(
  entries: Entry<K>[],
): { id: string; file: string; data: DataOf<K>; outline: Outline; words: number }[] {
  return whole(entries).flatMap((entry) => {
    const { id, source, data, parts, outline } = entry;
    if (!parts || !outline || parts.syntax.length > 0) return [];
    return [{ id, file: source.file, data, outline, words: wordsOf(parts) }];
  });
}

/** Stands in while a preview runs without a sound shop.yaml; a build never gets here. */
const UNNAMED: Shop = shopSchema.parse({
  name: 'Unnamed workshop',
  about: 'shop.yaml does not hold yet.',
  contact: '–',
  prefix: '–',
  localRules: '–',
  stockedFusesA: [5],
  stockedWiresMm2: [1],
});
