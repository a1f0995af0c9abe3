import { FLOW_MARGIN_K, meltingRange, PAD_LIFTS_ABOVE_C, padHeating } from '../../calc/index.ts';
import { choice, figure, number } from '../calculators/form.ts';
import { defaultsOf, fieldRows } from '../calculators/model.ts';
import type { JobContext } from '../context.ts';
import type { LocalField } from '../contract.ts';
import { framed } from '../instrument.ts';
import { put, say, show } from '../show.ts';

const ALLOYS = ['Sn63Pb37', 'SAC305', 'Sn99.3Cu0.7'] as const;
/** Tip to pad [W/K], and pads by heat capacity [J/K] and loss into wire and board [W/K]: made up to teach with. */
const TIPS = { 'fine needle': 0.02, 'chisel as wide as the pad': 0.1, 'wider than the pad': 0.2 } as const;
const FACES = { 'silver, wetted': 1, 'black with oxide': 0.15 } as const;
const PADS = {
  'strip pad': { heatCapacityJPerK: 0.1, lossWPerK: 0.02 },
  'pad with a thick wire': { heatCapacityJPerK: 0.3, lossWPerK: 0.08 },
  'lug or ground stud': { heatCapacityJPerK: 4, lossWPerK: 0.6 },
} as const;

const keysOf = <T extends object>(table: T) => Object.keys(table) as (keyof T & string)[];

export const fields = (): LocalField[] => [
  choice('alloy', 'Solder', 'Sn63Pb37', ALLOYS, 'Choose a solder.'),
  number('tipC', 'Iron', 'temperature', 350, [200, 450, 10], 'Iron must be 200 to 450 °C.'),
  number('timeS', 'Tip on the pad', 'time', 2, [0, 10, 0.5], 'Time must be 0 to 10 s.'),
  choice('tip', 'Tip', 'chisel as wide as the pad', keysOf(TIPS), 'Choose a tip.'),
  choice('face', 'Its face', 'silver, wetted', keysOf(FACES), 'Choose how the tip looks.'),
  choice('pad', 'Joint', 'strip pad', keysOf(PADS), 'Choose what is soldered.'),
];

const LONGEST_S = 10;
const CHART = { left: 40, right: 330, top: 10, foot: 130, mostC: 450 } as const;
const chartX = (timeS: number): number => CHART.left + ((CHART.right - CHART.left) * timeS) / LONGEST_S;
const chartY = (temperatureC: number): number =>
  CHART.foot - ((CHART.foot - CHART.top) * Math.min(temperatureC, CHART.mostC)) / CHART.mostC;

const WORDS = { cold: 'Cold joint', good: 'Flows and holds', overheated: 'Pad lifts' } as const;

/** A pad warming under the tip: when solder flows, when the pad lets go. */
export function model(_props: unknown, job: JobContext) {
  const list = fields();
  const local = { ...defaultsOf(list), ...job.local };
  const pick = <T extends object>(table: T, name: string): T[keyof T] => table[String(local[name]) as keyof T];
  const liquidusC = meltingRange({ alloy: String(local['alloy']) }).liquidusC!;
  const timeS = Number(local['timeS']);
  const given = {
    tipC: Number(local['tipC']),
    contactWPerK: pick(TIPS, 'tip') * pick(FACES, 'face'),
    ...pick(PADS, 'pad'),
    liquidusC,
  };
  const now = padHeating({ ...given, timeS });
  const points = Array.from({ length: 41 }, (_, i) => (i * LONGEST_S) / 40);
  const flows = now.flowsAfterS;
  const told =
    now.verdict === 'good'
      ? 'Solder runs out on the pad. Take the solder away, then the iron, and hold still.'
      : now.verdict === 'overheated'
        ? `Over ${PAD_LIFTS_ABOVE_C} °C the glue under a pad lets go. Shorter, or a cooler iron.`
        : flows === null
          ? 'It never gets there with this tip: a clean or larger tip, before a hotter one.'
          : flows > LONGEST_S
            ? 'Far too slow: the pad around it cooks. A clean or larger tip, before a hotter one.'
            : `It flows after ${figure(flows)} s. Stay on, but not past 5 s; a larger tip is quicker.`;
  return {
    ...framed(job, {
      flag: now.verdict === 'good' ? 'pass' : now.verdict === 'cold' ? 'warn' : 'stop',
      flagText: WORDS[now.verdict],
      source: 'One lump of metal between a hot tip and cool surroundings; its figures are made up to teach with',
      spokenName: 'Pad',
      spokenValue: `${say(now.padC, 'temperature', job.units)}. ${WORDS[now.verdict]}`,
    }),
    ...put('temperature', show(now.padC, 'temperature', job.units)),
    say: told,
    heat: `${figure(now.heatJ)} J`,
    flows: flows === null ? 'never' : `${figure(flows)} s`,
    curve: points
      .map(
        (each, i) =>
          `${i === 0 ? 'M' : 'L'}${chartX(each).toFixed(1)} ${chartY(padHeating({ ...given, timeS: each }).padC).toFixed(1)}`,
      )
      .join(''),
    flowAt: `translate(0 ${chartY(liquidusC + FLOW_MARGIN_K).toFixed(1)})`,
    liftY: chartY(PAD_LIFTS_ABOVE_C).toFixed(1),
    liftTextY: (chartY(PAD_LIFTS_ABOVE_C) - 5).toFixed(1),
    hereX: chartX(timeS).toFixed(1),
    hereY: chartY(now.padC).toFixed(1),
    pictureText: `Temperature of the pad over ${LONGEST_S} seconds. Solder flows above ${liquidusC + FLOW_MARGIN_K} °C, the pad lifts above ${PAD_LIFTS_ABOVE_C} °C. At ${timeS} s it is at ${Math.round(now.padC)} °C: ${WORDS[now.verdict].toLowerCase()}.`,
    fields: fieldRows(list, local, job.units),
  };
}
