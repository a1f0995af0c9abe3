import { lastOf, listOf, NONE, textOfList, withStep } from '../chosen.ts';
import type { Page } from './page.ts';

const PRESSED = '[data-choose], [data-toggle], [data-clear], [data-any]';

/** Controls that say what the reader is looking at: a state of the circuit, a part, a fault. */
export function wireChoices(page: Page): void {
  const set = (name: string, value: string): void => {
    const next = { ...page.chosen.peek() };
    if (value === '') delete next[name];
    else next[name] = value;
    page.chosen.value = next;
  };
  const pair = (text: string): [string, string] => {
    const at = text.indexOf(':');
    return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + 1)];
  };
  const press = (control: Element): boolean => {
    const choose = control.getAttribute('data-choose');
    const toggle = control.getAttribute('data-toggle');
    if (choose !== null && !(control instanceof HTMLSelectElement)) {
      const [name, value] = pair(choose);
      // an empty value is a choice of its own only where the control says so: `on:` is all inputs off
      const now = page.chosen.peek()[name];
      set(name, now === (value || NONE) ? '' : value || NONE);
      return true;
    }
    const clear = control.getAttribute('data-clear');
    if (clear !== null) {
      const next = { ...page.chosen.peek() };
      for (const name of clear.split(' ')) delete next[name];
      page.chosen.value = next;
      return true;
    }
    const any = control.getAttribute('data-any');
    if (any !== null) {
      const from = [...document.querySelectorAll<HTMLOptionElement>(`select[data-choose="fault"] option[data-seen]`)];
      const one = from[Math.floor(Math.random() * from.length)];
      if (one !== undefined) page.chosen.value = { on: page.chosen.peek()['on'] ?? NONE, [any]: one.value };
      return true;
    }
    if (toggle !== null) {
      const [name, value] = pair(toggle);
      const now = page.chosen.peek()[name] ?? control.closest('[data-now]')?.getAttribute('data-now') ?? '';
      const list = listOf(lastOf(now));
      const next = textOfList(list.includes(value) ? list.filter((each) => each !== value) : [...list, value]);
      // an input that moves leaves the relays where the steps before put them
      set(name, control.closest('[data-steps]') === null ? next : withStep(now, next));
      return true;
    }
    return false;
  };
  document.addEventListener('click', (event) => {
    const control = event.target instanceof Element ? event.target.closest(PRESSED) : null;
    if (control !== null && press(control)) event.preventDefault();
  });
  for (const select of document.querySelectorAll<HTMLSelectElement>('select[data-choose]')) {
    select.disabled = false;
    const name = select.dataset['choose']!;
    const start = [...select.options].find((option) => option.defaultSelected)?.value ?? select.options[0]?.value ?? '';
    // chosen while the page was still loading
    if (select.value !== start) set(name, select.value);
    select.addEventListener('change', () => set(name, select.value));
    page.chosen.subscribe((chosen) => {
      select.value = chosen[name] ?? start;
    });
  }
}
