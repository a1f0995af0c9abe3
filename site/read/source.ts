import { readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';

/** A place in a file as editors count: both from 1, columns in UTF-16 units. */
export interface Place {
  line: number;
  col: number;
}

/** Something wrong in one place of one file. A warning is shown and does not stop a build. */
export interface Problem extends Place {
  file: string;
  message: string;
  severity: 'error' | 'warning';
}

/** One file of the content folder, with its text and a way from an offset to its place. */
export class Source {
  /** Path as messages show it: from the working folder where it lies inside, else absolute. */
  readonly file: string;
  readonly path: string;
  readonly text: string;
  #starts: number[] | undefined;

  constructor(path: string, text: string) {
    this.path = path;
    this.file = shownPath(path);
    this.text = text;
  }

  place(offset: number): Place {
    this.#starts ??= lineStarts(this.text);
    const starts = this.#starts;
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, col: offset - starts[low]! + 1 };
  }

  problem(offset: number, message: string, severity: Problem['severity'] = 'error'): Problem {
    return { file: this.file, ...this.place(offset), message, severity };
  }
}

export function shownPath(path: string): string {
  const short = relative('.', resolve(path));
  return short === '' || short.startsWith('..') ? path : short;
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) starts.push(i + 1);
  return starts;
}

const utf8 = new TextDecoder('utf-8', { fatal: true });

/** Reads a file as UTF-8; text that is not gives its first bad byte as a problem, and no source. */
export function readSource(path: string): Source | Problem {
  const bytes = readFileSync(path);
  try {
    return new Source(path, utf8.decode(bytes));
  } catch {
    const at = firstBadByte(bytes);
    const before = new Source(path, new TextDecoder().decode(bytes.subarray(0, at)));
    const byte = bytes[at]?.toString(16).toUpperCase().padStart(2, '0');
    return before.problem(
      before.text.length,
      `not UTF-8: byte 0x${byte} is no part of a letter; save the file as UTF-8`,
    );
  }
}

/** Longest prefix that decodes, by halving: cheap also for a large file. */
function firstBadByte(bytes: Uint8Array): number {
  let good = 0;
  let bad = bytes.length;
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    const text = new TextDecoder('utf-8', { fatal: true });
    try {
      text.decode(bytes.subarray(0, middle), { stream: true });
      good = middle;
    } catch {
      bad = middle;
    }
  }
  return good;
}
