import { join, resolve } from 'node:path';
import { CALCULATOR_IDS } from '../../components/calculators/list.ts';
import type { ComponentRule } from '../../components/schemas.ts';
import { type Reading, readFolder } from '../read/folder.ts';
import type { Kind } from '../read/kinds.ts';
import type { Problem } from '../read/source.ts';
import { circuitsOf, UNNAMED, type Workshop, workshopOf } from '../workshop.ts';
import { checkDocuments, contentOf } from './documents.ts';
import { checkInParallel } from './parallel.ts';
import { type ProvingOptions, proveAll } from './proving.ts';
import { pagesOf } from './routes.ts';
import type { Known, Names, Whole } from './rule.ts';
import { rules } from './rules/index.ts';

export interface Checked {
  workshop: Workshop;
  /** Everything that is wrong or worth a word, by file, line and column. */
  problems: Problem[];
  errors: number;
  /** Files read. */
  files: number;
}

export interface CheckOptions {
  /** Other components than the shipped ones. */
  components?: Readonly<Record<string, ComponentRule>>;
  calculators?: readonly string[];
  proving?: ProvingOptions;
}

/** Proofs kept between runs, beside the project's own files and never among a workshop's. */
const CACHE = join(import.meta.dirname, '../../.loomleaf/proofs');

/** Reads a content folder and holds it against every rule. Nothing is thrown for what an author did. */
export async function check(dir: string, options: CheckOptions = {}): Promise<Checked> {
  const reading = readFolder(resolve(dir));
  const known = knownOf(reading, options.calculators ?? CALCULATOR_IDS);
  const content = contentOf(known, options.components);
  const checking = options.components
    ? checkDocuments(reading.documents, content)
    : checkInParallel(reading.documents, known, content);
  const proving = proveAll(known.circuits, reading.shop?.data ?? UNNAMED, {
    cacheDir: CACHE,
    ...options.proving,
  });
  const { documents, problems } = await checking;
  problems.push(...reading.problems);
  const whole: Whole = { reading, documents, content, proofs: await proving };
  for (const rule of rules) if (rule.whole) problems.push(...rule.whole(whole));
  problems.sort(byPlace);

  const { entries, shop, terms, synonyms } = reading;
  return {
    // The same circuits, so that their proofs are found again.
    workshop: workshopOf(reading, documents, problems, known.circuits),
    problems,
    errors: problems.filter(({ severity }) => severity === 'error').length,
    files:
      reading.documents.length +
      Object.values(entries).reduce((sum, { length }) => sum + length, 0) +
      [shop, terms, synonyms].filter(Boolean).length,
  };
}

function knownOf(reading: Reading, calculators: readonly string[]): Known {
  const names = namesIn(reading);
  return {
    names,
    circuits: circuitsOf(reading),
    terms: reading.terms?.data?.terms ?? [],
    images: reading.images,
    calculators,
    pages: pagesOf({ ...names, calculators }),
  };
}

function namesIn({ entries, documents }: Reading): Names {
  const ids = (of: readonly { id: string }[]) => new Set(of.map(({ id }) => id));
  const written = (kind: Kind) => ids(documents.filter((document) => document.kind === kind));
  return {
    guides: written('guides'),
    lessons: written('lessons'),
    circuits: ids(entries.circuits),
    vehicles: ids(entries.vehicles),
    traits: ids(entries.traits),
    relays: ids(entries.relays),
    surfaces: ids(entries.surfaces),
  };
}

function byPlace(a: Problem, b: Problem): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return a.line - b.line || a.col - b.col || (a.message < b.message ? -1 : a.message > b.message ? 1 : 0);
}

export const problemLine = ({ file, line, col, severity, message }: Problem): string =>
  `${file}:${line}:${col} ${severity === 'warning' ? 'warning: ' : ''}${message}`;
