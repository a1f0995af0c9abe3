/**
 * What a plan has to know of a surface. The facts are data, one file a surface; this is their shape and the words they
 * may use, so that adding a surface is adding one file.
 */
import type { EnergyClass } from './surface-energy.ts';
import type { Cited } from './tables/cited.ts';

/** Steps of preparation, in the order they are done. */
export const PREP_STEPS = [
  'warm',
  'cool',
  'inspect',
  'wait-paint',
  'spot-test',
  'remove-coating',
  'soap-water',
  'degrease',
  'ipa-wipe',
  'abrade',
  'ipa-wipe-2',
  'seal',
  'dry',
  'ipa-wipe-sealed',
  'water-break',
  'prime-silane',
  'prime-cpo',
  'prime-universal',
  'prime-self-etch',
  'flash-off',
  'test-patch',
  'apply',
  'press',
  'dwell',
  'mechanical-fix',
] as const;
export type PrepStepId = (typeof PREP_STEPS)[number];

/** Steps a surface's own file may ask for; the others follow from the primer, the tape, the soil and the temperature. */
export const SURFACE_STEPS = [
  'wait-paint',
  'spot-test',
  'remove-coating',
  'soap-water',
  'degrease',
  'ipa-wipe',
  'seal',
  'ipa-wipe-sealed',
  'water-break',
  'test-patch',
] as const satisfies readonly PrepStepId[];
export type SurfaceStepId = (typeof SURFACE_STEPS)[number];

/** What a cleaner, promoter or sealer is made of, as far as a surface can mind. */
export const SOLVENTS = [
  'alcohol',
  'degreaser',
  'ketone',
  'aromatic',
  'universal promoter',
  'polyolefin promoter',
  'silane primer',
  'etch primer',
] as const;
export type Solvent = (typeof SOLVENTS)[number];

/** What each step puts on the surface. A step that is not here uses water, a tool or nothing. */
export const STEP_SOLVENT: Readonly<Partial<Record<PrepStepId, Solvent>>> = {
  degrease: 'degreaser',
  'ipa-wipe': 'alcohol',
  'ipa-wipe-2': 'alcohol',
  'ipa-wipe-sealed': 'alcohol',
  'remove-coating': 'alcohol',
  'prime-silane': 'silane primer',
  'prime-cpo': 'polyolefin promoter',
  'prime-universal': 'universal promoter',
  'prime-self-etch': 'etch primer',
};

/** Primers and promoters by kind. */
export const PRIMERS = {
  silane: { step: 'prime-silane', name: 'silane primer', discolours: false, suits: ['glass', 'frit-glass'] },
  cpo: {
    step: 'prime-cpo',
    name: 'promoter for low-energy plastic (chlorinated polyolefin)',
    discolours: true,
    suits: ['pp', 'tpo', 'pe'],
  },
  universal: {
    step: 'prime-universal',
    name: 'universal adhesion promoter',
    discolours: true,
    suits: ['abs', 'pc-abs', 'vinyl', 'paint', 'powder-coat', 'metals'],
  },
  'self-etch': {
    step: 'prime-self-etch',
    name: 'self-etch primer',
    discolours: false,
    suits: ['bare metals', 'glass'],
  },
} as const satisfies Record<string, { step: PrepStepId; name: string; discolours: boolean; suits: readonly string[] }>;
export type PrimerKind = keyof typeof PRIMERS;

/** How a tape primer goes on. No sourced flash-off time exists for tape: the figure at hand is for paint. */
export const PRIMER_PRACTICE = {
  thinCoat: true,
  flashOff: 'by the label; touch-dry, then tape at once',
  onVisibleFaces: 'only inside the footprint, after spot-test',
  source: 'common practice, no source',
  at: '-',
  read: 'common practice',
} as const;

/** Hygiene of putting primer on. */
export const PRIMER_HYGIENE = {
  oneDirection: true,
  dipOnce: true,
  disposableApplicator: true,
  source: 'glass replacement trainer column (2014)',
  at: 'text',
  read: 'seen',
} as const;

/** Flash-off of a plastic promoter before paint [min]; never printed for tape. */
export const PAINT_PROMOTER_FLASH_OFF = {
  minMinutes: 3,
  maxMinutes: 5,
  source: 'how-to page on promoter before topcoat',
  at: 'flashing step',
  read: 'seen',
} as const;

/** How likely something is to go wrong, mildest first. */
export const RISKS = ['none', 'low', 'medium', 'high'] as const;
export type Risk = (typeof RISKS)[number];

/** When a primer goes on: always, outside only, or after a trial came out weak. */
export const PRIMER_USES = ['always', 'outside', 'after a weak trial'] as const;
/** When the surface is abraded: always, only to take oxide or dirt off, or never. */
export const ABRADE_USES = ['always', 'oxide', 'never'] as const;
/** What the surface can do for a tape at all. */
export const BONDS = ['tape', 'tape plus fixing', 'no tape'] as const;

export interface SurfaceFacts {
  id: string;
  name: string;
  energyClass: EnergyClass;
  /** Published range [mN/m]; null for porous surfaces or where no figure is worth printing. */
  energy: { minMnPerM: number; maxMnPerM: number; basis: string } | null;
  porous: boolean;
  plasticiserRisk: Risk;
  discolourRisk: Risk;
  solventStressRisk: Risk;
  bond: (typeof BONDS)[number];
  bondWhy: string;
  /** Silicone adhesive holds here though no other tape does. */
  siliconeTape?: boolean | undefined;
  /** Factor on the tape area; 1.5 where nobody gave one. */
  areaFactor?: number | undefined;
  /** Never on this surface, with the reason. */
  harmful: readonly { solvent: Solvent; why: string }[];
  /** Cleaning steps under light soil, in any order. */
  procedure: readonly SurfaceStepId[];
  abrade: { use: (typeof ABRADE_USES)[number]; how: string };
  primer: { kind: PrimerKind; use: (typeof PRIMER_USES)[number]; why: string } | null;
  /** Own words for a step of this surface, in place of the general ones. */
  stepWords?: Readonly<Partial<Record<PrepStepId, string>>> | undefined;
  /** How to fix mechanically here. */
  fixing: string;
  /** Do not warm it above this [°C]. */
  warmMaxC: number;
  /** Material of the expansion table, where growth against an aluminium profile can be worked out. */
  expansion?: string | undefined;
  /** Cautions that belong to this surface alone. */
  cautions: readonly { id: string; text: string; severity: 'stop' | 'warn' | 'note' }[];
  sources: readonly Cited[];
}
