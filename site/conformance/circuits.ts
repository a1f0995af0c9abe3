import { singleFaults } from '../../calc/circuit/faults.ts';
import type { Solution } from '../../calc/circuit/model.ts';
import {
  type NeutralFile,
  type NeutralPattern,
  type NeutralRow,
  type NeutralSingleFault,
  type NeutralSingleFaults,
  readPattern,
} from '../../calc/circuit/neutral.ts';
import { prepare, type Solver } from '../../calc/circuit/solve.ts';
import { sequence } from '../../calc/circuit/states.ts';
import type { Asked } from './options.ts';
import { readJson, UsageError } from './read.ts';
import type { Report } from './rows.ts';

/** Currents of a source are compared to this [A]. */
const SOURCE_TOLERANCE_A = 0.01;
/** What the references were rounded to, half of it: a value printed as 1.2346 may have been 1.23455. */
const ROUNDING = 0.00005;

/** Reads one file that must hold a list `key`. */
export async function readWith<T>(file: string, key: keyof T & string): Promise<T> {
  const parsed = (await readJson(file)) as T | null;
  if (parsed === null || typeof parsed !== 'object' || !Array.isArray(parsed[key])) {
    throw new UsageError(`${file}: expected an object with a list "${key}"`);
  }
  return parsed;
}

/** The patterns named on the command line, for the parts that compare something else about them. */
export async function patternsOf(
  asked: Asked,
  option: string,
): Promise<{ file: NeutralFile; pattern: NeutralPattern }[]> {
  const files = asked.get('--patterns');
  if (files === undefined)
    throw new UsageError(`${option} needs --patterns FILE besides: it speaks of circuits by name`);
  const all: { file: NeutralFile; pattern: NeutralPattern }[] = [];
  for (const name of files) {
    const file = await readWith<NeutralFile>(name, 'patterns');
    for (const pattern of file.patterns) all.push({ file, pattern });
  }
  return all;
}

/** Solves every state of every pattern and compares it with the one in the file. */
export async function reportStates(files: readonly string[]): Promise<Report> {
  const differing: string[] = [];
  let agree = 0;
  for (const name of files) {
    const file = await readWith<NeutralFile>(name, 'patterns');
    for (const pattern of file.patterns) {
      for (const { label, wrong } of compareStates(file, pattern)) {
        if (wrong.length === 0) agree += 1;
        else differing.push(`differs: ${pattern.id} ${label}: ${wrong.join('; ')}`);
      }
    }
  }
  return {
    lines: [...differing, `states: ${agree} agree, ${differing.length} differ`],
    differs: differing.length > 0,
  };
}

/** Each row of a pattern's table and sequence, with what is wrong about our answer. */
export function compareStates(file: NeutralFile, pattern: NeutralPattern): { label: string; wrong: string[] }[] {
  const solver = prepare(readPattern(file, pattern));
  const results: { label: string; wrong: string[] }[] = [];
  for (const row of pattern.truthTable ?? []) {
    const solution = solver.solve(row.inputs, { volts: row.volts });
    results.push({ label: `state ${row.n}`, wrong: compareRow(solver, row, solution) });
  }
  const steps = pattern.sequence ?? [];
  for (const [index, { solution }] of sequence(solver, steps).entries()) {
    const row = steps[index]!;
    results.push({ label: `step ${row.n}`, wrong: compareRow(solver, row, solution) });
  }
  return results;
}

/** What is wrong about a solution, against the row it should match. */
export function compareRow(solver: Solver, row: NeutralRow, solution: Solution): string[] {
  const wrong: string[] = [];
  const differ = (what: string, got: unknown, expected: unknown) =>
    wrong.push(`${what} expected ${JSON.stringify(expected)}, got ${JSON.stringify(got)}`);
  if (solution.settles !== row.settles) differ('settles', solution.settles, row.settles);
  for (const [id, on] of Object.entries(row.on)) if (solution.on[id] !== on) differ(`${id} on`, solution.on[id], on);
  for (const [id, energised] of Object.entries(row.energised ?? {})) {
    if (solution.energised[id] !== energised) differ(`${id} energised`, solution.energised[id], energised);
  }
  const conducts = solver.branches.some((branch) => branch.fromV !== undefined && solution.currentA[branch.id] !== 0);
  // Where relays never rest the currents are those of one moment: any diode may conduct at another.
  const diode = conducts || (!solution.settles && solver.branches.some((branch) => branch.fromV !== undefined));
  const toleranceV = (diode ? 0.005 : 0.001) + ROUNDING;
  for (const [id, expected] of Object.entries(row.loadV ?? {})) {
    const got = solution.loadV[id];
    const pair = (value: number | [number, number]) => (typeof value === 'number' ? [value, value] : value);
    if (got === undefined || pair(got).some((value, k) => Math.abs(value - pair(expected)[k]!) > toleranceV)) {
      differ(`${id} volts`, got, expected);
    }
  }
  for (const [id, expected] of Object.entries(row.sourceA ?? {})) {
    const got = solution.currentA[id];
    if (got === undefined || Math.abs(got - expected) > SOURCE_TOLERANCE_A + ROUNDING)
      differ(`${id} amps`, got, expected);
  }
  return wrong;
}

/** Repeats the single-fault study of every pattern in the files. */
export async function reportSingleFaults(files: readonly string[], asked: Asked): Promise<Report> {
  const patterns = await patternsOf(asked, '--single-faults');
  const differing: string[] = [];
  let agree = 0;
  for (const name of files) {
    const study = await readWith<NeutralSingleFaults>(name, 'patterns');
    for (const { pattern: id, faults } of study.patterns) {
      const found = patterns.find(({ pattern }) => pattern.id === id);
      if (found === undefined) throw new UsageError(`${name}: pattern "${id}" is in none of the files of --patterns`);
      for (const { label, wrong } of compareSingleFaults(found.file, found.pattern, faults)) {
        if (wrong.length === 0) agree += 1;
        else differing.push(`differs: ${id} ${label}: ${wrong.join('; ')}`);
      }
    }
  }
  return {
    lines: [...differing, `single faults: ${agree} agree, ${differing.length} differ`],
    differs: differing.length > 0,
  };
}

/** Each single fault that either side names, with what is wrong about our answer. */
export function compareSingleFaults(
  file: NeutralFile,
  pattern: NeutralPattern,
  faults: readonly NeutralSingleFault[],
): { label: string; wrong: string[] }[] {
  const study = singleFaults(readPattern(file, pattern), {
    faults: 'contacts',
    supplyVariants: pattern.supplyVariants,
  });
  const ours = new Map(study.results.map((result) => [`${result.fault.kind} ${result.fault.id}`, result]));
  const results = faults.map((expected) => {
    const label = `${expected.fault} ${expected.id}`;
    const got = ours.get(label);
    ours.delete(label);
    if (got === undefined) return { label, wrong: ['not in our study'] };
    const wrong: string[] = [];
    const differ = (what: string, left: unknown, right: unknown) => {
      if (JSON.stringify(left) !== JSON.stringify(right)) {
        wrong.push(`${what} expected ${JSON.stringify(right)}, got ${JSON.stringify(left)}`);
      }
    };
    if (got.fault.kind === 'short') differ('at', got.fault.at, expected.at);
    const states = (changed: NeutralSingleFault['changed']) =>
      changed.map(({ n, on, settles }) => [n, Object.entries(on).sort(), settles ?? true]).sort();
    differ('changed', states(got.changed), states(expected.changed));
    const perState = (ids: Record<string, string[]> = {}) =>
      Object.entries(ids)
        .map(([n, names]) => [n, [...names].sort()])
        .sort();
    differ('blown', perState(got.blown), perState(expected.blown));
    differ('hot', perState(got.hot), perState(expected.hot));
    return { label, wrong };
  });
  for (const label of ours.keys()) results.push({ label, wrong: ['in our study only'] });
  return results;
}
