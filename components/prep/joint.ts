import type { PrepPlan, SurfaceFacts } from '../../calc/index.ts';
import type { View } from '../contract.ts';
import { BULK_WORDS, bulkOf, hasSkin } from './section.ts';

/** Tape in the fewest words, for a label on a drawing. */
const TAPE_WORDS: Readonly<Record<string, string>> = {
  'acrylic-foam': 'Acrylic foam tape',
  'acrylic-thin': 'Thin acrylic tape',
  'low-energy-acrylic': 'Low-energy tape',
  rubber: 'Rubber tape',
  silicone: 'Silicone tape',
};

interface Layer {
  word: string;
  /** Height, and how far it stands in from the widest. */
  height: number;
  inset: number;
  fill: string;
  strong?: boolean;
}

const TOP = 44;
const WIDE = 150;
const LEFT = 3;
const LABEL_X = 174;
/** Lowest place of a layer's foot, and least distance of two labels. */
const FOOT = 164;
const APART = 22;

/**
 * The joint seen end on, 340 by 196: the part, the tape, what lies between, the surface. Layers from the top down, each with
 * a label; nothing is to scale.
 */
export function jointOf(plan: PrepPlan, surface: SurfaceFacts, tape: string) {
  const steps: readonly string[] = plan.steps.map(({ id }) => id);
  const taped = steps.includes('apply');
  const primed = steps.some((id) => id.startsWith('prime-'));
  const scuffed = steps.includes('abrade');
  const fixed = steps.includes('mechanical-fix');
  const skin = hasSkin(surface);
  const bulk = bulkOf(surface);
  const done = scuffed ? ', scuffed' : '';

  const layers: Layer[] = [
    ...(taped
      ? [
          {
            word: TAPE_WORDS[tape] ?? 'Tape',
            height: tape.endsWith('foam') ? 30 : 14,
            inset: 23,
            fill: tape.endsWith('foam') ? 'url(#dots)' : 'var(--peg)',
          },
        ]
      : []),
    ...(primed
      ? [{ word: 'Primer, one thin coat', height: 10, inset: 11, fill: 'var(--copper-core)', strong: true }]
      : []),
    ...(steps.includes('seal') ? [{ word: 'Sealer', height: 10, inset: 4, fill: 'var(--well)' }] : []),
    ...(skin ? [{ word: `Its coat${done}`, height: 22, inset: 0, fill: 'var(--well)' }] : []),
  ];
  const above = layers.reduce((sum, { height }) => sum + height, TOP);
  layers.push({
    word: skin ? BULK_WORDS[bulk] : `${BULK_WORDS[bulk]}${done}`,
    height: FOOT - above,
    inset: 0,
    fill: bulk === 'rubber' ? 'var(--ink)' : bulk === 'plastic' ? 'var(--well)' : 'url(#hatch)',
  });

  let y = TOP;
  let labelY = 26;
  const rows = layers.map(({ word, height, inset, fill, strong }): View => {
    const top = y;
    y += height;
    const middle = top + height / 2;
    labelY = Math.max(labelY + APART, middle);
    return {
      word,
      x: LEFT + inset,
      y: top,
      w: WIDE - 2 * inset,
      h: height,
      fill,
      lead: `M${LEFT + WIDE - inset} ${middle}L${LABEL_X - 6} ${labelY}`,
      labelY: labelY + 4.5,
      weight: strong ? 700 : 450,
    };
  });
  const foot =
    TOP +
    layers
      .slice(
        0,
        layers.findIndex(({ inset }) => inset === 0),
      )
      .reduce((sum, { height }) => sum + height, 0);
  const touched = layers.find(({ word }) => word.endsWith(', scuffed'));
  const teethY = touched === undefined ? 0 : Number(rows[layers.indexOf(touched)]?.['y']);
  const words = ['the part', ...layers.map(({ word }) => word.toLowerCase())];
  return {
    layers: rows,
    teeth: touched === undefined ? '' : `M${LEFT + 11} ${teethY}${'l5 6 5-6'.repeat(12)}`,
    // a clip over the part, not a screw through it: no drawing may tell anyone to drill into glass
    clip: fixed ? `M8 ${foot}V5H52V10` : '',
    clipWord: fixed ? 'Clip, bracket or screw' : '',
    jointText: `The joint seen end on, from the top: ${words.join(', ')}${fixed ? '; a mechanical fixing holds the part as well' : ''}. Not to scale.`,
  };
}
