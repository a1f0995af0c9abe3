import { reportSingleFaults, reportStates } from './circuits.ts';
import { reportPlanted } from './planted.ts';
import { UsageError } from './read.ts';
import { type Report, reportRows } from './rows.ts';

/** The files behind each option of the command line: what one part compares may be about another's files. */
export type Asked = ReadonlyMap<string, readonly string[]>;

/** One thing the runner can be asked: an option, what its files hold, and who answers. */
export interface Mode {
  option: string;
  holds: string;
  report(files: readonly string[], asked: Asked): Promise<Report>;
}

/** Everything the runner can be asked. A new mode is one line here and one file beside this. */
export const modes: readonly Mode[] = [
  { option: '--rows', holds: 'published examples (id, inputs, expect, tolerance)', report: reportRows },
  { option: '--patterns', holds: 'circuits with their solved states', report: reportStates },
  { option: '--faults', holds: 'planted faults and what must be said of them', report: reportPlanted },
  { option: '--single-faults', holds: 'what each single fault does to the circuits', report: reportSingleFaults },
];

/** Reads the command line: options of `modes`, each followed by one or more files. */
export function parse(args: readonly string[]): { mode: Mode; files: string[] }[] {
  const usage = `usage: npm run conformance -- ${modes.map(({ option }) => `${option} FILE…`).join(' ')}`;
  const asked: { mode: Mode; files: string[] }[] = [];
  for (const arg of args) {
    if (arg.startsWith('-')) {
      const mode = modes.find(({ option }) => option === arg);
      if (mode === undefined) throw new UsageError(`unknown option ${arg}; ${usage}`);
      asked.push({ mode, files: [] });
    } else {
      const last = asked.at(-1);
      if (last === undefined) throw new UsageError(`${arg} stands before any option; ${usage}`);
      last.files.push(arg);
    }
  }
  if (asked.length === 0) throw new UsageError(usage);
  const empty = asked.find(({ files }) => files.length === 0);
  if (empty !== undefined) throw new UsageError(`${empty.mode.option} needs at least one file; ${usage}`);
  return asked;
}
