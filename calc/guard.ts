/**
 * Guards at the door of every calculation: a number that cannot be meant is refused at once, in words that name the
 * value, what was expected and where, so that a mistake is mended where it was made.
 */

/** A finite number, or a TypeError that says what came instead. */
export function finite(where: string, name: string, value: unknown): number {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw new TypeError(`${where}: unexpected ${name} ${String(value)}, expected a finite number`);
  }
  return value;
}

/** A finite number inside [min, max] (both allowed), or a RangeError. `unit` is only for the message. */
export function within(where: string, name: string, value: unknown, min: number, max: number, unit = ''): number {
  const number = finite(where, name, value);
  if (number < min || number > max) {
    const of = unit === '' ? '' : ` ${unit}`;
    throw new RangeError(`${where}: unexpected ${name} ${number}${of}, expected ${min} to ${max}${of}`);
  }
  return number;
}

/** A finite number above zero, or a RangeError. */
export function positive(where: string, name: string, value: unknown, unit = ''): number {
  const number = finite(where, name, value);
  if (number <= 0) {
    throw new RangeError(`${where}: unexpected ${name} ${number}${unit === '' ? '' : ` ${unit}`}, expected above 0`);
  }
  return number;
}

/** A whole number inside [min, max], or a RangeError. */
export function whole(where: string, name: string, value: unknown, min: number, max: number): number {
  const number = within(where, name, value, min, max);
  if (!Number.isInteger(number)) {
    throw new RangeError(`${where}: unexpected ${name} ${number}, expected a whole number`);
  }
  return number;
}

/** One of the listed words, or a RangeError that lists them. */
export function oneOf<T extends string>(where: string, name: string, value: string, allowed: readonly T[]): T {
  const found = allowed.find((word) => word === value);
  if (found === undefined) {
    throw new RangeError(`${where}: unexpected ${name} "${value}", expected one of ${allowed.join(', ')}`);
  }
  return found;
}
