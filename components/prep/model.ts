import {
  type PrepPlan,
  prepPlan,
  type SignsSeen,
  type Soil,
  surfacesBySigns,
  surfacesByWords,
} from '../../calc/index.ts';
import { fieldRows } from '../calculators/model.ts';
import type { JobContext } from '../context.ts';
import type { LocalField, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';
import { chartOf, growthOf, timeWords } from './chart.ts';
import { inShort, type PrepSurface, UNLISTED } from './facts.ts';
import { finderFields, jobFields, signsOf, testFields } from './fields.ts';
import { jointOf } from './joint.ts';
import { sectionOf } from './section.ts';
import { planFields } from './view.ts';

/** What an author may write, and the facts that the page adds. */
export interface PrepProps {
  /** The surface; with it, the facts of this one stand in the page and nothing is searched. */
  surface?: string | undefined;
  tape?: string | undefined;
  place?: string | undefined;
  position?: 'vertical' | 'overhead' | 'level' | undefined;
  surfaceC?: number | undefined;
  massKg?: number | undefined;
  lengthM?: number | undefined;
  widthMm?: number | undefined;
  base?: string | undefined;
  facts: readonly PrepSurface[];
}

/** Surfaces shown at once: more is a list nobody reads. */
const SHOWN = 12;

const firstOf = ({ facts, surface }: PrepProps): PrepSurface => {
  const found = surface === undefined ? facts[0] : facts.find(({ id }) => id === surface);
  if (found === undefined) throw new RangeError(`PrepSelector: no surface "${surface ?? 'at all'}"`);
  return found;
};

export function fields(props: PrepProps): LocalField[] {
  const finding = props.surface === undefined ? [...finderFields(props.facts, firstOf(props).id), ...testFields()] : [];
  return [...finding, ...jobFields(props)];
}

/** A moulded mark such as >PP-T20< names the plastic first; what follows is filler. */
const withoutFiller = (query: string): string => query.replaceAll(/[-+ ]?[A-Za-z]{1,3}\d+\s*</g, ' ');

export function model(props: PrepProps, job: JobContext) {
  const all = fields(props);
  const finder = props.surface === undefined;
  const local = { ...Object.fromEntries(all.map((field) => [field.name, field.default])), ...job.local };
  const chosen = String(local['surface'] ?? '');
  const surface = props.facts.find(({ id }) => id === chosen) ?? firstOf(props);
  const given = (name: string): number => Number(local[name]);
  const word = (name: string): string => String(local[name]);
  const plan = prepPlan({
    surface,
    tape: word('tape'),
    place: word('place'),
    soil: word('soil') as Soil,
    surfaceC: given('surfaceC'),
    massKg: given('massG') / 1000,
    lengthM: given('lengthMm') / 1000,
    widthMm: given('widthMm'),
    position: word('position') as 'vertical',
    nearPeople: local['people'] === 'yes',
    weakTrial: local['trial'] === 'weak',
  });
  const { flag, flagText, reasons, cautions, steps, source } = planFields(plan);
  const { times, chart } = chartOf(plan);
  const { answerSpoken, ...answer } = answerOf(plan);
  return {
    ...framed(job, {
      flag,
      flagText,
      source,
      spokenName: surface.name,
      spokenValue: `${flagText}. ${answerSpoken}`,
    }),
    ...answer,
    ...finderView(props, local, surface),
    ...jointOf(plan, surface, word('tape')),
    ...growthOf(plan.loadAfterH),
    name: surface.name,
    short: inShort(surface),
    href: `${props.base ?? '/'}surfaces/${surface.id}/`,
    workText: workText(times),
    reasons,
    cautions,
    steps,
    chart,
    area: areaText(plan, job),
    taped: plan.loadAfterH !== null,
    finderFields: finder ? fieldRows(finderFields(props.facts, firstOf(props).id), local, job.units) : [],
    testFields: finder ? fieldRows(testFields(), local, job.units) : [],
    fields: fieldRows(jobFields(props), local, job.units),
  };
}

/** The one big answer: hours until it may be loaded, or that no tape carries it. */
function answerOf(plan: PrepPlan) {
  if (plan.loadAfterH === null || plan.fullStrengthH === null) {
    return {
      answer: '',
      answerUnit: '',
      answerSpoken: 'Fix it mechanically',
      answerWords: 'Fix it mechanically',
      answerSay: 'No tape carries it here. It may be loaded when the fixing is tight.',
    };
  }
  const hours = String(+plan.loadAfterH.toFixed(1));
  const same = plan.fullStrengthH === plan.loadAfterH;
  return {
    answer: hours,
    answerUnit: 'h',
    answerSpoken: `${hours} hours`,
    answerWords: '',
    answerSay: same
      ? 'after pressing, then load it. That is its full strength, near 21 °C.'
      : `after pressing, then load it. Full strength after ${timeWords(plan.fullStrengthH * 60)}, near 21 °C.`,
  };
}

function workText({ handsMin, shortWaitMin, longWaitMin, unknown }: ReturnType<typeof chartOf>['times']): string {
  const parts = [
    `About ${timeWords(handsMin)} of work`,
    ...(shortWaitMin > 0 ? [`${timeWords(shortWaitMin)} of short waits`] : []),
    ...(longWaitMin > 0 ? [`a wait of ${timeWords(longWaitMin)}`] : []),
    ...unknown.map((words) => `a wait ${words}`),
  ];
  return `${parts.length === 1 ? parts[0] : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`} before the load time starts, for about half a metre of strip.`;
}

function areaText(plan: PrepPlan, { units }: JobContext): string {
  const { haveCm2, neededCm2, neededLengthMm } = plan.need;
  if (haveCm2 === undefined || neededCm2 === undefined) return '';
  const wanted =
    neededLengthMm === undefined ? '' : `, which is ${say(neededLengthMm, 'millimetres', units)} of this width`;
  return `Tape: ${say(haveCm2, 'squareCentimetres', units)} there, ${say(neededCm2, 'squareCentimetres', units)} needed for this mass${wanted}.`;
}

/** The list of surfaces that words and tests leave; empty where the page has its own surface. */
function finderView(props: PrepProps, local: Readonly<Record<string, number | string>>, surface: PrepSurface) {
  if (props.surface !== undefined) return { matches: [] as View[], found: '' };
  const listed = props.facts.filter(({ id }) => id !== UNLISTED);
  const words = surfacesByWords({ query: withoutFiller(String(local['query'])), surfaces: listed });
  const bySigns = surfacesBySigns({ signs: signsOf(local) as SignsSeen, surfaces: listed });
  const rank = new Map(bySigns.map(({ id, agrees }) => [id, agrees.length]));
  const ids = words.filter((id) => rank.has(id)).sort((a, b) => rank.get(b)! - rank.get(a)!);
  const shown = ids.slice(0, SHOWN);
  if (props.facts.some(({ id }) => id === UNLISTED)) shown.push(UNLISTED);
  return {
    matches: shown.map((id): View => {
      const each = props.facts.find((one) => one.id === id)!;
      return {
        name: each.name,
        short: each.bond === 'no tape' ? 'Stop. Tape will not hold.' : inShort(each),
        set: `surface:${id}`,
        href: `${props.base ?? '/'}surfaces/${id}/`,
        current: id === surface.id ? 'true' : '',
        ...sectionOf(each),
      };
    }),
    found:
      ids.length === 0
        ? 'Nothing on the list fits. Take the careful way below, or change a word or a test.'
        : ids.length > SHOWN
          ? `${SHOWN} of ${ids.length} that fit. Type a word or do a test; the table at the end has all.`
          : `${ids.length} ${ids.length === 1 ? 'surface fits' : 'surfaces fit'}.`,
  };
}
