import { ratingAtMost, workshopLimit } from '../../calc/index.ts';
import { type Calculator, cell, number, wireField } from './form.ts';

export const calculator: Calculator = {
  id: 'bundle-derate',
  number: 'C07',
  title: 'Bundle and heat',
  lead: 'How much less a wire may carry in a warm loom among others.',
  fields: () => [
    wireField('sizeMm2', 'Wire size', 1.5),
    number(
      'wires',
      'Loaded wires in the bundle',
      'count',
      6,
      [1, 40, 1],
      'Count must be 1 to 40. Count wires that carry load current together; coil wires do not count.',
    ),
    number(
      'ambientC',
      'Air around the loom',
      'temperature',
      60,
      [-20, 85, 5],
      'Ambient must be -20 to 85 C and below the insulation limit. Roof in sun or engine bay: 50 to 85.',
      (all) => Number(all['ambientC']) < Number(all['insulationC']),
    ),
    number(
      'insulationC',
      'Insulation limit',
      'temperature',
      90,
      [70, 150, 5],
      'Insulation limit must be 70 to 150 C. Read the print on the wire.',
    ),
  ],
  compute(input, { shop, say }) {
    const [areaMm2, wires, ambientC, insulationC] = [
      input.n('sizeMm2'),
      input.n('wires'),
      input.n('ambientC'),
      input.n('insulationC'),
    ];
    const limit = workshopLimit({ areaMm2, wires, ambientC, insulationC });
    const fuseA = ratingAtMost({ limitA: limit.limitA, ratingsA: shop.stockedFusesA });
    return {
      main: 'limitA',
      flag: fuseA === null ? 'stop' : 'pass',
      flagText: fuseA === null ? 'No stocked fuse protects it' : `Fuse ${say(fuseA, 'current')} or less`,
      say: `In open air this size may stand behind ${say(limit.tableA, 'current')}.`,
      outputs: [
        { key: 'limitA', label: 'Limit', value: limit.limitA, kind: 'current' },
        { key: 'fuseA', label: 'Largest stocked fuse', value: fuseA ?? 'none', kind: 'current' },
        { key: 'bundleFactor', label: 'Bundle factor', value: limit.bundleFactor, kind: 'ratio' },
        { key: 'heatFactor', label: 'Heat factor', value: limit.heatFactor, kind: 'ratio' },
      ],
      formula: [
        cell('', 'limit', say(limit.limitA, 'current'), 'calc', 'largest fuse'),
        cell('=', 'table', say(limit.tableA, 'current'), 'plain', `${say(areaMm2, 'area')} in open air`),
        cell('×', 'kb', String(limit.bundleFactor), 'calc', `${wires} loaded wires together`),
        cell('×', 'kt', limit.heatFactor.toFixed(3), 'calc', 'heat of the air'),
      ],
      work: [
        `kt = √((${insulationC} − ${ambientC}) ÷ (${insulationC} − 50)), at most 1 = ${limit.heatFactor.toFixed(3)} (in °C)`,
      ],
    };
  },
  source: 'Bundle steps: common practice, no source; heat factor: the square law of conductor heating',
  functions: ['workshopLimit', 'ratingAtMost'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { sizeMm2: 1.5, wires: 6, ambientC: 60, insulationC: 90 },
    out: { bundleFactor: '0.7', heatFactor: '0.866', limitA: '9.09', fuseA: '7.5' },
  },
};
