import { aimAngle } from '../../calc/index.ts';
import { type Calculator, cell, number } from './form.ts';

export const calculator: Calculator = {
  id: 'aim-angle',
  number: 'C18',
  title: 'Hide the LEDs: lip and aim',
  lead: 'How deep a lip must be so that nobody looks into the LEDs.',
  fields: () => [
    number('ledM', 'LED height above floor', 'length', 1.85, [0.1, 4, 0.05], 'LED height must be 0.1 to 4 m.'),
    number(
      'eyeM',
      'Eye height',
      'length',
      1.6,
      [0.5, 2.2, 0.05],
      'Eye height must be 0.5 to 2.2 m and below the LED. Seated about 1.2, standing about 1.6.',
      (all) => Number(all['eyeM']) < Number(all['ledM']),
    ),
    number('nearM', 'Nearest eye', 'length', 0.6, [0.1, 10, 0.1], 'Nearest eye must be 0.1 to 10 m.'),
    number(
      'lipGapMm',
      'LED to lip, level distance',
      'millimetres',
      12,
      [2, 200, 1],
      'Lip distance must be 2 to 200 mm.',
    ),
    number('lipMm', 'Lip depth below the LED', 'millimetres', 6, [0, 200, 1], 'Lip depth must be 0 to 200 mm.'),
  ],
  compute(input, { say }) {
    const [ledM, eyeM, nearM, lipGapMm, lipMm] = [
      input.n('ledM'),
      input.n('eyeM'),
      input.n('nearM'),
      input.n('lipGapMm'),
      input.n('lipMm'),
    ];
    const result = aimAngle({ ledM, eyeM, nearM, lipGapMm, lipMm });
    return {
      main: 'lipNeededMm',
      flag: result.verdict,
      flagText: result.verdict === 'pass' ? 'The lip hides it' : 'The lip is too shallow',
      say:
        result.hiddenBeyondM === null
          ? 'Without a lip the LED is never hidden.'
          : `Hidden from ${say(result.hiddenBeyondM, 'length')} on.`,
      outputs: [
        { key: 'lipNeededMm', label: 'Lip needed', value: result.lipNeededMm, kind: 'millimetres' },
        { key: 'hiddenBeyondM', label: 'Hidden beyond', value: result.hiddenBeyondM ?? 'never hidden', kind: 'length' },
        { key: 'heightGapM', label: 'LED above the eye', value: result.heightGapM, kind: 'length' },
      ],
      formula: [
        cell('', 'lip', say(result.lipNeededMm, 'millimetres'), 'calc', 'lip needed'),
        cell('=', 'h', say(result.heightGapM, 'length'), 'calc', 'LED above the eye'),
        cell('×', 'g', say(lipGapMm, 'millimetres'), 'set', 'LED to lip'),
        cell('÷', 'd', say(nearM, 'length'), 'set', 'nearest eye'),
      ],
      work: [`${say(ledM, 'length')} − ${say(eyeM, 'length')} = ${say(result.heightGapM, 'length')}`],
      change: result.verdict === 'pass' ? [] : ['A deeper lip, an LED closer to it, or a lamp that is set back.'],
    };
  },
  source: 'Straight-line sight geometry',
  functions: ['aimAngle'],
  cautions: ['Check shiny floors too: the mirror image of the LED is also direct light.'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { ledM: 1.85, eyeM: 1.6, nearM: 0.6, lipGapMm: 12, lipMm: 6 },
    out: { heightGapM: '0.25', lipNeededMm: '5.0', hiddenBeyondM: '0.5' },
  },
};
