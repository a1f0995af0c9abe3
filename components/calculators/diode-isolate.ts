import { isolationDiode } from '../../calc/index.ts';
import { type Calculator, cell, number } from './form.ts';

export const calculator: Calculator = {
  id: 'diode-isolate',
  number: 'C11',
  title: 'Isolation diode',
  lead: 'How warm a diode gets that keeps two circuits apart, and what voltage it takes.',
  fields: () => [
    number(
      'diodeA',
      'Current through one diode',
      'current',
      2.18,
      [0.01, 50, 0.1],
      'Diode current must be 0.01 to 50 A.',
    ),
    number(
      'diodeV',
      'Forward drop',
      'voltage',
      0.45,
      [0.2, 1.2, 0.05],
      'Forward drop must be 0.2 to 1.2 V. About 0.45 Schottky, 0.9 plain silicon at load.',
    ),
    number(
      'heatKPerW',
      'Junction to air',
      'thermal',
      50,
      [1, 150, 1],
      'Thermal resistance must be 1 to 150 K/W. Bare lead-mounted diode: about 50.',
    ),
    number('ambientC', 'Air', 'temperature', 60, [-20, 85, 5], 'Ambient must be -20 to 85 C.'),
    number('junctionC', 'Junction limit', 'temperature', 150, [100, 175, 5], 'Junction limit must be 100 to 175 C.'),
    number(
      'supplyV',
      'Supply voltage',
      'voltage',
      11,
      [9, 32, 0.1],
      'Supply must be 9 to 32 V. Use 12 or 24 for the nominal, or the voltage you measured.',
    ),
  ],
  compute(input, { say }) {
    const [currentA, forwardV, heatKPerW, ambientC, junctionLimitC, supplyV] = [
      input.n('diodeA'),
      input.n('diodeV'),
      input.n('heatKPerW'),
      input.n('ambientC'),
      input.n('junctionC'),
      input.n('supplyV'),
    ];
    const result = isolationDiode({ currentA, forwardV, heatKPerW, ambientC, junctionLimitC, supplyV });
    const passes = result.verdict === 'pass';
    return {
      main: 'junctionC',
      flag: result.verdict,
      flagText: passes ? 'Cool enough' : 'Too hot',
      say: `The limit is ${say(result.limitC, 'temperature')}, 80 % of what its maker allows.`,
      outputs: [
        { key: 'junctionC', label: 'Junction', value: result.junctionC, kind: 'temperature' },
        { key: 'limitC', label: 'Limit', value: result.limitC, kind: 'temperature' },
        { key: 'heatW', label: 'Heat', value: result.heatW, kind: 'power' },
        { key: 'loadV', label: 'Left behind the diode', value: result.loadV, kind: 'voltage' },
      ],
      formula: [
        cell('', 'Tj', say(result.junctionC, 'temperature'), 'calc', 'junction'),
        cell('=', 'Ta', say(ambientC, 'temperature'), 'set', 'air'),
        cell('+', 'P', say(result.heatW, 'power'), 'calc', 'heat'),
        cell('×', 'Rth', say(heatKPerW, 'thermal'), 'set', 'junction to air'),
      ],
      work: [
        `${say(currentA, 'current')} × ${say(forwardV, 'voltage')} = ${say(result.heatW, 'power')}`,
        `${say(supplyV, 'voltage')} − ${say(forwardV, 'voltage')} = ${say(result.loadV, 'voltage')}`,
      ],
      change: passes
        ? []
        : ['Isolate in the coil or signal wire, which carries far less, or fit a diode with a heat sink.'],
    };
  },
  source: '80 % of the junction limit: common practice, no source',
  functions: ['isolationDiode'],
  cautions: ['A diode in the coil or signal wire carries far less than one in the lamp wire: isolate there first.'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { diodeA: 2.18, diodeV: 0.45, heatKPerW: 50, ambientC: 60, junctionC: 150, supplyV: 11 },
    out: { heatW: '0.98', junctionC: '109', limitC: '120', loadV: '10.55' },
  },
};
