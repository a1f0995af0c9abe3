import { effect, type ReadonlySignal, signal } from '@preact/signals-core';
import type { LocalField } from '../contract.ts';
import { snapped } from '../range.ts';
import { inWords, show } from '../show.ts';
import { stepFrom } from '../stepping.ts';
import { parseTyped } from '../typed.ts';
import type { UnitChoice } from '../units.ts';

/** Time a person gets to finish typing before he is told that it is wrong. */
const PATIENCE_MS = 700;

/** A number or choice that can be entered, wherever on the page its fields stand. */
export interface Entry {
  field: LocalField;
  value: ReadonlySignal<number | string>;
  /** Takes a value that was checked; tells what is wrong with it here, or nothing. */
  take(value: number | string): string | undefined;
  /** A fault that came from another entry. */
  fault: ReadonlySignal<string | undefined>;
  /** Told when it was stepped, which way. */
  stepped?(by: number): void;
  /** Told what stands in the field while it is being typed; nothing where the next key replaces it. */
  typing?(text: string): void;
  /** Told when typed text is refused and when that is over. */
  refused(message: string | undefined): void;
}

/** Finds an entry by name for elements under one scope; `scope` itself may hold entries of its own. */
export interface EntryScope {
  root: ParentNode;
  attribute: 'data-in' | 'data-local';
  entries: ReadonlyMap<string, Entry>;
}

/** Joins the controls under a root that put a value into an entry; rows of a list come and go, so the root listens. */
export function joinSetters(root: HTMLElement, entries: ReadonlyMap<string, Entry>): void {
  root.addEventListener('click', (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return; // a link opened elsewhere stays a link
    const control = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-set]') : null;
    const pair = control?.dataset['set'] ?? '';
    const at = pair.indexOf(':');
    const entry = entries.get(pair.slice(0, at));
    if (entry === undefined) return;
    event.preventDefault();
    entry.take(pair.slice(at + 1));
  });
}

type Input = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/**
 * Joins the fields, steppers, resets and messages under a scope to its entries. A good entry counts at once, while it is
 * being typed; a bad one is left standing in its field with the reason beside it, and the last good one stays in use.
 */
export function joinEntries(
  { root, attribute, entries }: EntryScope,
  units: ReadonlySignal<UnitChoice>,
  say: (text: string) => void,
): void {
  for (const [name, entry] of entries) {
    const inputs = [...root.querySelectorAll<Input>(`[${attribute}="${CSS.escape(name)}"]`)];
    const messages = [...root.querySelectorAll<HTMLElement>(`[data-error="${CSS.escape(name)}"]`)];
    const typed = signal<string | undefined>(undefined);
    // what was entered while the page was still loading counts, and must not be written over first
    const early = new Set(inputs.filter(enteredEarly));

    effect(() => {
      const text = textOf(entry, entry.value.value, units.value);
      if (typed.value !== undefined) return; // what was refused stays to be mended
      for (const input of inputs) {
        if (early.has(input)) continue;
        if (input === document.activeElement && input.dataset['typing'] !== undefined) continue;
        if (input.value !== text) input.value = text;
      }
    });
    effect(() => {
      const message = typed.value ?? entry.fault.value;
      for (const input of inputs) {
        if (message === undefined) input.removeAttribute('aria-invalid');
        else input.setAttribute('aria-invalid', 'true');
      }
      for (const element of messages) {
        if (message === undefined && element.hidden) continue;
        element.hidden = message === undefined;
        (element.querySelector('span') ?? element).textContent = message ?? '';
        markRow(element, message !== undefined);
      }
    });

    let timer = 0;
    const refuse = (message: string | undefined): void => {
      if (message === typed.peek()) return;
      typed.value = message;
      entry.refused(message);
      if (message !== undefined) say(message);
    };
    const read = (input: Input): string | undefined => {
      const { field } = entry;
      const held = `Still using ${wordsOf(entry, units.peek())}.`;
      if (field.options !== undefined) {
        const option = field.options.find(({ value }) => value === input.value);
        return option === undefined
          ? field.error
          : entry.take(typeof field.default === 'number' ? Number(option.value) : option.value);
      }
      if (field.read !== undefined) return entry.take(input.value);
      const parsed = parseTyped(input.value, field.kind, units.peek());
      if (!parsed.ok) return `${parsed.message} ${held}`;
      const fault = entry.take(snapped(parsed.value, field));
      return fault === undefined ? undefined : `${fault} ${held}`;
    };
    for (const input of inputs) {
      input.disabled = false;
      let reading: number | undefined;
      const settle = (): void => {
        clearTimeout(timer);
        if (reading !== undefined) cancelAnimationFrame(reading);
        reading = undefined;
        delete input.dataset['typing'];
        const message = read(input);
        refuse(message);
        if (message === undefined)
          for (const each of inputs) each.value = textOf(entry, entry.value.peek(), units.peek());
      };
      const readTyped = (): void => {
        if (reading === undefined) return; // settled meanwhile
        reading = undefined;
        const message = read(input);
        entry.typing?.(input.value);
        if (message === undefined) refuse(undefined);
        else timer = window.setTimeout(() => refuse(message), PATIENCE_MS);
      };
      // the letter first, then what follows from it: a page that computes must not make a key feel slow
      const typing = (): void => {
        clearTimeout(timer);
        input.dataset['typing'] = '';
        reading ??= requestAnimationFrame(() => setTimeout(readTyped));
      };
      // whoever is still typing goes on in his own text
      if (early.delete(input)) (input === document.activeElement ? typing : settle)();
      input.addEventListener('focus', () => entry.typing?.(''));
      input.addEventListener('input', typing);
      input.addEventListener('change', settle);
      input.addEventListener('blur', () => input.dataset['typing'] !== undefined && settle());
      if (entry.field.options === undefined && entry.field.read === undefined) {
        input.addEventListener('keydown', (event) => {
          const key = (event as KeyboardEvent).key;
          if (key !== 'ArrowUp' && key !== 'ArrowDown') return;
          event.preventDefault();
          delete input.dataset['typing'];
          step(entry, key === 'ArrowUp' ? 1 : -1, units.peek(), refuse);
        });
      }
    }
    for (const button of root.querySelectorAll<HTMLButtonElement>(`[data-stepper^="${CSS.escape(name)}:"]`)) {
      const by = Number(button.dataset['stepper']?.split(':')[1]);
      button.disabled = false;
      button.addEventListener('click', () => step(entry, by, units.peek(), refuse));
    }
    for (const button of root.querySelectorAll<HTMLButtonElement>(`[data-reset="${CSS.escape(name)}"]`)) {
      button.disabled = false;
      button.addEventListener('click', () => {
        entry.take(entry.field.default);
        refuse(undefined);
        // the button goes away with the change: the field it belongs to takes the focus
        const field = button.closest('[data-entry]')?.querySelector<HTMLElement>('input, select');
        field?.focus();
      });
    }
  }
}

function enteredEarly(input: Input): boolean {
  if (!(input instanceof HTMLSelectElement)) return input.value !== input.defaultValue;
  return input.selectedOptions[0]?.defaultSelected === false;
}

function step(entry: Entry, by: number, units: UnitChoice, refuse: (message: string | undefined) => void): void {
  const { field } = entry;
  const value = entry.value.peek();
  if (typeof value !== 'number') return;
  refuse(entry.take(stepFrom(value, by, field, units)));
  entry.stepped?.(by);
}

function textOf({ field }: Entry, value: number | string, units: UnitChoice): string {
  if (field.options !== undefined || typeof value === 'string') return String(value);
  return show(value, field.kind, units, field.step).text;
}

function wordsOf({ field, value }: Entry, units: UnitChoice): string {
  const now = value.peek();
  return typeof now === 'number' ? inWords(show(now, field.kind, units, field.step)) : now;
}

function markRow(message: Element, bad: boolean): void {
  const row = message.closest('[data-entry]');
  if (row === null) return;
  const words = (row.getAttribute('data-is') ?? '').split(' ').filter((word) => word !== '' && word !== 'bad');
  if (bad) words.unshift('bad');
  row.setAttribute('data-is', words.join(' '));
}
