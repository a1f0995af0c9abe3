import type { Finding, Netlist } from '../../calc/circuit/model.ts';
import {
  editPattern,
  type NeutralFault,
  type NeutralFile,
  type NeutralFinding,
  type NeutralPattern,
  readPattern,
} from '../../calc/circuit/neutral.ts';
import { checkRules, RULES } from '../../calc/circuit/rules/index.ts';
import { prepare } from '../../calc/circuit/solve.ts';
import { sequence, truthTable } from '../../calc/circuit/states.ts';
import { compareRow, patternsOf, readWith } from './circuits.ts';
import type { Asked } from './options.ts';
import { UsageError } from './read.ts';
import type { Report } from './rows.ts';

/**
 * The file's rules that the reference checker did not try on circuits with a planted fault. Nor did it try the rules that
 * are ours alone: on a planted fault they may speak, on the sound circuits they must be silent too.
 */
const NOT_TRIED = new Set<string | undefined>(['C14', 'C15', 'C16', 'C17', undefined]);

/** Plants every fault of the files and compares what the rules say with what must be said. */
export async function reportPlanted(files: readonly string[], asked: Asked): Promise<Report> {
  const patterns = await patternsOf(asked, '--faults');
  const lines: string[] = [];
  let found = 0;
  let missed = 0;
  let tooMuch = 0;
  const say = (label: string, verdict: Verdict) => {
    for (const missing of verdict.missing) lines.push(`missed: ${label}: ${missing}`);
    for (const extra of verdict.extra) lines.push(`said too much: ${label}: ${extra}`);
    tooMuch += verdict.extra.length;
  };
  for (const { file, pattern } of patterns) {
    if (pattern.expectFindings === undefined) continue;
    const verdict = judgePattern(file, pattern);
    say(pattern.id, verdict);
    missed += verdict.missing.length;
  }
  for (const name of files) {
    const { faults } = await readWith<{ faults: NeutralFault[] }>(name, 'faults');
    for (const fault of faults) {
      const base = patterns.find(({ pattern }) => pattern.id === fault.pattern);
      if (base === undefined)
        throw new UsageError(`${name}: pattern "${fault.pattern}" is in none of the files of --patterns`);
      const verdict = judgePlanted(base.file, base.pattern, fault);
      say(`${fault.id} (${fault.kind} in ${fault.pattern})`, verdict);
      if (verdict.missing.length === 0) found += 1;
      else missed += 1;
    }
  }
  lines.push(`faults: ${found} found, ${missed} missed, ${tooMuch} said too much`);
  return { lines, differs: missed + tooMuch > 0 };
}

export interface Verdict {
  /** What must be said and was not. */
  missing: string[];
  /** What was said beyond what may be. */
  extra: string[];
}

/** The unedited circuit must raise exactly its `expectFindings`. */
export function judgePattern(file: NeutralFile, pattern: NeutralPattern): Verdict {
  const { netlist, findings } = check(file, pattern);
  const must = pattern.expectFindings ?? [];
  return {
    missing: must.filter((one) => !isSaid(one, findings, netlist)).map(inWords),
    extra: findings.filter((finding) => !isAllowed(finding, must, netlist)).map(said),
  };
}

/** The circuit with the fault must raise `expect`, may raise `alsoFound`, and must be in the states that the file gives. */
export function judgePlanted(file: NeutralFile, base: NeutralPattern, fault: NeutralFault): Verdict {
  const pattern = editPattern(base, fault.edit);
  const { netlist, findings } = check(file, pattern);
  const missing = isSaid(fault.expect, findings, netlist) ? [] : [inWords(fault.expect)];
  const may = [fault.expect, ...fault.alsoFound, ...(base.expectFindings ?? [])];
  const extra = findings
    .filter((finding) => !NOT_TRIED.has(neutralId(finding)) && !isAllowed(finding, may, netlist))
    .map(said);
  if (fault.onlyVisibleAgainstIntent) {
    const others = findings.map(neutralId).filter((id) => id !== 'C07' && !NOT_TRIED.has(id));
    extra.push(...new Set(others.map((id) => `${id} speaks, but only C07 can see this`)));
  }
  const solver = prepare(netlist);
  for (const row of fault.statesThatDiffer) {
    const wrong = compareRow(solver, row, solver.solve(row.inputs, { volts: row.volts }));
    missing.push(...wrong.map((what) => `state ${JSON.stringify(row.inputs)}: ${what}`));
  }
  return { missing, extra };
}

function check(file: NeutralFile, pattern: NeutralPattern): { netlist: Netlist; findings: Finding[] } {
  const netlist = readPattern(file, pattern);
  const solver = prepare(netlist);
  const { rows, races } = truthTable(solver, { supplyVariants: pattern.supplyVariants, histories: false });
  const steps = sequence(solver, pattern.sequence ?? []);
  const findings = checkRules({
    netlist,
    states: [...rows, ...steps].map((row) => row.solution),
    wanted: [...rows.map((_, n) => pattern.intended?.[n]), ...steps.map((_, n) => pattern.intendedSequence?.[n])],
    races,
    unfusedStubM: file.unfusedStubM,
  });
  return { netlist, findings };
}

const neutralId = (finding: Finding): string | undefined => RULES.find((rule) => rule.id === finding.rule)?.neutralId;

/** The names a finding mentions: elements, sides of contacts, and the inputs of the switches among them. */
function names(finding: Finding, netlist: Netlist): Set<string> {
  const all = new Set<string>();
  for (const part of finding.parts) {
    all.add(part);
    for (const piece of part.split('.')) all.add(piece);
    const element = netlist.elements.find((one) => one.id === part);
    if (element?.kind === 'switch') all.add(element.input);
  }
  return all;
}

/** Said by one finding of the rule, or by several of them together. */
function isSaid(expected: NeutralFinding, findings: readonly Finding[], netlist: Netlist): boolean {
  const said = new Set<string>();
  for (const finding of findings) {
    if (neutralId(finding) === expected.rule) for (const name of names(finding, netlist)) said.add(name);
  }
  return expected.elements.every((id) => said.has(id));
}

/** A finding may be there when it speaks of all the parts of one that is named, or of nothing but named parts. */
function isAllowed(finding: Finding, may: readonly NeutralFinding[], netlist: Netlist): boolean {
  const ofRule = may.filter((one) => one.rule === neutralId(finding));
  const mentioned = names(finding, netlist);
  const named = new Set(ofRule.flatMap((one) => one.elements));
  return (
    ofRule.some((one) => one.elements.every((id) => mentioned.has(id))) ||
    (ofRule.length > 0 && finding.parts.every((part) => part.split('.').every((piece) => named.has(piece))))
  );
}

const inWords = ({ rule, elements }: NeutralFinding): string => `${rule} about ${elements.join(', ')}`;
const said = (finding: Finding): string =>
  `${neutralId(finding) ?? finding.rule} about ${finding.parts.join(', ')}: ${finding.message}`;
