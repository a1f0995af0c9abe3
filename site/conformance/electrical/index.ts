import type { Shape } from '../row.ts';
import { wire } from './wire.ts';

/** Questions about wire, fuses, contacts, batteries and light. */
export const electrical: readonly Shape[] = [...wire];
