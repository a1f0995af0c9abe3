import { wireLimit } from '../ampacity.ts';
import { resistanceOhmPerM } from '../conductor.ts';
import {
  CHASSIS,
  type Circuit,
  type Element,
  type LoadPart,
  type Netlist,
  type NetlistInput,
  type Node,
  type Part,
  type Quantity,
  type RelayPart,
  type Sized,
  type TerminalRef,
  type Wire,
} from './model.ts';
import { Points } from './points.ts';
import { isLoad } from './problems.ts';
import { numberOf, type Values, valuesOf } from './quantities.ts';

/** What `auto` became, by id of the fuse or wire. */
export interface Sizes {
  ratingA: Record<string, number>;
  areaMm2: Record<string, number>;
}

/** Where the elements of a netlist come from. */
export interface Origin {
  /** Part or wire behind each element. */
  ownerOf: Record<string, string>;
  /** Electrical point of each terminal, so that a meter and a drawing find it. */
  nodeOf: Record<TerminalRef, Node>;
}

/**
 * Figures that an author may leave out. Typical parts of the trade from memory, no source; a guide that depends on one
 * writes the part's own figure.
 */
export const USUAL = {
  /** Copper of a warm loom [°C]: resistance is taken here, so that a drop is not promised smaller than it is. */
  copperC: 60,
  ambientC: 30,
  insulationC: 105,
  contactOhm: 0.005,
  switchOhm: 0.001,
  connectorOhm: 0.005,
  /** A blade fuse drops about this at its rating [V]. */
  fuseDropV: 0.08,
  forwardV: 0.7,
  pullInV: { 12: 7.2, 24: 14.4 },
  dropOutV: { 12: 1.6, 24: 3.2 },
  /** Resistance of a built-in resistor clamp over that of its coil. */
  clampOverCoil: 7,
  onAboveFraction: 0.7,
  dropFraction: 0.03,
} as const;

/** Pigtails are sold bare of data; air around them is that of a warm loom. */
const PIGTAIL_AMBIENT_C = 30;

/** Resistances per metre once worked out: a circuit has few sizes and is built again for every number that changes. */
const knownOhmPerM = new Map<number, number>();

/** Resistance of a wire as the netlist counts it [ohm]. */
export function wireOhm(areaMm2: number, lengthM: number): number {
  const ohmPerM = knownOhmPerM.get(areaMm2) ?? resistanceOhmPerM({ areaMm2, temperatureC: USUAL.copperC });
  knownOhmPerM.set(areaMm2, ohmPerM);
  return ohmPerM * lengthM;
}

/** How a wire is laid, with nothing left open. */
export interface Conditions {
  insulationC: number;
  ambientC: number;
  bundled: number;
  engineSpace: boolean;
}

/** Limits once worked out, by conditions. Emptied when a job value that moves through many numbers has filled it. */
const knownLimits = new Map<string, Map<number, number>>();
const MOST_KNOWN = 200;

/** As `limitOf`, for many sizes of wire laid alike. */
export function limitsOf(laying: Conditions): (areaMm2: number) => number {
  const { insulationC, ambientC, bundled, engineSpace } = laying;
  const key = `${insulationC} ${ambientC} ${bundled} ${engineSpace}`;
  let known = knownLimits.get(key);
  if (known === undefined) {
    if (knownLimits.size >= MOST_KNOWN) knownLimits.clear();
    known = new Map();
    knownLimits.set(key, known);
  }
  const bySize = known;
  return (areaMm2) => {
    let limitA = bySize.get(areaMm2);
    if (limitA === undefined) {
      limitA = wireLimit({ areaMm2, ...laying }).limitA;
      bySize.set(areaMm2, limitA);
    }
    return limitA;
  };
}

/** Current that a wire may carry as it is laid, and the largest fuse it may stand behind [A]. */
export function limitOf(areaMm2: number, laying: Conditions): number {
  return limitsOf(laying)(areaMm2);
}

/** Heat conditions of a wire as `wireLimit` wants them. */
export function conditionsOf(wire: Wire, values: Values): Conditions {
  return {
    insulationC: wire.insulationC ?? USUAL.insulationC,
    ambientC: wire.ambientC === undefined ? USUAL.ambientC : numberOf(wire.ambientC, values),
    bundled: wire.bundled ?? 1,
    engineSpace: wire.engineSpace ?? false,
  };
}

/** A load's figures as numbers: what it is rated for and what it takes. */
export function loadFigures(part: LoadPart, values: Values) {
  const n = (quantity: Quantity) => numberOf(quantity, values);
  const ratedV = n(part.ratedV);
  const currentA =
    part.labelAPerM !== undefined && part.lengthM !== undefined
      ? n(part.labelAPerM) * n(part.lengthM)
      : part.currentA !== undefined
        ? n(part.currentA)
        : n(part.powerW ?? 0) / ratedV;
  return { ratedV, currentA, powerW: ratedV * currentA };
}

/** Rated LED voltage of one string of a strip [V]: three white LEDs in a 12 V strip, six in a 24 V one. */
const groupVOf = (ratedV: number): number => (ratedV > 16 ? 18.4 : 9.2);

class Builder {
  readonly elements: Element[] = [];
  readonly ownerOf: Record<string, string> = {};
  readonly loads: string[] = [];
  readonly points: Points;
  private readonly circuit: Circuit;
  private readonly values: Values;
  private readonly sizes: Sizes | undefined;

  constructor(circuit: Circuit, values: Values, sizes: Sizes | undefined) {
    this.circuit = circuit;
    this.values = values;
    this.sizes = sizes;
    this.points = new Points(circuit);
  }

  n(quantity: Quantity): number {
    return numberOf(quantity, this.values);
  }

  at(ref: TerminalRef): Node {
    const node = this.points.of(ref);
    if (node === undefined)
      throw new RangeError(`netlistOf: unexpected terminal "${ref}", expected one of a known part`);
    return node;
  }

  size(kind: keyof Sizes, id: string, written: Sized): number {
    if (written !== 'auto') return this.n(written);
    const size = this.sizes?.[kind][id];
    if (size === undefined) {
      throw new RangeError(`netlistOf: ${kind} of ${id} is auto and no size was given, expected one from sizeCircuit`);
    }
    return size;
  }

  add(owner: string, element: Element): void {
    this.ownerOf[element.id] = owner;
    this.elements.push(element);
  }

  part(id: string, part: Part): void {
    switch (part.kind) {
      case 'battery':
        this.add(id, {
          kind: 'source',
          id,
          p: this.at(`${id}.+`),
          n: this.at(`${id}.-`),
          volts: this.n(part.volts ?? this.circuit.supply.chargingV),
          ohm: this.n(part.sourceOhm ?? this.circuit.supply.sourceOhm),
          chargeable: part.chargeable ?? false,
          parallelOk: part.parallelOk ?? false,
        });
        return;
      case 'feed': {
        const battery = part.from ?? firstBattery(this.circuit);
        if (battery === undefined) throw new RangeError(`netlistOf: feed ${id} has no battery, expected one in parts`);
        const ratingA = this.n(part.fuseA);
        const behind = part.input === undefined ? this.at(id) : `${id}.fused`;
        this.add(id, {
          kind: 'fuse',
          id,
          a: this.at(`${battery}.+`),
          b: behind,
          ratingA,
          ohm: USUAL.fuseDropV / ratingA,
        });
        if (part.input !== undefined) this.contact(id, `${id}.contact`, behind, this.at(id), part.input, false);
        return;
      }
      case 'sink':
        this.contact(id, id, this.at(id), CHASSIS, part.input, part.inverted ?? false);
        return;
      case 'fuse': {
        const ratingA = this.size('ratingA', id, part.ratingA);
        const ohm = part.ohm === undefined ? USUAL.fuseDropV / ratingA : this.n(part.ohm);
        this.add(id, { kind: 'fuse', id, a: this.at(`${id}.1`), b: this.at(`${id}.2`), ratingA, ohm });
        return;
      }
      case 'switch': {
        const inverted = part.inverted ?? false;
        const [common, made] = [this.at(`${id}.1`), this.at(`${id}.2`)];
        this.contact(id, part.changeover ? `${id}.2` : id, common, made, part.input, inverted, part.maxA);
        if (part.changeover && this.used.has(`${id}.3`)) {
          this.contact(id, `${id}.3`, common, this.at(`${id}.3`), part.input, !inverted, part.maxA);
        }
        return;
      }
      case 'relay':
        this.relay(id, part);
        return;
      case 'diode':
        this.add(id, {
          kind: 'diode',
          id,
          a: this.at(`${id}.A`),
          k: this.at(`${id}.K`),
          forwardV: part.forwardV === undefined ? USUAL.forwardV : this.n(part.forwardV),
          ...(part.maxA === undefined ? {} : { maxA: this.n(part.maxA) }),
        });
        return;
      case 'resistor':
        this.add(id, { kind: 'resistor', id, a: this.at(`${id}.1`), b: this.at(`${id}.2`), ohm: this.n(part.ohm) });
        return;
      case 'connector':
        for (let pole = 1; pole <= part.poles; pole++) {
          const [a, b] = [this.at(`${id}.${pole}a`), this.at(`${id}.${pole}b`)];
          // A spare pole touches nothing and is no part of the circuit.
          if (!this.used.has(`${id}.${pole}a`) && !this.used.has(`${id}.${pole}b`)) continue;
          const ohm = part.contactOhm === undefined ? USUAL.connectorOhm : this.n(part.contactOhm);
          const rating = part.maxA === undefined ? {} : { maxA: this.n(part.maxA) };
          this.add(id, { kind: 'resistor', id: `${id}.${pole}`, a, b, ohm, joint: true, ...rating });
        }
        return;
      case 'splice':
        return;
      case 'chassis': {
        const ohm = part.ohm === undefined ? 0 : this.n(part.ohm);
        const node = this.at(id);
        if (node !== CHASSIS)
          this.add(id, { kind: 'resistor', id, a: node, b: CHASSIS, ohm: Math.max(ohm, 1e-6), joint: true });
        return;
      }
      default:
        if (isLoad(part)) this.load(id, part);
    }
  }

  /** Terminals that a wire or a join names. */
  private readonly used = new Set<string>();
  noteUse(ref: TerminalRef): void {
    this.used.add(ref);
  }

  private contact(
    owner: string,
    id: string,
    a: Node,
    b: Node,
    input: string,
    inverted: boolean,
    maxA?: Quantity | undefined,
  ): void {
    const rating = maxA === undefined ? {} : { maxA: this.n(maxA) };
    this.add(owner, { kind: 'switch', id, a, b, input, inverted, ohm: USUAL.switchOhm, ...rating });
  }

  private relay(id: string, part: RelayPart): void {
    const { systemV } = this.circuit;
    const [coilP, coilN] = [this.at(`${id}.86`), this.at(`${id}.85`)];
    const coilOhm = this.n(part.coilOhm);
    const throwAt = (name: '87' | '87a'): Node | null => {
      const fitted = part.form === 'changeover' || (part.form === 'make') === (name === '87');
      return fitted && (this.used.has(`${id}.${name}`) || part.join?.[name] !== undefined)
        ? this.at(`${id}.${name}`)
        : null;
    };
    const { make, break: rest } = part.maxA;
    this.add(id, {
      kind: 'relay',
      id,
      coilP,
      coilN,
      coilOhm,
      pullInV: part.pullInV === undefined ? USUAL.pullInV[systemV] : this.n(part.pullInV),
      dropOutV: part.dropOutV === undefined ? USUAL.dropOutV[systemV] : this.n(part.dropOutV),
      com: this.at(`${id}.30`),
      no: throwAt('87'),
      nc: throwAt('87a'),
      contactOhm: part.contactOhm === undefined ? USUAL.contactOhm : this.n(part.contactOhm),
      ...(make === undefined ? {} : { maxNoA: this.n(make) }),
      ...(rest === undefined ? {} : { maxNcA: this.n(rest) }),
      ...(part.sensing ? { sensing: true } : {}),
    });
    if (part.suppression === 'diode') {
      this.add(id, { kind: 'diode', id: `${id}.clamp`, a: coilN, k: coilP, forwardV: USUAL.forwardV });
    } else if (part.suppression === 'resistor') {
      const ohm = part.suppressionOhm === undefined ? USUAL.clampOverCoil * coilOhm : this.n(part.suppressionOhm);
      this.add(id, { kind: 'resistor', id: `${id}.clamp`, a: coilP, b: coilN, ohm });
    }
  }

  private load(id: string, part: LoadPart): void {
    let [a, b] = [this.at(`${id}.+`), this.at(`${id}.-`)];
    if (part.pigtail) {
      const { areaMm2, lengthM, insulationC = USUAL.insulationC } = part.pigtail;
      const laying = { insulationC, ambientC: PIGTAIL_AMBIENT_C, bundled: 1, engineSpace: false };
      const limitA = limitOf(areaMm2, laying);
      const thin = { kind: 'wire', areaMm2, lengthM, ohm: wireOhm(areaMm2, lengthM), limitA } as const;
      const ways = part.bothWays ? { bothWays: true } : {};
      const [inner, outer] = [`${id}.lead+`, `${id}.lead-`];
      this.add(id, { ...thin, id: `${id}.pigtail+`, a, b: inner, ...ways });
      this.add(id, { ...thin, id: `${id}.pigtail-`, a: outer, b, ...ways });
      a = inner;
      b = outer;
    }
    const { ratedV, currentA, powerW } = loadFigures(part, this.values);
    const groupV = part.groupV === undefined ? groupVOf(ratedV) : this.n(part.groupV);
    this.add(id, {
      kind: 'load',
      id,
      a,
      b,
      ratedV,
      model: part.model,
      ohm: (part.model === 'strip' ? Math.max(ratedV - groupV, 0.05 * ratedV) : ratedV) / currentA,
      powerW,
      currentA,
      ...(part.model === 'strip' ? { groupV } : {}),
      onAboveFraction: part.onAboveFraction ?? USUAL.onAboveFraction,
      ...(part.bothWays ? { bothWays: true } : {}),
    });
    this.loads.push(id);
  }

  wire(id: string, wire: Wire): void {
    const areaMm2 = this.size('areaMm2', id, wire.areaMm2);
    const lengthM = this.n(wire.lengthM);
    this.add(id, {
      kind: 'wire',
      id,
      a: this.at(wire.from),
      b: this.at(wire.to),
      areaMm2,
      lengthM,
      ohm: wireOhm(areaMm2, lengthM),
      limitA: limitOf(areaMm2, conditionsOf(wire, this.values)),
      ...(wire.bothWays ? { bothWays: true } : {}),
    });
  }
}

/** The battery that feeds what does not name one. */
export function firstBattery(circuit: Circuit): string | undefined {
  return Object.keys(circuit.parts).find((id) => circuit.parts[id]!.kind === 'battery');
}

/**
 * The network behind a circuit, for given job values and sizes.
 *
 * Ids are those of parts and wires; where a part becomes several elements they are named `L1.pigtail+`, `X1.2` (a
 * connector's pole), `S1.3` (a changeover's throw), `K1.clamp`, `IGN.contact`. Sources stand at the charging voltage;
 * `supplyVolts` gives the overrides for the others.
 *
 * @param circuit without problems (`circuitProblems`)
 * @param given job values in calc's units; default the author's
 * @param sizes ratings [A] and areas [mm²] for what is written `auto` (`sizeCircuit`)
 * @returns the netlist, and where its elements and points come from
 * @throws RangeError where a name means nothing or a size is missing
 */
export function netlistOf(circuit: Circuit, given?: Values, sizes?: Sizes): { netlist: Netlist; origin: Origin } {
  const values = valuesOf(circuit, given);
  const builder = new Builder(circuit, values, sizes);
  for (const wire of Object.values(circuit.wires)) for (const ref of [wire.from, wire.to]) builder.noteUse(ref);
  for (const [id, part] of Object.entries(circuit.parts)) {
    for (const [name, ref] of Object.entries(part.join ?? {}))
      for (const used of [`${id}.${name}`, ref]) builder.noteUse(used);
  }
  for (const [id, part] of Object.entries(circuit.parts)) builder.part(id, part);
  for (const [id, wire] of Object.entries(circuit.wires)) builder.wire(id, wire);
  const inputs = Object.entries(circuit.inputs).map(([id, input]): NetlistInput => {
    const limit = input.limitA === undefined ? {} : { limitA: numberOf(input.limitA, values) };
    return { id, kind: input.kind, ...limit };
  });
  return {
    netlist: { id: circuit.id, elements: builder.elements, inputs, loads: builder.loads },
    origin: { ownerOf: builder.ownerOf, nodeOf: builder.points.all() },
  };
}

/**
 * Voltages of the batteries that follow the vehicle's supply [V], by id. A battery with its own voltage keeps it.
 *
 * @param state `resting` engine off, `charging` engine on, `lowest` (default the resting voltage where none is given)
 */
export function supplyVolts(
  circuit: Circuit,
  given: Values | undefined,
  state: 'resting' | 'charging' | 'lowest',
): Record<string, number> {
  const { restingV, chargingV, lowestV } = circuit.supply;
  const quantity = { resting: restingV, charging: chargingV, lowest: lowestV ?? restingV }[state];
  const volts = numberOf(quantity, valuesOf(circuit, given));
  const batteries = Object.entries(circuit.parts).filter(
    ([, part]) => part.kind === 'battery' && part.volts === undefined,
  );
  return Object.fromEntries(batteries.map(([id]) => [id, volts]));
}
