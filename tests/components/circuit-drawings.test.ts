import { describe, expect, it } from 'vitest';
import { drawingOf } from '../../components/circuit-diagram/drawing.ts';
import { letteringOf } from '../../components/circuit-diagram/lettering.ts';
import { model } from '../../components/circuit-diagram/model.ts';
import { voltPlaces } from '../../components/circuit-diagram/plan.ts';
import { onKey } from '../../components/circuit-view/state.ts';
import { CIRCUITS, jobOn, planFor } from './circuit-states.ts';

/** Widths of a letter as drawn: bold 13 px sans on average, 12 px mono. */
const LETTER = { name: 7.6, mono: 7.4 };

interface Box {
  what: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}
const written = (what: string, x: number, y: number, letter: number, end = false): Box => {
  const width = what.length * letter;
  return { what, left: end ? x - width : x, right: end ? x : x + width, top: y - 9, bottom: y + 2 };
};
const meet = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

describe.each(CIRCUITS.map((circuit) => [circuit.id, circuit] as const))('drawing of %s', (id, circuit) => {
  const drawing = drawingOf(circuit);

  it('crosses no wires and draws every part and wire', () => {
    expect(drawing.crossings).toEqual([]);
    const drawn = new Set(drawing.parts.map(({ owner }) => owner));
    const joints = new Set(['splice', 'chassis']);
    for (const [part, { kind }] of Object.entries(circuit.parts)) if (!joints.has(kind)) expect(drawn).toContain(part);
    for (const wire of Object.keys(circuit.wires)) expect(drawn).toContain(wire);
  });

  it('runs no word into another, nor into a symbol, in any state', () => {
    const plan = planFor(id);
    for (const state of jobOn(id).study!.proof.states) {
      const view = model({ plan }, jobOn(id, { on: onKey(circuit, state.inputs) })) as Record<string, unknown>;
      const words: Box[] = [];
      const solid: Box[] = [];
      drawing.parts.forEach((part, i) => {
        const at = letteringOf(part);
        words.push(written(at.name, at.x, at.y[0], LETTER.name));
        for (const [field, y] of [['t', at.y[1]] as const, ['u', at.y[2]] as const])
          if (view[field + i] !== '') words.push(written(String(view[field + i]), at.x, y, LETTER.mono));
        for (const [text, y] of [[part.upper, part.y1 + 10] as const, [part.lower, part.y2 - 2] as const])
          if (text !== '') words.push(written(text, part.x - 9, y, LETTER.mono, true));
        const half = part.symbol === 'wire' ? 6 : 8;
        solid.push({ what: part.id, left: part.x - half, right: part.x + half, top: part.y1, bottom: part.y2 });
      });
      voltPlaces(drawing).forEach(({ x, y }, i) => {
        words.push(written(String(view[`v${i}`]), x, y, LETTER.mono));
      });
      for (const line of drawing.lines)
        solid.push({ what: line.node, left: line.x1 - 5, right: line.x2 + 5, top: line.y1 - 5, bottom: line.y2 + 5 });
      for (const [n, a] of words.entries()) {
        for (const b of words.slice(n + 1)) expect(meet(a, b), `"${a.what}" over "${b.what}"`).toBe(false);
        for (const b of solid) expect(meet(a, b), `"${a.what}" over ${b.what}`).toBe(false);
        expect(a.right, `"${a.what}" leaves the sheet`).toBeLessThanOrEqual(drawing.width);
        expect(a.left, `"${a.what}" leaves the sheet`).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it('stands as it was looked at', async () => {
    const at = (n: number) => +n.toFixed(3);
    const lines = [
      `${at(drawing.width)} × ${at(drawing.height)}`,
      ...drawing.rails.map((r) => `rail ${r.name} ${at(r.x1)} to ${at(r.x2)} at ${at(r.y)}`),
      ...drawing.parts.map(
        (p) => `${p.symbol} ${p.id} at ${at(p.x)}, ${at(p.y1)} to ${at(p.y2)}${p.flipped ? ' upside down' : ''}`,
      ),
      ...drawing.dots.map((d) => `dot ${at(d.x)}, ${at(d.y)}`),
      ...drawing.grounds.map((g) => `chassis ${g.name || '31'} ${at(g.x)}, ${at(g.y)}`),
    ];
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`drawings/${id}.txt`);
  });
});
