import { z } from 'zod';
import { line, source } from './fields.ts';

/** content/relays/*.yaml: a relay form as the part's own data shows it. */
export const relaySchema = z.strictObject({
  name: line,
  form: z.enum(['make', 'changeover', 'break']),
  /** Terminals seen from the pin side, in millimetres from the middle; `wide` says which way the blade lies. */
  pins: z
    .array(
      z.strictObject({
        terminal: z.enum(['30', '85', '86', '87', '87a']),
        xMm: z.number(),
        yMm: z.number(),
        wide: z.enum(['across', 'along']),
      }),
    )
    .min(4),
  widthMm: z.number().positive(),
  depthMm: z.number().positive(),
  source,
});
export type RelayData = z.infer<typeof relaySchema>;
