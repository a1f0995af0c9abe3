import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as calc from '../../calc/index.ts';
import { inputOf, toolsOf } from '../../components/calculators/form.ts';
import { allCalculators, CALCULATOR_IDS } from '../../components/calculators/list.ts';
import { calculatorModule, defaultsOf } from '../../components/calculators/model.ts';
import { segmentsOf } from '../../components/calculators/wire-fuse-check.ts';
import { jobOf } from '../../components/context.ts';
import type { LocalField } from '../../components/contract.ts';
import { faultsOf } from '../../components/faults.ts';
import { snapped } from '../../components/range.ts';
import { parseTyped } from '../../components/typed.ts';
import { nameOf, ruleOf, type UnitChoice, unitOf } from '../../components/units.ts';

const job = jobOf(undefined);
const tools = toolsOf(job.shop, job.units);
const calculators = await allCalculators();

/** Half of the last digit printed: how far a figure may lie from its print. */
const within = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0) + 1e-9;

const entry = (field: LocalField): fc.Arbitrary<number | string> => {
  if (field.options !== undefined) {
    const values = field.options.map(({ value }) => (typeof field.default === 'number' ? Number(value) : value));
    return fc.constantFrom(...values);
  }
  if (typeof field.default === 'string') return fc.constant(field.default);
  if (field.kind === 'count') return fc.integer({ min: field.min!, max: field.max! });
  return fc.oneof(
    fc.double({ min: field.min!, max: field.max!, noNaN: true }),
    fc.constantFrom(field.min!, field.max!),
  );
};

describe('the list', () => {
  it('holds each calculator under its own id, with its own number', () => {
    expect(calculators.map(({ id }) => id)).toEqual(CALCULATOR_IDS);
    expect(new Set(calculators.map(({ number }) => number)).size).toBe(calculators.length);
  });
});

describe.each(calculators.map((each) => [each.id, each] as const))('%s', (_id, calculator) => {
  const fields = calculator.fields(job.shop);
  const { model } = calculatorModule(calculator);

  it('answers its example as printed, and starts with it', () => {
    expect(defaultsOf(fields)).toEqual(calculator.example.in);
    const { outputs } = calculator.compute(inputOf(calculator.example.in), tools);
    for (const [key, printed] of Object.entries(calculator.example.out)) {
      const value = outputs.find((output) => output.key === key)?.value;
      if (typeof value === 'number')
        expect(Math.abs(value - Number(printed)), key).toBeLessThanOrEqual(within(String(printed)));
      else expect(value, key).toBe(printed);
    }
  });

  it('names what is put in, its range, and what is wrong with an entry outside it', () => {
    for (const field of fields) {
      expect(field.label, field.name).toMatch(/^\S.*\S$/);
      expect(field.error, field.name).toMatch(/^[A-Z].*\.$/s);
      if (field.options === undefined && typeof field.default === 'number') {
        expect(field.min).toBeLessThan(field.max!);
        expect(field.step).toBeGreaterThan(0);
        const outside = { ...defaultsOf(fields), [field.name]: field.max! + 1 };
        expect(faultsOf(fields, outside, job.units)[field.name]).toBe(field.error);
      }
    }
    expect(faultsOf(fields, defaultsOf(fields), job.units)).toEqual({});
  });

  it("says a range in the reader's units, with ends that may be typed", () => {
    const units: UnitChoice = { length: 'ft', wire: 'awg', temperature: 'F', torque: 'lbfin' };
    for (const field of fields) {
      const { kind, min, max } = field;
      if (min === undefined || max === undefined || unitOf(kind, units) === ruleOf(kind).base) continue;
      const outside = { ...defaultsOf(fields), [field.name]: max * 2 + 1 };
      const said = faultsOf(fields, outside, units)[field.name]!;
      const [, low, high, unit] = /must be (\S+) to (\S+)\s(\S+?)(?: and .*)?\.(?: [A-Z].*)?$/.exec(said) ?? [];
      expect(unit, said).toBe(nameOf(unitOf(kind, units)).symbol);
      for (const end of [low, high]) {
        const typed = parseTyped(end!, kind, units);
        const value = typed.ok ? snapped(typed.value, field) : Number.NaN;
        expect(value >= min && value <= max, `${said} ${end}`).toBe(true);
      }
    }
  });

  it('says where it comes from and which functions of calc do the sum', () => {
    expect(calculator.source).toMatch(/\S{3}/);
    for (const name of calculator.functions) expect(calc, name).toHaveProperty(name);
  });

  it('answers every good entry with words and numbers, in a state that its flag names', () => {
    const any = fc
      .tuple(...fields.map(entry))
      .map((values) => Object.fromEntries(fields.map((field, at) => [field.name, values[at]!])));
    fc.assert(
      fc.property(any, (local) => {
        fc.pre(Object.keys(faultsOf(fields, local, job.units)).length === 0);
        const view = model({}, { ...job, local });
        expect(['pass', 'note', 'warn', 'stop']).toContain(view.flag);
        expect(JSON.stringify(view)).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
        expect(view.flagText).toMatch(/\S/);
        if (view.flag === 'stop')
          expect(view.reasons.length + view.change.length + view.answerSay.length).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });
});

describe('wire-fuse-check rows', () => {
  it('reads rows as people write them', () => {
    expect(segmentsOf('pigtail 0.5 x 2 at 50\n\nfeed 1,5 mm² × 3 at −5 °C')).toEqual([
      { name: 'pigtail', areaMm2: 0.5, wires: 2, ambientC: 50 },
      { name: 'feed', areaMm2: 1.5, wires: 3, ambientC: -5 },
    ]);
  });

  it.each([
    ['', 'Type 1 to 40 rows.'],
    ['feed 1.5', 'wires'],
    ['feed 1.5 x 2', 'air temperature'],
    ['feed 1.3 x 2 at 50', 'size'],
    ['feed 1.5 x 41 at 50', 'wires'],
    ['feed 1.5 x 2 at 90', 'air temperature'],
    ['1.5 x 2 at 50', 'name'],
  ])('says what "%s" is missing: %s', (text, missing) => {
    expect(segmentsOf(text)).toContain(missing);
  });

  it('stops a fuse above a warm pigtail, as published', () => {
    const calculator = calculators.find(({ id }) => id === 'wire-fuse-check')!;
    const judge = (fuseA: number, segments: string) => calculator.compute(inputOf({ fuseA, segments }), tools);
    expect(judge(7.5, 'pigtail 0.5 x 2 at 50').flag).toBe('stop');
    const warm = judge(5, 'pigtail 0.5 x 2 at 70');
    expect(warm.flag).toBe('stop');
    expect(warm.outputs[1]!.value).toBeCloseTo(3.54, 2);
  });
});

describe('published second figures', () => {
  const answer = (id: string, changed: Record<string, number | string>) => {
    const calculator = calculators.find((each) => each.id === id)!;
    const { outputs, flag } = calculator.compute(inputOf({ ...calculator.example.in, ...changed }), tools);
    return { flag, ...Object.fromEntries(outputs.map(({ key, value }) => [key, value])) } as Record<
      string,
      number | string
    >;
  };

  it('takes 2.5 mm² for the same run as two wires', () => {
    const two = answer('wire-size', { returnPath: 'two-wire' });
    expect(two['sizeMm2']).toBe(2.5);
    expect(two['dropV']).toBeCloseTo(0.344, 3);
    expect(two['fuseLimitA']).toBe(20);
  });

  it('stops the fuse when 20 A of inrush would want 7.5 A on a 0.5 mm² pigtail', () => {
    expect(answer('fuse-size', { peakA: 20 })).toMatchObject({ flag: 'stop', chosenA: 'none' });
  });

  it('stops where a short on thin wire draws 3.2 times the fuse', () => {
    const thin = answer('fault-clear', { sizeMm2: 0.5, returnPath: 'two-wire' });
    expect(thin['flag']).toBe('stop');
    expect(thin['loopMohm']).toBeCloseTo(752.1, 1);
    expect(thin['timesFuse']).toBeCloseTo(3.2, 1);
  });

  it('reaches 123.2 V with a 680 Ω clamp resistor, and stops without a clamp', () => {
    expect(answer('coil-clamp', { clamp: 'resistor' })['peakV']).toBeCloseTo(123.2, 1);
    expect(answer('coil-clamp', { clamp: 'none' })).toMatchObject({
      flag: 'stop',
      peakV: 'hundreds of volts, not computed',
    });
  });
});
