/**
 * Solves the states of a netlist: nodal analysis of a resistive network with diodes, electronic loads and relays.
 *
 * `prepare` works out once what does not depend on switch positions, faults or supply voltage; the `Solver` it returns
 * then solves state after state in the same memory. Nothing here knows a kind of part: see `elements/`.
 */
import { compile, list } from './compile.ts';
import { type Branch, LEAST_OHM } from './elements/index.ts';
import { createWorkspace, eliminate, floatingParts, substitute } from './matrix.ts';
import type { InputState, Netlist, Node, RelayState, Solution } from './model.ts';
import { report } from './report.ts';

/** Tolerance of the diode decision: a conducting diode may carry this much backwards, an open one stand this much above. */
const LEAST_A = 1e-9;
const LEAST_V = 1e-9;
/** Relative change of an electronic load's conductance at which its working point counts as found. */
const WORKING_POINT = 1e-8;
/** Limits that only a circuit without an answer reaches. */
const MOST_DIODE_STEPS = 20_000;
const MOST_WORKING_POINT_STEPS = 5_000;
/** Steps towards working points before they are halved. */
const CALM_STEPS = 200;
const MOST_RELAY_STEPS = 5_000;
/** Relay steps before a cycle is looked for; even, so that a cycle of two begins as it would from the start. */
const SOON = 6;
/** Times that all wrong diodes are turned together without progress before they are turned one by one. */
const PATIENCE = 8;
/** Foresight counts down to this share of the voltage without the load: the lower working point lies below a half. */
const FORESIGHT_FRACTION = 0.7;
const FORESIGHT_STEPS = 60;
/** Numbers kept per variant, in frames. */
const MOST_KEPT = 4e6;

/** What a fault does to a netlist, in the solver's terms. Everything not named stays as it is. */
export interface Patch {
  /** Branches (element ids, `K1.no`, `K1.nc`) that no longer conduct. */
  open?: readonly string[];
  /** Branches whose contact stays made whatever moves it. */
  welded?: readonly string[];
  /** Branches that became a plain joint (a diode that no longer blocks). */
  bridged?: readonly string[];
  /** Relays whose armature no longer moves. */
  stuck?: Readonly<Record<string, boolean>>;
  /** A way to chassis that should not be there. */
  short?: { at: Node; ohm: number };
  /** Source voltages [V]. */
  volts?: Readonly<Record<string, number>>;
}

/** A solved network: voltage by rank of node, conductance of each branch as it was at the solution. */
export interface Point {
  voltageV: Float64Array;
  conductance: Float64Array;
  /** Where each relay goes next. */
  next: Uint8Array;
}

/** A point that is kept, with the floating part of each node (-1 where tied to chassis). */
export interface Frame extends Point {
  level: Uint8Array;
  part: Int32Array;
}

/** The numbers of one (sound or faulty) network, ready to be solved for any positions. */
export interface Variant {
  conductance: Float64Array;
  offsetV: Float64Array;
  /** 1 where a branch conducts whatever its control says, 2 where it is a plain joint besides. */
  always: Uint8Array;
  /** Forced position of each relay, or -1. */
  stuck: Int8Array;
  short: { rank: number; siemens: number } | undefined;
  /** Sums over all branches that never change, their steady nodes already eliminated, and the list of the others. */
  fixedBranch: Float64Array;
  fixedChassis: Float64Array;
  fixedA: Float64Array;
  fixedSum: Float64Array;
  moving: Int32Array;
  memo: Map<number | string, Frame>;
}

export interface SolveOptions {
  /** Relay positions to start from; default all released. */
  relays?: RelayState | undefined;
  /** Source voltages that differ from the netlist's [V]. */
  volts?: Record<string, number> | undefined;
}

export interface Solver {
  readonly netlist: Netlist;
  /** Solve one state until the relays rest, or are found never to rest. Equal positions are solved once. */
  solve(inputs: InputState, options?: SolveOptions): Solution;

  // What follows is for the studies in this folder, which run through thousands of states.
  readonly branches: readonly Branch[];
  /** Every node but the chassis, by rank. */
  readonly nodes: readonly Node[];
  /** Ids of inputs, then of relays: what a `level` holds the positions of. */
  readonly levelIds: readonly string[];
  readonly inputCount: number;
  /** Multiplications of one elimination: what a point costs. */
  readonly cost: number;
  readonly loads: readonly { id: string; branch: number; onFromV: number; wanted: boolean }[];
  branchOf(id: string): number;
  rankOf(node: Node): number;
  variant(patch?: Patch): Variant;
  /** The sound network with these source voltages; kept. */
  atVolts(volts?: Record<string, number>): Variant;
  level(variant: Variant, inputs: InputState, relays?: RelayState): Uint8Array;
  /** The network solved last. */
  readonly present: Point;
  /**
   * Solve with the positions as they are. What comes back is `present`, overwritten by the next call. `like` is a point
   * whose diodes probably conduct alike.
   */
  point(variant: Variant, level: Uint8Array, like?: Point): Point;
  /** As `point`, but kept. */
  frame(variant: Variant, level: Uint8Array): Frame;
  /**
   * Move relays, all at once, until they rest: `level` then says where, and nothing is returned. If they never rest, the
   * positions they run through come back. `at` is `point` or `frame`, `like` is handed on to it.
   */
  settle(
    variant: Variant,
    level: Uint8Array,
    at: (variant: Variant, level: Uint8Array, like?: Point) => Point,
    like?: Point,
  ): Uint8Array[] | undefined;
  currentA(variant: Variant, branch: number, at: Point): number;
  acrossV(branch: number, voltageV: Float64Array): number;
}

/** Solve one state. For many states of one netlist, `prepare` it once and use `Solver.solve`. */
export function solveState(netlist: Netlist | Solver, inputs: InputState, options: SolveOptions = {}): Solution {
  return solverOf(netlist).solve(inputs, options);
}

/** The solver itself, or a new one for a netlist. */
export function solverOf(netlist: Netlist | Solver): Solver {
  return 'solve' in netlist ? netlist : prepare(netlist);
}

/** Positions as a short key: a number while it fits, a string beyond. */
export function keyOf(level: Uint8Array): number | string {
  if (level.length > 48) return String.fromCharCode(...level.map((position) => position + 48));
  let key = 0;
  for (const position of level) key = key * 2 + position;
  return key;
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

/**
 * Check a netlist and lay out its equations. The netlist must not be changed afterwards.
 * @throws RangeError or TypeError naming the element: two elements with one id, an impossible number, an input that is
 * not declared, a loop of ideal sources.
 */
export function prepare(netlist: Netlist): Solver {
  const { branches, armatures, loads, nodes, plan, branchOf, rankOf } = compile(netlist);
  const work = createWorkspace(plan);
  const count = branches.length;
  const inputCount = netlist.inputs.length;
  const levelIds = [...netlist.inputs.map((input) => input.id), ...armatures.map((armature) => armature.coilId)];
  const inputIndex = new Map(netlist.inputs.map((input, index) => [input.id, index]));
  const relayIndex = new Map(armatures.map((armature, index) => [armature.coilId, index]));
  const coils = armatures.map((armature) => branchOf(armature.coilId));

  const from = Int32Array.from(branches, (branch) => rankOf(branch.a));
  const to = Int32Array.from(branches, (branch) => rankOf(branch.b));
  const pair = Int32Array.from(from, (a, k) => (a >= 0 && to[k]! >= 0 && a !== to[k] ? plan.slot(a, to[k]!) : -1));
  const conductance = Float64Array.from(branches, (branch) => 1 / Math.max(branch.ohm, LEAST_OHM));
  const offsetV = Float64Array.from(branches, (branch) => branch.emfV ?? branch.fromV ?? 0);
  const isThreshold = Uint8Array.from(branches, (branch) => Number(branch.fromV !== undefined));
  const curve = branches.map((branch) => branch.chordS);
  const made = Uint8Array.from(branches, (branch) => Number(branch.closedBy?.when ?? true));
  const control = Int32Array.from(branches, ({ id, closedBy: by }) => {
    if (by === undefined) return -1;
    if ('relay' in by) return inputCount + relayIndex.get(by.relay)!;
    return inputNumber(id, by.input);
  });

  // The network solved last, and which of its branches are in play.
  const present: Point = {
    voltageV: work.voltageV,
    conductance: new Float64Array(count),
    next: new Uint8Array(coils.length),
  };
  const active = new Int32Array(count);
  const diodes = new Int32Array(count);
  const bending = new Int32Array(count);
  const wrong = new Int32Array(count);
  const seenV = new Float64Array(count);
  const seenA = new Float64Array(count);
  let activeCount = 0;
  let diodeCount = 0;
  let bendingCount = 0;

  function inputNumber(where: string, id: string): number {
    const found = inputIndex.get(id);
    if (found === undefined)
      throw new RangeError(`${where}: unexpected input "${id}", expected one of ${list([...inputIndex.keys()])}`);
    return found;
  }

  function relayNumber(id: string): number {
    const found = relayIndex.get(id);
    if (found === undefined)
      throw new RangeError(`${netlist.id}: unexpected relay "${id}", expected one of ${list([...relayIndex.keys()])}`);
    return found;
  }

  function acrossV(k: number, voltageV: Float64Array): number {
    const a = from[k]!;
    const b = to[k]!;
    return (a < 0 ? 0 : voltageV[a]!) - (b < 0 ? 0 : voltageV[b]!);
  }

  function currentA(variant: Variant, k: number, at: Point): number {
    const g = at.conductance[k]!;
    return g === 0 ? 0 : g * (acrossV(k, at.voltageV) - variant.offsetV[k]!);
  }

  function stamp(
    k: number,
    g: number,
    offset: number,
    toBranch: Float64Array,
    toChassis: Float64Array,
    inA: Float64Array,
  ): void {
    const a = from[k]!;
    const b = to[k]!;
    if (a === b) return;
    const slot = pair[k]!;
    if (slot >= 0) toBranch[slot] = toBranch[slot]! + g;
    else if (a >= 0) toChassis[a] = toChassis[a]! + g;
    else toChassis[b] = toChassis[b]! + g;
    if (offset === 0) return;
    if (a >= 0) inA[a] = inA[a]! + g * offset;
    if (b >= 0) inA[b] = inA[b]! - g * offset;
  }

  /** Add up all that never changes in a variant. */
  function gather(variant: Variant): void {
    const { fixedBranch, fixedChassis, fixedA, short } = variant;
    fixedBranch.fill(0);
    fixedChassis.fill(0);
    fixedA.fill(0);
    const moving: number[] = [];
    for (let k = 0; k < count; k++) {
      if (variant.conductance[k] === 0) continue;
      const controlled = control[k]! >= 0 && variant.always[k] === 0;
      const bent = (isThreshold[k] === 1 || curve[k] !== undefined) && variant.always[k] !== 2;
      if (controlled || bent) moving.push(k);
      else stamp(k, variant.conductance[k]!, variant.offsetV[k]!, fixedBranch, fixedChassis, fixedA);
    }
    if (short !== undefined && short.rank >= 0) fixedChassis[short.rank] = fixedChassis[short.rank]! + short.siemens;
    variant.moving = Int32Array.from(moving);
    const steady = {
      branch: fixedBranch,
      chassis: fixedChassis,
      injectedA: fixedA,
      sum: variant.fixedSum,
      voltageV: work.voltageV,
    };
    eliminate(plan, steady, 0, plan.early, 0);
  }

  function variant(patch: Patch = {}): Variant {
    const result: Variant = {
      conductance: conductance.slice(),
      offsetV: offsetV.slice(),
      always: new Uint8Array(count),
      stuck: Int8Array.from(armatures, (armature) => (armature.stuck ? Number(armature.rest) : -1)),
      short: patch.short && { rank: rankOf(patch.short.at), siemens: 1 / Math.max(patch.short.ohm, LEAST_OHM) },
      fixedBranch: new Float64Array(work.branch.length),
      fixedChassis: new Float64Array(plan.size),
      fixedA: new Float64Array(plan.size),
      fixedSum: new Float64Array(plan.size),
      moving: active,
      memo: new Map(),
    };
    for (const id of patch.open ?? []) result.conductance[branchOf(id)] = 0;
    for (const id of patch.welded ?? []) result.always[branchOf(id)] = 1;
    for (const id of patch.bridged ?? []) {
      const k = branchOf(id);
      result.always[k] = 2;
      result.conductance[k] = 1 / LEAST_OHM;
      result.offsetV[k] = 0;
    }
    for (const [id, energised] of Object.entries(patch.stuck ?? {})) result.stuck[relayNumber(id)] = Number(energised);
    for (const [id, volts] of Object.entries(patch.volts ?? {})) {
      const k = branchOf(id);
      if (branches[k]!.emfV === undefined)
        throw new RangeError(`${netlist.id}: unexpected source "${id}": it has no voltage of its own`);
      if (!Number.isFinite(volts))
        throw new TypeError(`${id}: unexpected volts ${String(volts)}, expected a finite number`);
      result.offsetV[k] = volts;
    }
    gather(result);
    return result;
  }

  function run(variant: Variant): void {
    work.branch.set(variant.fixedBranch);
    work.chassis.set(variant.fixedChassis);
    work.injectedA.set(variant.fixedA);
    work.sum.set(variant.fixedSum);
    for (let i = 0; i < activeCount; i++) {
      const k = active[i]!;
      const g = present.conductance[k]!;
      if (g !== 0) stamp(k, g, variant.offsetV[k]!, work.branch, work.chassis, work.injectedA);
    }
    eliminate(plan, work, plan.early, plan.size, plan.earlyTarget);
    substitute(plan, work);
  }

  /**
   * Find which diodes and strips conduct: turn every one that contradicts its voltage or current; when that stops
   * making progress, turn only the last such one until it does again. Ends for every network of resistances (block
   * principal pivoting with Murty's rule to fall back on: J. J. Júdice and F. M. Pires, 1994; read: memory).
   */
  function settleDiodes(variant: Variant): void {
    let fewest = Number.POSITIVE_INFINITY;
    let patience = PATIENCE;
    for (let step = 0; step < MOST_DIODE_STEPS; step++) {
      run(variant);
      let wrongCount = 0;
      for (let i = 0; i < diodeCount; i++) {
        const k = diodes[i]!;
        const aboveV = acrossV(k, work.voltageV) - variant.offsetV[k]!;
        const g = present.conductance[k]!;
        if (g === 0 ? aboveV > LEAST_V : aboveV * g < -LEAST_A) wrong[wrongCount++] = k;
      }
      if (wrongCount === 0) return;
      if (wrongCount < fewest) {
        fewest = wrongCount;
        patience = PATIENCE;
      } else patience--;
      for (let i = patience >= 0 ? 0 : wrongCount - 1; i < wrongCount; i++) {
        const k = wrong[i]!;
        present.conductance[k] = present.conductance[k] === 0 ? variant.conductance[k]! : 0;
      }
    }
    throw new RangeError(`${netlist.id}: no answer for its diodes after ${MOST_DIODE_STEPS} steps`);
  }

  function point(variant: Variant, level: Uint8Array, like?: Point): Point {
    present.conductance.set(variant.conductance);
    activeCount = 0;
    diodeCount = 0;
    bendingCount = 0;
    for (let i = 0; i < variant.moving.length; i++) {
      const k = variant.moving[i]!;
      const by = control[k]!;
      if (by >= 0 && variant.always[k] === 0 && level[by] !== made[k]) {
        present.conductance[k] = 0;
        continue;
      }
      active[activeCount++] = k;
      if (isThreshold[k] === 1) {
        diodes[diodeCount++] = k;
        if (like === undefined || like.conductance[k] === 0) present.conductance[k] = 0;
      } else if (curve[k] !== undefined) {
        bending[bendingCount++] = k;
        present.conductance[k] = 0;
      }
    }
    settleDiodes(variant);
    if (bendingCount > 0) settleWorkingPoints(variant);
    for (let r = 0; r < coils.length; r++) {
      const stuck = variant.stuck[r]!;
      const energised = level[inputCount + r] === 1;
      present.next[r] = stuck >= 0 ? stuck : Number(armatures[r]!.next(acrossV(coils[r]!, work.voltageV), energised));
    }
    return present;
  }

  /**
   * Electronic loads: begin without them, then let each draw what it would at the voltage found, and again. Drawing more
   * only lowers the voltages, so this walks down to the highest working point: the one they reach when switched on.
   * From the second step on, while the voltage has not sunk far, each load foresees its own drop.
   */
  function settleWorkingPoints(variant: Variant): void {
    for (let step = 0; step < MOST_WORKING_POINT_STEPS; step++) {
      let moved = false;
      for (let i = 0; i < bendingCount; i++) {
        const k = bending[i]!;
        const was = present.conductance[k]!;
        const wants = curve[k]!(acrossV(k, work.voltageV));
        if (Math.abs(wants - was) > WORKING_POINT * wants) moved = true;
      }
      if (!moved) return;
      for (let i = 0; i < bendingCount; i++) {
        const k = bending[i]!;
        const was = present.conductance[k]!;
        const voltageV = acrossV(k, work.voltageV);
        const drawnA = was * voltageV;
        let wants = curve[k]!(voltageV);
        if (step > 0 && step < CALM_STEPS) wants = foreseen(curve[k]!, voltageV, drawnA, seenV[i]!, seenA[i]!) ?? wants;
        seenV[i] = voltageV;
        seenA[i] = drawnA;
        // Loads that push each other to and fro are led to a point between.
        present.conductance[k] = step < CALM_STEPS ? wants : (was + wants) / 2;
      }
      settleDiodes(variant);
    }
    throw new RangeError(
      `${netlist.id}: no working point for its electronic loads after ${MOST_WORKING_POINT_STEPS} steps`,
    );
  }

  function frame(variant: Variant, level: Uint8Array): Frame {
    const key = keyOf(level);
    const known = variant.memo.get(key);
    if (known !== undefined) return known;
    point(variant, level);
    const result: Frame = {
      level: level.slice(),
      voltageV: work.voltageV.slice(),
      conductance: present.conductance.slice(),
      next: present.next.slice(),
      part: floatingParts(plan, work),
    };
    if (variant.memo.size * (plan.size + count) >= MOST_KEPT) variant.memo.clear();
    variant.memo.set(key, result);
    return result;
  }

  function settle(
    variant: Variant,
    level: Uint8Array,
    at: (variant: Variant, level: Uint8Array, like?: Point) => Point,
    like?: Point,
  ): Uint8Array[] | undefined {
    let trail: Uint8Array[] | undefined;
    let seen: Map<number | string, number> | undefined;
    for (let step = 0; step < MOST_RELAY_STEPS; step++) {
      const { next } = at(variant, level, like);
      let moves = false;
      for (let r = 0; r < next.length; r++) if (next[r] !== level[inputCount + r]) moves = true;
      if (!moves) return undefined;
      // Most circuits rest after a step or two; one that never does still runs through its cycle later.
      if (step >= SOON) {
        trail ??= [];
        seen ??= new Map();
        const key = keyOf(level);
        const before = seen.get(key);
        if (before !== undefined) return trail.slice(before);
        seen.set(key, trail.length);
        trail.push(level.slice());
      }
      level.set(next, inputCount);
    }
    throw new RangeError(`${netlist.id}: its relays still move after ${MOST_RELAY_STEPS} steps`);
  }

  function level(variant: Variant, inputs: InputState, relays: RelayState = {}): Uint8Array {
    const result = new Uint8Array(levelIds.length);
    for (const [id, on] of Object.entries(inputs)) result[inputNumber(netlist.id, id)] = Number(on);
    for (const [id, energised] of Object.entries(relays)) result[inputCount + relayNumber(id)] = Number(energised);
    for (let r = 0; r < coils.length; r++) if (variant.stuck[r]! >= 0) result[inputCount + r] = variant.stuck[r]!;
    return result;
  }

  const variants = new Map<string, Variant>();
  function atVolts(volts: Record<string, number> = {}): Variant {
    const key = JSON.stringify(volts);
    let found = variants.get(key);
    if (found === undefined) {
      if (variants.size >= 64) variants.clear();
      found = variant({ volts });
      variants.set(key, found);
    }
    return found;
  }

  const solver: Solver = {
    netlist,
    branches,
    nodes,
    levelIds,
    inputCount,
    cost: plan.target.length + 3 * plan.column.length + 2 * plan.size,
    loads,
    branchOf,
    rankOf,
    variant,
    atVolts,
    present,
    level,
    point,
    frame,
    settle,
    currentA,
    acrossV,
    solve(inputs, options = {}) {
      const network = atVolts(options.volts);
      const positions = level(network, inputs, options.relays);
      return report(solver, network, positions, settle(network, positions, frame));
    },
  };
  return solver;
}
