import type { Tag } from '../../read/document.ts';
import { anchorOf } from '../../read/outline.ts';
import type { Problem, Source } from '../../read/source.ts';
import type { Rule } from '../rule.ts';
import { isInside } from './placement.ts';

const HOLD_POINTS = ['H1', 'H2', 'H3', 'H4'];
/** A thing of this name does not stand inside another. */
const FLAT = new Set(['Station', 'Hold', 'Steps', 'Step', 'Check']);

/** Stations, steps, holds and checks are whole: each id once, none inside its like, hold points in their order. */
export const skeleton: Rule = {
  id: 'skeleton',
  *document({ kind, source, parts }) {
    yield* sameIds(source, parts.tags);
    for (const tag of parts.tags)
      if (FLAT.has(tag.name) && isInside(tag, tag.name))
        yield source.problem(tag.offset, `<${tag.name}>: cannot stand inside another <${tag.name}>`);
    if (kind === 'guides') yield* holds(source, parts.tags);
  },
};

function* sameIds(source: Source, tags: readonly Tag[]): Generator<Problem> {
  const seen = new Map<string, Tag>();
  for (const tag of tags) {
    const id = tag.props['id'];
    if (typeof id !== 'string') continue;
    const anchor = anchorOf(tag.name, id);
    const other = seen.get(anchor);
    if (!other) {
      seen.set(anchor, tag);
      continue;
    }
    const offset = tag.attributes.find(({ name }) => name === 'id')?.valueOffset ?? tag.offset;
    const { line } = source.place(other.offset);
    yield source.problem(offset, `<${tag.name}>: id "${id}" is already that of <${other.name}> in line ${line}`);
  }
}

function* holds(source: Source, tags: readonly Tag[]): Generator<Problem> {
  let last = -1;
  for (const tag of tags) {
    const point = tag.name === 'Hold' ? HOLD_POINTS.indexOf(String(tag.props['point'])) : -1;
    if (point < 0) continue;
    if (point === last)
      yield source.problem(tag.offset, `<Hold>: ${HOLD_POINTS[point]} is there already; each hold point stands once`);
    else if (point < last)
      yield source.problem(tag.offset, `<Hold>: ${HOLD_POINTS[point]} comes before ${HOLD_POINTS[last]}, not after it`);
    else last = point;
  }
}
