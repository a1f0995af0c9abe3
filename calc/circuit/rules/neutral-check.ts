import type { Finding } from '../model.ts';
import { type NeutralHead, type NeutralPattern, type NeutralRow, readPattern } from '../neutral.ts';
import { prepare } from '../solve.ts';
import { sequence, truthTable } from '../states.ts';
import { checkRules } from './index.ts';
import type { Wanted } from './rule.ts';

/** Applies every rule to a circuit in the neutral exchange format: its truth table, its sequence, its intent. */
export function checkPattern(head: NeutralHead, pattern: NeutralPattern): Finding[] {
  const netlist = readPattern(head, pattern);
  const solver = prepare(netlist);
  const table = truthTable(solver, { supplyVariants: pattern.supplyVariants, histories: false });
  const steps = pattern.intendedSequence ?? pattern.sequence ?? [];
  const walked = sequence(solver, steps);
  const wantedOf = (row: NeutralRow | undefined): Wanted | undefined =>
    row && { on: row.on, settles: row.settles, ...(row.rangeV === undefined ? {} : { rangeV: row.rangeV }) };
  return checkRules({
    netlist,
    states: [...table.rows, ...walked].map((row) => row.solution),
    wanted: [
      ...table.rows.map((row) => wantedOf(pattern.intended?.find((wish) => sameRow(wish, row)))),
      ...walked.map((_, at) => wantedOf(pattern.intendedSequence?.[at])),
    ],
    races: table.races,
    unfusedStubM: head.unfusedStubM,
  });
}

type Row = Pick<NeutralRow, 'inputs' | 'volts'>;

function sameRow(a: Row, b: Row): boolean {
  const names = new Set([...Object.keys(a.inputs), ...Object.keys(b.inputs)]);
  if ([...names].some((name) => (a.inputs[name] ?? false) !== (b.inputs[name] ?? false))) return false;
  const sources = new Set([...Object.keys(a.volts ?? {}), ...Object.keys(b.volts ?? {})]);
  return [...sources].every((id) => a.volts?.[id] === b.volts?.[id]);
}
