import { type Gauge, type GaugeOptions, type GaugeRow, gaugeFor } from '../../calc/index.ts';
import type { JobContext } from '../context.ts';
import type { Model, State } from '../contract.ts';
import { framed } from '../instrument.ts';
import { put, say, show } from '../show.ts';
import type { UnitChoice } from '../units.ts';
import { partTitle } from '../values.ts';
import { ladderOf } from './ladder.ts';

export interface GaugeChooserProps {
  of?: string | undefined;
  currentA?: number | undefined;
  lengthM?: number | undefined;
  dropFraction?: number | undefined;
  systemV?: number | undefined;
  fuseA?: number | undefined;
  ambientC?: number | undefined;
  bundled?: number | undefined;
  conductorC?: number | undefined;
  jointOhm?: number | undefined;
}

type Question = GaugeOptions & { fixedMm2?: number | undefined };

function questionOf(props: GaugeChooserProps, job: JobContext): Question | null {
  if (props.of !== undefined) return job.study?.wires[props.of] ?? null;
  return {
    currentA: props.currentA!,
    lengthM: props.lengthM!,
    systemV: props.systemV ?? job.shop.systemV,
    allowedDropFraction: props.dropFraction ?? job.shop.dropFraction,
    minFuseA: props.fuseA,
    ambientC: props.ambientC,
    bundled: props.bundled,
    conductorC: props.conductorC,
    jointOhm: props.jointOhm,
    sizesMm2: job.shop.stockedWiresMm2,
  };
}

/** Asks calc, with the author's own size among those tried. */
function answerOf({ fixedMm2, ...options }: Question): Gauge {
  const sizes = options.sizesMm2;
  if (fixedMm2 === undefined || sizes === undefined || sizes.includes(fixedMm2)) return gaugeFor(options);
  return gaugeFor({ ...options, sizesMm2: [...sizes, fixedMm2] });
}

/** Wire size and working: the answer, or in the same place why there is none. */
export const model = ((props, job) => {
  const { units } = job;
  const question = questionOf(props, job);
  const answer = question === null ? null : answerOf(question);
  const name = props.of === undefined || job.circuit === null ? '' : partTitle(job.circuit, props.of);
  const fixed = question?.fixedMm2;
  const areaMm2 = fixed ?? (answer?.found ? answer.areaMm2 : null);
  const rows = answer?.rows ?? [];
  const at = areaMm2 === null ? rows.length - 1 : rows.findIndex((row) => row.areaMm2 === areaMm2);
  const row = rows[at] ?? null;
  const limitFraction = question?.allowedDropFraction ?? 0.03;
  const verdict = verdictOf({ answer, row, fixed, limitFraction, question, units });
  const size = show(areaMm2, 'area', units);
  const ladder = ladderOf(rows, limitFraction, Math.max(0, at));
  const working = new Map(answer?.found ? answer.working.map((line) => [line.symbol, line.value]) : []);
  const temperatureC = question?.conductorC ?? 60;
  const warm = 1 + (working.get('α') ?? 0.00393) * (temperatureC - 20);
  const jointOhm = question?.jointOhm ?? 0;

  return {
    ...framed(job, {
      flag: verdict.flag,
      flagText: verdict.flagText,
      source: answer?.found
        ? sourcesOf(answer)
        : 'IEC 60228 class 5 copper; largest fuse per wire: common practice, no source',
      spokenName: name === '' ? 'Wire' : name,
      spokenValue: areaMm2 === null ? verdict.flagText : `${size.text} ${size.spoken}`,
    }),
    ...put('size', areaMm2 === null ? { text: '', unit: '', spoken: '' } : size),
    refusal: areaMm2 === null ? verdict.flagText : '',
    hasDrop: row !== null,
    ...put('drop', show(row?.dropV, 'voltage', units)),
    ...put('share', show(row?.dropFraction, 'fraction', units)),
    ...put('limit', show(limitFraction, 'fraction', units)),
    say: verdict.say,
    reasons: verdict.reasons.map((text) => ({ text })),
    change: verdict.change.map((text) => ({ text })),
    hasChange: verdict.change.length > 0,
    worked: question !== null,
    unit: units.wire === 'awg' ? 'AWG' : 'mm²',
    rows: ladder.rungs.map((rung) => ({
      size: show(rung.row.areaMm2, 'area', units).text,
      kind: kindOf(rung.row, areaMm2),
      barW: `${rung.width}%`,
      barH: rung.height,
      barY: rung.y,
      limitX: `${ladder.limitX}%`,
      volts: show(rung.row.dropV, 'voltage', units).text,
      percent: (rung.row.dropFraction * 100).toFixed(2),
      why: whyOf(rung.row, areaMm2, question, units),
    })),
    hasSum: answer?.found === true && row !== null && fixed === undefined,
    current: say(question?.currentA, 'current', units),
    perMetre: `${(working.get('R₂₀') ?? 0).toFixed(3).replace(/\.?0+$/, '')} mΩ/m`,
    warm: warm.toFixed(3),
    copperAt: say(temperatureC, 'temperature', units),
    length: say(question?.lengthM, 'length', units),
    lengthSays: props.of === undefined ? 'copper there and back' : 'copper that shares this loss, to the load and back',
    hasJoint: jointOhm > 0,
    joint: `${(jointOhm * 1000).toFixed(0)} mΩ`,
    lost: say(row?.dropV, 'voltage', units),
    supply: say(question?.systemV, 'voltage', units),
    lostShare: say(row?.dropFraction, 'fraction', units),
    limitShare: say(limitFraction, 'fraction', units),
  };
}) satisfies Model<GaugeChooserProps>;

const kindOf = (row: GaugeRow, picked: number | null): 'pick' | 'no' | 'ok' =>
  row.areaMm2 === picked ? 'pick' : row.meetsDrop && row.meetsHeat && row.meetsFuse ? 'ok' : 'no';

function whyOf(row: GaugeRow, picked: number | null, question: Question | null, units: UnitChoice): string {
  const faults = [
    row.meetsDrop ? '' : 'loses too much',
    row.meetsHeat ? '' : `may carry ${say(row.limitA, 'current', units)}`,
    row.meetsFuse ? '' : `too thin for the ${say(question?.minFuseA, 'current', units)} fuse`,
  ].filter((fault) => fault !== '');
  if (faults.length > 0) return faults.join(', ');
  return row.areaMm2 === picked ? 'picked' : 'would do';
}

interface Verdict {
  flag: State;
  flagText: string;
  say: string;
  reasons: readonly string[];
  change: readonly string[];
}

function verdictOf({
  answer,
  row,
  fixed,
  limitFraction,
  question,
  units,
}: {
  answer: Gauge | null;
  row: GaugeRow | null;
  fixed: number | undefined;
  limitFraction: number;
  question: Question | null;
  units: UnitChoice;
}): Verdict {
  const none = { reasons: [], change: [] };
  const limit = say(limitFraction, 'fraction', units);
  if (answer === null || question === null) {
    return { flag: 'unk', flagText: 'Not worked out', say: 'The circuit gives no current for this wire yet.', ...none };
  }
  if (fixed !== undefined && row !== null) {
    const good = row.meetsDrop && row.meetsHeat && row.meetsFuse;
    if (good)
      return { flag: 'pass', flagText: `Under ${limit}`, say: 'The circuit names this size, and it serves.', ...none };
    const cure = answer.found ? [`Use ${say(answer.areaMm2, 'area', units)}.`] : answer.change;
    return {
      flag: 'stop',
      flagText: !row.meetsFuse || !row.meetsHeat ? 'Too thin for the current' : 'Loses too much',
      say: `The circuit names this size, but it ${whyOf(row, null, question, units)}.`,
      reasons: answer.found ? [] : answer.reasons,
      change: cure,
    };
  }
  if (!answer.found) {
    return {
      flag: 'stop',
      flagText: 'No size on the list serves',
      say: 'Here is why, and what would change it.',
      reasons: answer.reasons,
      change: answer.change,
    };
  }
  const thinner = answer.rows[answer.rows.findIndex((each) => each.areaMm2 === answer.areaMm2) - 1];
  const next =
    thinner === undefined ? '' : ` ${say(thinner.areaMm2, 'area', units)} ${whyOf(thinner, null, question, units)}.`;
  const because = {
    drop: 'The drop decides.',
    heat: 'The current decides.',
    fuse: `The ${say(question.minFuseA, 'current', units)} fuse decides.`,
  }[answer.decidedBy];
  return { flag: 'pass', flagText: `Under ${limit}`, say: `${because}${next}`, ...none };
}

function sourcesOf(answer: Extract<Gauge, { found: true }>): string {
  const parts = answer.sources.map(({ what, source, read }) =>
    read === 'memory' ? `${what}: ${source}, from memory` : `${what}: ${source}`,
  );
  return [...new Set(parts)].join('; ');
}
