import { createMdxMdastHandle, dropHandle, MdastReader, materializeMdastTree, serializeHandle } from 'satteri';

/** A node of the Markdown tree, with what is asked of one. */
export interface MdastNode {
  type: string;
  /** Where it begins; 0 where nobody asks (`SHELLS`). */
  offset: number;
  name?: string;
  /** How many properties a tag has. */
  attributeCount?: number;
  value?: string;
  depth?: number;
  url?: string;
  alt?: string;
  children: readonly MdastNode[];
}

/** Nodes of which only type and children matter. */
const SHELLS = new Set(
  'root paragraph emphasis strong delete list listItem blockquote table tableRow tableCell thematicBreak break yaml code'.split(
    ' ',
  ),
);
const TEXTS = new Set(['text', 'inlineCode']);
const TAGS = new Set(['mdxJsxFlowElement', 'mdxJsxTextElement']);

/**
 * The tree of an MDX text. Documents made of prose and components alone, as guides are, are read straight from the
 * parser's table of nodes; that takes a third of the time of the parser's own tree, which any other document gets.
 *
 * @throws Error of the parser, whose message begins with its place
 */
export function treeOf(text: string): MdastNode {
  const handle = createMdxMdastHandle(text);
  try {
    const reader = new MdastReader(serializeHandle(handle));
    return holdsOnlyKnown(reader)
      ? nodeAt(reader, 0)
      : fromParser(materializeMdastTree(reader) as unknown as ParserNode);
  } finally {
    dropHandle(handle);
  }
}

interface NodeType {
  name: string;
  reads: 'nothing' | 'text' | 'tag' | 'url' | 'more';
}
/** The parser's numbered node types, as they turn up. */
const types: (NodeType | undefined)[] = [];
function typeOf(reader: MdastReader, id: number): NodeType {
  const type = reader.getNodeType(id);
  return (types[type] ??= typeNamed(reader.getNode(id).typeName.replace(/^[A-Z]/, (first) => first.toLowerCase())));
}

const typeNamed = (name: string): NodeType => ({
  name,
  reads: SHELLS.has(name)
    ? 'nothing'
    : TEXTS.has(name)
      ? 'text'
      : TAGS.has(name)
        ? 'tag'
        : name === 'link'
          ? 'url'
          : 'more',
});

/** True for a document that is read straight from the table. */
export function holdsOnlyKnown(reader: MdastReader): boolean {
  for (let id = 0; id < reader.nodeCount; id++) if (typeOf(reader, id).reads === 'more') return false;
  return true;
}

const NONE: readonly MdastNode[] = [];
/** Where the parser's record of a tag holds the number of its properties. */
const ATTRIBUTE_COUNT_AT = 8;

function nodeAt(reader: MdastReader, id: number): MdastNode {
  const { name: type, reads } = typeOf(reader, id);
  const ids = reader.getChildIds(id);
  const children = ids.length === 0 ? NONE : ids.map((child) => nodeAt(reader, child));
  if (reads === 'nothing') return { type, offset: 0, children };
  const offset = reader.getPosition(id)?.start.offset ?? 0;
  if (reads === 'text') return { type, offset, value: reader.getTextValue(id), children };
  if (reads === 'url') return { type, offset, url: reader.fieldString(id, 0), children };
  const data = reader.getTypeData(id);
  return {
    type,
    offset,
    name: reader.getMdxJsxElementName(id) ?? '',
    attributeCount: data[ATTRIBUTE_COUNT_AT]! | (data[ATTRIBUTE_COUNT_AT + 1]! << 8),
    children,
  };
}

/** The parser's own tree, as far as it is read. */
export interface ParserNode {
  type: string;
  name?: string | null;
  attributes?: unknown[];
  value?: string;
  depth?: number;
  url?: string;
  alt?: string | null;
  position?: { start: { offset?: number } };
  children?: ParserNode[];
}

/** A node of the parser's own tree, without what nobody reads. */
export const fromParser = ({
  type,
  name,
  attributes,
  value,
  depth,
  url,
  alt,
  position,
  children,
}: ParserNode): MdastNode => ({
  type,
  offset: SHELLS.has(type) ? 0 : (position?.start.offset ?? 0),
  ...(TAGS.has(type) && { name: name ?? '', attributeCount: attributes?.length ?? 0 }),
  ...(value !== undefined && !SHELLS.has(type) && { value }),
  ...(depth !== undefined && { depth }),
  ...(url !== undefined && { url }),
  ...(alt !== undefined && { alt: alt ?? '' }),
  children: children?.map(fromParser) ?? NONE,
});
