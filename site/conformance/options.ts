import { UsageError } from './read.ts';
import { type Report, reportRows } from './rows.ts';

/** One thing the runner can be asked: an option, what its files hold, and who answers. */
export interface Mode {
  option: string;
  holds: string;
  report(files: readonly string[]): Promise<Report>;
}

/** Everything the runner can be asked. A new mode is one line here and one file beside this. */
export const modes: readonly Mode[] = [
  { option: '--rows', holds: 'published examples (id, inputs, expect, tolerance)', report: reportRows },
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
