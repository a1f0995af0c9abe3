import { CHASSIS, type Circuit, meterReading, ohms, type Proof } from '../../calc/index.ts';
import { listOf } from '../chosen.ts';
import { NOTES, noteOf, placeWords } from '../circuit-view/notes.ts';
import { type Looked, loadName, looked } from '../circuit-view/state.ts';
import type { JobContext } from '../context.ts';
import type { Model } from '../contract.ts';
import { framed } from '../instrument.ts';
import { inWords, put, say, show } from '../show.ts';

/** Chosen names of the two probes and of the clamp. */
export const PROBES = { red: 'red', black: 'black', clamp: 'clamp' } as const;

/** What a clamp goes round: every wire, in the circuit's order. */
export function clampsOf(circuit: Circuit): { value: string; label: string }[] {
  return Object.entries(circuit.wires).map(([id, { label }]) => ({ value: id, label: label ? `${id}, ${label}` : id }));
}

/** Places a probe can touch, by terminal: the chassis first, then terminals in the circuit's order. */
export function placesOf(circuit: Circuit, proof: Proof): { value: string; label: string; group: string }[] {
  const places = [{ value: CHASSIS, label: 'Chassis', group: 'Vehicle' }];
  for (const ref of Object.keys(proof.origin.nodeOf)) {
    if (ref === CHASSIS) continue;
    const [id, terminal] = ref.split('.') as [string, string?];
    const name = loadName(circuit, id);
    places.push({ value: ref, label: terminal ? `${id} ${terminal}` : id, group: name === id ? id : `${name}, ${id}` });
  }
  return places;
}

/** Where the probes stand before anyone moves them: across the first load the customer wants. */
function startOf(circuit: Circuit): [string, string] {
  const load = Object.keys(circuit.intent.loads)[0];
  return load === undefined ? [CHASSIS, CHASSIS] : [`${load}.+`, CHASSIS];
}

/** What a meter reads between the two probes: volts with the supply on, ohms with it off. */
export const model = ((_props, job) => {
  const { circuit, study, units } = job;
  const look = looked(job);
  const frame = {
    source: 'Network solution at charging voltage; a real meter loads a loose wire and reads lower',
    spokenName: 'Meter',
  };
  if (circuit === null || study === null || look === null) {
    const none = { flag: 'unk', flagText: 'Not worked out', spokenValue: 'not worked out' } as const;
    return {
      ...framed(job, { ...frame, ...none }),
      ...put('volts', show(null, 'voltage', units)),
      reads: '',
      say: '',
      ohms: '',
      red: '',
      black: '',
      clamp: '',
      clamped: '',
      toFind: false,
      note: '',
      noteWord: '',
      noteAmps: '',
      noteAmpsWord: '',
    };
  }
  const { nodeOf } = study.proof.origin;
  const start = startOf(circuit);
  const at = (ref: string | undefined, fallback: string) =>
    ref !== undefined && (ref === CHASSIS || nodeOf[ref] !== undefined) ? ref : fallback;
  const red = at(job.chosen[PROBES.red], start[0]);
  const black = at(job.chosen[PROBES.black], start[1]);
  const probes = { from: nodeOf[red] ?? CHASSIS, to: nodeOf[black] ?? CHASSIS };
  const reading = meterReading(look.solution, study.proof.netlist, probes);
  const wires = Object.keys(circuit.wires);
  const clamp = wires.includes(job.chosen[PROBES.clamp] ?? '') ? job.chosen[PROBES.clamp]! : (wires[0] ?? '');
  const noted = listOf(job.chosen[NOTES] ?? '');
  const note = noteOf(look.steps, red, black);
  const noteAmps = noteOf(look.steps, `@${clamp}`);
  const word = (key: string) => (noted.includes(key) ? 'Take this reading off' : 'Note this reading');
  const volts =
    reading.kind === 'volts' ? show(reading.voltageV, 'voltage', units) : { text: '', unit: '', spoken: '' };
  return {
    ...framed(job, {
      ...frame,
      flag: reading.kind === 'floating' ? 'unk' : look.fault ? 'warn' : 'pass',
      flagText: reading.kind === 'floating' ? 'Loose point' : look.fault ? 'With a fault in it' : 'Sound circuit',
      spokenValue: reading.kind === 'floating' ? 'drifts' : inWords(volts),
    }),
    ...put('volts', volts),
    reads: reading.kind === 'floating' ? 'drifts' : '',
    say:
      reading.kind === 'floating'
        ? 'Nothing ties this point down: the display drifts, and a test lamp stays dark.'
        : `Red probe on ${placeWords(red)}, black on ${placeWords(black)}.`,
    ohms: resistance(look, job, study.proof, probes),
    red,
    black,
    clamp,
    clamped:
      clamp === ''
        ? ''
        : `Clamp round ${clamp}: ${say(Math.abs(look.solution.currentA[clamp] ?? 0), 'current', units)}.`,
    toFind: look.hidden,
    note: `${NOTES}:${note}`,
    noteWord: word(note),
    noteAmps: `${NOTES}:${noteAmps}`,
    noteAmpsWord: word(noteAmps),
  };
}) satisfies Model<object>;

function resistance(look: Looked, job: JobContext, proof: Proof, probes: { from: string; to: string }): string {
  const value = ohms(look.solution, proof.netlist, probes);
  const text = Number.isFinite(value) ? say(value, 'resistance', job.units) : 'open';
  return `Supply off, same contacts: ${text}.`;
}
