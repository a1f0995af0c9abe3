import BenchSheet from './bench-sheet/BenchSheet.astro';
import Caution from './caution/Caution.astro';
import Note from './caution/Note.astro';
import CircuitDiagram from './circuit-diagram/CircuitDiagram.astro';
import FaultTable from './fault-table/FaultTable.astro';
import Figure from './figure/Figure.astro';
import Findings from './findings/Findings.astro';
import FuseSizer from './fuse-sizer/FuseSizer.astro';
import GaugeChooser from './gauge-chooser/GaugeChooser.astro';
import Check from './hold/Check.astro';
import Hold from './hold/Hold.astro';
import JobValues from './job-values/JobValues.astro';
import PadHeat from './lesson/PadHeat.astro';
import PadLay from './lesson/PadLay.astro';
import WettingDrop from './lesson/WettingDrop.astro';
import LessonLink from './lesson-link/LessonLink.astro';
import Meter from './meter/Meter.astro';
import type { ComponentName } from './names.ts';
import PartsList from './parts-list/PartsList.astro';
import PrepSelector from './prep/PrepSelector.astro';
import PrepSteps from './prep/PrepSteps.astro';
import RelayDiagram from './relay-diagram/RelayDiagram.astro';
import Station from './station/Station.astro';
import Step from './steps/Step.astro';
import Steps from './steps/Steps.astro';
import Survey from './survey/Survey.astro';
import Term from './term/Term.astro';
import TruthTable from './truth-table/TruthTable.astro';
import Value from './value/Value.astro';

/** Component by name, as pages hand them to a guide: `<Content components={components} />`. */
export const components = {
  Caution,
  Check,
  Figure,
  FuseSizer,
  GaugeChooser,
  Hold,
  JobValues,
  LessonLink,
  Note,
  Station,
  Step,
  Steps,
  Survey,
  Term,
  Value,
  CircuitDiagram,
  FaultTable,
  Findings,
  RelayDiagram,
  TruthTable,
  BenchSheet,
  Meter,
  PartsList,
  PadHeat,
  PadLay,
  PrepSelector,
  PrepSteps,
  WettingDrop,
} satisfies Record<ComponentName, unknown>;
