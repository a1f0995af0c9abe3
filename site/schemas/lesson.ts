import { z } from 'zod';
import { id, line } from './fields.ts';

/** Front matter of content/lessons/*.mdx. The questions stand here; the body is what to read and do. */
export const lessonSchema = z.strictObject({
  title: line,
  summary: line,
  /** Place on the study path, from 1. */
  order: z.int().min(1),
  path: z.enum(['safety', 'soldering', 'preparation', 'fitting']),
  minutes: z.int().min(5).max(480),
  /** "You can …" */
  goals: z.array(line).min(1),
  /** Lessons to have done before. */
  after: z.array(id).default([]),
  /** Circuit that its parts to try out stand on. */
  circuit: id.optional(),
  /** What the piece must show to be accepted, and what rejects it; the sign-off sheet prints them. */
  accept: z.array(line).min(1),
  reject: z.array(line).min(1),
  /** The piece made for the sign-off. */
  piece: line,
  questions: z
    .array(
      z.strictObject({
        id,
        ask: line,
        /** Exactly one is right; each says why. */
        options: z
          .array(z.strictObject({ text: line, right: z.boolean().default(false), why: line }))
          .min(2)
          .max(5),
      }),
    )
    .min(1),
  search: z.array(line).default([]),
});
export type LessonData = z.infer<typeof lessonSchema>;
