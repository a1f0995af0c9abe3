import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

/** What a command and every process it started took. */
export interface Usage {
  code: number;
  seconds: number;
  /** Processor time of all processes [s]; undefined where the system does not tell (no /proc). */
  cpuS: number | undefined;
  /** Most memory that all processes held at one moment [MB]; shared pages counted once a process. */
  peakMb: number | undefined;
  output: string;
}

const TICKS_PER_S = 100;
const PAGE_KB = 4;
const LOOK_EVERY_MS = 100;

/** Runs a command to its end and watches what it takes. */
export function watched(
  command: string,
  args: readonly string[],
  options: { cwd: string; env?: NodeJS.ProcessEnv },
): Promise<Usage> {
  return new Promise((done, fail) => {
    const began = performance.now();
    const child = spawn(command, args, {
      cwd: options.cwd,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...options.env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (text) => (output += text));
    const ticks = new Map<number, number>();
    let peakKb = 0;
    const look = () => {
      let kb = 0;
      for (const { pid, cpuTicks, residentKb } of treeOf(child.pid ?? -1)) {
        ticks.set(pid, cpuTicks);
        kb += residentKb;
      }
      peakKb = Math.max(peakKb, kb);
    };
    const looking = setInterval(look, LOOK_EVERY_MS);
    child.on('error', fail);
    child.on('close', (code) => {
      clearInterval(looking);
      const told = ticks.size > 0;
      done({
        code: code ?? -1,
        seconds: (performance.now() - began) / 1000,
        cpuS: told ? [...ticks.values()].reduce((sum, each) => sum + each, 0) / TICKS_PER_S : undefined,
        peakMb: told ? peakKb / 1024 : undefined,
        output,
      });
    });
  });
}

interface Process {
  pid: number;
  parent: number;
  cpuTicks: number;
  residentKb: number;
}

function treeOf(root: number): Process[] {
  const all = processes();
  const wanted = new Set([root]);
  // A child has a higher number than its parent, save where numbers began anew: go round until nothing is added.
  for (let before = 0; before !== wanted.size; ) {
    before = wanted.size;
    for (const { pid, parent } of all) if (wanted.has(parent)) wanted.add(pid);
  }
  return all.filter(({ pid }) => wanted.has(pid));
}

function processes(): Process[] {
  let names: string[];
  try {
    names = readdirSync('/proc');
  } catch {
    return [];
  }
  return names.flatMap((name) => {
    const pid = Number(name);
    if (!Number.isInteger(pid)) return [];
    try {
      const stat = readFileSync(`/proc/${pid}/stat`, 'latin1');
      const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
      return [
        {
          pid,
          parent: Number(fields[1]),
          cpuTicks: Number(fields[11]) + Number(fields[12]),
          residentKb: Number(fields[21]) * PAGE_KB,
        },
      ];
    } catch {
      return []; // ended while we looked
    }
  });
}
