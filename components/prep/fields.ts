import { PLACES, SIGNS, type Sign, SOILS, TAPES } from '../../calc/index.ts';
import { choice, number } from '../calculators/form.ts';
import type { LocalField } from '../contract.ts';
import type { PrepSurface } from './facts.ts';
import type { PrepProps } from './model.ts';

/** What each simple test is called, and how it is done without a laboratory or a flame. */
const TESTS: Record<Sign, { label: string; help: string }> = {
  magnet: { label: 'Magnet', help: 'A fridge magnet on the bare spot.' },
  water: { label: 'Drop of water', help: 'One drop on the clean surface.' },
  fingernail: { label: 'Fingernail', help: 'Press and draw, where it does not show.' },
  tap: { label: 'Tap', help: 'Knock with a knuckle.' },
  float: { label: 'Float', help: 'A loose shaving or spare clip in water.' },
};
const NOT_DONE = 'not done';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const SOIL_WORDS: Record<(typeof SOILS)[number], string> = {
  light: 'Everyday dust and fingers',
  oil: 'Oil or grease',
  wax: 'Wax or polish',
  oxide: 'Rust, white rust or chalk',
  none: 'Clean',
};

const named = (
  name: string,
  label: string,
  fallback: string,
  rows: readonly { value: string; label: string }[],
  error: string,
): LocalField => ({
  name,
  label,
  kind: 'ratio',
  default: fallback,
  options: rows,
  error,
});

/** Longest search that makes sense. */
const LONGEST = 60;

/** How a surface is found: by words, or from the whole list. */
export function finderFields(facts: readonly PrepSurface[], surface: string): LocalField[] {
  return [
    {
      name: 'query',
      label: 'What people call it, or the letters moulded on its back',
      kind: 'ratio',
      default: '',
      read: (text) => (text.length > LONGEST ? `A few words are enough: at most ${LONGEST} letters.` : undefined),
      error: 'Type a few words.',
    },
    named(
      'surface',
      'Or pick it from the whole list',
      surface,
      facts.map(({ id, name }) => ({ value: id, label: name })),
      'Choose a surface of the list.',
    ),
  ];
}

/** What the simple tests say. */
export const testFields = (): LocalField[] =>
  (Object.keys(SIGNS) as Sign[]).map((sign) => ({
    ...choice(
      sign,
      TESTS[sign].label,
      NOT_DONE,
      [NOT_DONE, ...SIGNS[sign]],
      'Choose what the test said, or "not done".',
    ),
    help: TESTS[sign].help,
  }));

/** What is stuck, where, and how things stand now. */
export function jobFields(props: PrepProps): LocalField[] {
  return [
    number(
      'surfaceC',
      'Surface now',
      'temperature',
      props.surfaceC ?? 20,
      [-20, 80, 1],
      'Surface temperature must be −20 to 80 °C. Measure the panel, not the air.',
    ),
    named(
      'place',
      'Where it sits',
      props.place ?? 'load space',
      PLACES.map(({ id, name }) => ({ value: id, label: capital(name) })),
      'Choose where it sits.',
    ),
    named(
      'tape',
      'Tape',
      props.tape ?? 'acrylic-foam',
      TAPES.map(({ id, name }) => ({ value: id, label: capital(name) })),
      'Choose a class of tape.',
    ),
    choice(
      'position',
      'Position',
      props.position ?? 'vertical',
      ['vertical', 'overhead', 'level'],
      'Choose a position.',
    ),
    named(
      'soil',
      'On it now',
      'light',
      SOILS.map((soil) => ({ value: soil, label: SOIL_WORDS[soil] })),
      'Choose what is on it now.',
    ),
    number(
      'massG',
      'What hangs on it',
      'grams',
      (props.massKg ?? 0.2) * 1000,
      [1, 100000, 10],
      'Mass must be 1 g to 100 kg, part and wire together.',
    ),
    number(
      'lengthMm',
      'Tape length',
      'millimetres',
      (props.lengthM ?? 0.5) * 1000,
      [10, 50000, 10],
      'Tape length must be 10 to 50000 mm.',
    ),
    number('widthMm', 'Tape width', 'millimetres', props.widthMm ?? 20, [1, 500, 1], 'Tape width must be 1 to 500 mm.'),
    choice('people', 'People sit or walk where it could fall', 'no', ['no', 'yes'], 'Choose yes or no.'),
    choice('trial', 'A trial on this surface', 'not done', ['not done', 'weak'], 'Choose what the trial said.'),
  ];
}

/** What the tests said, as the search reads it. */
export const signsOf = (local: Readonly<Record<string, number | string>>) =>
  Object.fromEntries(
    (Object.keys(SIGNS) as Sign[]).map((sign) => [sign, local[sign] === NOT_DONE ? null : (local[sign] ?? null)]),
  );
