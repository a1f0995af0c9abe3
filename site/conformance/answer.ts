import type { Row, Shape } from './row.ts';

/** What became of one row. */
export type Outcome =
  | { kind: 'agrees' }
  | { kind: 'differs'; differences: { key: string; expected: unknown; got: unknown }[] }
  | { kind: 'not covered'; why: string };

const fits = (row: Row, shape: Shape): boolean => {
  const given = Object.keys(row.inputs);
  const known = [...shape.needs, ...(shape.may ?? [])];
  return (
    shape.needs.every((name) => given.includes(name)) &&
    given.every((name) => known.includes(name)) &&
    Object.keys(row.expect).every((key) => shape.gives.includes(key))
  );
};

/** Two numbers agree when they are as near as the row's tolerance, which is the precision the source printed. */
function near(got: number, expected: number, tolerance: Row['tolerance']): boolean {
  const slack = Math.max(tolerance.abs ?? 0, (tolerance.rel ?? 0) * Math.abs(expected));
  // A computer's last digits are nobody's printed precision.
  return Math.abs(got - expected) <= slack + 1e-9 * Math.max(1e-9, Math.abs(expected));
}

/** Numbers agree within tolerance; words, lists and records agree when every part does. */
export function agrees(got: unknown, expected: unknown, tolerance: Row['tolerance']): boolean {
  if (typeof expected === 'number') return typeof got === 'number' && near(got, expected, tolerance);
  if (Array.isArray(expected)) {
    return (
      Array.isArray(got) &&
      got.length === expected.length &&
      expected.every((each, i) => agrees(got[i], each, tolerance))
    );
  }
  if (typeof expected === 'object' && expected !== null) {
    if (typeof got !== 'object' || got === null) return false;
    const record = got as Record<string, unknown>;
    return Object.entries(expected).every(([key, each]) => agrees(record[key], each, tolerance));
  }
  return got === expected;
}

/** Answers one row with the first shape that knows its question, and compares every key it expects. */
export function judge(row: Row, shapes: readonly Shape[]): Outcome {
  const fitting = shapes.filter((shape) => fits(row, shape));
  if (fitting.length === 0) return { kind: 'not covered', why: 'no function has this shape' };
  let why = 'the tables at hand do not hold it';
  for (const shape of fitting) {
    try {
      const answer = shape.answer(row.inputs, row);
      if (answer === undefined) continue;
      const got = answer as Record<string, unknown>;
      const differences = Object.entries(row.expect)
        .filter(([key, expected]) => !agrees(got[key], expected, row.tolerance))
        .map(([key, expected]) => ({ key, expected, got: got[key] }));
      return differences.length === 0 ? { kind: 'agrees' } : { kind: 'differs', differences };
    } catch (error) {
      // Outside the range a function was made for: it says so instead of guessing, and so do we.
      if (!(error instanceof RangeError)) throw error;
      why = error.message;
    }
  }
  return { kind: 'not covered', why };
}
