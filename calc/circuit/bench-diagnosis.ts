/** From the readings of a bench sheet to the faults that would explain them. */
import { BENCH_TOLERANCE, type Probe } from './bench-sheet.ts';
import { describeFault, type Fault, faultBench, faultsOf } from './faults.ts';
import type { Circuit, Solution } from './model.ts';
import { supplyVolts } from './netlist.ts';
import type { Proof } from './prove.ts';

/** Faults that no reading of the sheet tells apart. */
export interface Cause {
  faults: Fault[];
  /** One line of workshop words for each. */
  words: string[];
  /** 0 fits every reading; a reading that speaks against it adds up to 1. */
  misfit: number;
}

export interface BenchDiagnosis {
  /** Best first. The sound circuit is not among them. */
  causes: Cause[];
  /** What the sound circuit would make of the same readings. */
  soundMisfit: number;
  /** Reading of the sheet, not taken yet, that would best tell the first causes apart. */
  next: Probe | undefined;
}

/** Supplies tried between resting (0) and charging (1): nobody writes down which the bench had. */
const SUPPLIES = [0, 0.5, 1] as const;
/** Causes that the next reading is to tell apart. */
const MOST_COMPARED = 8;
/** A meter's last digit [V] or [A]: what differs by less is the same reading. */
const SAME = 0.01;
/** A meter in the hand reads within this share of what is there, beside its last digits. Common practice, no source. */
const METER_FRACTION = 0.03;
const LEAST = { V: 0.15, A: 0.02 } as const;

interface Expected {
  faults: (Fault | undefined)[];
  /** By supply, then fault, then probe. */
  values: number[][][];
}
const known = new WeakMap<Proof, { probes: readonly Probe[]; expected: Expected }>();

/**
 * Ranks single faults by how well they explain the readings of a bench sheet. A fault is judged at the supply that suits
 * it best; each reading counts by its distance in meter tolerances, at most 1. The table of what every fault shows is
 * kept with the proof, so that a second reading costs nothing.
 *
 * @param probes of the same circuit and proof
 * @param readings by probe key, in the probe's unit
 * @source tolerances: common practice, no source
 */
export function benchDiagnosis(
  circuit: Circuit,
  proof: Proof,
  probes: readonly Probe[],
  readings: Readonly<Record<string, number>>,
): BenchDiagnosis {
  const { faults, values } = expectedOf(circuit, proof, probes);
  const taken = probes.flatMap(({ key, unit }, index) => {
    const value = readings[key];
    return value === undefined ? [] : [{ index, value, unit }];
  });
  const ranked = faults.map((fault, f) => {
    let misfit = Number.POSITIVE_INFINITY;
    let supply = 0;
    for (let s = 0; s < SUPPLIES.length; s++) {
      let sum = 0;
      for (const { index, value, unit } of taken) sum += distance(values[s]![f]![index]!, value, unit);
      if (sum < misfit - 1e-9) [misfit, supply] = [sum, s];
    }
    return { fault, f, misfit, supply };
  });
  const sound = ranked.find(({ fault }) => fault === undefined)!;
  const order = ranked.filter(({ fault }) => fault !== undefined).sort((a, b) => a.misfit - b.misfit || a.f - b.f);
  const groups: { cause: Cause; f: number }[] = [];
  for (const { fault, f, misfit } of order) {
    const alike = groups.find((group) => same(values, group.f, f));
    const words = describeFault(proof.netlist, fault!);
    if (alike === undefined) groups.push({ cause: { faults: [fault!], words: [words], misfit }, f });
    else {
      alike.cause.faults.push(fault!);
      alike.cause.words.push(words);
    }
  }
  return {
    causes: groups.map(({ cause }) => cause),
    soundMisfit: sound.misfit,
    next: nextProbe(probes, readings, values, groups.slice(0, MOST_COMPARED)),
  };
}

/** What a meter would read at every probe with a fault in the circuit. `share`: 0 at resting supply, 1 at charging. */
export function benchReadings(
  circuit: Circuit,
  proof: Proof,
  probes: readonly Probe[],
  fault: Fault | undefined,
  share: number,
): number[] {
  const rest = supplyVolts(circuit, proof.values, 'resting');
  const charge = supplyVolts(circuit, proof.values, 'charging');
  const volts = Object.fromEntries(Object.keys(rest).map((id) => [id, rest[id]! + share * (charge[id]! - rest[id]!)]));
  return solved(proof, probes, volts)(fault);
}

function expectedOf(circuit: Circuit, proof: Proof, probes: readonly Probe[]): Expected {
  const kept = known.get(proof);
  if (kept?.probes.length === probes.length) return kept.expected;
  const faults = [undefined, ...faultsOf(proof.netlist)];
  const rest = supplyVolts(circuit, proof.values, 'resting');
  const charge = supplyVolts(circuit, proof.values, 'charging');
  const values = SUPPLIES.map((share) => {
    const volts = Object.fromEntries(
      Object.keys(rest).map((id) => [id, rest[id]! + share * (charge[id]! - rest[id]!)]),
    );
    return faults.map(solved(proof, probes, volts));
  });
  const expected = { faults, values };
  known.set(proof, { probes, expected });
  return expected;
}

/** Readings of all probes with one fault after another, each state solved once. */
function solved(proof: Proof, probes: readonly Probe[], volts: Record<string, number>) {
  const bench = faultBench(proof.netlist);
  const standby = proof.standbyMa / 1000;
  return (fault: Fault | undefined): number[] => {
    const states = new Map<string, Solution>();
    return probes.map(({ inputs, on, of, kind }) => {
      const key = on.join('+');
      const solution = states.get(key) ?? bench.solve(fault, { inputs, volts }).solution;
      states.set(key, solution);
      const value = readOf(solution, of);
      // what loads draw while they are off is beside the network
      return kind === 'standby' ? value + Math.max(0, standby - soundDraw(proof, of)) : value;
    });
  };
}

const soundDraw = (proof: Proof, of: Probe['of']): number => {
  const off = proof.states.find(({ inputs }) => !Object.values(inputs).some(Boolean));
  return off === undefined ? 0 : readOf(off.resting, of);
};

function readOf(solution: Solution, of: Probe['of']): number {
  if ('amps' in of) return Math.abs(solution.currentA[of.amps] ?? 0);
  if ('load' in of) {
    const volts = solution.loadV[of.load] ?? 0;
    return Math.abs(typeof volts === 'number' ? volts : (volts[0] + volts[1]) / 2);
  }
  return Math.abs((solution.nodeV[of.from] ?? 0) - (solution.nodeV[of.to] ?? 0));
}

/** 0 where reading and expectation agree, 1 where they are far apart; smooth between, so that the nearest leads. */
function distance(expected: number, is: number, unit: Probe['unit']): number {
  const tolerance = LEAST[unit] + METER_FRACTION * Math.max(Math.abs(expected), Math.abs(is));
  const times = Math.abs(is - expected) / tolerance;
  return Math.min(1, (times * times) / 9);
}

function same(values: number[][][], a: number, b: number): boolean {
  return values.every((bySupply) => bySupply[a]!.every((value, p) => Math.abs(value - bySupply[b]![p]!) < SAME));
}

/** The reading not taken yet that parts the causes into the most groups. */
function nextProbe(
  probes: readonly Probe[],
  readings: Readonly<Record<string, number>>,
  values: number[][][],
  groups: readonly { cause: Cause; f: number }[],
): Probe | undefined {
  const least = groups[0]?.cause.misfit ?? 0;
  const rivals = groups.filter(({ cause }) => cause.misfit < least + 0.5);
  if (rivals.length < 2) return undefined;
  let best: { probe: Probe; parts: number } | undefined;
  for (const [index, probe] of probes.entries()) {
    if (readings[probe.key] !== undefined) continue;
    const tolerance = probe.unit === 'V' ? BENCH_TOLERANCE.leastV : BENCH_TOLERANCE.leastA;
    const seen: number[] = [];
    for (const { f } of rivals) {
      const value = values[1]![f]![index]!;
      if (!seen.some((other) => Math.abs(other - value) < tolerance + 0.05 * Math.abs(value))) seen.push(value);
    }
    if (seen.length > 1 && (best === undefined || seen.length > best.parts)) best = { probe, parts: seen.length };
  }
  return best?.probe;
}
