import { TAPE_POSITIONS, TAPE_SURFACES, type TapePosition, type TapeSurface, tapeHold } from '../../calc/index.ts';
import { type Calculator, cell, choice, figure, number } from './form.ts';

const positions = Object.keys(TAPE_POSITIONS) as TapePosition[];
const surfaces = Object.keys(TAPE_SURFACES) as TapeSurface[];

export const calculator: Calculator = {
  id: 'tape-hold',
  number: 'C20',
  title: 'Will the tape hold it?',
  lead: 'Whether there is enough tape for the weight, and whether a back-up fixing is asked for.',
  fields: () => [
    number(
      'massG',
      'Mass of part and wire',
      'grams',
      420,
      [1, 5000, 10],
      'Mass must be 1 to 5000 g. Over 5 kg: no tape, use fixings.',
    ),
    number('tapeMm', 'Tape width', 'millimetres', 9, [3, 100, 1], 'Tape width must be 3 to 100 mm.'),
    number('runMm', 'Tape length', 'millimetres', 2100, [10, 20000, 10], 'Tape length must be 10 to 20000 mm.'),
    choice('position', 'Position', 'overhead', positions, 'Choose vertical or overhead.'),
    choice(
      'surface',
      'Surface',
      'painted steel',
      surfaces,
      'Choose a surface. Not listed? Use fixings and ask the lead.',
    ),
  ],
  compute(input, { say }) {
    const [massG, tapeMm, runMm] = [input.n('massG'), input.n('tapeMm'), input.n('runMm')];
    const position = positions.find((each) => each === input.s('position'))!;
    const surface = surfaces.find((each) => each === input.s('surface'))!;
    const result = tapeHold({ massG, tapeMm, runMm, position, surface });
    const passes = result.verdict === 'pass';
    return {
      main: 'marginRatio',
      flag: result.verdict,
      flagText: passes ? 'Enough tape' : 'Too little tape',
      say: result.backUpFixing ? 'Add a back-up fixing.' : 'No back-up fixing is asked for.',
      outputs: [
        { key: 'marginRatio', label: 'Times what is needed', value: result.marginRatio, kind: 'ratio' },
        { key: 'haveCm2', label: 'Tape area', value: result.haveCm2, kind: 'squareCentimetres' },
        { key: 'neededCm2', label: 'Area needed', value: result.neededCm2, kind: 'squareCentimetres' },
        { key: 'backUp', label: 'Back-up fixing', value: result.backUpFixing ? 'yes' : 'no' },
      ],
      formula: [
        cell('', 'A', say(result.neededCm2, 'squareCentimetres'), 'calc', 'area needed'),
        cell('=', 'm', `${figure(massG / 1000)} kg`, 'set', 'part and wire'),
        cell('×', '60', '60 cm²/kg', 'plain', 'area rule'),
        cell('×', 'kp', String(TAPE_POSITIONS[position]), 'plain', position),
        cell('×', 'ks', String(TAPE_SURFACES[surface]), 'plain', surface),
      ],
      work: [
        `${say(tapeMm, 'millimetres')} × ${say(runMm, 'millimetres')} = ${say(result.haveCm2, 'squareCentimetres')}`,
      ],
      change: passes ? [] : ['More tape, a lighter part, or fixings.'],
    };
  },
  source: '60 cm² per kg and factors: common practice, no source',
  functions: ['tapeHold'],
  cautions: ['A falling part can hurt someone. Tape alone is never the only fixing above head height or outside.'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { massG: 420, tapeMm: 9, runMm: 2100, position: 'overhead', surface: 'painted steel' },
    out: { haveCm2: '189', neededCm2: '37.8', marginRatio: '5.0', backUp: 'yes' },
  },
};
