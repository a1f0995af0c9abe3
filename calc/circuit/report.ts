/** Turns solved frames into a `Solution`: voltages, currents and states by name. */
import { CHASSIS, type Node, type Solution } from './model.ts';
import { whyItDoesNotSettle } from './settling.ts';
import type { Frame, Solver, Variant } from './solve.ts';

/** What a state in which the relays rest shows, taken while the solver stands at it. */
export interface Seen {
  /** Signed current of each branch [A], by its number. */
  currentA: Float64Array;
  /** By place in the solver's lists of sources and loads. */
  sourceV: readonly number[];
  loadV: readonly number[];
  on: readonly boolean[];
}

/**
 * The solution of the positions that `settle` ended in. Of relays that never rest, node voltages and currents are those
 * of the first position of the cycle; what changes within the cycle is null.
 *
 * @param seen of relays that rest, what was taken already
 */
export function report(
  solver: Solver,
  variant: Variant,
  level: Uint8Array,
  cycle: Uint8Array[] | undefined,
  seen: Seen = lookAt(solver, variant, cycle?.[0] ?? level),
): Solution {
  const first = cycle?.[0] ?? level;
  const frame = (): Frame => solver.frame(variant, first);
  let nodeV: Record<Node, number> | undefined;
  let currentA: Record<string, number> | undefined;
  let islands: Node[][] | undefined;
  let floating: Node[] | undefined;
  // A proof asks thousands of states for a current or two, and few for the names of all, or for the voltage of every node.
  const solution: Solution = {
    inputs: {},
    settles: cycle === undefined,
    energised: {},
    get nodeV() {
      return (nodeV ??= voltagesOf(solver, frame()));
    },
    get currentA() {
      return (currentA ??= currentsOf(solver, seen.currentA));
    },
    sourceV: {},
    loadV: {},
    on: {},
    get floating() {
      return (floating ??= this.islands.flat());
    },
    get islands() {
      return (islands ??= islandsOf(solver, frame()));
    },
  };
  for (const [index, id] of solver.levelIds.entries()) {
    const energised = first[index] === 1;
    if (index < solver.inputCount) solution.inputs[id] = energised;
    else solution.energised[id] = energised;
  }
  for (const [at, branch] of solver.sources.entries())
    solution.sourceV[solver.branches[branch]!.id] = seen.sourceV[at]!;
  for (const [at, { id }] of solver.loads.entries()) {
    solution.loadV[id] = seen.loadV[at]!;
    solution.on[id] = seen.on[at]!;
  }
  if (cycle !== undefined) overCycle(solution, solver, variant, cycle);
  bareOf.set(solution, { solver, currents: seen.currentA });
  return solution;
}

function lookAt(solver: Solver, variant: Variant, level: Uint8Array): Seen {
  const frame = solver.frame(variant, level);
  const currentA = solver.currents(variant, frame);
  const loadV = solver.loads.map(({ branch }) => (tied(solver, branch, frame) ? solver.acrossV(branch, frame) : 0));
  return {
    currentA,
    sourceV: solver.sources.map((branch) => solver.acrossV(branch, frame)),
    loadV,
    on: solver.loads.map(({ branch, onFromV }, at) => isOn(loadV[at]!, currentA[branch]!, onFromV)),
  };
}

/** What differs from position to position of relays that never rest. */
function overCycle(solution: Solution, solver: Solver, variant: Variant, cycle: readonly Uint8Array[]): void {
  const seen = cycle.map((positions) => lookAt(solver, variant, positions));
  for (const [index, id] of solver.levelIds.entries()) {
    if (index >= solver.inputCount && cycle.some((positions) => positions[index] !== cycle[0]![index]))
      solution.energised[id] = null;
  }
  for (const [at, { id }] of solver.loads.entries()) {
    const across = seen.map(({ loadV }) => loadV[at]!);
    solution.loadV[id] = [Math.min(...across), Math.max(...across)];
    if (seen.some(({ on }) => on[at] !== seen[0]!.on[at])) solution.on[id] = null;
  }
  solution.reason = whyItDoesNotSettle(solver, variant, cycle);
}

/** Currents of a solution as the solver left them, by number of the branch. */
interface Bare {
  solver: Solver;
  currents: Float64Array;
}
const bareOf = new WeakMap<Solution, Bare>();

/** The currents behind a solution by number of the branch; undefined for one that no solver made. */
export const bareCurrents = (state: Solution): Bare | undefined => bareOf.get(state);

/** One of `currentA` [A], without the names of the others; undefined for what the circuit does not have. */
export function currentOf(state: Solution, id: string): number | undefined {
  const bare = bareOf.get(state);
  if (bare === undefined) return state.currentA[id];
  const branch = bare.solver.numberOf(id);
  return branch === undefined ? undefined : bare.currents[branch];
}

interface Blank {
  nodeV: Record<Node, number>;
  currentA: Record<string, number>;
}
const blanks = new WeakMap<Solver['nodes'], Blank>();

/**
 * All names of a wiring with no number yet. A table has thousands of reports, and filling in a copy costs engines half of
 * what adding name after name does; parsed text, unlike an object filled by a loop, is kept in their quick form.
 */
function blankOf(solver: Solver): Blank {
  let blank = blanks.get(solver.nodes);
  if (blank === undefined) {
    const named = (names: readonly string[]) => Object.fromEntries(names.map((name) => [name, 0.5]));
    const currentA = named(solver.branches.map(({ id }) => id));
    blank = JSON.parse(JSON.stringify({ nodeV: { [CHASSIS]: 0, ...named(solver.nodes) }, currentA })) as Blank;
    blanks.set(solver.nodes, blank);
  }
  return blank;
}

function currentsOf(solver: Solver, currents: Float64Array): Record<string, number> {
  const currentA = { ...blankOf(solver).currentA };
  for (const [index, { id }] of solver.branches.entries()) currentA[id] = currents[index]!;
  return currentA;
}

function voltagesOf(solver: Solver, { voltageV }: Frame): Record<Node, number> {
  const nodeV = { ...blankOf(solver).nodeV };
  for (const [index, node] of solver.nodes.entries()) nodeV[node] = voltageV[index]!;
  return nodeV;
}

/** Current that is none [A]. */
const NOTHING_A = 1e-10;

/** Whether a load is on. Volts alone light nothing: a strip the wrong way round takes no current. */
export const isOn = (voltageV: number, currentA: number, onFromV: number): boolean =>
  Math.abs(voltageV) >= onFromV && Math.abs(currentA) > NOTHING_A;

/** Whether both ends hang on the same: between two that float there is no voltage to speak of. */
function tied(solver: Solver, branch: number, frame: Frame): boolean {
  const { a, b } = solver.branches[branch]!;
  const partAt = (node: Node) => (node === CHASSIS ? -1 : frame.part[solver.placeOf(node)]!);
  return partAt(a) === partAt(b);
}

function islandsOf(solver: Solver, frame: Frame): Node[][] {
  const islands = new Map<number, Node[]>();
  for (const [rank, part] of frame.part.entries()) {
    if (part < 0) continue;
    const members = islands.get(part);
    if (members === undefined) islands.set(part, [solver.nodes[rank]!]);
    else members.push(solver.nodes[rank]!);
  }
  return [...islands.values()];
}
