import { describe, expect, it } from 'vitest';
import {
  aimAngle,
  cableCut,
  lightLevel,
  PREP_LINES,
  prepPlan,
  prepSelect,
  TAPE_SURFACES,
  tapeHold,
} from '../../../calc/index.ts';
import { surface } from './surfaces.ts';

/** Worked examples of the workshop's own calculators, printed to the figures they print. */
describe('will the tape hold it?', () => {
  const example = { massG: 420, tapeMm: 9, runMm: 2100, position: 'overhead', surface: 'painted steel' } as const;

  it('420 g overhead on painted steel: 189.0 cm² against 37.8, margin 5.0, pass, back-up fixing', () => {
    const found = tapeHold(example);
    expect(found.haveCm2).toBe(189);
    expect(found.neededCm2).toBeCloseTo(37.8, 9);
    expect(found.marginRatio).toBeCloseTo(5, 9);
    expect(found).toMatchObject({ verdict: 'pass', backUpFixing: true });
  });

  it('the same part on a wall needs no back-up, and half a kilogram is the last that does not', () => {
    expect(tapeHold({ ...example, position: 'vertical' }).backUpFixing).toBe(false);
    expect(tapeHold({ ...example, position: 'vertical', massG: 500 }).backUpFixing).toBe(false);
    expect(tapeHold({ ...example, position: 'vertical', massG: 501 }).backUpFixing).toBe(true);
  });

  it('area just enough passes, a hair less stops', () => {
    const just = { ...example, position: 'vertical', massG: 1000, tapeMm: 10 } as const;
    expect(tapeHold({ ...just, runMm: 600 }).verdict).toBe('pass');
    expect(tapeHold({ ...just, runMm: 599 }).verdict).toBe('stop');
  });

  it('surface factors are those of the table', () => {
    expect(TAPE_SURFACES).toEqual({
      'painted steel': 1,
      'bare aluminium': 1,
      'GRP gelcoat': 1.2,
      'powder coat': 1.5,
      'polypropylene with primer': 1.5,
    });
  });

  it('refuses what it cannot answer, in words', () => {
    expect(() => tapeHold({ ...example, massG: 5001 })).toThrow(/massG 5001.*over 5 kg use fixings/);
    expect(() => tapeHold({ ...example, surface: 'carpet' as never })).toThrow(/not listed means fixings/);
    expect(() => tapeHold({ ...example, position: 'hanging' as never })).toThrow(/expected vertical or overhead/);
    expect(() => tapeHold({ ...example, tapeMm: Number.NaN })).toThrow(TypeError);
  });
});

describe('the short selector', () => {
  it('polypropylene at 12 °C inside: warm first, wipe, promoter, wait; warn, 72 h', () => {
    expect(prepSelect({ surface: 'polypropylene', surfaceC: 12, where: 'inside' })).toEqual({
      steps: [
        'warm surface and part to 15 C or more first',
        'wipe',
        'adhesion primer for low-energy plastic',
        'wait as its label says',
      ],
      primer: 'yes',
      verdict: 'warn',
      fullStrengthH: 72,
    });
  });

  it('at 15 °C nothing is warmed; outside adds the back-up fixing', () => {
    expect(prepSelect({ surface: 'stainless', surfaceC: 15, where: 'outside' })).toEqual({
      steps: ['wipe', 'fine abrasive', 'wipe', 'dry', 'back-up fixing'],
      primer: 'no',
      verdict: 'pass',
      fullStrengthH: 72,
    });
  });

  it('refuses a surface that is not in the list', () => {
    expect(() => prepSelect({ surface: 'cheese', surfaceC: 20, where: 'inside' })).toThrow(
      /unexpected surface "cheese"/,
    );
    expect(() => prepSelect({ surface: 'ABS', surfaceC: 61, where: 'inside' })).toThrow(/expected -20 to 60/);
    expect(() => prepSelect({ surface: 'ABS', surfaceC: 20, where: 'below' as never })).toThrow(/inside or outside/);
  });

  /** Which file of the content each line of the short list stands for. */
  const FILE: Readonly<Record<string, readonly string[]>> = {
    'painted steel': ['clear-coat'],
    'bare aluminium': ['bare-aluminium'],
    stainless: ['stainless-steel'],
    galvanised: ['galvanised-steel'],
    'powder coat': ['powder-coat'],
    'GRP gelcoat': ['grp-gelcoat'],
    polypropylene: ['pp'],
    ABS: ['abs'],
    plywood: ['wood'],
    glass: ['glass'],
    'rubber or soft vinyl': ['natural-rubber', 'epdm', 'vinyl-plasticised'],
    'wrap film': ['wrap-film'],
  };

  it.each(PREP_LINES.rows)('$surface: the long plan does what the short line says', (line) => {
    for (const id of FILE[line.surface]!) {
      const plan = prepPlan({ surface: surface(id), place: 'load space' });
      const ids = plan.steps.map((step) => step.id as string);
      if (line.primer === null) {
        expect(plan.fixing).not.toBe('tape may carry');
        expect(ids).toContain('mechanical-fix');
        continue;
      }
      // Sealing is the primer of raw wood.
      expect(ids.some((step) => step.startsWith('prime-') || step === 'seal')).toBe(line.primer);
      const abrades = line.steps.some((step) => /abrasive|white rust|^scuff/.test(step));
      if (abrades) expect(ids).toContain('abrade');
    }
  });
});

describe('other worked examples', () => {
  it('lamps for a load space: 5.1 m², 1913 lm, 4 lamps, 2160 lm, 169 lx', () => {
    const found = lightLevel({
      lengthM: 3,
      widthM: 1.7,
      levelLx: 150,
      useFraction: 0.5,
      keepFraction: 0.8,
      lampLm: 540,
    });
    expect(found.areaM2).toBeCloseTo(5.1, 9);
    expect(found).toMatchObject({ neededLm: 1913, lamps: 4, givenLm: 2160 });
    expect(found.levelLx).toBeCloseTo(169.4, 1);
  });

  it('lip of an LED: gap 0.25 m, 5.0 mm needed, hidden beyond 0.5 m, pass', () => {
    const found = aimAngle({ ledM: 1.85, eyeM: 1.6, nearM: 0.6, lipGapMm: 12, lipMm: 6 });
    expect(found.heightGapM).toBeCloseTo(0.25, 9);
    expect(found.lipNeededMm).toBeCloseTo(5, 9);
    expect(found.hiddenBeyondM).toBeCloseTo(0.5, 9);
    expect(found.verdict).toBe('pass');
    expect(aimAngle({ ledM: 1.85, eyeM: 1.6, nearM: 0.6, lipGapMm: 12, lipMm: 0 })).toMatchObject({
      hiddenBeyondM: null,
      verdict: 'note',
    });
  });

  it('cable: 8706 mm, bundle 7.1 mm, sleeve 8 mm', () => {
    const found = cableCut({ runM: 8, slackPercent: 5, loopMm: 150, stripMm: 3, cores: 6, coreMm: 2.4 });
    expect(found.cutMm).toBe(8706);
    expect(found.bundleMm).toBeCloseTo(7.05, 2);
    expect(found.sleeve.sleeveMm).toBe(8);
  });
});
