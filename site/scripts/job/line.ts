import type { Stop } from '../../../components/job/gate.ts';

/** Steps and hold points of a guide's page, or of its card, in reading order. */
export function lineOf(root: ParentNode): Stop[] {
  return [...root.querySelectorAll<HTMLElement>('[data-step], [data-hold]')].map((element): Stop => {
    const { step, hold, point, title } = element.dataset;
    if (step !== undefined) return { kind: 'step', id: step };
    const checks = [...element.querySelectorAll<HTMLElement>('[data-check]')].map((check) => ({
      id: check.dataset['check']!,
      text: (check.querySelector('[data-check-text]')?.textContent ?? '').replace(/\s+/g, ' ').trim(),
      reads: check.dataset['reads'] !== undefined,
    }));
    return { kind: 'hold', id: hold!, point: point as 'H1', title: title ?? '', checks };
  });
}
