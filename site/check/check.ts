import { basename, join, resolve } from 'node:path';
import { type ComponentRule, schemas } from '../../components/schemas.ts';
import { valuePaths } from '../../components/values.ts';
import { filesUnder, type Reading, readFolder } from '../read/folder.ts';
import { KIND_NAMES, type Kind } from '../read/kinds.ts';
import type { Problem } from '../read/source.ts';
import { type Workshop, workshopOf } from '../workshop.ts';
import type { Content, Names } from './rule.ts';
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
}

/** Reads a content folder and holds it against every rule. Nothing is thrown for what an author did. */
export async function check(dir: string, options: CheckOptions = {}): Promise<Checked> {
  const reading = readFolder(resolve(dir));
  const workshop = workshopOf(reading);
  const content: Content = {
    reading,
    workshop,
    components: options.components ?? schemas,
    valuePaths: perCircuit(workshop),
    calculators: options.calculators ?? [],
    names: namesIn(reading),
  };
  const problems = [...reading.problems];
  for (const rule of rules) problems.push(...rule.check(content));
  problems.sort(byPlace);
  workshop.problems = problems;
  return {
    workshop,
    problems,
    errors: problems.filter(({ severity }) => severity === 'error').length,
    files: filesOf(reading),
  };
}

function namesIn(reading: Reading): Names {
  const ids = (kind: Kind) => new Set(reading.entries[kind].map(({ id }) => id));
  return {
    guides: ids('guides'),
    lessons: ids('lessons'),
    circuits: ids('circuits'),
    vehicles: ids('vehicles'),
    traits: ids('traits'),
    relays: ids('relays'),
    surfaces: new Set(filesUnder(join(reading.dir, 'surfaces')).map((path) => basename(path, '.yaml'))),
  };
}

function perCircuit(workshop: Workshop): Content['valuePaths'] {
  const known = new Map<string, readonly string[]>();
  return (id) => {
    let paths = known.get(id);
    if (!paths) {
      const circuit = workshop.circuits.get(id);
      paths = circuit ? valuePaths(circuit) : [];
      known.set(id, paths);
    }
    return paths;
  };
}

const filesOf = (reading: Reading): number =>
  KIND_NAMES.reduce((sum, kind) => sum + reading.entries[kind].length, 0) +
  [reading.shop, reading.terms, reading.synonyms].filter(Boolean).length;

function byPlace(a: Problem, b: Problem): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return a.line - b.line || a.col - b.col || (a.message < b.message ? -1 : a.message > b.message ? 1 : 0);
}

export const problemLine = ({ file, line, col, severity, message }: Problem): string =>
  `${file}:${line}:${col} ${severity === 'warning' ? 'warning: ' : ''}${message}`;
