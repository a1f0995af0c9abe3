import { describe, expect, it } from 'vitest';
import { benchReadings } from '../../calc/circuit/bench-diagnosis.ts';
import { benchProbes, faultsOf, prove } from '../../calc/index.ts';
import { model } from '../../components/bench-sheet/model.ts';
import { defaultsOf, type JobContext, SHOP_DEFAULTS } from '../../components/context.ts';
import { studyFrom } from '../../components/study.ts';
import { DEFAULT_UNITS } from '../../components/units.ts';
import { workshop } from '../../site/workshop.ts';

const circuit = (await workshop()).circuits.get('cargo-work-light')!;
const proof = prove(circuit, undefined, { faults: false });
const probes = benchProbes(circuit, proof);

function viewOf(values: Readonly<Record<string, number>>) {
  const job: JobContext = {
    circuit,
    values: defaultsOf(circuit),
    shop: SHOP_DEFAULTS,
    units: DEFAULT_UNITS,
    study: studyFrom(proof),
    local: {},
    refused: {},
    chosen: {},
    readings: Object.fromEntries(Object.entries(values).map(([key, value]) => [key, { typed: String(value), value }])),
  };
  const view = model({}, job);
  const rows = view.states.flatMap(({ rows }) => rows as readonly Record<string, string>[]);
  return { ...view, verdict: (key: string) => rows.find((row) => row['key'] === key)?.['flagText'] };
}
/** What a meter shows with a fault in the circuit, in the unit of each place. */
const measured = (fault: ReturnType<typeof faultsOf>[number] | undefined) =>
  Object.fromEntries(
    benchReadings(circuit, proof, probes, fault, 0.5).map((value, p) => [
      probes[p]!.key,
      probes[p]!.kind === 'standby' ? value * 1000 : value,
    ]),
  );

describe('bench sheet', () => {
  it('finds a sound circuit in its limits at any supply between resting and charging', () => {
    const view = viewOf(measured(undefined));
    expect(view.flag).toBe('pass');
    expect(view.outside).toBe(false);
    expect(view.causes).toEqual([]);
  });

  it('judges one reading at a time, and never counts what was not measured as a pass', () => {
    const probe = probes.find(({ key }) => key === 'master+side.L1')!;
    expect(viewOf({}).verdict(probe.key)).toBe('Not measured');
    expect(viewOf({}).flag).toBe('unk');
    expect(viewOf({ [probe.key]: (probe.low + probe.high) / 2 }).verdict(probe.key)).toBe('In limits');
    expect(viewOf({ [probe.key]: probe.low + 0.01 }).verdict(probe.key)).toBe('Close to the limit');
    expect(viewOf({ [probe.key]: probe.low - 0.01 }).verdict(probe.key)).toBe('Outside');
  });

  it('names a blown fuse, a broken diode and a lost ground point among what fits', () => {
    const named = (kind: string, id: string) => {
      const fault = faultsOf(proof.netlist).find((each) => each.kind === kind && each.id === id)!;
      const view = viewOf(measured(fault));
      return [view.fits, ...view.causes.map(({ text }) => String(text))].join(' ');
    };
    expect(named('open', 'F1')).toContain('F1 blown (load light fuse)');
    expect(named('open', 'D1')).toContain('D1 does not make contact (side-door diode)');
    expect(named('open', 'W11')).toMatch(/W11 broken|ground point G1 open/);
  });

  it('says so where no single fault fits', () => {
    // both lamps of a pair dead with one switch, and a standby of half an amp: two troubles
    const odd = viewOf({ ...measured(undefined), 'off.standby': 500, 'master+side.L1': 3, 'master+rear.L3': 7 });
    expect(odd.fits).toMatch(/^(Nearest fit|No single fault)/);
  });
});
