import type { Drawing } from './drawing.ts';

/**
 * What the browser needs of a drawing: for each line the edges it carries, for each part its element and which way up.
 * The lines themselves are in the markup; laying them out again would cost the reader the layout's code.
 */
export interface Plan {
  /** Signed edges: `-W2` flows against. */
  lines: string[][];
  /** Element, owner, `-` where it stands upside down. */
  parts: [id: string, owner: string, turn: '' | '-', symbol: string, values: string[]][];
  /** Nodes whose voltage is written, one place each. */
  volts: string[];
}

export function planOf(drawing: Drawing): Plan {
  return {
    lines: drawing.lines.map(({ carries }) => carries.map(({ id, sign }) => (sign < 0 ? `-${id}` : id))),
    parts: drawing.parts.map((p) => [p.id, p.owner, p.flipped ? '-' : '', p.symbol, p.values]),
    volts: voltPlaces(drawing).map(({ node }) => node),
  };
}

/** Where the voltage of a node is written: at its first dot, or at the upper end of its longest line. */
export function voltPlaces(drawing: Drawing): { node: string; x: number; y: number }[] {
  const places = new Map<string, { node: string; x: number; y: number; length: number }>();
  const rails = new Set(drawing.rails.map(({ node }) => node));
  for (const { node, x, y } of drawing.dots)
    if (!places.has(node) && !rails.has(node)) places.set(node, { node, x, y, length: 0 });
  for (const { node, x, y } of drawing.ends) if (!places.has(node)) places.set(node, { node, x, y, length: 0 });
  return [...places.values()].map(({ node, x, y }) => ({ node, x, y }));
}
