import type { z } from 'zod';
import { circuitSchema } from '../schemas/circuit.ts';
import { guideSchema } from '../schemas/guide.ts';
import { lessonSchema } from '../schemas/lesson.ts';
import { relaySchema } from '../schemas/relay.ts';
import { surfaceSchema } from '../schemas/surface.ts';
import { traitSchema } from '../schemas/trait.ts';
import { vehicleSchema } from '../schemas/vehicle.ts';

/** Kinds of which every file of a folder is one thing; the file's name is its id. */
export const KINDS = {
  guides: { ending: '.mdx', one: 'guide', schema: guideSchema },
  lessons: { ending: '.mdx', one: 'lesson', schema: lessonSchema },
  circuits: { ending: '.yaml', one: 'circuit', schema: circuitSchema },
  vehicles: { ending: '.yaml', one: 'vehicle type', schema: vehicleSchema },
  traits: { ending: '.yaml', one: 'trait', schema: traitSchema },
  relays: { ending: '.yaml', one: 'relay form', schema: relaySchema },
  surfaces: { ending: '.yaml', one: 'surface', schema: surfaceSchema },
} as const satisfies Record<string, { ending: string; one: string; schema: z.ZodType }>;

export type Kind = keyof typeof KINDS;
export const KIND_NAMES = Object.keys(KINDS) as Kind[];
export type DataOf<K extends Kind> = z.infer<(typeof KINDS)[K]['schema']>;

/** Kinds with a body of prose and components; the others are plain data. */
export const DOCUMENT_KINDS = ['guides', 'lessons'] as const;
export type DocumentKind = (typeof DOCUMENT_KINDS)[number];
export type DataKind = Exclude<Kind, DocumentKind>;
