/**
 * The equations of one netlist and of what faults make of it, solved for given positions of inputs and relays.
 *
 * Numbers stand in flat arrays that every solve uses again: by branch (one element or contact), and by stretch. A stretch
 * is a chain of branches that share one current, or the far part of the one chain that a short to chassis cuts in two.
 */
import type { Chain } from './chains.ts';
import type { Compiled } from './compile.ts';
import { LEAST_OHM } from './elements/index.ts';
import { createWorkspace, eliminate, floatingParts, type Plan, substitute, type Workspace } from './matrix.ts';

/** Tolerance of the diode decision: a conducting diode may carry this much backwards, an open one stand this much above. */
const LEAST_A = 1e-9;
export const LEAST_V = 1e-9;
/** Relative change of an electronic load's conductance at which its working point counts as found. */
const WORKING_POINT = 1e-8;
/** Limits that only a circuit without an answer reaches. */
const MOST_DIODE_STEPS = 20_000;
const MOST_WORKING_POINT_STEPS = 5_000;
/** Steps towards working points before they are halved. */
const CALM_STEPS = 200;
/** Times that all wrong diodes are turned together without progress before they are turned one by one. */
const PATIENCE = 8;
/** Foresight counts down to this share of the voltage without the load: the lower working point lies below a half. */
const FORESIGHT_FRACTION = 0.7;
const FORESIGHT_STEPS = 60;

/** What a fault does, by number. Everything not named stays as it is. */
export interface Change {
  open: readonly number[];
  welded: readonly number[];
  bridged: readonly number[];
  volts: readonly (readonly [branch: number, volts: number])[];
  stuck: readonly (readonly [relay: number, position: number])[];
  /** A way to chassis at a place. */
  short: { place: number; ohm: number } | undefined;
}

/** A solved network: voltage by joint, conductance of each stretch as it was at the solution. */
export interface Point {
  voltageV: Float64Array;
  conductance: Float64Array;
  /** Where the short is, if it cuts a chain. */
  insideV: number;
  /** Where each relay goes next. */
  next: Uint8Array;
}

/** The numbers of one (sound or faulty) network. */
export interface Variant {
  // by branch
  siemens: Float64Array;
  offsetV: Float64Array;
  /** 1 where a branch conducts whatever its control says, 2 where it is a plain joint besides. */
  always: Uint8Array;
  // by stretch
  conductance: Float64Array;
  stretchV: Float64Array;
  bend: Uint8Array;
  /** Controls of each stretch, as twice the number of the level plus the position that makes; and where they begin. */
  controls: Int32Array;
  controlStart: Int32Array;
  /** Forced position of each relay, or -1. */
  stuck: Int8Array;
  /** The chain that a short cuts after so many links. */
  cut: { chain: number; after: number; siemens: number; moves: boolean } | undefined;
  /** Sums over all stretches that never change, their steady joints already eliminated, and the list of the others. */
  fixed: Workspace;
  moving: Int32Array;
}

const PLAIN = 0;
const THRESHOLD = 1;
const CURVE = 2;

export class Network {
  readonly compiled: Compiled;
  /** The network solved last. */
  readonly present: Point;
  readonly joints: number;
  /** See `Wiring`. */
  readonly chainOf: Int32Array;
  readonly linkOf: Int32Array;
  readonly sign: Int8Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly between: readonly Int32Array[];
  /** Number of the stretch beyond a cut. */
  readonly far: number;

  private readonly plan: Plan;
  private readonly work: Workspace;
  private readonly chains: readonly Chain[];
  private readonly inputCount: number;
  private readonly control: Int32Array;
  private readonly pair: Int32Array;
  private readonly coils: number[];
  private readonly curve: (((voltageV: number) => number) | undefined)[];
  private readonly sound: { siemens: Float64Array; offsetV: Float64Array; bend: Uint8Array };
  private readonly active: Int32Array;
  private readonly diodes: Int32Array;
  private readonly bending: Int32Array;
  private readonly wrong: Int32Array;
  private readonly seenV: Float64Array;
  private readonly seenA: Float64Array;
  private activeCount = 0;
  private diodeCount = 0;
  private bendingCount = 0;

  /** `levelOf` gives the number of the input or relay that closes a branch; inputs come first. */
  constructor(compiled: Compiled, inputCount: number, levelOf: (branch: number) => number) {
    const { branches, wiring } = compiled;
    const { chains, plan } = wiring;
    this.compiled = compiled;
    this.plan = plan;
    this.chains = chains;
    this.inputCount = inputCount;
    this.joints = plan.size;
    this.far = chains.length;
    this.work = createWorkspace(plan);
    this.chainOf = wiring.chainOf;
    this.linkOf = wiring.linkOf;
    this.sign = wiring.sign;
    this.from = wiring.from;
    this.to = wiring.to;
    this.between = wiring.between;
    this.pair = wiring.pair;
    this.control = Int32Array.from(branches, ({ closedBy }, k) =>
      closedBy === undefined ? -1 : 2 * levelOf(k) + Number(closedBy.when),
    );
    this.coils = compiled.armatures.map((armature) => compiled.branchOf(armature.coilId));
    this.curve = chains.map(({ links }) => branches[links[0]!.branch]!.chordS);
    this.sound = {
      siemens: Float64Array.from(branches, (branch) => 1 / Math.max(branch.ohm, LEAST_OHM)),
      offsetV: Float64Array.from(branches, (branch) => branch.emfV ?? branch.fromV ?? 0),
      bend: Uint8Array.from(branches, (branch) =>
        branch.chordS ? CURVE : branch.fromV === undefined ? PLAIN : THRESHOLD,
      ),
    };
    const stretches = chains.length + 1;
    this.present = {
      voltageV: this.work.voltageV,
      conductance: new Float64Array(stretches),
      insideV: 0,
      next: new Uint8Array(this.coils.length),
    };
    this.active = new Int32Array(stretches);
    this.diodes = new Int32Array(stretches);
    this.bending = new Int32Array(stretches);
    this.wrong = new Int32Array(stretches);
    this.seenV = new Float64Array(stretches);
    this.seenA = new Float64Array(stretches);
  }

  /** Multiplications that a point costs, roughly. */
  get cost(): number {
    const { target, column, size } = this.plan;
    return target.length + 3 * column.length + 2 * size + 8 * this.chains.length;
  }

  variant(change: Change): Variant {
    const { plan, chains, compiled } = this;
    const stretches = chains.length + 1;
    const variant: Variant = {
      siemens: this.sound.siemens.slice(),
      offsetV: this.sound.offsetV.slice(),
      always: new Uint8Array(this.sound.siemens.length),
      conductance: new Float64Array(stretches),
      stretchV: new Float64Array(stretches),
      bend: new Uint8Array(stretches),
      controls: this.active,
      controlStart: new Int32Array(stretches + 1),
      stuck: Int8Array.from(compiled.armatures, (armature) => (armature.stuck ? Number(armature.rest) : -1)),
      cut: undefined,
      fixed: createWorkspace(plan),
      moving: this.active,
    };
    for (const k of change.open) variant.siemens[k] = 0;
    for (const k of change.welded) variant.always[k] = 1;
    for (const k of change.bridged) {
      variant.always[k] = 2;
      variant.siemens[k] = 1 / LEAST_OHM;
      variant.offsetV[k] = 0;
    }
    for (const [k, volts] of change.volts) variant.offsetV[k] = volts;
    for (const [relay, position] of change.stuck) variant.stuck[relay] = position;
    if (change.short !== undefined && change.short.place >= 0) {
      const siemens = 1 / Math.max(change.short.ohm, LEAST_OHM);
      if (change.short.place < this.joints) variant.fixed.chassis[change.short.place] = siemens;
      else variant.cut = { ...this.inside(change.short.place), siemens, moves: false };
    }
    this.gather(variant);
    return variant;
  }

  /** The chain that a node lies inside of, and after how many links. */
  private inside(place: number): { chain: number; after: number } {
    const chain = this.between.findIndex((places) => places.includes(place));
    return { chain, after: this.between[chain]!.indexOf(place) + 1 };
  }

  /** Sum up each stretch, then all stretches that never change. */
  private gather(variant: Variant): void {
    const { chains, far, plan } = this;
    const { cut, fixed } = variant;
    const controls: number[] = [];
    const moving: number[] = [];
    for (let s = 0; s <= far; s++) {
      variant.controlStart[s] = controls.length;
      const chain = s < far ? s : cut?.chain;
      if (chain === undefined) continue;
      const isCut = cut !== undefined && cut.chain === chain;
      const first = s === far ? cut!.after : 0;
      const end = isCut && s < far ? cut.after : chains[chain]!.links.length;
      this.sum(variant, s, chain, first, end, controls);
      const moves = controls.length > variant.controlStart[s]! || variant.bend[s] !== PLAIN;
      if (isCut) cut.moves ||= moves;
      else if (variant.conductance[s] === 0) continue;
      else if (moves) moving.push(s);
      else this.stamp(s, variant.conductance[s]!, variant.stretchV[s]!, fixed);
    }
    variant.controlStart[far + 1] = controls.length;
    variant.controls = Int32Array.from(controls);
    variant.moving = Int32Array.from(moving);
    if (cut !== undefined && !cut.moves) this.stampCut(variant, variant.conductance, fixed);
    eliminate(plan, fixed, 0, plan.early, 0);
  }

  private sum(variant: Variant, s: number, chain: number, first: number, end: number, controls: number[]): void {
    const { links } = this.chains[chain]!;
    let ohm = 0;
    for (let i = first; i < end; i++) {
      const { branch: k, sign } = links[i]!;
      ohm += 1 / variant.siemens[k]!;
      variant.stretchV[s] = variant.stretchV[s]! + sign * variant.offsetV[k]!;
      if (variant.always[k] !== 2 && this.sound.bend[k] !== PLAIN) variant.bend[s] = this.sound.bend[k]!;
      if (variant.always[k] === 0 && this.control[k]! >= 0) controls.push(this.control[k]!);
    }
    // An open branch has an infinite resistance.
    variant.conductance[s] = 1 / ohm;
  }

  private stamp(s: number, g: number, offset: number, into: Workspace): void {
    const a = this.from[s]!;
    const b = this.to[s]!;
    if (a === b) return;
    const { branch, chassis, injectedA } = into;
    const slot = this.pair[s]!;
    if (slot >= 0) branch[slot] = branch[slot]! + g;
    else if (a >= 0) chassis[a] = chassis[a]! + g;
    else chassis[b] = chassis[b]! + g;
    if (offset === 0) return;
    if (a >= 0) injectedA[a] = injectedA[a]! + g * offset;
    if (b >= 0) injectedA[b] = injectedA[b]! - g * offset;
  }

  /** A chain cut by a short: its inner point is eliminated on the spot, which leaves a triangle of both ends and chassis. */
  private stampCut(variant: Variant, conductance: Float64Array, into: Workspace): void {
    const { chain, siemens } = variant.cut!;
    const [near, beyond] = [conductance[chain]!, conductance[this.far]!];
    const [nearV, beyondV] = [variant.stretchV[chain]!, variant.stretchV[this.far]!];
    const total = near + beyond + siemens;
    const a = this.from[chain]!;
    const b = this.to[chain]!;
    if (near > 0 && beyond > 0) this.stamp(chain, (near * beyond) / total, 0, into);
    const { chassis, injectedA } = into;
    const innerA = beyond * beyondV - near * nearV;
    if (a >= 0) {
      chassis[a] = chassis[a]! + (near * siemens) / total;
      injectedA[a] = injectedA[a]! + near * nearV + (near / total) * innerA;
    }
    if (b >= 0) {
      chassis[b] = chassis[b]! + (beyond * siemens) / total;
      injectedA[b] = injectedA[b]! - beyond * beyondV + (beyond / total) * innerA;
    }
  }

  private run(variant: Variant): void {
    const { work, plan, present } = this;
    const { fixed, cut } = variant;
    work.branch.set(fixed.branch);
    work.chassis.set(fixed.chassis);
    work.injectedA.set(fixed.injectedA);
    work.sum.set(fixed.sum);
    for (let i = 0; i < this.activeCount; i++) {
      const s = this.active[i]!;
      const g = present.conductance[s]!;
      if (g !== 0) this.stamp(s, g, variant.stretchV[s]!, work);
    }
    if (cut?.moves) this.stampCut(variant, present.conductance, work);
    eliminate(plan, work, plan.early, plan.size, plan.earlyTarget);
    substitute(plan, work);
    if (cut === undefined) return;
    const [near, beyond] = [present.conductance[cut.chain]!, present.conductance[this.far]!];
    const aV = this.from[cut.chain]! < 0 ? 0 : work.voltageV[this.from[cut.chain]!]!;
    const bV = this.to[cut.chain]! < 0 ? 0 : work.voltageV[this.to[cut.chain]!]!;
    const inA = near * (aV - variant.stretchV[cut.chain]!) + beyond * (bV + variant.stretchV[this.far]!);
    present.insideV = inA / (near + beyond + cut.siemens);
  }

  /** Voltage along a stretch. */
  private alongV(variant: Variant, s: number, at: Point): number {
    const { cut } = variant;
    const chain = s === this.far ? cut!.chain : s;
    const a = this.from[chain]!;
    const b = this.to[chain]!;
    const beginV = s === this.far ? at.insideV : a < 0 ? 0 : at.voltageV[a]!;
    const endV = cut !== undefined && s === cut.chain ? at.insideV : b < 0 ? 0 : at.voltageV[b]!;
    return beginV - endV;
  }

  /** Current along a stretch [A]. */
  flowA(variant: Variant, s: number, at: Point): number {
    const g = at.conductance[s]!;
    return g === 0 ? 0 : g * (this.alongV(variant, s, at) - variant.stretchV[s]!);
  }

  /** The larger current [A] of a chain's two parts, where it is cut; else its one. */
  worstA(variant: Variant, chain: number, at: Point): number {
    const nearA = Math.abs(this.flowA(variant, chain, at));
    return variant.cut?.chain === chain ? Math.max(nearA, Math.abs(this.flowA(variant, this.far, at))) : nearA;
  }

  stretchOf(variant: Variant, branch: number): number {
    const chain = this.chainOf[branch]!;
    const { cut } = variant;
    return cut !== undefined && cut.chain === chain && this.linkOf[branch]! >= cut.after ? this.far : chain;
  }

  /** Current through a branch, a to b [A]. */
  currentA(variant: Variant, branch: number, at: Point): number {
    const currentA = this.flowA(variant, this.stretchOf(variant, branch), at);
    return currentA === 0 ? 0 : this.sign[branch]! * currentA;
  }

  /** Current through every branch, a to b [A]: branches in series share one. */
  currents(variant: Variant, at: Point): Float64Array {
    const currentA = new Float64Array(this.sign.length);
    for (let chain = 0; chain < this.far; chain++) {
      const isCut = variant.cut?.chain === chain;
      const throughA = this.flowA(variant, chain, at);
      if (throughA === 0 && !isCut) continue;
      for (const { branch, sign } of this.chains[chain]!.links)
        currentA[branch] = isCut ? this.currentA(variant, branch, at) : sign * throughA;
    }
    return currentA;
  }

  /** Voltage across a branch that is no switch and no diode [V]: from its current, or all there is where it is open. */
  dropV(variant: Variant, branch: number, at: Point, level: Uint8Array): number {
    const s = this.stretchOf(variant, branch);
    if (this.sound.bend[branch] !== PLAIN) return this.alongV(variant, s, at);
    const siemens = variant.siemens[branch]!;
    if (siemens !== 0) return (this.sign[branch]! * this.flowA(variant, s, at)) / siemens;
    const chain = s === this.far ? variant.cut!.chain : s;
    for (const [i, { branch: other }] of this.chains[chain]!.links.entries()) {
      if (other === branch || this.stretchOf(variant, other) !== s) continue;
      if (this.sound.bend[other] !== PLAIN || !this.conducts(variant, chain, i, level)) return 0;
    }
    return this.sign[branch]! * (this.alongV(variant, s, at) - variant.stretchV[s]!);
  }

  /**
   * Voltage across a load or source that is not burnt out, at the point solved last [V]; 0 between two ends that hang on
   * nothing in common.
   */
  acrossV(variant: Variant, branch: number): number {
    const s = this.stretchOf(variant, branch);
    const throughA = this.flowA(variant, s, this.present);
    // adding 0 makes one of -0
    if (this.sound.bend[branch] === PLAIN)
      return (this.sign[branch]! * throughA) / variant.siemens[branch]! + variant.offsetV[branch]! + 0;
    if (throughA === 0) {
      const part = floatingParts(this.plan, this.work);
      const partOf = (place: number): number => (place < 0 ? -1 : part[place]!);
      const chain = this.chainOf[branch]!;
      if (partOf(this.from[chain]!) !== partOf(this.to[chain]!)) return 0;
    }
    return this.alongV(variant, s, this.present) + 0;
  }

  /** Whether a link of a chain lets current through at these positions, its diode aside. */
  conducts(variant: Variant, chain: number, link: number, level: Uint8Array): boolean {
    const { branch: k } = this.chains[chain]!.links[link]!;
    const control = this.control[k]!;
    return (
      variant.siemens[k] !== 0 && (control < 0 || variant.always[k] !== 0 || level[control >> 1] === (control & 1))
    );
  }

  /** Whether a link of a chain is a diode that blocks one way. */
  blocks(variant: Variant, chain: number, link: number): boolean {
    const { branch: k } = this.chains[chain]!.links[link]!;
    return this.sound.bend[k] === THRESHOLD && variant.always[k] !== 2;
  }

  /** Bring a stretch into play if all its contacts are made. */
  private enlist(variant: Variant, s: number, level: Uint8Array, like: Point | undefined): boolean {
    const { present } = this;
    for (let i = variant.controlStart[s]!; i < variant.controlStart[s + 1]!; i++) {
      const control = variant.controls[i]!;
      if (level[control >> 1] !== (control & 1)) {
        present.conductance[s] = 0;
        return false;
      }
    }
    if (variant.conductance[s] === 0) return false;
    if (variant.bend[s] === THRESHOLD) {
      this.diodes[this.diodeCount++] = s;
      if (like === undefined || like.conductance[s] === 0) present.conductance[s] = 0;
    } else if (variant.bend[s] === CURVE) {
      this.bending[this.bendingCount++] = s;
      present.conductance[s] = 0;
    }
    return true;
  }

  /**
   * Solve with the positions as they are. What comes back is `present`, overwritten by the next call. `like` is a point
   * whose diodes probably conduct alike.
   */
  point(variant: Variant, level: Uint8Array, like?: Point): Point {
    const { present, compiled } = this;
    present.conductance.set(variant.conductance);
    this.activeCount = 0;
    this.diodeCount = 0;
    this.bendingCount = 0;
    for (let i = 0; i < variant.moving.length; i++) {
      const s = variant.moving[i]!;
      if (this.enlist(variant, s, level, like)) this.active[this.activeCount++] = s;
    }
    if (variant.cut?.moves) {
      this.enlist(variant, variant.cut.chain, level, like);
      this.enlist(variant, this.far, level, like);
    }
    this.settleDiodes(variant);
    if (this.bendingCount > 0) this.settleWorkingPoints(variant);
    for (let r = 0; r < this.coils.length; r++) {
      const stuck = variant.stuck[r]!;
      const energised = level[this.inputCount + r] === 1;
      if (stuck >= 0) present.next[r] = stuck;
      else
        present.next[r] = Number(
          compiled.armatures[r]!.next(this.dropV(variant, this.coils[r]!, present, level), energised),
        );
    }
    return present;
  }

  /**
   * Find which diodes and strips conduct: turn every one that contradicts its voltage or current; when that stops
   * making progress, turn only the last such one until it does again. Ends for every network of resistances (block
   * principal pivoting with Murty's rule to fall back on: J. J. Júdice and F. M. Pires, 1994; read: memory).
   */
  private settleDiodes(variant: Variant): void {
    const { present, wrong, diodes } = this;
    let fewest = Number.POSITIVE_INFINITY;
    let patience = PATIENCE;
    for (let step = 0; step < MOST_DIODE_STEPS; step++) {
      this.run(variant);
      let wrongCount = 0;
      for (let i = 0; i < this.diodeCount; i++) {
        const s = diodes[i]!;
        const aboveV = this.alongV(variant, s, present) - variant.stretchV[s]!;
        const g = present.conductance[s]!;
        if (g === 0 ? aboveV > LEAST_V : aboveV * g < -LEAST_A) wrong[wrongCount++] = s;
      }
      if (wrongCount === 0) return;
      if (wrongCount < fewest) {
        fewest = wrongCount;
        patience = PATIENCE;
      } else patience--;
      for (let i = patience >= 0 ? 0 : wrongCount - 1; i < wrongCount; i++) {
        const s = wrong[i]!;
        present.conductance[s] = present.conductance[s] === 0 ? variant.conductance[s]! : 0;
      }
    }
    throw new RangeError(`no answer for the diodes after ${MOST_DIODE_STEPS} steps`);
  }

  /**
   * Electronic loads: begin without them, then let each draw what it would at the voltage found, and again. Drawing more
   * only lowers the voltages, so this walks down to the highest working point: the one they reach when switched on.
   * From the second step on, while the voltage has not sunk far, each load foresees its own drop.
   */
  private settleWorkingPoints(variant: Variant): void {
    const { present, bending, seenV, seenA } = this;
    for (let step = 0; step < MOST_WORKING_POINT_STEPS; step++) {
      let moved = false;
      for (let i = 0; i < this.bendingCount; i++) {
        const s = bending[i]!;
        const wants = this.curve[s]!(this.alongV(variant, s, present));
        if (Math.abs(wants - present.conductance[s]!) > WORKING_POINT * wants) moved = true;
      }
      if (!moved) return;
      for (let i = 0; i < this.bendingCount; i++) {
        const s = bending[i]!;
        const was = present.conductance[s]!;
        const voltageV = this.alongV(variant, s, present);
        const drawnA = was * voltageV;
        let wants = this.curve[s]!(voltageV);
        if (step > 0 && step < CALM_STEPS)
          wants = foreseen(this.curve[s]!, voltageV, drawnA, seenV[i]!, seenA[i]!) ?? wants;
        seenV[i] = voltageV;
        seenA[i] = drawnA;
        // Loads that push each other to and fro are led to a point between.
        present.conductance[s] = step < CALM_STEPS ? wants : (was + wants) / 2;
      }
      this.settleDiodes(variant);
    }
    throw new RangeError(`no working point for the electronic loads after ${MOST_WORKING_POINT_STEPS} steps`);
  }

  /** What the last elimination left, for finding what floats. */
  get workspace(): Workspace {
    return this.work;
  }
}

/**
 * Conductance of an electronic load on the straight line through its last two working points, taken for a source with a
 * resistance. Undefined where that line means nothing, or leads so far down that another working point may lie between.
 */
function foreseen(chordS: (v: number) => number, v: number, currentA: number, beforeV: number, beforeA: number) {
  const ohm = (beforeV - v) / (currentA - beforeA);
  if (!(ohm > 0)) return undefined;
  const openV = v + ohm * currentA;
  let atV = v;
  for (let step = 0; step < FORESIGHT_STEPS; step++) {
    const nextV = openV / (1 + ohm * chordS(atV));
    const near = Math.abs(nextV - atV) <= 1e-12 * openV;
    atV = nextV;
    if (near) return atV > FORESIGHT_FRACTION * openV ? chordS(atV) : undefined;
  }
  return undefined;
}
