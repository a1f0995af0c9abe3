/** A value a row gives or expects: a number, a word, a yes or no, nothing, or a list or record of them. */
export type Value = number | string | boolean | null | readonly Value[] | { readonly [key: string]: Value };

/** One published example: what goes in, what must come out, how near, and where it stands. */
export interface Row {
  id: string;
  about: string;
  inputs: Record<string, Value>;
  expect: Record<string, Value>;
  tolerance: { abs?: number; rel?: number };
  source: string;
  at: string;
  read: string;
  note?: string;
}

/**
 * One question that calc can answer, known by the shape of a row: the names of its inputs and of the keys it expects.
 * Two tables that answer the same question are told apart by the row's `source`, as a reader would.
 */
export interface Shape {
  /** Input names that must all be there. */
  needs: readonly string[];
  /** Input names that may be there as well. */
  may?: readonly string[];
  /** Keys it can answer; a row may expect some of them, not others. */
  gives: readonly string[];
  /** The answer computed by calc, or undefined when this row is not its question after all. */
  answer(inputs: Record<string, Value>, row: Row): object | undefined;
}

/** Number input of a row; a wrong kind of value is reported as such, not computed with. */
export function num(inputs: Record<string, Value>, name: string): number {
  const value = inputs[name];
  if (typeof value !== 'number') throw new TypeError(`input ${name} is ${JSON.stringify(value)}, expected a number`);
  return value;
}

/** Word input of a row. */
export function word(inputs: Record<string, Value>, name: string): string {
  const value = inputs[name];
  if (typeof value !== 'string') throw new TypeError(`input ${name} is ${JSON.stringify(value)}, expected a word`);
  return value;
}
