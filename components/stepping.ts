import { AWG_SIZES, awgAtLeast, fromUnit, type Kind, toUnit, type UnitChoice, unitOf } from './units.ts';

/** What a stepper steps: range and step in the unit inside. */
export interface Stepped {
  kind: Kind;
  min?: number | undefined;
  max?: number | undefined;
  step?: number | undefined;
}

/**
 * The next value of a stepper, inside the range. In another unit than calc's the step is a round one of that unit, near
 * the author's; wire in AWG goes from size to size.
 */
export function stepFrom(value: number, by: number, { kind, min, max, step }: Stepped, units: UnitChoice): number {
  const low = min ?? Number.NEGATIVE_INFINITY;
  const high = max ?? Number.POSITIVE_INFINITY;
  const clamp = (next: number): number => Math.min(high, Math.max(low, next));
  const unit = unitOf(kind, units);
  if (unit === 'awg') {
    const at = AWG_SIZES.indexOf(awgAtLeast(value) ?? AWG_SIZES.at(-1)!);
    const next = AWG_SIZES[Math.min(AWG_SIZES.length - 1, Math.max(0, at + by))]!;
    return clamp(fromUnit(next, kind, 'awg'));
  }
  const shown = toUnit(value, kind, unit);
  const size = stepShown({ kind, step }, units);
  // to the next mark of the scale, so that 6.23 steps to 6.3 and not to 6.33
  const marks = by > 0 ? Math.floor(shown / size + 1e-9) : Math.ceil(shown / size - 1e-9);
  return clamp(fromUnit(tidy((marks + by) * size), kind, unit));
}

/** One step in the unit shown; wire in AWG goes from size to size. */
export function stepShown({ kind, step }: Stepped, units: UnitChoice): number {
  const unit = unitOf(kind, units);
  if (unit === 'awg') return 1;
  return roundStep(Math.abs(toUnit(step ?? 1, kind, unit) - toUnit(0, kind, unit)));
}

/** The nearest of 1, 2 and 5 times a power of ten; a step that is one already stays. */
function roundStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step));
  const times = step / power;
  const nearest = [1, 2, 2.5, 5, 10].reduce((best, each) =>
    Math.abs(each - times) < Math.abs(best - times) ? each : best,
  );
  return nearest * power;
}

/** 0.1 + 0.2 without its last binary digits. */
const tidy = (value: number): number => Number(value.toPrecision(12));
