import { lineState } from '../../../components/job/gate.ts';
import { guideOf, headOf, type Job, lastTouched, standing, valuesOf } from '../../../components/job/model.ts';

/** A job in one line, as lists show it. */
export interface Summary {
  id: string;
  vehicle: string;
  number: string;
  guide: string;
  /** Share of the line that is inked, 0 to 1. */
  share: number;
  /** The line is open at a hold point there. */
  open: boolean;
  flag: 'pass' | 'stop' | '';
  says: string;
  finished: boolean;
  touched: number;
}

export function summaryOf(job: Job): Summary {
  const { line } = guideOf(job);
  const state = lineState({ line, job, values: valuesOf(job) });
  const { number, vehicle } = headOf(job);
  const finished = standing(job.closed, 'job') === true;
  let passed = 0;
  for (const stop of line) {
    const done = stop.kind === 'step' ? state.done.has(stop.id) : state.holds.get(stop.id)?.closed;
    if (!done) break;
    passed++;
  }
  const hold = line.find((stop) => stop.kind === 'hold' && stop.id === state.openHold?.id);
  const open = state.next === undefined && hold !== undefined;
  const at = line.filter((stop) => stop.kind === 'step').findIndex((stop) => stop.id === state.next) + 1;
  const whole = state.next === undefined && hold === undefined;
  const needs = state.openHold?.moved.length
    ? 'a value moved after signing'
    : state.openHold?.missing.length
      ? `needs ${state.openHold.missing.length} ${state.openHold.missing.length === 1 ? 'check' : 'checks'}`
      : 'needs its signatures';
  return {
    id: job.id,
    vehicle,
    number,
    guide: job.guide.title,
    share: line.length === 0 ? 0 : passed / line.length,
    open,
    flag: open ? 'stop' : whole ? 'pass' : '',
    says: whole
      ? finished
        ? 'Finished'
        : 'Whole. Print the card.'
      : open && hold?.kind === 'hold'
        ? `Open at hold ${hold.point.slice(1)}, ${needs}.`
        : `Step ${at} of ${state.stepsTotal}`,
    finished,
    touched: Math.max(lastTouched(job), Date.parse(job.startedOn) || 0),
  };
}

/** The mini line of a job: inked up to where it is, an open contact at a hold point, hollow after. */
export function drawLine(svg: Element, { share, open }: Summary): void {
  const x = Math.round(4 + 392 * share);
  const part = (name: string, d: string): void => {
    const path = svg.querySelector(`[data-mini="${name}"]`);
    if (d === '') path?.removeAttribute('d');
    else path?.setAttribute('d', d);
  };
  const from = open ? Math.min(x + 30, 394) : x;
  part('edge', share < 1 ? `M${from} 13H396` : '');
  part('core', share < 1 ? `M${from} 13H394` : '');
  part('done', share > 0 ? `M4 13H${x}` : '');
  part('arm', open ? `M${x} 13 ${x + 28} 2` : '');
}

/** Fills one row made from the template. */
export function fillRow(row: ParentNode, summary: Summary, href: string): void {
  const link = row.querySelector<HTMLAnchorElement>('[data-j="link"]')!;
  link.href = href;
  row.querySelector('[data-j="name"]')!.textContent = summary.vehicle;
  row.querySelector('[data-j="guide"]')!.textContent = `${summary.guide} · job ${summary.number}`;
  row.querySelector('[data-j="says"]')!.textContent = summary.says;
  const flag = row.querySelector('[data-j="flag"]')!;
  flag.className = `flag ${summary.flag}`.trim();
  flag.querySelector('svg')!.toggleAttribute('hidden', summary.flag === '');
  flag.querySelector('use')!.setAttribute('href', `#i-${summary.flag || 'note'}`);
  drawLine(row.querySelector('.mini')!, summary);
}
