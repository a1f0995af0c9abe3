import type { Circuit, Proof } from '../../calc/index.ts';
import { inputFields, NO_INPUTS } from '../circuit-view/inputs.ts';
import { inputsInWords, LIVE_A, type Looked, loadName, looked } from '../circuit-view/state.ts';
import type { JobContext } from '../context.ts';
import type { Model, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';
import { partTitle, resolveValue } from '../values.ts';
import type { Plan } from './plan.ts';
import { inWords } from './words.ts';

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
      ...NO_INPUTS,
      ...unlit(props.plan),
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
  const flag = look.hidden
    ? 'unk'
    : look.hot.length > 0 || !look.solution.settles
      ? 'stop'
      : look.fault
        ? 'warn'
        : 'pass';
  return {
    ...framed(job, {
      flag,
      flagText: flagText(look),
      source: 'Network solution at charging voltage; symbols after IEC 60617',
      spokenName: 'Circuit',
      spokenValue: `${words}: ${state}${look.faultWords ? `, with ${look.faultWords}` : ''}`,
    }),
    ...inputFields(circuit, look),
    // one picture cannot show a relay that rattles: the words say so
    state: look.solution.settles || look.hidden ? `${words}: ${state}.` : `${words}: ${look.solution.reason}.`,
    faultWords: look.faultWords
      ? `Fault put in: ${look.faultWords}${look.blown.length ? `; ${look.blown.join(' and ')} blown` : ''}.`
      : '',
    ...conductors(props.plan, look, job, proof),
    rows: look.hidden ? [] : inWords(circuit, look, job),
    ...chosenPart(circuit, look, job),
  };
}) satisfies Model<CircuitDiagramProps>;

function flagText(look: Looked): string {
  if (look.hidden) return 'A fault is in it';
  if (!look.solution.settles) return 'Does not settle';
  if (look.hot.length > 0) return `${look.hot.join(', ')} overheats`;
  return look.fault ? 'Fault put in' : 'Sound';
}

/** The drawing with nothing known of it. */
function unlit({ lines, parts, volts }: Plan): View {
  const view: Record<string, string> = {};
  lines.forEach((_, i) => {
    view[`l${i}`] = 'core dead';
  });
  parts.forEach((_, i) => {
    Object.assign(view, { [`k${i}`]: 'part dead', [`t${i}`]: '', [`u${i}`]: '' });
  });
  volts.forEach((_, i) => {
    view[`v${i}`] = '';
  });
  return view;
}

/** Fields of every line and part of the drawing. Of a fault that is to be found, only what eyes can see. */
function conductors(plan: Plan, look: Looked, job: JobContext, proof: Proof): View {
  const { currentA, nodeV, loadV, floating } = look.solution;
  const kinds = new Map(proof.netlist.elements.map((e) => [e.id, e]));
  const through = (id: string) => (currentA[id] ?? 0) * (kinds.get(id)?.kind === 'source' ? -1 : 1);
  const way = (a: number) => (look.hidden ? 'dead' : a > LIVE_A ? 'live' : a < -LIVE_A ? 'live-up' : 'dead');
  const amps = (a: number) => (Math.abs(a) > LIVE_A ? say(Math.abs(a), 'current', job.units) : '');
  const view: Record<string, string> = {};
  plan.lines.forEach((edges, i) => {
    view[`l${i}`] =
      `core ${way(edges.reduce((sum, e) => sum + (e[0] === '-' ? -through(e.slice(1)) : through(e)), 0))}`;
  });
  plan.parts.forEach(([id, owner, turn, symbol, values], i) => {
    const a = (turn === '-' ? -1 : 1) * through(id);
    const isLit = look.solution.on[id] === true;
    view[`k${i}`] = [
      'part',
      look.hidden ? 'dead' : look.blown.includes(id) ? 'blown' : look.hot.includes(id) ? `hot ${way(a)}` : way(a),
      contactState(id, symbol, look, proof),
      isLit ? 'lit' : '',
      job.chosen['part'] === owner ? 'chosen' : '',
      look.fault && !look.hidden && (look.fault.id === id || look.fault.id === owner) ? 'fault' : '',
    ]
      .filter((word) => word !== '')
      .join(' ');
    // what it is, then what it carries and has across it now, as far as two lines go
    const lines = values.map((path) => figure(path, job));
    if (look.hidden) {
      if (look.solution.on[id] !== undefined) lines.push(isLit ? 'on' : 'off');
    } else {
      if (symbol === 'diode') lines.push(Math.abs(a) > LIVE_A ? 'passes' : 'blocks');
      lines.push(amps(a));
      const element = kinds.get(id);
      const across =
        element?.kind === 'load'
          ? loadV[id]
          : element?.kind === 'relay' && symbol === 'coil'
            ? (nodeV[element.coilP] ?? 0) - (nodeV[element.coilN] ?? 0)
            : undefined;
      if (typeof across === 'number' && Math.abs(across) > SEEN_V)
        lines.push(say(Math.abs(across), 'voltage', job.units));
    }
    view[`t${i}`] = lines[0] ?? '';
    view[`u${i}`] = lines[1] ?? '';
  });
  plan.volts.forEach((node, i) => {
    view[`v${i}`] = look.hidden
      ? ''
      : floating.includes(node)
        ? 'floats'
        : say(nodeV[node] ?? null, 'voltage', job.units);
  });
  return view;
}

/** Volts across a load or coil below which nothing is written [V]. */
const SEEN_V = 0.05;

const figure = (path: string, job: JobContext): string => {
  const { value, kind, step } = resolveValue(path, job);
  return say(value, kind, job.units, step);
};

/** Made or open, for what has a contact. */
function contactState(id: string, symbol: string, look: Looked, proof: Proof): string {
  if (!/^(contact|switch|push|sink)/.test(symbol)) return '';
  // of a relay in its case nobody sees the contact, of a switch one sees the handle
  if (look.hidden && symbol.startsWith('contact')) return symbol === 'contact-break' ? 'made' : 'open';
  const welded = !look.hidden && look.fault?.kind === 'welded' && look.fault.id === id;
  const dead = !look.hidden && look.fault?.kind === 'open' && look.fault.id === id;
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
  if (now !== undefined && !look.hidden) rows.push({ label: 'now', value: say(Math.abs(now), 'current', job.units) });
  return { part: title.includes(id) ? title : `${title}, ${id}`, partRows: rows };
}
