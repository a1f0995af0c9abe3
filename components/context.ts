import type { Circuit, Finding, FuseOptions, GaugeOptions, JobValue, Proof } from '../calc/index.ts';
import type { Reading } from './job/model.ts';
import { DEFAULT_UNITS, type UnitChoice } from './units.ts';

/**
 * What a component may know. `PageContext` is everything the site knows about the page being built; the site puts it
 * into `Astro.locals.page`. `JobContext` is the part a model reads, and all of it exists in the browser too: a model
 * that asks for more could not run again when the reader changes a number.
 */

/** Job values by name, in the units calc uses. */
export type JobValues = Readonly<Record<string, number>>;

/** The workshop's settings that calculations read (content/shop.yaml). */
export interface ShopDefaults {
  systemV: 12 | 24;
  stockedFusesA: readonly number[];
  stockedWiresMm2: readonly number[];
  dropFraction: number;
  /** Share of a fuse's rating a steady load may use. */
  continuousFraction: number;
  slackFraction: number;
  standingDays: number;
}

/** Settings that make a component complete where no workshop is given: tests, the gallery. Common practice, no source. */
export const SHOP_DEFAULTS: ShopDefaults = {
  systemV: 12,
  stockedFusesA: [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 150],
  stockedWiresMm2: [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50],
  dropFraction: 0.03,
  continuousFraction: 0.8,
  slackFraction: 0.05,
  standingDays: 21,
};

/** What a model gets beside its props. */
export interface JobContext {
  /** The guide's circuit as its author wrote it; null on pages without one. */
  circuit: Circuit | null;
  values: JobValues;
  shop: ShopDefaults;
  units: UnitChoice;
  /** Worked out from circuit and values; null without a circuit. */
  study: Study | null;
  /** Good entries of the component's own inputs, by name (calculator pages). */
  local: Readonly<Record<string, number | string>>;
  /** Entries that were refused and are not used, by input name, with the words beside the field. */
  refused: Readonly<Record<string, string>>;
  /** What the reader is looking at, by name (`data-choose`): `on` inputs, a `part`, a `fault`. Not kept, not in the link. */
  chosen: Readonly<Record<string, string>>;
  /** What a meter read, by the key of its place: of the job in hand, else of this visit. */
  readings?: Readonly<Record<string, Reading>> | undefined;
}

/**
 * A circuit worked out for given job values. `figures` holds every number a guide can name, by value path
 * (`F1.ratingA`, `W2.dropV`); null where the circuit gives no answer, with the reason in `reasons`.
 */
export interface Study {
  figures: Readonly<Record<string, number | null>>;
  /** One of `figures`; undefined where the circuit has no such number. */
  figure(path: string): number | null | undefined;
  reasons: Readonly<Record<string, string>>;
  findings: readonly Finding[];
  /** What each fuse must do, by id; `fixedA` where the author chose the rating. */
  fuses: Readonly<Record<string, FuseOptions & { fixedA?: number | undefined }>>;
  /** What each wire must do, by id; `fixedMm2` where the author chose the size. */
  wires: Readonly<Record<string, GaugeOptions & { fixedMm2?: number | undefined }>>;
  /** The proof itself, for what draws states and findings. In the browser it lacks the study of single faults. */
  proof: Proof;
}

export interface StationOutline {
  id: string;
  title: string;
  part?: string | undefined;
  symbol?: string | undefined;
  /** Value path shown in the run bar. */
  value?: string | undefined;
  /** Wire that sets the width of the line from here on. */
  wire?: string | undefined;
}

export interface GuideContext {
  id: string;
  title: string;
  number: string;
  issue: number;
  updated: string;
  stations: readonly StationOutline[];
}

/** A trait as it reaches a page, with the vehicle types that bring it. */
export interface TraitContext {
  id: string;
  name: string;
  caution: string;
  survey: string;
  holdPoint: 'H1' | 'H2' | 'H3' | 'H4';
  severity: 'stop' | 'warn' | 'note';
  deferTo: string | null;
  source: string;
}

export interface TermContext {
  term: string;
  meaning: string;
}

export interface LessonContext {
  id: string;
  title: string;
  minutes: number;
}

/** All the site knows about the page being built. `jobOf` takes the model's part out of it. */
export interface PageContext {
  /** Path the site lives under, with a slash at both ends. */
  base: string;
  shop: ShopDefaults & {
    name: string;
    contact: string;
    prefix: string;
    localRules: string;
    paper: 'A4' | 'Letter';
    units: UnitChoice;
  };
  guide: GuideContext | null;
  circuit: Circuit | null;
  study: Study | null;
  traits: readonly TraitContext[];
  terms: readonly TermContext[];
  lessons: readonly LessonContext[];
  /** Content of surfaces and relays as their schemas have it, by id; read by the components made for them. */
  surfaces: Readonly<Record<string, unknown>>;
  relays: Readonly<Record<string, unknown>>;
  /** Size of a picture, by its path in the content folder [px]; null where its file does not say. */
  pictureSize?: (path: string) => Promise<{ width: number; height: number } | null>;
  /** A state to show in place of the page's own: the gallery's cases. */
  job?: JobContext;
  /** Set by components that may stand on a page once with their ids or shared drawing parts. */
  once?: Record<string, boolean>;
}

/** Default of every job value of a circuit. */
export function defaultsOf(circuit: Circuit | null): Record<string, number> {
  const values: Record<string, number> = {};
  for (const [name, value] of Object.entries<JobValue>(circuit?.values ?? {})) values[name] = value.default;
  return values;
}

/** The model's view of a page as built: job values at their defaults. */
export function jobOf(page: PageContext | undefined): JobContext {
  if (page?.job !== undefined) return page.job;
  return {
    circuit: page?.circuit ?? null,
    values: defaultsOf(page?.circuit ?? null),
    shop: page?.shop ?? SHOP_DEFAULTS,
    units: page?.shop.units ?? DEFAULT_UNITS,
    study: page?.study ?? null,
    local: {},
    refused: {},
    chosen: {},
  };
}

/** True the first time a page asks for `what`: the component may then write ids or shared drawing parts. */
export function firstOnPage(page: PageContext | undefined, what: string): boolean {
  if (page === undefined) return true;
  page.once ??= {};
  if (page.once[what]) return false;
  page.once[what] = true;
  return true;
}
