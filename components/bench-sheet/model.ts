import { benchDiagnosis, benchProbes, type Circuit, type Probe } from '../../calc/index.ts';
import { inputsInWords, loadName } from '../circuit-view/state.ts';
import type { JobContext } from '../context.ts';
import type { Model, State, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';
import { causesInWords } from './causes.ts';

/** Share of the band between the limits, at each end, in which a reading is close to one. Common practice, no source. */
const CLOSE_FRACTION = 0.1;

/** What a meter should read, state by state, between which limits; what it read, and what that says. */
export const model = ((_props, job) => {
  const { circuit, study } = job;
  const frame = {
    source:
      'Network solution from resting to charging voltage; tolerance of parts and meter: common practice, no source',
    spokenName: 'Bench sheet',
  };
  const silent = { outside: false, fits: '', causes: [] as View[], next: '' };
  if (circuit === null || study === null) {
    const none = { flag: 'unk', flagText: 'Not worked out', spokenValue: 'not worked out' } as const;
    return { ...framed(job, { ...frame, ...none }), states: [] as View[], ...silent };
  }
  const probes = benchProbes(circuit, study.proof);
  const values = valuesOf(probes, job);
  const verdicts = new Map(probes.map((probe) => [probe.key, verdictOf(probe, values[probe.key])]));
  const of = (is: State): number => [...verdicts.values()].filter((each) => each === is).length;
  const [outside, taken] = [of('stop'), probes.length - of('unk')];
  const keys = [...new Set(probes.map(({ on }) => on.join('+')))];
  const flag: State = outside > 0 ? 'stop' : taken < probes.length ? 'unk' : of('warn') > 0 ? 'warn' : 'pass';
  const flagText =
    outside > 0
      ? `${outside} outside the limits`
      : taken === 0
        ? 'Not measured'
        : taken < probes.length
          ? `${taken} of ${probes.length} measured`
          : of('warn') > 0
            ? 'In limits, some close'
            : 'All in limits';
  return {
    ...framed(job, { ...frame, flag, flagText, spokenValue: taken === 0 ? `${probes.length} readings` : flagText }),
    states: keys.map((key): View => {
      const mine = probes.filter(({ on }) => on.join('+') === key);
      const title = inputsInWords(circuit, mine[0]!.on);
      return { title, rows: mine.map((probe) => rowOf(probe, title, verdicts.get(probe.key)!, circuit, job)) };
    }),
    ...silent,
    ...(outside > 0 && {
      outside: true,
      ...causesInWords(circuit, study.proof, benchDiagnosis(circuit, study.proof, probes, values)),
    }),
  };
}) satisfies Model<object>;

/** Readings by probe in the probe's own unit: the standby place is in milliamps. */
function valuesOf(probes: readonly Probe[], { readings }: JobContext): Record<string, number> {
  const values: Record<string, number> = {};
  for (const { key, kind } of probes) {
    const reading = readings?.[key];
    if (reading !== undefined) values[key] = Math.abs(kind === 'standby' ? reading.value / 1000 : reading.value);
  }
  return values;
}

function verdictOf({ low, high }: Probe, value: number | undefined): State {
  if (value === undefined) return 'unk';
  // half a digit of a meter's last place does not put a reading outside
  if (value < low - 0.0005 || value > high + 0.0005) return 'stop';
  const edge = CLOSE_FRACTION * (high - low);
  return value > high - edge || (low > 0 && value < low + edge) ? 'warn' : 'pass';
}

const SAYS: Readonly<Record<State, string>> = {
  pass: 'In limits',
  warn: 'Close to the limit',
  stop: 'Outside',
  unk: 'Not measured',
  note: '',
};

function rowOf(probe: Probe, state: string, is: State, circuit: Circuit, job: JobContext): View {
  const standby = probe.kind === 'standby';
  const kind = probe.unit === 'V' ? 'voltage' : standby ? 'milliamps' : 'current';
  const shown = (value: number) => say(standby ? value * 1000 : value, kind, job.units);
  const name = nameOf(probe, circuit);
  return {
    key: probe.key,
    name,
    ask: `${name}, ${state.toLowerCase()}: measured`,
    predicted: shown(probe.predicted),
    limit: probe.low <= 0 ? `under ${shown(probe.high)}` : `${shown(probe.low)} to ${shown(probe.high)}`,
    unit: standby ? 'mA' : probe.unit,
    typed: job.readings?.[probe.key]?.typed ?? '',
    is: is === 'unk' ? '' : is,
    flag: is,
    flagIcon: `#i-${is}`,
    flagText: SAYS[is],
    // on paper an empty place says the same
    said: is === 'unk' ? '' : SAYS[is],
  };
}

function nameOf({ kind, id }: Probe, circuit: Circuit): string {
  if (kind === 'standby') return 'Standby at the battery';
  return kind === 'fuse' ? `Current at ${id}` : `Volts at ${loadName(circuit, id)}`;
}
