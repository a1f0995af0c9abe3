import type { Circuit, Quantity, QuantityKind } from './model.ts';

/** Numbers for a circuit's job values, by name. */
export type Values = Record<string, number>;

/** Unit in which calc holds each kind of job value, for messages. */
export const UNIT_OF: Record<QuantityKind, string> = {
  length: 'm',
  current: 'A',
  voltage: 'V',
  power: 'W',
  resistance: 'ohm',
  temperature: '°C',
  area: 'mm²',
  charge: 'Ah',
  fraction: '',
  mass: 'kg',
  time: 's',
  count: '',
};

/**
 * Every job value of a circuit as a number: what the caller gives, else the author's default.
 *
 * @param circuit whose job values are meant
 * @param given numbers in calc's units; names that the circuit does not define are left alone, a page has more of them
 * @throws TypeError where a given value is not a finite number
 */
export function valuesOf(circuit: Circuit, given: Values = {}): Values {
  const values: Values = {};
  for (const [name, value] of Object.entries(circuit.values)) {
    const number = given[name] ?? value.default;
    if (!Number.isFinite(number)) {
      throw new TypeError(`valuesOf: unexpected ${name} ${String(number)}, expected a finite number`);
    }
    values[name] = number;
  }
  return values;
}

/**
 * The number behind a quantity.
 *
 * @throws RangeError where a job value is named that does not exist; `circuitProblems` says so beforehand, with its place
 */
export function numberOf(quantity: Quantity, values: Values): number {
  if (typeof quantity === 'number') return quantity;
  const value = values[quantity];
  if (value === undefined) throw new RangeError(`numberOf: unexpected job value "${quantity}", expected a known name`);
  return value;
}
