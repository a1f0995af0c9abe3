/**
 * Packs circles of unlike sizes into the smallest round bundle a search can find.
 *
 * There is no formula from four unlike circles on. Lay them in one by one, then press: shrink the bundle a little, push
 * overlapping circles apart, and go on until they no longer fit. The answer is the diameter of a layout that does fit, so
 * it is never too small; it may be a few per cent too large, which is the safe side for a sleeve. No chance is involved:
 * the same wires always give the same answer.
 */

interface Circle {
  x: number;
  y: number;
  r: number;
}

/** Circles are taken as touching when they overlap by less than this share of the smallest radius. */
const TOUCH = 1e-4;
const PUSHES = 220;

/**
 * Diameter of the tightest layout found for circles of given diameters.
 * @param diametersMm [mm], two or more, each above 0
 * @returns diameter of a circle that holds them all [mm]
 */
export function packingDiameterMm(diametersMm: readonly number[]): number {
  const radii = diametersMm.map((d) => d / 2).sort((a, b) => b - a);
  const smallest = radii.at(-1)!;
  let best = Number.POSITIVE_INFINITY;
  // Beyond twenty circles one layout is nearly as good as the next, and each costs time.
  for (const start of starts(radii).slice(0, radii.length > 20 ? 3 : 7)) {
    best = Math.min(best, press(start, TOUCH * smallest));
  }
  return 2 * best;
}

/** Different first layouts: they press into different bundles, and the tightest counts. */
function starts(radii: readonly number[]): Circle[][] {
  const smallFirst = [...radii].reverse();
  return [
    layOut(radii),
    layOut(smallFirst),
    layOut(alternating(radii)),
    ring(radii, 0),
    ring(radii, 1),
    ring(smallFirst, 0),
    ring(alternating(radii), 1),
  ];
}

/** Largest, smallest, second largest, second smallest … */
function alternating(radii: readonly number[]): number[] {
  const order: number[] = [];
  for (let low = 0, high = radii.length - 1; low <= high; low++, high--) {
    order.push(radii[low]!);
    if (low < high) order.push(radii[high]!);
  }
  return order;
}

/** `inside` circles in the middle, the rest in one ring round it, loosely. */
function ring(radii: readonly number[], inside: number): Circle[] {
  const total = radii.reduce((sum, r) => sum + r, 0);
  const reach = total / 2 + radii[0]!;
  return radii.map((r, i) => {
    if (i < inside) return { x: 0, y: 0, r };
    const angle = (2 * Math.PI * (i - inside)) / (radii.length - inside);
    return { x: reach * Math.cos(angle), y: reach * Math.sin(angle), r };
  });
}

/** Each circle goes to the place nearest the middle where it touches two that are laid. */
function layOut(radii: readonly number[]): Circle[] {
  const placed: Circle[] = [
    { x: 0, y: 0, r: radii[0]! },
    { x: radii[0]! + radii[1]!, y: 0, r: radii[1]! },
  ];
  for (const r of radii.slice(2)) {
    const middle = middleOf(placed);
    let spot: Circle | undefined;
    let spotReach = Number.POSITIVE_INFINITY;
    for (let i = 0; i < placed.length; i++) {
      for (let j = i + 1; j < placed.length; j++) {
        for (const candidate of touchingBoth(placed[i]!, placed[j]!, r)) {
          const reach = Math.hypot(candidate.x - middle.x, candidate.y - middle.y) + r;
          if (reach < spotReach && placed.every((other) => overlap(other, candidate) < TOUCH * r)) {
            spot = candidate;
            spotReach = reach;
          }
        }
      }
    }
    // A circle always finds room on the outside of two neighbours, so a spot exists.
    placed.push(spot!);
  }
  return placed;
}

const overlap = (a: Circle, b: Circle): number => a.r + b.r - Math.hypot(a.x - b.x, a.y - b.y);

function middleOf(circles: readonly Circle[]): { x: number; y: number } {
  const area = circles.reduce((sum, c) => sum + c.r * c.r, 0);
  return {
    x: circles.reduce((sum, c) => sum + c.x * c.r * c.r, 0) / area,
    y: circles.reduce((sum, c) => sum + c.y * c.r * c.r, 0) / area,
  };
}

/** The two places where a circle of radius r touches both a and b, if they are near enough. */
function touchingBoth(a: Circle, b: Circle, r: number): Circle[] {
  const distance = Math.hypot(b.x - a.x, b.y - a.y);
  const reachA = a.r + r;
  const reachB = b.r + r;
  if (distance > reachA + reachB || distance === 0) return [];
  const along = (reachA ** 2 - reachB ** 2 + distance ** 2) / (2 * distance);
  const across = Math.sqrt(Math.max(0, reachA ** 2 - along ** 2));
  const ux = (b.x - a.x) / distance;
  const uy = (b.y - a.y) / distance;
  return [1, -1].map((side) => ({
    x: a.x + along * ux - side * across * uy,
    y: a.y + along * uy + side * across * ux,
    r,
  }));
}

/** Shrinks the bundle in steps that get finer as it resists; returns the radius of the last layout that fitted. */
function press(start: readonly Circle[], allowed: number): number {
  const middle = middleOf(start);
  let circles = start.map((c) => ({ x: c.x - middle.x, y: c.y - middle.y, r: c.r }));
  let radius = Math.max(...circles.map((c) => Math.hypot(c.x, c.y) + c.r));
  let step = 0.1;
  while (step > 2e-4) {
    const target = radius * (1 - step);
    const tried = pushApart(circles, target, allowed);
    if (tried === undefined) {
      step /= 2;
    } else {
      circles = tried;
      radius = target;
    }
  }
  // What is left of overlap is made good by growing the whole layout, so that it truly fits.
  return radius * (1 + (2 * allowed) / Math.min(...circles.map((c) => c.r)));
}

/** Pushes overlapping circles apart inside a given radius; undefined when they will not go. */
function pushApart(circles: readonly Circle[], radius: number, allowed: number): Circle[] | undefined {
  const moved = circles.map((c) => ({ ...c }));
  for (let push = 0; push < PUSHES; push++) {
    let worst = 0;
    for (let i = 0; i < moved.length; i++) {
      const a = moved[i]!;
      for (let j = i + 1; j < moved.length; j++) {
        const b = moved[j]!;
        const dx = b.x - a.x;
        const dy = b.y - a.y;
        const distance = Math.hypot(dx, dy);
        const over = a.r + b.r - distance;
        if (over <= 0) continue;
        worst = Math.max(worst, over);
        // Two circles in one spot have no direction to part in: any will do, so take the x axis.
        const ux = distance === 0 ? 1 : dx / distance;
        const uy = distance === 0 ? 0 : dy / distance;
        // The heavier circle moves less, as a thick wire in a loom does.
        const share = b.r ** 2 / (a.r ** 2 + b.r ** 2);
        a.x -= ux * over * share;
        a.y -= uy * over * share;
        b.x += ux * over * (1 - share);
        b.y += uy * over * (1 - share);
      }
      const out = Math.hypot(a.x, a.y) + a.r - radius;
      if (out > 0) {
        worst = Math.max(worst, out);
        const distance = Math.hypot(a.x, a.y);
        if (distance === 0) return undefined;
        a.x -= (a.x / distance) * out;
        a.y -= (a.y / distance) * out;
      }
    }
    if (worst <= allowed) return moved;
  }
  return undefined;
}
