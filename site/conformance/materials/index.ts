import type { Shape } from '../row.ts';
import { adhesion } from './adhesion.ts';
import { joints } from './joints.ts';
import { light } from './light.ts';
import { looms } from './looms.ts';
import { prep } from './prep.ts';
import { safety } from './safety.ts';
import { tape } from './tape.ts';
import { surfaceTests } from './tests.ts';

/** Every question about materials and joints. */
export const materials: readonly Shape[] = [
  ...adhesion,
  ...surfaceTests,
  ...tape,
  ...prep,
  ...joints,
  ...looms,
  ...light,
  ...safety,
];
