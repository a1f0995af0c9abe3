import { parseMdx } from './parse.ts';
import type { Problem, Source } from './source.ts';
import { type Attribute, readTag, type TagFault } from './tags.ts';
import type { MdastNode } from './tree.ts';

/** A component where an author placed it. */
export interface Tag {
  name: string;
  offset: number;
  /** What the author wrote, by property. A property whose value is not plain is missing here. */
  props: Record<string, unknown>;
  attributes: Attribute[];
  faults: TagFault[];
  parent: Tag | undefined;
  /** Something stands between its tags. */
  filled: boolean;
  /** Of a step or check: the prose inside it, without markup and without its inner components' values. */
  text: string;
  /** The tag runs over several lines inside a quotation. */
  brokenInQuote: boolean;
}
export interface Link {
  url: string;
  offset: number;
}
export interface Image extends Link {
  alt: string;
}
export interface Heading {
  depth: number;
  text: string;
  offset: number;
  parent: Tag | undefined;
}
/** A run of prose with its offset; words are looked for in it. */
export interface Prose {
  text: string;
  offset: number;
}
export interface Code {
  offset: number;
  kind: 'module' | 'expression';
}

/** An MDX file taken apart once: front matter, and everything that a rule or a page asks about its body. */
export interface DocumentParts {
  frontMatter: { text: string; start: number } | undefined;
  tags: Tag[];
  links: Link[];
  images: Image[];
  headings: Heading[];
  prose: Prose[];
  code: Code[];
  /** What is not MDX in it. The rest is read all the same. */
  syntax: Problem[];
}

const FRONT_MATTER = /^---[ \t]*\r?\n([\s\S]*?)(?:^|\n)---[ \t]*(?:\r?\n|$)/;
const COMMENT = /^\s*\/\*[\s\S]*\*\/\s*$/;

/** The fields between the two lines `---` that a document begins with. */
export function frontMatterIn(text: string): DocumentParts['frontMatter'] {
  const found = FRONT_MATTER.exec(text);
  return found ? { text: found[1]!, start: text.indexOf('\n') + 1 } : undefined;
}

export function readDocument(source: Source): DocumentParts {
  const { tree, text, problems } = parseMdx(source);
  const parts: DocumentParts = {
    frontMatter: frontMatterIn(source.text),
    tags: [],
    links: [],
    images: [],
    headings: [],
    prose: [],
    code: [],
    syntax: problems,
  };
  const walk = (
    node: MdastNode,
    parent: Tag | undefined,
    saying: Tag | undefined,
    heading: Heading | undefined,
    quoted: boolean,
  ): void => {
    const { offset } = node;
    let holder = parent;
    let said = saying;
    let title = heading;
    switch (node.type) {
      case 'mdxjsEsm':
        parts.code.push({ offset, kind: 'module' });
        return;
      case 'mdxFlowExpression':
      case 'mdxTextExpression':
        if (!COMMENT.test(node.value ?? '')) parts.code.push({ offset, kind: 'expression' });
        return;
      case 'mdxJsxFlowElement':
      case 'mdxJsxTextElement': {
        const name = node.name ?? '';
        const { attributes, faults, end } = readTag(text, offset, name, node.attributeCount ?? 0);
        holder = {
          name,
          offset,
          props: propsOf(attributes),
          attributes,
          faults,
          parent,
          filled: node.children.length > 0,
          text: '',
          brokenInQuote: quoted && /\n/.test(text.slice(offset, end) + (/^\s*/.exec(text.slice(end))?.[0] ?? '')),
        };
        parts.tags.push(holder);
        if (SAYING.has(name)) said = holder;
        break;
      }
      case 'link':
      case 'definition':
        parts.links.push({ url: node.url ?? '', offset });
        break;
      case 'image':
        parts.images.push({ url: node.url ?? '', alt: node.alt ?? '', offset });
        break;
      case 'heading':
        title = { depth: node.depth ?? 1, text: '', offset, parent };
        parts.headings.push(title);
        break;
      case 'text':
      case 'inlineCode': {
        const words = node.value ?? '';
        if (node.type === 'text') parts.prose.push({ text: words, offset });
        if (said) said.text += words;
        if (title) title.text += words;
        break;
      }
    }
    for (const child of node.children) walk(child, holder, said, title, quoted || node.type === 'blockquote');
    // Two paragraphs of one tag must not run together in its text.
    if (said && said.text !== '' && BLOCKS.has(node.type)) said.text += ' ';
  };
  walk(tree, undefined, undefined, undefined, false);
  for (const tag of parts.tags) if (tag.text !== '') tag.text = tag.text.replace(/\s+/g, ' ').trim();
  return parts;
}

/** Components whose words are asked for apart from their page: on a job card, in a list. */
const SAYING = new Set(['Step', 'Check']);
const BLOCKS = new Set(['paragraph', 'heading', 'listItem', 'tableCell', 'mdxJsxFlowElement']);

function propsOf(attributes: readonly Attribute[]): Record<string, unknown> {
  const props: Record<string, unknown> = {};
  for (const { name, value } of attributes) if (value !== undefined) props[name] = value;
  return props;
}
