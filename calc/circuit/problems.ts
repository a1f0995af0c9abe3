import { nearestName } from './did-you-mean.ts';
import { parseCondition } from './intent.ts';
import type { Circuit, LoadPart, Part, Quantity, QuantityKind, Sized, TerminalRef } from './model.ts';
import { Points } from './points.ts';
import { UNIT_OF } from './quantities.ts';
import { soleTerminalOf, splitTerminalRef, terminalsOf } from './terminals.ts';

/** What is wrong with a circuit as written, and where in its file. */
export interface CircuitProblem {
  /** Keys from the circuit's root to the field. */
  path: (string | number)[];
  message: string;
  /** The name that was probably meant. */
  suggestion?: string;
}

/** More than this many parts or wires is refused: a proof tries every state of every one of them. */
export const MAX_PARTS = 400;
/** As for parts. */
/** As `MAX_PARTS`, of wires. */
export const MAX_WIRES = 1200;
/** More inputs than this are refused: every one doubles the states. */
/** As `MAX_PARTS`, of inputs: each doubles the states. */
export const MAX_INPUTS = 16;

/** IEC 60757 letter codes. */
const COLOURS = new Set('BK BN RD OG YE GN BU VT GY WH PK GD TQ SR'.split(' '));

const LOAD_KINDS = new Set(['lamp', 'load', 'strip', 'motor', 'buzzer', 'charger', 'heater', 'camera', 'socket']);

/** Whether a part uses current to do something: what a fuse and a wire are there for. */
/** Anything that the customer wants on or off. */
export function isLoad(part: Part): part is LoadPart {
  return LOAD_KINDS.has(part.kind);
}

type Path = (string | number)[];

interface FieldRule {
  quantity: QuantityKind;
  /** Zero is a meaningful value. */
  zero?: boolean;
  /** Negative numbers are meaningful. */
  signed?: boolean;
  max?: number;
}

/** Number fields of parts, by name: what they measure and which numbers make sense. */
const PART_FIELDS: Record<string, FieldRule> = {
  volts: { quantity: 'voltage', max: 60 },
  sourceOhm: { quantity: 'resistance', max: 10 },
  fuseA: { quantity: 'current', max: 1000 },
  ratingA: { quantity: 'current', max: 1000 },
  ohm: { quantity: 'resistance', max: 1e9 },
  maxA: { quantity: 'current', max: 1000 },
  coilOhm: { quantity: 'resistance', max: 1e6 },
  pullInV: { quantity: 'voltage', max: 60 },
  dropOutV: { quantity: 'voltage', max: 60 },
  contactOhm: { quantity: 'resistance', max: 10 },
  suppressionOhm: { quantity: 'resistance', max: 1e6 },
  forwardV: { quantity: 'voltage', max: 60 },
  ratedV: { quantity: 'voltage', max: 60 },
  powerW: { quantity: 'power', max: 1e5 },
  currentA: { quantity: 'current', max: 1000 },
  labelAPerM: { quantity: 'current', max: 100 },
  lengthM: { quantity: 'length', max: 1000 },
  groupV: { quantity: 'voltage', max: 60 },
  inrushA: { quantity: 'current', max: 1e5 },
  inrushMs: { quantity: 'time', max: 1e5 },
  standbyMa: { quantity: 'current', zero: true, max: 1e5 },
};
/** Fields that may be 0 only on some kinds: a ground point without resistance is the normal case. */
const ZERO_ON = new Set(['chassis.ohm']);

class Report {
  readonly problems: CircuitProblem[] = [];
  private readonly circuit: Circuit;

  constructor(circuit: Circuit) {
    this.circuit = circuit;
  }

  add(path: Path, message: string, suggestion?: string): void {
    const tail = suggestion === undefined ? '' : `; did you mean "${suggestion}"?`;
    this.problems.push({ path, message: message + tail, ...(suggestion === undefined ? {} : { suggestion }) });
  }

  /** A number or job value: known, of the right kind, in range. */
  number(path: Path, what: string, value: Quantity | undefined, rule: FieldRule): void {
    if (value === undefined) return;
    const unit = UNIT_OF[rule.quantity];
    if (typeof value === 'string') {
      const job = Object.hasOwn(this.circuit.values, value) ? this.circuit.values[value] : undefined;
      if (job === undefined) {
        const names = Object.keys(this.circuit.values);
        const known = names.length === 0 ? 'the circuit defines no job values' : `expected one of ${names.join(', ')}`;
        this.add(path, `Unknown job value "${value}" for ${what}, ${known} or a number`, nearestName(value, names));
      } else if (job.quantity !== rule.quantity) {
        this.add(
          path,
          `Job value "${value}" is a ${job.quantity}, expected a ${rule.quantity}${unit === '' ? '' : ` in ${unit}`} for ${what}`,
        );
      } else if (job.min < 0 || (job.min === 0 && !rule.zero)) {
        this.add(path, `Job value "${value}" may go down to ${job.min}, expected a smallest value above 0 for ${what}`);
      }
      return;
    }
    const of = unit === '' ? '' : ` ${unit}`;
    const max = rule.max ?? Number.POSITIVE_INFINITY;
    const floor = rule.zero ? '0 or more' : 'above 0';
    if (!Number.isFinite(value)) this.add(path, `Unexpected ${what} ${value}, expected a number${of}`);
    else if (!rule.signed && (value < 0 || (value === 0 && !rule.zero))) {
      this.add(path, `Unexpected ${what} ${value}${of}, expected ${floor}`);
    } else if (value > max) this.add(path, `Unexpected ${what} ${value}${of}, expected at most ${max}${of}`);
  }

  sized(path: Path, what: string, value: Sized, rule: FieldRule): void {
    if (value !== 'auto') this.number(path, what, value, rule);
  }

  /** An input by name. */
  input(path: Path, what: string, name: string): void {
    if (Object.hasOwn(this.circuit.inputs, name)) return;
    const known = Object.keys(this.circuit.inputs);
    this.add(
      path,
      `Unknown input "${name}" for ${what}, expected one of ${known.join(', ') || 'the inputs (none is defined)'}`,
      nearestName(name, known),
    );
  }
}

/**
 * Everything that keeps a circuit from being solved: names that mean nothing, terminals that do not exist or are
 * forgotten, numbers that cannot be meant.
 *
 * @param circuit as its file gives it, already of the right shape
 * @returns problems in the order of the file; empty where `netlistOf` will work. Never throws on a bad circuit.
 */
export function circuitProblems(circuit: Circuit): CircuitProblem[] {
  const report = new Report(circuit);
  const partCount = Object.keys(circuit.parts).length;
  const wireCount = Object.keys(circuit.wires).length;
  const inputCount = Object.keys(circuit.inputs).length;
  // A file of this size is a mistake or a whole vehicle; answer at once instead of working on it.
  if (partCount > MAX_PARTS)
    report.add(['parts'], `${partCount} parts, expected at most ${MAX_PARTS}: split the circuit`);
  if (wireCount > MAX_WIRES)
    report.add(['wires'], `${wireCount} wires, expected at most ${MAX_WIRES}: split the circuit`);
  if (inputCount > MAX_INPUTS) {
    report.add(['inputs'], `${inputCount} inputs, expected at most ${MAX_INPUTS}: split the circuit`);
  }
  if (report.problems.length > 0) return report.problems;

  checkSupply(circuit, report);
  checkValues(circuit, report);
  checkIds(circuit, report);
  checkParts(circuit, report);
  checkWires(circuit, report);
  checkWiring(circuit, report);
  checkInputs(circuit, report);
  checkIntent(circuit, report);
  checkSignOffs(circuit, report);
  return report.problems;
}

function checkSupply(circuit: Circuit, report: Report): void {
  const volts: FieldRule = { quantity: 'voltage', max: 60 };
  const { supply } = circuit;
  report.number(['supply', 'restingV'], 'restingV', supply.restingV, volts);
  report.number(['supply', 'chargingV'], 'chargingV', supply.chargingV, volts);
  report.number(['supply', 'lowestV'], 'lowestV', supply.lowestV, volts);
  report.number(['supply', 'sourceOhm'], 'sourceOhm', supply.sourceOhm, { quantity: 'resistance', max: 10 });
  const { restingV, chargingV, lowestV } = supply;
  if (typeof restingV === 'number' && typeof chargingV === 'number' && restingV > chargingV) {
    report.add(['supply', 'restingV'], `restingV ${restingV} V is above chargingV ${chargingV} V, expected it below`);
  }
  if (typeof lowestV === 'number' && typeof restingV === 'number' && lowestV > restingV) {
    report.add(['supply', 'lowestV'], `lowestV ${lowestV} V is above restingV ${restingV} V, expected it below`);
  }
}

function checkValues(circuit: Circuit, report: Report): void {
  for (const [name, value] of Object.entries(circuit.values)) {
    const path = ['values', name];
    const unit = UNIT_OF[value.quantity];
    const of = unit === '' ? '' : ` ${unit}`;
    for (const field of ['default', 'min', 'max', 'step'] as const) {
      if (!Number.isFinite(value[field]))
        report.add([...path, field], `Unexpected ${field} ${value[field]}, expected a number`);
    }
    if (value.step <= 0)
      report.add([...path, 'step'], `Unexpected step ${value.step} of job value "${name}", expected above 0`);
    if (value.min > value.max) {
      report.add([...path, 'min'], `min ${value.min}${of} of job value "${name}" is above its max ${value.max}${of}`);
    } else if (value.default < value.min || value.default > value.max) {
      report.add(
        [...path, 'default'],
        `Unexpected default ${value.default}${of} of job value "${name}", expected ${value.min} to ${value.max}${of}`,
      );
    }
  }
}

function checkIds(circuit: Circuit, report: Report): void {
  const owners = new Map<string, string>();
  for (const group of ['parts', 'wires'] as const) {
    for (const id of Object.keys(circuit[group])) {
      if (!/^[A-Za-z][A-Za-z0-9_-]*$/.test(id)) {
        report.add([group, id], `Unexpected id "${id}", expected a letter, then letters, digits, "-" or "_"`);
      }
      const folded = id.toLowerCase();
      const other = owners.get(folded);
      if (other !== undefined) {
        report.add([group, id], `Id "${id}" is the same as "${other}" but for case or kind, expected an id of its own`);
      }
      owners.set(folded, id);
    }
  }
  const inputs = new Map<string, string>();
  for (const id of Object.keys(circuit.inputs)) {
    const other = inputs.get(id.toLowerCase());
    if (other !== undefined) report.add(['inputs', id], `Input "${id}" is the same as "${other}" but for case`);
    inputs.set(id.toLowerCase(), id);
    if (!parseCondition(id, [id]).ok) {
      report.add(
        ['inputs', id],
        `Unexpected input name "${id}", expected a word that is not and, or, not, always, never`,
      );
    }
  }
}

function checkParts(circuit: Circuit, report: Report): void {
  const batteries = Object.keys(circuit.parts).filter((id) => circuit.parts[id]!.kind === 'battery');
  if (batteries.length === 0) report.add(['parts'], 'No battery, expected at least one part of kind "battery"');

  for (const [id, part] of Object.entries(circuit.parts)) {
    const path: Path = ['parts', id];
    for (const [field, value] of Object.entries(part)) {
      const rule = PART_FIELDS[field];
      if (rule === undefined || value === 'auto') continue;
      const zero = rule.zero ?? ZERO_ON.has(`${part.kind}.${field}`);
      if (typeof value === 'number' || typeof value === 'string') {
        report.number([...path, field], `${field} of ${part.kind} ${id}`, value, { ...rule, zero });
      }
    }
    if ('input' in part && part.input !== undefined) {
      report.input([...path, 'input'], `${part.kind} ${id}`, part.input);
    }
    switch (part.kind) {
      case 'feed':
        if (part.from !== undefined && !batteries.includes(part.from)) {
          report.add(
            [...path, 'from'],
            `Unknown battery "${part.from}" for feed ${id}, expected one of ${batteries.join(', ')}`,
            nearestName(part.from, batteries),
          );
        }
        break;
      case 'relay':
        checkRelay(id, part, path, report);
        break;
      case 'connector':
        if (!Number.isInteger(part.poles) || part.poles < 1 || part.poles > 60) {
          report.add([...path, 'poles'], `Unexpected poles ${part.poles} of connector ${id}, expected 1 to 60`);
        }
        break;
      default:
        if (isLoad(part)) checkLoad(id, part, path, report);
    }
  }
}

function checkRelay(id: string, part: Extract<Part, { kind: 'relay' }>, path: Path, report: Report): void {
  if (typeof part.pullInV === 'number' && typeof part.dropOutV === 'number' && part.dropOutV >= part.pullInV) {
    report.add(
      [...path, 'dropOutV'],
      `dropOutV ${part.dropOutV} V of relay ${id}, expected below pullInV ${part.pullInV} V`,
    );
  }
  for (const side of ['make', 'break'] as const) {
    report.number([...path, 'maxA', side], `maxA.${side} of relay ${id}`, part.maxA[side], {
      quantity: 'current',
      max: 1000,
    });
  }
  if (part.suppressionOhm !== undefined && part.suppression !== 'resistor') {
    report.add([...path, 'suppressionOhm'], `suppressionOhm of relay ${id} without suppression: resistor`);
  }
}

function checkLoad(id: string, part: LoadPart, path: Path, report: Report): void {
  if (part.model === 'strip' && part.labelAPerM !== undefined) {
    if (part.lengthM === undefined) report.add(path, `Strip ${id} has labelAPerM but no lengthM, expected both`);
    if (part.powerW !== undefined || part.currentA !== undefined) {
      report.add(path, `Strip ${id} has labelAPerM and a power or current, expected one of them`);
    }
  } else if ((part.powerW === undefined) === (part.currentA === undefined)) {
    const came = part.powerW === undefined ? 'neither powerW nor currentA' : 'both powerW and currentA';
    report.add(path, `${id} has ${came}, expected one of them`);
  }
  if (part.pigtail) {
    const rule: FieldRule = { quantity: 'length', max: 100 };
    report.number([...path, 'pigtail', 'lengthM'], `lengthM of ${id}'s pigtail`, part.pigtail.lengthM, rule);
    report.number([...path, 'pigtail', 'areaMm2'], `areaMm2 of ${id}'s pigtail`, part.pigtail.areaMm2, {
      quantity: 'area',
      max: 240,
    });
  }
}

function checkWires(circuit: Circuit, report: Report): void {
  for (const [id, wire] of Object.entries(circuit.wires)) {
    const path: Path = ['wires', id];
    report.number([...path, 'lengthM'], `lengthM of wire ${id}`, wire.lengthM, { quantity: 'length', max: 1000 });
    report.sized([...path, 'areaMm2'], `areaMm2 of wire ${id}`, wire.areaMm2, { quantity: 'area', max: 240 });
    report.number([...path, 'ambientC'], `ambientC of wire ${id}`, wire.ambientC, {
      quantity: 'temperature',
      zero: true,
      signed: true,
      max: 85,
    });
    if (wire.bundled !== undefined && (!Number.isInteger(wire.bundled) || wire.bundled < 1)) {
      report.add(
        [...path, 'bundled'],
        `Unexpected bundled ${wire.bundled} of wire ${id}, expected a whole number from 1`,
      );
    }
    if (wire.colour !== undefined && !wire.colour.split('-').every((code) => COLOURS.has(code))) {
      report.add(
        [...path, 'colour'],
        `Unexpected colour "${wire.colour}" of wire ${id}, expected codes of IEC 60757 such as RD or BK-WH`,
      );
    }
  }
}

/** Says what is wrong with a terminal reference, or returns its full name. */
function terminalAt(circuit: Circuit, ref: TerminalRef, path: Path, report: Report): string | undefined {
  const { part: id, terminal } = splitTerminalRef(ref);
  const part = Object.hasOwn(circuit.parts, id) ? circuit.parts[id] : undefined;
  if (part === undefined) {
    report.add(path, `Unknown part "${id}" in terminal "${ref}"`, nearestName(id, Object.keys(circuit.parts)));
    return undefined;
  }
  const names = terminalsOf(part).map((each) => each.name);
  const sole = soleTerminalOf(part);
  if (terminal === undefined) {
    if (sole !== undefined) return id;
    report.add(
      path,
      `Terminal of ${part.kind} ${id} is not named, expected one of ${names.map((n) => `${id}.${n}`).join(', ')}`,
    );
    return undefined;
  }
  if (names.includes(terminal)) return sole === undefined ? ref : id;
  const expected = sole?.name === '' ? id : names.map((name) => `${id}.${name}`).join(', ');
  const near = nearestName(terminal, names);
  report.add(
    path,
    `Unknown terminal "${ref}": ${part.kind} ${id} has ${expected}`,
    near === undefined ? undefined : `${id}.${near}`,
  );
  return undefined;
}

function checkWiring(circuit: Circuit, report: Report): void {
  const points = new Points(circuit);
  const uses = new Map<string, number>();
  const use = (terminal: string): void => {
    uses.set(terminal, (uses.get(terminal) ?? 0) + 1);
  };
  const first = Object.keys(circuit.parts).find((id) => circuit.parts[id]!.kind === 'battery');
  for (const [id, part] of Object.entries(circuit.parts)) {
    // The vehicle's own wiring joins a feed to its battery.
    const source = part.kind === 'feed' ? (part.from ?? first) : undefined;
    if (source !== undefined) use(`${source}.+`);
    const own = terminalsOf(part).map((each) => each.name);
    for (const [name, ref] of Object.entries(part.join ?? {})) {
      const path: Path = ['parts', id, 'join', name];
      if (!own.includes(name)) {
        report.add(
          path,
          `Unknown terminal "${name}" of ${part.kind} ${id}, it has ${own.join(', ')}`,
          nearestName(name, own),
        );
        continue;
      }
      const target = terminalAt(circuit, ref, path, report);
      const from = soleTerminalOf(part) ? id : `${id}.${name}`;
      if (target === undefined) continue;
      if (target === from) {
        report.add(path, `Terminal ${from} is joined to itself`);
        continue;
      }
      use(from);
      use(target);
    }
  }
  for (const [id, wire] of Object.entries(circuit.wires)) {
    const from = terminalAt(circuit, wire.from, ['wires', id, 'from'], report);
    const to = terminalAt(circuit, wire.to, ['wires', id, 'to'], report);
    if (from !== undefined) use(from);
    if (to !== undefined) use(to);
    if (from === undefined || to === undefined) continue;
    if (from === to) report.add(['wires', id, 'to'], `Wire ${id} runs from ${from} to itself`);
    else if (points.of(from) === points.of(to)) {
      report.add(['wires', id], `Wire ${id} runs from ${from} to ${to}, which are one point already`);
    }
  }
  for (const [id, part] of Object.entries(circuit.parts)) checkReached(id, part, uses, points, report);
}

/** Every terminal that a part needs is wired, and its two ends are two points. */
function checkReached(id: string, part: Part, uses: Map<string, number>, points: Points, report: Report): void {
  const path: Path = ['parts', id];
  const sole = soleTerminalOf(part);
  const terminals = terminalsOf(part).map((each) => ({ ...each, key: sole ? id : `${id}.${each.name}` }));
  const wired = terminals.filter((each) => (uses.get(each.key) ?? 0) > 0);
  if (wired.length === 0) {
    report.add(path, `${named(part)} ${id} is wired to nothing`);
    return;
  }
  for (const each of terminals) {
    if (each.required && !wired.includes(each)) {
      report.add(path, `Terminal ${each.key} (${each.meaning}) is wired to nothing`);
    }
  }
  if (part.kind === 'splice' && (uses.get(id) ?? 0) < 2) {
    report.add(path, `Splice ${id} joins only one wire, expected two or more`);
  }
  if (part.kind === 'relay' && part.form === 'changeover' && !wired.some((each) => each.name.startsWith('87'))) {
    report.add(path, `Relay ${id} has neither 87 nor 87a wired, expected at least one`);
  }
  if (part.kind === 'connector') {
    for (let pole = 1; pole <= part.poles; pole++) {
      const [a, b] = ['a', 'b'].map((half) => (uses.get(`${id}.${pole}${half}`) ?? 0) > 0);
      if (a !== b) report.add(path, `Pole ${pole} of connector ${id} is wired on half ${a ? 'a' : 'b'} only`);
    }
  }
  const ends = ENDS[part.kind] ?? (isLoad(part) ? ['+', '-'] : undefined);
  if (ends && points.of(`${id}.${ends[0]}`) === points.of(`${id}.${ends[1]}`)) {
    report.add(
      path,
      `${named(part)} ${id} has both ends, ${ends.join(' and ')}, on one point: nothing can flow through it`,
    );
  }
}

/** The two ends of parts that make no sense with both on one point. */
const ENDS: Partial<Record<Part['kind'], [string, string]>> = {
  battery: ['+', '-'],
  fuse: ['1', '2'],
  switch: ['1', '2'],
  relay: ['86', '85'],
  diode: ['A', 'K'],
  resistor: ['1', '2'],
};

const named = (part: Part): string => part.kind.charAt(0).toUpperCase() + part.kind.slice(1);

function checkInputs(circuit: Circuit, report: Report): void {
  const used = new Set<string>();
  for (const part of Object.values(circuit.parts))
    if ('input' in part && part.input !== undefined) used.add(part.input);
  for (const [id, input] of Object.entries(circuit.inputs)) {
    report.number(['inputs', id, 'limitA'], `limitA of input ${id}`, input.limitA, { quantity: 'current', max: 1000 });
    if (!used.has(id))
      report.add(['inputs', id], `Input "${id}" works no part, expected a feed, sink or switch with input: ${id}`);
  }
}

function checkIntent(circuit: Circuit, report: Report): void {
  const inputs = Object.keys(circuit.inputs);
  const loads = Object.keys(circuit.parts).filter((id) => isLoad(circuit.parts[id]!));
  const relays = Object.keys(circuit.parts).filter((id) => circuit.parts[id]!.kind === 'relay');
  const known = (path: Path, what: string, name: string, names: string[]): void => {
    if (names.includes(name)) return;
    report.add(path, `Unknown ${what} "${name}", expected one of ${names.join(', ')}`, nearestName(name, names));
  };
  const condition = (path: Path, text: string): void => {
    const parsed = parseCondition(text, inputs);
    if (!parsed.ok) report.add(path, `"${text}": ${withoutHint(parsed.error.message)}`, parsed.error.suggestion);
  };
  const { intent } = circuit;
  for (const load of loads) {
    if (!Object.hasOwn(intent.loads, load)) {
      report.add(['intent', 'loads'], `No intent for ${load}, expected a line that says when the customer wants it on`);
    }
  }
  for (const [load, wish] of Object.entries(intent.loads)) {
    known(['intent', 'loads', load], 'load', load, loads);
    condition(['intent', 'loads', load, 'when'], wish.when);
    wish.ranges?.forEach((range, at) => {
      condition(['intent', 'loads', load, 'ranges', at, 'when'], range.when);
      if (!(range.minV <= range.maxV)) {
        report.add(['intent', 'loads', load, 'ranges', at], `minV ${range.minV} V is above maxV ${range.maxV} V`);
      }
    });
  }
  intent.sequence?.forEach((step, at) => {
    step.on.forEach((name, i) => {
      known(['intent', 'sequence', at, 'on', i], 'input', name, inputs);
    });
    step.loads.forEach((name, i) => {
      known(['intent', 'sequence', at, 'loads', i], 'load', name, loads);
    });
  });
  for (const load of Object.keys(intent.keyOut ?? {})) known(['intent', 'keyOut', load], 'load', load, loads);
  intent.neverSettles?.forEach((relay, at) => {
    known(['intent', 'neverSettles', at], 'relay', relay, relays);
  });
}

/** The report writes the hint itself, once. */
function withoutHint(message: string): string {
  return message.replace(/: did you mean .*$/, '');
}

function checkSignOffs(circuit: Circuit, report: Report): void {
  circuit.signOffs.forEach((signOff, at) => {
    const path: Path = ['signOffs', at];
    for (const field of ['by', 'reason'] as const) {
      if (signOff[field].trim() === '')
        report.add(
          [...path, field],
          `Empty ${field} of the sign-off, expected ${field === 'by' ? 'a name' : 'a reason'}`,
        );
    }
    if (!isDay(signOff.on))
      report.add([...path, 'on'], `Unexpected date "${signOff.on}", expected a day such as 2025-03-31`);
    signOff.parts.forEach((ref, i) => {
      const id = splitTerminalRef(ref).part;
      if (Object.hasOwn(circuit.parts, id) || Object.hasOwn(circuit.wires, id) || Object.hasOwn(circuit.inputs, id))
        return;
      const names = [...Object.keys(circuit.parts), ...Object.keys(circuit.wires)];
      report.add([...path, 'parts', i], `Unknown part "${id}" in the sign-off`, nearestName(id, names));
    });
  });
}

function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}
