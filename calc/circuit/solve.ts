/**
 * Solves the states of a netlist: nodal analysis of a resistive network with diodes, electronic loads and relays.
 *
 * `prepare` works out once what does not depend on switch positions, faults or supply voltage; the `Solver` it returns
 * then solves state after state in the same memory. Nothing here knows a kind of part: see `elements/`.
 */
import { compile, list } from './compile.ts';
import type { Branch } from './elements/index.ts';
import { everywhere } from './inside.ts';
import type { InputState, Netlist, Node, RelayState, Solution } from './model.ts';
import { Network, type Variant as Numbers, type Point } from './network.ts';
import { report } from './report.ts';

export type { Point } from './network.ts';

/** Relay steps that only a circuit without an answer takes. */
const MOST_RELAY_STEPS = 5_000;
/** Relay steps before a cycle is looked for; even, so that a cycle of two begins as it would from the start. */
const SOON = 6;
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

/** A point that is kept: `voltageV` holds every node, by place. */
export interface Frame extends Point {
  level: Uint8Array;
  /** Current along each chain [A]. */
  flowA: Float64Array;
  /** Floating part of each node, -1 where something ties it to chassis. */
  part: Int32Array;
}

/** The numbers of one (sound or faulty) network, and what was solved of it. */
export interface Variant extends Numbers {
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
  /** Every node but the chassis, by place. */
  readonly nodes: readonly Node[];
  /** Ids of inputs, then of relays: what a `level` holds the positions of. */
  readonly levelIds: readonly string[];
  readonly inputCount: number;
  /** Steps of arithmetic of one point, roughly: what a state costs. */
  readonly cost: number;
  readonly loads: readonly { id: string; branch: number; onFromV: number; wanted: boolean }[];
  /** Number of a branch; throws for an unknown one. */
  branchOf(id: string): number;
  /** The same, undefined for an unknown one. */
  numberOf(id: string): number | undefined;
  /** Numbers of the branches that are sources. */
  readonly sources: readonly number[];
  placeOf(node: Node): number;
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
  /** As `point`, but kept, and with the voltage of every node. */
  frame(variant: Variant, level: Uint8Array): Frame;
  /** Voltage across a load or source at `present`, as `report` has it where `loadsWhole`. */
  presentV(variant: Variant, branch: number, level: Uint8Array): number;
  /** No load is burnt out. */
  readonly loadsWhole: boolean;
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
  /** Currents of all branches, by number; what a source delivers counts as positive. */
  currents(variant: Variant, at: Point): Float64Array;
  /** Branches in series have one chain, and one current. */
  chainOf(branch: number): number;
  /** Size of a chain's current, of the larger part where a short cuts it. */
  worstA(variant: Variant, chain: number, at: Point): number;
  /** Voltage across a part that is no switch and no diode. */
  dropV(variant: Variant, branch: number, at: Point, level: Uint8Array): number;
  /** Voltage across any branch of a frame. */
  acrossV(branch: number, at: Frame): number;
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
 * Check a netlist and lay out its equations. The netlist must not be changed afterwards.
 * @throws RangeError or TypeError naming the element: two elements with one id, an impossible number, an input that is
 * not declared, a loop of ideal sources.
 * @param like a netlist prepared before; where it is wired alike, its equations are laid out already
 */
export function prepare(netlist: Netlist, like?: Netlist): Solver {
  const compiled = compile(netlist, like);
  const { branches, armatures, loads, wiring, branchOf, placeOf } = compiled;
  const { nodes } = wiring;
  const inputCount = netlist.inputs.length;
  const levelIds = [...netlist.inputs.map((input) => input.id), ...armatures.map((armature) => armature.coilId)];
  const inputIndex = new Map(netlist.inputs.map((input, index) => [input.id, index]));
  const relayIndex = new Map(armatures.map((armature, index) => [armature.coilId, index]));
  const network = new Network(compiled, inputCount, (branch) => {
    const { id, closedBy: by } = branches[branch]!;
    return by !== undefined && 'relay' in by ? inputCount + relayNumber(by.relay) : inputNumber(id, by!.input);
  });
  const sources = [...branches.keys()].filter((k) => branches[k]!.emfV !== undefined);
  const from = branches.map((branch) => placeOf(branch.a));
  const to = branches.map((branch) => placeOf(branch.b));

  function inputNumber(where: string, id: string): number {
    const found = inputIndex.get(id);
    if (found === undefined) {
      throw new RangeError(`${where}: unexpected input "${id}", expected one of ${list([...inputIndex.keys()])}`);
    }
    return found;
  }

  function relayNumber(id: string): number {
    const found = relayIndex.get(id);
    if (found === undefined) {
      throw new RangeError(`${netlist.id}: unexpected relay "${id}", expected one of ${list([...relayIndex.keys()])}`);
    }
    return found;
  }

  function variant(patch: Patch = {}): Variant {
    const volts = Object.entries(patch.volts ?? {}).map(([id, value]): [number, number] => {
      const k = branchOf(id);
      if (branches[k]!.emfV === undefined) {
        throw new RangeError(`${netlist.id}: unexpected source "${id}": it has no voltage of its own`);
      }
      if (!Number.isFinite(value))
        throw new TypeError(`${id}: unexpected volts ${String(value)}, expected a finite number`);
      return [k, value];
    });
    const numbers = network.variant({
      open: (patch.open ?? []).map(branchOf),
      welded: (patch.welded ?? []).map(branchOf),
      bridged: (patch.bridged ?? []).map(branchOf),
      stuck: Object.entries(patch.stuck ?? {}).map(([id, energised]) => [relayNumber(id), Number(energised)]),
      volts,
      short: patch.short && { place: placeOf(patch.short.at), ohm: patch.short.ohm },
    });
    return { ...numbers, memo: new Map() };
  }

  const point = (variant: Variant, level: Uint8Array, like?: Point): Point => network.point(variant, level, like);

  function frame(variant: Variant, level: Uint8Array): Frame {
    const key = keyOf(level);
    const known = variant.memo.get(key);
    if (known !== undefined) return known;
    const { conductance, insideV, next } = network.point(variant, level);
    const { voltageV, part } = everywhere(network, variant, level);
    const flowA = new Float64Array(network.far);
    for (let c = 0; c < network.far; c++) flowA[c] = network.flowA(variant, c, network.present);
    const result: Frame = {
      level: level.slice(),
      voltageV,
      conductance: conductance.slice(),
      insideV,
      next: next.slice(),
      flowA,
      part,
    };
    if (variant.memo.size * (nodes.length + branches.length) >= MOST_KEPT) variant.memo.clear();
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
    for (let r = 0; r < armatures.length; r++) if (variant.stuck[r]! >= 0) result[inputCount + r] = variant.stuck[r]!;
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
    cost: network.cost,
    loads,
    branchOf,
    numberOf: compiled.numberOf,
    sources,
    placeOf,
    variant,
    atVolts,
    level,
    present: network.present,
    point,
    frame,
    presentV: (variant, branch, level) =>
      branches[branch]!.ohm === Number.POSITIVE_INFINITY
        ? network.dropV(variant, branch, network.present, level)
        : network.acrossV(variant, branch),
    loadsWhole: loads.every(({ branch }) => branches[branch]!.ohm !== Number.POSITIVE_INFINITY),
    settle,
    currents(variant, at) {
      const currentA = network.currents(variant, at);
      for (const k of sources) if (currentA[k] !== 0) currentA[k] = -currentA[k]!;
      return currentA;
    },
    currentA: (variant, branch, at) => network.currentA(variant, branch, at),
    chainOf: (branch) => network.chainOf[branch]!,
    worstA: (variant, chain, at) => network.worstA(variant, chain, at),
    dropV: (variant, branch, at, level) => network.dropV(variant, branch, at, level),
    acrossV: (k, at) => (from[k]! < 0 ? 0 : at.voltageV[from[k]!]!) - (to[k]! < 0 ? 0 : at.voltageV[to[k]!]!),
    solve(inputs, options = {}) {
      const sound = atVolts(options.volts);
      const positions = level(sound, inputs, options.relays);
      return report(solver, sound, positions, settle(sound, positions, frame));
    },
  };
  return solver;
}
