import { BEND_RADII, bendRadius, type Jacket, spaceTieSpacingMm, TIE_PRACTICES, tieCount } from '../../calc/index.ts';
import { type Calculator, cell, choice, figure, number } from './form.ts';

const PRACTICES = ['vehicle interior', 'aircraft repair', 'space'] as const;
const JACKETS = Object.keys(BEND_RADII) as Jacket[];
const SOURCES: Record<(typeof PRACTICES)[number], string> = {
  'vehicle interior': 'US Army TM 9-8000, fig. 17-34: 203 to 305 mm',
  'aircraft repair': 'FAA AC 43.13-1B, 11-158 b: a tie where supports are more than 305 mm apart',
  space: 'NASA-STD-8739.4, table in chapter 9, from memory',
};

export const calculator: Calculator = {
  id: 'tie-space',
  number: 'C28',
  title: 'Ties and bends',
  lead: 'How many ties a run needs, how far apart, and how tight the loom may bend.',
  fields: () => [
    number('runMm', 'Run', 'millimetres', 1800, [50, 20000, 50], 'Run must be 50 to 20000 mm.'),
    number('bundleMm', 'Loom or cable, outside', 'millimetres', 7.2, [1, 80, 0.1], 'Loom must be 1 to 80 mm outside.'),
    choice('practice', 'Spacing after', 'aircraft repair', PRACTICES, 'Choose whose spacing to use.'),
    choice('jacket', 'Jacket', 'jacket other than polyimide', JACKETS, 'Choose the jacket of the wires.'),
  ],
  compute(input, { say }) {
    const [runMm, bundleMm] = [input.n('runMm'), input.n('bundleMm')];
    const practice = PRACTICES.find((each) => each === input.s('practice'))!;
    const jacket = JACKETS.find((each) => each === input.s('jacket'))!;
    const mostMm =
      practice === 'space'
        ? spaceTieSpacingMm({ bundleMm })
        : practice === 'aircraft repair'
          ? TIE_PRACTICES['aircraft repair'].tiesRequiredAboveMm
          : TIE_PRACTICES['military vehicle interior'].maxMm;
    const { ties, spacingMm } = tieCount({ runMm, maxSpacingMm: mostMm });
    const bend = bendRadius({ diameterMm: bundleMm, jacket });
    const mm = (value: number): string => say(value, 'millimetres');
    return {
      main: 'ties',
      flag: 'pass',
      flagText: `${mm(spacingMm)} apart`,
      say: `${mm(mostMm)} apart at most. One at each end, and one on each side of a bend or a branch.`,
      outputs: [
        { key: 'ties', label: 'Ties', value: ties, kind: 'count' },
        { key: 'spacingMm', label: 'Apart', value: spacingMm, kind: 'millimetres' },
        { key: 'minMm', label: 'Bend radius at least', value: bend.minMm, kind: 'millimetres' },
        { key: 'longTermMm', label: 'Bend radius for years', value: bend.longTermMm, kind: 'millimetres' },
      ],
      formula: [
        cell('', 'n', String(ties), 'calc', 'ties'),
        cell('=', 'L', mm(runMm), 'set', 'run'),
        cell('÷', 's', mm(mostMm), 'plain', 'most apart, rounded up'),
        cell('+', '1', '1', 'plain', 'both ends'),
      ],
      work: [
        SOURCES[practice],
        `bend: ${figure(BEND_RADII[jacket].minDiameters)} × ${mm(bundleMm)} = ${mm(bend.minMm)}; for years ${figure(BEND_RADII[jacket].longTermDiameters)} × ${mm(bundleMm)} = ${mm(bend.longTermMm)}`,
      ],
    };
  },
  source:
    'Spacing: as chosen, shown in the working; bends: NASA workmanship pictorial 4.03 citing NASA-STD-8739.4, 7.3.21',
  functions: ['tieCount', 'spaceTieSpacingMm', 'bendRadius'],
  cautions: [
    'Pull a tie until the loom does not slide, and no further: insulation that is dented is a reject. Never tie to a brake or fuel pipe.',
  ],
  example: {
    from: 'Computed apart from this code with the spacing of the circular',
    in: { runMm: 1800, bundleMm: 7.2, practice: 'aircraft repair', jacket: 'jacket other than polyimide' },
    out: { ties: '7', spacingMm: '300', minMm: '43.2', longTermMm: '72' },
  },
};
