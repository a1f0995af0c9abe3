import { type INode, parseSync } from 'svgson';

/**
 * Reads symbol files (svg/*.svg): drawings on a 48 × 48 grid whose line runs from the middle of the top edge to the middle
 * of the bottom edge, after the ideas of IEC 60617. A symbol holds shapes and nothing else, so that it can stand in a page
 * under a strict security policy: what is not on the list is refused by name.
 */
const ELEMENTS = new Set(['svg', 'g', 'path', 'rect', 'circle', 'ellipse']);
const ATTRIBUTES = new Set(
  'xmlns viewBox class d x y width height rx ry cx cy r fill stroke stroke-width stroke-dasharray stroke-linejoin stroke-linecap transform'.split(
    ' ',
  ),
);

/** What stands inside the symbol's `<svg>`, ready to be put into one. Throws with the symbol's name when the file does not hold. */
export function readSymbol(name: string, file: string): string {
  const fault = (what: string): never => {
    throw new TypeError(`Symbol "${name}": ${what}`);
  };
  if (file.includes('&')) fault('"&" is not read here, write the character itself');
  let root: INode;
  try {
    root = parseSync(file.trim());
  } catch {
    return fault('not a well-formed SVG file');
  }
  if (root.name !== 'svg') fault(`expected <svg>, got <${root.name}>`);
  if (root.attributes['viewBox'] !== '0 0 48 48') fault('the viewBox must be "0 0 48 48"');
  const write = (node: INode): string => {
    if (node.type === 'text')
      return node.value.trim() === '' ? '' : fault(`text "${node.value.trim()}" has no place here`);
    if (!ELEMENTS.has(node.name)) fault(`<${node.name}> is not allowed`);
    const attributes = Object.entries(node.attributes).map(([key, value]) => {
      if (!ATTRIBUTES.has(key)) fault(`attribute ${key} is not allowed`);
      return ` ${key}="${value.replaceAll('"', '')}"`;
    });
    return `<${node.name}${attributes.join('')}>${node.children.map(write).join('')}</${node.name}>`;
  };
  const written = root.children.map(write).join('');
  return written === '' ? fault('draws nothing') : written.replace(/><\/(path|rect|circle|ellipse)>/g, '/>');
}
