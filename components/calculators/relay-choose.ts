import { LOAD_KINDS, relayChoice } from '../../calc/index.ts';
import { type Calculator, cell, choice, number } from './form.ts';

export const calculator: Calculator = {
  id: 'relay-choose',
  number: 'C09',
  title: 'Relay chooser',
  lead: 'Whether the contact stands the load, and whether the output that drives the coil can.',
  fields: () => [
    number('loadA', 'Switched current', 'current', 8, [0.05, 150, 0.5], 'Switched current must be 0.05 to 150 A.'),
    choice(
      'loadKind',
      'Load kind',
      'motor',
      LOAD_KINDS,
      'Choose the load kind. Fans, pumps and winches are motors; chargers and LED lamps are drivers.',
    ),
    number(
      'contactA',
      'Make-contact (87) rating at system voltage',
      'current',
      30,
      [1, 200, 1],
      'Contact rating must be 1 to 200 A. Use the 87 rating, not 87a, and the one for your voltage.',
    ),
    number(
      'coilOhm',
      'Coil resistance',
      'resistance',
      90,
      [20, 2000, 5],
      'Coil must be 20 to 2000 ohm. Measure between 85 and 86 with the relay on the bench.',
    ),
    number('maxV', 'Highest voltage', 'voltage', 14.4, [12, 32, 0.1], 'Highest voltage must be 12 to 32 V.'),
    number(
      'outputMa',
      'What the driving output may give',
      'milliamps',
      100,
      [0, 5000, 10],
      'Output limit must be 0 to 5000 mA. Unknown body-controller output: leave 0 and the check stops; use a switch or a buffer.',
    ),
  ],
  compute(input, { say }) {
    const [loadA, contactA, coilOhm, maxV, outputMa] = [
      input.n('loadA'),
      input.n('contactA'),
      input.n('coilOhm'),
      input.n('maxV'),
      input.n('outputMa'),
    ];
    const loadKind = LOAD_KINDS.find((each) => each === input.s('loadKind'))!;
    const result = relayChoice({ loadA, loadKind, contactA, coilOhm, maxV, outputA: outputMa / 1000 });
    const contact = result.contactVerdict === 'pass';
    const output = result.outputVerdict === 'pass';
    return {
      main: 'contactNeededA',
      flag: contact && output ? 'pass' : 'stop',
      flagText: contact
        ? output
          ? 'Contact and output serve'
          : 'The output cannot drive it'
        : output
          ? 'The contact is too small'
          : 'Neither contact nor output serves',
      say: output ? 'The output can feed the coil.' : 'Drive the coil through a switch or a buffer.',
      outputs: [
        {
          key: 'contactNeededA',
          label: 'Contact rating needed',
          value: result.contactNeededA,
          kind: 'current',
          state: result.contactVerdict,
        },
        {
          key: 'coilMa',
          label: 'Coil current',
          value: result.coilA * 1000,
          kind: 'milliamps',
          state: result.outputVerdict,
        },
        { key: 'coilW', label: 'Coil power', value: result.coilW, kind: 'power' },
      ],
      formula: [
        cell('', 'Ic', say(result.contactNeededA, 'current'), 'calc', 'contact rating needed'),
        cell('=', 'I', say(loadA, 'current'), 'set', 'switched current'),
        cell('÷', 'k', (loadA / result.contactNeededA).toFixed(2), 'plain', `share for a load of kind ${loadKind}`),
      ],
      work: [
        `${say(maxV, 'voltage')} ÷ ${say(coilOhm, 'resistance')} = ${say(result.coilA * 1000, 'milliamps')}, the output gives ${say(outputMa, 'milliamps')}`,
      ],
      change: [
        ...(contact ? [] : ['A relay with a larger contact, or two relays that share the load by circuits.']),
        ...(output ? [] : ['A switch or a buffer between output and coil, or a coil of more ohms.']),
      ],
    };
  },
  source: 'Terminal numbers: DIN 72552; shares by kind of load: common practice, no source',
  functions: ['relayChoice', 'contactNeeded', 'coilCurrent'],
  cautions: [
    '30 is the common contact, 87 closes with the coil, 87a opens with it, 85 and 86 are the coil.',
    'If the relay has a built-in diode, 86 must be positive. Some relays swap the 30 and 86 positions: read the relay, not the memory.',
  ],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { loadA: 8, loadKind: 'motor', contactA: 30, coilOhm: 90, maxV: 14.4, outputMa: 100 },
    out: { contactNeededA: '20.0', coilMa: '160.0', coilW: '2.3' },
  },
};
