import { stripCut } from '../../calc/index.ts';
import { type Answer, type Calculator, cell, figure, number, type Tools } from './form.ts';

/** A strip that needs more than this is no strip any more. */
const MOST_FEEDS = 100;

const tooMany = (stripA: number, say: Tools['say']): Answer => ({
  main: 'feeds',
  flag: 'stop',
  flagText: 'Not with one strip',
  say: 'It would need more than a hundred feed points.',
  outputs: [
    { key: 'feeds', label: 'Feed points', value: 'more than 100' },
    { key: 'stripA', label: 'Strip current', value: stripA, kind: 'current' },
  ],
  formula: [cell('', 'I', say(stripA, 'current'), 'calc', 'strip current')],
  work: [],
  change: ['Shorter strips, each with its own feed; a strip with thicker track; or a larger allowed drop.'],
});

export const calculator: Calculator = {
  id: 'strip-cut',
  number: 'C19',
  title: 'Strip cut and feed points',
  lead: 'Where to cut a strip, and at how many places to feed it.',
  fields: () => [
    number(
      'wantMm',
      'Space available',
      'millimetres',
      2130,
      [20, 50000, 10],
      'Space must be 20 to 50000 mm. Type millimetres.',
      (all) => Number(all['wantMm']) >= Number(all['pitchMm']),
    ),
    number(
      'pitchMm',
      'Cut pitch',
      'millimetres',
      50,
      [5, 200, 1],
      'Cut pitch must be 5 to 200 mm: the distance between the scissor marks.',
    ),
    number(
      'realAPerM',
      'Real current per metre',
      'currentPerMetre',
      0.743,
      [0.02, 4, 0.01],
      'Real current must be 0.02 to 4 A/m. Take real_A / length from the strip calculator, not the label.',
    ),
    number(
      'trackMohmPerM',
      'Track resistance, out and back',
      'milliohmsPerMetre',
      200,
      [20, 2000, 10],
      'Track must be 20 to 2000 milliohm per metre. Unknown: 200, then measure the far end on the bench.',
    ),
    number('maxDropV', 'Allowed drop to the end', 'voltage', 0.5, [0.1, 2, 0.1], 'Allowed drop must be 0.1 to 2 V.'),
  ],
  compute(input, { say }) {
    const [wantMm, pitchMm, realAPerM, trackMohmPerM, maxDropV] = [
      input.n('wantMm'),
      input.n('pitchMm'),
      input.n('realAPerM'),
      input.n('trackMohmPerM'),
      input.n('maxDropV'),
    ];
    const lengthM = (Math.floor(wantMm / pitchMm + 1e-9) * pitchMm) / 1000;
    const feeds = lengthM * Math.sqrt((realAPerM * trackMohmPerM) / 1000 / 2 / maxDropV);
    if (feeds > MOST_FEEDS) return tooMany(lengthM * realAPerM, say);
    const result = stripCut({ wantMm, pitchMm, realAPerM, trackOhmPerM: trackMohmPerM / 1000, maxDropV });
    return {
      main: 'cutMm',
      flag: 'pass',
      flagText: `Feed at ${result.feeds} ${result.feeds === 1 ? 'place' : 'places'}`,
      say: `${result.groups} groups fit; ${say(result.gapMm, 'millimetres')} stay free. Cut on the copper pads only.`,
      outputs: [
        { key: 'cutMm', label: 'Cut length', value: result.cutMm, kind: 'millimetres' },
        { key: 'groups', label: 'Groups', value: result.groups, kind: 'count' },
        { key: 'gapMm', label: 'Left over', value: result.gapMm, kind: 'millimetres' },
        { key: 'stripA', label: 'Strip current', value: result.stripA, kind: 'current' },
        { key: 'endDropV', label: 'Drop to the end, fed at one end', value: result.endDropV, kind: 'voltage' },
        { key: 'feeds', label: 'Feed points', value: result.feeds, kind: 'count' },
      ],
      formula: [
        cell('', 'Ve', say(result.endDropV, 'voltage'), 'calc', 'drop to the end'),
        cell('=', 'I', say(result.stripA, 'current'), 'calc', 'strip current'),
        cell('×', 'r', say(trackMohmPerM, 'milliohmsPerMetre'), 'set', 'track, out and back'),
        cell('×', 'L', `${figure(result.cutMm / 1000)} m`, 'calc', 'cut length'),
        cell('÷', '2', '2', 'plain', 'the load is spread evenly'),
      ],
      work: [`${say(wantMm, 'millimetres')} ÷ ${say(pitchMm, 'millimetres')}, rounded down = ${result.groups} groups`],
    };
  },
  source: 'Even-load line; 200 mΩ/m: common practice, no source',
  functions: ['stripCut'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { wantMm: 2130, pitchMm: 50, realAPerM: 0.743, trackMohmPerM: 200, maxDropV: 0.5 },
    out: { groups: '42', cutMm: '2100', gapMm: '30', stripA: '1.56', endDropV: '0.328', feeds: '1' },
  },
};
