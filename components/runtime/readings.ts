import { effect } from '@preact/signals-core';
import { readReading } from '../job/reading.ts';
import type { Page } from './page.ts';

/**
 * Joins the places for meter readings (`data-read` names the place, `data-unit` its unit) to the page's readings. Rows
 * come and go with the job values, so the page listens once for all of them.
 */
export function wireReadings(page: Page): void {
  const fields = () => document.querySelectorAll<HTMLInputElement>('[data-read]');
  const say = (input: HTMLInputElement, message: string): void => {
    const bad = input.closest('td')?.querySelector<HTMLElement>('[data-read-bad]');
    if (bad) {
      bad.hidden = message === '';
      bad.textContent = message;
    }
    if (message === '') input.removeAttribute('aria-invalid');
    else input.setAttribute('aria-invalid', 'true');
  };
  document.addEventListener('change', (event) => {
    const input = event.target;
    if (!(input instanceof HTMLInputElement) || input.dataset['read'] === undefined) return;
    const key = input.dataset['read'];
    const typed = input.value.trim();
    const next = { ...page.readings.peek() };
    if (typed === '') delete next[key];
    else {
      const read = readReading(typed, input.dataset['unit'] ?? '', page.units.peek());
      say(input, read.ok ? '' : read.message);
      if (!read.ok) return;
      next[key] = { typed, value: read.value };
    }
    say(input, '');
    page.readings.value = next;
  });
  effect(() => {
    const readings = page.readings.value;
    void page.values.value; // other values may bring other rows
    queueMicrotask(() => {
      for (const input of fields()) {
        input.disabled = false;
        if (input === document.activeElement || input.getAttribute('aria-invalid') !== null) continue;
        const text = readings[input.dataset['read']!]?.typed ?? '';
        if (input.value !== text) input.value = text;
      }
    });
  });
}
