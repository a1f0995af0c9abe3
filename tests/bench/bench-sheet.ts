import { benchDiagnosis, benchReadings } from '../../calc/circuit/bench-diagnosis.ts';
import { benchProbes } from '../../calc/circuit/bench-sheet.ts';
import { describeFault, faultsOf } from '../../calc/circuit/faults.ts';
import { prove } from '../../calc/circuit/prove.ts';
import { workshop } from '../../site/workshop.ts';

/** Causes that the sheet names to the reader. */
const NAMED = 3;

export interface BenchSheetBench {
  lines: string[];
  figures: Record<string, number>;
}

/**
 * Plants every single fault of every demonstration circuit, reads the sheet's probes as a meter shows them, and counts in
 * how many cases the planted fault, or one that gives the same readings, is among the first three causes. The supply of
 * the bench lies anywhere between resting and charging, and the
 * sheet is not told; every reading is up to 2 % wrong.
 */
export async function benchSheet(say: (missed: string) => void = () => {}): Promise<BenchSheetBench> {
  const { circuits, shop } = await workshop();
  const lines: string[] = [];
  let [planted, hidden, named, alone, slowestMs, group] = [0, 0, 0, 0, 0, 0];
  for (const circuit of circuits.values()) {
    const proof = prove(circuit, undefined, {
      faults: false,
      stock: { fusesA: shop.stockedFusesA, wiresMm2: shop.stockedWiresMm2 },
    });
    const probes = benchProbes(circuit, proof);
    let [here, hits, unseen] = [0, 0, 0];
    for (const [index, fault] of faultsOf(proof.netlist).entries()) {
      // a different supply for each, the same on every run
      const share = ((index * 37) % 101) / 100;
      const values = benchReadings(circuit, proof, probes, fault, share).map((value, p) =>
        asShown(value * (1 + meterError(index, p)), probes[p]!.unit),
      );
      here++;
      if (probes.every(({ low, high }, p) => values[p]! >= low && values[p]! <= high)) {
        unseen++;
        continue;
      }
      const readings = Object.fromEntries(probes.map(({ key }, p) => [key, values[p]!]));
      const began = performance.now();
      const { causes } = benchDiagnosis(circuit, proof, probes, readings);
      slowestMs = Math.max(slowestMs, performance.now() - began);
      const first = causes.slice(0, NAMED);
      const hit = first.find(({ faults }) => faults.some((each) => JSON.stringify(each) === JSON.stringify(fault)));
      if (hit) {
        hits++;
        group += hit.faults.length;
        if (causes[0] === hit) alone++;
      } else
        say(
          `${circuit.id}: ${describeFault(proof.netlist, fault)}; named ${first.map(({ words }) => words[0]).join('; ')}`,
        );
    }
    planted += here;
    hidden += unseen;
    named += hits;
    lines.push(
      `${circuit.id}: ${here} faults, ${unseen} leave every reading in its limits, ${hits} of ${here - unseen} named`,
    );
  }
  const visible = planted - hidden;
  lines.push(
    `all: ${planted} faults, ${visible} show on the sheet, ${named} of them (${((named / visible) * 100).toFixed(1)} %) among the first ${NAMED} causes, ${alone} the first`,
    `faults that share the readings of the one found: ${(group / Math.max(1, named)).toFixed(1)} on average; slowest diagnosis ${slowestMs.toFixed(0)} ms`,
  );
  return { lines, figures: { planted, visible, named, namedShare: named / visible, hidden } };
}

/** Share by which this reading lies: a meter's error and the parts' own, within 2 %, the same on every run. */
const meterError = (fault: number, probe: number): number =>
  ((((fault + 1) * 7919 + probe * 104729) % 401) - 200) / 10_000;

/** A workshop meter: volts to two places, amps to three figures from a milliamp up. */
const asShown = (value: number, unit: 'V' | 'A'): number =>
  unit === 'V' ? Math.round(value * 100) / 100 : Math.round(value * 1000) / 1000;

if (import.meta.main) {
  const misses: string[] = [];
  const { lines, figures } = await benchSheet((missed) => misses.push(missed));
  for (const line of lines) console.log(line);
  for (const missed of misses.slice(0, 20)) console.log(`missed: ${missed}`);
  process.exitCode = figures['namedShare']! >= 0.8 ? 0 : 1;
}
