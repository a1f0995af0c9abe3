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
        const full = /[.?!]$/.test(message) ? message : `${message}.`;
        yield source.problem(
          offsetOf(path),
          suggestion === undefined ? message : `${full} Did you mean "${suggestion}"?`,
        );
      }
    }
  },
};
