import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import { defaultsOf, type JobContext, type Study } from '../context.ts';
import type { Reading } from '../job/model.ts';
import type { UnitChoice } from '../units.ts';
import { idleWork } from './idle.ts';
import { fromHash, type Kept, readKept, toHash, UNITS_KEY, unitsFrom, valuesKey, writeKept } from './keep.ts';
import type { PageData } from './page-data.ts';
import { keptStudies } from './studies.ts';

/** Works a circuit out; loaded with the first page that has one. */
export type StudyOf = (data: PageData, values: Readonly<Record<string, number>>, after: Study | null) => Study | null;

/** A number or choice that a component keeps for itself, with what may be kept of it. */
export interface Local {
  signal: Signal<number | string>;
  default: number | string;
  /** Reads a kept value; undefined where it is not one. */
  accept: (kept: unknown) => number | string | undefined;
}

const NONE = {};

/** The page's state: everything that a change may come from, and everything that follows from it. */
export interface Page {
  readonly data: PageData;
  /** Job values as they stand; good ones only. */
  readonly values: ReadonlySignal<Readonly<Record<string, number>>>;
  readonly units: ReadonlySignal<UnitChoice>;
  /** Entries that are not used, by input name, with the words beside the field. */
  readonly refused: Signal<Readonly<Record<string, string>>>;
  /** What the reader is looking at, by name. */
  readonly chosen: Signal<Readonly<Record<string, string>>>;
  /** What a meter read, by the key of its place. */
  readonly readings: Signal<Readonly<Record<string, Reading>>>;
  /** What a model gets, without its own inputs. */
  readonly job: ReadonlySignal<JobContext>;
  /** Sets job values together: everything that follows runs once. Values out of range are left out; tells which. */
  set(values: Readonly<Record<string, number>>): string[];
  /** Values that may be set next, likeliest first: what follows from them is worked out while the page rests. */
  foresee(next: readonly Readonly<Record<string, number>>[]): void;
  /** Whether that is so quick that keys may come meanwhile. */
  readonly foreseesQuickly: boolean;
  /** Called with what a model would get if such values were set. */
  onForeseen(listen: (job: JobContext) => void): void;
  /** All defaults but these, as a link or a job has them. */
  apply(values: Readonly<Record<string, unknown>>): void;
  resetAll(): void;
  /**
   * From here on the values are a job's: what changes is told and goes neither into the address nor into the page's own
   * storage, so that no stale link can speak against the job.
   */
  handOver(changed: (values: Readonly<Record<string, number>>) => void): void;
  setUnits(choice: Partial<UnitChoice>): void;
  /** A component's own inputs that go into link and storage. */
  keep(name: string, local: Local): void;
  local(name: string): Local | undefined;
  /** The link that carries this state. */
  link(): string;
}

/**
 * Makes the page's state from its data, its link and what the device keeps, in that order of say. Nothing is written until
 * someone changes something.
 */
export function createPage(data: PageData, studyOf: StudyOf): Page {
  const specs = data.circuit?.values ?? {};
  const defaults = defaultsOf(data.circuit);
  const key = valuesKey(location.pathname);
  const good = (name: string, value: unknown): value is number => {
    const spec = specs[name];
    return spec !== undefined && typeof value === 'number' && value >= spec.min && value <= spec.max;
  };
  const locals = new Map<string, Local>();
  const known = (name: string): boolean => Object.hasOwn(specs, name) || locals.has(name);

  /** The whole state that a link names, or null where it names nothing of ours. */
  const linked = (): Record<string, string> | null => {
    const pairs = fromHash(location.hash);
    return pairs !== null && Object.keys(pairs).some(known) ? pairs : null;
  };
  const numbers = (kept: Readonly<Record<string, unknown>>): Record<string, number> => {
    const result: Record<string, number> = {};
    for (const name of Object.keys(specs)) {
      const raw = kept[name];
      const value = typeof raw === 'string' && raw.trim() !== '' ? Number(raw) : raw;
      if (good(name, value)) result[name] = value;
    }
    return result;
  };

  const start = linked() ?? readKept(key) ?? {};
  const values = signal<Readonly<Record<string, number>>>({ ...defaults, ...numbers(start) });
  const units = signal(unitsFrom(readKept(UNITS_KEY), data.units));
  const refused = signal<Readonly<Record<string, string>>>({});
  const chosen = signal<Readonly<Record<string, string>>>({});
  const readings = signal<Readonly<Record<string, Reading>>>({});
  const worked = keptStudies((of, after) => studyOf(data, of, after));
  const study = computed(() => worked.of(values.value));
  const job = computed<JobContext>(() => ({
    circuit: data.circuit,
    values: values.value,
    shop: data.shop,
    units: units.value,
    study: study.value,
    local: NONE,
    refused: refused.value,
    chosen: chosen.value,
    readings: readings.value,
  }));

  const changes = (): Kept => {
    const kept: Kept = {};
    for (const [name, value] of Object.entries(values.value)) if (value !== defaults[name]) kept[name] = value;
    for (const [name, local] of locals) if (local.signal.value !== local.default) kept[name] = local.signal.value;
    return kept;
  };

  const idle = idleWork();
  const foreseen: ((job: JobContext) => void)[] = [];
  let writing = 0;
  let taker: ((values: Readonly<Record<string, number>>) => void) | undefined;
  const write = (): void => {
    if (taker !== undefined) {
      taker(values.peek());
      return;
    }
    // browsers count history writes; a held stepper is one
    clearTimeout(writing);
    writing = window.setTimeout(() => {
      const kept = changes();
      writeKept(key, kept);
      history.replaceState(history.state, '', toHash(kept) || location.pathname + location.search);
    }, 150);
  };

  const page: Page = {
    data,
    values,
    units,
    refused,
    chosen,
    readings,
    job,
    set(wanted) {
      const left: string[] = [];
      const next = { ...values.value };
      for (const [name, value] of Object.entries(wanted)) {
        if (good(name, value)) next[name] = value;
        else left.push(name);
      }
      batch(() => {
        if (Object.keys(next).some((name) => next[name] !== values.value[name])) values.value = next;
        const still = { ...refused.value };
        for (const name of Object.keys(wanted)) if (!left.includes(name)) delete still[name];
        if (Object.keys(still).length !== Object.keys(refused.value).length) refused.value = still;
      });
      write();
      return left;
    },
    foresee(next) {
      if (data.circuit === null || !worked.light) return;
      idle(
        next.flatMap((each) => {
          const set = { ...values.peek(), ...each };
          const shown = (): void => {
            const ahead = { ...job.peek(), values: set, study: worked.of(set) };
            for (const listen of foreseen) listen(ahead);
          };
          return [() => void worked.of(set), shown];
        }),
      );
    },
    get foreseesQuickly() {
      return worked.quick;
    },
    onForeseen: (listen) => void foreseen.push(listen),
    apply(kept) {
      batch(() => {
        values.value = { ...defaults, ...numbers(kept) };
        for (const [name, local] of locals) local.signal.value = local.accept(kept[name]) ?? local.default;
        refused.value = {};
      });
    },
    resetAll() {
      page.apply({});
      write();
    },
    handOver(changed) {
      clearTimeout(writing);
      taker = changed;
      if (linked() !== null) history.replaceState(history.state, '', location.pathname + location.search);
    },
    setUnits(choice) {
      units.value = { ...units.value, ...choice };
      writeKept(UNITS_KEY, units.value);
    },
    keep(name, local) {
      locals.set(name, local);
      const kept = linked() ?? readKept(key) ?? {};
      local.signal.value = local.accept(kept[name]) ?? local.default;
      let first = true;
      local.signal.subscribe(() => {
        if (first) first = false;
        else write();
      });
    },
    local: (name) => locals.get(name),
    link: () => location.origin + location.pathname + location.search + toHash(changes()),
  };

  window.addEventListener('hashchange', () => {
    const pairs = linked();
    if (pairs === null) return;
    // a job in hand is asked first what to do with the values of a link
    if (taker === undefined) page.apply(pairs);
    else location.reload();
  });
  window.addEventListener('storage', (event) => {
    if (event.key === UNITS_KEY) units.value = unitsFrom(readKept(UNITS_KEY), data.units);
  });
  return page;
}
