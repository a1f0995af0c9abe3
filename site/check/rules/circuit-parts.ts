import { circuitProblems } from '../../../calc/index.ts';
import type { Rule } from '../rule.ts';

/** A circuit's parts, terminals, wires and wishes fit together. */
export const circuitParts: Rule = {
  id: 'circuit-parts',
  *whole({ reading, content }) {
    for (const { id, source, offsetOf } of reading.entries.circuits) {
      const circuit = content.circuits.get(id);
      if (!circuit) continue;
      for (const { path, message, suggestion } of circuitProblems(circuit)) {
        yield source.problem(
          offsetOf(path),
          `${/[.?!]$/.test(message) ? message : `${message}.`}${meant(message, suggestion)}`,
        );
      }
    }
  },
};

/** Some messages say already what was meant. */
const meant = (message: string, suggestion: string | undefined): string =>
  suggestion === undefined || /did you mean/i.test(message) ? '' : ` Did you mean "${suggestion}"?`;
