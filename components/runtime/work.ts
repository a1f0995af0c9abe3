import { computed, effect, type ReadonlySignal, signal } from '@preact/signals-core';
import type { JobContext, Study } from '../context.ts';
import type { ComponentModule, LocalField, View } from '../contract.ts';
import { faultOf, faultsOf } from '../faults.ts';
import { loadModel } from '../models.ts';
import { rangeInWords } from '../range.ts';
import { stepFrom } from '../stepping.ts';
import { nextTyped } from '../typing-ahead.ts';
import { KIND_OF_QUANTITY } from '../units.ts';
import { layApart } from './apart.ts';
import { bind } from './bind.ts';
import { wireChoices } from './choose.ts';
import { type Entry, joinEntries, joinSetters } from './entries.ts';
import { marker } from './mark.ts';
import { createPage, type Page, type StudyOf } from './page.ts';
import type { PageData } from './page-data.ts';
import { speaker } from './speak.ts';

type Module = { model: (props: never, job: JobContext) => View; fields?: ComponentModule['fields'] };
const BOTH_WAYS: readonly number[] = [1, -1];

type Locals = Readonly<Record<string, number | string>>;

/** Brings the page to life: every component's model runs again when what it reads changes. */
export async function work(data: PageData): Promise<Page> {
  const roots = [...document.querySelectorAll<HTMLElement>('[data-component]')];
  const more = new Map<HTMLElement, object>();
  const names = [...new Set(roots.map((root) => root.dataset['component']!))];
  const loaded = new Map<string, Module>();
  const [studyOf] = await Promise.all([
    data.circuit === null ? (): null => null : import('../study.ts').then((module): StudyOf => module.studyOf),
    ...names.map(async (name) => {
      const module = await loadModel(name);
      if (module !== undefined) loaded.set(name, module as unknown as Module);
    }),
    ...roots.map(async (root) => {
      const props = await moreProps(root);
      if (props !== undefined) more.set(root, props);
    }),
  ]);

  const page = createPage(data, studyOf as StudyOf);
  const marks = marker();
  const voice = speaker();

  for (const root of roots) {
    const module = loaded.get(root.dataset['component']!);
    if (module === undefined || (root.dataset['more'] !== undefined && !more.has(root))) continue;
    const props = { ...JSON.parse(root.dataset['props'] ?? '{}'), ...more.get(root) };
    enliven(root, module, props as never, page, marks.changed, voice);
  }
  const entries = jobEntries(page);
  joinEntries({ root: document, attribute: 'data-in', entries }, page.units, voice.say);
  wirePage(page);
  wireChoices(page);
  if (document.querySelector('[data-read]') !== null) (await import('./readings.ts')).wireReadings(page);

  const counts = document.querySelectorAll('[data-moved]');
  let first = true;
  page.job.subscribe(() => {
    if (first) {
      first = false;
      marks.moved();
      return;
    }
    queueMicrotask(() => {
      const moved = marks.moved();
      if (moved === 0) return;
      const text = `${moved} ${moved === 1 ? 'number' : 'numbers'} moved`;
      for (const element of counts) element.textContent = text;
    });
  });
  document.documentElement.dataset['live'] = '';
  const main = document.querySelector('main');
  if (main !== null) layApart(main);
  foreseeChanges(page, entries);
  return page;
}

/**
 * The next step of a number is worked out while the page rests: once of every number, then, after each step, of the one
 * stepped and of those in sight. While a number is being typed, what the next keys may make of it is.
 */
function foreseeChanges(page: Page, entries: ReadonlyMap<string, Entry>): void {
  const steps = (name: string, by: readonly number[]): Record<string, number>[] => {
    const { field, value } = entries.get(name)!;
    return by.map((each) => ({ [name]: stepFrom(value.peek() as number, each, field, page.units.peek()) }));
  };
  const inSight = new Set<Element>();
  const ofThoseInSight = () => [...inSight].flatMap((input) => steps((input as HTMLElement).dataset['in']!, BOTH_WAYS));
  let others = [...entries.keys()];
  // what the reader has under his hand comes first, whatever comes into sight meanwhile
  let atHand: readonly Record<string, number>[] = [];
  const foresee = () =>
    page.foresee([...atHand, ...ofThoseInSight(), ...others.flatMap((name) => steps(name, BOTH_WAYS))]);
  const sight = new IntersectionObserver((seen) => {
    for (const { target, isIntersecting } of seen) {
      if (isIntersecting) inSight.add(target);
      else inSight.delete(target);
    }
    foresee();
  });
  for (const [name, entry] of entries) {
    for (const input of document.querySelectorAll(`[data-in="${CSS.escape(name)}"]`)) sight.observe(input);
    // whoever steps once mostly steps again
    entry.stepped = (by) => {
      others = [];
      atHand = steps(name, [by, -by]);
      foresee();
    };
    entry.typing = (text) => {
      if (!page.foreseesQuickly) return;
      others = [];
      atHand = nextTyped(text, entry.field, page.units.peek()).map((value) => ({ [name]: value }));
      foresee();
    };
  }
  foresee(); // where no number with a stepper stands, none comes into sight
}

/** Props that are too large to stand in the page. Where they cannot be had the component stays as it was built. */
async function moreProps(root: HTMLElement): Promise<object | undefined> {
  const address = root.dataset['more'];
  if (address === undefined) return undefined;
  try {
    const answer = await fetch(address);
    if (answer.ok) return (await answer.json()) as object;
    throw new Error(`${answer.status} ${address}`);
  } catch (fault) {
    root.setAttribute('data-kept', '');
    console.error(fault);
    return undefined;
  }
}

/** One component: its model, its own inputs if it has any, its markup. */
function enliven(
  root: HTMLElement,
  { model, fields }: Module,
  props: never,
  page: Page,
  changed: (element: Element, before: string) => void,
  voice: ReturnType<typeof speaker>,
): void {
  const update = bind(root, changed);
  const local = fields === undefined ? undefined : localEntries(root, fields(props, page.job.peek()), page, voice.say);
  const whole = (job: JobContext): JobContext =>
    local === undefined ? job : { ...job, local: local.good.value, refused: local.refused.value };
  const foreseen = new WeakMap<Study, { job: JobContext; view: View }>();
  page.onForeseen((ahead) => {
    const job = whole(ahead);
    if (job.study === null) return;
    const known = foreseen.get(job.study);
    if (known !== undefined && sameBut(known.job, job, ['values'])) return;
    try {
      foreseen.set(job.study, { job, view: model(props, job) });
    } catch {
      // told when it comes to it
    }
  });
  let spoken: string | undefined;
  let isKept = root.hasAttribute('data-kept');
  effect(() => {
    const job = whole(page.job.value);
    let view: View;
    try {
      const ahead = job.study === null ? undefined : foreseen.get(job.study);
      view = ahead !== undefined && sameBut(ahead.job, job, ['values']) ? ahead.view : model(props, job);
    } catch (fault) {
      // the last good answer stands, and is marked as such; the fault is for whoever reads the console
      root.setAttribute('data-kept', '');
      isKept = true;
      console.error(fault);
      return;
    }
    if (isKept) root.removeAttribute('data-kept');
    isKept = false;
    update(view);
    const now = view['spokenValue'];
    if (typeof now !== 'string') return;
    if (spoken !== undefined && spoken !== now) voice.changed(String(view['spokenName']), spoken, now);
    spoken = now;
  });
}

/** Whether two contexts are the same but for these, which say the same in other objects. */
const sameBut = (a: JobContext, b: JobContext, but: readonly (keyof JobContext)[]): boolean =>
  (Object.keys(b) as (keyof JobContext)[]).every((key) => a[key] === b[key] || but.includes(key));

/** Entries of a component's own. The model sees the last set in which every entry is good. */
function localEntries(
  root: HTMLElement,
  fields: readonly LocalField[],
  page: Page,
  say: (text: string) => void,
): { good: ReadonlySignal<Locals>; refused: ReadonlySignal<Readonly<Record<string, string>>> } {
  const signals = new Map(fields.map((field) => [field.name, signal(field.default)]));
  const typed = signal<Readonly<Record<string, string>>>({});
  const now = computed<Locals>(() => Object.fromEntries([...signals].map(([name, { value }]) => [name, value])));
  const faults = computed(() => faultsOf(fields, now.value, page.units.value));
  let last: Locals = now.peek();
  const good = computed(() => (Object.keys(faults.value).length === 0 ? (last = now.value) : last));
  const refused = computed(() => ({ ...faults.value, ...typed.value }));

  const entries = new Map<string, Entry>();
  for (const field of fields) {
    const own = signals.get(field.name)!;
    const accept = (kept: unknown): number | string | undefined => {
      const value = typeof field.default === 'number' && typeof kept === 'string' && kept !== '' ? Number(kept) : kept;
      return faultOf(field, value, { ...now.peek(), [field.name]: value as never }, page.units.peek()) === undefined
        ? (value as number | string)
        : undefined;
    };
    if (root.hasAttribute('data-keep')) page.keep(field.name, { signal: own, default: field.default, accept });
    entries.set(field.name, {
      field,
      value: own,
      fault: computed(() => faults.value[field.name]),
      take(value) {
        const fault = faultOf(field, value, { ...now.peek(), [field.name]: value }, page.units.peek());
        if (fault === undefined) own.value = value;
        return fault;
      },
      refused(message) {
        const rest = { ...typed.peek() };
        delete rest[field.name];
        typed.value = message === undefined ? rest : { ...rest, [field.name]: message };
      },
    });
  }
  joinEntries({ root, attribute: 'data-local', entries }, page.units, say);
  joinSetters(root, entries);
  return { good, refused };
}

/** Entries of the page: its job values. */
function jobEntries(page: Page): Map<string, Entry> {
  const entries = new Map<string, Entry>();
  for (const [name, spec] of Object.entries(page.data.circuit?.values ?? {})) {
    const kind = KIND_OF_QUANTITY[spec.quantity];
    const field: LocalField = {
      name,
      label: spec.label,
      kind,
      default: spec.default,
      min: spec.min,
      max: spec.max,
      step: spec.step,
      error: '',
    };
    entries.set(name, {
      field,
      value: computed(() => page.values.value[name] ?? spec.default),
      fault: signal(undefined),
      take(value) {
        if (typeof value === 'number' && page.set({ [name]: value }).length === 0) return undefined;
        return `${spec.label} must be ${rangeInWords({ ...spec, kind }, page.units.peek())}.`;
      },
      refused(message) {
        const rest = { ...page.refused.peek() };
        delete rest[name];
        page.refused.value = message === undefined ? rest : { ...rest, [name]: message };
      },
    });
  }
  return entries;
}

/** What belongs to the page and to no component: units, put all back, the drawer. */
function wirePage(page: Page): void {
  for (const radio of document.querySelectorAll<HTMLInputElement>('[data-units]')) {
    const choice = radio.dataset['units'] as never;
    radio.disabled = false;
    radio.addEventListener('change', () => page.setUnits({ [choice]: radio.value }));
    effect(() => {
      radio.checked = page.units.value[choice] === radio.value;
    });
  }
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-reset="*"]')) {
    button.disabled = false;
    button.addEventListener('click', () => page.resetAll());
  }
  document.addEventListener('click', (event) => {
    const opener = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-open]') : null;
    if (opener === null) return;
    const drawer = document.querySelector<HTMLElement>('[data-drawer]');
    if (drawer === null) return;
    event.preventDefault(); // its address is for readers without a script
    if (!drawer.matches(':popover-open')) drawer.showPopover();
    const input = drawer.querySelector<HTMLInputElement>(`[data-in="${CSS.escape(opener.dataset['open']!)}"]`);
    input?.focus();
    input?.select();
    input?.scrollIntoView({ block: 'nearest' });
  });
}
