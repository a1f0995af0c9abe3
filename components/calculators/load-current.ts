import { LOAD_MODELS, loadCurrent } from '../../calc/index.ts';
import { type Calculator, cell, choice, number } from './form.ts';

export const calculator: Calculator = {
  id: 'load-current',
  number: 'C01',
  title: 'Load current',
  lead: 'How many amps a load draws, and which of them the fuse and the wire must carry.',
  fields: () => [
    number(
      'powerW',
      'Total power of the loads',
      'power',
      24,
      [0.1, 3000, 1],
      'Power must be 0.1 to 3000 W. Add up the lamp labels; do not type amps here.',
    ),
    number(
      'ratedV',
      'Voltage the label power is for',
      'voltage',
      12,
      [6, 32, 0.1],
      'Rated voltage must be 6 to 32 V. Read it next to the watts on the label.',
    ),
    choice(
      'model',
      'How the load behaves',
      'constant power',
      LOAD_MODELS,
      'Choose a load type: electronic lamp or charger = constant power; plain heater or filament = resistive; regulated driver = constant current.',
    ),
    number(
      'minV',
      'Lowest voltage at the load',
      'voltage',
      11,
      [9, 30, 0.1],
      'Lowest voltage must be 9 to 30 V and below the highest.',
      (all) => Number(all['minV']) < Number(all['maxV']),
    ),
    number(
      'maxV',
      'Highest voltage at the load',
      'voltage',
      14.4,
      [12, 32, 0.1],
      'Highest voltage must be 12 to 32 V and above the lowest.',
      (all) => Number(all['minV']) < Number(all['maxV']),
    ),
    number(
      'dutyPercent',
      'Share of time on',
      'percent',
      100,
      [1, 100, 1],
      'Share of time on must be 1 to 100 %. A steady lamp is 100; a flashing beacon is often 10 to 50.',
    ),
  ],
  compute(input, { say }) {
    const [powerW, ratedV, minV, maxV] = [input.n('powerW'), input.n('ratedV'), input.n('minV'), input.n('maxV')];
    const model = LOAD_MODELS.find((each) => each === input.s('model'))!;
    const result = loadCurrent({ powerW, ratedV, model, minV, maxV, dutyFraction: input.n('dutyPercent') / 100 });
    const at = result.designA === result.atMinA ? minV : result.designA === result.atMaxA ? maxV : ratedV;
    const divisor = model === 'constant power' ? at : ratedV;
    return {
      main: 'designA',
      flag: 'pass',
      flagText: `Largest at ${say(at, 'voltage')}`,
      say: 'This current goes to the fuse and the wire. The average goes to battery sums only, never to the fuse.',
      outputs: [
        { key: 'designA', label: 'Design current', value: result.designA, kind: 'current' },
        { key: 'atMinA', label: `At ${say(minV, 'voltage')}`, value: result.atMinA, kind: 'current' },
        { key: 'atRatedA', label: `At ${say(ratedV, 'voltage')}`, value: result.atRatedA, kind: 'current' },
        { key: 'atMaxA', label: `At ${say(maxV, 'voltage')}`, value: result.atMaxA, kind: 'current' },
        { key: 'averageA', label: 'Average', value: result.averageA, kind: 'current' },
      ],
      formula: [
        cell('', 'I', say(result.designA, 'current'), 'calc', 'design current'),
        cell('=', 'P', say(powerW, 'power'), 'set', 'label power'),
        cell(
          '÷',
          'V',
          say(divisor, 'voltage'),
          'set',
          model === 'constant power' ? 'voltage at the load' : 'label voltage',
        ),
        ...(model === 'resistive'
          ? [cell('×', 'V ÷ Vr', (at / ratedV).toFixed(3), 'plain', 'a resistor draws more at more volts')]
          : []),
      ],
      work: [
        `${say(result.designA, 'current')} × ${input.n('dutyPercent')} % of the time = ${say(result.averageA, 'current')} average`,
      ],
    };
  },
  source: "Ohm's law",
  functions: ['loadCurrent'],
  cautions: ['On 24 V use 22 V as the lowest and 28.8 V as the highest.'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { powerW: 24, ratedV: 12, model: 'constant power', minV: 11, maxV: 14.4, dutyPercent: 100 },
    out: { atMinA: '2.18', atRatedA: '2.0', atMaxA: '1.67', designA: '2.18', averageA: '2.18' },
  },
};
