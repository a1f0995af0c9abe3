import { GROUND_LIMITS, GROUND_STEPS, judgeGround } from '../../calc/index.ts';
import { type Calculator, cell, choice, figure, number } from './form.ts';

const BODIES = ['steel', 'aluminium', 'GRP'] as const;

export const calculator: Calculator = {
  id: 'ground-point',
  number: 'C34',
  title: 'Ground point',
  lead: 'How a ground point is prepared, and whether the drop across it may stay.',
  fields: () => [
    number(
      'dropMv',
      'Drop, lug to negative post, in millivolts',
      'ratio',
      50,
      [0, 5000, 5],
      'Drop must be 0 to 5000 mV, measured at load current.',
    ),
    number(
      'currentA',
      'Load current',
      'current',
      10,
      [0.1, 500, 0.5],
      'Load current must be 0.1 to 500 A: without current there is no drop to measure.',
    ),
    number('lugs', 'Lugs on the stud', 'count', 2, [1, 10, 1], 'Lugs must be 1 to 10.'),
    choice('body', 'Body', 'steel', BODIES, 'Choose what the body is made of there.'),
  ],
  compute(input, { say }) {
    const dropV = input.n('dropMv') / 1000;
    const body = BODIES.find((each) => each === input.s('body'))!;
    const currentA = input.n('currentA');
    const result = judgeGround({ dropV, lugs: input.n('lugs'), body });
    const good = result.verdict === 'accept';
    const mohm = (dropV / currentA) * 1000;
    return {
      main: 'verdict',
      flag: good ? 'pass' : 'stop',
      flagText: good ? 'Accept' : 'Reject',
      say: good
        ? 'Seal it with paint or paste now, after tightening.'
        : 'Take it apart, clean to bright metal, measure again.',
      outputs: [
        { key: 'verdict', label: 'This ground point', value: result.verdict },
        { key: 'mohm', label: 'Path it makes', value: mohm, kind: 'milliohms' },
        { key: 'powerW', label: 'Heat in it', value: dropV * currentA, kind: 'power' },
        { key: 'limitV', label: 'Drop at most', value: GROUND_LIMITS.maxDropV, kind: 'voltage' },
      ],
      formula: [
        cell('', 'R', say(mohm, 'milliohms'), 'calc', 'the path to the post'),
        cell('=', 'U', `${figure(dropV * 1000)} mV`, 'set', 'drop'),
        cell('÷', 'I', say(currentA, 'current'), 'set', 'load current'),
      ],
      work: GROUND_STEPS.steps.map(({ do: act, why }, index) => `${index + 1}. ${act} ${why}`),
      reasons: result.reasons,
    };
  },
  source: 'Steps, 0.1 V and three lugs: common practice, no source',
  functions: ['judgeGround'],
  cautions: [
    'Not on the battery post past a battery sensor, not near gas, and none of it on a high-voltage vehicle without the right person.',
  ],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { dropMv: 50, currentA: 10, lugs: 2, body: 'steel' },
    out: { verdict: 'accept', mohm: '5.00', powerW: '0.50' },
  },
};
