import type { Tag } from '../../read/document.ts';
import type { Problem, Source } from '../../read/source.ts';
import { documentsOf, type Rule } from '../rule.ts';

/** Where a structural component may stand: directly in one of these, or anywhere where none are listed. */
const PARENTS: Record<string, readonly string[]> = { Step: ['Steps'], Check: ['Hold'] };
const HOLD_POINTS = ['H1', 'H2', 'H3', 'H4'];

/** Stations, steps, holds and checks are whole: each id once, each in its place, hold points in their order. */
export const skeleton: Rule = {
  id: 'skeleton',
  *check({ reading }) {
    for (const { kind, source, parts } of documentsOf(reading)) {
      yield* sameIds(source, parts.tags);
      for (const tag of parts.tags) {
        const parents = PARENTS[tag.name];
        if (parents && !parents.includes(tag.parent?.name ?? ''))
          yield source.problem(tag.offset, `<${tag.name}> stands directly in <${parents.join('> or <')}>`);
        if ((tag.name === 'Station' || tag.name === 'Hold') && above(tag, tag.name))
          yield source.problem(tag.offset, `<${tag.name}> cannot stand inside another <${tag.name}>`);
      }
      if (kind === 'guides') yield* holds(source, parts.tags);
    }
  },
};

function* sameIds(source: Source, tags: readonly Tag[]): Generator<Problem> {
  const seen = new Map<string, Tag>();
  for (const tag of tags) {
    const id = tag.props['id'];
    if (typeof id !== 'string') continue;
    const other = seen.get(id);
    const { valueOffset } = tag.attributes.find(({ name }) => name === 'id')!;
    if (other) {
      const { line } = source.place(other.offset);
      yield source.problem(valueOffset, `<${tag.name}>: id "${id}" is already that of <${other.name}> in line ${line}`);
    } else seen.set(id, tag);
  }
}

function* holds(source: Source, tags: readonly Tag[]): Generator<Problem> {
  let last = -1;
  for (const tag of tags) {
    if (tag.name !== 'Hold') continue;
    const point = HOLD_POINTS.indexOf(String(tag.props['point']));
    if (point < 0) continue;
    if (point <= last) {
      const why =
        point === last
          ? `${HOLD_POINTS[point]} is there already`
          : `${HOLD_POINTS[point]} comes before ${HOLD_POINTS[last]}`;
      yield source.problem(tag.offset, `<Hold>: ${why}; hold points stand once each, in order`);
    } else last = point;
  }
}

function above(tag: Tag, name: string): boolean {
  for (let up = tag.parent; up; up = up.parent) if (up.name === name) return true;
  return false;
}
