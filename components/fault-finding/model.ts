import { CHASSIS, type Diagnosis, diagnose, type Fault, type Proof, type Solution } from '../../calc/index.ts';
import { sayFault } from '../circuit-view/fault-words.ts';
import { notesOf, placeWords } from '../circuit-view/notes.ts';
import { benchOf, faultKey, faultOfKey, inputsInWords, loadName, looked } from '../circuit-view/state.ts';

import type { JobContext } from '../context.ts';
import type { Model, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';

/** One fault in the circuit: shown by name, or hidden, to be found with the meter and named. */
export const model = ((_props, job) => {
  const { circuit, study } = job;
  const look = looked(job);
  const frame = {
    source: 'Single faults put into the solved circuit; a fuse blows from 2 × its rating',
    spokenName: 'Fault finding',
  };
  const empty = {
    isHidden: false,
    isOpen: true,
    hasAnswer: false,
    verdict: '',
    verdictIs: '',
    why: '',
    alike: '',
    next: '',
    notes: [] as View[],
    hasNotes: false,
  };
  if (circuit === null || study === null || look === null) {
    const none = { flag: 'unk', flagText: 'Not worked out', spokenValue: 'not worked out' } as const;
    return { ...framed(job, { ...frame, ...none }), ...empty, say: 'The circuit could not be worked out.' };
  }
  const { proof } = study;
  if (!look.hidden || look.fault === undefined) {
    const shown = look.fault !== undefined;
    return {
      ...framed(job, {
        ...frame,
        flag: shown ? 'warn' : 'pass',
        flagText: shown ? 'Fault put in' : 'Sound',
        spokenValue: shown ? look.faultWords : 'circuit is sound',
      }),
      ...empty,
      say: shown
        ? `${look.faultWords}${look.blown.length ? `; ${look.blown.join(' and ')} blown` : ''}. The drawing shows what it does in this state.`
        : 'Choose a fault to see what it does. Or have one hidden, and find it with the meter.',
    };
  }
  const notes = notesOf(job, proof);
  const guess = faultOfKey(proof, job.chosen['guess'] ?? '');
  const gaveUp = job.chosen['reveal'] !== undefined;
  const answer = judged(proof, look.fault, guess, gaveUp, job);
  return {
    ...framed(job, {
      ...frame,
      flag: answer.is === 'right' ? 'pass' : answer.is === 'wrong' ? 'stop' : 'unk',
      flagText: answer.is === 'right' ? 'Found' : answer.is === 'wrong' ? 'Not this' : 'Find it',
      spokenValue: answer.verdict === '' ? `${notes.length} readings noted` : answer.verdict,
    }),
    ...empty,
    isHidden: true,
    isOpen: false,
    say: 'One fault is in the circuit. Move the inputs, see which loads work, move the probes, note what tells. Then name it.',
    notes: notes.map(({ words, value }): View => ({ words, value })),
    hasNotes: notes.length > 0,
    verdict: answer.verdict,
    hasAnswer: answer.verdict !== '',
    why: answer.why,
    alike: answer.alike,
    next: answer.next,
  };
}) satisfies Model<object>;

interface Answer {
  is: 'right' | 'wrong' | '';
  verdict: string;
  why: string;
  alike: string;
  next: string;
}

/** Right or wrong, the reading that tells, what else the readings so far leave, and what to measure next. */
function judged(proof: Proof, hidden: Fault, guess: Fault | undefined, gaveUp: boolean, job: JobContext): Answer {
  const name = (fault: Fault) => sayFault(proof.netlist, fault);
  const notes = notesOf(job, proof);
  const done = gaveUp || (guess !== undefined && faultKey(guess) === faultKey(hidden));
  if (guess === undefined && !gaveUp) return { is: '', verdict: '', why: '', alike: '', next: '' };
  const { suspects, fitting, next } = diagnose(
    proof.netlist,
    notes.map(({ reading }) => reading),
  );
  const fit = suspects.filter(({ contradicts }) => contradicts.length === 0);
  const others = fit.filter(({ fault }) => fault !== undefined && faultKey(fault) !== faultKey(hidden));
  const listed = others.slice(0, MOST_NAMED).map(({ fault }) => name(fault!));
  const more = others.length > listed.length ? ` and ${others.length - listed.length} more` : '';
  const readings = `${notes.length} ${notes.length === 1 ? 'reading' : 'readings'}`;
  const alike =
    notes.length === 0
      ? ''
      : others.length === 0
        ? `Your ${readings} leave no other single fault.`
        : `Your ${readings} would be the same with: ${listed.join('; ')}${more}.`;
  const measure = fitting > 1 && next !== undefined && !done ? `Measure next: ${nextInWords(proof, next, job)}.` : '';
  if (done)
    return {
      is: 'right',
      verdict:
        guess !== undefined && faultKey(guess) === faultKey(hidden)
          ? `Right: ${name(hidden)}.`
          : `It was: ${name(hidden)}.`,
      why: '',
      alike,
      next: '',
    };
  const mine = suspects.find(({ fault }) => fault !== undefined && faultKey(fault) === faultKey(guess!));
  const against = mine?.contradicts[0];
  if (against !== undefined) {
    const note = notes[against.reading]!;
    const kind = 'amps' in note.reading.of ? 'current' : 'voltage';
    const expected =
      typeof against.expected === 'number'
        ? say(kind === 'current' ? Math.abs(against.expected) : against.expected, kind, job.units)
        : '';
    return {
      is: 'wrong',
      verdict: `Not this: ${name(guess!)}.`,
      why: `With it you would have read ${expected}, not ${note.value}: ${note.words}.`,
      alike: '',
      next: measure,
    };
  }
  return {
    is: 'wrong',
    verdict: `Not this: ${name(guess!)}.`,
    why: whatDiffers(proof, hidden, guess!, job),
    alike:
      notes.length === 0
        ? 'Note a reading that tells before you name a fault.'
        : 'Your readings so far would fit it: that is a guess.',
    next: measure,
  };
}

/** The reading that would part what is left, in the words of the page. */
function nextInWords(proof: Proof, next: NonNullable<Diagnosis['next']>, job: JobContext): string {
  const on = Object.keys(next.inputs).filter((id) => next.inputs[id]);
  const when = inputsInWords(job.circuit!, on).toLowerCase();
  const place = (node: string) =>
    placeWords(Object.keys(proof.origin.nodeOf).find((ref) => proof.origin.nodeOf[ref] === node) ?? node);
  if ('amps' in next.of) return `the current in ${next.of.amps}, ${when}`;
  if ('load' in next.of) return `the volts across ${next.of.load}, ${when}`;
  return `the volts from ${place(next.of.from)} to ${place(next.of.to)}, ${when}`;
}

/** Names listed before the rest is counted. */
const MOST_NAMED = 4;
/** Volts that a meter tells apart beyond doubt [V]. */
const TELLS_V = 0.5;

/** The first state and place in which two faults part. */
function whatDiffers(proof: Proof, hidden: Fault, guess: Fault, job: JobContext): string {
  const circuit = job.circuit!;
  const solve = benchOf(proof);
  let volts = '';
  for (const { inputs } of proof.states) {
    const is = solve(hidden, { inputs }).solution;
    const would = solve(guess, { inputs }).solution;
    const on = Object.keys(inputs).filter((id) => inputs[id]);
    const when = inputsInWords(circuit, on).toLowerCase();
    for (const id of Object.keys(circuit.intent.loads)) {
      if (is.on[id] !== would.on[id])
        return `With ${when}, ${loadName(circuit, id)} would be ${would.on[id] ? 'on' : 'off'}; look again.`;
    }
    if (volts !== '') continue;
    for (const [ref, node] of Object.entries(proof.origin.nodeOf)) {
      // a loose point reads nothing to speak of
      const at = ({ floating, nodeV }: Solution) => (floating.includes(node) ? 0 : nodeV[node]!);
      if (ref !== CHASSIS && Math.abs(at(is) - at(would)) > TELLS_V) {
        volts = `It shows at ${ref.replace('.', ' ')} with ${when}: measure there.`;
        break;
      }
    }
  }
  return volts === '' ? 'No meter would tell the two apart: look at the part itself.' : volts;
}
