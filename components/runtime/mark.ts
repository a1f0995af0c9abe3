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
    mark.old?.remove();
    number.classList.remove('was');
    setWord(number, false);
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

  return {
    changed(element, before) {
      const number = element.closest('.v, .read > b, [data-mark]');
      // the unit beside a number is no number of its own
      if (number === null || before === '' || element.matches('i, .u, .vh')) return;
      moved += 1;
      const mark = marks.get(number);
      if (mark !== undefined) {
        clearTimeout(mark.timer);
        if (element.textContent === mark.before) clear(number);
        else {
          seen.unobserve(number);
          seen.observe(number);
        }
        return;
      }
      let old: Element | null = null;
      if (number.classList.contains('v')) {
        old = document.createElement('s');
        old.textContent = before;
        old.setAttribute('aria-hidden', 'true'); // what changed is said once, by the live region
        number.prepend(old);
      }
      number.classList.add('was');
      setWord(number, true);
      marks.set(number, { before, old, timer: 0 });
      seen.observe(number);
    },
    moved() {
      const count = moved;
      moved = 0;
      return count;
    },
  };
}

function setWord(number: Element, on: boolean): void {
  const words = (number.getAttribute('data-is') ?? '').split(' ').filter((word) => word !== '' && word !== 'changed');
  if (on) words.push('changed');
  if (words.length === 0) number.removeAttribute('data-is');
  else number.setAttribute('data-is', words.join(' '));
}
