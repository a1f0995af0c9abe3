import { faultClears } from '../../calc/index.ts';
import { type Calculator, cell, figure, fuseField, number, returnField, ways, wireField } from './form.ts';

export const calculator: Calculator = {
  id: 'fault-clear',
  number: 'C08',
  title: 'Will a short blow the fuse?',
  lead: 'Whether a short at the far end draws enough to open the fuse before the wire cooks.',
  fields: (shop) => [
    number(
      'supplyV',
      'Supply voltage',
      'voltage',
      12,
      [9, 32, 0.1],
      'Supply must be 9 to 32 V. Use 12 or 24 for the nominal, or the voltage you measured.',
    ),
    number(
      'sourceMohm',
      'Battery and main leads',
      'milliohms',
      20,
      [2, 200, 1],
      'Source resistance must be 2 to 200 milliohm. 20 for a starter battery and its leads; more when cold or old.',
    ),
    number('oneWayM', 'One-way length', 'length', 8, [0.1, 40, 0.1], 'Length must be 0.1 to 40 m.'),
    wireField('sizeMm2', 'Wire size', 1.5),
    returnField(),
    number(
      'copperC',
      'Conductor temperature',
      'temperature',
      60,
      [-20, 90, 5],
      'Conductor temperature must be -20 to 90 C.',
    ),
    number('jointMohm', 'Joint allowance', 'milliohms', 10, [0, 100, 1], 'Joint allowance must be 0 to 100 milliohm.'),
    fuseField('fuseA', shop, 5),
  ],
  compute(input, { say }) {
    const [supplyV, sourceMohm, oneWayM, areaMm2, temperatureC, jointMohm, fuseA] = [
      input.n('supplyV'),
      input.n('sourceMohm'),
      input.n('oneWayM'),
      input.n('sizeMm2'),
      input.n('copperC'),
      input.n('jointMohm'),
      input.n('fuseA'),
    ];
    const result = faultClears({
      supplyV,
      sourceOhm: sourceMohm / 1000,
      lengthM: oneWayM * ways(input),
      areaMm2,
      temperatureC,
      jointOhm: jointMohm / 1000,
      fuseA,
    });
    const passes = result.verdict === 'pass';
    return {
      main: 'faultA',
      flag: result.verdict,
      flagText: passes ? 'Blows in good time' : 'The wire would cook first',
      say: `A short at the far end draws ${figure(result.timesFuse)} times the fuse; at least 5 times is wanted.`,
      outputs: [
        { key: 'faultA', label: 'Current of the short', value: result.faultA, kind: 'current' },
        { key: 'timesFuse', label: 'Times the fuse', value: result.timesFuse, kind: 'ratio' },
        { key: 'loopMohm', label: 'Loop', value: result.loopOhm * 1000, kind: 'milliohms' },
      ],
      formula: [
        cell('', 'If', say(result.faultA, 'current'), 'calc', 'current of the short'),
        cell('=', 'V', say(supplyV, 'voltage'), 'set', 'supply'),
        cell('÷', 'Rloop', `${figure(result.loopOhm * 1000)} mΩ`, 'calc', 'source, run and joints'),
      ],
      work: [
        `${figure(sourceMohm)} + ${figure(result.loopOhm * 1000 - sourceMohm - jointMohm)} + ${figure(jointMohm)} = ${figure(result.loopOhm * 1000)} mΩ`,
        `${say(result.faultA, 'current')} ÷ ${say(fuseA, 'current')} = ${figure(result.timesFuse)} times`,
      ],
      change: passes ? [] : ['A thicker wire, a shorter run, or a smaller fuse.'],
    };
  },
  source: 'Five times the fuse: common practice, no source; IEC 60228 class 5 plain copper',
  functions: ['faultClears'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: {
      supplyV: 12,
      sourceMohm: 20,
      oneWayM: 8,
      sizeMm2: 1.5,
      returnPath: 'chassis',
      copperC: 60,
      jointMohm: 10,
      fuseA: 5,
    },
    out: { loopMohm: '153.1', faultA: '78.4', timesFuse: '15.7' },
  },
};
