import type { Model } from '../contract.ts';
import { put, show } from '../show.ts';
import { resolveValue } from '../values.ts';

export interface ValueProps {
  of: string;
}

/** A number inside a sentence: live where it is worked out, set where the reader may change it. */
export const model = (({ of }, job) => {
  const { kind, value, set, step, reason } = resolveValue(of, job);
  const shown = show(value, kind, job.units, step);
  return {
    ...put('value', value === null && reason !== undefined ? { text: reason, unit: '', spoken: '' } : shown),
    kind: value === null ? 'unk' : set === undefined ? 'calc' : 'set',
    /** Job value to open when tapped. */
    set: set ?? '',
  };
}) satisfies Model<ValueProps>;
