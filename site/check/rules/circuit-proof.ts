import type { Finding } from '../../../calc/index.ts';
import type { Entry } from '../../read/folder.ts';
import type { Problem } from '../../read/source.ts';
import type { Rule } from '../rule.ts';

/** A circuit does what the customer asked and nothing that hurts: what its proof stops at is signed off or mended. */
export const circuitProof: Rule = {
  id: 'circuit-proof',
  *whole({ reading, proofs, documents }) {
    for (const entry of reading.entries.circuits) {
      const outcome = proofs.get(entry.id);
      // A circuit that cannot be read has the messages of its own rule.
      if (!outcome) continue;
      const guides = documents.flatMap(({ kind, id, file, data }) =>
        kind === 'guides' && data && 'circuit' in data && data.circuit === entry.id ? [`guide "${id}" (${file})`] : [],
      );
      const published = guides.length === 0 ? 'no guide uses it yet' : `${guides.join(', ')} cannot be published`;
      if ('failed' in outcome) {
        yield entry.source.problem(0, `circuit not proven: ${outcome.failed}; ${published}`);
        continue;
      }
      for (const finding of outcome.proof.findings) {
        if (finding.signedOff || finding.severity === 'note') continue;
        yield problemOf(entry, finding, finding.severity === 'stop' ? ` [${published}]` : '');
      }
    }
  },
};

function problemOf(entry: Entry<'circuits'>, finding: Finding, consequence: string): Problem {
  const { rule, severity, parts, message, why, cure } = finding;
  const about = parts.length === 0 ? '' : ` (${parts.join(', ')})`;
  const text = `${severity} ${rule}${about}: ${ended(message)} ${ended(why)} Cure: ${ended(cure)}${consequence}`;
  return entry.source.problem(placeOf(entry, finding), text, severity === 'stop' ? 'error' : 'warning');
}

/** Where the part to look at stands; a sign-off that matches nothing stands where it was signed. */
function placeOf(entry: Entry<'circuits'>, { rule, parts }: Finding): number {
  const { data } = entry;
  if (rule === 'sign-off-unmatched') {
    const at = data?.signOffs.findIndex((signed) => signed.parts.join() === parts.join()) ?? -1;
    if (at >= 0) return entry.offsetOf(['signOffs', at]);
  }
  for (const part of parts) {
    const id = part.split('.')[0]!;
    if (data && Object.hasOwn(data.parts, id)) return entry.offsetOf(['parts', id]);
    if (data && Object.hasOwn(data.wires, id)) return entry.offsetOf(['wires', id]);
  }
  return 0;
}

const ended = (sentence: string): string => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`);
