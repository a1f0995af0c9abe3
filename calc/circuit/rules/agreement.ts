import type { Finding } from '../model.ts';
import { RULES } from './index.ts';

/** What another checker says of a circuit, in the neutral exchange format. */
export interface NeutralExpectation {
  rule: string;
  elements: readonly string[];
}

/** Rules of which the neutral format says nothing for a planted fault: they advise on sound circuits only. */
const ADVICE = new Set(['C14', 'C15', 'C16', 'C17']);

/** A finding's elements as the neutral format names them: a contact is the relay's id and `no`, `nc` or `com`. */
export function neutralElements(finding: Finding): string[] {
  return finding.parts.flatMap((part) => part.split('.'));
}

/** Neutral id of a finding's rule, where it has one. */
export function neutralRule(finding: Finding): string | undefined {
  return RULES.find((rule) => rule.id === finding.rule)?.neutralId;
}

/**
 * Compares what the rules said with what another checker expects.
 *
 * Both sides are taken as sets of (rule, element): whether one finding names two lamps or two findings one each is taste.
 *
 * @param findings of `checkRules`
 * @param must what has to be said
 * @param may what may be said besides
 * @returns `missed` and `tooMuch`, each as `C01 w3`; rules without a neutral id and pure advice never count as too much
 */
export function compareFindings(
  findings: readonly Finding[],
  must: readonly NeutralExpectation[],
  may: readonly NeutralExpectation[] = [],
): { missed: string[]; tooMuch: string[] } {
  const said = new Set<string>();
  const counted = new Set<string>();
  for (const finding of findings) {
    const rule = neutralRule(finding);
    if (rule === undefined) continue;
    for (const element of neutralElements(finding)) {
      said.add(`${rule} ${element}`);
      if (!ADVICE.has(rule)) counted.add(`${rule} ${element}`);
    }
  }
  const pairs = (list: readonly NeutralExpectation[]) =>
    new Set(list.flatMap(({ rule, elements }) => elements.map((element) => `${rule} ${element}`)));
  const needed = pairs(must);
  const allowed = pairs([...must, ...may]);
  return {
    missed: [...needed].filter((each) => !said.has(each)),
    tooMuch: [...counted].filter((each) => !allowed.has(each)),
  };
}
