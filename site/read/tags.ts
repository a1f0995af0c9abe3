import { type Expression, parseExpressionAt } from 'acorn';

/** One property of an opening tag. `value` is undefined where it is not a plain value; then a fault says so. */
export interface Attribute {
  name: string;
  offset: number;
  valueOffset: number;
  value: unknown;
}
export interface TagFault {
  offset: number;
  message: string;
}
export interface OpeningTag {
  attributes: Attribute[];
  faults: TagFault[];
  /** Offset just behind the last attribute. */
  end: number;
}

const SPACE = /\s/;
const PLAIN = /([^\s=/>{]+)="([^"]*)"/y;
const NAME = /[^\s=/>{]+/y;

/**
 * Reads an opening tag again from the source, because the Markdown tree gives attributes no place. The tree does say
 * how many there are, so that a `>` alone on its line is never taken for a quote mark; acorn says where `{…}` ends.
 */
export function readTag(text: string, start: number, name: string, count: number): OpeningTag {
  const attributes: Attribute[] = [];
  const faults: TagFault[] = [];
  let i = start + 1 + name.length;
  const skipSpace = () => {
    while (SPACE.test(text[i] ?? '') || (text[i] === '>' && beginsLine(text, i))) i++;
  };
  for (let left = count; left > 0; left--) {
    skipSpace();
    const c = text[i];
    if (c === undefined || c === '>' || c === '/') break;
    if (c === '{') {
      faults.push({ offset: i, message: `<${name}>: properties cannot be spread; write each one out` });
      const inner = text.indexOf('...', i) + 3;
      const end = expressionEnd(text, inner);
      if (end === undefined) break;
      i = text.indexOf('}', end) + 1;
      continue;
    }
    const at = i;
    // Nearly every property is `name="text"`; one look takes it whole.
    PLAIN.lastIndex = i;
    const plain = PLAIN.exec(text);
    if (plain) {
      i = PLAIN.lastIndex;
      const value = plain[2]!;
      attributes.push({ name: plain[1]!, offset: at, valueOffset: i - 1 - value.length, value: decode(value) });
      continue;
    }
    NAME.lastIndex = i;
    const key = NAME.exec(text)?.[0];
    if (key === undefined) break;
    i += key.length;
    const afterKey = i;
    while (SPACE.test(text[i] ?? '')) i++;
    if (text[i] !== '=') {
      i = afterKey;
      attributes.push({ name: key, offset: at, valueOffset: at, value: true });
      continue;
    }
    i++;
    while (SPACE.test(text[i] ?? '')) i++;
    const quote = text[i];
    if (quote === '"' || quote === "'") {
      const end = text.indexOf(quote, i + 1);
      attributes.push({ name: key, offset: at, valueOffset: i + 1, value: decode(text.slice(i + 1, end)) });
      i = end + 1;
      continue;
    }
    let expression: Expression;
    try {
      expression = parseExpressionAt(text, i + 1, { ecmaVersion: 'latest' });
    } catch {
      faults.push({ offset: i, message: `<${name}>: what stands in ${key}={…} is not a value` });
      break;
    }
    const value = literal(expression);
    if (value.ok) {
      attributes.push({ name: key, offset: at, valueOffset: expression.start, value: value.value });
    } else {
      faults.push({
        offset: value.at,
        message: `<${name}>: "${key}" must be a plain value; a guide holds no JavaScript`,
      });
      attributes.push({ name: key, offset: at, valueOffset: expression.start, value: undefined });
    }
    i = text.indexOf('}', expression.end) + 1;
  }
  return { attributes, faults, end: i };
}

function beginsLine(text: string, offset: number): boolean {
  let i = offset - 1;
  while (text[i] === ' ' || text[i] === '\t') i--;
  return text[i] === '\n';
}

function expressionEnd(text: string, offset: number): number | undefined {
  try {
    return parseExpressionAt(text, offset, { ecmaVersion: 'latest' }).end;
  } catch {
    return undefined;
  }
}

const ENTITIES: Record<string, string> = { '&quot;': '"', '&amp;': '&', '&lt;': '<', '&gt;': '>', '&apos;': "'" };
const decode = (text: string): string =>
  text.includes('&') ? text.replace(/&(quot|amp|lt|gt|apos);/g, (entity) => ENTITIES[entity] ?? entity) : text;

type Literal = { ok: true; value: unknown } | { ok: false; at: number };

/** The value of numbers, texts, true, false, null, lists and groups of them; anything else is JavaScript. */
function literal(node: Expression): Literal {
  const no: Literal = { ok: false, at: node.start };
  switch (node.type) {
    case 'Literal':
      return node.regex || node.bigint ? no : { ok: true, value: node.value };
    case 'UnaryExpression':
      return node.operator === '-' && node.argument.type === 'Literal' && typeof node.argument.value === 'number'
        ? { ok: true, value: -node.argument.value }
        : no;
    case 'TemplateLiteral':
      return node.expressions.length === 0 ? { ok: true, value: node.quasis[0]?.value.cooked ?? '' } : no;
    case 'ArrayExpression': {
      const values: unknown[] = [];
      for (const element of node.elements) {
        if (!element || element.type === 'SpreadElement') return { ok: false, at: element?.start ?? node.start };
        const value = literal(element);
        if (!value.ok) return value;
        values.push(value.value);
      }
      return { ok: true, value: values };
    }
    case 'ObjectExpression': {
      const entries: [string, unknown][] = [];
      for (const property of node.properties) {
        if (property.type !== 'Property' || property.computed || property.kind !== 'init' || property.method)
          return { ok: false, at: property.start };
        if (property.shorthand) return { ok: false, at: property.start };
        const { key } = property;
        const name = key.type === 'Identifier' ? key.name : key.type === 'Literal' ? String(key.value) : undefined;
        if (name === undefined) return { ok: false, at: property.start };
        const value = literal(property.value);
        if (!value.ok) return value;
        entries.push([name, value.value]);
      }
      return { ok: true, value: Object.fromEntries(entries) };
    }
    default:
      return no;
  }
}
