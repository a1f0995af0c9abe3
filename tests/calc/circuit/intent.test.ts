import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Condition, evaluate, namesIn, parseCondition } from '../../../calc/index.ts';

const inputs = ['master', 'side', 'rear', 'key'];

function read(text: string): Condition {
  const parsed = parseCondition(text, inputs);
  if (!parsed.ok) throw new Error(parsed.error.message);
  return parsed.condition;
}
const holds = (text: string, ...on: string[]) =>
  evaluate(read(text), Object.fromEntries(on.map((name) => [name, true])));

describe('a condition', () => {
  test('binds not before and, and before or', () => {
    expect(holds('key or master and side', 'key')).toBe(true);
    expect(holds('(key or master) and side', 'key')).toBe(false);
    expect(holds('not key and master', 'master')).toBe(true);
    expect(holds('not (key and master)', 'master')).toBe(true);
    expect(holds('not not key', 'key')).toBe(true);
  });

  test('knows always and never', () => {
    expect(holds('always')).toBe(true);
    expect(holds('never', 'key')).toBe(false);
    expect(holds('not never or key')).toBe(true);
  });

  test('names its inputs once each, in order', () => {
    expect(namesIn(read('rear and (side or not rear) or master'))).toEqual(['rear', 'side', 'master']);
    expect(namesIn(read('always'))).toEqual([]);
  });
});

describe('a condition that cannot be read says where, what came and what was expected', () => {
  const cases: [string, string][] = [
    ['', 'Unexpected the end at character 1, expected an input, "not", "always", "never" or "("'],
    ['master and', 'Unexpected the end at character 11, expected an input, "not", "always", "never" or "("'],
    ['master side', 'Unexpected "side" at character 8, expected "and", "or" or the end'],
    ['(master or side', 'Unexpected the end at character 16, expected "and", "or" or ")"'],
    ['master)', 'Unexpected ")" at character 7, expected "and", "or" or the end'],
    ['and master', 'Unexpected "and" at character 1, expected an input, "not", "always", "never" or "("'],
    ['master & side', 'Unexpected "&" at character 8, expected "and", "or" or the end'],
    [
      'mster and side',
      'Unexpected "mster" at character 1, expected an input (master, side, rear, key): did you mean "master"?',
    ],
    [
      'side and nto',
      'Unexpected "nto" at character 10, expected an input (master, side, rear, key): did you mean "not"?',
    ],
    ['side and xylophone', 'Unexpected "xylophone" at character 10, expected an input (master, side, rear, key)'],
  ];
  for (const [text, message] of cases) {
    test(`"${text}"`, () => {
      const parsed = parseCondition(text, inputs);
      expect(parsed.ok ? 'no error' : parsed.error.message).toBe(message);
      expect(parsed.ok ? -1 : parsed.error.offset).toBe(Number(/character (\d+)/.exec(message)![1]) - 1);
    });
  }

  test('brackets without end are refused, not followed', () => {
    const parsed = parseCondition('('.repeat(50_000), inputs);
    expect(parsed.ok ? '' : parsed.error.message).toContain('expected at most 100 brackets');
  });
});

test('what a condition says and what it evaluates to agree for any condition', () => {
  const tree: fc.Memo<Condition> = fc.memo((depth) => {
    const leaf = fc.oneof(
      fc.constantFrom(...inputs).map((name): Condition => ({ kind: 'input', name, offset: 0 })),
      fc.boolean().map((value): Condition => ({ kind: 'constant', value })),
    );
    if (depth <= 1) return leaf;
    const inner = tree(depth - 1);
    return fc.oneof(
      leaf,
      inner.map((of): Condition => ({ kind: 'not', of })),
      fc
        .tuple(fc.constantFrom('and' as const, 'or' as const), inner, inner)
        .map(([kind, left, right]): Condition => ({ kind, left, right })),
    );
  });
  const write = (at: Condition): string => {
    if (at.kind === 'input') return at.name;
    if (at.kind === 'constant') return at.value ? 'always' : 'never';
    if (at.kind === 'not')
      return `not ${at.of.kind === 'and' || at.of.kind === 'or' ? `(${write(at.of)})` : write(at.of)}`;
    return `(${write(at.left)}) ${at.kind} (${write(at.right)})`;
  };
  const state = fc.record({ master: fc.boolean(), side: fc.boolean(), rear: fc.boolean(), key: fc.boolean() });
  fc.assert(
    fc.property(tree(5), state, (condition, on) => {
      expect(evaluate(read(write(condition)), on)).toBe(evaluate(condition, on));
    }),
    { seed: 1, numRuns: 300 },
  );
});
