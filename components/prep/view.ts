import type { PrepPlan } from '../../calc/index.ts';
import type { State, View } from '../contract.ts';
import { timeWords } from './chart.ts';

/** What each way of fixing is called on the page, and how it reads. */
const FIXING: Record<PrepPlan['fixing'], { flag: State; flagText: string }> = {
  'tape may carry': { flag: 'pass', flagText: 'Tape may carry it' },
  'tape plus fixing': { flag: 'warn', flagText: 'Tape and a fixing' },
  'fixing only': { flag: 'warn', flagText: 'Fixings, no load on tape' },
  'fix mechanically': { flag: 'stop', flagText: 'Do not tape' },
};

/** Fields of a preparation: steps, cautions, what carries, when it may be loaded. */
export function planFields(plan: PrepPlan) {
  const { flag, flagText } = FIXING[plan.fixing];
  const says = (id: string): boolean => plan.cautions.some((caution) => caution.id === id);
  return {
    // worse of the two: a surface that is too cold stops a tape that would hold
    flag:
      plan.verdict === 'stop'
        ? ('stop' as const)
        : plan.verdict === 'warn' && flag === 'pass'
          ? ('warn' as const)
          : flag,
    // the temperature first: the best tape does not go on a cold panel
    flagText: says('cold') ? 'Too cold for tape: warm it' : says('hot') ? 'Too hot for tape: let it cool' : flagText,
    load: plan.loadAfterH === null ? '' : `Load it after ${timeWords(plan.loadAfterH * 60)}.`,
    full: plan.fullStrengthH === null ? '' : `Full strength after ${timeWords(plan.fullStrengthH * 60)}.`,
    reasons: plan.fixingReasons.map((text): View => ({ text })),
    cautions: plan.cautions.map(({ text, severity }): View => ({ text, is: severity, icon: `#i-${severity}` })),
    steps: plan.steps.map(
      (step): View => ({
        do: step.do,
        quantity: step.quantity ?? '',
        wait: step.waitText ?? (step.waitS ? `${timeWords(step.waitS / 60)}.` : ''),
        why: step.why,
        wear: step.wear ?? '',
        dont: step.dont ?? '',
      }),
    ),
    source: [
      ...new Set(plan.sources.map(({ source, read }) => (read === 'memory' ? `${source}, from memory` : source))),
    ].join('; '),
  };
}
