import { angleCurve, contactAngle, LIQUIDS } from '../../calc/index.ts';
import { choice, number } from '../calculators/form.ts';
import { defaultsOf, fieldRows } from '../calculators/model.ts';
import type { JobContext } from '../context.ts';
import type { LocalField } from '../contract.ts';
import { framed } from '../instrument.ts';

/** Liquids one has met, thinnest last. */
const DROPS = ['water', 'glycerol', 'ethylene glycol', 'ethanol'] as const;

export const fields = (): LocalField[] => [
  number(
    'energy',
    'Surface energy in mJ/m²',
    'ratio',
    30,
    [10, 80, 1],
    'Surface energy must be 10 to 80 mJ/m²: 19 is slick fluoroplastic, 30 polypropylene, 42 a clean lacquer.',
  ),
  number('polarPercent', 'Of it polar', 'percent', 5, [0, 60, 5], 'The polar part must be 0 to 60 %.'),
  choice('liquid', 'Drop of', 'water', DROPS, 'Choose a liquid.'),
];

/** Cross-section of the drop, the same for every angle [px²]; its foot, and the widest half that the drawing takes. */
const AREA = 2500;
const FOOT = { x: 170, y: 104 } as const;
const WIDEST = 160;

/** Outline of a drop of one size that stands at an angle: a circle's segment, or a film where it spreads. */
export function dropOf(angleDeg: number): { drop: string; edge: string } {
  const angle = (Math.max(angleDeg, 0.5) * Math.PI) / 180;
  const radius = Math.sqrt(AREA / (angle - Math.sin(angle) * Math.cos(angle)));
  const half = radius * Math.sin(angle);
  if (half > WIDEST) return { drop: `M${FOOT.x - WIDEST} ${FOOT.y}v-5H${FOOT.x + WIDEST}v5Z`, edge: '' };
  const [left, right] = [FOOT.x - half, FOOT.x + half].map((x) => x.toFixed(1));
  const r = radius.toFixed(1);
  const reach = 52;
  return {
    drop: `M${left} ${FOOT.y}A${r} ${r} 0 ${angleDeg > 90 ? 1 : 0} 1 ${right} ${FOOT.y}Z`,
    edge: `M${right} ${FOOT.y}l${(-reach * Math.cos(angle)).toFixed(1)} ${(-reach * Math.sin(angle)).toFixed(1)}`,
  };
}

const CURVE = { left: 40, right: 330, top: 12, foot: 112, from: 10, to: 80 } as const;
const curveX = (energy: number): string =>
  (CURVE.left + ((CURVE.right - CURVE.left) * (energy - CURVE.from)) / (CURVE.to - CURVE.from)).toFixed(1);
const curveY = (angleDeg: number): string => (CURVE.foot - ((CURVE.foot - CURVE.top) * angleDeg) / 150).toFixed(1);

/** A drop on a surface of a given energy: what angle it makes, and how that changes over all energies. */
export function model(_props: unknown, job: JobContext) {
  const list = fields();
  const local = { ...defaultsOf(list), ...job.local };
  const energy = Number(local['energy']);
  const polarFraction = Number(local['polarPercent']) / 100;
  const row = LIQUIDS.find(({ liquid, set }) => liquid === local['liquid'] && set === 'default')!;
  const liquid = { dispersiveMnPerM: row.dispersiveMnPerM!, polarMnPerM: row.polarMnPerM! };
  const solid = { dispersiveMjPerM2: energy * (1 - polarFraction), polarMjPerM2: energy * polarFraction };
  const { angleDeg, flag } = contactAngle({ solid, liquid });
  const curve = angleCurve({ liquid, polarFraction, fromMjPerM2: CURVE.from, toMjPerM2: CURVE.to });
  const angle = String(Math.round(angleDeg));
  const word = flag === 'spreads' || angleDeg < 10 ? 'It spreads' : angleDeg < 90 ? 'It wets in part' : 'It beads';
  return {
    ...framed(job, {
      flag: angleDeg < 90 ? 'pass' : 'warn',
      flagText: word,
      source: `Young with the geometric mean of Owens and Wendt; ${row.liquid} by its ${row.set} split, ${row.source}`,
      spokenName: 'Contact angle',
      spokenValue: `${angle} degrees. ${word}`,
    }),
    angle,
    say:
      angleDeg < 90
        ? row.liquid === 'ethanol'
          ? 'Alcohol wets nearly everything, so a surface that the wipe wets is not therefore ready.'
          : 'The edge runs out. Adhesive that is a liquid does the same here.'
        : 'The drop pulls itself together. Adhesive does the same: prime it, or fix it mechanically.',
    ...dropOf(angleDeg),
    curve: curve
      .map(({ energyMjPerM2, angleDeg: each }, i) => `${i === 0 ? 'M' : 'L'}${curveX(energyMjPerM2)} ${curveY(each)}`)
      .join(''),
    hereX: curveX(energy),
    hereY: curveY(angleDeg),
    half: curveY(90),
    pictureText: `A drop of ${row.liquid} seen from the side on a surface of ${energy} mJ/m²: it stands at ${angle} degrees. ${word}.`,
    fields: fieldRows(list, local, job.units),
  };
}
