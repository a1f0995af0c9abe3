import { chargeTime } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

export const calculator: Calculator = {
  id: 'charge-time',
  number: 'C16',
  title: 'Charge time and charger feed',
  lead: 'How long a charger needs, and what its feed must carry.',
  fields: () => [
    number('batteryAh', 'Battery', 'charge', 100, [5, 800, 5], 'Battery must be 5 to 800 Ah.'),
    number(
      'fromPercent',
      'Charge now',
      'percent',
      50,
      [0, 80, 5],
      'Charge now must be 0 to 80 %. Above 80 only the absorption time counts.',
    ),
    number(
      'chargerA',
      'Charger output',
      'current',
      20,
      [1, 120, 1],
      "Charger must be 1 to 120 A and within the battery maker's limit.",
    ),
    number(
      'chargePercent',
      'Charge efficiency',
      'percent',
      90,
      [70, 99, 1],
      'Efficiency must be 70 to 99 %. 90 lead, 98 lithium.',
    ),
    number('absorbH', 'Absorption time', 'hours', 3, [0, 8, 0.5], 'Absorption must be 0 to 8 h. 3 lead, 0.5 lithium.'),
    number(
      'outV',
      'Charge voltage',
      'voltage',
      14.4,
      [13, 30, 0.1],
      'Charge voltage must be 13 to 30 V and match the battery chemistry.',
    ),
    number('inV', 'Lowest input voltage', 'voltage', 12, [10, 30, 0.1], 'Input voltage must be 10 to 30 V.'),
    number(
      'converterPercent',
      'Converter efficiency',
      'percent',
      85,
      [60, 98, 1],
      'Converter efficiency must be 60 to 98 %.',
    ),
  ],
  compute(input, { shop, say }) {
    const [capacityAh, from, chargerA, charge, absorptionH, outV, inV, converter] = [
      input.n('batteryAh'),
      input.n('fromPercent'),
      input.n('chargerA'),
      input.n('chargePercent'),
      input.n('absorbH'),
      input.n('outV'),
      input.n('inV'),
      input.n('converterPercent'),
    ];
    const result = chargeTime({
      capacityAh,
      fromFraction: from / 100,
      chargerA,
      chargeFraction: charge / 100,
      absorptionH,
      outV,
      inV,
      converterFraction: converter / 100,
      stockedA: shop.stockedFusesA,
    });
    return {
      main: 'totalH',
      flag: result.inputFuseA === null ? 'stop' : 'pass',
      flagText:
        result.inputFuseA === null
          ? 'No stocked fuse is large enough'
          : `Feed fuse ${say(result.inputFuseA, 'current')}`,
      say: `${say(result.bulkH, 'hours')} to 80 %, then ${say(absorptionH, 'hours')} of absorption.`,
      outputs: [
        { key: 'totalH', label: 'Total', value: result.totalH, kind: 'hours' },
        { key: 'bulkH', label: 'Bulk', value: result.bulkH, kind: 'hours' },
        { key: 'inputA', label: 'Input current', value: result.inputA, kind: 'current' },
        { key: 'inputFuseA', label: 'Input fuse', value: result.inputFuseA ?? 'none stocked', kind: 'current' },
      ],
      formula: [
        cell('', 't', say(result.bulkH, 'hours'), 'calc', 'bulk'),
        cell('=', 'Q', say((capacityAh * (80 - from)) / 100, 'charge'), 'calc', 'missing up to 80 %'),
        cell('÷', 'I', say(chargerA, 'current'), 'set', 'charger output'),
        cell('÷', 'η', `${figure(charge)} %`, 'set', 'charge efficiency'),
      ],
      work: [
        `${say(outV, 'voltage')} × ${say(chargerA, 'current')} ÷ (${figure(converter)} % × ${say(inV, 'voltage')}) = ${say(result.inputA, 'current')}`,
        `${say(result.inputA, 'current')} × 1.25 = ${say(result.inputA * 1.25, 'current')}`,
      ],
      change: result.inputFuseA === null ? ['A smaller charger, or a fuse form with larger ratings.'] : [],
    };
  },
  source: 'common practice, no source',
  functions: ['chargeTime'],
  cautions: [
    'The charge profile must match the chemistry; lithium must not be charged below its low-temperature limit. Vent lead batteries.',
  ],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: {
      batteryAh: 100,
      fromPercent: 50,
      chargerA: 20,
      chargePercent: 90,
      absorbH: 3,
      outV: 14.4,
      inV: 12,
      converterPercent: 85,
    },
    out: { bulkH: '1.67', totalH: '4.67', inputA: '28.2', inputFuseA: '40' },
  },
};
