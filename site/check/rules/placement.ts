import type { Tag } from '../../read/document.ts';
import type { Rule } from '../rule.ts';

/** A component stands where it can do its work, with something between its tags or with nothing, as it is made for. */
export const placement: Rule = {
  id: 'placement',
  *document({ source, parts }, { components }) {
    for (const tag of parts.tags) {
      const rule = Object.hasOwn(components, tag.name) ? components[tag.name] : undefined;
      if (!rule) continue;
      if (rule.children === 'none' && tag.filled)
        yield source.problem(tag.offset, `<${tag.name}>: takes nothing between its tags; write <${tag.name} … />`);
      if (rule.children === 'required' && !tag.filled)
        yield source.problem(tag.offset, `<${tag.name}>: nothing stands between its tags, and something must`);
      if (rule.inside && !rule.inside.some((name) => isInside(tag, name)))
        yield source.problem(tag.offset, `<${tag.name}>: belongs inside <${rule.inside.join('> or <')}>`);
    }
  },
};

/** True when a tag stands in one of that name, at any depth. */
export function isInside(tag: Tag, name: string): boolean {
  for (let up = tag.parent; up; up = up.parent) if (up.name === name) return true;
  return false;
}
