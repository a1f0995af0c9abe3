import { runTime } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

export const calculator: Calculator = {
  id: 'run-time',
  number: 'C15',
  title: 'Run time on an auxiliary battery',
  lead: 'How long a second battery carries a heater, a fridge or lamps.',
  fields: () => [
    number('batteryAh', 'Battery, 20 h rate', 'charge', 100, [5, 800, 5], 'Battery must be 5 to 800 Ah.'),
    number(
      'usablePercent',
      'Usable share',
      'percent',
      50,
      [20, 95, 5],
      'Usable share must be 20 to 95 %. 50 lead, 80 lithium.',
    ),
    number(
      'peukert',
      'Peukert exponent',
      'ratio',
      1.1,
      [1, 1.4, 0.01],
      'Exponent must be 1.0 to 1.4. 1.05 lithium, 1.1 to 1.2 lead.',
    ),
    number(
      'startA',
      'Start current (heater glow, pump)',
      'current',
      10,
      [0, 200, 0.5],
      'Start current must be 0 to 200 A.',
    ),
    number('startMin', 'Start length', 'minutes', 3, [0, 60, 0.5], 'Start length must be 0 to 60 min.'),
    number('runA', 'Running current', 'current', 1.6, [0.05, 200, 0.1], 'Running current must be 0.05 to 200 A.'),
    number(
      'runH',
      'Hours per run',
      'hours',
      8,
      [0.1, 72, 0.5],
      'Hours must be 0.1 to 72 and longer than the start.',
      (all) => Number(all['runH']) * 60 > Number(all['startMin']),
    ),
  ],
  compute(input, { say }) {
    const [capacityAh, usable, peukert, startA, startMin, runA, runH] = [
      input.n('batteryAh'),
      input.n('usablePercent'),
      input.n('peukert'),
      input.n('startA'),
      input.n('startMin'),
      input.n('runA'),
      input.n('runH'),
    ];
    const result = runTime({ capacityAh, usableFraction: usable / 100, peukert, startA, startMin, runA, runH });
    return {
      main: 'hours',
      flag: result.fullRuns >= 1 ? 'pass' : 'warn',
      flagText:
        result.fullRuns >= 1 ? `${result.fullRuns} full ${result.fullRuns === 1 ? 'run' : 'runs'}` : 'Not one full run',
      say: `One run of ${say(runH, 'hours')} takes ${say(result.oneRunAh, 'charge')}.`,
      outputs: [
        { key: 'hours', label: 'Hours to cut-off', value: result.hours, kind: 'hours' },
        { key: 'fullRuns', label: 'Full runs', value: result.fullRuns, kind: 'count' },
        { key: 'oneRunAh', label: 'One run', value: result.oneRunAh, kind: 'charge' },
        { key: 'averageA', label: 'Average current', value: result.averageA, kind: 'current' },
        { key: 'usableAh', label: 'Usable charge', value: result.usableAh, kind: 'charge' },
      ],
      formula: [
        cell('', 't', say(result.hours, 'hours'), 'calc', 'to cut-off, the less of two:'),
        cell('=', 'Q × u', say(result.usableAh, 'charge'), 'calc', 'usable charge'),
        cell('÷', 'Iavg', say(result.averageA, 'current'), 'calc', 'average current; or by the 20 h law'),
      ],
      work: [
        `${say(startA, 'current')} × ${say(startMin, 'minutes')} + ${say(runA, 'current')} × ${say(runH - startMin / 60, 'hours')} = ${say(result.oneRunAh, 'charge')}`,
        `20 h × (${figure(capacityAh)} ÷ (20 × ${figure(result.averageA)}))^${figure(peukert)} × ${figure(usable)} %, at most ${say(result.usableAh, 'charge')} ÷ ${say(result.averageA, 'current')}`,
      ],
      change: result.fullRuns >= 1 ? [] : ['A larger battery, or less current.'],
    };
  },
  source: "Peukert's law, capped at rated capacity; usable shares: common practice, no source",
  functions: ['runTime'],
  cautions: [
    'Check separately that the voltage at the heater stays above its cut-off while starting (Drop on a known run, with the start current).',
  ],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { batteryAh: 100, usablePercent: 50, peukert: 1.1, startA: 10, startMin: 3, runA: 1.6, runH: 8 },
    out: { oneRunAh: '13.2', averageA: '1.65', usableAh: '50.0', hours: '30.3', fullRuns: '3' },
  },
};
