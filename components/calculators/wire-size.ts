import { gaugeFor } from '../../calc/index.ts';
import { model as gaugeChooser } from '../gauge-chooser/model.ts';
import { type Calculator, cell, figure, fuseField, number, returnField, WIRE_SIZES_MM2, ways } from './form.ts';

export const calculator: Calculator = {
  id: 'wire-size',
  number: 'C04',
  title: 'Gauge chooser',
  lead: 'The thinnest cable that keeps the loss under your limit and may stand behind its fuse.',
  fields: (shop) => [
    number('designA', 'Design current', 'current', 2.18, [0.05, 120, 0.1], 'Design current must be 0.05 to 120 A.'),
    number(
      'oneWayM',
      'One-way length, fuse to load along the route',
      'length',
      8,
      [0.1, 40, 0.1],
      'Length must be 0.1 to 40 m. Measure with a string along the route, not straight across.',
    ),
    returnField('Choose the return path. GRP, caravan and trailer bodies need two-wire.'),
    number(
      'dropPercent',
      'Allowed drop',
      'percent',
      3,
      [0.5, 10, 0.5],
      'Allowed drop must be 0.5 to 10 %. 3 for lamps and chargers, 5 for relay coils, 1 for voltage sensing.',
    ),
    number(
      'nominalV',
      'Supply voltage',
      'voltage',
      12,
      [9, 32, 0.1],
      'Supply must be 9 to 32 V. Use 12 or 24 for the nominal, or the voltage you measured.',
    ),
    number(
      'copperC',
      'Conductor temperature',
      'temperature',
      60,
      [-20, 90, 5],
      'Conductor temperature must be -20 to 90 C. 60 is the default for a warm loom.',
    ),
    number(
      'jointMohm',
      'Allowance for joints and terminals',
      'milliohms',
      10,
      [0, 100, 1],
      'Joint allowance must be 0 to 100 milliohm. 10 for four good crimps.',
    ),
    fuseField('fuseA', shop, 5),
  ],
  compute(input, { say }) {
    const [currentA, oneWayM, percent, systemV, conductorC, jointMohm, fuseA] = [
      input.n('designA'),
      input.n('oneWayM'),
      input.n('dropPercent'),
      input.n('nominalV'),
      input.n('copperC'),
      input.n('jointMohm'),
      input.n('fuseA'),
    ];
    const n = ways(input);
    const answer = gaugeFor({
      currentA,
      lengthM: oneWayM * n,
      systemV,
      allowedDropFraction: percent / 100,
      conductorC,
      jointOhm: jointMohm / 1000,
      minFuseA: fuseA,
      sizesMm2: WIRE_SIZES_MM2,
    });
    const allowedV = (systemV * percent) / 100;
    const chosen = answer.found ? answer.rows.find((row) => row.areaMm2 === answer.areaMm2)! : null;
    const r = answer.found ? answer.working.find((line) => line.symbol === 'R')!.value : null;
    return {
      main: 'sizeMm2',
      flag: answer.found ? 'pass' : 'stop',
      flagText: answer.found ? `Under ${say(percent, 'percent')}` : 'No size on the list serves',
      say: answer.found
        ? `Decided by the ${answer.decidedBy === 'heat' ? 'current' : answer.decidedBy}.`
        : 'Here is why, and what would change it.',
      outputs: [
        { key: 'sizeMm2', label: 'Wire size', value: answer.found ? answer.areaMm2 : 'none', kind: 'area' },
        { key: 'allowedV', label: 'Allowed drop', value: allowedV, kind: 'voltage' },
        { key: 'dropV', label: 'Drop', value: chosen?.dropV ?? 'none', kind: 'voltage' },
        {
          key: 'dropPercent',
          label: 'Drop',
          value: chosen === null ? 'none' : chosen.dropFraction * 100,
          kind: 'percent',
        },
        { key: 'fuseLimitA', label: 'Largest fuse for this size', value: chosen?.limitA ?? 'none', kind: 'current' },
      ],
      formula: [
        cell('', 'Vd', say(chosen?.dropV ?? null, 'voltage'), 'calc', 'lost along the run'),
        cell('=', 'I', say(currentA, 'current'), 'set', 'current'),
        cell(
          '×',
          'R',
          r === null ? 'not known' : `${figure(r + jointMohm)} mΩ`,
          'calc',
          `copper at ${say(conductorC, 'temperature')}, joints in it`,
        ),
      ],
      work: [
        `${say(oneWayM, 'length')} × ${n} ${n === 1 ? 'way, the body carries the return' : 'ways'} = ${say(oneWayM * n, 'length')} of copper`,
        `${say(systemV, 'voltage')} × ${say(percent, 'percent')} = ${say(allowedV, 'voltage')} allowed`,
      ],
      reasons: answer.found ? [] : answer.reasons,
      change: answer.found ? [] : answer.change,
    };
  },
  source:
    'IEC 60228 class 5 plain copper, maximum resistance at 20 °C; largest fuse per wire: 33 CFR 183.425 and common practice, no source',
  functions: ['gaugeFor', 'wireLimit', 'voltageDrop'],
  cautions: ['The steel body is treated as 0 Ω; measure it at hold point 3.'],
  picture: {
    instrument: 'wire',
    view: (input, job) =>
      gaugeChooser(
        {
          currentA: input.n('designA'),
          lengthM: input.n('oneWayM') * ways(input),
          dropFraction: input.n('dropPercent') / 100,
          systemV: input.n('nominalV'),
          fuseA: input.n('fuseA'),
          conductorC: input.n('copperC'),
          jointOhm: input.n('jointMohm') / 1000,
        },
        job,
      ),
  },
  example: {
    from: 'Workshop example, computed apart from this code',
    in: {
      designA: 2.18,
      oneWayM: 8,
      returnPath: 'chassis',
      dropPercent: 3,
      nominalV: 12,
      copperC: 60,
      jointMohm: 10,
      fuseA: 5,
    },
    out: { allowedV: '0.36', sizeMm2: '1.5', dropV: '0.29', dropPercent: '2.42', fuseLimitA: '15' },
  },
};
