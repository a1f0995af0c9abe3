import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { editPattern, type NeutralFault, type NeutralFile } from '../../../calc/circuit/neutral.ts';
import { prove } from '../../../calc/circuit/prove.ts';
import { compareFindings, neutralRule } from '../../../calc/circuit/rules/agreement.ts';
import { checkRules, RULES } from '../../../calc/circuit/rules/index.ts';
import { checkPattern } from '../../../calc/circuit/rules/neutral-check.ts';
import type { Example, FailingExample, Rule } from '../../../calc/circuit/rules/rule.ts';
import { truthTable } from '../../../calc/circuit/states.ts';

const read = <T>(name: string): T => JSON.parse(readFileSync(new URL(`rows/${name}`, import.meta.url), 'utf8')) as T;

const folder = new URL('../../../calc/circuit/rules/', import.meta.url);
const NOT_RULES = [
  'index.ts',
  'rule.ts',
  'sketch.ts',
  'agreement.ts',
  'neutral-check.ts',
  'short-currents.ts',
  'example-circuit.ts',
];
const files = readdirSync(folder).filter((name) => !NOT_RULES.includes(name));

interface RuleFile {
  rule: Rule;
  passes: Example[];
  fails: FailingExample[];
}

async function open(name: string): Promise<RuleFile> {
  const module = (await import(new URL(name, folder).href)) as Record<string, unknown>;
  const rule = Object.values(module).find(
    (each): each is Rule => typeof each === 'object' && each !== null && 'check' in each,
  );
  if (rule === undefined) throw new Error(`${name} exports no rule`);
  return { rule, passes: module['passes'] as Example[], fails: module['fails'] as FailingExample[] };
}

function messagesOf(rule: Rule, example: Example): string[] {
  if (example.circuit !== undefined) {
    const { findings } = prove(example.circuit, {}, { faults: false });
    return findings.filter((finding) => finding.rule === rule.id).map((finding) => finding.message);
  }
  const netlist = example.netlist!;
  const table = truthTable(netlist);
  const states = table.rows.map((row) => row.solution);
  const wanted = example.wants
    ? states.map((state) => ({ on: example.wants!(state.inputs), settles: true }))
    : undefined;
  return checkRules({ netlist, states, wanted, races: table.races, unfusedStubM: 0.3 })
    .filter((finding) => finding.rule === rule.id)
    .map((finding) => finding.message);
}

describe('each rule', () => {
  for (const name of files) {
    test(`${name} passes and fails its own examples`, async () => {
      const { rule, passes, fails } = await open(name);
      expect(`${rule.id}.ts`).toBe(name);
      expect(RULES).toContain(rule);
      expect(passes.length).toBeGreaterThan(0);
      expect(fails.length).toBeGreaterThan(0);
      for (const example of passes) expect(messagesOf(rule, example), example.title).toEqual([]);
      for (const example of fails) expect(messagesOf(rule, example), example.title).toEqual(example.messages);
    });
  }

  test('says why, what would cure it and where it comes from', () => {
    expect(RULES.map((rule) => `${rule.id}.ts`).sort()).toEqual([...files].sort());
    for (const rule of RULES) {
      for (const words of [rule.title, rule.why, rule.cure, rule.source]) expect(words.length).toBeGreaterThan(5);
      expect(rule.id).toMatch(/^[a-z]+(-[a-z]+){1,3}$/);
    }
  });
});

describe('circuits in the neutral exchange format', () => {
  const { patterns, ...head } = read<NeutralFile>('patterns.json');
  const { faults } = read<{ faults: NeutralFault[] }>('faults.json');

  for (const pattern of patterns) {
    test(`${pattern.id} raises nothing but what it is known for`, () => {
      const findings = checkPattern(head, pattern);
      expect(compareFindings(findings, pattern.expectFindings ?? [])).toEqual({ missed: [], tooMuch: [] });
      if ((pattern.expectFindings ?? []).length === 0) expect(findings.map((each) => each.message)).toEqual([]);
    });
  }

  for (const fault of faults) {
    test(`${fault.id} (${fault.kind} in ${fault.pattern}) is found`, () => {
      const sound = patterns.find((each) => each.id === fault.pattern)!;
      const findings = checkPattern(head, editPattern(sound, fault.edit));
      expect(compareFindings(findings, [fault.expect], fault.alsoFound)).toEqual({ missed: [], tooMuch: [] });
      const others = findings.map(neutralRule).filter((rule) => rule !== undefined && rule !== 'C07' && rule < 'C14');
      if (fault.onlyVisibleAgainstIntent) expect(others).toEqual([]);
    });
  }
});
