import { createMdxMdastHandle, dropHandle, MdastReader, materializeMdastTree, serializeHandle } from 'satteri';

/** A node of the Markdown tree, with what the rules ask of one. */
export interface MdastNode {
  type: string;
  name?: string | null;
  value?: string;
  depth?: number;
  url?: string;
  alt?: string | null;
  attributes?: unknown[];
  position?: { start: { offset?: number | undefined } };
  children?: MdastNode[];
}

/** Nodes of which only type, place and children matter. */
const SHELLS = new Set(
  'root paragraph emphasis strong delete list listItem blockquote table tableRow tableCell thematicBreak break yaml code'.split(
    ' ',
  ),
);
const TEXTS = new Set(['text', 'inlineCode']);
const TAGS = new Set(['mdxJsxFlowElement', 'mdxJsxTextElement']);

/**
 * The tree of an MDX text. Documents made of prose and components alone, as guides are, are read straight from the
 * parser's table of nodes; that halves the time of the parser's own tree, which any other document gets.
 *
 * @throws Error of the parser, whose message begins with its place
 */
export function treeOf(text: string): MdastNode {
  const handle = createMdxMdastHandle(text);
  try {
    const reader = new MdastReader(serializeHandle(handle));
    return holdsOnlyKnown(reader) ? nodeAt(reader, 0) : (materializeMdastTree(reader) as unknown as MdastNode);
  } finally {
    dropHandle(handle);
  }
}

/** Names of the parser's numbered node types, as they turn up. */
const names: (string | undefined)[] = [];
function nameOf(reader: MdastReader, id: number): string {
  const type = reader.getNodeType(id);
  return (names[type] ??= reader.getNode(id).typeName.replace(/^[A-Z]/, (first) => first.toLowerCase()));
}

function holdsOnlyKnown(reader: MdastReader): boolean {
  for (let id = 0; id < reader.nodeCount; id++) {
    const name = nameOf(reader, id);
    if (!SHELLS.has(name) && !TEXTS.has(name) && !TAGS.has(name) && name !== 'link') return false;
  }
  return true;
}

function nodeAt(reader: MdastReader, id: number): MdastNode {
  const type = nameOf(reader, id);
  const node: MdastNode = { type };
  const position = reader.getPosition(id);
  if (position) node.position = position;
  if (TEXTS.has(type)) node.value = reader.getTextValue(id);
  else if (type === 'link') node.url = reader.fieldString(id, 0);
  else if (TAGS.has(type)) {
    const { name, attributes } = reader.getMdxJsxElementData(id);
    node.name = name;
    node.attributes = attributes;
  }
  const children = reader.getChildIds(id);
  if (children.length > 0) node.children = Array.from(children, (child) => nodeAt(reader, child));
  return node;
}
