import type { DrawnPart } from './drawing.ts';

/** Where the words of a part stand, and how wide they may get: the markup writes them there, a test holds them apart. */
export interface Lettering {
  x: number;
  name: string;
  /** Base lines of the name, of the line under it and of the one under that. */
  y: [number, number, number];
}

/** Most letters of a name that fit beside a symbol; the whole name stands in the words below. */
const MOST_LETTERS = 8;

export function letteringOf(part: DrawnPart): Lettering {
  const middle = (part.y1 + part.y2) / 2;
  const name = part.name.length > MOST_LETTERS ? `${part.name.slice(0, MOST_LETTERS - 1)}…` : part.name;
  return { x: part.x + (part.symbol === 'wire' ? 10 : 22), name, y: [middle - 8, middle + 5, middle + 18] };
}
