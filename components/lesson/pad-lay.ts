import { padFit } from '../../calc/index.ts';
import { number } from '../calculators/form.ts';
import { defaultsOf, fieldRows } from '../calculators/model.ts';
import type { JobContext } from '../context.ts';
import type { LocalField } from '../contract.ts';
import { framed } from '../instrument.ts';
import { put, say, show } from '../show.ts';

export const fields = (): LocalField[] => [
  number('stripMm', 'Bare end of the wire', 'millimetres', 3, [0.5, 12, 0.5], 'Bare end must be 0.5 to 12 mm.'),
  number(
    'offsetMm',
    'Off the middle, towards the next pad',
    'millimetres',
    0,
    [-2, 4, 0.1],
    'Off the middle must be −2 to 4 mm.',
  ),
  number('conductorMm', 'Conductor, bare', 'millimetres', 0.8, [0.2, 3, 0.1], 'Conductor must be 0.2 to 3 mm across.'),
  number('padLengthMm', 'Pad, along the wire', 'millimetres', 3, [1, 8, 0.1], 'Pad length must be 1 to 8 mm.'),
  number('padWidthMm', 'Pad, across the wire', 'millimetres', 2, [0.6, 5, 0.1], 'Pad width must be 0.6 to 5 mm.'),
  number('padGapMm', 'Gap to the next pad', 'millimetres', 0.6, [0.2, 5, 0.1], 'Gap must be 0.2 to 5 mm.'),
];

const START = 110;
const SCALE = 17;
const MIDDLE = 66;

/** A stripped wire on a strip pad, seen from above and to scale: what is soldered, what is bare beyond, how near the next pad is. */
export function model(_props: unknown, job: JobContext) {
  const list = fields();
  const local = { ...defaultsOf(list), ...job.local };
  const mm = (name: string): number => Number(local[name]);
  const [stripMm, offsetMm, conductorMm] = [mm('stripMm'), mm('offsetMm'), mm('conductorMm')];
  const [padLengthMm, padWidthMm, padGapMm] = [mm('padLengthMm'), mm('padWidthMm'), mm('padGapMm')];
  const fit = padFit({ stripMm, offsetMm, conductorMm, padLengthMm, padWidthMm, padGapMm });
  const good = fit.verdict === 'accept';
  // whatever is drawn has to fit: the scale follows the largest thing
  const scale = Math.min(SCALE, 220 / Math.max(stripMm, padLengthMm), 74 / (padGapMm + padWidthMm * 1.5));
  const wireMm = conductorMm + 0.8;
  const at = MIDDLE + offsetMm * scale;
  const box = (x: number, y: number, width: number, height: number) => ({
    x: x.toFixed(1),
    y: y.toFixed(1),
    w: width.toFixed(1),
    h: height.toFixed(1),
  });
  const named = (name: string, { x, y, w, h }: ReturnType<typeof box>) => ({
    [`${name}X`]: x,
    [`${name}Y`]: y,
    [`${name}W`]: w,
    [`${name}H`]: h,
  });
  return {
    ...framed(job, {
      flag: good ? 'pass' : 'stop',
      flagText: good ? 'Accept' : 'Reject',
      source: 'Geometry; 2.5 to 3.5 mm bare and none beyond the pad: common practice',
      spokenName: 'The wire on the pad',
      spokenValue: good ? 'accept' : `reject. ${fit.reasons.join(' ')}`,
    }),
    ...put('onPad', show(fit.onPadMm, 'millimetres', job.units)),
    beyond: say(fit.bareBeyondMm, 'millimetres', job.units),
    clear: fit.toNextPadMm <= 0 ? 'touches' : say(fit.toNextPadMm, 'millimetres', job.units),
    reasons: fit.reasons.map((text) => ({ text })),
    ...named('pad', box(START, MIDDLE - (padWidthMm * scale) / 2, padLengthMm * scale, padWidthMm * scale)),
    ...named('next', box(START, MIDDLE + (padWidthMm / 2 + padGapMm) * scale, padLengthMm * scale, padWidthMm * scale)),
    ...named('jacket', box(0, at - (wireMm * scale) / 2, START, wireMm * scale)),
    ...named('bare', box(START, at - (conductorMm * scale) / 2, stripMm * scale, conductorMm * scale)),
    past:
      fit.bareBeyondMm > 0
        ? `M${(START + padLengthMm * scale).toFixed(1)} ${(at - (conductorMm * scale) / 2 - 7).toFixed(1)}h${(fit.bareBeyondMm * scale).toFixed(1)}`
        : '',
    pictureText: `A wire on a strip pad from above, to scale: ${say(fit.onPadMm, 'millimetres', job.units)} on the pad, ${say(fit.bareBeyondMm, 'millimetres', job.units)} bare beyond it. ${good ? 'Accept.' : `Reject. ${fit.reasons.join(' ')}`}`,
    fields: fieldRows(list, local, job.units),
  };
}
