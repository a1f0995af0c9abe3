import { resolve } from 'node:path';
import type { Circuit } from '../../calc/index.ts';
import { drawingOf } from '../../components/circuit-diagram/drawing.ts';
import { planOf } from '../../components/circuit-diagram/plan.ts';
import { defaultsOf, type JobContext, jobOf, SHOP_DEFAULTS } from '../../components/context.ts';
import type { View } from '../../components/contract.ts';
import { studyOf } from '../../components/study.ts';
import { workshop } from '../../site/workshop.ts';

/** The demonstration's circuits, each worked out once for the defaults of its job values. */
const { circuits } = await workshop(resolve(import.meta.dirname, '../../content'));
export const CIRCUITS: Circuit[] = [...circuits.values()];

const studies = new Map<string, JobContext>();

/** A job on one of the demonstration's circuits, with what is chosen on the page. */
export function jobOn(id: string, chosen: Record<string, string> = {}): JobContext {
  let job = studies.get(id);
  if (job === undefined) {
    const circuit = circuits.get(id);
    if (circuit === undefined) throw new RangeError(`no circuit "${id}" in the demonstration`);
    const values = defaultsOf(circuit);
    job = { ...jobOf(undefined), circuit, values, study: studyOf({ circuit, shop: SHOP_DEFAULTS }, values) };
    studies.set(id, job);
  }
  return { ...job, chosen };
}

export const planFor = (id: string) => planOf(drawingOf(circuits.get(id)!));

/** Every text of a view and its rows, with the field it stands in. */
export function textsOf(view: View, at = ''): [field: string, text: string][] {
  return Object.entries(view).flatMap(([field, value]): [string, string][] =>
    Array.isArray(value)
      ? (value as View[]).flatMap((row, n) => textsOf(row, `${at}${field}[${n}].`))
      : [[`${at}${field}`, String(value)]],
  );
}
