import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Branch } from '../../calc/circuit/elements/index.ts';
import type { InputState, RelayState } from '../../calc/circuit/model.ts';
import type { Solver } from '../../calc/circuit/solve.ts';

/** A state as ngspice is given it: contacts already where the relays end. */
export interface SettledState {
  inputs: InputState;
  energised: RelayState;
  volts?: Record<string, number> | undefined;
}

const OPEN_OHM = 1e12;
/** 0.02 · 25.87 mV · ln(1 A / 1 nA). */
const JUNCTION_V = 0.0107;
const LEAST_OHM = 1e-5;

export function ngspiceVersion(): string | undefined {
  const { stdout, status } = spawnSync('ngspice', ['--version'], { encoding: 'utf8' });
  return status === 0 ? /ngspice-\S+/.exec(stdout)?.[0] : undefined;
}

/**
 * Solve states of one circuit in one batch run of ngspice: the deck is read once, each state alters the contacts that
 * differ from the state before and asks for an operating point. Returns volts across each load in the last pass, and the
 * seconds of the whole run, start of the program included.
 */
export function runNgspice(
  solver: Solver,
  states: readonly SettledState[],
  passes: number,
): { seconds: number; loadV: Record<string, number>[] } {
  const folder = mkdtempSync(join(tmpdir(), 'circuit-'));
  const [deck, answers] = [join(folder, 'deck.cir'), join(folder, 'answers.txt')];
  writeFileSync(deck, deckOf(solver, states, passes, answers));
  const start = performance.now();
  const run = spawnSync('ngspice', ['-b', deck], { encoding: 'utf8', maxBuffer: 1 << 28 });
  const seconds = (performance.now() - start) / 1000;
  if (run.error !== undefined) throw run.error;
  let text = '';
  try {
    text = readFileSync(answers, 'utf8');
  } catch {
    throw new Error(`ngspice gave no answers: ${run.stderr.slice(-500)}`);
  } finally {
    rmSync(folder, { recursive: true });
  }
  const values = text.trim().split(/\s+/).map(Number);
  const { loads } = solver;
  const loadV = states.map((_, n) => Object.fromEntries(loads.map(({ id }, k) => [id, values[n * loads.length + k]!])));
  return { seconds, loadV };
}

const isMade = (branch: Branch, state: SettledState): boolean => {
  const by = branch.closedBy;
  if (by === undefined) return true;
  return ('input' in by ? (state.inputs[by.input] ?? false) : (state.energised[by.relay] ?? false)) === by.when;
};

function deckOf(solver: Solver, states: readonly SettledState[], passes: number, answers: string): string {
  const names = new Map(solver.nodes.map((node, k) => [node, `n${k + 1}`]));
  const at = (node: string) => names.get(node) ?? '0';
  const ohm = (branch: Branch) => Math.min(OPEN_OHM, Math.max(LEAST_OHM, branch.ohm));
  const lines = ['* one circuit, many states'];
  for (const [k, branch] of solver.branches.entries()) {
    const ends = `${at(branch.a)} ${at(branch.b)}`;
    if (branch.emfV !== undefined)
      lines.push(`V${k} s${k} ${at(branch.b)} ${branch.emfV}`, `R${k} ${at(branch.a)} s${k} ${ohm(branch)}`);
    // A drop with a nearly ideal junction behind it, right at 1 A; the sharpest that the program settles on safely.
    else if (branch.fromV !== undefined)
      lines.push(`V${k} ${at(branch.a)} d${k} ${branch.fromV - JUNCTION_V}`, `D${k} d${k} ${at(branch.b)} sharp`);
    else lines.push(`R${k} ${ends} ${isMade(branch, states[0]!) ? ohm(branch) : OPEN_OHM}`);
  }
  // What hangs loose has no voltage; a leak keeps the equations solvable.
  for (const node of names.values()) lines.push(`Rleak${node} ${node} 0 ${OPEN_OHM}`);
  lines.push('.model sharp D(is=1e-9 n=0.02)', '.options reltol=1e-6', '.control', 'set noprintscale', 'set width=200');
  for (let pass = 0; pass < passes; pass++) {
    for (const [n, state] of states.entries()) {
      const before = n > 0 ? states[n - 1]! : pass > 0 ? states.at(-1)! : states[0]!;
      for (const [k, branch] of solver.branches.entries()) {
        const made = isMade(branch, state);
        if (branch.closedBy !== undefined && made !== isMade(branch, before))
          lines.push(`alter R${k} = ${made ? ohm(branch) : OPEN_OHM}`);
        if (branch.emfV === undefined) continue;
        const [now, was] = [state, before].map((one) => one.volts?.[branch.id] ?? branch.emfV!);
        if (now !== was) lines.push(`alter V${k} = ${now}`);
      }
      lines.push('op');
      if (pass === passes - 1) {
        for (const { branch } of solver.loads) {
          const { a, b } = solver.branches[branch]!;
          const volts = (node: string) => (names.has(node) ? `v(${at(node)})` : '0');
          lines.push(`let across = ${volts(a)} - ${volts(b)}`, `echo $&across >> ${answers}`);
        }
      }
      lines.push('destroy all');
    }
  }
  return [...lines, 'quit', '.endc', '.end', ''].join('\n');
}
