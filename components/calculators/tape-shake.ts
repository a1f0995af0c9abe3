import { psdRmsMPerS2, tapeForMass, tapeShearKpa, VIBRATION_PROFILES, vibrationLoad } from '../../calc/index.ts';
import { type Calculator, cell, choice, figure, number } from './form.ts';

const PROFILES = VIBRATION_PROFILES.map(({ id }) => id);
const SIGMA = 3;

export const calculator: Calculator = {
  id: 'tape-shake',
  number: 'C31',
  title: 'Tape at rest and shaken',
  lead: 'What a hanging part puts into its tape at rest and on the road, to compare one design with another.',
  fields: () => [
    number(
      'massG',
      'Mass of part and wire',
      'grams',
      300,
      [1, 5000, 10],
      'Mass must be 1 to 5000 g. Over 5 kg: no tape, use fixings.',
    ),
    number('widthMm', 'Tape width', 'millimetres', 12, [3, 100, 1], 'Tape width must be 3 to 100 mm.'),
    number('lengthMm', 'Tape length', 'millimetres', 500, [10, 20000, 10], 'Tape length must be 10 to 20000 mm.'),
    choice('profile', 'Where it rides', 'car body', PROFILES, 'Choose where it rides.'),
  ],
  compute(input, { say }) {
    const massKg = input.n('massG') / 1000;
    const [widthMm, lengthMm] = [input.n('widthMm'), input.n('lengthMm')];
    const areaCm2 = (widthMm * lengthMm) / 100;
    const profile = VIBRATION_PROFILES.find(({ id }) => id === input.s('profile'))!;
    const rms = psdRmsMPerS2({ points: profile.points });
    const shaken = vibrationLoad({ massKg, rmsMPerS2: rms, sigma: SIGMA, areaCm2 });
    const atRest = tapeShearKpa({ massKg, areaCm2 });
    const need = tapeForMass({ massKg, widthMm });
    const enough = areaCm2 >= need.areaCm2;
    return {
      main: 'lengthNeededMm',
      flag: enough ? 'pass' : 'stop',
      flagText: enough ? 'Enough tape for years' : 'Too little tape',
      say: `At least ${say(need.lengthMm, 'millimetres')} of this tape for years at rest. The road multiplies the pull by ${figure(shaken.stressKpa! / atRest)}.`,
      outputs: [
        { key: 'lengthNeededMm', label: 'Tape needed, this width', value: need.lengthMm, kind: 'millimetres' },
        { key: 'areaCm2', label: 'Tape there', value: areaCm2, kind: 'squareCentimetres' },
        { key: 'restKpa', label: 'Shear at rest', value: `${figure(atRest)} kPa` },
        { key: 'rms', label: 'Road, root mean square, in m/s²', value: rms, kind: 'ratio' },
        { key: 'forceN', label: 'Peak force, three sigma', value: shaken.forceN, kind: 'force' },
        { key: 'shakenKpa', label: 'Peak shear', value: `${figure(shaken.stressKpa!)} kPa` },
      ],
      formula: [
        cell('', 'A', say(need.areaCm2, 'squareCentimetres'), 'calc', 'tape area for years'),
        cell('=', 'm', `${figure(massKg)} kg`, 'set', 'part and wire'),
        cell('×', '60', '60 cm²/kg', 'plain', 'area rule'),
      ],
      work: [
        `at rest: ${figure(massKg)} kg × 9.81 m/s² ÷ ${say(areaCm2, 'squareCentimetres')} = ${figure(atRest)} kPa`,
        `shaken: ${figure(massKg)} kg × ${SIGMA} × ${figure(rms)} m/s² = ${say(shaken.forceN, 'force')}`,
        `${profile.about}; the standard prints ${profile.printedRmsMPerS2} m/s²`,
      ],
      change: enough ? [] : ['More or wider tape, a lighter part, or fixings.'],
    };
  },
  source:
    'Area: foam tape supplier web page; road: ISO 16750-3, 2007 tables from memory, an edition of 2023 exists; rigid part, no resonance',
  functions: ['tapeForMass', 'tapeShearKpa', 'psdRmsMPerS2', 'vibrationLoad'],
  cautions: [
    'These stresses compare designs. They are no strength and no permission: no maker allows a figure here, and a long strip has resonances that are not in this sum.',
  ],
  example: {
    from: '0.3 kg on 12 mm tape: 150 mm by the published area rule; the rest computed apart from this code',
    in: { massG: 300, widthMm: 12, lengthMm: 500, profile: 'car body' },
    out: { lengthNeededMm: '150', areaCm2: '60', rms: '27.8', forceN: '25.0' },
  },
};
