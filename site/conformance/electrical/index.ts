import type { Shape } from '../row.ts';
import { ampacity } from './ampacity.ts';
import { battery } from './battery.ts';
import { contacts } from './contacts.ts';
import { crimp } from './crimp.ts';
import { drop } from './drop.ts';
import { fuses } from './fuses.ts';
import { led } from './led.ts';
import { protection } from './protection.ts';
import { run } from './run.ts';
import { supply } from './supply.ts';
import { wire } from './wire.ts';
import { wireLength } from './wire-length.ts';

/** Questions about wire, fuses, contacts, batteries and light, in the order they are tried. */
export const electrical: readonly Shape[] = [
  ...wire,
  ...wireLength,
  ...drop,
  ...run,
  ...ampacity,
  ...fuses,
  ...protection,
  ...contacts,
  ...battery,
  ...supply,
  ...led,
  ...crimp,
];
