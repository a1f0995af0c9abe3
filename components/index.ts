import type { ComponentName } from './names.ts';
import Value from './value/Value.astro';

/** Component by name, as pages hand them to a guide: `<Content components={components} />`. */
export const components = {
  Value,
} satisfies Record<ComponentName, unknown>;
