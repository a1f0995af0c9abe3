import { chooseShrink, SHRINK_RATIOS, SHRINK_TEMPERATURES, sleeveFit } from '../../calc/index.ts';
import { type Calculator, cell, number, numberChoice } from './form.ts';

export const calculator: Calculator = {
  id: 'shrink-fit',
  number: 'C26',
  title: 'Does the heat-shrink fit?',
  lead: 'Whether a sleeve passes over the thickest point and still grips the thinnest once it is shrunk.',
  fields: () => [
    number(
      'thickestMm',
      'Thickest point it must pass over',
      'millimetres',
      4,
      [0.5, 60, 0.1],
      'Thickest point must be 0.5 to 60 mm, and not less than the thinnest.',
      (all) => Number(all['thinnestMm']) <= Number(all['thickestMm']),
    ),
    number(
      'thinnestMm',
      'Thinnest point it must grip',
      'millimetres',
      4,
      [0.5, 60, 0.1],
      'Thinnest point must be 0.5 to 60 mm, and not more than the thickest.',
      (all) => Number(all['thinnestMm']) <= Number(all['thickestMm']),
    ),
    number(
      'suppliedMm',
      'Sleeve as supplied, inside',
      'millimetres',
      6.4,
      [0.8, 80, 0.1],
      'Sleeve must be 0.8 to 80 mm inside.',
    ),
    numberChoice('ratio', 'Shrink ratio', 'ratio', 2, SHRINK_RATIOS, 'to 1', 'Choose the ratio on the sleeve.'),
  ],
  compute(input, { say }) {
    const [thickestMm, thinnestMm, suppliedMm, ratio] = [
      input.n('thickestMm'),
      input.n('thinnestMm'),
      input.n('suppliedMm'),
      input.n('ratio'),
    ];
    const fit = sleeveFit({ objectMm: thickestMm, gripMm: thinnestMm, suppliedMm, ratio });
    const better = chooseShrink({ thickestMm, thinnestMm });
    const mm = (value: number): string => say(value, 'millimetres');
    const good = fit.fitsOver && fit.tight;
    return {
      main: 'verdict',
      flag: good ? 'pass' : 'stop',
      flagText: good ? 'Passes over and grips' : fit.fitsOver ? 'Stays loose' : 'Does not pass over',
      say: `Shrunk freely it is ${mm(fit.recoveredMm)} inside.`,
      outputs: [
        {
          key: 'verdict',
          label: 'This sleeve',
          value: good ? 'fits' : fit.fitsOver ? 'stays loose' : 'does not pass over',
        },
        { key: 'recoveredMm', label: 'Inside when shrunk freely', value: fit.recoveredMm, kind: 'millimetres' },
        {
          key: 'betterMm',
          label: 'Smallest kept sleeve that fits',
          value: better.suppliedMm ?? 'none',
          kind: 'millimetres',
        },
        { key: 'betterRatio', label: 'Its ratio', value: better.ratio === undefined ? 'none' : `${better.ratio} to 1` },
      ],
      formula: [
        cell('', 'D', mm(fit.recoveredMm), 'calc', 'inside when shrunk'),
        cell('=', 'S', mm(suppliedMm), 'set', 'as supplied'),
        cell('÷', 'r', String(ratio), 'set', 'shrink ratio, of diameters'),
      ],
      work: [
        `passes over when ${mm(suppliedMm)} is more than ${mm(thickestMm)}`,
        `grips when ${mm(fit.recoveredMm)} is less than ${mm(thinnestMm)}; equal is not tight`,
        `polyolefin shrinks at about ${SHRINK_TEMPERATURES.polyolefinTypicalC.join(' to ')} °C (recalled); an adhesive liner may need more`,
      ],
      change: good || better.found ? [] : better.reasons,
    };
  },
  source:
    'Rule: NASA-STD-8739.4 with Change 6, 9.8.1; ratio of diameters as trade pages define it; kept sizes: common practice, no source',
  functions: ['sleeveFit', 'chooseShrink'],
  example: {
    from: 'Computed apart from this code',
    in: { thickestMm: 4, thinnestMm: 4, suppliedMm: 6.4, ratio: 2 },
    out: { verdict: 'fits', recoveredMm: '3.2', betterMm: '4.8' },
  },
};
