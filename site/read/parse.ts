import type { Problem, Source } from './source.ts';
import { type MdastNode, treeOf } from './tree.ts';

export interface Parsed {
  tree: MdastNode;
  /** The text that was parsed: the source with its broken tags blanked out, so offsets are the source's. */
  text: string;
  problems: Problem[];
}

const MOST_ROUNDS = 25;

/**
 * Parses MDX and goes on behind a syntax error. The parser stops at the first, so the broken tag is blanked out and the
 * rest is parsed again; an author then sees every mistake of a file at once.
 */
export function parseMdx(source: Source): Parsed {
  let text = source.text;
  const problems: Problem[] = [];
  const dropped = new Map<string, number>();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    try {
      return { tree: treeOf(text), text, problems };
    } catch (error) {
      const fault = understand(text, error);
      // The end of a tag whose beginning was broken is the same mistake, not another one.
      const orphan = fault.closes !== undefined && (dropped.get(fault.closes) ?? 0) > 0;
      if (orphan) dropped.set(fault.closes!, dropped.get(fault.closes!)! - 1);
      else problems.push(source.problem(fault.offset, fault.message));
      if (fault.opens !== undefined) dropped.set(fault.opens, (dropped.get(fault.opens) ?? 0) + 1);
      const blanked = blank(text, fault.offset, fault.end);
      if (blanked === text) break;
      text = blanked;
    }
  }
  return { tree: { type: 'root', offset: 0, children: [] }, text, problems };
}

interface Fault {
  offset: number;
  /** Up to here the text is blanked out. */
  end: number;
  message: string;
  /** Name of the tag that begins, or ends, in the blanked text. */
  opens?: string;
  closes?: string;
}

function understand(text: string, error: unknown): Fault {
  const said = error instanceof Error ? error.message : String(error);
  const found = /^(\d+):(\d+): ([\s\S]*?)(?: \((?:mdx-jsx|mdx)[^)]*\))?$/.exec(said);
  const at = found ? offsetOf(text, Number(found[1]), Number(found[2])) : 0;
  const message = (found?.[3] ?? said).replace(/\s+/g, ' ');

  const unclosed = /closing tag for `<([\w.]+)>` \((\d+):(\d+)\)/.exec(message);
  if (unclosed) {
    const name = unclosed[1]!;
    const offset = offsetOf(text, Number(unclosed[2]), Number(unclosed[3]));
    const before = /^Unexpected closing tag `(<\/[\w.]+>)`/.exec(message)?.[1];
    const within = /before the end of `(\w+)`/.exec(message)?.[1];
    const tail = before ? ` before ${before}` : within ? ` in the same ${BLOCK_NAMES[within] ?? within}` : '';
    return {
      offset,
      end: tagEnd(text, offset),
      message: `<${name}> has no closing tag </${name}>${tail}`,
      opens: name,
    };
  }
  const unopened = /^Unexpected closing tag `<\/([\w.]+)>`/.exec(message);
  if (unopened) {
    const name = unopened[1]!;
    return {
      offset: at,
      end: tagEnd(text, at),
      message: `</${name}> closes a tag that was never opened`,
      closes: name,
    };
  }
  if (text[at] === '<') {
    if (text.startsWith('<!--', at)) {
      const end = text.indexOf('-->', at);
      return {
        offset: at,
        end: end < 0 ? at + 4 : end + 3,
        message: 'a comment is written {/* … */} here, not <!-- … -->',
      };
    }
    const name = /^<([A-Za-z][\w.]*)/.exec(text.slice(at, at + 80))?.[1];
    return name === undefined
      ? { offset: at, end: at + 1, message: '"<" begins a tag: write &lt; or "less than"' }
      : {
          offset: at,
          end: tagEnd(text, at),
          message: `<${name}> is not a whole tag: a quote, a value or its ">" is wrong`,
          ...(text[tagEnd(text, at) - 2] === '/' ? {} : { opens: name }),
        };
  }
  const brace = text.lastIndexOf('{', at);
  if (/expression/.test(message) && brace >= 0) {
    const close = text.indexOf('}', brace);
    return {
      offset: brace,
      end: close < 0 ? brace + 1 : close + 1,
      message: '"{" begins JavaScript, which a guide does not hold; write \\{ for the sign itself',
    };
  }
  const line = text.indexOf('\n', at);
  return { offset: at, end: line < 0 ? text.length : line, message: `MDX: ${message}` };
}

const BLOCK_NAMES: Record<string, string> = { listItem: 'list item', tableCell: 'table cell', blockquote: 'quotation' };

/** End of the tag that begins at an offset; of a tag without `>`, the end of its line. */
function tagEnd(text: string, offset: number): number {
  const close = text.indexOf('>', offset);
  const gap = /\n[ \t]*\r?\n/.exec(text.slice(offset));
  const paragraph = gap ? offset + gap.index : text.length;
  if (close >= 0 && close < paragraph) return close + 1;
  const line = text.indexOf('\n', offset);
  return line < 0 ? text.length : line;
}

const blank = (text: string, start: number, end: number): string =>
  text.slice(0, start) + text.slice(start, end).replace(/[^\n]/g, ' ') + text.slice(end);

function offsetOf(text: string, line: number, col: number): number {
  let start = 0;
  for (let n = 1; n < line; n++) start = text.indexOf('\n', start) + 1;
  return Math.min(start + col - 1, text.length);
}
