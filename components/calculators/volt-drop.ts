import { voltageDrop } from '../../calc/index.ts';
import { type Calculator, cell, figure, number, returnField, ways, wireField } from './form.ts';

export const calculator: Calculator = {
  id: 'volt-drop',
  number: 'C06',
  title: 'Drop on a known run',
  lead: 'What a wire that is already there should lose, to hold a meter reading against.',
  fields: () => [
    wireField('sizeMm2', 'Wire size', 1.5),
    number('oneWayM', 'One-way length', 'length', 8, [0.1, 40, 0.1], 'Length must be 0.1 to 40 m.'),
    number('loadA', 'Current', 'current', 2.18, [0.05, 200, 0.1], 'Current must be 0.05 to 200 A.'),
    returnField(),
    number(
      'copperC',
      'Conductor temperature',
      'temperature',
      60,
      [-20, 90, 5],
      'Conductor temperature must be -20 to 90 C.',
    ),
    number('jointMohm', 'Joint allowance', 'milliohms', 10, [0, 100, 1], 'Joint allowance must be 0 to 100 milliohm.'),
    number(
      'supplyV',
      'Supply voltage',
      'voltage',
      12,
      [9, 32, 0.1],
      'Supply must be 9 to 32 V. Use 12 or 24 for the nominal, or the voltage you measured.',
    ),
  ],
  compute(input, { say }) {
    const [areaMm2, oneWayM, currentA, temperatureC, jointMohm, supplyV] = [
      input.n('sizeMm2'),
      input.n('oneWayM'),
      input.n('loadA'),
      input.n('copperC'),
      input.n('jointMohm'),
      input.n('supplyV'),
    ];
    const n = ways(input);
    const drop = voltageDrop({
      currentA,
      lengthM: oneWayM * n,
      areaMm2,
      temperatureC,
      jointOhm: jointMohm / 1000,
      supplyV,
    });
    const flows = drop.dropV < supplyV;
    return {
      main: 'dropV',
      flag: flows ? 'pass' : 'stop',
      flagText: flows ? `${say((drop.dropV / supplyV) * 100, 'percent')} of the supply` : 'This current cannot flow',
      say: flows
        ? `A reading well above this means a bad joint or a thinner wire.`
        : 'The run would lose more than the whole supply. Check the figures.',
      outputs: [
        { key: 'dropV', label: 'Drop', value: drop.dropV, kind: 'voltage' },
        { key: 'dropPercent', label: 'Drop', value: (drop.dropV / supplyV) * 100, kind: 'percent' },
        { key: 'loadV', label: 'Left at the load', value: flows ? supplyV - drop.dropV : 'nothing', kind: 'voltage' },
        { key: 'lossW', label: 'Heat in the wire', value: drop.lossW, kind: 'power' },
      ],
      formula: [
        cell('', 'Vd', say(drop.dropV, 'voltage'), 'calc', 'lost along the run'),
        cell('=', 'I', say(currentA, 'current'), 'set', 'current'),
        cell(
          '×',
          'R',
          `${figure(drop.wireOhm * 1000 + jointMohm)} mΩ`,
          'calc',
          `${say(oneWayM * n, 'length')} of copper, and joints`,
        ),
      ],
      work: [
        `${figure(drop.resistance.at20COhmPerM * 1000)} mΩ/m at 20 °C × ${(drop.resistance.resistanceOhmPerM / drop.resistance.at20COhmPerM).toFixed(3)} × ${say(oneWayM * n, 'length')} + ${figure(jointMohm)} mΩ = ${figure(drop.wireOhm * 1000 + jointMohm)} mΩ`,
        `${say(drop.dropV, 'voltage')} × ${say(currentA, 'current')} = ${say(drop.lossW, 'power')} of heat`,
      ],
    };
  },
  source: 'IEC 60228 class 5 plain copper, maximum resistance at 20 °C',
  functions: ['voltageDrop'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { sizeMm2: 1.5, oneWayM: 8, loadA: 2.18, returnPath: 'chassis', copperC: 60, jointMohm: 10, supplyV: 12 },
    out: { dropV: '0.29', dropPercent: '2.42', loadV: '11.71', lossW: '0.63' },
  },
};
