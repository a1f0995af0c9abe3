import { energyClass, LIQUIDS, METHOD_SPREAD, owensWendt } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

const water = LIQUIDS.find(({ liquid, set }) => liquid === 'water' && set === 'default')!;
const second = LIQUIDS.find(({ liquid, set }) => liquid === 'diiodomethane' && set === 'worked questions')!;
const parts = (row: typeof water) => ({ dispersiveMnPerM: row.dispersiveMnPerM!, polarMnPerM: row.polarMnPerM! });

export const calculator: Calculator = {
  id: 'surface-energy',
  number: 'C32',
  title: 'Surface energy from two drops',
  lead: 'What two contact angles say about a surface: how readily adhesive wets it. A ranking, never a strength.',
  fields: () => [
    number(
      'waterDeg',
      'Angle of a water drop',
      'angle',
      40.9,
      [0, 180, 1],
      'Angle must be 0 to 180 °, measured inside the drop.',
    ),
    number(
      'secondDeg',
      'Angle of a diiodomethane drop',
      'angle',
      40.8,
      [0, 180, 1],
      'Angle must be 0 to 180 °, measured inside the drop.',
    ),
  ],
  compute(input, { say }) {
    const drops = [
      { liquid: parts(water), angleDeg: input.n('waterDeg') },
      { liquid: parts(second), angleDeg: input.n('secondDeg') },
    ];
    const result = owensWendt({ drops });
    const total = result.totalMjPerM2;
    const level = total > 0 ? energyClass({ surfaceEnergyMnPerM: Math.min(total, 5000) }) : 'low';
    const odd = result.flag !== undefined;
    const energy = (value: number): string => `${Math.round(value)} mJ/m²`;
    return {
      main: 'total',
      flag: odd || level === 'low' ? 'warn' : 'pass',
      flagText: odd
        ? 'Drops that do not agree'
        : level === 'low'
          ? 'Low: adhesive beads'
          : `${level.charAt(0).toUpperCase()}${level.slice(1)} energy`,
      say: odd
        ? 'One part came out below nothing and was set to 0: measure again, or take another pair of liquids.'
        : `A whole number: methods differ by up to ${METHOD_SPREAD.neumannAgainstOwensWendtMaxPercent} %.`,
      outputs: [
        { key: 'total', label: 'Surface energy', value: energy(total) },
        { key: 'dispersive', label: 'Dispersive part', value: energy(result.dispersiveMjPerM2) },
        { key: 'polar', label: 'Polar part', value: energy(result.polarMjPerM2) },
        { key: 'level', label: 'Class', value: level },
      ],
      formula: [
        cell('', 'γ', energy(total), 'calc', 'surface energy'),
        cell('=', 'γd', energy(result.dispersiveMjPerM2), 'calc', 'intercept, squared'),
        cell('+', 'γp', energy(result.polarMjPerM2), 'calc', 'slope, squared'),
      ],
      work: [
        'γl·(1 + cos θ) ÷ (2·√γld) = √γd + √γp·√(γlp ÷ γld), one line a drop',
        `water ${figure(water.totalMnPerM)} = ${figure(water.dispersiveMnPerM!)} + ${figure(water.polarMnPerM!)} mN/m at ${say(input.n('waterDeg'), 'angle')} (${water.set} split)`,
        `diiodomethane ${figure(second.totalMnPerM)} = ${figure(second.dispersiveMnPerM!)} + ${figure(second.polarMnPerM!)} mN/m at ${say(input.n('secondDeg'), 'angle')} (${second.set} split)`,
      ],
    };
  },
  source: `Owens and Wendt 1969, J. Appl. Polym. Sci. 13, 1741 (abstract seen); liquid splits: ${water.source}; ${second.source}`,
  functions: ['owensWendt', 'energyClass'],
  cautions: [
    'It says how readily a liquid wets the surface, so it ranks surfaces. It is no strength of a bond, no load and no permission: a test patch decides.',
    'Diiodomethane is toxic and stains: laboratory only, gloves and extraction. In the workshop a dyne pen or the water film does.',
  ],
  example: {
    from: 'Worked question of an open data set, solved apart from this code: 57.8 mJ/m²',
    in: { waterDeg: 40.9, secondDeg: 40.8 },
    out: { total: '58 mJ/m²' },
  },
};
