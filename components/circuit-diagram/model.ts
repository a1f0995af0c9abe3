import type { Circuit, Proof } from '../../calc/index.ts';
import { inputFields } from '../circuit-view/inputs.ts';
import { inputsInWords, LIVE_A, type Looked, loadName, looked } from '../circuit-view/state.ts';
import type { JobContext } from '../context.ts';
import type { Model, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';
import { partTitle, resolveValue } from '../values.ts';
import type { Plan } from './plan.ts';

export interface CircuitDiagramProps {
  plan: Plan;
}

/** Which conductors live, which contacts are made, what is written beside each, and the same in words. */
export const model = ((props, job) => {
  const { circuit, study } = job;
  const look = looked(job);
  if (circuit === null || study === null || look === null) {
    return {
      ...framed(job, {
        flag: 'unk',
        flagText: 'Not worked out',
        source: '',
        spokenName: 'Circuit',
        spokenValue: 'not worked out',
      }),
      inputs: [],
      nowOn: '',
      state: '',
      faultWords: '',
      rows: [] as View[],
      part: '',
      partRows: [] as View[],
    };
  }
  const { proof } = study;
  const words = inputsInWords(circuit, look.on);
  const lit = Object.keys(circuit.intent.loads).filter((id) => look.solution.on[id] === true);
  const all = Object.keys(circuit.intent.loads).length;
  const state =
    lit.length === 0
      ? 'every load off'
      : lit.length === all && all > 1
        ? 'every load on'
        : `${lit.map((id) => loadName(circuit, id)).join('; ')} on`;
  const flag = look.hot.length > 0 || !look.solution.settles ? 'stop' : look.fault ? 'warn' : 'pass';
  return {
    ...framed(job, {
      flag,
      flagText: flagText(look),
      source: 'Network solution at charging voltage; symbols after IEC 60617',
      spokenName: 'Circuit',
      spokenValue: `${words}: ${state}${look.faultWords ? `, with ${look.faultWords}` : ''}`,
    }),
    ...inputFields(circuit, look.on),
    state: `${words}: ${state}.`,
    faultWords: look.faultWords
      ? `Fault put in: ${look.faultWords}${look.blown.length ? `; ${look.blown.join(' and ')} blown` : ''}.`
      : '',
    ...conductors(props.plan, look, job, proof),
    rows: inWords(circuit, look, job),
    ...chosenPart(circuit, look, job),
  };
}) satisfies Model<CircuitDiagramProps>;

function flagText(look: Looked): string {
  if (!look.solution.settles) return 'Does not settle';
  if (look.hot.length > 0) return `${look.hot.join(', ')} overheats`;
  return look.fault ? 'Fault put in' : 'Sound';
}

/** Fields of every line and part of the drawing. */
function conductors(plan: Plan, look: Looked, job: JobContext, proof: Proof): View {
  const { currentA, nodeV } = look.solution;
  const delivers = new Set(proof.netlist.elements.filter((e) => e.kind === 'source').map((e) => e.id));
  const through = (id: string) => (currentA[id] ?? 0) * (delivers.has(id) ? -1 : 1);
  const way = (a: number) => (a > LIVE_A ? 'live' : a < -LIVE_A ? 'live-up' : 'dead');
  const view: Record<string, string> = {};
  plan.lines.forEach((edges, i) => {
    view[`l${i}`] = way(edges.reduce((sum, e) => sum + (e[0] === '-' ? -through(e.slice(1)) : through(e)), 0));
  });
  plan.parts.forEach(([id, owner, turn, symbol, values], i) => {
    const amps = (turn === '-' ? -1 : 1) * through(id);
    view[`p${i}`] = look.blown.includes(id) ? 'blown' : look.hot.includes(id) ? 'hot' : way(amps);
    view[`c${i}`] = contactState(id, symbol, look, proof);
    view[`s${i}`] = job.chosen['part'] === owner ? 'chosen' : '';
    view[`f${i}`] = look.fault && (look.fault.id === id || look.fault.id === owner) ? 'fault' : '';
    const flows = Math.abs(amps) > LIVE_A ? say(Math.abs(amps), 'current', job.units) : '';
    // a wire says its size and length, a part what it is or, where it has no size, what it carries now
    view[`t${i}`] = values[0] === undefined ? flows : figure(values[0], job);
    view[`u${i}`] = values[1] === undefined ? '' : figure(values[1], job);
  });
  plan.volts.forEach((node, i) => {
    view[`v${i}`] = look.solution.floating.includes(node) ? 'floats' : say(nodeV[node] ?? null, 'voltage', job.units);
  });
  return view;
}

const figure = (path: string, job: JobContext): string => {
  const { value, kind, step } = resolveValue(path, job);
  return say(value, kind, job.units, step);
};

/** Made or open, for what has a contact. */
function contactState(id: string, symbol: string, look: Looked, proof: Proof): string {
  if (!/^(contact|switch|push|sink)/.test(symbol)) return '';
  const welded = look.fault?.kind === 'welded' && look.fault.id === id;
  const dead = look.fault?.kind === 'open' && look.fault.id === id;
  if (welded) return 'made';
  if (dead) return 'open';
  const relay = /^(.+)\.(no|nc)$/.exec(id);
  if (relay) {
    const energised = look.solution.energised[relay[1]!];
    return (energised === true) === (relay[2] === 'no') ? 'made' : 'open';
  }
  const element = proof.netlist.elements.find((e) => e.id === id);
  if (element?.kind !== 'switch') return '';
  return look.on.includes(element.input) !== element.inverted ? 'made' : 'open';
}

/** The state as a table that says the same as the drawing: relays, loads, fuses. */
function inWords(circuit: Circuit, look: Looked, job: JobContext): View[] {
  const { solution } = look;
  const amps = (id: string) => say(Math.abs(solution.currentA[id] ?? 0), 'current', job.units);
  const rows: View[] = [];
  for (const [id, part] of Object.entries(circuit.parts)) {
    const name = part.label ? `${part.label} (${id})` : partTitle(circuit, id);
    switch (part.kind) {
      case 'relay': {
        const on = solution.energised[id];
        const contact =
          on === true ? '30 is joined to 87' : part.form === 'make' ? '30 is open' : '30 is joined to 87a';
        const carries = Math.max(
          Math.abs(solution.currentA[`${id}.no`] ?? 0),
          Math.abs(solution.currentA[`${id}.nc`] ?? 0),
        );
        rows.push({
          name,
          says: on === null || on === undefined ? 'does not settle' : `${on ? 'energised' : 'at rest'}, ${contact}`,
          amps: say(carries, 'current', job.units),
        });
        break;
      }
      case 'fuse':
        rows.push({ name, says: look.blown.includes(id) ? 'blown' : 'whole', amps: amps(id) });
        break;
      default:
        if (solution.on[id] === undefined) break;
        rows.push({ name, says: loadWords(solution.on[id], solution.loadV[id], job), amps: amps(id) });
    }
  }
  return rows;
}

function loadWords(
  on: boolean | null | undefined,
  volts: number | [number, number] | undefined,
  job: JobContext,
): string {
  if (on === null || on === undefined) return 'does not settle';
  const at = Array.isArray(volts) ? volts[1] : (volts ?? 0);
  return `${on ? 'on' : 'off'}, ${say(Math.abs(at), 'voltage', job.units)}`;
}

/** Figures of the part that the reader pressed. */
function chosenPart(circuit: Circuit, look: Looked, job: JobContext): { part: string; partRows: View[] } {
  const id = job.chosen['part'];
  if (id === undefined || (!circuit.parts[id] && !circuit.wires[id])) return { part: '', partRows: [] };
  const title = circuit.parts[id]?.label ?? partTitle(circuit, id);
  const rows = Object.entries(job.study?.figures ?? {}).flatMap(([path, value]): View[] => {
    if (!path.startsWith(`${id}.`) || value === null) return [];
    const { label, kind } = resolveValue(path, job);
    return [{ label: label.replace(partTitle(circuit, id), '').trim() || label, value: say(value, kind, job.units) }];
  });
  const now = look.solution.currentA[id];
  if (now !== undefined) rows.push({ label: 'now', value: say(Math.abs(now), 'current', job.units) });
  return { part: title.includes(id) ? title : `${title}, ${id}`, partRows: rows };
}
