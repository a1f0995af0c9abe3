import { nearestName } from './did-you-mean.ts';
import type { InputState } from './model.ts';

/** A condition over the inputs, as a tree. */
export type Condition =
  | { kind: 'constant'; value: boolean }
  | { kind: 'input'; name: string; offset: number }
  | { kind: 'not'; of: Condition }
  | { kind: 'and' | 'or'; left: Condition; right: Condition };

/** Why a condition cannot be read: where, what stood there, what would fit. */
export interface ConditionError {
  /** Characters before the trouble. */
  offset: number;
  /** What came, as written; 'end' at the end of the text. */
  came: string;
  expected: string;
  /** The name that was probably meant. */
  suggestion?: string;
  message: string;
}

export type ParsedCondition = { ok: true; condition: Condition } | { ok: false; error: ConditionError };

interface Token {
  kind: 'word' | '(' | ')' | 'other' | 'end';
  text: string;
  offset: number;
}

const WORDS_OF_THE_LANGUAGE = new Set(['and', 'or', 'not', 'always', 'never']);
const MAX_DEPTH = 100;

function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  for (const match of text.matchAll(/([A-Za-z_][\w-]*)|([()])|(\S)/g)) {
    const [whole, word, bracket] = match;
    const kind = word ? 'word' : bracket === '(' || bracket === ')' ? bracket : 'other';
    tokens.push({ kind, text: whole, offset: match.index });
  }
  tokens.push({ kind: 'end', text: 'end', offset: text.length });
  return tokens;
}

class Unreadable extends Error {
  readonly detail: ConditionError;
  constructor(detail: ConditionError) {
    super(detail.message);
    this.detail = detail;
  }
}

function refuse(token: Token, expected: string, suggestion?: string): never {
  const came = token.kind === 'end' ? 'the end' : `"${token.text}"`;
  throw new Unreadable({
    offset: token.offset,
    came: token.text,
    expected,
    ...(suggestion === undefined ? {} : { suggestion }),
    message:
      `Unexpected ${came} at character ${token.offset + 1}, expected ${expected}` +
      (suggestion === undefined ? '' : `: did you mean "${suggestion}"?`),
  });
}

/** Recursive descent over `or` (weakest), `and`, `not`, then a name, `always`, `never` or brackets. */
class Reader {
  private at = 0;
  private readonly tokens: Token[];
  private readonly inputs: ReadonlySet<string> | undefined;

  constructor(text: string, inputs: Iterable<string> | undefined) {
    this.tokens = tokensOf(text);
    this.inputs = inputs && new Set(inputs);
  }

  whole(): Condition {
    const condition = this.either(0);
    const rest = this.peek();
    if (rest.kind !== 'end') refuse(rest, '"and", "or" or the end');
    return condition;
  }

  private peek(): Token {
    return this.tokens[this.at]!;
  }

  private takeWord(word: string): boolean {
    const token = this.peek();
    if (token.kind !== 'word' || token.text !== word) return false;
    this.at++;
    return true;
  }

  private either(depth: number): Condition {
    let left = this.both(depth);
    while (this.takeWord('or')) left = { kind: 'or', left, right: this.both(depth) };
    return left;
  }

  private both(depth: number): Condition {
    let left = this.single(depth);
    while (this.takeWord('and')) left = { kind: 'and', left, right: this.single(depth) };
    return left;
  }

  private single(depth: number): Condition {
    const token = this.peek();
    if (depth > MAX_DEPTH) refuse(token, `at most ${MAX_DEPTH} brackets or "not" inside each other`);
    if (this.takeWord('not')) return { kind: 'not', of: this.single(depth + 1) };
    if (this.takeWord('always')) return { kind: 'constant', value: true };
    if (this.takeWord('never')) return { kind: 'constant', value: false };
    this.at++;
    if (token.kind === '(') {
      const inner = this.either(depth + 1);
      const close = this.peek();
      if (close.kind !== ')') refuse(close, '"and", "or" or ")"');
      this.at++;
      return inner;
    }
    if (token.kind !== 'word' || WORDS_OF_THE_LANGUAGE.has(token.text)) {
      refuse(token, 'an input, "not", "always", "never" or "("');
    }
    if (this.inputs && !this.inputs.has(token.text)) {
      const known = [...this.inputs];
      const list = known.length === 0 ? 'no input is defined' : `an input (${known.join(', ')})`;
      refuse(token, list, nearestName(token.text, [...known, ...WORDS_OF_THE_LANGUAGE]));
    }
    return { kind: 'input', name: token.text, offset: token.offset };
  }
}

/**
 * Reads a condition of the intent: `master and (side or rear)`, `not key`, `always`, `never`.
 *
 * `not` binds tightest, then `and`, then `or`.
 *
 * @param text as the author wrote it
 * @param inputs names that may stand in it; leave out to accept any
 * @returns the condition, or the first error with its place; never throws
 */
export function parseCondition(text: string, inputs?: Iterable<string>): ParsedCondition {
  try {
    return { ok: true, condition: new Reader(text, inputs).whole() };
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, error: error.detail };
    throw error;
  }
}

/** Whether a condition holds while exactly the inputs that are true in `state` are on. */
export function evaluate(condition: Condition, state: InputState): boolean {
  switch (condition.kind) {
    case 'constant':
      return condition.value;
    case 'input':
      return state[condition.name] === true;
    case 'not':
      return !evaluate(condition.of, state);
    case 'and':
      return evaluate(condition.left, state) && evaluate(condition.right, state);
    case 'or':
      return evaluate(condition.left, state) || evaluate(condition.right, state);
  }
}

/** Names of the inputs a condition speaks of, each once, in the order of their first mention. */
export function namesIn(condition: Condition): string[] {
  const names = new Set<string>();
  const visit = (at: Condition): void => {
    if (at.kind === 'input') names.add(at.name);
    else if (at.kind === 'not') visit(at.of);
    else if (at.kind !== 'constant') {
      visit(at.left);
      visit(at.right);
    }
  };
  visit(condition);
  return [...names];
}
