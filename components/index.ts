import FuseSizer from './fuse-sizer/FuseSizer.astro';
import GaugeChooser from './gauge-chooser/GaugeChooser.astro';
import type { ComponentName } from './names.ts';
import Value from './value/Value.astro';

/** Component by name, as pages hand them to a guide: `<Content components={components} />`. */
export const components = {
  FuseSizer,
  GaugeChooser,
  Value,
} satisfies Record<ComponentName, unknown>;
