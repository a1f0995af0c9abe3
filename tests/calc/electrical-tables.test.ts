import { describe, expect, it } from 'vitest';
import { tables } from '../../calc/index.ts';

/** Every object of the electrical tables that carries a citation, with the name of its table. */
const rows = Object.entries(tables).flatMap(([name, value]) =>
  (Array.isArray(value) ? value : [value])
    .filter((each): each is Record<string, unknown> => typeof each === 'object' && each !== null && 'source' in each)
    .map((row) => ({ name, row })),
);

describe('electrical tables', () => {
  it('cite a source, a place, a unit and how each row was read', () => {
    expect(rows.length).toBeGreaterThan(400);
    const bare = rows.filter(({ row }) => {
      const { source, at, unit, read } = row as { [key: string]: unknown };
      const words = [source, at, unit].every((each) => typeof each === 'string' && each !== '');
      return !words || !['seen', 'memory', 'common practice'].includes(String(read));
    });
    expect(bare).toEqual([]);
  });

  it('call a figure common practice when, and only when, nobody published it', () => {
    const muddled = rows.filter(
      ({ row }) => (row['read'] === 'common practice') !== (row['source'] === 'common practice, no source'),
    );
    expect(muddled).toEqual([]);
  });

  it('hold finite figures only', () => {
    const broken = rows.filter(({ row }) =>
      Object.values(row).some((each) => typeof each === 'number' && !Number.isFinite(each)),
    );
    expect(broken).toEqual([]);
  });

  it('never give thinner wire less resistance or more current', () => {
    for (const table of [
      tables.CLASS_1_PLAIN,
      tables.CLASS_2_PLAIN,
      tables.CLASS_2_TINNED,
      tables.CLASS_5_PLAIN,
      tables.CLASS_5_TINNED,
      tables.ISO_6722,
    ]) {
      for (const [index, row] of table.entries()) {
        const next = table[index + 1];
        if (next === undefined) continue;
        expect(next.areaMm2).toBeGreaterThan(row.areaMm2);
        expect(next.resistanceOhmPerM).toBeLessThan(row.resistanceOhmPerM);
      }
    }
    for (const thick of tables.ALLOWED_183_425) {
      const thinner = tables.ALLOWED_183_425.filter(
        (row) => row.insulationC === thick.insulationC && row.gaugeAwg > thick.gaugeAwg,
      );
      for (const thin of thinner) expect(thin.allowedA).toBeLessThanOrEqual(thick.allowedA);
    }
  });

  it('leave no gap and no overlap between the steps of a bundle', () => {
    for (const table of [tables.BUNDLE_183_425, tables.BUNDLE_NEC, tables.WORKSHOP_BUNDLE]) {
      expect(table[0]!.from).toBe(1);
      expect(table.at(-1)!.to).toBe(999);
      for (const [index, row] of table.entries()) {
        const next = table[index + 1];
        if (next === undefined) continue;
        expect(next.from).toBe(row.to + 1);
        expect(next.factor).toBeLessThan(row.factor);
      }
    }
  });

  it('keep the gates of a fuse in order', () => {
    for (const { form } of tables.BLADE_RATINGS) {
      const gates = tables.BLADE_GATES.filter((gate) => gate.form === form);
      expect(gates.map(({ multiple }) => multiple)).toEqual(
        [...gates.map(({ multiple }) => multiple)].sort((a, b) => a - b),
      );
      for (const gate of gates) expect(gate.minS).toBeLessThan(gate.maxS ?? Infinity);
    }
  });
});
