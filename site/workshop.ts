import { resolve } from 'node:path';
import type { Circuit } from '../calc/index.ts';
import { type Entry, type Reading, readFolder } from './read/folder.ts';
import type { DataKind, DataOf, DocumentKind } from './read/kinds.ts';
import { closeDocument, isDraft, openDocument, type ReadDocument } from './read/open.ts';
import type { Outline } from './read/outline.ts';
import type { Problem } from './read/source.ts';
import { circuitOf } from './schemas/circuit.ts';
import type { GuideData } from './schemas/guide.ts';
import type { LessonData } from './schemas/lesson.ts';
import type { RelayData } from './schemas/relay.ts';
import { type Shop, shopSchema } from './schemas/shop.ts';
import type { SurfaceData } from './schemas/surface.ts';
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
export type Surface = SurfaceData & Named;
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
  surfaces: Surface[];
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
    const reading = readFolder(dir);
    const documents = reading.documents.flatMap((file) => {
      const open = openDocument(file, reading.problems);
      return open ? [closeDocument(open)] : [];
    });
    found = Promise.resolve(workshopOf(reading, documents, reading.problems));
    shared[memo].set(dir, found);
  }
  return found;
}

/** Puts a workshop that is already read where the pages look for it; a preview puts each new reading. */
export function remember(shop: Workshop): void {
  shared[memo] ??= new Map();
  shared[memo].set(shop.dir, Promise.resolve(shop));
}

export function workshopOf(
  reading: Reading,
  documents: readonly ReadDocument[],
  problems: Problem[],
  circuits = circuitsOf(reading),
): Workshop {
  const { entries } = reading;
  return {
    dir: reading.dir,
    shop: reading.shop?.data ?? UNNAMED,
    vehicles: named(entries.vehicles).sort((a, b) => a.order - b.order || byId(a, b)),
    traits: named(entries.traits).sort(byId),
    relays: named(entries.relays).sort(byId),
    surfaces: named(entries.surfaces).sort(byId),
    terms: [...(reading.terms?.data?.terms ?? [])].sort((a, b) => a.term.localeCompare(b.term, 'en')),
    synonyms: reading.synonyms?.data?.groups ?? [],
    circuits,
    guides: sound<GuideData>(documents, 'guides').sort(
      (a, b) => a.data.number.localeCompare(b.data.number, 'en') || byId(a, b),
    ),
    lessons: sound<LessonData>(documents, 'lessons').sort((a, b) => a.data.order - b.data.order || byId(a, b)),
    problems,
  };
}

/** Circuits that hold, by id, in the order of their ids. */
export const circuitsOf = ({ entries }: Reading): Map<string, Circuit> =>
  new Map(
    whole(entries.circuits)
      .sort(byId)
      .map(({ id, data }) => [id, circuitOf(id, data)]),
  );

const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

type WholeEntry<K extends DataKind> = Entry<K> & { data: DataOf<K> };
const whole = <K extends DataKind>(entries: Entry<K>[]): WholeEntry<K>[] =>
  entries.filter((entry): entry is WholeEntry<K> => entry.data !== undefined);

const named = <K extends DataKind>(entries: Entry<K>[]): (DataOf<K> & Named)[] =>
  whole(entries).map((entry) => ({ ...entry.data, id: entry.id, file: entry.source.file }));

/** A preview shows drafts too. */
const DRAFTS = process.env['LOOMLEAF_DRAFTS'] === '1';

/** Documents of which a page can be made. */
const sound = <D extends GuideData | LessonData>(
  documents: readonly ReadDocument[],
  kind: DocumentKind,
): (Named & { data: D; outline: Outline; words: number })[] =>
  documents.flatMap(({ kind: of, id, file, data, outline, words, sound }) =>
    of === kind && data && sound && (DRAFTS || !isDraft({ data }))
      ? [{ id, file, data: data as D, outline, words }]
      : [],
  );

/** Stands in while a preview runs without a sound shop.yaml; a build never gets here. */
export const UNNAMED: Shop = shopSchema.parse({
  name: 'Unnamed workshop',
  about: 'shop.yaml does not hold yet.',
  contact: '–',
  prefix: '–',
  localRules: '–',
  stockedFusesA: [5],
  stockedWiresMm2: [1],
});
