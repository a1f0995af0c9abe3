import type { JobContext } from '../context.ts';
import type { LocalField, View } from '../contract.ts';
import { type Framed, framed } from '../instrument.ts';
import { rangeInWords } from '../range.ts';
import { inWords, put, show } from '../show.ts';
import type { UnitChoice } from '../units.ts';
import { type Answer, type Calculator, inputOf, type Output, toolsOf } from './form.ts';

/** A calculator as a component: its fields, and its sum as a view. */
export function calculatorModule(calculator: Calculator): {
  fields: (props: unknown, job: JobContext) => readonly LocalField[];
  model: (props: unknown, job: JobContext) => ReturnType<typeof viewOf>;
} {
  return {
    fields: (_props, job) => calculator.fields(job.shop),
    model: (_props, job) => viewOf(calculator, job),
  };
}

/** Default of every field. */
export const defaultsOf = (fields: readonly LocalField[]): Record<string, number | string> =>
  Object.fromEntries(fields.map((field) => [field.name, field.default]));

export function viewOf(calculator: Calculator, job: JobContext) {
  const fields = calculator.fields(job.shop);
  const entries = { ...defaultsOf(fields), ...job.local };
  const input = inputOf(entries);
  const answer = calculator.compute(input, toolsOf(job.shop, job.units));
  const main = answer.outputs.find(({ key }) => key === answer.main)!;
  const shown = shownOf(main, job.units);
  const isWords = typeof main.value === 'string';
  const frame: Framed = framed(job, {
    flag: answer.flag,
    flagText: answer.flagText,
    source: calculator.source,
    spokenName: main.label,
    spokenValue: isWords ? shown.text : `${shown.text} ${shown.spoken}`.trim(),
  });
  return {
    ...frame,
    ...put('answer', isWords ? { text: '', unit: '', spoken: '' } : shown),
    answerWords: isWords ? shown.text : '',
    answerLabel: main.label,
    answerSay: answer.say,
    reasons: (answer.reasons ?? []).map((text) => ({ text })),
    change: (answer.change ?? []).map((text) => ({ text })),
    hasChange: (answer.change ?? []).length > 0,
    outputs: answer.outputs.filter((output) => output !== main).map((output) => rowOf(output, job.units)),
    cells: cellsOf(answer),
    lines: answer.work.map((text) => ({ text })),
    fields: fieldRows(fields, entries, job.units),
    ...(calculator.picture === undefined ? {} : calculator.picture.view(input, job)),
  };
}

const shownOf = (output: Output, units: UnitChoice) =>
  typeof output.value === 'string'
    ? { text: output.value, unit: '', spoken: '' }
    : show(output.value, output.kind ?? 'ratio', units);

function rowOf(output: Output, units: UnitChoice) {
  const { text, unit, spoken } = shownOf(output, units);
  return {
    label: output.label,
    text,
    unit,
    spoken,
    state: output.state ?? '',
  };
}

const cellsOf = (answer: Answer) =>
  answer.formula.map(({ sign, symbol, value, of, meaning }) => ({ sign, symbol, value, kind: of, meaning }));

/** What stands beside each field. */
export const fieldRows = (
  fields: readonly LocalField[],
  entries: Readonly<Record<string, number | string>>,
  units: UnitChoice,
): View[] => fields.map((field) => fieldRow(field, entries[field.name]!, units));

/** What stands beside one field: unit, range and default in the reader's units, and whether he changed it. */
function fieldRow(field: LocalField, value: number | string, units: UnitChoice): View {
  const changed = value !== field.default;
  if (field.options !== undefined || typeof field.default === 'string') {
    const option = field.options?.find((each) => each.value === String(field.default));
    return { unit: '', unitSpoken: '', takes: '', default: option?.label ?? 'the example', changed };
  }
  const { kind, min, max, step } = field;
  const shown = show(field.default, kind, units, step);
  return {
    unit: shown.unit,
    unitSpoken: shown.spoken,
    takes: min === undefined || max === undefined ? '' : `Takes ${rangeInWords({ kind, min, max, step }, units)}.`,
    default: inWords(shown),
    changed,
  };
}
