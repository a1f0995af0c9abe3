import type { Coverage } from './coverage.ts';
import type { Peaks } from './current-paths.ts';
import { type FaultStudy, singleFaults } from './faults.ts';
import { type Condition, evaluate, parseCondition } from './intent.ts';
import { LoadWays } from './load-ways.ts';
import type { Circuit, Element, Finding, InputState, Netlist, Severity, SignOff, Solution } from './model.ts';
import { type Origin, type Sizes, supplyVolts } from './netlist.ts';
import { type CircuitProblem, circuitProblems, isLoad } from './problems.ts';
import { numberOf, type Values, valuesOf } from './quantities.ts';
import { currentOf } from './report.ts';
import { checkRules } from './rules/index.ts';
import type { Wanted } from './rules/rule.ts';
import { type Sizing, type Stock, solveSized } from './sizing.ts';
import type { Solver } from './solve.ts';
import { type ReachedRow, sequence } from './states.ts';

/** Wire that may lie ahead of the first fuse [m]. Common practice, no source. */
export const UNFUSED_STUB_M = 0.3;

export interface ProveOptions {
  /** Study every single fault; default yes. Quick updates leave it out. */
  faults?: boolean | undefined;
  /** What the workshop keeps and how it sizes. */
  stock?: Stock | undefined;
  /**
   * An earlier proof of the same circuit for other job values. Whether a circuit remembers and whether its relays race
   * hangs on its wiring: where the earlier proof found neither, they are not looked for again. Nor are problems of the
   * circuit as written.
   */
  after?: Pick<Proof, 'latching' | 'findings' | 'netlist'> | undefined;
}

/** One combination of the inputs, solved with the engine off and with the engine on. */
export interface ProofState {
  n: number;
  inputs: InputState;
  wanted: Wanted;
  resting: Solution;
  charging: Solution;
  /** Current taken from the batteries with the engine off, with what loads draw while they are off [mA]. */
  drawMa: number;
}

/** One step of a circuit that remembers, from all relays released. */
export interface ProofStep {
  n: number;
  inputs: InputState;
  wanted: Wanted;
  charging: Solution;
}

/** A load that is not as the customer wants it. */
export interface Difference {
  load: string;
  inputs: InputState;
  supply: 'resting' | 'charging';
  is: boolean | null;
  wanted: boolean | null;
}

/** Figures of a part, wire or the supply, by name: the same names a guide uses (`F1.ratingA`, `W2.dropV`). */
export type Figures = Record<string, Record<string, number>>;

export interface Proof {
  circuit: string;
  values: Values;
  sizes: Sizes;
  choices: Sizing['choices'];
  netlist: Netlist;
  origin: Origin;
  states: ProofState[];
  /** States that only a history leads to. */
  reached: ReachedRow[];
  steps: ProofStep[];
  latching: boolean;
  differences: Difference[];
  /** Absent where it was left out. */
  faults?: FaultStudy;
  /** Stops first; signed-off ones carry their sign-off. */
  findings: Finding[];
  /** Findings of severity stop that nobody has signed off: the guide must not be published. */
  stops: number;
  unmatchedSignOffs: SignOff[];
  /** Drawn with every input off [mA]. */
  standbyMa: number;
  figures: Figures;
  coverage: Coverage;
}

/** A circuit that cannot be proven because it cannot be read. */
export class UnprovableError extends RangeError {
  readonly problems: CircuitProblem[];
  constructor(circuit: string, problems: CircuitProblem[]) {
    super(`prove: circuit "${circuit}" has ${problems.length} problems, expected none: ${problems[0]?.message}`);
    this.problems = problems;
  }
}

/**
 * Proves a circuit: sizes it, solves every state at resting and charging supply, compares with the intent, studies every
 * single fault, and applies every rule.
 *
 * @param circuit as its author wrote it
 * @param given job values in calc's units; default the author's
 * @returns everything a page shows of it; `findings` is empty for a good circuit
 * @throws UnprovableError where `circuitProblems` finds any
 */
export function prove(circuit: Circuit, given?: Values, options: ProveOptions = {}): Proof {
  const problems = options.after === undefined ? circuitProblems(circuit) : [];
  if (problems.length > 0) throw new UnprovableError(circuit.id, problems);
  const values = valuesOf(circuit, given);
  const known = options.after && {
    latching: options.after.latching,
    racing: options.after.findings.some((each) => each.rule === 'relay-race'),
    netlist: options.after.netlist,
  };
  const sized = solveSized(circuit, values, options.stock ?? {}, known);
  const { sizing, netlist, origin, solver, table, peaks } = sized;
  const { sizes, choices, problems: unsized } = sizing;
  const resting = supplyVolts(circuit, values, 'resting');
  const charging = supplyVolts(circuit, values, 'charging');
  const want = wishes(circuit);
  const half = table.rows.length / 2;
  const draw = drawMa(circuit, values, netlist);
  const states = table.rows.slice(0, half).map((row, n): ProofState => {
    const charged = table.rows[half + n]!.solution;
    return {
      n,
      inputs: row.inputs,
      wanted: want(row.inputs),
      resting: row.solution,
      charging: charged,
      drawMa: draw(row.solution),
    };
  });
  const steps = stepsOf(circuit, solver, charging);
  // Where the customer described a history, the states that a history leads to are judged by it and not by `when`.
  const histories = circuit.intent.sequence === undefined ? table.reached : [];
  const judged: { solution: Solution; wanted: Wanted; supply: Difference['supply'] }[] = [
    ...states.map((state) => ({ solution: state.resting, wanted: state.wanted, supply: 'resting' as const })),
    ...states.map((state) => ({ solution: state.charging, wanted: state.wanted, supply: 'charging' as const })),
    ...histories.map((row) => ({
      solution: row.solution,
      wanted: want(row.inputs),
      supply: Object.keys(resting).every((id) => row.volts?.[id] === resting[id])
        ? ('resting' as const)
        : ('charging' as const),
    })),
    ...steps.map((step) => ({ solution: step.charging, wanted: step.wanted, supply: 'charging' as const })),
  ];
  const found = checkRules({
    netlist,
    states: judged.map((each) => each.solution),
    wanted: judged.map((each) => each.wanted),
    races: table.races,
    // Steps of a history may show states that the table does not have.
    peaks: steps.length === 0 ? peaks : undefined,
    unfusedStubM: UNFUSED_STUB_M,
    written: {
      circuit,
      values,
      origin,
      sizes,
      lowestV: Math.min(...Object.values(resting), numberOf(circuit.supply.restingV, values)),
      highestV: Math.max(...Object.values(charging), numberOf(circuit.supply.chargingV, values)),
      standby: {
        inputs: states[0]!.inputs,
        drawMa: states[0]!.drawMa,
        loadsOn: netlist.loads.filter((load) => states[0]!.resting.on[load] === true),
        energised: states[0]!.resting.energised,
      },
      dropFraction: options.stock?.dropFraction,
    },
  });
  const unanswered = unsized.map(({ rule, part, message, cure }): Finding => {
    const why = 'A wrong fuse or wire would be fitted: there is none that is safe and works.';
    return { rule, severity: 'stop', parts: [part], states: [], message, why, cure };
  });
  const { findings, unmatched } = signOff([...unanswered, ...found], circuit.signOffs);
  return {
    circuit: circuit.id,
    values,
    sizes,
    choices,
    netlist,
    origin,
    states,
    reached: table.reached,
    steps,
    latching: table.latching,
    differences: differencesOf(netlist, judged),
    ...(options.faults === false ? {} : { faults: singleFaults(solver, { supplyVariants: [charging] }) }),
    findings,
    stops: findings.filter((each) => each.severity === 'stop' && each.signedOff === undefined).length,
    unmatchedSignOffs: unmatched,
    standbyMa: states[0]!.drawMa,
    figures: figuresOf(circuit, values, netlist, states, choices, peaks),
    coverage: table.coverage,
  };
}

/** The intent, read once: what is wanted of every load for given inputs. */
function wishes(circuit: Circuit): (inputs: InputState) => Wanted {
  const read = (text: string): Condition => {
    const parsed = parseCondition(text);
    if (!parsed.ok) throw new RangeError(`prove: intent "${text}": ${parsed.error.message}`);
    return parsed.condition;
  };
  const loads = Object.entries(circuit.intent.loads).map(([load, wish]) => ({
    load,
    when: read(wish.when),
    ranges: (wish.ranges ?? []).map(({ when, minV, maxV }) => ({ when: read(when), minV, maxV })),
  }));
  return (inputs) => {
    const wanted: Wanted = { on: {}, settles: true };
    for (const { load, when, ranges } of loads) {
      wanted.on[load] = evaluate(when, inputs);
      const range = ranges.find((each) => evaluate(each.when, inputs));
      if (range) wanted.rangeV = { ...wanted.rangeV, [load]: [range.minV, range.maxV] };
    }
    return wanted;
  };
}

function stepsOf(circuit: Circuit, solver: Solver, volts: Record<string, number>): ProofStep[] {
  const steps = circuit.intent.sequence ?? [];
  const inputIds = Object.keys(circuit.inputs);
  const loads = Object.keys(circuit.intent.loads);
  const rows = sequence(
    solver,
    steps.map((step) => ({ inputs: Object.fromEntries(inputIds.map((id) => [id, step.on.includes(id)])), volts })),
  );
  return rows.map((row, n) => {
    const on = Object.fromEntries(loads.map((load) => [load, steps[n]!.loads.includes(load)]));
    return { n, inputs: row.inputs, wanted: { on, settles: true }, charging: row.solution };
  });
}

function drawMa(circuit: Circuit, values: Values, netlist: Netlist): (state: Solution) => number {
  const sources = netlist.elements.filter((each) => each.kind === 'source').map((each) => each.id);
  const sleepers = Object.entries(circuit.parts).flatMap(([id, part]) =>
    isLoad(part) && part.standbyMa !== undefined ? [{ id, standbyMa: numberOf(part.standbyMa, values) }] : [],
  );
  return (state) => {
    const fromBatteriesA = sources.reduce((sum, id) => sum + Math.max(0, currentOf(state, id) ?? 0), 0);
    const asleep = sleepers.filter(({ id }) => state.on[id] !== true);
    return fromBatteriesA * 1000 + asleep.reduce((sum, each) => sum + each.standbyMa, 0);
  };
}

function differencesOf(
  netlist: Netlist,
  judged: readonly { solution: Solution; wanted: Wanted; supply: Difference['supply'] }[],
): Difference[] {
  return judged.flatMap(({ solution, wanted, supply }) =>
    netlist.loads.flatMap((load): Difference[] => {
      const [is, should] = [solution.on[load] ?? null, wanted.on[load]];
      if (should === undefined || is === should) return [];
      return [{ load, inputs: solution.inputs, supply, is, wanted: should }];
    }),
  );
}

const RANK: Record<Severity, number> = { stop: 0, warn: 1, note: 2 };

/** Marks what is signed off, adds a stop for every sign-off that matches nothing, and sorts: stops first. */
function signOff(findings: Finding[], signOffs: readonly SignOff[]): { findings: Finding[]; unmatched: SignOff[] } {
  const unmatched: SignOff[] = [];
  for (const signed of signOffs) {
    const matches = findings.filter(
      (each) => each.rule === signed.rule && signed.parts.every((part) => names(each).has(part)),
    );
    if (matches.length === 0) unmatched.push(signed);
    for (const match of matches) match.signedOff = signed;
  }
  const stale = unmatched.map(
    (signed): Finding => ({
      rule: 'sign-off-unmatched',
      severity: 'stop',
      parts: signed.parts,
      states: [],
      message: `The sign-off of ${signed.rule} for ${signed.parts.join(', ')} by ${signed.by} matches no finding.`,
      why: 'The circuit is no longer what was accepted.',
      cure: 'Take the sign-off out of the circuit file.',
    }),
  );
  const sorted = [...findings, ...stale].map((finding, at) => ({ finding, at }));
  sorted.sort((a, b) => RANK[a.finding.severity] - RANK[b.finding.severity] || a.at - b.at);
  return { findings: sorted.map(({ finding }) => finding), unmatched };
}

/** A finding's parts, and the parts they belong to: `K1.no` is also `K1`. */
const names = (finding: Finding): Set<string> => new Set(finding.parts.flatMap((part) => [part, part.split('.')[0]!]));

function figuresOf(
  circuit: Circuit,
  values: Values,
  netlist: Netlist,
  states: readonly ProofState[],
  choices: Sizing['choices'],
  peaks: Peaks,
): Figures {
  const solutions = states.flatMap((state) => [state.resting, state.charging]).filter((state) => state.settles);
  const most = (id: string) => {
    const peak = peaks.get(id);
    return peak === undefined ? 0 : Math.max(peak.highestA, -peak.lowestA);
  };
  // What a part was sized for is the current a guide speaks of: the lowest supply counts, where electronics take most.
  const sizedForA = (id: string) => Math.max(most(id), choices[id]?.question.currentA ?? 0);
  const figures: Figures = {};
  const paths = new LoadWays(netlist);
  for (const element of netlist.elements) {
    const { id } = element;
    switch (element.kind) {
      case 'wire': {
        const currentA = sizedForA(id);
        const dropV = currentA * element.ohm;
        const { areaMm2, lengthM, limitA } = element;
        figures[id] = { areaMm2, lengthM, limitA, currentA, dropV, dropFraction: dropV / circuit.systemV };
        break;
      }
      case 'fuse':
        figures[id] =
          circuit.parts[id]?.kind === 'feed'
            ? { fuseA: element.ratingA, currentA: most(id) }
            : { ratingA: element.ratingA, currentA: sizedForA(id) };
        break;
      case 'relay':
        figures[id] = {
          coilOhm: element.coilOhm,
          coilCurrentA: most(id),
          contactCurrentA: Math.max(most(`${id}.no`), most(`${id}.nc`)),
        };
        break;
      case 'load': {
        const part = circuit.parts[id];
        const extra =
          part && isLoad(part) && part.lengthM !== undefined ? { lengthM: numberOf(part.lengthM, values) } : {};
        figures[id] = { ...loadFigures(element, solutions, paths, circuit), ...extra };
        break;
      }
      case 'resistor':
        figures[id] = { ohm: element.ohm, currentA: most(id) };
        break;
      case 'source':
        break;
      default:
        figures[id] = { currentA: most(id) };
    }
  }
  const sources = netlist.elements.filter((each) => each.kind === 'source');
  const fromBatteries = (state: Solution) =>
    sources.reduce((sum, each) => sum + Math.max(0, currentOf(state, each.id) ?? 0), 0);
  figures['supply'] = {
    restingV: numberOf(circuit.supply.restingV, values),
    chargingV: numberOf(circuit.supply.chargingV, values),
    standbyMa: states[0]!.drawMa,
    maxA: solutions.reduce((max, state) => Math.max(max, fromBatteries(state)), 0),
  };
  for (const [id, choice] of Object.entries(choices)) {
    if (choice.kind === 'fuse') figures[id] = { ...figures[id], ratingA: choice.ratingA };
  }
  return figures;
}

/** Largest current and power, lowest voltage and greatest drop of a load over the states in which it is on. */
function loadFigures(
  load: Extract<Element, { kind: 'load' }>,
  solutions: readonly Solution[],
  paths: LoadWays,
  circuit: Circuit,
): Record<string, number> {
  const figures = { currentA: 0, powerW: 0 };
  let lowestV = Number.POSITIVE_INFINITY;
  let dropV = 0;
  for (const state of solutions) {
    if (state.on[load.id] !== true) continue;
    const currentA = currentOf(state, load.id) ?? 0;
    const volts = Math.abs(Number(state.loadV[load.id]));
    figures.currentA = Math.max(figures.currentA, Math.abs(currentA));
    figures.powerW = Math.max(figures.powerW, Math.abs(currentA) * volts);
    lowestV = Math.min(lowestV, volts);
    const { source } = paths.follow(state, load);
    if (source !== undefined) dropV = Math.max(dropV, state.sourceV[source]! - volts);
  }
  if (!Number.isFinite(lowestV)) return { ...figures, voltageV: 0, dropV: 0, dropFraction: 0 };
  return { ...figures, voltageV: lowestV, dropV, dropFraction: dropV / circuit.systemV };
}
