/**
 * Reads the YAML that front matter nearly always is: `name: text`, `name: [a, b]`, and lists of one text a line. Thousands
 * of guides are read with it in the time that the full parser takes for hundreds. Whatever it is not sure of it leaves to
 * the full parser by answering undefined; what it does answer is what the full parser would say, and a test holds it so.
 */
export function readPlainYaml(text: string): Record<string, unknown> | undefined {
  if (/[\t\r\uFEFF]/.test(text)) return undefined;
  const fields: Record<string, unknown> = {};
  /** The list that lines `  - …` go to, while they may. */
  let list: unknown[] | undefined;
  for (const line of text.split('\n')) {
    if (line === '') continue;
    if (line.startsWith('  - ')) {
      const value = list && scalar(line.slice(4).trim());
      if (value === undefined) return undefined;
      list!.push(value);
      continue;
    }
    const field = FIELD.exec(line);
    // A name with nothing behind it is null: for the full parser to say.
    if (!field || list?.length === 0) return undefined;
    const name = field[1]!;
    const written = field[2]!.trim();
    if (Object.hasOwn(fields, name) || NOT_TEXT.test(name)) return undefined;
    if (written === '') list = [];
    else list = undefined;
    const value = list ?? (written.startsWith('[') ? flowList(written) : scalar(written));
    if (value === undefined) return undefined;
    fields[name] = value;
  }
  return list?.length === 0 ? undefined : fields;
}

const FIELD = /^([a-z][A-Za-z]*):((?: .*)?)$/;
const QUOTED = /^(?:'([^']*)'|"([^"\\]*)")$/;
const PLAIN = /^[A-Za-z0-9][^#:]*$/;
const DATE = /^\d{4}-\d{2}-\d{2}$/;
const WHOLE = /^(?:0|[1-9]\d{0,14})$/;
const MAYBE_A_NUMBER = /^\d[\w.+-]*$/;
const NOT_TEXT = /^(?:null|true|false)$/i;
const FLOW = /^\[([^[\]{}"'#:&*!|>%@`]*)\]$/;

function scalar(written: string): string | number | undefined {
  const quoted = QUOTED.exec(written);
  if (quoted) return quoted[1] ?? quoted[2]!;
  if (!PLAIN.test(written)) return undefined;
  if (WHOLE.test(written)) return Number(written);
  if (DATE.test(written)) return written;
  return MAYBE_A_NUMBER.test(written) || NOT_TEXT.test(written) ? undefined : written;
}

function flowList(written: string): unknown[] | undefined {
  const inside = FLOW.exec(written)?.[1];
  if (inside === undefined) return undefined;
  if (inside.trim() === '') return [];
  const values = inside.split(',').map((piece) => scalar(piece.trim()));
  return values.includes(undefined) ? undefined : values;
}
