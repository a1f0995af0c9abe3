import { electrical } from './electrical/index.ts';
import { materials } from './materials/index.ts';
import type { Shape } from './row.ts';

/**
 * Every question the runner can ask of calc, in the order they are tried. A new family is one folder that exports its
 * list of shapes and one line here.
 */
export const shapes: readonly Shape[] = [...electrical, ...materials];
