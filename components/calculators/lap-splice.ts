import { lapOverlap, lapSplice, mayCrimp, shrunkLength } from '../../calc/index.ts';
import { type Calculator, cell, number } from './form.ts';

export const calculator: Calculator = {
  id: 'lap-splice',
  number: 'C25',
  title: 'Lap splice and its sleeve',
  lead: 'How far to strip and overlap two wires of one size, which sleeve goes over the joint, and how long to cut it.',
  fields: () => [
    number(
      'conductorMm',
      'Bare conductor',
      'millimetres',
      1.6,
      [0.2, 12, 0.1],
      'Conductor must be 0.2 to 12 mm across, bare, and thinner than the wire over its insulation.',
      (all) => Number(all['conductorMm']) < Number(all['insulatedMm']),
    ),
    number(
      'insulatedMm',
      'Over the insulation',
      'millimetres',
      2.4,
      [0.5, 20, 0.1],
      'Over the insulation must be 0.5 to 20 mm, and more than the bare conductor.',
      (all) => Number(all['conductorMm']) < Number(all['insulatedMm']),
    ),
    number(
      'diameters',
      'Overlap, in conductor diameters',
      'ratio',
      4,
      [3, 6, 0.5],
      'Overlap must be 3 to 6 conductor diameters: less does not hold, more stiffens the wire.',
    ),
  ],
  compute(input, { say }) {
    const [conductorMm, insulatedMm, overlapDiameters] = [
      input.n('conductorMm'),
      input.n('insulatedMm'),
      input.n('diameters'),
    ];
    const result = lapSplice({ conductorMm, insulatedMm, overlapDiameters });
    const limits = lapOverlap({ conductorMm });
    const { sleeve } = result;
    const left = shrunkLength({ cutMm: result.sleeveCutMm });
    const mm = (value: number): string => say(value, 'millimetres');
    return {
      main: 'overlapMm',
      flag: sleeve.found ? 'pass' : 'warn',
      flagText: sleeve.found ? `Sleeve ${mm(sleeve.suppliedMm!)}, ${sleeve.ratio} to 1` : 'No kept sleeve fits',
      say: `Strip ${mm(result.stripMm)} of each wire. The joint is ${mm(result.jointMm)} thick before the sleeve.`,
      outputs: [
        { key: 'overlapMm', label: 'Overlap', value: result.overlapMm, kind: 'millimetres' },
        { key: 'stripMm', label: 'Strip each wire', value: result.stripMm, kind: 'millimetres' },
        { key: 'gapMm', label: 'Bare between joint and insulation', value: result.gapMm, kind: 'millimetres' },
        { key: 'jointMm', label: 'Joint, two conductors', value: result.jointMm, kind: 'millimetres' },
        { key: 'sleeveMm', label: 'Sleeve as supplied', value: sleeve.suppliedMm ?? 'none fits', kind: 'millimetres' },
        {
          key: 'recoveredMm',
          label: 'Sleeve when shrunk freely',
          value: sleeve.recoveredMm ?? 'none fits',
          kind: 'millimetres',
        },
        { key: 'sleeveCutMm', label: 'Cut the sleeve', value: result.sleeveCutMm, kind: 'millimetres' },
        { key: 'leftMm', label: 'Left of it at least', value: left.leastMm, kind: 'millimetres' },
      ],
      formula: [
        cell('', 'o', mm(result.overlapMm), 'calc', 'overlap'),
        cell('=', 'n', String(overlapDiameters), 'set', 'diameters of overlap'),
        cell('×', 'd', mm(conductorMm), 'set', 'bare conductor'),
      ],
      work: [
        `overlap may be ${mm(limits.minMm)} to ${mm(limits.maxMm)}, 3 to 6 conductor diameters`,
        `strip: ${mm(result.overlapMm)} + ${mm(result.gapMm)} = ${mm(result.stripMm)}`,
        `sleeve gets 5 to 15 % shorter: cut ${mm(result.sleeveCutMm)}, left ${mm(left.leastMm)} to ${mm(left.mostMm)}`,
      ],
      reasons: sleeve.found ? [] : sleeve.reasons,
      change: sleeve.found ? [] : ['Build up the thin end with a short sleeve first, or a sleeve of a higher ratio.'],
    };
  },
  source:
    'Overlap: NASA-STD-8739.4 with Change 6, 19.6.1; gap: NASA workmanship pictorial 6.17; sleeve overlap, sizes and ratios: common practice, no source',
  functions: ['lapSplice', 'lapOverlap', 'chooseShrink', 'shrunkLength'],
  cautions: [
    `Slide the sleeve on before joining. A soldered splice stiffens the wire: not where it moves, and tied at both ends. ${mayCrimp({ conductor: 'stranded, tinned with solder' }).reason}`,
    'Shrink without a flame where gas, solvent or an airbag is near.',
  ],
  example: {
    from: 'Overlap of the handbook for a 1.6 mm conductor, the rest computed apart from this code',
    in: { conductorMm: 1.6, insulatedMm: 2.4, diameters: 4 },
    out: { overlapMm: '6.4', stripMm: '8.8', jointMm: '3.2', sleeveMm: '4.8', sleeveCutMm: '25' },
  },
};
