import { kept } from '../kept.ts';
import { COMPONENT_NAMES, type ComponentName } from '../names.ts';
import CardCheck from './CardCheck.astro';
import CardHold from './CardHold.astro';
import CardStation from './CardStation.astro';
import CardStep from './CardStep.astro';
import CardSteps from './CardSteps.astro';
import CardTerm from './CardTerm.astro';
import DrawnValue from './CardValue.astro';
import None from './None.astro';
import DrawnBench from './PaperBench.astro';
import DrawnParts from './PaperParts.astro';
import DrawnRelay from './PaperRelay.astro';
import DrawnTruth from './PaperTruth.astro';

/** What hangs on the circuit alone, drawn once for all cards of the guides that share it. */
export const CardValue = kept('CardValue', DrawnValue);
export const PaperBench = kept('PaperBench', DrawnBench);
export const PaperParts = kept('PaperParts', DrawnParts);
export const PaperRelay = kept('PaperRelay', DrawnRelay);
export const PaperTruth = kept('PaperTruth', DrawnTruth);

/** What a card prints of a guide's own text; instruments and pictures stay out, their figures have sheets of their own. */
const PRINTED = {
  Station: CardStation,
  Steps: CardSteps,
  Step: CardStep,
  Hold: CardHold,
  Check: CardCheck,
  Value: CardValue,
  Term: CardTerm,
} satisfies Partial<Record<ComponentName, unknown>>;

/** The same guide on paper: the line, its boxes and its hold points. */
export const cardComponents: Record<string, unknown> = {
  ...Object.fromEntries(COMPONENT_NAMES.map((name) => [name, None])),
  ...PRINTED,
};
