import { cite, type Row } from './rows.ts';

/** Forms of blade fuse in ISO 8820-3. The letters are easily confused: C is medium, F miniature, E large. */
export const FUSE_FORMS = ['C', 'F', 'E'] as const;
export type FuseForm = (typeof FUSE_FORMS)[number];

/** Preferred ratings by form. 4 and 35 A are not stocked everywhere. */
export const BLADE_RATINGS: readonly Row<{ form: FuseForm; name: string; ratingsA: readonly number[] }>[] = cite(
  { source: 'ISO 8820-3', at: 'preferred ratings', read: 'memory', unit: 'A' },
  [
    { form: 'C', name: 'C medium', ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40] },
    { form: 'F', name: 'F miniature', ratingsA: [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30] },
    { form: 'E', name: 'E high current', ratingsA: [20, 30, 40, 50, 60, 70, 80] },
  ],
);

/** Voltage blade fuses are rated for: fit for 12 and 24 V systems. The 1994 scope stopped at 30 A. */
export const BLADE_VOLTAGE: Row<{ ratedV: number; maxRatingA: number }> = {
  ratedV: 32,
  maxRatingA: 30,
  unit: 'V, A',
  source: 'ISO 8820-1:1994',
  at: 'scope',
  read: 'seen',
};

/** Body colours. They repeat across forms; the printed number is what counts. 35 A is left out: sources disagree. */
export const BLADE_COLOURS: readonly Row<{ ratingA: number; colour: string; forms: readonly FuseForm[] }>[] = cite(
  { source: 'ISO 8820-3 colour code, as garage pages give it', at: 'colour list', read: 'memory', unit: 'colour' },
  [
    { ratingA: 1, colour: 'black', forms: ['C'], read: 'seen' },
    { ratingA: 2, colour: 'grey', forms: ['C', 'F'], read: 'seen' },
    { ratingA: 3, colour: 'violet', forms: ['C', 'F'], read: 'seen' },
    { ratingA: 4, colour: 'pink', forms: ['C', 'F'] },
    { ratingA: 5, colour: 'tan', forms: ['C', 'F'] },
    { ratingA: 7.5, colour: 'brown', forms: ['C', 'F'] },
    { ratingA: 10, colour: 'red', forms: ['C', 'F'], read: 'seen' },
    { ratingA: 15, colour: 'blue', forms: ['C', 'F'] },
    { ratingA: 20, colour: 'yellow', forms: ['C', 'F', 'E'], read: 'seen' },
    { ratingA: 25, colour: 'clear', forms: ['C', 'F'] },
    { ratingA: 30, colour: 'green', forms: ['C', 'F', 'E'] },
    { ratingA: 40, colour: 'orange', forms: ['C', 'E'] },
    { ratingA: 50, colour: 'red', forms: ['E'] },
    { ratingA: 60, colour: 'blue', forms: ['E'] },
    { ratingA: 80, colour: 'clear', forms: ['E'] },
  ],
);

/**
 * Gates a fuse must pass between: at a multiple of its rating it may open no sooner than `minS` and no later than `maxS`
 * (null: no latest). From memory: the previews of the standard stop before this table; makers differ at 160 % and 350 %.
 */
export type Gate = Row<{ form: FuseForm; multiple: number; minS: number; maxS: number | null }>;

export const BLADE_GATES: readonly Gate[] = cite(
  { source: 'ISO 8820-3', at: 'operating time-current limits at 23 °C', read: 'memory', unit: 's' },
  [
    { form: 'C', multiple: 1.1, minS: 360_000, maxS: null },
    { form: 'C', multiple: 1.35, minS: 0.75, maxS: 600 },
    { form: 'C', multiple: 1.6, minS: 0.25, maxS: 50 },
    { form: 'C', multiple: 2, minS: 0.15, maxS: 5 },
    { form: 'C', multiple: 3.5, minS: 0.04, maxS: 0.5 },
    { form: 'C', multiple: 6, minS: 0.02, maxS: 0.1 },
    { form: 'F', multiple: 1.1, minS: 360_000, maxS: null },
    { form: 'F', multiple: 1.35, minS: 0.75, maxS: 600 },
    { form: 'F', multiple: 1.6, minS: 0.25, maxS: 50 },
    { form: 'F', multiple: 2, minS: 0.15, maxS: 5 },
    { form: 'F', multiple: 3.5, minS: 0.08, maxS: 0.25 },
    { form: 'F', multiple: 6, minS: 0.03, maxS: 0.1 },
    { form: 'E', multiple: 1.1, minS: 360_000, maxS: null },
    { form: 'E', multiple: 1.35, minS: 60, maxS: 1800 },
    { form: 'E', multiple: 2, minS: 2, maxS: 60 },
    { form: 'E', multiple: 3.5, minS: 0.2, maxS: 7 },
    { form: 'E', multiple: 6, minS: 0.04, maxS: 1 },
  ],
);

/** What a blade fuse itself resists, from charts that turn the millivolts across it into a current. */
export const FUSE_RESISTANCES: readonly Row<{ ratingA: number; size: 'standard' | 'mini'; resistanceMOhm: number }>[] =
  cite(
    {
      source: 'automotive training page and service report with fuse drop charts',
      at: 'chart example',
      read: 'seen',
      unit: 'milliohm',
    },
    [
      { ratingA: 10, size: 'standard', resistanceMOhm: 7.69 },
      { ratingA: 15, size: 'mini', resistanceMOhm: 4.59 },
    ],
  );
