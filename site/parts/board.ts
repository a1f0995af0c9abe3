import { to } from '../links.ts';
import type { Board } from '../schemas/vehicle.ts';
import type { Guide, Vehicle } from '../workshop.ts';

type Point = readonly [number, number];

/** The drawing's frame in board units; heights in percent are shares of it. */
export const VIEW = { top: -10, width: 1000, height: 420 };

const round = (value: number): number => Math.round(value * 100) / 100;
export const path = (points: readonly Point[]): string => `M${points.map(([x, y]) => `${x} ${y}`).join('L')}`;

/** Arrow heads along a run, every `pitch` units, pointing the way the current goes. */
export function arrows(points: readonly Point[], pitch: number, size: number): string {
  let out = '';
  for (let i = 1; i < points.length; i++) {
    const [ax, ay] = points[i - 1]!;
    const [bx, by] = points[i]!;
    const length = Math.hypot(bx - ax, by - ay);
    const [dx, dy] = [(bx - ax) / length, (by - ay) / length];
    const count = Math.floor(length / pitch);
    for (let n = 0; n < count; n++) {
      const along = (length * (n + 0.5)) / count;
      const [x, y] = [ax + dx * along, ay + dy * along];
      const tail = (side: number): string =>
        `${round(x - dx * size - dy * size * side)} ${round(y - dy * size + dx * size * side)}`;
      out += `M${tail(1)}L${round(x + dx * size * 0.4)} ${round(y + dy * size * 0.4)}L${tail(-1)}`;
    }
  }
  return out;
}

/** A branch leaves the trunk square and turns once. */
function branch(from: Point, at: Point): Point[] {
  const [fx, fy] = from;
  const [ax, ay] = at;
  return fx === ax || fy === ay ? [from, at] : [from, [fx, ay], at];
}

/** Widest a letter of a label gets, in board units, on the narrowest board that shows labels. */
const LETTER = 9;

function labelAt(name: string, run: readonly Point[]): Peg['label'] {
  const [[fx], [x, y]] = [run.at(-2)!, run.at(-1)!];
  const roomRight = VIEW.width - x > name.length * LETTER + 30;
  if (fx > x) return { x: -24, y: 5, anchor: 'end' };
  if (roomRight) return { x: 19, y: 5, anchor: 'start' };
  if (fx === x) return { x: -24, y: 5, anchor: 'end' };
  return { x: 16, y: y < 60 ? 34 : -26, anchor: 'end' };
}

export interface Peg {
  number: number;
  id: string;
  name: string;
  guides: Guide[];
  /** Where a tap leads; none while no guide fits anything here. */
  href: string | undefined;
  x: string;
  y: string;
  at: Point;
  /** Where the name stands, in pixels from the peg: away from its own wire and on the board. */
  label: { x: number; y: number; anchor: 'start' | 'end' };
  run: Point[];
}

/** The numbered places of a vehicle type with the guides that fit something there. */
export function pegsOf(vehicle: Vehicle, guides: readonly Guide[], page = `/vehicles/${vehicle.id}/`): Peg[] {
  return vehicle.board.places.map((place, index) => {
    const here = guidesAt(place, vehicle.id, guides);
    const [x, y] = place.at;
    return {
      number: index + 1,
      id: place.id,
      name: place.name,
      guides: here,
      href:
        here.length === 0
          ? undefined
          : here.length === 1
            ? to(`/guides/${here[0]!.id}/`)
            : `${to(page)}#place-${place.id}`,
      x: `${round((x / VIEW.width) * 100)}%`,
      y: `${round(((y - VIEW.top) / VIEW.height) * 100)}%`,
      at: place.at,
      label: labelAt(place.name, branch(place.from, place.at)),
      run: branch(place.from, place.at),
    };
  });
}

const guidesAt = (place: Board['places'][number], vehicle: string, guides: readonly Guide[]): Guide[] =>
  guides.filter(({ id, data }) => place.guides.includes(id) && data.vehicles.includes(vehicle));

export const guidesFor = (vehicle: string, guides: readonly Guide[]): Guide[] =>
  guides.filter(({ data }) => data.vehicles.includes(vehicle));

/** "1 guide", "4 guides", "no guide yet". */
export const counted = (count: number, one: string, none = `no ${one} yet`): string =>
  count === 0 ? none : count === 1 ? `1 ${one}` : `${count} ${one}s`;
