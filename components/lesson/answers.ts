/**
 * Answers of a lesson's questions as they stand in the page: scrambled, so that nobody reads them by accident before
 * answering. Whoever wants to can undo it; it guards no secret and no score rests on it.
 */
export interface Answer {
  /** Index of the right option. */
  right: number;
  /** Why each option is right or not, in their order. */
  why: readonly string[];
}

/** A byte a position that follows from the question's id alone. */
function* bytes(key: string): Generator<number> {
  let state = 2166136261;
  for (const letter of key) state = Math.imul(state ^ letter.codePointAt(0)!, 16777619);
  for (;;) {
    state = Math.imul(state ^ (state >>> 15), 2246822507) + 0x9e3779b9;
    yield (state >>> 16) & 255;
  }
}

const mixed = (data: Uint8Array, key: string): Uint8Array => {
  const stream = bytes(key);
  return data.map((byte) => byte ^ (stream.next().value as number));
};

/** Text of an answer for the page. */
export function scramble(answer: Answer, id: string): string {
  const data = mixed(new TextEncoder().encode(JSON.stringify(answer)), id);
  return btoa(Array.from(data, (byte) => String.fromCharCode(byte)).join(''));
}

/**
 * The answer again.
 * @throws Error when the text was not made by `scramble` with this id
 */
export function unscramble(text: string, id: string): Answer {
  const data = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
  const answer: unknown = JSON.parse(new TextDecoder().decode(mixed(data, id)));
  if (typeof answer !== 'object' || answer === null || !('right' in answer) || !('why' in answer))
    throw new Error(`The answer of question ${id} cannot be read`);
  return answer as Answer;
}
