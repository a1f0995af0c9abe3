import { z } from 'zod';
import { id, isoDate, line } from './fields.ts';

/** Kinds of work a reader filters by. */
export const KINDS_OF_WORK = [
  'lighting',
  'warning',
  'power',
  'charging',
  'camera',
  'heating',
  'trailer',
  'fixing',
  'fault-finding',
] as const;
export const LEVELS = ['easy', 'medium', 'hard'] as const;

/** Front matter of content/guides/*.mdx. */
export const guideSchema = z.strictObject({
  title: line,
  /** One or two sentences under the title. */
  summary: line,
  /** The customer's sentence, read back and agreed. */
  customer: line,
  /** Number on the card, without the workshop's prefix. */
  number: z.string().regex(/^\d{3,5}$/, 'must be three to five digits such as "041"'),
  /** Issue of the guide; goes up with every change that matters at the vehicle. */
  issue: z.int().min(1),
  updated: isoDate,
  /** Vehicle types, ids of content/vehicles. */
  vehicles: z.array(id).min(1),
  work: z.enum(KINDS_OF_WORK),
  level: z.enum(LEVELS),
  /** Bench plus vehicle, one trained person [min]. */
  minutes: z.int().min(5).max(2880),
  /** Id of content/circuits, or why there is none. */
  circuit: z.union([id, z.strictObject({ none: line })]),
  /** What the vehicle and customer must bring. */
  bring: z.array(line).default([]),
  tools: z.array(line).default([]),
  /** Surfaces met in this guide, ids of content/surfaces. */
  surfaces: z.array(id).default([]),
  /** Lessons that teach what it asks, ids of content/lessons. */
  lessons: z.array(id).default([]),
  /** Calculator ids worth having open. */
  calculators: z.array(id).default([]),
  /** Traits this guide brings on top of the vehicle's own, ids of content/traits. */
  traits: z.array(id).default([]),
  /** Words a customer or fitter would type that the text does not hold. */
  search: z.array(line).default([]),
  draft: z.boolean().default(false),
});
export type GuideData = z.infer<typeof guideSchema>;
