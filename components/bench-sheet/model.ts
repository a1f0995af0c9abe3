import { benchProbes, type Circuit, type Probe } from '../../calc/index.ts';
import { inputsInWords, loadName } from '../circuit-view/state.ts';
import type { JobContext } from '../context.ts';
import type { Model, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';

/** What a meter should read, state by state, between which limits. */
export const model = ((_props, job) => {
  const { circuit, study } = job;
  const frame = {
    source:
      'Network solution from resting to charging voltage; tolerance of parts and meter: common practice, no source',
    spokenName: 'Bench sheet',
  };
  if (circuit === null || study === null) {
    const none = { flag: 'unk', flagText: 'Not worked out', spokenValue: 'not worked out' } as const;
    return { ...framed(job, { ...frame, ...none }), states: [] as View[] };
  }
  const probes = benchProbes(circuit, study.proof);
  const keys = [...new Set(probes.map(({ on }) => on.join('+')))];
  return {
    ...framed(job, {
      ...frame,
      flag: 'unk',
      flagText: 'Not measured',
      spokenValue: `${probes.length} readings`,
    }),
    states: keys.map((key): View => {
      const mine = probes.filter(({ on }) => on.join('+') === key);
      return { title: inputsInWords(circuit, mine[0]!.on), rows: mine.map((probe) => rowOf(probe, circuit, job)) };
    }),
  };
}) satisfies Model<object>;

function rowOf(probe: Probe, circuit: Circuit, job: JobContext): View {
  const kind = probe.unit === 'V' ? 'voltage' : 'current';
  const shown = (value: number) => say(value, kind, job.units);
  return {
    key: probe.key,
    name: nameOf(probe, circuit),
    predicted: shown(probe.predicted),
    limit: probe.low <= 0 ? `under ${shown(probe.high)}` : `${shown(probe.low)} to ${shown(probe.high)}`,
    unit: probe.unit,
  };
}

function nameOf({ kind, id }: Probe, circuit: Circuit): string {
  if (kind === 'standby') return 'Standby at the battery';
  return kind === 'fuse' ? `Current at ${id}` : `Volts at ${loadName(circuit, id)}`;
}
