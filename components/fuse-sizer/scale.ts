import type { WeighedRating } from '../../calc/index.ts';

/** Width of the drawing; the look draws every instrument's picture for a phone. */
export const WIDTH = 320;
const LEFT = 28;
const RIGHT = 296;
/** More marks than this run into each other. */
const MOST = 8;

/** The scale of a fuse sizer: ratings on a line whose steps grow, the need and the wire's limit on it. */
export interface Scale {
  marks: { x: number; label: string; kind: 'no' | 'pick' | 'ok' }[];
  needX: number;
  limitX: number;
}

/** Ratings worth showing: those about the need and the limit, and the one that is fitted. */
function windowOf(
  ratings: readonly WeighedRating[],
  needA: number,
  limitA: number,
  fittedA: number | null,
): WeighedRating[] {
  const at = ratings.findIndex(({ ratingA }) => ratingA >= (fittedA ?? needA));
  const middle = at < 0 ? ratings.length - 1 : at;
  const limitAt = ratings.findLastIndex(({ ratingA }) => ratingA <= limitA * (1 + 1e-9));
  const from = Math.max(0, Math.min(middle - 2, limitAt < 0 ? 0 : limitAt - 1, ratings.length - MOST));
  return ratings.slice(from, from + MOST);
}

/** Half the width of the pick's block. */
export const BLOCK = 17;
/** A limit that would fall inside the pick's block stands at its right edge: the pick is within it. */
const beside = (x: number, pickX: number | null): number =>
  pickX !== null && Math.abs(x - pickX) < BLOCK + 2 ? pickX + BLOCK : x;

export function scaleOf(
  ratings: readonly WeighedRating[],
  needA: number,
  limitA: number,
  fittedA: number | null,
): Scale {
  const shown = windowOf(ratings, needA, limitA, fittedA);
  const low = shown[0]!.ratingA;
  const high = shown.at(-1)!.ratingA;
  const span = Math.log(high / low) || 1;
  const x = (ampere: number): number =>
    Math.round(Math.min(314, Math.max(6, LEFT + ((RIGHT - LEFT) * Math.log(Math.max(ampere, low / 4) / low)) / span)));
  return {
    marks: shown.map(({ ratingA, state }) => ({
      x: x(ratingA),
      label: String(ratingA),
      kind: ratingA === fittedA ? 'pick' : state === 'too small' ? 'no' : 'ok',
    })),
    needX: x(needA),
    limitX: beside(x(limitA), fittedA === null ? null : x(fittedA)),
  };
}
