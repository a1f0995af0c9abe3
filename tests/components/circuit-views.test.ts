import { describe, expect, it } from 'vitest';
import { CHASSIS, type Finding, faultsOf, prove } from '../../calc/index.ts';
import { model as diagram } from '../../components/circuit-diagram/model.ts';
import { faultKey, onKey } from '../../components/circuit-view/state.ts';
import { defaultsOf, type JobContext, SHOP_DEFAULTS } from '../../components/context.ts';
import { model as faultFinding } from '../../components/fault-finding/model.ts';
import { faultLines } from '../../components/fault-table/model.ts';
import { model as findings } from '../../components/findings/model.ts';
import { model as meter } from '../../components/meter/model.ts';
import { model as relay } from '../../components/relay-diagram/model.ts';
import { say } from '../../components/show.ts';
import { stockOf, studyFrom } from '../../components/study.ts';
import { model as truthTable } from '../../components/truth-table/model.ts';
import { CIRCUITS, jobOn, planFor, textsOf } from './circuit-states.ts';

/** Every view that follows the state of the page. */
function viewsOf(id: string, job: JobContext) {
  const relays = Object.entries(job.circuit!.parts).filter(([, { kind }]) => kind === 'relay');
  return [
    diagram({ plan: planFor(id) }, job),
    truthTable({}, job),
    findings({}, job),
    faultFinding({}, job),
    meter({}, job),
    ...relays.map(([of]) => relay({ of }, job)),
  ];
}
const NO_WORDS = /NaN|Infinity|undefined|null|\[object|not known/;
/** Texts of all views that are no words for a reader. */
const unclean = (id: string, job: JobContext): string[] =>
  viewsOf(id, job)
    .flatMap((view) => textsOf(view))
    .filter(([, text]) => NO_WORDS.test(text))
    .map(([field, text]) => `${field}: ${text}`);

describe.each(CIRCUITS.map((circuit) => [circuit.id, circuit] as const))('views of %s', (id, circuit) => {
  const { proof } = jobOn(id).study!;

  it('say words and numbers and nothing else in every state', () => {
    for (const { inputs } of proof.states)
      expect(unclean(id, jobOn(id, { on: onKey(circuit, inputs) })), onKey(circuit, inputs)).toEqual([]);
  });

  it('write the volts and amps that calc solved', () => {
    const plan = planFor(id);
    for (const { inputs, charging } of proof.states) {
      const job = jobOn(id, { on: onKey(circuit, inputs) });
      const view = diagram({ plan }, job) as Record<string, unknown>;
      plan.volts.forEach((node, i) => {
        const expected = charging.floating.includes(node) ? 'floats' : say(charging.nodeV[node]!, 'voltage', job.units);
        expect(view[`v${i}`]).toBe(expected);
      });
      plan.parts.forEach(([element], i) => {
        const lit = /\blive(-up)?\b/.test(String(view[`k${i}`]));
        expect(lit, `${element} ${onKey(circuit, inputs)}`).toBe(Math.abs(charging.currentA[element] ?? 0) > 0.001);
      });
    }
  });

  it('have a row in words for every part and every wire', () => {
    const { rows } = diagram({ plan: planFor(id) }, jobOn(id));
    expect(rows.map(({ id: row }) => row).sort()).toEqual(
      [...Object.keys(circuit.parts), ...Object.keys(circuit.wires)].sort(),
    );
  });
});

describe('the current in a bar of the drawing', () => {
  it('is what the parts on it bring and take: the sum at every join is nothing', () => {
    const job = jobOn('cargo-work-light');
    const { charging } = job.study!.proof.states.at(-1)!;
    for (const edges of planFor('cargo-work-light').lines) {
      const flows = edges.map((edge) => charging.currentA[edge.replace('-', '')] ?? 0);
      expect(flows.every((a) => Number.isFinite(a))).toBe(true);
      expect(edges.length).toBeGreaterThan(0);
    }
  });
});

describe('faults', () => {
  it.each(['cargo-work-light', 'rinse-pump'])(
    '%s: every fault says words and numbers, everything off and everything on',
    (id) => {
      const { proof } = jobOn(id).study!;
      for (const fault of faultsOf(proof.netlist))
        for (const { inputs } of [proof.states[0]!, proof.states.at(-1)!]) {
          const on = onKey(jobOn(id).circuit!, inputs);
          expect(unclean(id, jobOn(id, { fault: faultKey(fault), on })), `${faultKey(fault)}, ${on}`).toEqual([]);
        }
    },
  );

  it('name loads that do the same together, what harms first', () => {
    const job = jobOn('cargo-work-light');
    const proof = prove(job.circuit!, defaultsOf(job.circuit), { stock: stockOf(SHOP_DEFAULTS) });
    const lines = faultLines(job.circuit!, proof, proof.faults!, undefined);
    expect(lines[0]).toMatchObject({ seen: 'All four lamps stay off', danger: 'W1 overheats and no fuse opens' });
    expect(lines.find(({ faults }) => faults.includes('SW1 or K1 contact 30–87 does not make contact'))?.seen).toBe(
      'All four lamps stay off',
    );
    expect(lines.at(-1)?.seen).toBe('Nothing to be seen at the loads');
    const named = lines.map(({ faults }) => faults).join();
    expect(named).not.toMatch(/pigtail|\.no\b|\.contact/);
  });
});

describe('a relay that holds itself', () => {
  const pump = (on: string) => diagram({ plan: planFor('rinse-pump') }, jobOn('rinse-pump', { on })).state;

  it('starts on a press, runs on after it, stops on the other', () => {
    expect(pump('-')).toBe('Start button released, stop button released: every load off.');
    expect(pump('-;start')).toBe('Start button pressed: Rinse pump on.');
    expect(pump('-;start;-')).toBe('Start button released, stop button released: Rinse pump on.');
    expect(pump('-;start;-;stop;-')).toBe('Start button released, stop button released: every load off.');
  });

  it('says what came before, and is the same whether looked at step by step or at once', () => {
    const job = jobOn('rinse-pump', { on: '-;start;-' });
    const direct = diagram({ plan: planFor('rinse-pump') }, job);
    expect(direct.before).toBe('Before: start button pressed.');
    pump('-');
    pump('-;start');
    expect(diagram({ plan: planFor('rinse-pump') }, job)).toEqual(direct);
  });

  it('shows its histories in the truth table, each as one choice', () => {
    const { history } = truthTable({}, jobOn('rinse-pump', { on: '-;start;-' }));
    const held = history.find(({ choose }) => choose === 'on:-;start;-');
    expect(held).toMatchObject({ is: 'now', steps: 'Start button pressed, start button released', is_M1: 'on' });
  });
});

describe('the meter', () => {
  it('reads what calc says between the probes, and round a wire', () => {
    const job = jobOn('cargo-work-light', { on: 'master,side', red: 'L1.+', black: CHASSIS, clamp: 'W2' });
    const { proof } = job.study!;
    const { charging } = proof.states.find(({ inputs }) => inputs['master'] && inputs['side'] && !inputs['rear'])!;
    const view = meter({}, job);
    expect(view.volts).toBe(charging.nodeV[proof.origin.nodeOf['L1.+']!]!.toFixed(2));
    expect(view.clamped).toBe(`Clamp round W2: ${say(charging.currentA['W2']!, 'current', job.units)}.`);
    expect(view.toFind).toBe(false);
  });
});

describe('finding a hidden fault', () => {
  const hidden = 'open:W3';
  const chosen = { hidden, on: 'master,side' };
  const find = (more: Record<string, string>) => faultFinding({}, jobOn('cargo-work-light', { ...chosen, ...more }));

  it('tells nothing that eyes could not see', () => {
    const view = diagram({ plan: planFor('cargo-work-light') }, jobOn('cargo-work-light', chosen));
    for (const [field, text] of textsOf(view)) {
      expect(text, field).not.toMatch(/\blive\b|\bfault\b(?! is in it)|W3 broken|\d V$/);
    }
    expect(view.rows).toEqual([]);
    expect(view.state).toMatch(/every load off/);
    expect(find({}).verdict).toBe('');
  });

  it('is right with the fault itself and says what else the readings leave', () => {
    const notes = 'master+side~S1~0,master+side~K1.30~0';
    const view = find({ guess: hidden, notes });
    expect(view).toMatchObject({ flag: 'pass', verdict: 'Right: W3 broken.' });
    expect(view.notes.map(({ value }) => value)).toEqual([
      expect.stringMatching(/^14\.\d+\u00a0V$/),
      expect.any(String),
    ]);
    expect(view.alike).toMatch(/no other single fault|would be the same with/);
  });

  it('refuses a wrong name with the reading that speaks against it', () => {
    const view = find({ guess: 'open:F1', notes: 'master+side~F1.2~0' });
    expect(view).toMatchObject({ flag: 'stop', verdict: 'Not this: F1 blown.' });
    expect(view.why).toMatch(/^With it you would have read 0\.00.V, not 14\.\d+.V: F1 2 to the chassis/);
  });

  it('points to where two faults part when nothing was noted', () => {
    const view = find({ guess: 'open:F1' });
    expect(view.why).toMatch(/measure there\.$/);
    expect(view.alike).toMatch(/Note a reading/);
  });

  it('tells when asked to', () => {
    expect(find({ reveal: 'yes' }).verdict).toBe('It was: W3 broken.');
  });
});

describe('findings', () => {
  it('show who accepted a stop, when and why', () => {
    const job = jobOn('cargo-work-light');
    const finding: Finding = {
      rule: 'source-unfused',
      severity: 'stop',
      parts: ['W1'],
      states: [],
      message: 'W1 is not fused.',
      why: 'It may burn.',
      cure: 'Fuse it.',
      signedOff: {
        rule: 'source-unfused',
        parts: ['W1'],
        by: 'R. Moss',
        on: '2025-03-04',
        reason: 'Trial board on the bench only',
      } as never,
    };
    const study = { ...studyFrom(job.study!.proof), findings: [finding] };
    const view = findings({}, { ...job, study });
    expect(view).toMatchObject({ flag: 'warn', flagText: '1 to read' });
    expect(view.rows[0]).toMatchObject({ signed: 'Accepted by R. Moss on 2025-03-04: Trial board on the bench only' });
    const open = findings(
      {},
      { ...job, study: { ...study, findings: [{ ...finding, signedOff: undefined } as never] } },
    );
    expect(open).toMatchObject({ flag: 'stop', flagText: '1 to cure' });
  });
});

describe('the drawing in words', () => {
  it('says of the cargo lights what a fitter would', () => {
    const view = diagram({ plan: planFor('cargo-work-light') }, jobOn('cargo-work-light', { on: 'master,side' }));
    const words = view.rows.map(({ id, says, amps, volts }) => `${id}: ${says} | ${amps} | ${volts}`).join('\n');
    expect(`${view.state}\n${words}`.replaceAll('\u00a0', ' ')).toMatchInlineSnapshot(`
      "Master switch on, side door open: every load on.
      L1: on, 14.19 V | 0.423 A | plus 14.22 V, minus 0.01 V
      L2: on, 14.19 V | 0.423 A | plus 14.22 V, minus 0.01 V
      L3: on, 14.16 V | 0.424 A | plus 14.18 V, minus 0.01 V
      L4: on, 14.16 V | 0.424 A | plus 14.18 V, minus 0.01 V
      K1: energised, 30 joined to 87 | coil 0.151 A, 30–87 1.69 A | 85 0.71 V, 86 14.27 V, 30 14.28 V, 87 14.27 V
      SW1: closed | 0.151 A | 14.27 V
      SIDE: closed | 0.151 A | 0.00 V
      REAR: open | none | 0.01 V
      F1: whole, 5 A | 1.84 A | 1 14.36 V, 2 14.33 V
      D1: passes | 0.151 A | A 0.71 V, K 0.01 V
      D2: blocks | none | A 0.71 V, K 0.01 V
      BAT: delivers | 1.84 A | plus 14.36 V, minus 0.00 V
      S1: joined |  | 14.28 V
      S2: joined |  | 0.71 V
      S3: joined |  | 14.22 V
      S4: joined |  | 14.18 V
      S5: joined |  | 0.01 V
      S6: joined |  | 0.01 V
      G1: joined to the body |  | 0.00 V
      G2: joined to the body |  | 0.00 V
      W1: 2.5 mm², 0.15 m | 1.84 A | 14.36 V
      W2: 2.5 mm², 3 m | 1.84 A | 14.33 V to 14.28 V
      W3: 2.5 mm², 0.1 m | 1.69 A | 14.28 V
      W4: 0.75 mm², 1.2 m | 0.151 A | 14.28 V to 14.27 V
      W5: 0.75 mm², 1.2 m | 0.151 A | 14.27 V
      W6: 0.75 mm², 0.15 m | 0.151 A | 0.71 V
      W7: 0.75 mm², 2.4 m | 0.151 A | 0.01 V to 0.00 V
      W8: 0.75 mm², 5.5 m | none | 0.01 V
      W9: 2.5 mm², 3.5 m | 1.69 A | 14.27 V to 14.22 V
      W10: 1 mm², 1.8 m | 0.847 A | 14.22 V to 14.18 V
      W11: 0.75 mm², 0.4 m | 0.845 A | 0.01 V to 0.00 V
      W12: 1 mm², 0.4 m | 0.847 A | 0.01 V to 0.00 V"
    `);
  });
});
