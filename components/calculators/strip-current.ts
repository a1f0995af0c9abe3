import { stripCurrent } from '../../calc/index.ts';
import { type Calculator, cell, figure, number, numberChoice } from './form.ts';

const between = (name: string, low: number, high: number) => (all: Readonly<Record<string, number | string>>) =>
  Number(all[name]) >= low * Number(all['labelV']) - 1e-9 && Number(all[name]) <= high * Number(all['labelV']) + 1e-9;

export const calculator: Calculator = {
  id: 'strip-current',
  number: 'C02',
  title: 'Resistor LED strip, real current',
  lead: 'What a strip really draws in a vehicle, which is more than its label says.',
  fields: () => [
    number(
      'labelAPerM',
      'Label current per metre at label voltage',
      'currentPerMetre',
      0.4,
      [0.02, 3, 0.05],
      'Label current must be 0.02 to 3 A/m. If the reel gives W/m, divide by the label voltage.',
    ),
    number(
      'lengthM',
      'Strip length',
      'length',
      5,
      [0.02, 50, 0.1],
      'Length must be 0.02 to 50 m. Type metres, not millimetres.',
    ),
    numberChoice('labelV', 'Label voltage', 'voltage', 12, [12, 24], 'V', 'Label voltage must be 12 or 24 V.'),
    number(
      'stringV',
      'Total LED drop in one group',
      'voltage',
      9.2,
      [7.2, 21.6, 0.1],
      'Group drop must be 60 to 90 % of the label voltage. Three white LEDs in series: 9.0 to 9.3 V.',
      between('stringV', 0.6, 0.9),
    ),
    number(
      'systemV',
      'Highest system voltage',
      'voltage',
      14.4,
      [12, 30, 0.1],
      'System voltage must be from the label voltage to 1.25 times it: 14.4 for a 12 V strip, 28.8 for a 24 V strip.',
      between('systemV', 1, 1.25),
    ),
  ],
  compute(input, { say }) {
    const [labelAPerM, lengthM, labelV, stringV, systemV] = [
      input.n('labelAPerM'),
      input.n('lengthM'),
      input.n('labelV'),
      input.n('stringV'),
      input.n('systemV'),
    ];
    const result = stripCurrent({ labelAPerM, lengthM, labelV, stringV, systemV });
    return {
      main: 'realA',
      flag: result.runsHot ? 'warn' : 'pass',
      flagText: result.runsHot ? 'Runs hot: profile or regulator' : 'Close to its label',
      say: result.runsHot
        ? `It takes ${figure(result.powerRatio)} times its label power. It needs a metal profile or a regulator.`
        : `It takes ${figure(result.powerRatio)} times its label power.`,
      outputs: [
        { key: 'realA', label: 'Real current', value: result.realA, kind: 'current' },
        { key: 'realW', label: 'Real power', value: result.realW, kind: 'power' },
        { key: 'labelA', label: 'Label current', value: result.labelA, kind: 'current' },
        { key: 'labelW', label: 'Label power', value: result.labelW, kind: 'power' },
        { key: 'factor', label: 'Current factor', value: result.factor, kind: 'ratio' },
        { key: 'powerRatio', label: 'Power ratio', value: result.powerRatio, kind: 'ratio' },
      ],
      formula: [
        cell('', 'I', say(result.realA, 'current'), 'calc', 'real current'),
        cell('=', 'i', say(labelAPerM, 'currentPerMetre'), 'set', 'label current per metre'),
        cell('×', 'L', say(lengthM, 'length'), 'set', 'length'),
        cell('×', 'k', figure(result.factor), 'calc', 'factor for the higher voltage'),
      ],
      work: [
        `k = (${say(systemV, 'voltage')} − ${say(stringV, 'voltage')}) ÷ (${say(labelV, 'voltage')} − ${say(stringV, 'voltage')}) = ${figure(result.factor)}`,
        `${say(result.realA, 'current')} × ${say(systemV, 'voltage')} = ${say(result.realW, 'power')}`,
      ],
    };
  },
  source: "Series LEDs plus one resistor, Ohm's law; group drop 9.0 to 9.3 V: common practice, no source",
  functions: ['stripCurrent'],
  cautions: ['Measure one metre on the bench to confirm.'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { labelAPerM: 0.4, lengthM: 5, labelV: 12, stringV: 9.2, systemV: 14.4 },
    out: { factor: '1.857', labelA: '2.0', labelW: '24.0', realA: '3.71', realW: '53.5', powerRatio: '2.23' },
  },
};
