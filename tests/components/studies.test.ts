import { describe, expect, it } from 'vitest';
import type { Study } from '../../components/context.ts';
import { keptStudies } from '../../components/runtime/studies.ts';

const study = (n: number, states = 2): Study =>
  ({ figures: { n }, proof: { states: Array.from({ length: states }), reached: [] } }) as unknown as Study;

describe('studies that are kept', () => {
  it('are worked out once for the same values, and after the one before', () => {
    const asked: [number, Study | null][] = [];
    const { of } = keptStudies((values, after) => {
      asked.push([values['m']!, after]);
      return study(values['m']!);
    });
    const one = of({ m: 1 });
    const two = of({ m: 2 });
    expect(of({ m: 1 })).toBe(one);
    expect(of({ m: 2 })).toBe(two);
    expect(asked).toEqual([
      [1, null],
      [2, one],
    ]);
  });

  it('give way to newer ones, the longest unused first', () => {
    let worked = 0;
    const { of } = keptStudies((values) => {
      worked++;
      return study(values['m']!);
    });
    for (let m = 0; m < 32; m++) of({ m });
    of({ m: 0 }); // used again: it stays, and 1 goes
    of({ m: 32 });
    of({ m: 0 });
    expect(worked).toBe(33);
    of({ m: 1 });
    expect(worked).toBe(34);
  });

  it('are fewer where each has many states, but the last one', () => {
    let worked = 0;
    const kept = keptStudies((values) => {
      worked++;
      return study(values['m']!, 4096);
    });
    for (const m of [1, 2, 2, 1]) kept.of({ m });
    expect(worked).toBe(2);
    kept.of({ m: 3 });
    kept.of({ m: 2 });
    expect(worked).toBe(4);
    expect(kept.light).toBe(false);
  });

  it('are light while one takes little time', () => {
    let clock = 0;
    let takes = 20;
    const kept = keptStudies(
      (values) => {
        clock += takes;
        return study(values['m']!);
      },
      () => clock,
    );
    kept.of({ m: 1 });
    expect([kept.light, kept.quick]).toEqual([true, true]);
    takes = 80;
    kept.of({ m: 2 });
    expect([kept.light, kept.quick]).toEqual([true, false]);
    takes = 400;
    kept.of({ m: 3 });
    expect([kept.light, kept.quick]).toEqual([false, false]);
  });

  it('keep nothing of what threw', () => {
    let worked = 0;
    const { of } = keptStudies(() => {
      worked++;
      if (worked === 1) throw new RangeError('no');
      return null;
    });
    expect(() => of({ m: 1 })).toThrow('no');
    expect(of({ m: 1 })).toBe(null);
    expect(of({ m: 1 })).toBe(null);
    expect(worked).toBe(2);
  });
});
