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

/** Where the voltage of a node is written: behind a rail's name, else over its first dot, else at its open end. */
export function voltPlaces(drawing: Drawing): { node: string; x: number; y: number }[] {
  const places = new Map<string, { node: string; x: number; y: number }>();
  const put = (node: string, x: number, y: number) => {
    if (!places.has(node)) places.set(node, { node, x, y });
  };
  for (const { node, x1, y, name } of drawing.rails) put(node, x1 + 8 + name.length * 8, y - 8);
  for (const { node, x, y } of [...drawing.dots, ...drawing.ends]) put(node, x + 10, y - 9);
  return [...places.values()];
}
