import { CLAMPS, coilClamp } from '../../calc/index.ts';
import { type Calculator, cell, choice, number } from './form.ts';

export const calculator: Calculator = {
  id: 'coil-clamp',
  number: 'C10',
  title: 'Coil kick and clamp',
  lead: 'How high a coil kicks when it is switched off, and how long the relay then holds on.',
  fields: () => [
    number('maxV', 'Highest voltage', 'voltage', 14.4, [12, 32, 0.1], 'Highest voltage must be 12 to 32 V.'),
    number('coilOhm', 'Coil resistance', 'resistance', 90, [20, 2000, 5], 'Coil must be 20 to 2000 ohm.'),
    number(
      'coilMh',
      'Coil inductance',
      'inductance',
      250,
      [10, 2000, 10],
      'Inductance must be 10 to 2000 mH. Unknown: 250 for a plug-in relay.',
    ),
    choice('clamp', 'Clamp', 'diode', CLAMPS, 'Choose a clamp. "none" on any electronic output stops the build.'),
    number(
      'clampOhm',
      'Clamp resistor (resistor only)',
      'resistance',
      680,
      [100, 2000, 10],
      'Clamp resistor must be 100 to 2000 ohm.',
    ),
    number('releasePercent', 'Release current, share of hold', 'percent', 30, [5, 60, 5], 'Release must be 5 to 60 %.'),
  ],
  compute(input, { say }) {
    const [maxV, coilOhm, coilMh, clampOhm, release] = [
      input.n('maxV'),
      input.n('coilOhm'),
      input.n('coilMh'),
      input.n('clampOhm'),
      input.n('releasePercent'),
    ];
    const clamp = CLAMPS.find((each) => each === input.s('clamp'))!;
    const kick = coilClamp({
      maxV,
      coilOhm,
      inductanceH: coilMh / 1000,
      clamp,
      clampOhm: clamp === 'resistor' ? clampOhm : undefined,
      releaseFraction: release / 100,
    });
    const { peakV, releaseS } = kick;
    const flag = peakV === null ? 'stop' : kick.verdict;
    return {
      main: 'peakV',
      flag,
      flagText: flag === 'stop' ? 'Fit a clamp' : flag === 'pass' ? 'Clamped' : 'Look at the peak',
      say:
        clamp === 'resistor'
          ? 'Quick, but compare the peak with what the output stands: many are rated 40 or 60 V.'
          : clamp === 'diode'
            ? 'Low, but the relay lets go more slowly.'
            : 'Unclamped, the kick reaches hundreds of volts.',
      outputs: [
        {
          key: 'peakV',
          label: 'Peak at the output',
          value: peakV ?? 'hundreds of volts, not computed',
          kind: 'voltage',
        },
        {
          key: 'releaseMs',
          label: 'Holds on for',
          value: releaseS === null ? 'not computed' : releaseS * 1000,
          kind: 'milliseconds',
        },
        { key: 'coilMa', label: 'Coil current', value: kick.currentA * 1000, kind: 'milliamps' },
        { key: 'energyMj', label: 'Stored energy', value: kick.energyJ * 1000, kind: 'energy' },
      ],
      formula: [
        cell('', 'Vp', peakV === null ? 'not computed' : say(peakV, 'voltage'), 'calc', 'peak at the output'),
        cell('=', 'V', say(maxV, 'voltage'), 'set', 'supply'),
        ...(clamp === 'diode' ? [cell('+', 'Vf', say(0.7, 'voltage'), 'plain', 'across the diode')] : []),
        ...(clamp === 'resistor'
          ? [
              cell(
                '+',
                'I × Rp',
                `${say(kick.currentA * 1000, 'milliamps')} × ${say(clampOhm, 'resistance')}`,
                'set',
                'across the clamp resistor',
              ),
            ]
          : []),
      ],
      work: [
        `${say(maxV, 'voltage')} ÷ ${say(coilOhm, 'resistance')} = ${say(kick.currentA * 1000, 'milliamps')}`,
        `½ × ${say(coilMh, 'inductance')} × (${say(kick.currentA * 1000, 'milliamps')})² = ${say(kick.energyJ * 1000, 'energy')}`,
      ],
      change: flag === 'stop' ? ['A diode or a resistor across the coil.'] : [],
    };
  },
  source: 'Inductor law; 250 mH and 30 % release: common practice, no source',
  functions: ['coilClamp'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { maxV: 14.4, coilOhm: 90, coilMh: 250, clamp: 'diode', clampOhm: 680, releasePercent: 30 },
    out: { coilMa: '160.0', energyMj: '3.2', peakV: '15.1', releaseMs: '3.06' },
  },
};
