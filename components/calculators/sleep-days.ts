import { standingDays } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

export const calculator: Calculator = {
  id: 'sleep-days',
  number: 'C13',
  title: 'Standing days before a flat battery',
  lead: 'How long the vehicle can stand and still start, before and after the accessory.',
  fields: () => [
    number('batteryAh', 'Battery', 'charge', 70, [5, 500, 5], 'Battery must be 5 to 500 Ah.'),
    number('startPercent', 'Charge when parked', 'percent', 80, [40, 100, 5], 'Parked charge must be 40 to 100 %.'),
    number(
      'minPercent',
      'Charge that still starts',
      'percent',
      50,
      [20, 80, 5],
      'Starting charge must be 20 to 80 % and below the parked charge.',
      (all) => Number(all['minPercent']) < Number(all['startPercent']),
    ),
    number(
      'baseMa',
      'Sleep current before the work',
      'milliamps',
      25,
      [0, 2000, 1],
      'Sleep current must be 0 to 2000 mA. Wait until the vehicle sleeps (often 20 to 60 minutes) with the bonnet catch latched.',
    ),
    number(
      'addedMa',
      'Added by the accessory',
      'milliamps',
      8,
      [0, 2000, 1],
      'Added current must be 0 to 2000 mA. After minus before; if negative, measure again.',
    ),
    number('selfPercent', 'Self-discharge per 30 days', 'percent', 3, [0, 20, 1], 'Self-discharge must be 0 to 20 %.'),
  ],
  compute(input, { shop, say }) {
    const [capacityAh, start, min, baseMa, addedMa, self] = [
      input.n('batteryAh'),
      input.n('startPercent'),
      input.n('minPercent'),
      input.n('baseMa'),
      input.n('addedMa'),
      input.n('selfPercent'),
    ];
    const result = standingDays({
      capacityAh,
      startFraction: start / 100,
      minFraction: min / 100,
      baseA: baseMa / 1000,
      addedA: addedMa / 1000,
      selfFractionPerMonth: self / 100,
      wantedDays: shop.standingDays,
    });
    const passes = result.verdict === 'pass';
    const days = (value: number): number | string => (Number.isFinite(value) ? value : 'no end: nothing drains it');
    const drainMa = baseMa + addedMa + result.selfA * 1000;
    return {
      main: 'daysAfter',
      flag: result.verdict,
      flagText: passes ? `${shop.standingDays} days or more` : `Under ${shop.standingDays} days`,
      say: `Without the accessory: ${Number.isFinite(result.daysBefore) ? say(result.daysBefore, 'days') : 'no end'}.`,
      outputs: [
        { key: 'daysAfter', label: 'Standing days, after', value: days(result.daysAfter), kind: 'days' },
        { key: 'daysBefore', label: 'Standing days, before', value: days(result.daysBefore), kind: 'days' },
        { key: 'usableAh', label: 'Usable charge', value: result.usableAh, kind: 'charge' },
        { key: 'selfMa', label: 'Self-discharge', value: result.selfA * 1000, kind: 'milliamps' },
      ],
      formula: [
        cell(
          '',
          'days',
          Number.isFinite(result.daysAfter) ? say(result.daysAfter, 'days') : 'no end',
          'calc',
          'standing days',
        ),
        cell('=', 'Q', say(result.usableAh, 'charge'), 'calc', 'usable charge'),
        cell('÷', 'I', say(drainMa, 'milliamps'), 'calc', 'all that drains it'),
        cell('÷', '24', '24', 'plain', 'hours in a day'),
      ],
      work: [
        `${say(capacityAh, 'charge')} × (${figure(start)} − ${figure(min)}) % = ${say(result.usableAh, 'charge')}`,
        `${say(baseMa, 'milliamps')} + ${say(addedMa, 'milliamps')} + ${say(result.selfA * 1000, 'milliamps')} = ${say(drainMa, 'milliamps')}`,
      ],
      change: passes ? [] : ['Less standby current, an isolator for long standing, or a maintenance charger.'],
    };
  },
  source: '21 days and percentages: common practice, no source, workshop setting',
  functions: ['standingDays'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { batteryAh: 70, startPercent: 80, minPercent: 50, baseMa: 25, addedMa: 8, selfPercent: 3 },
    out: { usableAh: '21.0', selfMa: '2.9', daysBefore: '31.3', daysAfter: '24.4' },
  },
};
