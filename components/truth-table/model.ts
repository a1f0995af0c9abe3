import { type Circuit, type Proof, type Solution, supplyVolts } from '../../calc/index.ts';
import { textOfList } from '../chosen.ts';
import { inputsInWords, loadName, looked, movesInWords, onKey, positionOf } from '../circuit-view/state.ts';
import type { Model, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';
import type { UnitChoice } from '../units.ts';

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
  const empty = { inputs, loads, rows: [] as View[], history: [] as View[], coverage: '', hasHistory: false };
  if (circuit === null || study === null) {
    return {
      ...framed(job, { ...frame, flag: 'unk', flagText: 'Not worked out', spokenValue: 'not worked out' }),
      ...empty,
    };
  }
  const { proof } = study;
  const look = looked(job);
  const energised = JSON.stringify(look?.solution.energised);
  const rows = proof.states.map((state): View => {
    const key = onKey(circuit, state.inputs);
    const wrong = loads.filter(
      ({ id }) => state.wanted.on[id] !== undefined && state.charging.on[id] !== state.wanted.on[id],
    );
    const on = inputs.filter(({ id }) => state.inputs[id]).map(({ id }) => id);
    // equal inputs may find a relay that holds itself: then the page looks at no row of this table
    const isNow =
      look !== null &&
      key === textOfList(look.on) &&
      (look.fault !== undefined || look.steps.length === 1 || JSON.stringify(state.charging.energised) === energised);
    const row: Record<string, string> = {
      choose: `on:${key}`,
      name: `Show: ${inputsInWords(circuit, on)}`,
      is: isNow ? 'now' : wrong.length > 0 ? 'stop' : '',
      current: isNow ? 'true' : 'false',
      mark: 'Show',
    };
    for (const { id } of inputs) {
      row[`word_${id}`] = positionOf(circuit, id, state.inputs[id] ?? false);
      row[`pic_${id}`] = pictureOf(circuit, id, state.inputs[id] ?? false);
    }
    for (const { id } of loads) putLoad(row, state.charging, state.wanted.on[id], id, units);
    return row;
  });
  const history = historyOf(circuit, study.proof).map(({ steps, solution, wanted }): View => {
    const key = steps.join(';');
    const isNow = look?.steps.join(';') === key;
    const words = movesInWords(circuit, steps) || 'Everything off';
    const wrong = loads.some(({ id }) => wanted?.[id] !== undefined && wanted[id] !== solution.on[id]);
    const row: Record<string, string> = {
      choose: `on:${key}`,
      name: `Show: ${words.toLowerCase()}`,
      is: isNow ? 'now' : wrong ? 'stop' : '',
      current: isNow ? 'true' : 'false',
      mark: 'Show',
      steps: words,
    };
    for (const { id } of loads) putLoad(row, solution, wanted?.[id], id, units);
    return row;
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
    history,
    hasHistory: history.length > 0,
    coverage: `Solved: ${proof.coverage.statement}.`,
  };
}) satisfies Model<object>;

/** The cells of one load in a row. */
function putLoad(
  row: Record<string, string>,
  { on, loadV }: Solution,
  wanted: boolean | null | undefined,
  id: string,
  units: UnitChoice,
): void {
  const volts = (v: number) => say(v, 'voltage', units);
  const at = loadV[id];
  const across = Array.isArray(at) ? Math.max(...at.map(Math.abs)) : Math.abs(at ?? 0);
  const is = on[id] === null || on[id] === undefined ? 'unk' : on[id] ? 'on' : across > GLOWS_V ? 'half' : 'off';
  const word = { unk: 'does not settle', on: 'on', off: 'off', half: 'off, but not dead' }[is];
  row[`is_${id}`] = is;
  row[`word_${id}`] = word;
  row[`pic_${id}`] = `#t-load-${is}`;
  row[`volts_${id}`] = Array.isArray(at) ? `${volts(at[0])} to ${volts(at[1])}` : volts(across);
  row[`wrong_${id}`] =
    wanted !== undefined && wanted !== null && wanted !== on[id] ? `wanted ${wanted ? 'on' : 'off'}` : '';
}

/** Volts across a load that is off, from which something can be seen or felt of it [V]. Common practice, no source. */
const GLOWS_V = 1;

/** Picture of an input in one of its positions. */
const pictureOf = (circuit: Circuit, id: string, on: boolean): string =>
  `#t-${PICTURES[circuit.inputs[id]!.kind]}-${on ? 'on' : 'off'}`;
const PICTURES: Record<string, string> = {
  door: 'door',
  ignition: 'key',
  switch: 'switch',
  push: 'push',
  signal: 'signal',
};

/** Most histories that a table shows. */
const MOST_HISTORIES = 12;

interface History {
  steps: string[];
  solution: Solution;
  wanted: Readonly<Record<string, boolean | null>> | undefined;
}

/** What the customer described step by step; else the states that only a history leads to, at charging voltage. */
function historyOf(circuit: Circuit, proof: Proof): History[] {
  const steps: string[] = [];
  if (proof.steps.length > 0)
    return proof.steps.map(({ inputs, charging, wanted }) => {
      steps.push(onKey(circuit, inputs));
      return { steps: [...steps], solution: charging, wanted: wanted.on };
    });
  const charging = JSON.stringify(supplyVolts(circuit, proof.values, 'charging'));
  return proof.reached
    .filter(({ volts }) => volts === undefined || JSON.stringify(volts) === charging)
    .slice(0, MOST_HISTORIES)
    .map(({ path, solution }) => ({
      steps: path.map((inputs) => onKey(circuit, inputs)),
      solution,
      wanted: undefined,
    }));
}
