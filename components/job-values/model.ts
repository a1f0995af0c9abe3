import type { Model } from '../contract.ts';
import { rangeInWords } from '../range.ts';
import { inWords, put, show } from '../show.ts';
import { KIND_OF_QUANTITY } from '../units.ts';

export interface JobValueProps {
  name: string;
}

/** One job value as a row: what it is, its default, its range, and whether the reader changed it. */
export const model = (({ name }, job) => {
  const spec = job.circuit?.values[name];
  if (spec === undefined) throw new RangeError(`job value "${name}": the circuit has no such value`);
  const kind = KIND_OF_QUANTITY[spec.quantity];
  const shown = (value: number) => show(value, kind, job.units, spec.step);
  const value = job.values[name] ?? spec.default;
  const changed = Math.abs(value - spec.default) > 1e-9 * Math.max(1, Math.abs(spec.default));
  return {
    ...put('value', shown(value)),
    label: spec.label,
    measure: spec.measure ?? '',
    range: rangeInWords({ ...spec, kind }, job.units),
    default: inWords(shown(spec.default)),
    changed,
    state: changed ? 'moved' : '',
  };
}) satisfies Model<JobValueProps>;
