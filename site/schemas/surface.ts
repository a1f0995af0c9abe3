import { z } from 'zod';
import {
  ABRADE_USES,
  BONDS,
  EXPANSION,
  PRIMER_USES,
  PRIMERS,
  type PrimerKind,
  RISKS,
  SIGNS,
  SOLVENTS,
  STEP_SOLVENT,
  SURFACE_STEPS,
  type SurfaceFacts,
} from '../../calc/index.ts';
import { id, line, source } from './fields.ts';

/** A reason that can be read aloud. */
const because = line;

/** Simple tests that need no laboratory and no flame. */
export const SURFACE_TESTS = [
  'magnet',
  'water drop',
  'scratch',
  'fingernail',
  'tap',
  'bend',
  'moulded mark',
  'float',
  'feel',
  'look',
  'light',
  'tape pull',
  'dyne pen',
] as const;

const MATERIALS = EXPANSION.map(({ material }) => material) as [string, ...string[]];

/**
 * content/surfaces/*.yaml: one surface a file, the file's name its id. Everything the planner knows of it stands here, so
 * that adding a surface is adding one file.
 */
export const surfaceSchema = z
  .strictObject({
    /** Everyday name, as one would say it at the vehicle. */
    name: line,
    /** Other names and search words. */
    words: z.array(line).min(1),
    /** What it looks like. */
    looks: line,
    /** Simple tests and what each shows on this surface. */
    tests: z.array(z.strictObject({ test: z.enum(SURFACE_TESTS), shows: line })).min(1),
    /** What the simple tests say here, for finding it by them; a test that can go either way is left out. */
    signs: z.strictObject({
      magnet: z.enum(SIGNS.magnet).optional(),
      water: z.enum(SIGNS.water).optional(),
      fingernail: z.enum(SIGNS.fingernail).optional(),
      tap: z.enum(SIGNS.tap).optional(),
      float: z.enum(SIGNS.float).optional(),
    }),
    /** Published surface energy [mN/m] and what kind of number it is; null where no figure is worth printing. */
    energy: z
      .strictObject({ minMnPerM: z.number().min(5).max(5000), maxMnPerM: z.number().min(5).max(5000), basis: line })
      .refine(({ minMnPerM, maxMnPerM }) => minMnPerM <= maxMnPerM, 'minMnPerM must not be above maxMnPerM')
      .nullable(),
    /** Published contact angle of water [°]. */
    waterAngleDeg: z.number().min(0).max(180).optional(),
    /** Class of the surface as met, which a dyne reading of the part overrides. */
    energyClass: z.enum(['low', 'medium', 'high']),
    porous: z.boolean(),
    /** Softener coming out of it. */
    plasticiserRisk: z.enum(RISKS),
    /** Stains and fading beside the tape. */
    discolourRisk: z.enum(RISKS),
    /** Crazing and cracking under solvent. */
    solventStressRisk: z.enum(RISKS),
    /** What it can do for a tape at all. */
    bond: z.enum(BONDS),
    bondWhy: because,
    /** Factor on the tape area, 1 or more; left out means the most careful one. */
    areaFactor: z.number().min(1).max(3).optional(),
    /** Silicone adhesive holds here though no other tape does. */
    siliconeTape: z.boolean().optional(),
    /** What it may be cleaned with. */
    cleaners: z.array(line).min(1),
    /** What never gets on it, with the reason. */
    harmful: z.array(z.strictObject({ solvent: z.enum(SOLVENTS), why: because })),
    /** Cleaning steps under light soil; the rest follows from primer, tape, soil and temperature. */
    procedure: z.array(z.enum(SURFACE_STEPS)),
    abrade: z.strictObject({ use: z.enum(ABRADE_USES), how: line }),
    primer: z
      .strictObject({
        kind: z.enum(Object.keys(PRIMERS) as [PrimerKind, ...PrimerKind[]]),
        use: z.enum(PRIMER_USES),
        why: because,
      })
      .nullable(),
    /** Own words for a step, in place of the general ones. */
    stepWords: z.partialRecord(z.enum(SURFACE_STEPS), line).optional(),
    /** How to fix mechanically here. */
    fixing: line,
    /** Do not warm it above this [°C]. */
    warmMaxC: z.number().min(30).max(120),
    /** Material of the expansion table, where growth against a profile can be worked out. */
    expansion: z.enum(MATERIALS).optional(),
    /** Cautions that belong to this surface alone; the general ones come from the planner. */
    cautions: z.array(z.strictObject({ id, text: line, severity: z.enum(['stop', 'warn', 'note']) })),
    note: line.optional(),
    sources: z.array(z.strictObject({ source, at: line, read: z.enum(['seen', 'memory', 'common practice']) })).min(1),
  })
  .superRefine((surface, context) => {
    const banned = new Map(surface.harmful.map(({ solvent, why }) => [solvent, why]));
    surface.procedure.forEach((step, index) => {
      const solvent = STEP_SOLVENT[step];
      if (solvent !== undefined && banned.has(solvent)) {
        context.addIssue({
          code: 'custom',
          path: ['procedure', index],
          message: `puts ${solvent} on the surface, which is listed as harmful (${banned.get(solvent)})`,
        });
      }
    });
    const primer = surface.primer && STEP_SOLVENT[PRIMERS[surface.primer.kind].step];
    if (primer && banned.has(primer)) {
      context.addIssue({
        code: 'custom',
        path: ['primer', 'kind'],
        message: `is ${primer}, which is listed as harmful (${banned.get(primer)})`,
      });
    }
  });

export type SurfaceData = z.infer<typeof surfaceSchema>;

/** The planner's view of a surface file. */
export const surfaceFacts = (name: string, data: SurfaceData): SurfaceFacts => ({ id: name, ...data });
