import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { mdxToMdast } from 'satteri';
import { describe, expect, it } from 'vitest';
import { type MdastNode, treeOf } from '../../site/read/tree.ts';
import { ROOT } from './spawn.ts';

/** What the rules read of a tree, in one shape for both ways of making it. */
function asked({ type, name, value, depth, url, alt, attributes, position, children }: MdastNode): unknown {
  const isTag = type.startsWith('mdxJsx');
  return [
    type,
    position?.start.offset,
    type === 'yaml' || type === 'code' ? undefined : value,
    isTag ? [name, attributes?.length] : [depth, url, alt],
    (children ?? []).map(asked),
  ];
}

/** Only the parser's own tree carries its notes on the nodes. */
const isQuick = (node: MdastNode): boolean => !('data' in node) && (node.children ?? []).every(isQuick);

describe('the tree of a document', () => {
  it('of a guide comes the quick way', () => {
    const guides = readdirSync(join(ROOT, 'content/guides'));
    const quick = guides.filter((name) => isQuick(treeOf(readFileSync(join(ROOT, 'content/guides', name), 'utf8'))));
    expect(quick).toEqual(guides);
  });

  const documents = ['guides', 'lessons'].flatMap((kind) =>
    readdirSync(join(ROOT, 'content', kind)).map((name) => `${kind}/${name}`),
  );

  it.each(documents)("is the parser's own: %s", (name) => {
    const text = readFileSync(join(ROOT, 'content', name), 'utf8');
    expect(asked(treeOf(text))).toEqual(asked(mdxToMdast(text) as unknown as MdastNode));
  });

  it.each([
    '# Heading [link](/x/ "t") ![alt](y.svg) `code`\n\n| a | b |\n|---|---|\n| 1 | **2** |\n',
    '> quote\n> - list\n> 1. <A b="c" d={1} {...e}/>\n\n~~gone~~ 20 °C, 1.5 mm² é 😀 text\n',
    '```js\ncode\n```\n\n[ref][r] {1 + 1} {/* c */}\n\n[r]: /x/\n\n- [ ] task\n\n***\n\nline  \nbreak\n',
    'import a from "b"\n\n<A>\n\ntext\n\n</A>\n\n&amp; &lt; \\{ <B/>\n',
    '',
  ])("is the parser's own: %j", (text) => {
    expect(asked(treeOf(text))).toEqual(asked(mdxToMdast(text) as unknown as MdastNode));
  });
});
