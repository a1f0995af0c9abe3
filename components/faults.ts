import type { LocalField } from './contract.ts';
import { rangeFault } from './range.ts';
import type { UnitChoice } from './units.ts';

type Entries = Readonly<Record<string, number | string>>;

/** What is wrong with one entry among the others, in the reader's units; nothing where it may be used. */
export function faultOf(field: LocalField, value: unknown, all: Entries, units: UnitChoice): string | undefined {
  if (field.options !== undefined) {
    return field.options.some((option) => option.value === String(value)) ? undefined : field.error;
  }
  if (field.read !== undefined) return typeof value === 'string' ? field.read(value) : field.error;
  if (typeof value !== 'number' || !Number.isFinite(value)) return field.error;
  if (value < (field.min ?? value) || value > (field.max ?? value)) return rangeFault(field, units);
  return field.check === undefined || field.check(all) ? undefined : field.error;
}

/** Every entry that may not be used, with the words beside its field. */
export function faultsOf(
  fields: readonly LocalField[],
  all: Entries,
  units: UnitChoice,
): Readonly<Record<string, string>> {
  const faults: Record<string, string> = {};
  for (const field of fields) {
    const fault = faultOf(field, all[field.name], all, units);
    if (fault !== undefined) faults[field.name] = fault;
  }
  return faults;
}
