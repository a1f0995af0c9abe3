import type { JobContext } from './context.ts';
import type { State, View } from './contract.ts';

/**
 * The fields every instrument's view carries: its state flag, the words about an entry that was refused (the answer then
 * stands on the last good one and says so), and what is read aloud when the answer changes.
 */
export interface Frame {
  flag: State;
  flagText: string;
  source: string;
  spokenName: string;
  spokenValue: string;
}

/** A frame as the markup reads it, with whatever else the view says. */
export type Framed = View & Frame & { readonly flagIcon: string; readonly held: boolean; readonly heldText: string };

export function framed<F extends Frame>(
  job: JobContext,
  frame: F,
): F & { flagIcon: string; held: boolean; heldText: string } {
  const refused = Object.keys(job.refused);
  const names = refused.map((name) => job.circuit?.values[name]?.label ?? '').filter((label) => label !== '');
  return {
    ...frame,
    flagIcon: `#i-${frame.flag}`,
    held: refused.length > 0,
    heldText:
      refused.length === 0
        ? ''
        : names.length === 0
          ? 'One entry is not used. This answer stands on the last good one.'
          : `Not used: ${names.join(', ')}. This answer stands on the last good entry.`,
  };
}
