/**
 * The two shapes a circuit has.
 *
 * `Circuit` is what an author writes (content/circuits/*.yaml, after its schema): parts with trade terminals, wires
 * between terminals, job values by name, and what the customer asked for. `Netlist` is what the solver and the rules
 * read: numbered-unit elements between named nodes. `netlist.ts` turns the first into the second for given job values.
 */

// ---------------------------------------------------------------- what an author writes

/** A number in the unit that the field's name ends in, or the name of a job value in that unit. */
export type Quantity = number | string;
/** A number (or job value), or `auto`: worked out by `sizing.ts`. */
export type Sized = Quantity | 'auto';
/** Where a wire ends: `F1.2`, `K1.87a`, `BAT.+`, or a part with one terminal by its bare id: `S1`, `G1`. */
export type TerminalRef = string;

/** What a job value measures; fixes its unit inside calc. */
export type QuantityKind =
  | 'length'
  | 'current'
  | 'voltage'
  | 'power'
  | 'resistance'
  | 'temperature'
  | 'area'
  | 'charge'
  | 'fraction'
  | 'mass'
  | 'time'
  | 'count';

/** A named quantity of the page: the reader may change it, everything else follows. */
export interface JobValue {
  label: string;
  quantity: QuantityKind;
  default: number;
  min: number;
  max: number;
  /** Rounding and stepper increment, in the same unit. */
  step: number;
  /** How to measure it on the vehicle; one imperative sentence. */
  measure?: string | undefined;
}

/** Something that is in one of two positions: a door, the key, a switch, a controller's signal. */
export interface Input {
  label: string;
  kind: 'door' | 'ignition' | 'switch' | 'push' | 'signal';
  /** Words for the two positions; default by kind ("shut"/"open", "out"/"on", "off"/"on"). */
  off?: string | undefined;
  on?: string | undefined;
  /** Most current one contact of this input may carry [A]; an input with a limit, or of kind `signal`, is a controller output. */
  limitA?: Quantity | undefined;
}

interface PartBase {
  label?: string | undefined;
  /** Terminals that sit straight on another terminal, with no wire: `{ A: 'K1.85', K: 'K1.86' }`. */
  join?: Record<string, TerminalRef> | undefined;
  /** Words for the parts list, when the kind does not say enough. Never a brand. */
  spec?: string | undefined;
}

/** Battery. Terminals `+`, `-`; `-` is on the chassis unless wired or joined elsewhere. */
export interface BatteryPart extends PartBase {
  kind: 'battery';
  /** Default: the circuit's supply. */
  volts?: Quantity | undefined;
  sourceOhm?: Quantity | undefined;
  /** Current may flow into it (a second battery on charge). */
  chargeable?: boolean | undefined;
  parallelOk?: boolean | undefined;
}
/** A fused positive of the vehicle's own. Terminal `out`. With an input it is live only while that input is on. */
export interface FeedPart extends PartBase {
  kind: 'feed';
  input?: string | undefined;
  /** The vehicle's own fuse ahead of it [A]. */
  fuseA: Quantity;
  /** Which battery feeds it; default the first. */
  from?: string | undefined;
}
/** A contact or output of the vehicle's own that switches to chassis. Terminal `out`. */
export interface SinkPart extends PartBase {
  kind: 'sink';
  input: string;
  inverted?: boolean | undefined;
}
/** A fuse that the job fits. Terminals `1` (source side), `2`. */
export interface FusePart extends PartBase {
  kind: 'fuse';
  /** Blade forms of ISO 8820-3: C medium, E large, F miniature; `strip` for bolted strip fuses. */
  form: 'C' | 'E' | 'F' | 'strip';
  ratingA: Sized;
  ohm?: Quantity | undefined;
}
/** A switch that the job fits. Terminals `1`, `2`; a changeover has `1` common, `2` made when on, `3` made when off. */
export interface SwitchPart extends PartBase {
  kind: 'switch';
  input: string;
  changeover?: boolean | undefined;
  inverted?: boolean | undefined;
  maxA?: Quantity | undefined;
}
/** Relay. Terminals `85`, `86`, `30`, `87`, `87a` (DIN 72552). */
export interface RelayPart extends PartBase {
  kind: 'relay';
  form: 'make' | 'changeover' | 'break';
  coilOhm: Quantity;
  pullInV?: Quantity | undefined;
  dropOutV?: Quantity | undefined;
  contactOhm?: Quantity | undefined;
  /** Contact ratings [A] of 87 and 87a at system voltage. */
  maxA: { make?: Quantity | undefined; break?: Quantity | undefined };
  /** Built into the relay, straight across the coil; a built-in diode makes 86 the positive side. */
  suppression?: 'diode' | 'resistor' | undefined;
  suppressionOhm?: Quantity | undefined;
  /** Terminal 87a is capped on purpose (a changeover used as a make contact). */
  capped?: boolean | undefined;
  /** A relay that is meant to sense: resting between drop-out and pull-in is intended. */
  sensing?: boolean | undefined;
  /** Id of content/relays: where its pins sit, read off the part's own data sheet. */
  pins?: string | undefined;
}
/** Diode. Terminals `A`, `K` (stripe). */
export interface DiodePart extends PartBase {
  kind: 'diode';
  forwardV?: Quantity | undefined;
  maxA?: Quantity | undefined;
}
/** Resistor. Terminals `1`, `2`. */
export interface ResistorPart extends PartBase {
  kind: 'resistor';
  ohm: Quantity;
}
export type LoadModel = 'resistive' | 'constant-power' | 'constant-current' | 'strip';
/** Anything that the customer wants on or off. Terminals `+`, `-`. */
export interface LoadPart extends PartBase {
  kind: 'lamp' | 'load' | 'strip' | 'motor' | 'buzzer' | 'charger' | 'heater' | 'camera' | 'socket';
  model: LoadModel;
  /** Voltage on the label. */
  ratedV: Quantity;
  /** Give power or current, not both; for a strip, per metre at `ratedV`, with its length. */
  powerW?: Quantity | undefined;
  currentA?: Quantity | undefined;
  labelAPerM?: Quantity | undefined;
  lengthM?: Quantity | undefined;
  /** LED drop of one group of the strip [V]; default 9.2 at 12 V, 18.4 at 24 V (common practice, no source). */
  groupV?: Quantity | undefined;
  /** Switch-on peak [A] and its length [ms]. */
  inrushA?: Quantity | undefined;
  inrushMs?: Quantity | undefined;
  /** On from this share of ratedV; default 0.7. */
  onAboveFraction?: number | undefined;
  /** Allowed drop from source to load, as a share of system voltage; default 0.03. */
  dropFraction?: number | undefined;
  /** Current in both directions is meant (a reversing motor). */
  bothWays?: boolean | undefined;
  /** The thin lead it comes with; the fuse must protect it too. */
  pigtail?: { areaMm2: number; lengthM: number; insulationC?: number | undefined } | undefined;
  /** Draws this [mA] even when off (memory, receiver); counts to standby. */
  standbyMa?: Quantity | undefined;
}
/** Connector of n poles. Terminals `1a`, `1b`, `2a`, `2b` … */
export interface ConnectorPart extends PartBase {
  kind: 'connector';
  poles: number;
  contactOhm?: Quantity | undefined;
  maxA?: Quantity | undefined;
}
/** A joint of several wires. One terminal: its id. */
export interface SplicePart extends PartBase {
  kind: 'splice';
}
/** A ground point on the body. One terminal: its id. */
export interface ChassisPart extends PartBase {
  kind: 'chassis';
  ohm?: Quantity | undefined;
}

export type Part =
  | BatteryPart
  | FeedPart
  | SinkPart
  | FusePart
  | SwitchPart
  | RelayPart
  | DiodePart
  | ResistorPart
  | LoadPart
  | ConnectorPart
  | SplicePart
  | ChassisPart;
export type PartKind = Part['kind'];

/** One conductor. `lengthM` is its copper length along the route. */
export interface Wire {
  from: TerminalRef;
  to: TerminalRef;
  lengthM: Quantity;
  areaMm2: Sized;
  /** Conductor insulation limit [°C]; default 105. */
  insulationC?: number | undefined;
  /** Air around the loom [°C]; default 30. */
  ambientC?: Quantity | undefined;
  /** Loaded wires that share the bundle, this one included; default 1. */
  bundled?: number | undefined;
  engineSpace?: boolean | undefined;
  /** IEC 60757 two-letter code: BK BN RD OG YE GN BU VT GY WH PK TQ, joined for stripes ("BK-RD"). */
  colour?: string | undefined;
  label?: string | undefined;
  bothWays?: boolean | undefined;
}

/** What the customer asked for. `when` reads: `master and (side or rear)`, `not key`, `always`, `never`. */
export interface LoadIntent {
  when: string;
  /** Where on or off is not enough: bounds of the load's signed voltage, with the condition under which they hold. */
  ranges?: { when: string; minV: number; maxV: number }[] | undefined;
}
export interface Intent {
  /** The customer's sentence. */
  says: string;
  loads: Record<string, LoadIntent>;
  /** A circuit that remembers: steps from all-released, each with the inputs that are on and the loads wanted on. */
  sequence?: { on: string[]; loads: string[] }[] | undefined;
  /** Loads that may stay on with the key out, with the reason. */
  keyOut?: Record<string, string> | undefined;
  /** Relays that never settle on purpose. */
  neverSettles?: string[] | undefined;
}

/** An accepted stop: by whom, when, why. It must match a finding, or it is itself an error. */
export interface SignOff {
  rule: string;
  parts: string[];
  by: string;
  /** ISO date. */
  on: string;
  reason: string;
}

export interface Circuit {
  id: string;
  title: string;
  systemV: 12 | 24;
  supply: { restingV: Quantity; chargingV: Quantity; lowestV?: Quantity | undefined; sourceOhm: Quantity };
  values: Record<string, JobValue>;
  inputs: Record<string, Input>;
  parts: Record<string, Part>;
  wires: Record<string, Wire>;
  intent: Intent;
  signOffs: SignOff[];
}

// ---------------------------------------------------------------- what the solver reads

/** Name of an electrical point. `'0'` is the vehicle's chassis. */
export type Node = string;
/** The vehicle's chassis, where every battery's minus is unless wired elsewhere. */
/** The vehicle's chassis, and battery negative on it. */
export const CHASSIS: Node = '0';

export type Element =
  | {
      kind: 'source';
      id: string;
      p: Node;
      n: Node;
      volts: number;
      ohm: number;
      chargeable?: boolean;
      parallelOk?: boolean;
    }
  | {
      kind: 'wire';
      id: string;
      a: Node;
      b: Node;
      areaMm2: number;
      lengthM: number;
      ohm: number;
      limitA: number;
      bothWays?: boolean;
    }
  | { kind: 'fuse'; id: string; a: Node; b: Node; ratingA: number; ohm: number }
  | {
      kind: 'resistor';
      id: string;
      a: Node;
      b: Node;
      ohm: number;
      /** A connector's contact or a ground point: current passes as through a wire, so no rule counts it as a resistor. */
      joint?: boolean;
      maxA?: number;
    }
  | {
      kind: 'load';
      id: string;
      a: Node;
      b: Node;
      ratedV: number;
      model: 'resistive' | 'constant-power' | 'constant-current' | 'strip';
      /** Resistance of a resistive load; of the strip's series part. */
      ohm: number;
      powerW?: number;
      currentA?: number;
      /** Voltage below which a strip carries nothing. */
      groupV?: number;
      onAboveFraction: number;
      bothWays?: boolean;
    }
  | {
      kind: 'switch';
      id: string;
      a: Node;
      b: Node;
      input: string;
      inverted: boolean;
      ohm: number;
      maxA?: number;
      /** Its contact has welded: made whatever the input says. */
      welded?: boolean;
    }
  | {
      kind: 'relay';
      id: string;
      /** 86 */ coilP: Node;
      /** 85 */ coilN: Node;
      coilOhm: number;
      pullInV: number;
      dropOutV: number;
      com: Node;
      no: Node | null;
      nc: Node | null;
      contactOhm: number;
      maxNoA?: number;
      maxNcA?: number;
      sensing?: boolean;
      /** Its armature no longer moves (a welded contact). */
      stuck?: 'energised' | 'released';
    }
  | {
      kind: 'diode';
      id: string;
      a: Node;
      k: Node;
      forwardV: number;
      maxA?: number;
      /** Burnt out: carries nothing either way. */
      open?: boolean;
    };

export interface NetlistInput {
  id: string;
  kind: Input['kind'];
  limitA?: number;
}

export interface Netlist {
  id: string;
  elements: Element[];
  inputs: NetlistInput[];
  /** Ids of the loads whose on/off the customer cares about. */
  loads: string[];
}

/** Positions of the inputs, by id; absent means off. */
export type InputState = Record<string, boolean>;
/** Energised relays, by id; absent means released. */
export type RelayState = Record<string, boolean>;

/** One solved state. Voltages against chassis; currents from the first-named terminal (p, a, com, 86) into the element. */
export interface Solution {
  inputs: InputState;
  settles: boolean;
  /** With `settles` false: one sentence in trade words that names the relay and why. */
  reason?: string;
  energised: Record<string, boolean | null>;
  nodeV: Record<Node, number>;
  /** Current through each element [A]; of a relay: `K1` coil, `K1.no`, `K1.nc` contacts. A source counts what it delivers. */
  currentA: Record<string, number>;
  /** Voltage across each source [V]. */
  sourceV: Record<string, number>;
  /** Signed voltage a minus b of each load [V]; where it does not settle, lowest and highest. */
  loadV: Record<string, number | [number, number]>;
  on: Record<string, boolean | null>;
  /** Nodes with no conducting path to chassis in this state: their voltage is not defined. */
  floating: Node[];
  /** The floating nodes by the island they hang together in: inside one island `nodeV` is right, between two it says nothing. */
  islands: Node[][];
}

export type Severity = 'stop' | 'warn' | 'note';

/** What a rule says about a circuit: it names parts and states, says why it matters and what would cure it. */
export interface Finding {
  rule: string;
  severity: Severity;
  /** Parts and wires by id; a contact as `K1.no`, `K1.nc`, `K1.com`. The first is the one to look at. */
  parts: string[];
  states: InputState[];
  /** One sentence with the figures. */
  message: string;
  why: string;
  cure: string;
  signedOff?: SignOff;
}
