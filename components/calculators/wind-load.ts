import { windLoad } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

export const calculator: Calculator = {
  id: 'wind-load',
  number: 'C22',
  title: 'Wind and shock on a roof part',
  lead: 'What each fixing of a part on the roof must hold.',
  fields: () => [
    number(
      'areaM2',
      'Frontal area',
      'squareMetres',
      0.06,
      [0.001, 2, 0.01],
      'Area must be 0.001 to 2 m2. Width x height in metres.',
    ),
    number('drag', 'Drag coefficient', 'ratio', 1.2, [0.3, 2, 0.1], 'Drag must be 0.3 to 2. Flat face 1.2.'),
    number('speedKmh', 'Top speed', 'speed', 110, [10, 160, 5], 'Speed must be 10 to 160 km/h.'),
    number('gustKmh', 'Gust or passing truck', 'speed', 40, [0, 80, 5], 'Gust must be 0 to 80 km/h.'),
    number('massKg', 'Mass', 'mass', 3.2, [0.05, 100, 0.1], 'Mass must be 0.05 to 100 kg.'),
    number('shockG', 'Shock', 'shock', 5, [2, 20, 1], 'Shock must be 2 to 20 g.'),
    number('fixings', 'Fixings', 'count', 4, [1, 40, 1], 'Fixings must be 1 to 40.'),
    number('safety', 'Safety factor', 'ratio', 4, [2, 10, 1], 'Safety factor must be 2 to 10.'),
  ],
  compute(input, { say }) {
    const [areaM2, drag, speedKmh, gustKmh, massKg, shockG, fixings, safety] = [
      input.n('areaM2'),
      input.n('drag'),
      input.n('speedKmh'),
      input.n('gustKmh'),
      input.n('massKg'),
      input.n('shockG'),
      input.n('fixings'),
      input.n('safety'),
    ];
    const result = windLoad({
      areaM2,
      dragCoefficient: drag,
      speedKmh,
      gustKmh,
      massKg,
      shockG,
      fixings,
      safetyFactor: safety,
    });
    return {
      main: 'perFixingN',
      flag: 'note',
      flagText: 'Compare with the fixing and the sheet',
      say: 'The fixing, the sheet and the glue line each must hold this.',
      outputs: [
        { key: 'perFixingN', label: 'Load per fixing', value: result.perFixingN, kind: 'force' },
        { key: 'totalN', label: 'Wind and shock', value: result.totalN, kind: 'force' },
        { key: 'windN', label: 'Wind', value: result.windN, kind: 'force' },
        { key: 'shockN', label: 'Shock', value: result.shockN, kind: 'force' },
      ],
      formula: [
        cell('', 'F', say(result.perFixingN, 'force'), 'calc', 'per fixing'),
        cell('=', 'Fw + Fs', say(result.totalN, 'force'), 'calc', 'wind and shock'),
        cell('×', 's', figure(safety), 'set', 'safety factor'),
        cell('÷', 'n', figure(fixings), 'set', 'fixings'),
      ],
      work: [
        `½ × 1.225 × ${figure(drag)} × ${say(areaM2, 'squareMetres')} × (${say(speedKmh + gustKmh, 'speed')})² = ${say(result.windN, 'force')}`,
        `${say(massKg, 'mass')} × ${say(shockG, 'shock')} × 9.81 = ${say(result.shockN, 'force')}`,
      ],
    };
  },
  source: 'Drag equation; shock, gust and factor: common practice, no source',
  functions: ['windLoad'],
  cautions: ['Defer to the roof-load limit of the vehicle and to local rules on external projections.'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { areaM2: 0.06, drag: 1.2, speedKmh: 110, gustKmh: 40, massKg: 3.2, shockG: 5, fixings: 4, safety: 4 },
    out: { windN: '76.6', shockN: '157', totalN: '233.5', perFixingN: '233.5' },
  },
};
