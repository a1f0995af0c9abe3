import type { z } from 'zod';
import { props as benchSheet } from './bench-sheet/props.ts';
import { caution, note } from './caution/props.ts';
import { props as circuitDiagram } from './circuit-diagram/props.ts';
import { props as faultTable } from './fault-table/props.ts';
import { props as figure } from './figure/props.ts';
import { props as findings } from './findings/props.ts';
import { props as fuseSizer } from './fuse-sizer/props.ts';
import { props as gaugeChooser } from './gauge-chooser/props.ts';
import { check, hold } from './hold/props.ts';
import { props as jobValues } from './job-values/props.ts';
import { tryOut } from './lesson/props.ts';
import { props as lessonLink } from './lesson-link/props.ts';
import { props as meter } from './meter/props.ts';
import type { ComponentName } from './names.ts';
import { props as partsList } from './parts-list/props.ts';
import { prepSelector, prepSteps } from './prep/props.ts';
import { props as relayDiagram } from './relay-diagram/props.ts';
import { props as station } from './station/props.ts';
import { step, steps } from './steps/props.ts';
import { props as survey } from './survey/props.ts';
import { props as term } from './term/props.ts';
import { props as truthTable } from './truth-table/props.ts';
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
  | 'image'
  | 'symbol';

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
  Caution: { props: caution, children: 'required' },
  Check: { props: check, children: 'required', inside: ['Hold'] },
  Figure: { props: figure, children: 'optional', refers: { src: 'image' } },
  FuseSizer: { props: fuseSizer, children: 'none', refers: { of: 'fuse' }, circuit: 'with of' },
  GaugeChooser: { props: gaugeChooser, children: 'none', refers: { of: 'wire' }, circuit: 'with of' },
  Hold: { props: hold, children: 'required' },
  JobValues: { props: jobValues, children: 'none', circuit: 'always' },
  LessonLink: { props: lessonLink, children: 'none', refers: { of: 'lesson' } },
  Note: { props: note, children: 'required' },
  Station: {
    props: station,
    children: 'required',
    refers: { part: 'part', value: 'value', wire: 'wire', symbol: 'symbol' },
  },
  Step: { props: step, children: 'required', inside: ['Steps'] },
  Steps: { props: steps, children: 'required', inside: ['Station'] },
  Survey: { props: survey, children: 'none' },
  Term: { props: term, children: 'optional', refers: { of: 'term' } },
  CircuitDiagram: { props: circuitDiagram, children: 'none', circuit: 'always' },
  FaultTable: { props: faultTable, children: 'none', refers: { of: 'part' }, circuit: 'always' },
  Findings: { props: findings, children: 'none', circuit: 'always' },
  RelayDiagram: { props: relayDiagram, children: 'none', refers: { of: 'relay' }, circuit: 'always' },
  TruthTable: { props: truthTable, children: 'none', circuit: 'always' },
  BenchSheet: { props: benchSheet, children: 'none', circuit: 'always' },
  Meter: { props: meter, children: 'none', circuit: 'always' },
  PartsList: { props: partsList, children: 'none', circuit: 'always' },
  PadHeat: { props: tryOut, children: 'none' },
  PadLay: { props: tryOut, children: 'none' },
  WettingDrop: { props: tryOut, children: 'none' },
  PrepSelector: { props: prepSelector, children: 'none', refers: { surface: 'surface' } },
  PrepSteps: { props: prepSteps, children: 'none', refers: { surface: 'surface' } },
  Value: { props: value, children: 'none', refers: { of: 'value' }, circuit: 'always' },
};
