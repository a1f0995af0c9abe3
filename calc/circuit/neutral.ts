/**
 * Reads the neutral pattern format: circuits with numbered answers that were solved elsewhere, used to check this solver
 * and the rules. SI units, cross-sections in mm²; node "0" is the chassis.
 */
import type { Element, InputState, Netlist, NetlistInput } from './model.ts';

interface NeutralElement {
  type: string;
  id: string;
  [field: string]: unknown;
}

export interface NeutralRow {
  n: number;
  inputs: InputState;
  volts?: Record<string, number>;
  on: Record<string, boolean | null>;
  settles: boolean;
  loadV?: Record<string, number | [number, number]>;
  sourceA?: Record<string, number>;
  energised?: Record<string, boolean | null>;
  rangeV?: Record<string, [number, number]>;
}

export interface NeutralFinding {
  rule: string;
  kind?: string;
  elements: string[];
}

export interface NeutralPattern {
  id: string;
  title?: string;
  inputs: { id: string; kind: string; limitA?: number; nodes?: string[] }[];
  elements: NeutralElement[];
  loads: string[];
  onAboveFraction?: number;
  latching?: boolean;
  supplyVariants?: Record<string, number>[];
  truthTable?: NeutralRow[];
  intended?: NeutralRow[];
  sequence?: NeutralRow[];
  intendedSequence?: NeutralRow[];
  expectFindings?: NeutralFinding[];
}

export interface NeutralFile {
  format: number;
  copperOhmMm2PerM: number;
  switchOhms: number;
  unfusedStubM: number;
  wireFuseLimitA: { areaMm2: number; maxFuseA: number }[];
  patterns: NeutralPattern[];
}

export type NeutralHead = Omit<NeutralFile, 'patterns'>;

export interface NeutralEdit {
  remove?: string[];
  add?: NeutralElement[];
  set?: Record<string, Record<string, unknown>>;
}

export interface NeutralFault {
  id: string;
  pattern: string;
  edit: NeutralEdit;
  kind: string;
  expect: { rule: string; elements: string[]; text?: string };
  alsoFound: NeutralFinding[];
  onlyVisibleAgainstIntent: boolean;
  statesThatDiffer: NeutralRow[];
}

export interface NeutralSingleFaults {
  fuseBlowsAtTimesRating: number;
  chassisOhms: number;
  patterns: { pattern: string; faults: NeutralSingleFault[] }[];
}

export interface NeutralSingleFault {
  fault: 'open' | 'short';
  id: string;
  at?: string;
  changed: { n: number; on: Record<string, boolean | null>; settles?: boolean }[];
  blown?: Record<string, string[]>;
  hot?: Record<string, string[]>;
}

const INPUT_KINDS: Record<string, NetlistInput['kind']> = {
  switch: 'switch',
  door: 'door',
  ignition: 'ignition',
  trigger: 'signal',
};

/** Default share of its rated voltage from which a load counts as on, where neither load nor circuit says. */
const ON_ABOVE_FRACTION = 0.5;

/** The netlist of a pattern. Throws TypeError or RangeError naming pattern and element for what the format does not know. */
export function readPattern(head: NeutralHead, pattern: NeutralPattern): Netlist {
  return {
    id: pattern.id,
    elements: pattern.elements.map((element) => readElement(head, pattern, element)),
    inputs: pattern.inputs.map((input) => {
      const kind = Object.hasOwn(INPUT_KINDS, input.kind) ? INPUT_KINDS[input.kind] : undefined;
      if (kind === undefined) {
        const known = Object.keys(INPUT_KINDS).join(', ');
        throw new RangeError(`${pattern.id}: ${input.id}: unexpected kind "${input.kind}", expected one of ${known}`);
      }
      return { id: input.id, kind, ...(input.limitA === undefined ? {} : { limitA: input.limitA }) };
    }),
    loads: [...pattern.loads],
  };
}

/** The pattern with a planted fault: elements removed, added, then fields set. */
export function editPattern(pattern: NeutralPattern, edit: NeutralEdit): NeutralPattern {
  const known = new Set(pattern.elements.map((element) => element.id));
  for (const id of edit.remove ?? []) {
    if (!known.has(id)) throw new RangeError(`${pattern.id}: cannot remove "${id}": no such element`);
  }
  const elements = pattern.elements.filter((element) => !(edit.remove ?? []).includes(element.id));
  elements.push(...(edit.add ?? []));
  for (const id of Object.keys(edit.set ?? {})) {
    if (!elements.some((element) => element.id === id))
      throw new RangeError(`${pattern.id}: cannot set "${id}": no such element`);
  }
  return { ...pattern, elements: elements.map((element) => ({ ...element, ...edit.set?.[element.id] })) };
}

/** Largest fuse for a cross-section: of the table's largest size that is not above it; 0 below the smallest. */
export function fuseLimitA(head: NeutralHead, areaMm2: number): number {
  let limitA = 0;
  for (const row of head.wireFuseLimitA) if (row.areaMm2 <= areaMm2 + 1e-9) limitA = Math.max(limitA, row.maxFuseA);
  return limitA;
}

function readElement(head: NeutralHead, pattern: NeutralPattern, e: NeutralElement): Element {
  const where = `${pattern.id}: ${e.id}`;
  const number = (name: string, fallback?: number): number => {
    const value = e[name] ?? fallback;
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      throw new TypeError(`${where}: unexpected ${name} ${String(value)}, expected a number`);
    }
    return value;
  };
  const optional = (name: string, as = name) =>
    e[name] === undefined || e[name] === null ? {} : { [as]: number(name) };
  const text = (name: string): string => {
    const value = e[name];
    if (typeof value !== 'string')
      throw new TypeError(`${where}: unexpected ${name} ${String(value)}, expected a name`);
    return value;
  };
  const flag = (name: string) => (e[name] === true ? { [name]: true } : {});
  const ends = () => ({ id: e.id, a: text('a'), b: text('b') });

  switch (e.type) {
    case 'source':
      return {
        kind: 'source',
        id: e.id,
        p: text('p'),
        n: text('n'),
        volts: number('volts'),
        ohm: number('ohms'),
        ...flag('chargeable'),
        ...flag('parallelOk'),
      };
    case 'wire': {
      const areaMm2 = number('areaMm2');
      const lengthM = number('lengthM');
      if (areaMm2 <= 0) throw new RangeError(`${where}: unexpected areaMm2 ${areaMm2}, expected above 0`);
      const ohm = (head.copperOhmMm2PerM * lengthM) / areaMm2;
      return { kind: 'wire', ...ends(), areaMm2, lengthM, ohm, limitA: fuseLimitA(head, areaMm2), ...flag('bothWays') };
    }
    case 'fuse':
      return { kind: 'fuse', ...ends(), ratingA: number('ratingA'), ohm: number('ohms') };
    case 'resistor':
      return { kind: 'resistor', ...ends(), ohm: number('ohms') };
    case 'lamp':
    case 'load': {
      const ratedV = number('volts');
      const ohm = e['ohms'] === undefined ? ratedV ** 2 / number('wattsAt') : number('ohms');
      const onAboveFraction = number('onAboveFraction', pattern.onAboveFraction ?? ON_ABOVE_FRACTION);
      return { kind: 'load', ...ends(), ratedV, model: 'resistive', ohm, onAboveFraction, ...flag('bothWays') };
    }
    case 'switch':
      return {
        kind: 'switch',
        ...ends(),
        input: text('input'),
        inverted: e['inverted'] === true,
        ohm: number('ohms', head.switchOhms),
        ...optional('maxA'),
      };
    case 'relay': {
      const coil = e['coil'];
      if (!Array.isArray(coil) || coil.length !== 2)
        throw new TypeError(`${where}: unexpected coil ${String(coil)}, expected two nodes`);
      const contact = (name: string) => (e[name] === undefined || e[name] === null ? null : text(name));
      const maxA = (e['maxA'] ?? {}) as { no?: number; nc?: number };
      return {
        kind: 'relay',
        id: e.id,
        coilP: String(coil[0]),
        coilN: String(coil[1]),
        coilOhm: number('coilOhms'),
        pullInV: number('pullInV'),
        dropOutV: number('dropOutV'),
        com: text('com'),
        no: contact('no'),
        nc: contact('nc'),
        contactOhm: number('contactOhms'),
        ...(maxA.no === undefined || maxA.no === null ? {} : { maxNoA: maxA.no }),
        ...(maxA.nc === undefined || maxA.nc === null ? {} : { maxNcA: maxA.nc }),
      };
    }
    case 'diode':
      return { kind: 'diode', id: e.id, a: text('a'), k: text('k'), forwardV: number('forwardV') };
    default:
      throw new RangeError(`${where}: unexpected type "${e.type}"`);
  }
}
