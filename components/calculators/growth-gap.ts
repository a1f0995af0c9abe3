import { EXPANSION, tapeThicknessMm, thermalMismatch } from '../../calc/index.ts';
import { type Calculator, cell, choice, figure, number } from './form.ts';

const MATERIALS = EXPANSION.map(({ material }) => material);
const alphaOf = (material: string): number => EXPANSION.find((row) => row.material === material)!.perK;
/** Foam takes about its own thickness sideways for years (common practice, no source). */
const STRAIN_LIMIT = 1;

export const calculator: Calculator = {
  id: 'growth-gap',
  number: 'C33',
  title: 'Parts that grow apart',
  lead: 'How far a stuck profile and what it sits on move apart from winter to summer, and whether the tape takes it.',
  fields: () => [
    number('lengthMm', 'Length stuck', 'millimetres', 1000, [50, 20000, 50], 'Length must be 50 to 20000 mm.'),
    choice('first', 'Profile', 'aluminium', MATERIALS, 'Choose the material of the profile.'),
    choice('second', 'Surface', 'steel', MATERIALS, 'Choose the material of the surface.'),
    number(
      'deltaK',
      'Swing of temperature in kelvin',
      'ratio',
      60,
      [5, 150, 5],
      'Swing must be 5 to 150 K: hottest less coldest.',
    ),
    number('tapeMm', 'Tape thickness', 'millimetres', 1.1, [0.05, 5, 0.05], 'Tape thickness must be 0.05 to 5 mm.'),
  ],
  compute(input, { say }) {
    const [lengthMm, deltaK, tapeMm] = [input.n('lengthMm'), input.n('deltaK'), input.n('tapeMm')];
    const [alpha1PerK, alpha2PerK] = [alphaOf(input.s('first')), alphaOf(input.s('second'))];
    const { growthMm, shearStrainRatio } = thermalMismatch({
      lengthMm,
      deltaK,
      alpha1PerK,
      alpha2PerK,
      tapeThicknessMm: tapeMm,
    });
    const strain = shearStrainRatio!;
    const fine = strain <= STRAIN_LIMIT;
    const mm = (value: number): string => say(value, 'millimetres');
    const exact = (value: number): string => `${figure(value)} mm`;
    return {
      main: 'growth',
      flag: fine ? 'pass' : 'warn',
      flagText: fine ? 'The foam takes it' : 'Thicker foam or shorter pieces',
      say: `Half at each end: ${exact(growthMm / 2)}, against ${mm(tapeMm)} of tape.`,
      outputs: [
        { key: 'growth', label: 'Grow apart', value: exact(growthMm) },
        {
          key: 'strain',
          label: 'Sideways at each end, over the thickness',
          value: strain,
          kind: 'fraction',
          ...(fine ? {} : { state: 'warn' as const }),
        },
        {
          key: 'gapMm',
          label: 'Tape for a gap as uneven as that',
          value: growthMm / 2 <= 5 ? tapeThicknessMm({ mismatchMm: growthMm / 2 }) : 'fix it at one end only',
          kind: 'millimetres',
        },
      ],
      formula: [
        cell('', 'ΔL', exact(growthMm), 'calc', 'grow apart'),
        cell('=', 'L', mm(lengthMm), 'set', 'length stuck'),
        cell('×', 'ΔT', `${figure(deltaK)} K`, 'set', 'swing'),
        cell(
          '×',
          'Δα',
          `${figure(Math.abs(alpha1PerK - alpha2PerK) * 1e6)} millionths/K`,
          'plain',
          'difference of expansion',
        ),
      ],
      work: [`strain: ${exact(growthMm)} ÷ 2 ÷ ${mm(tapeMm)} = ${say(strain, 'fraction')}`],
      change: fine ? [] : ['Thicker foam, shorter pieces with gaps, or a slot at one fixing.'],
    };
  },
  source:
    'Mechanics; expansion: handbook coefficients from memory, plastics vary by half as much again; the foam takes its own thickness sideways: common practice, no source',
  functions: ['thermalMismatch', 'tapeThicknessMm'],
  cautions: ['A dash top in the sun was logged at 94.6 °C: there 85 °C is no upper bound.'],
  example: {
    from: 'Computed apart from this code',
    in: { lengthMm: 1000, first: 'aluminium', second: 'steel', deltaK: 60, tapeMm: 1.1 },
    out: { growth: '0.66 mm', strain: '0.30' },
  },
};
