import { lightLevel } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

export const calculator: Calculator = {
  id: 'light-level',
  number: 'C17',
  title: 'How many lamps',
  lead: 'How many lamps light a floor to the level the work needs.',
  fields: () => [
    number('lengthM', 'Floor length', 'length', 3, [0.3, 14, 0.1], 'Length must be 0.3 to 14 m.'),
    number('widthM', 'Floor width', 'length', 1.7, [0.3, 3, 0.1], 'Width must be 0.3 to 3 m.'),
    number(
      'levelLx',
      'Wanted level',
      'illuminance',
      150,
      [10, 1000, 10],
      'Level must be 10 to 1000 lux. 50 walk-through, 150 load space, 300 picking, 500 bench.',
    ),
    number(
      'use',
      'Utilisation',
      'ratio',
      0.5,
      [0.2, 0.9, 0.05],
      'Utilisation must be 0.2 to 0.9. 0.5 for pale lining, 0.3 for bare dark steel.',
    ),
    number('keep', 'Maintenance', 'ratio', 0.8, [0.5, 1, 0.05], 'Maintenance must be 0.5 to 1.0.'),
    number(
      'lampLm',
      'Lumens per lamp',
      'light',
      540,
      [20, 20000, 20],
      'Lamp must be 20 to 20000 lm. Six watts at 90 lm/W is 540.',
    ),
  ],
  compute(input, { say }) {
    const [lengthM, widthM, levelLx, useFraction, keepFraction, lampLm] = [
      input.n('lengthM'),
      input.n('widthM'),
      input.n('levelLx'),
      input.n('use'),
      input.n('keep'),
      input.n('lampLm'),
    ];
    const result = lightLevel({ lengthM, widthM, levelLx, useFraction, keepFraction, lampLm });
    return {
      main: 'lamps',
      flag: 'pass',
      flagText: `Reaches ${say(result.levelLx, 'illuminance')}`,
      say: `${say(result.neededLm, 'light')} are needed; ${result.lamps} ${result.lamps === 1 ? 'lamp gives' : 'lamps give'} ${say(result.givenLm, 'light')}.`,
      outputs: [
        { key: 'lamps', label: 'Lamps', value: result.lamps, kind: 'count' },
        { key: 'levelLx', label: 'Level reached', value: result.levelLx, kind: 'illuminance' },
        { key: 'neededLm', label: 'Light needed', value: result.neededLm, kind: 'light' },
        { key: 'givenLm', label: 'Light given', value: result.givenLm, kind: 'light' },
        { key: 'areaM2', label: 'Floor', value: result.areaM2, kind: 'squareMetres' },
      ],
      formula: [
        cell('', 'Φ', say(result.neededLm, 'light'), 'calc', 'light needed'),
        cell('=', 'A', say(result.areaM2, 'squareMetres'), 'calc', 'floor'),
        cell('×', 'E', say(levelLx, 'illuminance'), 'set', 'wanted level'),
        cell('÷', 'u', figure(useFraction), 'set', 'utilisation'),
        cell('÷', 'm', figure(keepFraction), 'set', 'maintenance'),
      ],
      work: [`${say(result.neededLm, 'light')} ÷ ${say(lampLm, 'light')}, rounded up = ${result.lamps}`],
    };
  },
  source: 'Lumen method; levels and factors: common practice, no source',
  functions: ['lightLevel'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { lengthM: 3, widthM: 1.7, levelLx: 150, use: 0.5, keep: 0.8, lampLm: 540 },
    out: { areaM2: '5.1', neededLm: '1913', lamps: '4', givenLm: '2160', levelLx: '169' },
  },
};
