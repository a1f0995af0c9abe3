import type { Field, View } from '../contract.ts';

/** Puts one view into markup that is already there. */
export type Update = (view: View) => void;
/** Told of every text that changed, with the text before. */
export type Changed = (element: Element, before: string) => void;

/** A field as text; nothing where it is not there or is a list. */
const textOf = (value: Field | undefined): string =>
  value === undefined || typeof value === 'object' ? '' : String(value);

/** A class, and the same word in `data-is`, in place of the word before. Other words on the element stay. */
function setState(element: Element, before: string, now: string): void {
  if (before !== '') element.classList.remove(before);
  if (now !== '') element.classList.add(now);
  const words = (element.getAttribute('data-is') ?? '').split(' ').filter((word) => word !== '' && word !== before);
  if (now !== '') words.unshift(now);
  element.setAttribute('data-is', words.join(' '));
}

/**
 * Every binding remembers what it last put: the page is not asked again, so that a change costs what it changes and not
 * what stands on the page.
 */
function bindElement(element: Element, changed: Changed, updates: Update[]): void {
  const out = element.getAttribute('data-out');
  if (out !== null) {
    let before = element.textContent ?? '';
    updates.push((view) => {
      const value = view[out];
      if (value === before) return;
      const now = textOf(value);
      if (now === before) return;
      // one text node is written over; anything else (none, or several) is replaced by one
      const only = element.firstChild;
      if (only instanceof Text && only.nextSibling === null) only.data = now;
      else element.textContent = now;
      changed(element, before);
      before = now;
    });
  }
  const state = element.getAttribute('data-state');
  if (state !== null) {
    let before = (element.getAttribute('data-is') ?? '').split(' ')[0] ?? '';
    updates.push((view) => {
      const now = textOf(view[state]);
      if (now === before) return;
      setState(element, before, now);
      before = now;
    });
  }
  const show = element.getAttribute('data-show');
  if (show !== null) {
    let before = element.hasAttribute('hidden');
    updates.push((view) => {
      const hidden = view[show] === undefined || view[show] === false || view[show] === '';
      if (hidden === before) return;
      element.toggleAttribute('hidden', hidden);
      before = hidden;
    });
  }
  const attributes = element.getAttribute('data-attr');
  for (const pair of attributes === null ? [] : attributes.split(' ')) {
    const [attribute, field] = pair.split(':') as [string, string];
    let before = element.getAttribute(attribute) ?? '';
    updates.push((view) => {
      const value = view[field];
      const now = value === false ? '' : textOf(value);
      if (now === before) return;
      if (now === '') element.removeAttribute(attribute);
      else element.setAttribute(attribute, now);
      before = now;
    });
  }
}

/** Rows follow the list: kept in place where both have one, added from the template, taken off the end. */
function bindRows(container: Element, field: string, changed: Changed): Update {
  const template = container.firstElementChild!;
  const row = (template instanceof HTMLTemplateElement ? template.content : template).firstElementChild!;
  const rows = [...container.children].slice(1).map((element) => ({ element, update: bind(element, changed) }));
  return (view) => {
    const items = view[field];
    const list = Array.isArray(items) ? (items as readonly View[]) : [];
    while (rows.length > list.length) rows.pop()!.element.remove();
    list.forEach((item, index) => {
      let at = rows[index];
      if (at === undefined) {
        const element = row.cloneNode(true) as Element;
        container.append(element);
        // a row that is new has no value before: filling it is not a change
        rows.push((at = { element, update: bind(element, () => {}) }));
        at.update(item);
        at.update = bind(element, changed);
      }
      at.update(item);
    });
  };
}

/**
 * Collects, once, everything under `root` that shows a field; the result puts a view there. Components inside have their
 * own root and are left alone, as is what `data-unbound` holds: the content that others put into a component.
 */
export function bind(root: Element, changed: Changed): Update {
  const updates: Update[] = [];
  const visit = (element: Element): void => {
    if (element !== root && element.matches('[data-component], [data-unbound]')) return;
    bindElement(element, changed, updates);
    const each = element.getAttribute('data-each');
    if (each !== null) updates.push(bindRows(element, each, changed));
    else for (const child of element.children) visit(child);
  };
  visit(root);
  return (view) => {
    for (const update of updates) update(view);
  };
}
