import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Edge, type Graph, layout } from '../../components/circuit-diagram/layout.ts';

const PITCH = { column: 88, columns: 4, bar: 22, margin: 16, lead: 34, tail: 0 };

interface NeutralElement {
  type: string;
  id: string;
  a?: string;
  b?: string;
  k?: string;
  p?: string;
  n?: string;
  coil?: [string, string];
  com?: string;
  no?: string | null;
  nc?: string | null;
}

/** Any install circuit, with every part drawn 44 high: the second and later sources stand between two nodes like a load. */
function graphOf(elements: NeutralElement[]): Graph {
  const rail = elements.find((e) => e.type === 'source')!.p!;
  const edges: Edge[] = elements.flatMap((e): Edge[] => {
    const height = 44;
    if (e.type === 'relay') {
      const parts: Edge[] = [{ id: e.id, a: e.coil![0], b: e.coil![1], height, directed: true }];
      if (e.no) parts.push({ id: `${e.id}.no`, a: e.com!, b: e.no, height });
      if (e.nc) parts.push({ id: `${e.id}.nc`, a: e.com!, b: e.nc, height });
      return parts;
    }
    if (e.type === 'source') return [{ id: e.id, a: e.p!, b: e.n!, height, directed: true }];
    if (e.type === 'diode') return [{ id: e.id, a: e.a!, b: e.k!, height, directed: true }];
    return [{ id: e.id, a: e.a!, b: e.b!, height }];
  });
  return { edges, rails: [rail], chassis: '0' };
}

const { patterns } = JSON.parse(
  readFileSync(new URL('../calc/circuit/rows/patterns.json', import.meta.url), 'utf8'),
) as { patterns: { id: string; elements: NeutralElement[] }[] };

describe('layout of current paths', () => {
  for (const pattern of patterns) {
    const graph = graphOf(pattern.elements);
    const drawn = layout(graph, PITCH);

    it(`${pattern.id}: every part is drawn once, none over another`, () => {
      expect(drawn.parts.map((p) => p.id).sort()).toEqual(graph.edges.map((e) => e.id).sort());
      for (const a of drawn.parts) {
        expect(a.y2 - a.y1).toBeCloseTo(44, 6);
        for (const b of drawn.parts) {
          if (a === b || a.x !== b.x) continue;
          expect(a.y2 <= b.y1 + 1e-6 || b.y2 <= a.y1 + 1e-6, `${a.id} over ${b.id}`).toBe(true);
        }
      }
    });

    it(`${pattern.id}: no bar crosses a path, and no bar runs through a part`, () => {
      expect(drawn.crossings).toEqual([]);
      for (const line of drawn.lines.filter((l) => l.y1 === l.y2)) {
        for (const p of drawn.parts) {
          const through = p.x > line.x1 && p.x < line.x2 && p.y1 < line.y1 && line.y1 < p.y2;
          expect(through, `${line.node} through ${p.id}`).toBe(false);
        }
      }
    });

    it(`${pattern.id}: two nodes never share a place, and the same circuit is drawn the same way`, () => {
      const places = new Map<string, string>();
      for (const d of drawn.dots) {
        const key = `${d.x},${d.y}`;
        expect(places.get(key) ?? d.node).toBe(d.node);
        places.set(key, d.node);
      }
      expect(layout(graph, PITCH)).toEqual(drawn);
    });
  }

  it('draws a lone part from rail to chassis and a capped end as an open end', () => {
    const drawn = layout(
      {
        edges: [
          { id: 'L1', a: 'rail', b: '0', height: 40 },
          { id: 'K1.nc', a: 'rail', b: 'cap', height: 40 },
        ],
        rails: ['rail'],
        chassis: '0',
      },
      PITCH,
    );
    expect(drawn.grounds).toHaveLength(1);
    expect(drawn.ends.map((e) => e.node)).toEqual(['cap']);
    expect(drawn.rails).toHaveLength(1);
  });

  it('stays within the columns it is given where the circuit falls into separate paths', () => {
    const edges = Array.from({ length: 9 }, (_, i) => ({ id: `L${i}`, a: 'rail', b: '0', height: 40 }));
    const drawn = layout({ edges, rails: ['rail'], chassis: '0' }, PITCH);
    expect(drawn.width).toBeLessThanOrEqual(4 * PITCH.column + 2 * PITCH.margin);
    expect(new Set(drawn.rails.map((r) => r.y)).size).toBe(3);
  });
});
