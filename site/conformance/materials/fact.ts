import type { Shape, Value } from '../row.ts';

/**
 * A row with no inputs asks for figures of a table: which table, its `about` says in words, and the names of what it
 * expects say which figures.
 */
export function fact(about: RegExp, figures: Record<string, unknown>): Shape {
  return {
    needs: [],
    gives: Object.keys(figures),
    answer: (_inputs, row) => (about.test(row.about) ? figures : undefined),
  };
}

/** List input of numbers. */
export function numbers(inputs: Record<string, Value>, name: string): number[] {
  const value = inputs[name];
  if (!Array.isArray(value) || !value.every((each) => typeof each === 'number')) {
    throw new TypeError(`input ${name} is ${JSON.stringify(value)}, expected a list of numbers`);
  }
  return value;
}

/** Input that may be one value or a list: always a list. */
export function list(inputs: Record<string, Value>, name: string): readonly Value[] {
  const value = inputs[name];
  return Array.isArray(value) ? value : [value as Value];
}

/** Answers each of a list, or the one; the answer has the form of the question. */
export function each<T>(inputs: Record<string, Value>, name: string, answer: (value: Value) => T): T | T[] {
  const value = inputs[name];
  return Array.isArray(value) ? value.map(answer) : answer(value as Value);
}
