/** What a guide is today, in the few words that a job keeps of it. */
import type { Circuit, Finding } from '../../calc/index.ts';
import type { Stop } from './gate.ts';
import type { Baseline } from './model.ts';

/** Figures are compared over months and browsers: the sixth digit of one is nobody's change. */
const rounded = (value: number | null): number | null => (value === null ? null : Number(value.toPrecision(6)));
/** Figures that matter at the vehicle: what is bought, cut and read, not every volt between. */
const MATTERS = /\.(ratingA|areaMm2|lengthM|standbyMa|maxA|coilOhm)$/;

/**
 * @param o.study the circuit worked out at the guide's own defaults, not at the job's values
 * @param o.line steps and hold points as they stand on the page
 */
export function baselineOf(o: {
  issue: number;
  circuit: Circuit | null;
  study: { figures: Readonly<Record<string, number | null>>; findings: readonly Finding[] } | null;
  line: readonly Stop[];
}): Baseline {
  const values: Baseline['values'] = {};
  for (const [name, value] of Object.entries(o.circuit?.values ?? {}))
    values[name] = { label: value.label, default: value.default };
  const figures: Baseline['figures'] = {};
  for (const [path, value] of Object.entries(o.study?.figures ?? {}))
    if (MATTERS.test(path)) figures[path] = rounded(value);
  return {
    issue: o.issue,
    values,
    figures,
    findings: [...new Set((o.study?.findings ?? []).map(({ message }) => message))],
    steps: o.line.flatMap((stop) => (stop.kind === 'step' ? [stop.id] : [])),
    line: [...o.line],
  };
}
