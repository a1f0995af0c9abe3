import {
  type AstroComponentFactory,
  createComponent,
  markHTMLString,
  render,
  renderToString,
} from 'astro/runtime/server/index.js';
import type { Circuit } from '../calc/index.ts';
import type { PageContext } from './context.ts';

const markup = new WeakMap<Circuit, Map<string, string>>();

/**
 * The same component, drawn once for a circuit and its properties: guides that share a circuit share its instruments.
 * Only for a component without content of its own whose markup hangs on nothing else that differs from page to page; one
 * that counts on the page (`firstOnPage`) is none.
 */
export function kept(name: string, component: AstroComponentFactory): AstroComponentFactory {
  return createComponent(async (result, props, slots) => {
    const { circuit } = (result.createAstro(props, slots).locals as { page?: PageContext }).page ?? {};
    let own = circuit ? markup.get(circuit) : undefined;
    if (circuit && !own) {
      own = new Map();
      markup.set(circuit, own);
    }
    const key = `${name} ${JSON.stringify(props)}`;
    let text = own?.get(key);
    if (text === undefined) {
      const drawn = await renderToString(result, component, props, slots);
      if (drawn instanceof Response) return drawn;
      text = drawn;
      own?.set(key, text);
    }
    return render`${markHTMLString(text)}`;
  });
}
