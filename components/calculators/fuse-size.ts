import { fuseFor, workshopLimit } from '../../calc/index.ts';
import { model as fuseSizer } from '../fuse-sizer/model.ts';
import { type Calculator, cell, figure, number, wireField } from './form.ts';

export const calculator: Calculator = {
  id: 'fuse-size',
  number: 'C03',
  title: 'Fuse sizer',
  lead: 'The smallest fuse that carries the load and still protects the thinnest wire behind it.',
  fields: () => [
    number(
      'designA',
      'Design current',
      'current',
      2.18,
      [0.05, 120, 0.1],
      'Design current must be 0.05 to 120 A. Take design_A from the load calculator.',
    ),
    number(
      'factor',
      'Continuous-use factor',
      'ratio',
      1.25,
      [1, 1.6, 0.05],
      'Factor must be 1.0 to 1.6. 1.25 keeps a steady load at or below 80 % of the fuse.',
    ),
    number(
      'peakA',
      'Inrush peak',
      'current',
      12,
      [0, 1000, 1],
      'Inrush must be 0 to 1000 A. Unknown? Measure it on the bench, or leave 0 and the result is marked "inrush not checked".',
    ),
    number(
      'peakMs',
      'Inrush length',
      'milliseconds',
      5,
      [0, 1000, 1],
      'Inrush length must be 0 to 1000 ms. Over 80 ms is not inrush: raise the design current instead.',
    ),
    wireField(
      'thinnestMm2',
      'Thinnest wire after the fuse, pigtails included',
      0.5,
      'Choose a wire size from the list. Look at the lamp pigtail, it is often the thinnest. Thinner than 0.5: fit a smaller pigtail fuse and ask the lead.',
    ),
  ],
  compute(input, { shop, say }) {
    const [designA, factor, peakA, peakMs, thinnestMm2] = [
      input.n('designA'),
      input.n('factor'),
      input.n('peakA'),
      input.n('peakMs'),
      input.n('thinnestMm2'),
    ];
    const name = `the ${say(thinnestMm2, 'area')} wire`;
    const { limitA } = workshopLimit({ areaMm2: thinnestMm2 });
    const answer = fuseFor({
      currentA: designA,
      continuousFraction: 1 / factor,
      inrushA: peakA,
      inrushMs: peakMs,
      wires: [{ name, limitA }],
      stockedA: shop.stockedFusesA,
      systemV: shop.systemV,
    });
    const needA = designA * factor;
    const minimumA = shop.stockedFusesA.find((rating) => rating >= needA * (1 - 1e-9));
    const chosenA = answer.found ? answer.ratingA : null;
    const unchecked = answer.found && !answer.inrushChecked;
    return {
      main: 'chosenA',
      flag: chosenA === null ? 'stop' : answer.found && answer.caution !== null ? 'warn' : unchecked ? 'note' : 'pass',
      flagText:
        chosenA === null
          ? 'No fuse does both'
          : answer.found && answer.caution !== null
            ? 'Check the inrush'
            : unchecked
              ? 'Inrush not checked'
              : 'Fits the cable',
      say:
        chosenA === null
          ? 'Carrying the load and protecting the wire ask for different sizes.'
          : chosenA === minimumA
            ? 'The next stocked size above the need.'
            : `${say(minimumA ?? null, 'current')} carries the load; ${say(chosenA, 'current')} is chosen because of the inrush.`,
      outputs: [
        { key: 'chosenA', label: 'Fuse', value: chosenA ?? 'none', kind: 'current' },
        { key: 'needA', label: 'Need', value: needA, kind: 'current' },
        {
          key: 'minimumA',
          label: 'Smallest that carries the load',
          value: minimumA ?? 'none stocked',
          kind: 'current',
        },
        {
          key: 'peakOverChosen',
          label: 'Inrush over fuse',
          value: chosenA === null ? 'no fuse' : peakA / chosenA,
          kind: 'ratio',
        },
        { key: 'limitA', label: 'Largest fuse for the wire', value: limitA, kind: 'current' },
      ],
      formula: [
        cell('', 'need', say(needA, 'current'), 'calc', 'least rating'),
        cell('=', 'I', say(designA, 'current'), 'set', 'design current'),
        cell('×', 'f', figure(factor), 'set', 'continuous use'),
      ],
      work: [
        peakA > 0 ? `inrush ${say(peakA, 'current')} ÷ 3.5 = ${say(peakA / 3.5, 'current')}` : 'inrush not checked',
        `${name}: at most ${say(limitA, 'current')}`,
      ],
      reasons: answer.found ? (answer.caution === null ? [] : [answer.caution]) : answer.reasons,
      change: answer.found ? [] : answer.change,
    };
  },
  source:
    '80 % loading: common practice, no source. 3.5 × for under 80 ms: ISO 8820-3 blade fuses hold 350 % for at least 0.08 s (from memory, check the current edition). Largest fuse for a wire: common practice, no source',
  functions: ['fuseFor', 'workshopLimit'],
  cautions: ['Limit the inrush or thicken the pigtail, never the fuse alone.'],
  picture: {
    instrument: 'fuse',
    view: (input, job) =>
      fuseSizer(
        {
          currentA: input.n('designA'),
          continuousFraction: 1 / input.n('factor'),
          inrushA: input.n('peakA'),
          inrushMs: input.n('peakMs'),
          thinnestMm2: input.n('thinnestMm2'),
        },
        job,
      ),
  },
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { designA: 2.18, factor: 1.25, peakA: 12, peakMs: 5, thinnestMm2: 0.5 },
    out: { needA: '2.73', minimumA: '3', chosenA: '5', peakOverChosen: '2.4', limitA: '5' },
  },
};
