import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createMdxMdastHandle, MdastReader, mdxToMdast, serializeHandle } from 'satteri';
import { describe, expect, it } from 'vitest';
import { fromParser, holdsOnlyKnown, type ParserNode, treeOf } from '../../site/read/tree.ts';
import { ROOT } from './spawn.ts';

const parsed = (text: string) => fromParser(mdxToMdast(text) as unknown as ParserNode);

describe('the tree of a document', () => {
  it('of a guide comes the quick way', () => {
    const guides = readdirSync(join(ROOT, 'content/guides'));
    const quick = guides.filter((name) => {
      const handle = createMdxMdastHandle(readFileSync(join(ROOT, 'content/guides', name), 'utf8'));
      return holdsOnlyKnown(new MdastReader(serializeHandle(handle)));
    });
    expect(quick).toEqual(guides);
  });

  const documents = ['guides', 'lessons'].flatMap((kind) =>
    readdirSync(join(ROOT, 'content', kind)).map((name) => `${kind}/${name}`),
  );

  it.each(documents)("is the parser's own: %s", (name) => {
    const text = readFileSync(join(ROOT, 'content', name), 'utf8');
    expect(treeOf(text)).toEqual(parsed(text));
  });

  it.each([
    '# Heading [link](/x/ "t") ![alt](y.svg) `code`\n\n| a | b |\n|---|---|\n| 1 | **2** |\n',
    '> quote\n> - list\n> 1. <A b="c" d={1} {...e}/>\n\n~~gone~~ 20 °C, 1.5 mm² é 😀 text\n',
    '```js\ncode\n```\n\n[ref][r] {1 + 1} {/* c */}\n\n[r]: /x/\n\n- [ ] task\n\n***\n\nline  \nbreak\n',
    'import a from "b"\n\n<A>\n\ntext\n\n</A>\n\n&amp; &lt; \\{ <B/>\n',
    '',
  ])("is the parser's own: %j", (text) => {
    expect(treeOf(text)).toEqual(parsed(text));
  });
});
