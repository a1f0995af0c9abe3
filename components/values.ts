import type { Circuit, Part, PartKind, Quantity } from '../calc/index.ts';
import type { JobContext } from './context.ts';
import { KIND_OF_QUANTITY, type Kind, kindOfName } from './units.ts';

/**
 * Value paths: how a guide names a number. `feedRunM` is a job value; `F1.ratingA` is a figure of a part, `W2.dropV` of a
 * wire, `supply.maxA` of the whole circuit. Kind and unit follow from the name's ending.
 */

/** A figure and the words for it after the part's name: "Fuse F1 rating". */
type Figures = Readonly<Record<string, string>>;

const LOAD: Figures = {
  currentA: 'current',
  powerW: 'power',
  voltageV: 'voltage at the load',
  dropV: 'voltage lost on the way',
  dropFraction: 'share of voltage lost on the way',
  lengthM: 'length',
};
/** Figures of a part by its kind. */
const PART_FIGURES: Partial<Record<PartKind, Figures>> = {
  fuse: { ratingA: 'rating', currentA: 'design current' },
  feed: { fuseA: 'own fuse', currentA: 'current' },
  relay: { coilCurrentA: 'coil current', coilOhm: 'coil resistance', contactCurrentA: 'contact current' },
  switch: { currentA: 'current' },
  diode: { currentA: 'current' },
  resistor: { ohm: 'resistance', currentA: 'current' },
  lamp: LOAD,
  load: LOAD,
  strip: LOAD,
  motor: LOAD,
  buzzer: LOAD,
  charger: LOAD,
  heater: LOAD,
  camera: LOAD,
  socket: LOAD,
};
/** Figures of one part: those of its kind that this one has. */
function figuresOf(part: Part): Figures {
  const figures: Record<string, string> = { ...PART_FIGURES[part.kind] };
  if (!('lengthM' in part) || part.lengthM === undefined) delete figures['lengthM'];
  // a changeover carries one current or the other, and says neither
  if (part.kind === 'switch' && part.changeover) delete figures['currentA'];
  return figures;
}
const WIRE_FIGURES: Figures = {
  areaMm2: 'wire size',
  lengthM: 'length',
  currentA: 'current',
  dropV: 'voltage lost',
  dropFraction: 'share of voltage lost',
  limitA: 'current limit',
};
const SUPPLY_FIGURES: Figures = {
  restingV: 'resting voltage',
  chargingV: 'charging voltage',
  standbyMa: 'standby current',
  maxA: 'largest current',
};

/** The part's own word, for labels and announcements. */
const PART_WORDS: Readonly<Record<PartKind, string>> = {
  battery: 'Battery',
  feed: 'Feed',
  sink: 'Signal',
  fuse: 'Fuse',
  switch: 'Switch',
  relay: 'Relay',
  diode: 'Diode',
  resistor: 'Resistor',
  lamp: 'Lamp',
  load: 'Load',
  strip: 'Strip',
  motor: 'Motor',
  buzzer: 'Buzzer',
  charger: 'Charger',
  heater: 'Heater',
  camera: 'Camera',
  socket: 'Socket',
  connector: 'Connector',
  splice: 'Splice',
  chassis: 'Ground point',
};

/** "Fuse F1"; with the author's label where there is one: "Cargo lamp L1". */
export function partTitle(circuit: Circuit, id: string): string {
  const part = circuit.parts[id];
  if (part === undefined) return circuit.wires[id] === undefined ? id : `Wire ${id}`;
  return `${PART_WORDS[part.kind]} ${id}`;
}

/** Every value path a guide on this circuit may write, in the circuit's order. */
export function valuePaths(circuit: Circuit): string[] {
  const paths = Object.keys(circuit.values);
  for (const [id, part] of Object.entries(circuit.parts)) {
    for (const figure of Object.keys(figuresOf(part))) paths.push(`${id}.${figure}`);
  }
  for (const id of Object.keys(circuit.wires)) {
    for (const figure of Object.keys(WIRE_FIGURES)) paths.push(`${id}.${figure}`);
  }
  for (const figure of Object.keys(SUPPLY_FIGURES)) paths.push(`supply.${figure}`);
  return paths;
}

/** What a value path stands for. */
export interface Resolved {
  kind: Kind;
  value: number | null;
  /** Words for it: "Wire W2 size". */
  label: string;
  /** The job value behind it, where the reader may change it. */
  set?: string;
  /** Rounding step of that job value. */
  step?: number;
  /** Why there is no value. */
  reason?: string;
}

/**
 * Looks a value path up. The number comes from the job values, else from the circuit worked out, else from what the
 * author wrote there. A path nobody defines is a mistake of the guide: it throws, and the check names the line.
 */
export function resolveValue(path: string, job: JobContext): Resolved {
  const { circuit, study } = job;
  if (circuit === null) throw new RangeError(`value "${path}": this page has no circuit`);
  const spec = circuit.values[path];
  if (spec !== undefined) {
    return {
      kind: KIND_OF_QUANTITY[spec.quantity],
      value: job.values[path] ?? spec.default,
      label: spec.label,
      set: path,
      step: spec.step,
    };
  }
  const dot = path.indexOf('.');
  const id = path.slice(0, Math.max(0, dot));
  const figure = path.slice(dot + 1);
  const phrase = phraseOf(circuit, id, figure);
  if (phrase === undefined) throw new RangeError(`value "${path}": the circuit has no such number`);
  const label = id === 'supply' ? capital(phrase) : `${partTitle(circuit, id)} ${phrase}`;
  const kind = kindOfName(figure);
  const worked = study?.figure(path);
  const written = authored(circuit, id, figure);
  const named = typeof written === 'string' ? circuit.values[written] : undefined;
  if (named !== undefined && typeof written === 'string') {
    return { kind, value: job.values[written] ?? named.default, label, set: written, step: named.step };
  }
  if (typeof written === 'number') return { kind, value: worked ?? written, label };
  if (typeof worked === 'number') return { kind, value: worked, label };
  return { kind, value: null, label, reason: study?.reasons[path] ?? 'not known' };
}

function phraseOf(circuit: Circuit, id: string, figure: string): string | undefined {
  const part = circuit.parts[id];
  const figures = id === 'supply' ? SUPPLY_FIGURES : circuit.wires[id] ? WIRE_FIGURES : part && figuresOf(part);
  return figures !== undefined && Object.hasOwn(figures, figure) ? figures[figure] : undefined;
}

/** What the author wrote for this figure, if he wrote it at all. */
function authored(circuit: Circuit, id: string, figure: string): Quantity | undefined {
  const holder = (id === 'supply' ? circuit.supply : (circuit.wires[id] ?? circuit.parts[id])) as
    | Part
    | Record<string, unknown>
    | undefined;
  const written = (holder as Record<string, unknown> | undefined)?.[figure];
  return typeof written === 'number' || (typeof written === 'string' && written !== 'auto') ? written : undefined;
}

/** A quantity of the circuit as a number: itself, or the job value it names. */
export function quantityOf(written: Quantity | undefined, job: JobContext): number | undefined {
  if (typeof written !== 'string') return written;
  return job.values[written] ?? job.circuit?.values[written]?.default;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
