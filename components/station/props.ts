import { z } from 'zod';

/** One stop on the page line, in the order the circuit meets it. */
export const props = z.strictObject({
  /** Its anchor: written out, so that links outlive a new title. */
  id: z.string().regex(/^[a-z][a-z0-9-]*$/, 'must be lower case letters, digits and hyphens'),
  /** A noun of the trade, one or two words. */
  title: z.string().min(1),
  /** Part of the circuit that gives the symbol. */
  part: z.string().min(1).optional(),
  /** Symbol where no part gives it: `survey`, `meter`, `hand`, `door` … */
  symbol: z.string().min(1).optional(),
  /** Number that the run bar shows for this stop. */
  value: z.string().min(1).optional(),
  /** Wire whose size sets the width of the line from here on. */
  wire: z.string().min(1).optional(),
});
