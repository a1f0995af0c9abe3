import { z } from 'zod';

/** Id of a content file or of a thing in one: lower case, digits, single hyphens. */
export const id = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'must be lower case letters, digits and single hyphens, such as "panel-van"');

/** One line of text that says something. */
export const line = z.string().trim().min(1, 'must not be empty');

/** Calendar date, year first. */
export const isoDate = z.iso.date('must be a date such as 2026-11-20');

/** Where a figure or fact comes from; "common practice, no source" where the trade does it and nobody wrote it down. */
export const source = line;

/** A number in the unit the field's name ends in, or the name of one of the circuit's job values. */
export const quantity = z.union([
  z.number(),
  z.string().regex(/^[a-z][A-Za-z0-9]*$/, 'must be a number or the name of a job value such as feedRunM'),
]);

/** A quantity, or `auto`: Loomleaf works it out. `auto` also matches the name pattern, so one union covers both. */
export const sized = quantity;
