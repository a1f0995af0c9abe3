/** How long a changed number stays marked once it is on screen. */
const MARKED_MS = 4000;

interface Mark {
  before: string;
  old: Element | null;
  timer: number;
}

/**
 * Marks numbers that just changed: the old value struck through beside the new, for four seconds after the number has
 * been on screen. A number changed again while marked keeps the value it began with; one that comes back loses its mark.
 */
export function marker(): { changed: (element: Element, before: string) => void; moved: () => number } {
  const marks = new Map<Element, Mark>();
  let moved = 0;

  const clear = (number: Element): void => {
    const mark = marks.get(number);
    if (mark === undefined) return;
    clearTimeout(mark.timer);
    if (mark.old !== null) mark.old.textContent = '';
    number.classList.remove('was');
    marks.delete(number);
    seen.unobserve(number);
  };
  const seen = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) {
      const mark = marks.get(target);
      if (!isIntersecting || mark === undefined) continue;
      seen.unobserve(target);
      mark.timer = window.setTimeout(() => clear(target), MARKED_MS);
    }
  });

  const mark = (number: Element, before: string): void => {
    const known = marks.get(number);
    if (known !== undefined) {
      clearTimeout(known.timer);
      if (textOf(number) === known.before) clear(number);
      else {
        seen.unobserve(number);
        seen.observe(number);
      }
      return;
    }
    const old = number.classList.contains('v') ? placeFor(number) : null;
    if (old !== null) old.textContent = before;
    // a class and no attribute: rules that look for a state in what is inside would be tried again for every number
    number.classList.add('was');
    marks.set(number, { before, old, timer: 0 });
    seen.observe(number);
  };

  // numbers first, marks with the next frame: a change waits for nothing that is not a number
  let waiting = new Map<Element, string>();
  const markAll = (): void => {
    const list = waiting;
    waiting = new Map();
    for (const [element, before] of list) {
      const number = numberOf(element);
      if (number !== null && element.isConnected) mark(number, before);
    }
  };
  const numbers = new WeakMap<Element, Element | null>();
  /** The number that a text belongs to; the unit beside a number is none of its own. Asked of the page once. */
  const numberOf = (element: Element): Element | null => {
    let number = numbers.get(element);
    if (number === undefined) {
      number = element.matches('i, .u, .vh') ? null : element.closest('.v, .read > b, [data-mark]');
      numbers.set(element, number);
    }
    return number;
  };

  return {
    changed(element, before) {
      if (before === '' || numberOf(element) === null) return;
      moved += 1;
      if (waiting.size === 0) requestAnimationFrame(markAll);
      if (!waiting.has(element)) waiting.set(element, before);
    },
    moved() {
      const count = moved;
      moved = 0;
      return count;
    },
  };
}

/**
 * Where the old value goes. It stands empty in the markup: an element put in afterwards makes the browser try every rule
 * that looks into its parents. What changed is said once, by the live region; the old value is for eyes alone.
 */
function placeFor(number: Element): Element {
  const placed = number.querySelector(':scope > s');
  if (placed !== null) return placed;
  const old = document.createElement('s');
  old.setAttribute('aria-hidden', 'true');
  number.prepend(old);
  return old;
}

/** Digits of a number, without the old ones and the unit. */
const textOf = (number: Element): string => number.querySelector('[data-out]')?.textContent ?? number.textContent ?? '';
