import { describe, expect, it } from 'vitest';
import {
  energyClass,
  prepPlan,
  type SearchableSurface,
  surfacesBySigns,
  surfacesByWords,
} from '../../../calc/index.ts';
import { knownSurfaces } from '../../../site/conformance/materials/surfaces.ts';
import { surfaceSchema } from '../../../site/schemas/surface.ts';
import { surface } from './surfaces.ts';

const known = knownSurfaces();
const searchable: SearchableSurface[] = known.map(({ facts, data }) => ({ id: facts.id, ...data }));

describe('finding a surface', () => {
  it.each([
    ['bumper', 'pp'],
    ['led strip jacket', 'silicone'],
    ['caravan window', 'pmma'],
    ['headlamp lens', 'polycarbonate'],
    ['plywood', 'wood'],
    ['motorhome body', 'grp-gelcoat'],
    ['door seal', 'epdm'],
    ['roof rack', 'powder-coat'],
    ['windscreen', 'glass'],
    ['vehicle wrap', 'wrap-film'],
    ['not listed', 'unlisted'],
  ])('"%s" finds %s first', (query, id) => {
    expect(surfacesByWords({ query, surfaces: searchable })[0]).toBe(id);
  });

  it('every surface is found by each of its own words', () => {
    const lost = known.flatMap(({ facts, data }) =>
      data.words.filter((query) => !surfacesByWords({ query, surfaces: searchable }).includes(facts.id)),
    );
    expect(lost).toEqual([]);
  });

  it('words that fit nothing find nothing; no words find all', () => {
    expect(surfacesByWords({ query: 'xylophone', surfaces: searchable })).toEqual([]);
    expect(surfacesByWords({ query: ' ', surfaces: searchable })).toHaveLength(searchable.length);
  });

  it('a waxy plastic that floats and takes a fingernail mark is polyethylene or polypropylene', () => {
    const found = surfacesBySigns({
      signs: { magnet: 'does not hold', water: 'beads', fingernail: 'marks', float: 'floats' },
      surfaces: searchable,
    });
    expect(found.slice(0, 2).map(({ id }) => id)).toEqual(['pe', 'pp']);
  });

  it('a magnet rules out aluminium, copper and glass, never the surface nobody listed', () => {
    const ids = surfacesBySigns({ signs: { magnet: 'holds' }, surfaces: searchable }).map(({ id }) => id);
    for (const out of ['bare-aluminium', 'copper-brass', 'glass', 'pp']) expect(ids).not.toContain(out);
    expect(ids).toContain('unlisted');
    expect(ids[0]).toMatch(/steel/);
  });

  it('refuses a word no test can say', () => {
    expect(() => surfacesBySigns({ signs: { magnet: 'maybe' as never }, surfaces: searchable })).toThrow(
      /unexpected magnet "maybe", expected one of holds, does not hold/,
    );
  });
});

describe('what the files say', () => {
  it('a class agrees with its figures, or with one of them where they lie on both sides of a border', () => {
    const odd = known
      .filter(({ data }) => data.energy !== null)
      .filter(({ data }) => {
        const classes = [data.energy!.minMnPerM, data.energy!.maxMnPerM].map((surfaceEnergyMnPerM) =>
          energyClass({ surfaceEnergyMnPerM }),
        );
        return !classes.includes(data.energyClass);
      })
      .map(({ facts }) => facts.id);
    expect(odd).toEqual([]);
  });

  it('no word of a surface, its steps or its cautions is left empty, and cautions have ids of their own', () => {
    for (const { data } of known) {
      const ids = data.cautions.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  const good = known.find(({ facts }) => facts.id === 'pmma')!.data;

  it('a file whose own steps put on what it lists as harmful is refused, with the reason', () => {
    const wrong = surfaceSchema.safeParse({ ...good, procedure: ['ipa-wipe'] });
    expect(wrong.error?.issues).toEqual([
      expect.objectContaining({
        path: ['procedure', 0],
        message: expect.stringMatching(/alcohol.*harmful.*cracks it/),
      }),
    ]);
    const primer = { kind: 'universal', use: 'always', why: 'x' };
    expect(surfaceSchema.safeParse({ ...good, primer }).error?.issues[0]?.path).toEqual(['primer', 'kind']);
  });

  it('unknown fields, solvents and steps are refused', () => {
    expect(surfaceSchema.safeParse({ ...good, brand: 'x' }).success).toBe(false);
    expect(surfaceSchema.safeParse({ ...good, harmful: [{ solvent: 'petrol', why: 'x' }] }).success).toBe(false);
    expect(surfaceSchema.safeParse({ ...good, procedure: ['apply'] }).success).toBe(false);
  });
});

describe('what hangs on it', () => {
  const paint = surface('clear-coat');

  it('area is worked out from mass, position and surface, and too little of it rules tape out', () => {
    const o = { surface: paint, place: 'load space', massKg: 0.42, widthMm: 9, position: 'overhead' } as const;
    const enough = prepPlan({ ...o, lengthM: 2.1 });
    expect(enough.need).toMatchObject({ haveCm2: expect.closeTo(189, 9), neededCm2: expect.closeTo(37.8, 9) });
    expect(enough.need.neededLengthMm).toBeCloseTo(420, 6);
    expect(enough.fixing).toBe('tape plus fixing');
    const little = prepPlan({ ...o, lengthM: 0.4 });
    expect(little.fixing).toBe('fixing only');
    expect(little.fixingReasons[0]).toMatch(/36.0 cm², needed 37.8 cm²/);
  });

  it('over 5 kg no tape, over 500 g a back-up, people nearby a back-up', () => {
    const at = (massKg: number, nearPeople = false) =>
      prepPlan({ surface: paint, place: 'load space', massKg, nearPeople }).fixing;
    expect([0.5, 0.501, 5, 5.01].map((mass) => at(mass))).toEqual([
      'tape may carry',
      'tape plus fixing',
      'tape plus fixing',
      'fixing only',
    ]);
    expect(at(0.1, true)).toBe('tape plus fixing');
  });

  it('loads after a day where it is light and warm, after three where it is not', () => {
    const at = (o: object) => prepPlan({ surface: paint, place: 'load space', ...o }).loadAfterH;
    expect(at({ surfaceC: 21 })).toBe(24);
    expect(at({ surfaceC: 16 })).toBe(72);
    expect(at({ position: 'overhead' })).toBe(72);
    expect(prepPlan({ surface: surface('carpet') }).loadAfterH).toBeNull();
  });

  it('tape made for low energy needs no promoter on polypropylene, unless a trial was weak', () => {
    const ids = (o: object) => prepPlan({ surface: surface('pp'), ...o }).steps.map(({ id }) => id as string);
    expect(ids({})).toContain('prime-cpo');
    expect(ids({ tape: 'low-energy-acrylic' })).not.toContain('prime-cpo');
    expect(ids({ tape: 'low-energy-acrylic', weakTrial: true })).toContain('prime-cpo');
  });

  it('silicone tape holds on silicone, with a back-up', () => {
    const plan = prepPlan({ surface: surface('silicone'), tape: 'silicone', place: 'load space' });
    expect(plan.fixing).toBe('tape plus fixing');
    expect(plan.steps.map(({ id }) => id)).toContain('apply');
  });

  it('a long profile on steel is told how far it grows', () => {
    const plan = prepPlan({ surface: paint, place: 'load space', lengthM: 2.1 });
    expect(plan.cautions.find(({ id }) => id === 'growth')?.text).toMatch(/1\.4 mm apart over 60 K/);
    expect(prepPlan({ surface: paint, lengthM: 0.2 }).cautions.map(({ id }) => id)).not.toContain('growth');
  });

  it('refuses words and numbers it does not know', () => {
    expect(() => prepPlan({ surface: paint, tape: 'duct' })).toThrow(
      /unexpected tape "duct", expected one of acrylic-foam/,
    );
    expect(() => prepPlan({ surface: paint, place: 'moon' })).toThrow(/unexpected place "moon"/);
    expect(() => prepPlan({ surface: paint, surfaceC: 91 })).toThrow(/expected -40 to 90/);
    expect(() => prepPlan({ surface: paint, soil: 'mud' as never })).toThrow(/unexpected soil "mud"/);
    expect(() => prepPlan({ surface: paint, massKg: Number.NaN })).toThrow(TypeError);
  });
});
