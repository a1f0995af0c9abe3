import type { ProofState } from '../../calc/index.ts';
import { inputsInWords, loadName, looked, onKey, positionOf } from '../circuit-view/state.ts';
import type { Model, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';

/** Every state, what the customer wants in it and what the circuit does, with the volts at each load. */
export const model = ((_props, job) => {
  const { circuit, study, units } = job;
  const inputs = circuit === null ? [] : Object.entries(circuit.inputs).map(([id, { label }]) => ({ id, label }));
  const loads =
    circuit === null ? [] : Object.keys(circuit.intent.loads).map((id) => ({ id, label: loadName(circuit, id) }));
  const frame = {
    source: 'Network solution at charging voltage; on from the load’s own threshold: common practice, no source',
    spokenName: 'Truth table',
  };
  const empty = { inputs, loads, rows: [] as View[], coverage: '', hasRows: false };
  if (circuit === null || study === null) {
    return {
      ...framed(job, { ...frame, flag: 'unk', flagText: 'Not worked out', spokenValue: 'not worked out' }),
      ...empty,
    };
  }
  const { proof } = study;
  const look = looked(job);
  const now = look === null ? '' : look.on.join(',') || '-';
  const rows = proof.states.map((state): View => {
    const key = onKey(circuit, state.inputs);
    const wrong = loads.filter(
      ({ id }) => state.wanted.on[id] !== undefined && state.charging.on[id] !== state.wanted.on[id],
    );
    const on = inputs.filter(({ id }) => state.inputs[id]).map(({ id }) => id);
    return {
      choose: `on:${key}`,
      name: `Show: ${inputsInWords(circuit, on)}`,
      is: key === now ? 'now' : wrong.length > 0 ? 'stop' : '',
      current: key === now ? 'true' : 'false',
      mark: 'Show',
      ...Object.assign(
        {},
        ...inputs.map(({ id }) => ({ [`word_${id}`]: positionOf(circuit, id, state.inputs[id] ?? false) })),
      ),
      ...Object.assign({}, ...loads.map(({ id }) => loadCell(state, id, (v) => say(v, 'voltage', units)))),
    };
  });
  const differing = new Set(proof.differences.map(({ load }) => load));
  return {
    ...framed(job, {
      ...frame,
      flag: differing.size > 0 ? 'stop' : 'pass',
      flagText:
        differing.size > 0
          ? `${[...differing].map((id) => loadName(circuit, id)).join(', ')}: not as wanted`
          : 'As the customer wants it',
      spokenValue: differing.size > 0 ? 'differs from what is wanted' : 'as wanted',
    }),
    inputs,
    loads,
    rows,
    hasRows: true,
    coverage: `Solved: ${proof.coverage.statement}.`,
  };
}) satisfies Model<object>;

function loadCell(state: ProofState, id: string, volts: (v: number) => string): View {
  const { on, loadV } = state.charging;
  const at = loadV[id];
  const wanted = state.wanted.on[id];
  const is = on[id] === null || on[id] === undefined ? 'unk' : on[id] ? 'on' : 'off';
  const word = is === 'unk' ? 'does not settle' : is;
  return {
    [`is_${id}`]: is,
    [`word_${id}`]: word,
    [`volts_${id}`]: Array.isArray(at) ? `${volts(at[0])} to ${volts(at[1])}` : volts(Math.abs(at ?? 0)),
    [`wrong_${id}`]: wanted !== undefined && wanted !== on[id] ? `wanted ${wanted ? 'on' : 'off'}` : '',
  };
}
