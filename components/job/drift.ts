/** What changed in a guide since a job began, as far as it matters at the vehicle. */
import type { Baseline } from './model.ts';

export interface Change {
  kind: 'issue' | 'value' | 'figure' | 'finding' | 'step' | 'check';
  what: string;
  was: string;
  now: string;
}

const word = (n: number | null | undefined) => (n === null || n === undefined ? 'no answer' : String(n));

/** Changes from `was` to `now`, in the order a fitter would want them: findings, figures, values, steps, issue. */
export function driftOf(was: Baseline, now: Baseline): Change[] {
  const out: Change[] = [];
  for (const f of now.findings)
    if (!was.findings.includes(f)) out.push({ kind: 'finding', what: f, was: '', now: 'new' });
  for (const f of was.findings)
    if (!now.findings.includes(f)) out.push({ kind: 'finding', what: f, was: 'found', now: 'gone' });
  for (const path of union(was.figures, now.figures)) {
    const [a, b] = [was.figures[path], now.figures[path]];
    if (a !== b) out.push({ kind: 'figure', what: path, was: word(a), now: word(b) });
  }
  for (const name of union(was.values, now.values)) {
    const [a, b] = [was.values[name], now.values[name]];
    if (a?.default !== b?.default) {
      out.push({
        kind: 'value',
        what: b?.label ?? a!.label,
        was: a ? String(a.default) : 'not there',
        now: b ? String(b.default) : 'gone',
      });
    }
  }
  for (const s of now.steps)
    if (!was.steps.includes(s)) out.push({ kind: 'step', what: s, was: 'not there', now: 'new' });
  for (const s of was.steps) if (!now.steps.includes(s)) out.push({ kind: 'step', what: s, was: 'there', now: 'gone' });
  const [before, after] = [checksOf(was), checksOf(now)];
  for (const c of after) if (!before.includes(c)) out.push({ kind: 'check', what: c, was: 'not there', now: 'new' });
  for (const c of before) if (!after.includes(c)) out.push({ kind: 'check', what: c, was: 'there', now: 'gone' });
  if (was.issue !== now.issue) {
    out.push({ kind: 'issue', what: 'Issue of the guide', was: String(was.issue), now: String(now.issue) });
  }
  return out;
}

/** What the hold points ask, in their words. */
const checksOf = ({ line }: Baseline): string[] =>
  line.flatMap((stop) => (stop.kind === 'hold' ? stop.checks.map(({ text }) => `${stop.point}: ${text}`) : []));

function union(a: object, b: object): string[] {
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].sort();
}
