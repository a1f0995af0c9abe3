/**
 * Reads the YAML that content is nearly always made of: groups and lists by indentation, `[a, b]`, `{ a: b }`, texts, and
 * numbers. Thousands of files are read with it in the time that the full parser takes for hundreds. Whatever it is not
 * sure of it leaves to the full parser by answering undefined; what it does answer is what the full parser would say, and
 * a test holds it so.
 */
export function readPlainYaml(text: string): Record<string, unknown> | undefined {
  if (/[\t\r\uFEFF]/.test(text)) return undefined;
  try {
    return new Lines(text).all();
  } catch (stop) {
    if (stop === UNSURE) return undefined;
    throw stop;
  }
}

const UNSURE = Symbol('left to the full parser');
function unsure(): never {
  throw UNSURE;
}

const FIELD = /^([A-Za-z][\w-]*):(?: (.*))?$/;
const NOT_TEXT = /^(?:null|true|false)$/i;

class Lines {
  readonly #lines: string[];
  #next = 0;
  /** Of the line that says the next thing. */
  #indent = -1;
  #body = '';

  constructor(text: string) {
    this.#lines = text.split('\n');
  }

  all(): Record<string, unknown> {
    const map = this.#map(0);
    // Nothing at all is null, and what stands further left than the beginning is for the full parser to say.
    if (this.#peek() || Object.keys(map).length === 0) unsure();
    return map;
  }

  /** Goes to the next line that says something; false at the end. */
  #peek(): boolean {
    for (; this.#next < this.#lines.length; this.#next++) {
      const line = this.#lines[this.#next]!;
      const indent = indentOf(line);
      if (indent === line.length || line[indent] === '#') continue;
      this.#indent = indent;
      this.#body = line.slice(indent);
      return true;
    }
    return false;
  }

  #map(indent: number): Record<string, unknown> {
    const map: Record<string, unknown> = {};
    while (this.#peek() && this.#indent >= indent) {
      const field = this.#indent === indent ? FIELD.exec(this.#body) : null;
      const name = field?.[1];
      if (name === undefined || Object.hasOwn(map, name) || NOT_TEXT.test(name)) unsure();
      this.#next++;
      map[name] = this.#value(trimmed(field?.[2] ?? ''), indent);
    }
    return map;
  }

  #list(indent: number): unknown[] {
    const list: unknown[] = [];
    while (this.#peek() && this.#indent >= indent) {
      if (this.#indent > indent) unsure();
      // A list may stand as far left as its name; then the next name ends it.
      if (!this.#body.startsWith('- ')) break;
      const item = trimmed(this.#body.slice(2));
      if (FIELD.test(item)) {
        this.#lines[this.#next] = `${' '.repeat(indent + 2)}${item}`;
        list.push(this.#map(indent + 2));
      } else {
        this.#next++;
        list.push(item === '' ? unsure() : this.#value(item, indent));
      }
    }
    return list;
  }

  /** What is written behind a name or dash, or below it. */
  #value(written: string, indent: number): unknown {
    if (written === '') {
      // A name with nothing behind it is null.
      if (!this.#peek() || this.#indent < indent) unsure();
      if (this.#body.startsWith('- ')) return this.#list(this.#indent);
      return this.#indent > indent ? this.#map(this.#indent) : unsure();
    }
    if (written === '>-') return this.#folded(indent);
    if (written[0] === '[' || written[0] === '{') return new Flow(written).all();
    if (!this.#continues(indent)) return scalar(written);
    const lines = [written];
    while (this.#continues(indent)) lines.push(trimmed(this.#lines[this.#next++]!).replace(/^ +/, ''));
    const whole = lines.join(' ');
    const quoted = QUOTED.exec(whole);
    if (quoted) return quoted[1] ?? quoted[2]!;
    return BEGINS_TEXT.test(written) && !lines.some((line) => ENDS_TEXT.test(line)) ? whole : unsure();
  }

  /** The very next line stands further right. */
  #continues(indent: number): boolean {
    const line = this.#lines[this.#next];
    const at = line === undefined ? 0 : indentOf(line);
    return line !== undefined && at > indent && at < line.length && line[at] !== '#';
  }

  #folded(indent: number): string {
    const first = this.#lines[this.#next] ?? '';
    const left = indentOf(first);
    const lines: string[] = [];
    for (; this.#next < this.#lines.length; this.#next++) {
      const line = this.#lines[this.#next]!;
      const at = indentOf(line);
      if (at === line.length || at <= indent) break;
      if (at !== left || line.endsWith(' ')) unsure();
      lines.push(line.slice(at));
    }
    // An empty line inside is a break of the text; only behind it is it nothing.
    for (let at = this.#next; ; at++) {
      const line = this.#lines[at];
      if (line !== undefined && indentOf(line) > indent) unsure();
      if (line !== '') break;
    }
    return lines.length === 0 ? unsure() : lines.join(' ');
  }
}

const FLOW_QUOTED = /'([^']*)'|"([^"\\]*)"/y;
const FLOW_PLAIN = /[^\s#:,[\]{}'"][^#:,[\]{}]*/y;
const FLOW_NAME = /(?:([A-Za-z][\w-]*)|'([^']*)'|"([^"\\]*)"): /y;

/** A list or group in brackets, on one line. */
class Flow {
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  all(): unknown {
    const value = this.#value();
    return this.#at === this.#text.length ? value : unsure();
  }

  #value(): unknown {
    if (this.#take('[')) return this.#list();
    if (this.#take('{')) return this.#map();
    const quoted = this.#match(FLOW_QUOTED);
    if (quoted) return quoted[1] ?? quoted[2]!;
    return scalar(trimmed(this.#match(FLOW_PLAIN)?.[0] ?? unsure()));
  }

  #list(): unknown[] {
    const list: unknown[] = [];
    if (this.#take(']')) return list;
    do list.push(this.#value());
    while (this.#take(','));
    return this.#take(']') ? list : unsure();
  }

  #map(): Record<string, unknown> {
    const map: Record<string, unknown> = {};
    if (this.#take('}')) return map;
    do {
      this.#space();
      const found = this.#match(FLOW_NAME);
      const name = found?.[1] ?? found?.[2] ?? found?.[3];
      if (name === undefined || Object.hasOwn(map, name) || name === '__proto__' || NOT_TEXT.test(name)) unsure();
      this.#space();
      map[name] = this.#value();
    } while (this.#take(','));
    return this.#take('}') ? map : unsure();
  }

  #space(): void {
    while (this.#text[this.#at] === ' ') this.#at++;
  }

  #take(sign: string): boolean {
    this.#space();
    if (this.#text[this.#at] !== sign) return false;
    this.#at++;
    this.#space();
    return true;
  }

  #match(what: RegExp): RegExpExecArray | null {
    what.lastIndex = this.#at;
    const found = what.exec(this.#text);
    if (found) this.#at = what.lastIndex;
    return found;
  }
}

const QUOTED = /^(?:'([^']*)'|"([^"\\]*)")$/;
const BEGINS_TEXT = /^[A-Za-z0-9(/]/;
const ENDS_TEXT = /: | #|:$/;
const DATE = /^\d{4}-\d{2}-\d{2}$/;
const NUMBER = /^-?(?:0|[1-9]\d{0,11})(?:\.\d{1,9})?$/;
const MAYBE_A_NUMBER = /^\d[\w.+-]*$/;

function scalar(written: string): string | number | boolean | null {
  const quoted = QUOTED.exec(written);
  if (quoted) return quoted[1] ?? quoted[2]!;
  if (NUMBER.test(written)) return Number(written);
  if (!BEGINS_TEXT.test(written) || ENDS_TEXT.test(written)) unsure();
  if (written === 'true' || written === 'false') return written === 'true';
  if (written === 'null') return null;
  if (DATE.test(written)) return written;
  return MAYBE_A_NUMBER.test(written) || NOT_TEXT.test(written) ? unsure() : written;
}

/** Spaces before the first other sign; the whole length where there is none. */
function indentOf(line: string): number {
  let at = 0;
  while (line.charCodeAt(at) === 32) at++;
  return at;
}

/** Without the spaces at its end: YAML's own, no other white space. */
function trimmed(text: string): string {
  let end = text.length;
  while (text.charCodeAt(end - 1) === 32) end--;
  return end === text.length ? text : text.slice(0, end);
}
