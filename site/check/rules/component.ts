import { complaints } from '../../read/issues.ts';
import { didYouMean } from '../../suggest.ts';
import type { Rule } from '../rule.ts';

/** Components exist, and their properties are what their schemas accept. */
export const component: Rule = {
  id: 'component',
  *document({ source, parts }, { components }) {
    for (const tag of parts.tags) {
      const rule = Object.hasOwn(components, tag.name) ? components[tag.name] : undefined;
      if (!rule) {
        yield source.problem(
          tag.offset,
          `<${tag.name}>: unknown component.${didYouMean(tag.name, Object.keys(components))}`,
        );
        continue;
      }
      for (const [i, { name, offset }] of tag.attributes.entries())
        if (tag.attributes.findIndex((other) => other.name === name) < i)
          yield source.problem(offset, `<${tag.name}>: "${name}" is given twice`);
      const result = rule.props.safeParse(tag.props);
      if (result.success) continue;
      for (const { path, key, missing, message } of complaints(
        result.error.issues,
        tag.props,
        rule.props,
        'property',
      )) {
        const name = key !== undefined && path.length === 0 ? key : path[0];
        const attribute = tag.attributes.find((one) => one.name === name);
        // A value that is not plain, or was lost, has been reported already; its absence here is no second mistake.
        const absent = missing || (path.length === 0 && key === undefined);
        if (absent && (attribute || tag.faults.length > 0 || tag.brokenInQuote)) continue;
        const offset = !attribute ? tag.offset : key !== undefined ? attribute.offset : attribute.valueOffset;
        yield source.problem(offset, `<${tag.name}>: ${message}`);
      }
    }
  },
};
