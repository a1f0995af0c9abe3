import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type PrepPlan, prepPlan } from '../../../calc/index.ts';
import { surfaces } from './surfaces.ts';

/** A plan as a fitter reads it: one line a step, then what carries it, then the cautions by name. */
function readable(plan: PrepPlan): string {
  const steps = plan.steps.map((step, i) => {
    const more = [step.quantity, step.waitText].filter((text) => text !== undefined);
    return [`${i + 1}. ${step.id}: ${step.do}`, ...more.map((text) => `   ${text}`)].join('\n');
  });
  const load =
    plan.loadAfterH === null ? 'no tape' : `load after ${plan.loadAfterH} h, full at ${plan.fullStrengthH} h`;
  return [
    ...steps,
    `fixing: ${plan.fixing}`,
    ...plan.fixingReasons.map((reason) => `  ${reason}`),
    `verdict: ${plan.verdict}; ${load}`,
    ...plan.cautions.map(({ severity, id }) => `${severity}: ${id}`),
  ].join('\n');
}

describe('step list of every surface: acrylic foam, light soil, on the flat of a wall', () => {
  it.each(surfaces.map((facts) => [facts.id, facts] as const))('%s', async (id, facts) => {
    const inside = prepPlan({ surface: facts, tape: 'acrylic-foam', place: 'load space', surfaceC: 21 });
    const coldOutside = prepPlan({ surface: facts, tape: 'acrylic-foam', place: 'outside', surfaceC: 8 });
    const text = [
      `${facts.name} (${facts.energyClass} energy)`,
      '',
      '== in the load space at 21 °C',
      readable(inside),
      '',
      '== outside at 8 °C',
      readable(coldOutside),
      '',
    ].join('\n');
    await expect(text).toMatchFileSnapshot(join('golden', `${id}.txt`));
  });

  it('covers thirty surfaces or more', () => {
    expect(surfaces.length).toBeGreaterThanOrEqual(30);
  });
});
