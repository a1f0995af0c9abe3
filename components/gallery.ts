import type { Circuit } from '../calc/index.ts';
import { drawingOf } from './circuit-diagram/drawing.ts';
import { planOf } from './circuit-diagram/plan.ts';
import { defaultsOf, type JobContext, SHOP_DEFAULTS } from './context.ts';
import type { ComponentName } from './names.ts';
import { studyOf } from './study.ts';
import { DEFAULT_UNITS, type UnitChoice } from './units.ts';

/**
 * Every component in every state it can be in, as plain data: the gallery page shows them, the tests run their models.
 * A state that nobody can look at is a state that nobody has looked at.
 */
export interface Case {
  id: string;
  title: string;
  component: ComponentName | 'JobValueRow' | 'Calculator';
  props: Readonly<Record<string, unknown>>;
  /** The page's state; absent where the component has no model. */
  job?: JobContext;
  /** Text between the tags, or what stands there. */
  children?: string;
  inside?: readonly Case[];
}

/** What a workshop's content has, so that a case asks for nothing that is not there. */
export interface Stock {
  surfaces: readonly string[];
  lessons: readonly string[];
  terms: readonly string[];
  pictures: readonly string[];
}
const NOTHING: Stock = { surfaces: [], lessons: [], terms: [], pictures: [] };

/** A switch, a fuse, a lamp: enough for every number there is. */
export const GALLERY_CIRCUIT: Circuit = {
  id: 'gallery',
  title: 'Lamp behind a switch',
  systemV: 12,
  supply: { restingV: 'restingV', chargingV: 14.4, lowestV: 11, sourceOhm: 0.02 },
  values: {
    restingV: { label: 'Battery at rest', quantity: 'voltage', default: 12.6, min: 11.5, max: 13.2, step: 0.1 },
    feedRunM: {
      label: 'Fuse to switch',
      quantity: 'length',
      default: 4,
      min: 0.5,
      max: 40,
      step: 0.1,
      measure: 'Lay a string along the route from the fuse holder to the switch.',
    },
    airC: { label: 'Air at the loom', quantity: 'temperature', default: 30, min: 5, max: 85, step: 5 },
  },
  inputs: { master: { label: 'Master switch', kind: 'switch' } },
  parts: {
    BAT: { kind: 'battery' },
    F1: { kind: 'fuse', form: 'C', ratingA: 'auto' },
    F2: { kind: 'fuse', form: 'C', ratingA: 30 },
    SW1: { kind: 'switch', input: 'master' },
    L1: {
      kind: 'lamp',
      label: 'Work lamp',
      model: 'constant-power',
      ratedV: 12,
      powerW: 24,
      inrushA: 12,
      inrushMs: 5,
      pigtail: { areaMm2: 0.5, lengthM: 0.3 },
    },
    L2: { kind: 'lamp', label: 'Marker lamp', model: 'resistive', ratedV: 12, powerW: 5 },
    G1: { kind: 'chassis' },
  },
  wires: {
    W1: { from: 'BAT.+', to: 'F1.1', lengthM: 0.2, areaMm2: 4 },
    W2: { from: 'F1.2', to: 'SW1.1', lengthM: 'feedRunM', areaMm2: 'auto', ambientC: 'airC' },
    W3: { from: 'SW1.2', to: 'L1.+', lengthM: 1, areaMm2: 'auto' },
    W4: { from: 'L1.-', to: 'G1', lengthM: 0.5, areaMm2: 'auto' },
    W5: { from: 'BAT.+', to: 'F2.1', lengthM: 0.2, areaMm2: 4 },
    W6: { from: 'F2.2', to: 'L2.+', lengthM: 3, areaMm2: 0.75 },
    W7: { from: 'L2.-', to: 'G1', lengthM: 0.5, areaMm2: 'auto' },
  },
  intent: { says: 'Master on, lamp on.', loads: { L1: { when: 'master' }, L2: { when: 'always' } } },
  signOffs: [],
};

const IMPERIAL: UnitChoice = { length: 'ft', wire: 'awg', temperature: 'F', torque: 'lbfin' };
const FREE: JobContext = {
  circuit: null,
  values: {},
  shop: SHOP_DEFAULTS,
  units: DEFAULT_UNITS,
  study: null,
  local: {},
  refused: {},
  chosen: {},
};

/** The gallery's circuit worked out for other values, other units, or with an entry refused. */
function job(
  changes: { values?: Record<string, number>; units?: UnitChoice; refused?: Record<string, string> } = {},
): JobContext {
  const values = { ...defaultsOf(GALLERY_CIRCUIT), ...changes.values };
  return {
    ...FREE,
    circuit: GALLERY_CIRCUIT,
    values,
    study: studyOf({ circuit: GALLERY_CIRCUIT, shop: SHOP_DEFAULTS }, values),
    units: changes.units ?? DEFAULT_UNITS,
    refused: changes.refused ?? {},
  };
}

const REFUSED = { feedRunM: 'Fuse to switch must be 0.5 to 40.0 m. Still using 4.0 m.' };

const fuse = (id: string, title: string, props: Case['props'], context: JobContext = FREE): Case => ({
  id: `fuse-${id}`,
  title: `Fuse sizer: ${title}`,
  component: 'FuseSizer',
  props,
  job: context,
});
const wire = (id: string, title: string, props: Case['props'], context: JobContext = FREE): Case => ({
  id: `wire-${id}`,
  title: `Gauge chooser: ${title}`,
  component: 'GaugeChooser',
  props,
  job: context,
});
const value = (id: string, title: string, of: string, context: JobContext): Case => ({
  id: `value-${id}`,
  title: `Value: ${title}`,
  component: 'Value',
  props: { of },
  job: context,
});

const LONG =
  'A caution that runs long, because the place is awkward: behind the trim of the left rear post run the curtain bag, its lead and a drain hose, and none of the three may be pierced, pulled or pinched.';

/** The gallery's circuit changed by hand: what a drawing must show when something is wrong. */
const changed = (id: string, change: (circuit: Circuit) => Circuit): Circuit => ({ ...change(GALLERY_CIRCUIT), id });
const RATTLE = changed('gallery-rattle', (circuit) => ({
  ...circuit,
  title: 'A relay that switches its own coil off',
  parts: {
    BAT: { kind: 'battery' },
    F1: { kind: 'fuse', form: 'C', ratingA: 5 },
    SW1: { kind: 'switch', input: 'master' },
    K1: { kind: 'relay', form: 'changeover', coilOhm: 90, maxA: { make: 20, break: 10 }, suppression: 'diode' },
    L2: { kind: 'lamp', label: 'Marker lamp', model: 'resistive', ratedV: 12, powerW: 5 },
    G1: { kind: 'chassis' },
  },
  wires: {
    W1: { from: 'BAT.+', to: 'F1.1', lengthM: 0.2, areaMm2: 1.5 },
    W2: { from: 'F1.2', to: 'SW1.1', lengthM: 2, areaMm2: 1.5 },
    W3: { from: 'SW1.2', to: 'K1.30', lengthM: 0.3, areaMm2: 1.5 },
    W4: { from: 'K1.87a', to: 'K1.86', lengthM: 0.1, areaMm2: 1 },
    W5: { from: 'K1.85', to: 'G1', lengthM: 0.4, areaMm2: 1 },
    W6: { from: 'K1.87', to: 'L2.+', lengthM: 1, areaMm2: 1 },
    W7: { from: 'L2.-', to: 'G1', lengthM: 0.5, areaMm2: 1 },
  },
  intent: { says: 'Master on, lamp on.', loads: { L2: { when: 'master' } } },
}));
const LORRY = changed('gallery-24', (circuit) => ({
  ...circuit,
  systemV: 24,
  supply: { restingV: 25.2, chargingV: 28.8, lowestV: 22, sourceOhm: 0.02 },
  parts: {
    ...circuit.parts,
    L1: { kind: 'lamp', label: 'Work lamp', model: 'constant-power', ratedV: 24, powerW: 48 },
    L2: { kind: 'lamp', label: 'Marker lamp', model: 'resistive', ratedV: 24, powerW: 5 },
  },
}));
/** Six lamps in a ladder: wider than any phone. */
const WIDE = changed('gallery-wide', (circuit) => {
  const lamps = Array.from({ length: 6 }, (_, n) => n + 1);
  return {
    ...circuit,
    parts: {
      BAT: { kind: 'battery' },
      F1: { kind: 'fuse', form: 'C', ratingA: 10 },
      SW1: { kind: 'switch', input: 'master' },
      S1: { kind: 'splice' },
      S2: { kind: 'splice' },
      G1: { kind: 'chassis' },
      ...Object.fromEntries(
        lamps.map((n) => [`L${n}`, { kind: 'lamp', label: `Lamp ${n}`, model: 'resistive', ratedV: 12, powerW: 10 }]),
      ),
    } as Circuit['parts'],
    wires: {
      W1: { from: 'BAT.+', to: 'F1.1', lengthM: 0.2, areaMm2: 2.5 },
      W2: { from: 'F1.2', to: 'SW1.1', lengthM: 2, areaMm2: 2.5 },
      W3: { from: 'SW1.2', to: 'S1', lengthM: 1, areaMm2: 2.5 },
      ...Object.fromEntries(
        lamps.flatMap((n) => [
          [`W${n * 2 + 2}`, { from: 'S1', to: `L${n}.+`, lengthM: n, areaMm2: 1 }],
          [`W${n * 2 + 3}`, { from: `L${n}.-`, to: 'S2', lengthM: n, areaMm2: 1 }],
        ]),
      ),
      W20: { from: 'S2', to: 'G1', lengthM: 0.5, areaMm2: 2.5 },
    },
    intent: {
      says: 'Master on, all lamps on.',
      loads: Object.fromEntries(lamps.map((n) => [`L${n}`, { when: 'master' }])),
    },
  };
});
/** Six inputs, so that the truth table is long. */
const LONG_TABLE = changed('gallery-long', (circuit) => ({
  ...circuit,
  inputs: Object.fromEntries(
    ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => [id, { label: `Door ${id.toUpperCase()}`, kind: 'door' as const }]),
  ),
  parts: {
    BAT: { kind: 'battery' },
    F1: { kind: 'fuse', form: 'C', ratingA: 5 },
    L2: { kind: 'lamp', label: 'Marker lamp', model: 'resistive', ratedV: 12, powerW: 5 },
    S1: { kind: 'splice' },
    ...Object.fromEntries(['a', 'b', 'c', 'd', 'e', 'f'].map((id) => [`D${id}`, { kind: 'sink', input: id }])),
  } as Circuit['parts'],
  wires: {
    W1: { from: 'BAT.+', to: 'F1.1', lengthM: 0.2, areaMm2: 1 },
    W2: { from: 'F1.2', to: 'L2.+', lengthM: 2, areaMm2: 1 },
    W3: { from: 'L2.-', to: 'S1', lengthM: 1, areaMm2: 1 },
    ...Object.fromEntries(
      ['a', 'b', 'c', 'd', 'e', 'f'].map((id, n) => [
        `W${n + 4}`,
        { from: 'S1', to: `D${id}`, lengthM: 2, areaMm2: 0.75 },
      ]),
    ),
  },
  intent: { says: 'Any door, lamp on.', loads: { L2: { when: 'a or b or c or d or e or f' } } },
}));

/** One of these circuits worked out, with what is chosen on the page. */
function jobOn(circuit: Circuit, chosen: Record<string, string> = {}): JobContext {
  const values = defaultsOf(circuit);
  return { ...FREE, circuit, values, study: studyOf({ circuit, shop: SHOP_DEFAULTS }, values), chosen };
}
const drawn = (
  id: string,
  title: string,
  context: JobContext,
  component: Case['component'] = 'CircuitDiagram',
): Case => ({
  id: `circuit-${id}`,
  title: `${component === 'CircuitDiagram' ? 'Circuit' : component === 'TruthTable' ? 'Truth table' : 'Relay'}: ${title}`,
  component,
  props:
    component === 'RelayDiagram'
      ? { of: 'K1' }
      : component === 'CircuitDiagram'
        ? { plan: planOf(drawingOf(context.circuit!)) }
        : {},
  job: context,
});

/** An entry of the reader's, or one that was refused. */
type Typed = Pick<JobContext, 'local'> & Partial<Pick<JobContext, 'refused'>>;
const tried = (component: 'PadHeat' | 'PadLay' | 'WettingDrop', id: string, title: string, typed: Typed): Case => ({
  id,
  title: `Try it: ${title}`,
  component,
  props: {},
  job: { ...FREE, ...typed },
});
const prepared = (surface: string, title: string, typed: Typed): Case => ({
  id: `prep-${surface}`,
  title: `Preparation: ${title}`,
  component: 'PrepSelector',
  props: { surface },
  job: { ...FREE, ...typed },
});
const check = (id: string, children: string, props: Case['props'] = {}): Case => ({
  id: `check-${id}`,
  title: '',
  component: 'Check',
  props: { id, ...props },
  children,
});
const step = (id: string, children: string): Case => ({
  id: `step-${id}`,
  title: '',
  component: 'Step',
  props: { id },
  children,
});

/** A hold point, with a check to tick and one to read. */
const hold = (id: string, title: string): Case => ({
  id: `hold-${id}`,
  title: `Hold point: ${title}`,
  component: 'Hold',
  props: { id, point: 'H2', title: 'Circuit proven, truth table agreed' },
  inside: [
    check('agreed', 'The customer has read the truth table and agreed every row'),
    check('standby', 'Sleep current before the work, flat for ten minutes', { reads: 'current', unit: 'mA' }),
  ],
});
/** Hold points as a job shows them; the page's script puts each into its state. */
export const HOLDS_IN_A_JOB: readonly Case[] = [
  hold('begun', 'open, in a job'),
  hold('closed', 'closed'),
  hold('moved', 'a value moved after signing'),
  hold('passed', 'passed without its checks'),
  hold('again', 'opened again'),
];

/** Cases that show what the workshop's own content holds. */
const ofStock = ({ surfaces, lessons, terms, pictures }: Stock): Case[] => [
  ...[
    prepared('clear-coat', 'default', { local: {} }),
    prepared('abs', 'cold, heavy and overhead', { local: { surfaceC: 5, massG: 3000, position: 'overhead' } }),
    prepared('natural-rubber', 'tape will not hold', { local: {} }),
    prepared('glass', 'an entry refused', {
      local: {},
      refused: { surfaceC: 'Surface temperature must be −20 to 80 °C. Still using 20 °C.' },
    }),
    prepared('unlisted', 'a surface that is not in the list, at the limits', {
      local: { surfaceC: -20, massG: 100_000, lengthMm: 10, widthMm: 1 },
    }),
  ].filter(({ props }) => surfaces.includes(String(props['surface']))),
  ...surfaces.slice(0, 1).map(
    (surface): Case => ({
      id: 'prep-steps',
      title: 'Preparation in a step',
      component: 'PrepSteps',
      props: { surface, tape: 'acrylic-foam', place: 'load space' },
    }),
  ),
  ...lessons.slice(0, 1).map(
    (of): Case => ({
      id: 'lesson-link',
      title: 'Lesson asked for',
      component: 'LessonLink',
      props: { of },
    }),
  ),
  ...terms.slice(0, 1).map((of): Case => ({ id: 'term', title: 'Term', component: 'Term', props: { of } })),
  ...pictures.slice(0, 1).flatMap((picture): Case[] => [
    {
      id: 'figure',
      title: 'Figure',
      component: 'Figure',
      props: { src: `../images/${picture}`, alt: 'A picture of this workshop.' },
    },
    {
      id: 'figure-caption',
      title: 'Figure: long caption',
      component: 'Figure',
      props: { src: `../images/${picture}`, alt: 'A picture of this workshop.' },
      children: LONG,
    },
  ]),
];

/** Built when asked for: the circuit is worked out for each state. */
export const galleryCases = (stock: Stock = NOTHING): Case[] => [
  ...ofStock(stock),
  { ...hold('blank', 'before a job'), id: 'hold' },
  ...HOLDS_IN_A_JOB,
  {
    id: 'steps',
    title: 'Steps: short and long',
    component: 'Steps',
    props: {},
    inside: [step('short', 'Tug each terminal once.'), step('long', LONG)],
  },
  tried('WettingDrop', 'drop', 'default drop', { local: {} }),
  tried('WettingDrop', 'drop-flat', 'a drop that spreads', { local: { energy: 80, polarPercent: 60 } }),
  tried('WettingDrop', 'drop-refused', 'an entry refused', {
    local: {},
    refused: { energy: 'Surface energy must be 10 to 80 mJ/m². Still using 30.' },
  }),
  tried('PadHeat', 'heat', 'default heat', { local: {} }),
  tried('PadHeat', 'heat-cold', 'cold joint', { local: { timeS: 0.5 } }),
  tried('PadHeat', 'heat-stop', 'pad lifts', { local: { tipC: 450, timeS: 10 } }),
  tried('PadLay', 'lay', 'default wire on a pad', { local: {} }),
  tried('PadLay', 'lay-stop', 'too near the next pad', { local: { offsetMm: 2 } }),
  tried('PadLay', 'lay-limit', 'largest bare end', { local: { stripMm: 12 } }),
  fuse('default', 'of the circuit', { of: 'F1' }, job()),
  fuse('free', 'from its own numbers', { currentA: 8, inrushA: 20, inrushMs: 10, thinnestMm2: 1.5 }),
  fuse('inrush', 'inrush decides', { currentA: 2.18, inrushA: 12, inrushMs: 5, thinnestMm2: 0.5 }),
  fuse('unchecked', 'inrush not known', { currentA: 3, thinnestMm2: 1 }),
  fuse('warn', 'inrush longer than the form holds', { currentA: 10, inrushA: 40, inrushMs: 79, thinnestMm2: 2.5 }),
  fuse('stop', 'no fuse does both', { currentA: 2.18, inrushA: 20, inrushMs: 5, thinnestMm2: 0.5 }),
  fuse('too-large', 'more than any stocked rating', { currentA: 140, thinnestMm2: 50 }),
  fuse('fixed-bad', 'the rating written in the circuit is wrong', { of: 'F2' }, job()),
  fuse('held', 'stands on the last good entry', { of: 'F1' }, job({ refused: REFUSED })),
  fuse('unknown', 'not worked out', { of: 'F1' }, { ...job(), study: null }),
  fuse('small', 'smallest rating', { currentA: 0.05, thinnestMm2: 0.5 }),
  fuse('large', 'largest rating', { currentA: 118, thinnestMm2: 50 }),
  wire('default', 'of the circuit', { of: 'W2' }, job()),
  wire('changed', 'after a longer run', { of: 'W2' }, job({ values: { feedRunM: 22 } })),
  wire('fuse-decides', 'the fuse decides', { currentA: 5, lengthM: 1, fuseA: 30 }),
  wire('heat-decides', 'the current decides', { currentA: 18, lengthM: 0.5, ambientC: 70, bundled: 6 }),
  wire('stop', 'no size serves', { currentA: 110, lengthM: 60 }),
  wire('fixed', 'size written in the circuit', { of: 'W6' }, job()),
  wire('imperial', 'in AWG and feet', { of: 'W2' }, job({ units: IMPERIAL })),
  wire('held', 'stands on the last good entry', { of: 'W2' }, job({ refused: REFUSED })),
  wire('unknown', 'not worked out', { of: 'W2' }, { ...job(), study: null }),
  wire('short', 'very short run', { currentA: 0.1, lengthM: 0.1 }),
  value('set', 'a job value', 'feedRunM', job()),
  value('set-wire', 'a wire length that follows one', 'W2.lengthM', job({ values: { feedRunM: 12.5 } })),
  value('calc', 'worked out', 'F1.ratingA', job()),
  value('imperial', 'in other units', 'W2.areaMm2', job({ units: IMPERIAL })),
  value('unknown', 'not known', 'F1.currentA', { ...job(), study: null }),
  drawn('sound', 'sound', jobOn(GALLERY_CIRCUIT)),
  drawn('chosen', 'a part chosen', jobOn(GALLERY_CIRCUIT, { part: 'F1' })),
  drawn('fault', 'a fuse blown by a short', jobOn(GALLERY_CIRCUIT, { on: 'master', fault: 'short:W3:L1.+' })),
  drawn('hot', 'a wire that no fuse protects', jobOn(GALLERY_CIRCUIT, { on: 'master', fault: 'short:W1:F1.1' })),
  drawn('hidden', 'a fault to be found', jobOn(GALLERY_CIRCUIT, { on: 'master', hidden: 'open:W2' })),
  drawn('rattle', 'does not settle', jobOn(RATTLE, { on: 'master' })),
  drawn('24', '24 V', jobOn(LORRY)),
  drawn('wide', 'wider than a phone', jobOn(WIDE)),
  drawn('unknown', 'not worked out', { ...jobOn(GALLERY_CIRCUIT), study: null }),
  drawn('relay-rattle', 'does not settle', jobOn(RATTLE, { on: 'master' }), 'RelayDiagram'),
  drawn('relay-rest', 'at rest', jobOn(RATTLE, { on: '-' }), 'RelayDiagram'),
  drawn('relay-hidden', 'a fault to be found', jobOn(RATTLE, { on: '-', hidden: 'open:W2' }), 'RelayDiagram'),
  drawn('table-rattle', 'does not settle', jobOn(RATTLE), 'TruthTable'),
  drawn('table-long', 'six inputs', jobOn(LONG_TABLE), 'TruthTable'),
  {
    id: 'job-value',
    title: 'Job value: default',
    component: 'JobValueRow',
    props: { name: 'feedRunM', prefix: 'g1' },
    job: job(),
  },
  {
    id: 'job-value-changed',
    title: 'Job value: changed',
    component: 'JobValueRow',
    props: { name: 'feedRunM', prefix: 'g2' },
    job: job({ values: { feedRunM: 12.5 } }),
  },
  {
    id: 'job-value-bad',
    title: 'Job value: entry refused',
    component: 'JobValueRow',
    props: { name: 'feedRunM', prefix: 'g3' },
    job: job({ refused: REFUSED }),
  },
  {
    id: 'job-value-imperial',
    title: 'Job value: in feet',
    component: 'JobValueRow',
    props: { name: 'feedRunM', prefix: 'g4' },
    job: job({ units: IMPERIAL }),
  },
  {
    id: 'caution-stop',
    title: 'Caution: stop',
    component: 'Caution',
    props: { severity: 'stop', defer: "Vehicle maker's instructions" },
    children: 'Curtain airbag behind this trim. Do not drill.',
  },
  {
    id: 'caution-warn',
    title: 'Caution: check first',
    component: 'Caution',
    props: { severity: 'warn' },
    children: LONG,
  },
  {
    id: 'caution-note',
    title: 'Caution: note',
    component: 'Caution',
    props: { severity: 'note' },
    children: 'The van sleeps after twenty minutes.',
  },
  { id: 'note', title: 'Note', component: 'Note', props: {}, children: 'The pigtail is often the thinnest wire.' },
  {
    id: 'calculator',
    title: 'Calculator',
    component: 'Calculator',
    props: { id: 'relay-choose', prefix: 'g1-' },
    job: FREE,
  },
  {
    id: 'calculator-refused',
    title: 'Calculator: an entry refused',
    component: 'Calculator',
    props: { id: 'load-current', prefix: 'g2-' },
    job: {
      ...FREE,
      local: { powerW: 60 },
      refused: { minV: 'Lowest voltage must be 9 to 30 V and below the highest. Still using 11.0 V.' },
    },
  },
  {
    id: 'calculator-stop',
    title: 'Calculator: no answer',
    component: 'Calculator',
    props: { id: 'fuse-size', prefix: 'g3-' },
    job: { ...FREE, local: { peakA: 20 } },
  },
  {
    id: 'calculator-words',
    title: 'Calculator: a word for an answer',
    component: 'Calculator',
    props: { id: 'coil-clamp', prefix: 'g4-' },
    job: { ...FREE, local: { clamp: 'none' } },
  },
];
