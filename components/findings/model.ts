import type { Finding } from '../../calc/index.ts';
import { inputsInWords } from '../circuit-view/state.ts';
import type { Model, View } from '../contract.ts';
import { framed } from '../instrument.ts';

const WORD = { stop: 'Stop', warn: 'Check', note: 'Note' } as const;

/** Findings of the proof, worst first: what is wrong, why it matters, what would cure it, and who signed it off. */
export const model = ((_props, job) => {
  const { circuit, study } = job;
  const frame = { source: 'Rules of the proof; each names its own source', spokenName: 'Findings' };
  if (circuit === null || study === null) {
    const none = { flag: 'unk', flagText: 'Not worked out', spokenValue: 'not worked out' } as const;
    return { ...framed(job, { ...frame, ...none }), rows: [] as View[], say: 'The circuit could not be worked out.' };
  }
  const { findings } = study;
  const open = findings.filter((each) => each.severity === 'stop' && !each.signedOff).length;
  const count = findings.length;
  const flag =
    open > 0 ? 'stop' : findings.some((each) => each.severity !== 'note') ? 'warn' : count > 0 ? 'note' : 'pass';
  const flagText = open > 0 ? `${open} to cure` : count > 0 ? `${count} to read` : 'Nothing found';
  const states = study.proof.states.length;
  const row = (finding: Finding): View => ({
    is: finding.severity,
    icon: `#i-${finding.severity}`,
    word: WORD[finding.severity],
    message: finding.message,
    why: finding.why,
    cure: finding.cure,
    when:
      finding.states.length === 0 || finding.states.length === states
        ? ''
        : finding.states
            .slice(0, 3)
            .map((inputs) =>
              inputsInWords(
                circuit,
                Object.keys(inputs).filter((id) => inputs[id]),
              ),
            )
            .join('; ') + (finding.states.length > 3 ? ` and ${finding.states.length - 3} more states` : ''),
    signed: finding.signedOff
      ? `Accepted by ${finding.signedOff.by} on ${finding.signedOff.on}: ${finding.signedOff.reason}`
      : '',
  });
  return {
    ...framed(job, { ...frame, flag, flagText, spokenValue: flagText.toLowerCase() }),
    rows: findings.map(row),
    say:
      count === 0
        ? `Every rule passes in all ${states} states, engine off and on. This does not replace the tests on the vehicle.`
        : 'Read each before you cut a wire.',
  };
}) satisfies Model<object>;
