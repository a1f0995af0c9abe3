import type { Circuit, Element, Proof } from '../../calc/index.ts';
import { LIVE_A, type Looked } from '../circuit-view/state.ts';
import type { JobContext } from '../context.ts';
import type { View } from '../contract.ts';
import { say } from '../show.ts';

/** What is read first: what the customer sees, what switches it, what protects it, what joins it. */
const ORDER = [
  'load',
  'relay',
  'switch',
  'feed',
  'sink',
  'fuse',
  'diode',
  'resistor',
  'battery',
  'connector',
  'splice',
  'chassis',
];

/** The drawing as a table: every part and every wire, its state, what it carries, the volts at its ends. */
export function inWords(circuit: Circuit, look: Looked, job: JobContext): View[] {
  const proof = job.study!.proof;
  const place = (kind: string) => {
    const at = ORDER.indexOf(kind);
    return Math.max(0, at); // every kind that is not named is a load
  };
  const parts = Object.entries(circuit.parts).sort(([, a], [, b]) => place(a.kind) - place(b.kind));
  const elements = ownedBy(proof);
  const terminals = terminalsBy(proof);
  const row = (id: string, label: string | undefined, says: string, ends: View): View => ({
    choose: `part:${id}`,
    current: job.chosen['part'] === id ? 'true' : 'false',
    id,
    label: label ?? '',
    says: look.fault && ownerOf(proof, look.fault.id) === id ? `${says}; fault put in` : says,
    ...ends,
  });
  return [
    ...parts.map(([id, part]) =>
      row(id, part.label, partState(circuit, id, look, job), {
        amps: carries(elements.get(id) ?? [], look, job),
        volts: endsOf(id, terminals.get(id) ?? [], look, job, proof),
      }),
    ),
    ...Object.entries(circuit.wires).map(([id, wire]) => {
      const size = say(job.study!.figure(`${id}.areaMm2`), 'area', job.units);
      const length = say(job.study!.figure(`${id}.lengthM`), 'length', job.units);
      const hot = look.hot.includes(id) ? ', overheats' : '';
      return row(id, wire.label, `${size}, ${length}${hot}`, {
        amps: current(look.solution.currentA[id] ?? 0, job),
        volts: span([volts(wire.from, look, job, proof), volts(wire.to, look, job, proof)]),
      });
    }),
  ];
}

const ownerOf = (proof: Proof, id: string) => {
  const element = id.replace(/\.(no|nc|com)$/, '');
  return proof.origin.ownerOf[element] ?? element;
};

function ownedBy(proof: Proof): Map<string, Element[]> {
  const owned = new Map<string, Element[]>();
  for (const e of proof.netlist.elements) {
    const id = proof.origin.ownerOf[e.id] ?? e.id;
    // a pigtail carries what its load carries, a feed's contact what its fuse does
    if (e.kind === 'wire' && id !== e.id) continue;
    append(owned, id, e);
  }
  return owned;
}

function append<Value>(lists: Map<string, Value[]>, id: string, value: Value): void {
  const known = lists.get(id);
  if (known === undefined) lists.set(id, [value]);
  else known.push(value);
}

const current = (a: number, job: JobContext) =>
  Math.abs(a) > LIVE_A ? say(Math.abs(a), 'current', job.units) : 'none';

/** What flows through a part; where it has several ways, through each that carries something. */
function carries(elements: readonly Element[], look: Looked, job: JobContext): string {
  const ways = elements.flatMap((e): [string, number][] => {
    const a = (id: string) => Math.abs(look.solution.currentA[id] ?? 0);
    if (e.kind !== 'relay') return [[e.id.split('.')[1] ?? '', a(e.id)]];
    return [
      ['coil', a(e.id)],
      ...(e.no ? [['30–87', a(`${e.id}.no`)] as [string, number]] : []),
      ...(e.nc ? [['30–87a', a(`${e.id}.nc`)] as [string, number]] : []),
    ];
  });
  if (ways.length === 0) return '';
  const live = ways.filter(([, a]) => a > LIVE_A).map(([way, a]) => [way, current(a, job)] as const);
  if (live.length === 0) return 'none';
  if (new Set(live.map(([, text]) => text)).size === 1 && elements[0]?.kind !== 'relay') return live[0]![1];
  return live.map(([way, text]) => `${way} ${text}`.trim()).join(', ');
}

function partState(circuit: Circuit, id: string, look: Looked, job: JobContext): string {
  const { solution } = look;
  const part = circuit.parts[id]!;
  const a = Math.abs(solution.currentA[id] ?? 0);
  const fault = look.fault?.id.replace(/\.(no|nc)$/, '') === id ? look.fault : undefined;
  switch (part.kind) {
    case 'relay': {
      const on = solution.energised[id];
      if (on === null || on === undefined) return 'does not settle';
      const contact = on
        ? part.form === 'break'
          ? '30 open'
          : '30 joined to 87'
        : part.form === 'make'
          ? '30 open'
          : '30 joined to 87a';
      return `${on ? 'energised' : 'at rest'}, ${contact}`;
    }
    case 'switch':
    case 'sink':
    case 'feed': {
      if (fault?.kind === 'welded') return 'welded shut';
      if (fault?.kind === 'open') return 'open';
      if (part.kind === 'feed' && look.blown.includes(id)) return 'its fuse has blown';
      const inverted = part.kind !== 'feed' && 'inverted' in part && part.inverted === true;
      const input = 'input' in part ? part.input : undefined;
      if (input === undefined) return 'live';
      const made = look.on.includes(input) !== inverted;
      if (part.kind === 'switch' && part.changeover) return made ? '1 joined to 2' : '1 joined to 3';
      return part.kind === 'feed' ? (made ? 'live' : 'off') : made ? 'closed' : 'open';
    }
    case 'fuse':
      return `${look.blown.includes(id) ? 'blown' : 'whole'}, ${say(job.study!.figure(`${id}.ratingA`), 'current', job.units)}`;
    case 'diode':
      return a > LIVE_A ? 'passes' : 'blocks';
    case 'battery':
      return a <= LIVE_A ? 'rests' : (solution.currentA[id] ?? 0) > 0 ? 'delivers' : 'takes charge';
    case 'resistor':
    case 'connector':
    case 'splice':
    case 'chassis':
      return part.kind === 'chassis' ? 'joined to the body' : 'joined';
    default: {
      const on = solution.on[id];
      if (on === null) return 'does not settle';
      const at = solution.loadV[id];
      const across = Array.isArray(at)
        ? `${say(at[0], 'voltage', job.units)} to ${say(at[1], 'voltage', job.units)}`
        : say(Math.abs(at ?? 0), 'voltage', job.units);
      // a load that nobody asked for has volts across it, and no threshold to be on from
      return on === undefined ? across : `${on ? 'on' : 'off'}, ${across}`;
    }
  }
}

function volts(ref: string, look: Looked, job: JobContext, proof: Proof): string {
  const node = proof.origin.nodeOf[ref];
  if (node === undefined) return '';
  return look.solution.floating.includes(node) ? 'floats' : say(look.solution.nodeV[node] ?? 0, 'voltage', job.units);
}

const span = (texts: readonly string[]): string => {
  const known = texts.filter((text) => text !== '');
  return new Set(known).size === 1 ? known[0]! : known.join(' to ');
};

/** Terminals of each part, as they are written. */
function terminalsBy(proof: Proof): Map<string, string[]> {
  const terminals = new Map<string, string[]>();
  for (const ref of Object.keys(proof.origin.nodeOf)) {
    const dot = ref.indexOf('.');
    append(terminals, dot < 0 ? ref : ref.slice(0, dot), ref);
  }
  return terminals;
}

/** Volts at each terminal of a part. */
function endsOf(id: string, refs: readonly string[], look: Looked, job: JobContext, proof: Proof): string {
  const texts = refs.map((ref) => [ref.slice(id.length + 1), volts(ref, look, job, proof)] as const);
  if (new Set(texts.map(([, text]) => text)).size === 1) return texts[0]![1];
  return texts.map(([terminal, text]) => `${POLES[terminal] ?? terminal} ${text}`.trim()).join(', ');
}

/** A sign before a number would be read as the number's. */
const POLES: Readonly<Record<string, string>> = { '+': 'plus', '-': 'minus' };
