import { z } from 'zod';
import { line } from './fields.ts';

/** content/shop.yaml: the workshop and its defaults. */
export const shopSchema = z.strictObject({
  /** Name as it heads every page and job card. */
  name: line,
  /** One sentence under the name on the home page. */
  about: line,
  /** How a reader reaches the lead when a page is wrong. */
  contact: line,
  /** Language tag of the pages. */
  language: z.string().default('en-GB'),
  /** Prefix of guide numbers on cards. */
  prefix: line,
  /** System voltage assumed where no vehicle is chosen [V]. */
  systemV: z.union([z.literal(12), z.literal(24)]).default(12),
  /** Units a reader sees first; he may choose others. */
  units: z
    .strictObject({
      length: z.enum(['m', 'ft']).default('m'),
      wire: z.enum(['mm2', 'awg']).default('mm2'),
      temperature: z.enum(['C', 'F']).default('C'),
      torque: z.enum(['Nm', 'lbfin']).default('Nm'),
    })
    .prefault({}),
  paper: z.enum(['A4', 'Letter']).default('A4'),
  /** What local rules, licences and makers' texts the workshop works under; shown with every caution. */
  localRules: line,
  /** Fuse ratings on the shelf [A], rising. */
  stockedFusesA: z.array(z.number().positive()).min(1),
  /** Wire sizes on the shelf [mm²], rising. */
  stockedWiresMm2: z.array(z.number().positive()).min(1),
  /** Allowed voltage drop where a load names none, share of system voltage. */
  dropFraction: z.number().min(0.005).max(0.1).default(0.03),
  /** Share of a fuse's rating a steady load may use. */
  continuousFraction: z.number().min(0.5).max(1).default(0.8),
  /** Service slack added to every cut length, share of the run. */
  slackFraction: z.number().min(0).max(0.2).default(0.05),
  /** Standing days a finished vehicle must still start after. */
  standingDays: z.number().min(1).max(90).default(21),
});
export type Shop = z.infer<typeof shopSchema>;
