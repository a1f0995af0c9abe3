import { z } from 'zod';

const id = z.string().regex(/^[a-z][a-z0-9-]*$/, 'must be lower case letters, digits and hyphens');

/** A point where work stops until its checks are in. */
export const hold = z.strictObject({
  id,
  /** Which of the four: survey, circuit agreed, bench test, hand-over. */
  point: z.enum(['H1', 'H2', 'H3', 'H4']),
  /** What is proved here. */
  title: z.string().min(1),
});

/** One check of a hold point; `reads` asks for a meter reading with its unit. */
export const check = z
  .strictObject({
    id,
    reads: z.enum(['voltage', 'current', 'resistance', 'temperature', 'time', 'count']).optional(),
    unit: z.enum(['V', 'mV', 'A', 'mA', 'Ω', 'mΩ', '°C', 'min', 's', '']).optional(),
  })
  .refine((each) => (each.reads === undefined) === (each.unit === undefined), {
    message: 'needs both reads and unit, or neither',
  });
