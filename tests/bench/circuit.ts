import { readFileSync } from 'node:fs';
import { singleFaults } from '../../calc/circuit/faults.ts';
import type { RelayState } from '../../calc/circuit/model.ts';
import { netlistOf } from '../../calc/circuit/netlist.ts';
import { type NeutralFile, readPattern } from '../../calc/circuit/neutral.ts';
import { prove } from '../../calc/circuit/prove.ts';
import { sizeCircuit } from '../../calc/circuit/sizing.ts';
import { prepare } from '../../calc/circuit/solve.ts';
import { truthTable } from '../../calc/circuit/states.ts';
import { bigCircuit } from '../calc/circuit/examples/big.ts';
import { ngspiceVersion, runNgspice, type SettledState } from './ngspice.ts';

const PATTERNS = new URL('../calc/circuit/rows/patterns.json', import.meta.url);

/** Shortest of some runs [ms]: what the work takes when nothing else wants the machine. */
function shortestMs(work: () => unknown, runs: number): number {
  let shortest = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    work();
    shortest = Math.min(shortest, performance.now() - start);
  }
  return shortest;
}

export interface CircuitBench {
  lines: string[];
  figures: Record<string, number>;
}

/** States a second against ngspice, time of a full proof, and how cost grows. */
export function benchCircuit(): CircuitBench {
  const bench: CircuitBench = { lines: [], figures: {} };
  compareWithNgspice(bench);
  fullProof(bench);
  growth(bench);
  return bench;
}

function compareWithNgspice({ lines, figures }: CircuitBench): void {
  const file = JSON.parse(readFileSync(PATTERNS, 'utf8')) as NeutralFile;
  const circuits = file.patterns.map((pattern) => {
    const solver = prepare(readPattern(file, pattern));
    const rows = (pattern.truthTable ?? []).filter((row) => row.settles);
    const states = rows.map(
      (row): SettledState => ({ inputs: row.inputs, energised: row.energised as RelayState, volts: row.volts }),
    );
    return { solver, rows, states };
  });
  const count = circuits.reduce((sum, { states }) => sum + states.length, 0);
  // Each state from all relays released, solved afresh each time: nothing remembered from the time before.
  const oursMs = shortestMs(() => {
    for (const { solver, states } of circuits) {
      for (const state of states) {
        const variant = solver.atVolts(state.volts);
        solver.settle(variant, solver.level(variant, state.inputs), solver.point);
      }
    }
  }, 200);
  figures['statesPerSecond'] = Math.round((count / oursMs) * 1000);
  lines.push(
    `solver: ${count} states of ${circuits.length} circuits, relays iterated from released: ${figures['statesPerSecond']} states a second`,
  );

  const version = ngspiceVersion();
  if (version === undefined) {
    lines.push('ngspice: not installed here, so nothing was compared (Debian package ngspice)');
    return;
  }
  const [few, many] = [1, 21];
  let seconds = 0;
  let worstV = 0;
  for (const { solver, rows, states } of circuits) {
    const short = Math.min(...[1, 2].map(() => runNgspice(solver, states, few).seconds));
    const long = runNgspice(solver, states, many);
    const longer = Math.min(long.seconds, runNgspice(solver, states, many).seconds);
    seconds += Math.max(0, longer - short);
    for (const [n, row] of rows.entries()) {
      for (const [id, expected] of Object.entries(row.loadV ?? {}))
        worstV = Math.max(worstV, Math.abs(long.loadV[n]![id]! - (expected as number)));
    }
  }
  const solved = count * (many - few);
  figures['ngspiceStatesPerSecond'] = Math.round(solved / seconds);
  figures['timesNgspice'] = Math.round(figures['statesPerSecond']! / figures['ngspiceStatesPerSecond']!);
  lines.push(
    `${version}: ${figures['ngspiceStatesPerSecond']} states a second on the same circuits, ${figures['timesNgspice']} times slower`,
    `  counted: ${many - few} further passes of alter and op in one batch run a circuit; start, reading the deck and the first pass are taken off,`,
    `  contacts are given as the relays end, so it solves one network a state; its loads differ from the reference by at most ${(worstV * 1000).toFixed(1)} mV`,
  );
}

function fullProof({ lines, figures }: CircuitBench): void {
  const circuit = bigCircuit({ branches: 6, inputs: 6 });
  const start = performance.now();
  const proof = prove(circuit);
  const firstMs = performance.now() - start;
  const ms = shortestMs(() => prove(circuit), 30);
  const quickMs = shortestMs(() => prove(circuit, undefined, { faults: false }), 30);
  figures['proofMs'] = ms;
  figures['firstProofMs'] = firstMs;
  figures['quickProofMs'] = quickMs;
  const parts = Object.keys(circuit.parts).length;
  lines.push(
    `full proof of ${parts} parts (${proof.netlist.elements.length} elements with wires), ${proof.coverage.inputs} inputs: ${proof.coverage.statement}`,
    `  at two supplies, and ${proof.faults!.results.length} single faults in each: ${ms.toFixed(1)} ms, the first in a fresh process ${firstMs.toFixed(0)} ms; without the faults ${quickMs.toFixed(1)} ms`,
  );
}

function growth({ lines, figures }: CircuitBench): void {
  lines.push(
    'growth: parts, inputs, elements: states solved, ms for the table; single faults, states each, ms for the study',
  );
  for (const [branches, inputs] of [
    [6, 2],
    [6, 4],
    [6, 6],
    [12, 6],
    [24, 6],
    [40, 6],
    [12, 8],
    [12, 10],
    [12, 12],
    [40, 12],
  ] as const) {
    const circuit = bigCircuit({ branches, inputs });
    // With one input for all there are two states to size for; the parts are the same.
    const { sizes } = sizeCircuit(bigCircuit({ branches, inputs: 1 }));
    const { netlist } = netlistOf(circuit, undefined, sizes);
    const begin = performance.now();
    const solver = prepare(netlist);
    const table = truthTable(solver);
    const tableMs = performance.now() - begin;
    const start = performance.now();
    const study = singleFaults(solver);
    const studyMs = performance.now() - start;
    const parts = Object.keys(circuit.parts).length;
    figures[`tableMs_${parts}_${inputs}`] = tableMs;
    figures[`studyMs_${parts}_${inputs}`] = studyMs;
    lines.push(
      `  ${parts} parts, ${inputs} inputs, ${netlist.elements.length} elements: ${table.coverage.combinations} states, ${tableMs.toFixed(1)} ms; ` +
        `${study.results.length} faults in ${study.coverage.combinations} states, ${studyMs.toFixed(0)} ms${study.coverage.complete ? '' : ` (${study.coverage.statement})`}`,
    );
  }
}

if (import.meta.main) console.log(benchCircuit().lines.join('\n'));
