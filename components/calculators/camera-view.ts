import { cameraView } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

export const calculator: Calculator = {
  id: 'camera-view',
  number: 'C23',
  title: 'Camera cover and blind strip',
  lead: 'What a camera sees, and the strip at the bumper that it does not.',
  fields: () => [
    number('heightM', 'Camera height', 'length', 2.2, [0.2, 4, 0.1], 'Height must be 0.2 to 4 m.'),
    number('tiltDeg', 'Tilt below level', 'angle', 40, [0, 90, 5], 'Tilt must be 0 to 90 degrees.'),
    number('verticalDeg', 'Vertical view', 'angle', 80, [20, 150, 5], 'Vertical view must be 20 to 150 degrees.'),
    number(
      'horizontalDeg',
      'Horizontal view',
      'angle',
      120,
      [20, 170, 5],
      'Horizontal view must be 20 to 170 degrees.',
    ),
    number('atM', 'Distance to check', 'length', 2, [0.1, 30, 0.1], 'Distance must be 0.1 to 30 m.'),
  ],
  compute(input, { say }) {
    const [heightM, tiltDeg, verticalDeg, horizontalDeg, atM] = [
      input.n('heightM'),
      input.n('tiltDeg'),
      input.n('verticalDeg'),
      input.n('horizontalDeg'),
      input.n('atM'),
    ];
    const result = cameraView({ heightM, tiltDeg, verticalDeg, horizontalDeg, atM });
    const nearDeg = tiltDeg + verticalDeg / 2;
    return {
      main: 'blindM',
      flag: 'note',
      flagText: result.blindM > 0 ? 'Blind at the bumper' : 'Sees the bumper',
      say: `It sees ${result.farEdgeM === null ? 'to the horizon' : `as far as ${say(result.farEdgeM, 'length')}`}.`,
      outputs: [
        { key: 'blindM', label: 'Blind strip', value: result.blindM, kind: 'length' },
        { key: 'farEdgeM', label: 'Far edge', value: result.farEdgeM ?? 'horizon', kind: 'length' },
        { key: 'widthM', label: `Width at ${say(atM, 'length')}`, value: result.widthM, kind: 'length' },
      ],
      formula: [
        cell('', 'blind', say(result.blindM, 'length'), 'calc', 'not seen below the camera'),
        cell('=', 'h', say(heightM, 'length'), 'set', 'camera height'),
        cell(
          '÷',
          'tan',
          nearDeg >= 90 ? 'past the vertical' : `tan ${figure(nearDeg)}°`,
          'calc',
          'tilt plus half the vertical view',
        ),
      ],
      work: [
        `width: 2 × (${say(atM, 'length')} × cos ${figure(tiltDeg)}° + ${say(heightM, 'length')} × sin ${figure(tiltDeg)}°) × tan ${figure(horizontalDeg / 2)}° = ${say(result.widthM, 'length')}`,
      ],
    };
  },
  source: 'Pinhole geometry, lens distortion ignored',
  functions: ['cameraView'],
  cautions: ['A camera adds to mirrors and a banksman, it replaces neither.'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { heightM: 2.2, tiltDeg: 40, verticalDeg: 80, horizontalDeg: 120, atM: 2 },
    out: { blindM: '0.39', farEdgeM: 'horizon', widthM: '10.2' },
  },
};
