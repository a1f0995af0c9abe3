import { DWELL_POINTS, LONG_WAIT_MIN, type PrepPlan, type PrepStepId, prepTimes } from '../../calc/index.ts';
import type { View } from '../contract.ts';

/** Each step in a word or two, for a chart. */
export const STEP_WORDS: Record<PrepStepId, string> = {
  warm: 'Warm',
  cool: 'Cool',
  inspect: 'Look',
  'wait-paint': 'Paint cures',
  'spot-test': 'Hidden spot',
  'remove-coating': 'Strip coating',
  'soap-water': 'Wash',
  degrease: 'Degrease',
  'ipa-wipe': 'Wipe',
  abrade: 'Scuff',
  'ipa-wipe-2': 'Wipe again',
  seal: 'Seal',
  dry: 'Dry',
  'ipa-wipe-sealed': 'Wipe seal',
  'water-break': 'Water film',
  'prime-silane': 'Prime',
  'prime-cpo': 'Prime',
  'prime-universal': 'Prime',
  'prime-self-etch': 'Prime',
  'flash-off': 'Flash off',
  'test-patch': 'Test patch',
  apply: 'Lay',
  press: 'Press',
  dwell: 'Bond builds',
  'mechanical-fix': 'Fix',
};

/** Length on the chart of a wait that has no figure [min]. */
const UNKNOWN_MIN = 5;

/** Minutes, hours or days, as one would say them. */
export function timeWords(minutes: number): string {
  if (minutes < 120) return `${Math.round(minutes)} min`;
  const hours = minutes / 60;
  return hours < 100 ? `${+hours.toFixed(1)} h` : `${+(hours / 24).toFixed(1)} days`;
}

/**
 * The time chart: a row a step, solid where one's hands are busy, hatched where one waits, dashed where only a label knows
 * how long. Waits of an hour and more would push all else into one stroke: they get the whole width and a break.
 */
export function chartOf(plan: PrepPlan) {
  const times = prepTimes({ steps: plan.steps.map(({ id }) => id), loadAfterH: plan.loadAfterH ?? 0 });
  const short = (wait: number | null): number => (wait === null ? UNKNOWN_MIN : wait < LONG_WAIT_MIN ? wait : 0);
  const total = times.rows.reduce((sum, { handsMin, waitMin }) => sum + handsMin + short(waitMin), 0);
  const percent = (minutes: number): string => `${((100 * minutes) / Math.max(total, 1)).toFixed(2)}%`;
  let at = 0;
  const chart = times.rows
    .filter(({ handsMin, waitMin }) => handsMin > 0 || waitMin !== 0)
    .map(({ id, handsMin, waitMin, until }): View => {
      const long = waitMin !== null && waitMin >= LONG_WAIT_MIN;
      const start = at;
      at += handsMin + short(waitMin);
      const wait = waitMin === null ? (until ?? '') : waitMin === 0 ? '' : timeWords(waitMin);
      return {
        label: STEP_WORDS[id],
        handsX: percent(start),
        handsW: percent(handsMin),
        waitX: long ? '0%' : percent(start + handsMin),
        waitW: long ? '100%' : percent(short(waitMin)),
        waitDash: waitMin === null ? '4 3' : '',
        waitFill: waitMin === null ? 'none' : 'url(#hatch)',
        cut: long ? 'M48 2l6 8-6 8 6 8M56 2l6 8-6 8 6 8' : '',
        amount: [
          ...(handsMin > 0 ? [timeWords(handsMin)] : []),
          ...(wait === '' ? [] : [handsMin > 0 ? `+ ${wait}` : wait]),
        ].join(' '),
        spoken: [
          ...(handsMin > 0 ? [`${timeWords(handsMin)} of work`] : []),
          ...(wait === '' ? [] : [`wait ${wait}`]),
        ].join(', '),
      };
    });
  return { times, chart };
}

const GROWTH = { left: 34, right: 330, top: 14, foot: 96 } as const;
const FIRST_MIN = DWELL_POINTS[0]!.timeMin;
const LAST_MIN = DWELL_POINTS.at(-1)!.timeMin;

/** Where a time and a share of the bond stand on the chart of growth. */
const growthX = (minutes: number): number =>
  +(
    GROWTH.left +
    ((GROWTH.right - GROWTH.left) * Math.log(minutes / FIRST_MIN)) / Math.log(LAST_MIN / FIRST_MIN)
  ).toFixed(1);
const growthY = (fraction: number): number => +(GROWTH.foot - (GROWTH.foot - GROWTH.top) * fraction).toFixed(1);

/** How the bond grows, on the logarithm of time: the published points, a straight line between them, and the time to load. */
export function growthOf(loadAfterH: number | null) {
  const at = growthX(Math.min(LAST_MIN, Math.max(FIRST_MIN, (loadAfterH ?? 0) * 60)));
  return {
    growth: DWELL_POINTS.map(
      ({ timeMin, fraction }, i) => `${i === 0 ? 'M' : 'L'}${growthX(timeMin)} ${growthY(fraction)}`,
    ).join(''),
    growthMarks: DWELL_POINTS.map(
      ({ timeMin, fraction, read }, i): View => ({
        x: growthX(timeMin),
        y: growthY(fraction),
        time: timeWords(timeMin),
        share: `${Math.round(fraction * 100)} %`,
        // a recalled figure is drawn hollow
        fill: read === 'seen' ? 'var(--ink)' : 'var(--leaf)',
        anchor: i === 0 ? 'start' : 'end',
        shareX: growthX(timeMin) + (i === 0 ? 9 : -9),
        shareY: growthY(fraction) + (i === 0 ? 14 : -4),
      }),
    ),
    loadLine: `M${at} ${GROWTH.top - 8}V${GROWTH.foot}`,
    growthText:
      loadAfterH === null
        ? ''
        : `Share of the bond over time near 21 °C, time on a logarithmic scale: ${DWELL_POINTS.map(({ timeMin, fraction }) => `${Math.round(fraction * 100)} % at ${timeWords(timeMin)}`).join(', ')}. Load it after ${timeWords(loadAfterH * 60)}.`,
  };
}
