import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultsOf, type JobContext, jobOf, SHOP_DEFAULTS } from '../../components/context.ts';
import type { View } from '../../components/contract.ts';
import { model as fuseSizer } from '../../components/fuse-sizer/model.ts';
import { GALLERY_CIRCUIT, galleryCases } from '../../components/gallery.ts';
import { model as gaugeChooser } from '../../components/gauge-chooser/model.ts';
import { model as jobValue } from '../../components/job-values/model.ts';
import { loadModel } from '../../components/models.ts';
import { model as station } from '../../components/station/model.ts';
import { studyOf } from '../../components/study.ts';
import type { UnitChoice } from '../../components/units.ts';
import { model as value } from '../../components/value/model.ts';
import { resolveValue, valuePaths } from '../../components/values.ts';

const IMPERIAL: UnitChoice = { length: 'ft', wire: 'awg', temperature: 'F', torque: 'lbfin' };
const free = jobOf(undefined);

function job(values: Record<string, number> = {}, units = free.units): JobContext {
  const all = { ...defaultsOf(GALLERY_CIRCUIT), ...values };
  const study = studyOf({ circuit: GALLERY_CIRCUIT, shop: SHOP_DEFAULTS }, all);
  return { ...free, circuit: GALLERY_CIRCUIT, values: all, units, study };
}

/** Every text and number of a view and its rows. */
function leaves(view: View): (string | number | boolean)[] {
  return Object.values(view).flatMap((field) =>
    Array.isArray(field) ? (field as View[]).flatMap(leaves) : [field as string | number | boolean],
  );
}
const clean = (view: View): void => {
  for (const leaf of leaves(view)) {
    if (typeof leaf === 'number') expect(Number.isFinite(leaf)).toBe(true);
    else expect(String(leaf)).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  }
};

describe('FuseSizer', () => {
  it('says fuse, need, limit and working of the published example', () => {
    const view = fuseSizer({ currentA: 2.18, inrushA: 12, inrushMs: 5, thinnestMm2: 0.5 }, free);
    expect(view).toMatchObject({
      rating: '5',
      ratingUnit: 'A',
      ratingSpoken: 'amps',
      flag: 'pass',
      flagText: 'Fits the cable',
      say: 'The load alone would need less: the inrush decides. Below what the cable can carry.',
      need: '2.73\u00a0A',
      inrushNeed: '3.43\u00a0A',
      limit: '5\u00a0A',
      refusal: '',
      spokenName: 'Fuse',
      spokenValue: '5 amps',
    });
    expect(view.marks.filter(({ kind }) => kind === 'pick').map(({ label }) => label)).toEqual(['5']);
    expect(view.ratings.find(({ size }) => size === '7.5\u00a0A')).toMatchObject({ word: 'too large', kind: 'no' });
  });

  it('refuses as plainly as it answers: why, and what would change it', () => {
    const view = fuseSizer({ currentA: 2.18, inrushA: 20, inrushMs: 5, thinnestMm2: 0.5 }, free);
    expect(view).toMatchObject({ rating: '', flag: 'stop', refusal: 'No fuse does both', result: 'no size does both' });
    expect(view.reasons).toEqual([
      { text: 'The inrush needs a 7.5 A fuse, but the 0.5\u00a0mm² wire may stand behind 5 A at most.' },
    ]);
    expect(view.change.length).toBeGreaterThan(0);
    expect(view.marks.filter(({ kind }) => kind === 'pick')).toEqual([]);
  });

  it('judges a rating that the circuit names', () => {
    expect(fuseSizer({ of: 'F2' }, job())).toMatchObject({
      rating: '30',
      flag: 'stop',
      flagText: 'Too large for the cable',
    });
  });

  it('never picks more than the thinnest wire stands, nor less than the load needs', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 150, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.constantFrom(...SHOP_DEFAULTS.stockedWiresMm2),
        (currentA, inrushA, thinnestMm2) => {
          const view = fuseSizer({ currentA, inrushA, inrushMs: 20, thinnestMm2 }, free);
          clean(view);
          if (view.rating === '') return;
          expect(Number(view.rating)).toBeGreaterThanOrEqual(currentA / 0.8 - 1e-9);
          const pick = view.ratings.find(({ kind }) => kind === 'pick');
          expect(pick?.word).toBe('chosen');
        },
      ),
    );
  });
});

describe('GaugeChooser', () => {
  it('says size, drop and working of the published example', () => {
    const view = gaugeChooser({ currentA: 2.18, lengthM: 8, fuseA: 5, jointOhm: 0.01 }, free);
    expect(view).toMatchObject({
      size: '1.5',
      sizeUnit: 'mm²',
      drop: '0.29',
      share: '2.42',
      limit: '3',
      flag: 'pass',
      say: 'The drop decides. 1\u00a0mm² loses too much.',
    });
    expect(view.rows.map(({ size, kind }) => `${size} ${kind}`)).toEqual([
      '0.5 no',
      '0.75 no',
      '1 no',
      '1.5 pick',
      '2.5 ok',
      '4 ok',
      '6 ok',
    ]);
  });

  it('names what decides: the current, or the fuse', () => {
    expect(gaugeChooser({ currentA: 5, lengthM: 1, fuseA: 30 }, free).say).toMatch(/^The 30\u00a0A fuse decides\./);
    const hot = gaugeChooser({ currentA: 18, lengthM: 0.5, ambientC: 70, bundled: 6 }, free);
    expect(hot.say).toMatch(/^The current decides\./);
  });

  it('refuses where no size on the list serves', () => {
    const view = gaugeChooser({ currentA: 110, lengthM: 60 }, free);
    expect(view).toMatchObject({ size: '', flag: 'stop', refusal: 'No size on the list serves', hasSum: false });
    expect(view.reasons.length).toBeGreaterThan(0);
    expect(view.change.length).toBeGreaterThan(0);
  });

  it('shows longer bars for thinner wires, the pick never past the limit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 60, noNaN: true }),
        fc.double({ min: 0.1, max: 40, noNaN: true }),
        (currentA, lengthM) => {
          const view = gaugeChooser({ currentA, lengthM }, free);
          clean(view);
          const widths = view.rows.map(({ barW }) => Number.parseFloat(barW));
          expect([...widths].sort((a, b) => b - a)).toEqual(widths);
          const pick = view.rows.find(({ kind }) => kind === 'pick');
          if (pick) expect(Number.parseFloat(pick.barW)).toBeLessThanOrEqual(Number.parseFloat(pick.limitX));
        },
      ),
    );
  });
});

describe('Value, Station, JobValue', () => {
  it('shows a job value as set, a figure as worked out, an unknown with its reason', () => {
    expect(value({ of: 'feedRunM' }, job())).toMatchObject({
      value: '4.0',
      valueUnit: 'm',
      kind: 'set',
      set: 'feedRunM',
    });
    expect(value({ of: 'W2.lengthM' }, job({ feedRunM: 7 }))).toMatchObject({
      value: '7.0',
      kind: 'set',
      set: 'feedRunM',
    });
    expect(value({ of: 'F1.ratingA' }, job())).toMatchObject({ value: '5', valueUnit: 'A', kind: 'calc', set: '' });
    expect(value({ of: 'F1.currentA' }, { ...job(), study: null })).toMatchObject({ value: 'not known', kind: 'unk' });
  });

  it('throws on a path that nobody defines', () => {
    expect(() => value({ of: 'F9.ratingA' }, job())).toThrow('value "F9.ratingA": the circuit has no such number');
    expect(() => value({ of: 'F1.ratingA' }, free)).toThrow('this page has no circuit');
  });

  it('resolves every path it offers, in both unit systems', () => {
    for (const path of valuePaths(GALLERY_CIRCUIT)) {
      for (const units of [free.units, IMPERIAL]) {
        const resolved = resolveValue(path, job({}, units));
        expect(resolved.value, path).not.toBeNull();
        expect(resolved.label, path).toMatch(/\S/);
        clean(value({ of: path }, job({}, units)));
      }
    }
  });

  it("prints size and length of the station's wire on its sleeve", () => {
    expect(station({ id: 'cable', title: 'Cable', wire: 'W2' }, job())).toEqual({
      width: '1.5',
      sleeve: '1.5\u00a0mm² · 4.0\u00a0m',
    });
    expect(station({ id: 'doors', title: 'Doors' }, job())).toEqual({ width: '', sleeve: '' });
  });

  it('marks a changed job value and keeps its default in sight', () => {
    expect(jobValue({ name: 'feedRunM' }, job())).toMatchObject({
      changed: false,
      default: '4.0\u00a0m',
      range: '0.5 to 40.0\u00a0m',
    });
    expect(jobValue({ name: 'feedRunM' }, job({ feedRunM: 12.5 }))).toMatchObject({ value: '12.5', changed: true });
    expect(jobValue({ name: 'airC' }, job({}, IMPERIAL))).toMatchObject({ value: '86', valueUnit: '°F' });
  });
});

describe('every state of the gallery', () => {
  it.each(
    galleryCases()
      .filter((each) => each.job !== undefined)
      .map((each) => [each.id, each] as const),
  )('%s says words and numbers and nothing else', async (_id, each) => {
    const name =
      each.component === 'Calculator'
        ? `Calculator/${each.props['id']}`
        : each.component === 'JobValueRow'
          ? 'JobValue'
          : each.component;
    const module = await loadModel(name);
    expect(module).toBeDefined();
    clean((module!.model as (props: unknown, job: JobContext) => View)(each.props, each.job!));
  });

  it('holds values of job all over their ranges', { timeout: 60_000 }, () => {
    const { feedRunM, airC, restingV } = GALLERY_CIRCUIT.values;
    const within = (spec: typeof feedRunM) => fc.double({ min: spec!.min, max: spec!.max, noNaN: true });
    fc.assert(
      fc.property(within(feedRunM), within(airC), within(restingV), (feed, air, resting) => {
        const context = job({ feedRunM: feed, airC: air, restingV: resting });
        for (const view of [
          fuseSizer({ of: 'F1' }, context),
          gaugeChooser({ of: 'W2' }, context),
          gaugeChooser({ of: 'W4' }, context),
        ])
          clean(view);
        for (const path of valuePaths(GALLERY_CIRCUIT)) clean(value({ of: path }, context));
      }),
      { numRuns: 40 },
    );
  });
});
