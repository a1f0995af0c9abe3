import { UNITS_KEY, valuesKey } from './keep.ts';
import { live } from './live.ts';

/**
 * The page's one entry. A page as built is complete and right, so nothing runs until there is a reason: numbers in the
 * link or on the device, other units, or a first touch of the page. What is pressed meanwhile is pressed again when the
 * page is ready.
 */
const FIRST = ['pointerdown', 'keydown', 'focusin', 'input', 'hashchange'];
const CONTROLS =
  '[data-stepper], [data-reset], [data-open], [data-choose], [data-toggle], [data-clear], [data-any], [data-set]';

const has = (key: string): boolean => {
  try {
    return localStorage.getItem(key) !== null;
  } catch {
    return false;
  }
};
const ready = (): void => {
  const pressed: Element[] = [];
  const hold = (event: Event): void => {
    const control = event.target instanceof Element ? event.target.closest(CONTROLS) : null;
    if (control === null) return;
    event.preventDefault();
    event.stopPropagation();
    pressed.push(control);
  };
  const wake = (): void => {
    for (const type of FIRST) removeEventListener(type, wake, true);
    live()?.then(
      () => {
        removeEventListener('click', hold, true);
        // shapes of a drawing have no click() of their own
        for (const control of pressed)
          control.dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true }));
      },
      () => removeEventListener('click', hold, true),
    );
  };
  // what waits for a script is shown as waiting; here it is
  for (const control of document.querySelectorAll<HTMLInputElement>(
    `${CONTROLS}, [data-in], [data-local], [data-read]`,
  ))
    control.disabled = false;
  addEventListener('click', hold, true);
  if (location.hash.includes('=') || has(valuesKey(location.pathname)) || has(UNITS_KEY)) wake();
  else for (const type of FIRST) addEventListener(type, wake, true);
};
if (document.getElementById('page-data') !== null) ready();
