import { finite, oneOf, positive, within } from './guard.ts';
import {
  BLADE_GATES,
  BLADE_RATINGS,
  BLADE_VOLTAGE,
  FUSE_FORMS,
  type FuseForm,
  type Gate,
} from './tables/blade-fuses.ts';
import { COMMON_PRACTICE } from './tables/cited.ts';
import { type Source, sourceOf } from './tables/rows.ts';
import { INRUSH_MULTIPLE } from './tables/workshop.ts';

/** How long a fuse takes to open: never sooner than `minS`, never later than `maxS` (null: it may never open). */
export interface Opening {
  minS: number;
  maxS: number | null;
}

/**
 * How long a fuse takes to open at a current, as surely as its standard's gates say: between two gates no sooner than
 * the higher multiple's earliest and no later than the lower multiple's latest. Up to 110 % it is only sure to hold.
 * Beyond the last gate the heat that melts it (I²t) stays the same, so times fall with the square of the current; the arc
 * that follows is left out, and above the fuse's breaking capacity (blade fuses: about 1000 A) nothing is promised.
 *
 * @param options `ratingA` above 0; `form` C medium, F miniature, E large; `currentA` 0 to 100 000 A; `gates` another edition's rows.
 * @returns `minS` and `maxS` [s]; `maxS` null where the standard sets no latest time.
 * @throws TypeError or RangeError when a value is out of range or the form unknown.
 * Formula: gates at multiples of rating; beyond the last, t × (m_last/m)².
 * @source ISO 8820-3 operating time-current limits at 23 °C (from memory).
 * @example fuseOpens({ ratingA: 40, form: 'E', currentA: 80 }).maxS // 60
 */
export function fuseOpens({
  ratingA,
  form,
  currentA,
  gates = BLADE_GATES,
}: {
  ratingA: number;
  form: FuseForm;
  currentA: number;
  gates?: readonly Gate[];
}): Opening {
  const where = 'fuseOpens';
  positive(where, 'ratingA', ratingA, 'A');
  within(where, 'currentA', currentA, 0, 100_000, 'A');
  oneOf(where, 'form', form, FUSE_FORMS);
  const own = gates.filter((gate) => gate.form === form).sort((a, b) => a.multiple - b.multiple);
  const multiple = currentA / ratingA;
  // A current that is 110 % of a rating but for the last binary digit stands on the gate, not beside it.
  const slack = 1e-9 * multiple;
  const last = own.at(-1)!;
  if (multiple > last.multiple + slack) {
    const share = (last.multiple / multiple) ** 2;
    return { minS: last.minS * share, maxS: last.maxS === null ? null : last.maxS * share };
  }
  const above = own.find((gate) => gate.multiple >= multiple - slack)!;
  const below = own.findLast((gate) => gate.multiple <= multiple + slack);
  return { minS: above.minS, maxS: below?.maxS ?? null };
}

/** A wire that the fuse must protect. */
export interface ProtectedWire {
  name: string;
  limitA: number;
}

/** What a fuse must do. */
export interface FuseOptions {
  /** Steady current of everything behind the fuse [A], above 0. */
  currentA: number;
  /** Share of its rating the fuse carries for ever, 0.5 to 1 (default 0.8: the load × 1.25). */
  continuousFraction?: number | undefined;
  /** First current when it is switched on [A], 0 for none known. */
  inrushA?: number | undefined;
  /** How long that lasts [ms], 0 to 1000 (default 0). Over 80 ms it is not inrush but load. */
  inrushMs?: number | undefined;
  /** Every wire behind the fuse up to the next fuse, each with the current it may carry; at least one. */
  wires: readonly ProtectedWire[];
  /** Form of blade fuse (default `C`, medium): its ratings, and its gates for the inrush. */
  form?: FuseForm | undefined;
  /** Ratings kept in the drawer [A], in place of the form's whole list. */
  stockedA?: readonly number[] | undefined;
  /** Highest voltage of the system [V] (default 12). */
  systemV?: number | undefined;
}

/** One rating, weighed. */
export interface WeighedRating {
  ratingA: number;
  state: 'too small' | 'chosen' | 'allowed' | 'too large';
  why: string;
}

export interface FuseFound {
  found: true;
  ratingA: number;
  /** Least rating that carries the load [A], and what set it. */
  lowerA: number;
  lowerBy: 'continuous load' | 'inrush';
  /** Largest rating that protects every wire [A], and the wire that set it. */
  upperA: number;
  upperBy: string;
  ratings: WeighedRating[];
  inrushChecked: boolean;
  /** Set when the inrush lasts longer than the form's gates promise to hold: a reason to look at the maker's curve. */
  caution: string | null;
  sources: Source[];
}

export interface FuseNotFound {
  found: false;
  reasons: string[];
  change: string[];
  lowerA: number;
  upperA: number;
  upperBy: string;
  ratings: WeighedRating[];
}

export type Fuse = FuseFound | FuseNotFound;

const atLeast = (value: number, limit: number): boolean => value >= limit * (1 - 1e-9);
const printed = (value: number): string => String(Number(value.toPrecision(3)));

/**
 * The smallest fuse that carries the load and its inrush, provided it protects every wire behind it. When no rating does
 * both, it says why and what would have to change: it never answers with the nearest.
 *
 * @param options see `FuseOptions`: `currentA` above 0 A, `continuousFraction` 0.5 to 1 (0.8), `inrushA` and `inrushMs` 0 to 1000 ms, `wires` with `limitA` 0 or more each, `form`, `stockedA`, `systemV` above 0 (12).
 * @returns `found: true` with the rating, lower and upper bound and what set each, every rating weighed; or `found: false` with reasons and changes. `inrushChecked` is false when no inrush was given.
 * @throws TypeError or RangeError when a value is out of range, no wire is named, or no rating is offered.
 * Formula: smallest rating ≥ I / share and ≥ inrush / 3.5; rating ≤ smallest wire limit.
 * @source ISO 8820-3 ratings and gates (from memory); 80 % loading: common practice, no source.
 * @example fuseFor({ currentA: 15, continuousFraction: 0.75, wires: [{ name: 'feed', limitA: 20 }] }).found // true
 */
export function fuseFor(options: FuseOptions): Fuse {
  const where = 'fuseFor';
  const { currentA, continuousFraction = 0.8, inrushA = 0, inrushMs = 0, wires, form = 'C', systemV = 12 } = options;
  positive(where, 'currentA', currentA, 'A');
  within(where, 'continuousFraction', continuousFraction, 0.5, 1);
  within(where, 'inrushA', inrushA, 0, 100_000, 'A');
  within(where, 'inrushMs', inrushMs, 0, 1000, 'ms');
  positive(where, 'systemV', systemV, 'V');
  oneOf(where, 'form', form, FUSE_FORMS);
  if (wires.length === 0) throw new RangeError(`${where}: unexpected wires [], expected at least one wire to protect`);
  for (const wire of wires) within(where, `limitA of ${wire.name}`, wire.limitA, 0, 100_000, 'A');
  const blades = BLADE_RATINGS.find((row) => row.form === form)!;
  const offered = [...(options.stockedA ?? blades.ratingsA)].sort((a, b) => a - b);
  if (offered.length === 0) throw new RangeError(`${where}: unexpected stockedA [], expected at least one rating`);
  for (const rating of offered) positive(where, 'stockedA', rating, 'A');

  const needA = currentA / continuousFraction;
  const thinnest = wires.reduce((worst, wire) => (wire.limitA < worst.limitA ? wire : worst));
  const upperA = thinnest.limitA;
  const carries = (ratingA: number): boolean => atLeast(ratingA, needA);
  const holds = (ratingA: number): boolean => atLeast(ratingA * INRUSH_MULTIPLE.multiple, inrushA);
  const tooLong = inrushA > currentA && inrushMs > INRUSH_MULTIPLE.longestMs;
  const voltageServes = systemV <= BLADE_VOLTAGE.ratedV;

  const least = offered.find((rating) => carries(rating) && holds(rating));
  const lowerBy = least !== undefined && offered.find(carries) === least ? 'continuous load' : 'inrush';
  const inrushNeedA = inrushA / INRUSH_MULTIPLE.multiple;
  const lowerA = Math.max(needA, lowerBy === 'inrush' ? inrushNeedA : 0);
  const chosen = least !== undefined && atLeast(upperA, least) && !tooLong && voltageServes ? least : undefined;

  const ratings = offered.map((ratingA): WeighedRating => {
    if (!carries(ratingA)) return { ratingA, state: 'too small', why: `the load needs ${printed(needA)} A` };
    if (!holds(ratingA)) return { ratingA, state: 'too small', why: `${printed(inrushA)} A of inrush would tire it` };
    if (!atLeast(upperA, ratingA)) {
      return { ratingA, state: 'too large', why: `${thinnest.name} may carry ${printed(upperA)} A` };
    }
    if (ratingA === chosen) return { ratingA, state: 'chosen', why: 'the smallest that carries the load' };
    return { ratingA, state: 'allowed', why: 'carries the load and protects every wire, but is larger than needed' };
  });

  if (chosen !== undefined) {
    return {
      found: true,
      ratingA: chosen,
      lowerA,
      lowerBy,
      upperA,
      upperBy: thinnest.name,
      ratings,
      inrushChecked: inrushA > 0,
      caution: inrushCaution({ ratingA: chosen, form, inrushA, inrushMs }),
      sources: [
        sourceOf('ratings', options.stockedA === undefined ? blades : { ...COMMON_PRACTICE, at: 'stocked ratings' }),
        sourceOf('share of rating carried for ever', { ...COMMON_PRACTICE, at: 'continuous load' }),
        ...(inrushA > 0 ? [sourceOf('inrush', INRUSH_MULTIPLE)] : []),
      ],
    };
  }

  const reasons: string[] = [];
  const change: string[] = [];
  if (!voltageServes) {
    reasons.push(`Blade fuses are rated ${BLADE_VOLTAGE.ratedV} V; the system reaches ${printed(systemV)} V.`);
    change.push('A fuse form rated for this voltage.');
  }
  if (tooLong) {
    reasons.push(`${printed(inrushMs)} ms is longer than inrush: a fuse takes it for load.`);
    change.push('Count the starting current as load current, or limit it.');
  }
  if (least === undefined) {
    const largest = offered.at(-1)!;
    reasons.push(
      `The load needs ${printed(Math.max(needA, inrushNeedA))} A; the largest rating offered is ${largest} A.`,
    );
    change.push('Split the load over two fuses, or use a fuse form with larger ratings.');
  } else if (!atLeast(upperA, least)) {
    reasons.push(
      `${lowerBy === 'inrush' ? 'The inrush' : 'The load'} needs a ${least} A fuse, but ${thinnest.name} may stand behind ${printed(upperA)} A at most.`,
    );
    change.push(`A thicker or cooler ${thinnest.name}, or a fuse of its own where it begins.`);
    if (lowerBy === 'inrush') change.push('Less inrush: a soft start, or loads switched one after another.');
    else change.push('Less load behind this fuse.');
  }
  return { found: false, reasons, change, lowerA, upperA, upperBy: thinnest.name, ratings };
}

/** The workshop's 3.5 × rule is kinder than the gates of some forms; where they part, the reader is told. */
function inrushCaution({
  ratingA,
  form,
  inrushA,
  inrushMs,
}: {
  ratingA: number;
  form: FuseForm;
  inrushA: number;
  inrushMs: number;
}): string | null {
  const holdsMs = fuseOpens({ ratingA, form, currentA: inrushA }).minS * 1000;
  if (inrushMs <= holdsMs) return null;
  return `A fuse of this form is only sure to hold ${printed(inrushA)} A for ${printed(holdsMs)} ms: check its maker's curve.`;
}

/**
 * Current through a fuse from the millivolts across it: finds what draws current in a parked vehicle without pulling a fuse.
 *
 * @param options `dropMv` 0 to 1000 mV across the fuse; `resistanceMOhm` of that fuse, above 0 milliohm.
 * @returns current in milliamperes.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: I = V / R. Cheap copies of blade fuses have other resistances.
 * @source automotive training page and service report with fuse drop charts.
 * @example fuseCurrentMa({ dropMv: 1, resistanceMOhm: 7.69 }) // 130
 */
export function fuseCurrentMa({ dropMv, resistanceMOhm }: { dropMv: number; resistanceMOhm: number }): number {
  within('fuseCurrentMa', 'dropMv', dropMv, 0, 1000, 'mV');
  positive('fuseCurrentMa', 'resistanceMOhm', resistanceMOhm, 'mΩ');
  return (finite('fuseCurrentMa', 'dropMv', dropMv) / resistanceMOhm) * 1000;
}

/**
 * Time in which a current brings a let-through: how long a fuse melts, for short times only. Below about five times its
 * rating heat leaves the fuse and `fuseOpens` holds instead.
 *
 * @param options `i2tA2S` melting or let-through integral, above 0 A²s; `currentA` above 0 A.
 * @returns seconds.
 * @throws TypeError or RangeError when a value is not above 0.
 * Formula: t = I²t / I².
 * @source definition of I²t.
 * @example i2tTimeS({ i2tA2S: 100, currentA: 50 }) // 0.04
 */
export function i2tTimeS({ i2tA2S, currentA }: { i2tA2S: number; currentA: number }): number {
  return positive('i2tTimeS', 'i2tA2S', i2tA2S, 'A²s') / positive('i2tTimeS', 'currentA', currentA, 'A') ** 2;
}
