import type { z } from 'zod';
import { props as fuseSizer } from './fuse-sizer/props.ts';
import { props as gaugeChooser } from './gauge-chooser/props.ts';
import type { ComponentName } from './names.ts';
import { props as value } from './value/props.ts';

/** What a string prop names, so that the check can look it up and say "did you mean". */
export type Reference =
  | 'value'
  | 'fuse'
  | 'wire'
  | 'relay'
  | 'load'
  | 'part'
  | 'term'
  | 'lesson'
  | 'surface'
  | 'calculator'
  | 'guide'
  | 'image';

/** What the check holds an author to. */
export interface ComponentRule {
  props: z.ZodObject;
  /** Text or components between the tags. */
  children: 'none' | 'required' | 'optional';
  /** Components it must stand in, directly or deeper; absent: anywhere. */
  inside?: readonly ComponentName[];
  /** Props that name a thing of the workshop or of the guide's circuit. */
  refers?: Readonly<Record<string, Reference>>;
  /** Needs a circuit on the page. */
  circuit?: 'always' | 'with of';
}

/** Every component's rule, by name. Read at build time only. */
export const schemas: Readonly<Record<ComponentName, ComponentRule>> = {
  FuseSizer: { props: fuseSizer, children: 'none', refers: { of: 'fuse' }, circuit: 'with of' },
  GaugeChooser: { props: gaugeChooser, children: 'none', refers: { of: 'wire' }, circuit: 'with of' },
  Value: { props: value, children: 'none', refers: { of: 'value' }, circuit: 'always' },
};
