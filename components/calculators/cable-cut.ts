import { cableCut } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

export const calculator: Calculator = {
  id: 'cable-cut',
  number: 'C24',
  title: 'Cut length and sleeve',
  lead: 'How long to cut a wire, and which sleeve takes the bundle.',
  fields: () => [
    number('runM', 'Route length', 'length', 8, [0.1, 40, 0.1], 'Route must be 0.1 to 40 m.'),
    number('slackPercent', 'Slack', 'percent', 5, [0, 20, 1], 'Slack must be 0 to 20 %.'),
    number('loopMm', 'Service loop, each end', 'millimetres', 150, [0, 500, 10], 'Loop must be 0 to 500 mm.'),
    number(
      'stripMm',
      'Strip, each end',
      'millimetres',
      3,
      [1, 20, 0.5],
      'Strip must be 1 to 20 mm. About 3 for solder pads; for crimps, the barrel length.',
    ),
    number('cores', 'Cores in the bundle', 'count', 6, [1, 60, 1], 'Cores must be 1 to 60.'),
    number(
      'coreMm',
      'Outer diameter of one core',
      'millimetres',
      2.4,
      [0.8, 15, 0.1],
      'Core diameter must be 0.8 to 15 mm, over the insulation.',
    ),
  ],
  compute(input, { say }) {
    const [runM, slackPercent, loopMm, stripMm, cores, coreMm] = [
      input.n('runM'),
      input.n('slackPercent'),
      input.n('loopMm'),
      input.n('stripMm'),
      input.n('cores'),
      input.n('coreMm'),
    ];
    const result = cableCut({ runM, slackPercent, loopMm, stripMm, cores, coreMm });
    const sleeveMm = result.sleeve.sleeveMm;
    return {
      main: 'cutMm',
      flag: sleeveMm === undefined ? 'warn' : 'pass',
      flagText: sleeveMm === undefined ? 'No kept sleeve is wide enough' : `Sleeve ${say(sleeveMm, 'millimetres')}`,
      say: `The bundle is about ${say(result.bundleMm, 'millimetres')} thick.`,
      outputs: [
        { key: 'cutMm', label: 'Cut length', value: result.cutMm, kind: 'millimetres' },
        { key: 'bundleMm', label: 'Bundle', value: result.bundleMm, kind: 'millimetres' },
        { key: 'sleeveMm', label: 'Sleeve', value: sleeveMm ?? 'split the bundle', kind: 'millimetres' },
      ],
      formula: [
        cell('', 'cut', say(result.cutMm, 'millimetres'), 'calc', 'rounded up'),
        cell('=', 'L', say(runM, 'length'), 'set', 'route'),
        cell('×', '1 + s', figure(1 + slackPercent / 100), 'set', 'slack'),
        cell('+', '2 loops', say(2 * loopMm, 'millimetres'), 'set', 'service loops'),
        cell('+', '2 strips', say(2 * stripMm, 'millimetres'), 'set', 'stripped ends'),
      ],
      work: [
        `bundle: 1.2 × √${figure(cores)} × ${say(coreMm, 'millimetres')} = ${say(result.bundleMm, 'millimetres')}`,
      ],
      change: sleeveMm === undefined ? ['Split the bundle into two sleeves.'] : [],
    };
  },
  source: '1.2 × √n: common practice, no source',
  functions: ['cableCut', 'chooseSleeve'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { runM: 8, slackPercent: 5, loopMm: 150, stripMm: 3, cores: 6, coreMm: 2.4 },
    out: { cutMm: '8706', bundleMm: '7.1', sleeveMm: '8' },
  },
};
