import type { Model } from '../contract.ts';
import { say } from '../show.ts';
import { resolveValue } from '../values.ts';

export interface StationProps {
  id: string;
  title: string;
  part?: string | undefined;
  symbol?: string | undefined;
  value?: string | undefined;
  wire?: string | undefined;
}

/** Drawn widths of the line [mm²]; a wire takes the width of the size at or above its own. */
const WIDTHS = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16];

/** The stop's wire: width of the line, and the sleeve that prints size and length. */
export const model = (({ wire }, job) => {
  if (wire === undefined || job.circuit === null) return { width: '', sleeve: '' };
  const size = resolveValue(`${wire}.areaMm2`, job);
  const length = resolveValue(`${wire}.lengthM`, job);
  const areaMm2 = size.value;
  return {
    width: areaMm2 === null ? '' : String(WIDTHS.find((each) => each >= areaMm2 - 1e-9) ?? 16),
    sleeve:
      areaMm2 === null
        ? ''
        : `${say(areaMm2, size.kind, job.units)} · ${say(length.value, length.kind, job.units, length.step)}`,
  };
}) satisfies Model<StationProps>;
