import { chargeBalance } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

const day = (all: Readonly<Record<string, number | string>>): boolean =>
  Number(all['driveH']) + Number(all['idleH']) + Number(all['stoppedH']) <= 24;

export const calculator: Calculator = {
  id: 'charge-balance',
  number: 'C14',
  title: "Does the day's driving pay for the night?",
  lead: 'Whether the alternator puts back what the accessory takes while the engine is off.',
  fields: () => [
    number('alternatorA', 'Alternator rating', 'current', 120, [20, 400, 5], 'Alternator must be 20 to 400 A.'),
    number('idlePercent', 'Output at idle', 'percent', 50, [20, 80, 5], 'Idle output must be 20 to 80 %.'),
    number(
      'baseA',
      "Vehicle's own load",
      'current',
      45,
      [5, 150, 1],
      'Base load must be 5 to 150 A. Lights, blower and wipers on.',
    ),
    number(
      'accessoryA',
      'Accessory load while running',
      'current',
      6,
      [0, 300, 1],
      'Accessory load must be 0 to 300 A.',
    ),
    number(
      'driveH',
      'Driving, hours a day',
      'hours',
      2.5,
      [0, 24, 0.5],
      'Driving hours must be 0 to 24, and the three times may not exceed 24 h.',
      day,
    ),
    number('idleH', 'Idling, hours a day', 'hours', 1, [0, 24, 0.5], 'Idle hours must be 0 to 24.'),
    number('stoppedH', 'Engine off with load, hours a day', 'hours', 6, [0, 24, 0.5], 'Stopped hours must be 0 to 24.'),
    number('stoppedA', 'Load while stopped', 'current', 4, [0, 300, 0.5], 'Stopped load must be 0 to 300 A.'),
    number(
      'acceptA',
      'Most the battery takes',
      'current',
      20,
      [1, 200, 1],
      'Acceptance must be 1 to 200 A. About 0.2 x Ah for lead, read the label for lithium.',
    ),
  ],
  compute(input, { say }) {
    const [alternatorA, idle, baseA, accessoryA, driveH, idleH, stoppedH, stoppedA, acceptA] = [
      input.n('alternatorA'),
      input.n('idlePercent'),
      input.n('baseA'),
      input.n('accessoryA'),
      input.n('driveH'),
      input.n('idleH'),
      input.n('stoppedH'),
      input.n('stoppedA'),
      input.n('acceptA'),
    ];
    const result = chargeBalance({
      alternatorA,
      idleFraction: idle / 100,
      baseA,
      accessoryA,
      driveH,
      idleH,
      stoppedH,
      stoppedA,
      acceptA,
    });
    const drains = result.idleSurplusA < 0;
    return {
      main: 'netAh',
      flag: result.verdict,
      flagText: result.verdict === 'pass' ? 'The day pays for it' : drains ? 'Drains at idle' : 'More goes out than in',
      say: drains
        ? 'At idle the battery drains while the engine runs.'
        : 'A best case: smart-charging vehicles may give less than this.',
      outputs: [
        { key: 'netAh', label: 'Net over a day', value: result.netAh, kind: 'charge' },
        {
          key: 'idleSurplusA',
          label: 'Left over at idle',
          value: result.idleSurplusA,
          kind: 'current',
          state: drains ? 'warn' : 'pass',
        },
        { key: 'driveSurplusA', label: 'Left over while driving', value: result.driveSurplusA, kind: 'current' },
        { key: 'inAh', label: 'In', value: result.inAh, kind: 'charge' },
        { key: 'outAh', label: 'Out', value: result.outAh, kind: 'charge' },
      ],
      formula: [
        cell('', 'net', say(result.netAh, 'charge'), 'calc', 'over a day'),
        cell('=', '0.9', '0.9', 'plain', 'of what goes in comes out again'),
        cell('×', 'in', say(result.inAh, 'charge'), 'calc', 'from the alternator'),
        cell('−', 'out', say(result.outAh, 'charge'), 'calc', 'to the load while stopped'),
      ],
      work: [
        `idle: ${say(alternatorA, 'current')} × ${figure(idle)} % − ${say(baseA, 'current')} − ${say(accessoryA, 'current')} = ${say(result.idleSurplusA, 'current')}`,
        `driving: ${say(alternatorA, 'current')} × 90 % − ${say(baseA, 'current')} − ${say(accessoryA, 'current')} = ${say(result.driveSurplusA, 'current')}`,
        `out: ${say(stoppedA, 'current')} × ${say(stoppedH, 'hours')} = ${say(result.outAh, 'charge')}`,
      ],
      change: result.verdict === 'pass' ? [] : ['Less load while stopped, more driving, or a mains or solar charger.'],
    };
  },
  source: 'Efficiencies: common practice, no source',
  functions: ['chargeBalance'],
  cautions: ['Smart-charging vehicles may give less than this; treat the result as a best case.'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: {
      alternatorA: 120,
      idlePercent: 50,
      baseA: 45,
      accessoryA: 6,
      driveH: 2.5,
      idleH: 1,
      stoppedH: 6,
      stoppedA: 4,
      acceptA: 20,
    },
    out: { idleSurplusA: '9.0', driveSurplusA: '57.0', inAh: '59.0', outAh: '24.0', netAh: '29.1' },
  },
};
