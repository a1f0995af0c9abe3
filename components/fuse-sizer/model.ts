import { type Fuse, type FuseOptions, fuseFor, INRUSH_MULTIPLE, wireLimit } from '../../calc/index.ts';
import type { JobContext } from '../context.ts';
import type { Model, State } from '../contract.ts';
import { framed } from '../instrument.ts';
import { put, say, show } from '../show.ts';
import { partTitle } from '../values.ts';
import { BLOCK, scaleOf } from './scale.ts';

export interface FuseSizerProps {
  of?: string | undefined;
  currentA?: number | undefined;
  inrushA?: number | undefined;
  inrushMs?: number | undefined;
  thinnestMm2?: number | undefined;
  continuousFraction?: number | undefined;
}

type Question = FuseOptions & { fixedA?: number | undefined };

/** What the fuse must do: from the circuit, or from the props. Null where the circuit could not be worked out. */
function questionOf(props: FuseSizerProps, job: JobContext): Question | null {
  if (props.of !== undefined) return job.study?.fuses[props.of] ?? null;
  const areaMm2 = props.thinnestMm2 ?? job.shop.stockedWiresMm2[0]!;
  const size = say(areaMm2, 'area', job.units);
  return {
    currentA: props.currentA!,
    continuousFraction: props.continuousFraction ?? job.shop.continuousFraction,
    inrushA: props.inrushA,
    inrushMs: props.inrushMs,
    wires: [{ name: `the ${size} wire`, limitA: wireLimit({ areaMm2 }).limitA }],
    stockedA: job.shop.stockedFusesA,
    systemV: job.shop.systemV,
  };
}

/** Fuse and working for a steady load: the answer, or in the same place why there is none. */
export const model = ((props, job) => {
  const question = questionOf(props, job);
  const name = props.of === undefined || job.circuit === null ? '' : partTitle(job.circuit, props.of);
  const answer = question === null ? null : fuseFor(question);
  const { units } = job;
  const fixedA = question?.fixedA;
  const ratingA = fixedA ?? (answer?.found ? answer.ratingA : null);
  const verdict = verdictOf(answer, fixedA);
  const needA = question === null ? null : question.currentA / (question.continuousFraction ?? 0.8);
  const inrushA = question?.inrushA ?? 0;
  const scale = answer === null ? null : scaleOf(answer.ratings, answer.lowerA, answer.upperA, ratingA);
  const limit = say(answer?.upperA, 'current', units);
  const need = say(answer?.lowerA, 'current', units);
  const rating = show(ratingA, 'current', units);

  return {
    ...framed(job, {
      flag: verdict.flag,
      flagText: verdict.flagText,
      source: answer?.found
        ? sourcesOf(answer)
        : 'ISO 8820-3 ratings, from memory; 80 % loading: common practice, no source',
      spokenName: name === '' ? 'Fuse' : name,
      spokenValue: ratingA === null ? verdict.flagText : `${rating.text} ${rating.spoken}`,
    }),
    ...put('rating', ratingA === null ? { text: '', unit: '', spoken: '' } : rating),
    refusal: ratingA === null ? verdict.flagText : '',
    say: verdict.say,
    reasons: verdict.reasons.map((text) => ({ text })),
    change: verdict.change.map((text) => ({ text })),
    hasChange: verdict.change.length > 0,
    worked: question !== null,
    current: say(question?.currentA, 'current', units),
    factor: `${+(1 / (question?.continuousFraction ?? 0.8)).toFixed(3)}`,
    need: say(needA, 'current', units),
    hasInrush: inrushA > 0,
    inrush: say(inrushA, 'current', units),
    multiple: String(INRUSH_MULTIPLE.multiple),
    inrushNeed: say(inrushA / INRUSH_MULTIPLE.multiple, 'current', units),
    limitBy: answer?.upperBy ?? '',
    limit,
    result: ratingA === null ? 'no size does both' : `so ${say(ratingA, 'current', units)}`,
    picture:
      answer === null || scale === null
        ? ''
        : `Scale of fuse sizes. Need ${need}. ${ratingA === null ? 'None picked' : `Picked ${say(ratingA, 'current', units)}`}. ${answer.upperBy} ends at ${limit}.`,
    needLabel: `needs ${need}`,
    limitLabel: `cable limit ${limit}`,
    needX: scale?.needX ?? 0,
    hatchW: Math.max(0, (scale?.needX ?? 6) - 6),
    limitX: scale?.limitX ?? 0,
    marks: (scale?.marks ?? []).map(({ x, label, kind }) => ({ ...mark(x, kind), label, kind })),
    ratings: (answer?.ratings ?? []).map(({ ratingA: each, state, why }) => ({
      size: say(each, 'current', units),
      kind: each === ratingA ? 'pick' : state === 'too small' || state === 'too large' ? 'no' : 'ok',
      word: each === ratingA && state !== 'chosen' ? `fitted, ${state}` : state,
      why,
    })),
  };
}) satisfies Model<FuseSizerProps>;

/** Geometry of one mark: a tick, or the copper block of the pick. */
function mark(
  x: number,
  kind: 'no' | 'pick' | 'ok',
): { x: number; boxX: number; boxW: number; boxY: number; boxH: number; textY: number; size: number } {
  return kind === 'pick'
    ? { x, boxX: x - BLOCK, boxW: 2 * BLOCK, boxY: 28, boxH: 32, textY: 50, size: 18 }
    : { x, boxX: x - 1, boxW: 2, boxY: 38, boxH: 12, textY: 66, size: 13 };
}

interface Verdict {
  flag: State;
  flagText: string;
  say: string;
  reasons: readonly string[];
  change: readonly string[];
}

function verdictOf(answer: Fuse | null, fixedA: number | undefined): Verdict {
  const none = { reasons: [], change: [] };
  if (answer === null) {
    return { flag: 'unk', flagText: 'Not worked out', say: 'The circuit gives no current for this fuse yet.', ...none };
  }
  if (fixedA !== undefined) {
    const row = answer.ratings.find(({ ratingA }) => ratingA === fixedA);
    const state =
      row?.state ?? (fixedA < answer.lowerA ? 'too small' : fixedA > answer.upperA ? 'too large' : 'allowed');
    if (state === 'too small' || state === 'too large') {
      return {
        flag: 'stop',
        flagText: state === 'too small' ? 'Too small for the load' : 'Too large for the cable',
        say: `The circuit names this rating, but ${row?.why ?? `it is ${state}`}.`,
        reasons: answer.found ? [] : answer.reasons,
        change: answer.found ? [`Fit ${answer.ratingA} A.`] : answer.change,
      };
    }
    return {
      flag: 'pass',
      flagText: 'Fits the cable',
      say: 'The circuit names this rating. It carries the load and protects every wire behind it.',
      ...none,
    };
  }
  if (!answer.found) {
    return {
      flag: 'stop',
      flagText: 'No fuse does both',
      say: 'Carrying the load and protecting the wire ask for different sizes.',
      reasons: answer.reasons,
      change: answer.change,
    };
  }
  const why =
    answer.lowerBy === 'inrush'
      ? 'The load alone would need less: the inrush decides. Below what the cable can carry.'
      : 'Next size above the need, and below what the cable can carry.';
  if (answer.caution !== null) {
    return { flag: 'warn', flagText: 'Check the inrush', say: why, reasons: [answer.caution], change: [] };
  }
  if (!answer.inrushChecked)
    return { flag: 'pass', flagText: 'Fits the cable', say: `${why} Inrush not checked.`, ...none };
  return { flag: 'pass', flagText: 'Fits the cable', say: why, ...none };
}

/** Each source once: what it was used for, and how it was read. */
function sourcesOf(answer: Extract<Fuse, { found: true }>): string {
  const parts = answer.sources.map(({ what, source, read }) =>
    read === 'memory' ? `${what}: ${source}, from memory` : `${what}: ${source}`,
  );
  return [...new Set(parts)].join('; ');
}
