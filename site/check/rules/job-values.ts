import { type Rule, textAt } from '../rule.ts';

/** Where a job value is shown it can be changed: each one shown leads to its row among the job values. */
export const jobValues: Rule = {
  id: 'job-values',
  *document({ kind, raw, source, parts }, { circuits, components }) {
    if (kind !== 'guides' || parts.tags.some(({ name }) => name === 'JobValues')) return;
    const values = circuits.get(textAt(raw, 'circuit') ?? '')?.values ?? {};
    for (const { name, attributes } of parts.tags) {
      const refers = Object.hasOwn(components, name) ? components[name]?.refers : undefined;
      const shown = attributes.find(
        (one) => refers?.[one.name] === 'value' && typeof one.value === 'string' && Object.hasOwn(values, one.value),
      );
      if (!shown) continue;
      yield source.problem(
        shown.valueOffset,
        `<${name}>: shows the job value "${shown.value}", but the guide has no <JobValues/> to change it in`,
      );
      return;
    }
  },
};
