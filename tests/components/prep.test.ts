import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONG_WAIT_MIN, PLACE_IDS, PREP_STEPS, PREP_TIMES, prepTimes, SOILS, TAPE_IDS } from '../../calc/index.ts';
import { jobOf } from '../../components/context.ts';
import type { View } from '../../components/contract.ts';
import { faultsOf } from '../../components/faults.ts';
import { growthOf, timeWords } from '../../components/prep/chart.ts';
import { factsOf, inShort, type PrepSurface, UNLISTED } from '../../components/prep/facts.ts';
import { fields, model, type PrepProps } from '../../components/prep/model.ts';
import { sectionOf } from '../../components/prep/section.ts';
import { DEFAULT_UNITS } from '../../components/units.ts';
import { surfaces as known } from '../calc/materials/surfaces.ts';

const surfaces = known as unknown as PrepSurface[];
const facts = surfaces.map(factsOf);
const free = jobOf(undefined);
const one = (id: string): PrepProps => ({ surface: id, facts: facts.filter((each) => each.id === id) });
const all: PrepProps = { facts };
const view = (props: PrepProps, local: Record<string, number | string> = {}) => model(props, { ...free, local });

function leaves(each: View): (string | number | boolean)[] {
  return Object.values(each).flatMap((field) =>
    Array.isArray(field) ? (field as View[]).flatMap(leaves) : [field as string | number | boolean],
  );
}
const clean = (each: View): void => {
  for (const leaf of leaves(each)) {
    if (typeof leaf === 'number') expect(Number.isFinite(leaf)).toBe(true);
    else expect(String(leaf)).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  }
};

describe('the facts that go to a device', () => {
  it('hold all that the planner and the search read, of 30 surfaces and more', () => {
    expect(facts.length).toBeGreaterThanOrEqual(30);
    const sent = JSON.parse(JSON.stringify(facts)) as PrepSurface[];
    for (const surface of surfaces) {
      const there = sent.find(({ id }) => id === surface.id)!;
      const local = { surfaceC: 8, soil: 'wax', massG: 700 };
      const mine = { ...one(surface.id), facts: [there] };
      expect(view(mine, local)).toEqual(view({ surface: surface.id, facts: [surface] }, local));
    }
  });
});

describe('the answer', () => {
  it('is there for every surface, tape, place, soil and temperature, with words and numbers only', {
    timeout: 60_000,
  }, () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...facts),
        fc.constantFrom(...TAPE_IDS),
        fc.constantFrom(...PLACE_IDS),
        fc.constantFrom(...SOILS),
        fc.integer({ min: -20, max: 80 }),
        fc.integer({ min: 1, max: 100_000 }),
        fc.integer({ min: 10, max: 50_000 }),
        fc.constantFrom('vertical', 'overhead', 'level'),
        fc.constantFrom('yes', 'no'),
        fc.constantFrom('not done', 'weak'),
        (surface, tape, place, soil, surfaceC, massG, lengthMm, position, people, trial) => {
          const local = { tape, place, soil, surfaceC, massG, lengthMm, position, people, trial };
          const seen = view(one(surface.id), local);
          clean(seen);
          expect(seen.steps.length).toBeGreaterThan(1);
          expect(seen.chart.length).toBeGreaterThan(0);
          expect(seen.answer === '').not.toBe(seen.answerWords === '');
          const steps = seen.steps.map((step) => String(step['do'])).join(' ');
          // nothing is stuck on a cold panel unless it is warmed first
          if (seen.taped && surfaceC < 10) {
            expect(seen.flag).toBe('stop');
            expect(steps).toMatch(/^Warm the surface/);
          }
          if (seen.taped) expect(Number(seen.answer)).toBeGreaterThanOrEqual(1);
        },
      ),
      { numRuns: 600 },
    );
  });

  it('says what tape, load and cold make of a powder coated rack', () => {
    const warm = view(one('powder-coat'));
    expect(warm).toMatchObject({
      answer: '24',
      answerUnit: 'h',
      flag: 'pass',
      flagText: 'Tape may carry it',
      taped: true,
    });
    expect(warm.answerSay).toBe('after pressing, then load it. Full strength after 72 h, near 21 °C.');
    expect(warm.area).toBe(
      'Tape: 100\u00a0cm² there, 18\u00a0cm² needed for this mass, which is 90\u00a0mm of this width.',
    );
    expect(view(one('powder-coat'), { surfaceC: 8 })).toMatchObject({
      answer: '72',
      flag: 'stop',
      flagText: 'Too cold for tape: warm it',
    });
    expect(view(one('powder-coat'), { surfaceC: 60 })).toMatchObject({
      flag: 'stop',
      flagText: 'Too hot for tape: let it cool',
    });
    expect(view(one('powder-coat'), { massG: 800 })).toMatchObject({ answer: '72', flagText: 'Tape and a fixing' });
    expect(view(one('powder-coat'), { massG: 8000 })).toMatchObject({ answer: '', answerWords: 'Fix it mechanically' });
    expect(view(one('silicone'))).toMatchObject({
      answer: '',
      flag: 'stop',
      flagText: 'Do not tape',
      loadLine: 'M34 6V96',
    });
  });

  it('draws what the plan holds: primer, scuffed coat, clip', () => {
    const rack = view(one('powder-coat'));
    expect(rack.layers.map(({ word }) => word)).toEqual([
      'Acrylic foam tape',
      'Primer, one thin coat',
      'Its coat, scuffed',
      'Metal',
    ]);
    expect(rack.teeth).not.toBe('');
    expect(rack.clip).toBe('');
    expect(view(one('powder-coat'), { massG: 800 }).clipWord).toBe('Clip, bracket or screw');
    expect(view(one('silicone')).layers.map(({ word }) => word)).toEqual(['Rubber']);
    for (const id of facts.map((each) => each.id)) {
      const { layers } = view(one(id), { massG: 800 });
      const foot = Number(layers.at(-1)!['y']) + Number(layers.at(-1)!['h']);
      expect(foot, id).toBe(164);
      expect(Number(layers.at(-1)!['h']), id).toBeGreaterThan(20);
      expect(Number(layers.at(-1)!['labelY']), id).toBeLessThan(180);
    }
  });
});

describe('the time chart', () => {
  it('has a row for each step that takes time and fills the width', () => {
    const { chart } = view(one('powder-coat'));
    expect(chart.map(({ label, amount }) => `${label}: ${amount}`)).toEqual([
      'Look: 2 min',
      'Hidden spot: 2 min + 10 min',
      'Wipe: 3 min',
      'Scuff: 4 min',
      'Wipe again: 3 min',
      'Dry: 5 min',
      'Prime: 2 min',
      'Flash off: by the label',
      'Lay: 4 min',
      'Press: 2 min',
      'Bond builds: 24 h',
    ]);
    const ends = chart
      .slice(0, -1)
      .map((row) => Number.parseFloat(String(row['waitX'])) + Number.parseFloat(String(row['waitW'])));
    expect(ends).toEqual([...ends].sort((a, b) => a - b));
    expect(ends.at(-1)).toBeCloseTo(100, 1);
  });

  it('never counts a wait without a figure as nothing', () => {
    for (const id of PREP_STEPS) {
      const row = PREP_TIMES.rows[id];
      expect(row.waitMin === null).toBe(row.until !== undefined);
    }
    const times = prepTimes({ steps: ['warm', 'prime-cpo', 'flash-off', 'test-patch', 'dwell'], loadAfterH: 24 });
    expect(times).toMatchObject({
      handsMin: 9,
      shortWaitMin: 0,
      longWaitMin: 1440,
      unknown: ['until warm', 'by the label'],
    });
    expect(() => prepTimes({ steps: ['paint' as never], loadAfterH: 1 })).toThrow(/unexpected/);
    expect(LONG_WAIT_MIN).toBe(60);
  });

  it('says times as one says them', () => {
    expect([0.5, 90, 120, 1440, 4320, 7200].map(timeWords)).toEqual([
      '1 min',
      '90 min',
      '2 h',
      '24 h',
      '72 h',
      '5 days',
    ]);
  });

  it('draws the growth of the bond over the logarithm of time', () => {
    const { growth, growthMarks, loadLine } = growthOf(24);
    expect(growth).toBe('M34 55L269.5 22.2L330 14');
    expect(growthMarks.map(({ time, share }) => `${time} ${share}`)).toEqual([
      '20 min 50 %',
      '24 h 90 %',
      '72 h 100 %',
    ]);
    expect(loadLine).toBe('M269.5 6V96');
  });
});

describe('finding a surface', () => {
  it('finds it by what people call it, or by the letters moulded on its back', () => {
    const ids = (query: string) => view(all, { query }).matches.map(({ set }) => String(set).replace('surface:', ''));
    expect(ids('bumper')[0]).toBe('pp');
    expect(ids('>PP-T20<')[0]).toBe('pp');
    expect(ids('roof rack')[0]).toBe('powder-coat');
    expect(ids('zebra')).toEqual([UNLISTED]);
    expect(view(all, { query: 'zebra' }).found).toMatch(/^Nothing on the list fits/);
  });

  it('rules out what a test contradicts and always offers the careful way', () => {
    const shown = view(all, { magnet: 'holds', tap: 'rings' }).matches.map(({ name }) => name);
    expect(shown.at(-1)).toBe(facts.find(({ id }) => id === UNLISTED)!.name);
    expect(shown).not.toContain(facts.find(({ id }) => id === 'pp')!.name);
    expect(shown.length).toBeGreaterThan(1);
  });

  it('marks the chosen one, links each to its page and draws its section', () => {
    const { matches, name, href } = view({ ...all, base: '/sub/' }, { surface: 'pp', query: 'bumper' });
    expect(matches.filter(({ current }) => current === 'true').map(({ set }) => set)).toEqual(['surface:pp']);
    expect([name, href]).toEqual(['Polypropylene', '/sub/surfaces/pp/']);
    for (const surface of facts) {
      const drawn = sectionOf(surface);
      expect(drawn.lines + drawn.solid, surface.id).not.toBe('');
      expect(inShort(surface)).toMatch(/^[A-Z][a-z, ]+$/);
    }
  });

  it('has no finder where the page has its surface', () => {
    expect(view(one('abs'))).toMatchObject({ matches: [], found: '', finderFields: [], testFields: [] });
    expect(fields(one('abs')).map(({ name }) => name)).not.toContain('query');
    expect(() => view({ surface: 'moon', facts })).toThrow('PrepSelector: no surface "moon"');
  });
});

describe('entries', () => {
  it('begin with good ones and refuse what makes no sense, in words', () => {
    const list = fields(all);
    const start = Object.fromEntries(list.map((field) => [field.name, field.default]));
    expect(faultsOf(list, start, DEFAULT_UNITS)).toEqual({});
    const silly = {
      ...start,
      surfaceC: 400,
      massG: -3,
      lengthMm: 0,
      surface: 'moon',
      query: 'x'.repeat(61),
      tape: 'glue',
    };
    const faults = faultsOf(list, silly, DEFAULT_UNITS);
    expect(Object.keys(faults).sort()).toEqual(['lengthMm', 'massG', 'query', 'surface', 'surfaceC', 'tape']);
    for (const text of Object.values(faults)) expect(text).toMatch(/^[A-Z].*\.$/);
  });
});
