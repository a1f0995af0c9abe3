import { type Circuit, type RelayPart, terminalsOf } from '../../calc/index.ts';
import { inputFields, NO_INPUTS } from '../circuit-view/inputs.ts';
import { inputsInWords, LIVE_A, looked } from '../circuit-view/state.ts';
import type { Model, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';

export interface RelayDiagramProps {
  of: string;
}

/** Terminals that a relay of each form has, in the order of the table. */
const ORDER = ['30', '87', '87a', '86', '85'];

/** Coil, contact and current of one relay in the state that the page looks at. */
export const model = (({ of }, job) => {
  const { circuit, study, units } = job;
  const part = circuit?.parts[of];
  if (circuit === null || part?.kind !== 'relay')
    throw new RangeError(`RelayDiagram: "${of}" is no relay of the circuit`);
  const look = looked(job);
  const terminals = ORDER.filter((name) => terminalsOf(part).some((each) => each.name === name));
  const frame = { source: 'Terminals: DIN 72552', spokenName: `Relay ${of}` };
  const base = {
    ...Object.fromEntries(ORDER.map((t) => [`v${t}`, ''])),
    coil: 'dead',
    com: 'dead',
    no: 'dead',
    nc: 'dead',
    arm: 'rest',
    capped: part.capped === true ? 'capped' : '',
    amps: '',
    coilAmps: '',
    clamp: clampOf(circuit, of, part),
  };
  if (study === null || look === null) {
    return {
      ...framed(job, { ...frame, flag: 'unk', flagText: 'Not worked out', spokenValue: 'not worked out' }),
      ...base,
      ...NO_INPUTS,
      state: '',
      rows: terminals.map(
        (name): View => ({ name, meaning: meaning(part, name), wired: wiredTo(circuit, of, name), now: '' }),
      ),
    };
  }
  if (look.hidden) {
    return {
      ...framed(job, { ...frame, flag: 'unk', flagText: 'A fault is in the circuit', spokenValue: 'to be measured' }),
      ...base,
      ...inputFields(circuit, look),
      state: `${inputsInWords(circuit, look.on)}: measure at the terminals.`,
      rows: terminals.map(
        (name): View => ({ name, meaning: meaning(part, name), wired: wiredTo(circuit, of, name), now: 'measure' }),
      ),
    };
  }
  const { solution } = look;
  const { nodeOf } = study.proof.origin;
  const energised = solution.energised[of];
  const amps = (id: string) => Math.abs(solution.currentA[id] ?? 0);
  /** From 30 outwards and from 86 to 85 is down the drawing's own way. */
  const way = (id: string) => {
    const a = solution.currentA[id] ?? 0;
    return a > LIVE_A ? 'live' : a < -LIVE_A ? 'live-up' : 'dead';
  };
  const volts = (name: string) => {
    const node = nodeOf[`${of}.${name}`];
    return node === undefined || solution.nodeV[node] === undefined || solution.floating.includes(node)
      ? 'floats'
      : say(solution.nodeV[node], 'voltage', units);
  };
  const carried = amps(`${of}.no`) > LIVE_A ? '30 to 87' : amps(`${of}.nc`) > LIVE_A ? '30 to 87a' : '';
  const contactA = Math.max(amps(`${of}.no`), amps(`${of}.nc`));
  const flagText = energised === true ? 'Energised' : energised === false ? 'At rest' : 'Does not settle';
  const current =
    carried === '' ? 'no current through the contact' : `${say(contactA, 'current', units)} from ${carried}`;
  const state =
    energised === null
      ? `${inputsInWords(circuit, look.on)}: ${look.solution.reason}.`
      : `${inputsInWords(circuit, look.on)}: ${flagText.toLowerCase()}, coil draws ${say(amps(of), 'current', units)}, ${current}.`;
  return {
    ...framed(job, {
      ...frame,
      flag: energised === null ? 'stop' : 'pass',
      flagText,
      spokenValue: `${flagText.toLowerCase()}, ${current}`,
    }),
    ...base,
    ...inputFields(circuit, look),
    ...Object.fromEntries(terminals.map((name) => [`v${name}`, volts(name)])),
    coil: way(of),
    com: carried === '30 to 87a' ? way(`${of}.nc`) : way(`${of}.no`),
    no: way(`${of}.no`),
    nc: way(`${of}.nc`),
    arm: energised === true ? 'pulled' : 'rest',
    amps: carried === '' || energised === null ? '' : say(contactA, 'current', units),
    coilAmps: amps(of) > LIVE_A ? say(amps(of), 'current', units) : '',
    state,
    rows: terminals.map(
      (name): View => ({
        name,
        meaning: meaning(part, name),
        wired: wiredTo(circuit, of, name),
        now: volts(name),
      }),
    ),
  };
}) satisfies Model<RelayDiagramProps>;

const meaning = (part: RelayPart, name: string): string =>
  terminalsOf(part).find((each) => each.name === name)?.meaning ?? '';

/** What sits on a terminal: wires and where they go, parts joined straight to it. */
function wiredTo(circuit: Circuit, relay: string, terminal: string): string {
  const ref = `${relay}.${terminal}`;
  const to: string[] = [];
  for (const [id, { from, to: end, colour }] of Object.entries(circuit.wires)) {
    const other = from === ref ? end : end === ref ? from : undefined;
    if (other !== undefined) to.push(`${id}${colour ? ` (${colour})` : ''} to ${placeOf(circuit, other)}`);
  }
  for (const [id, part] of Object.entries(circuit.parts)) {
    for (const [own, at] of Object.entries(part.join ?? {})) {
      if (at === ref) to.push(`${id} ${own}`.trim());
      if (id === relay && own === terminal) to.push(placeOf(circuit, at));
    }
  }
  const part = circuit.parts[relay];
  if (to.length === 0)
    return part?.kind === 'relay' && part.capped && terminal === '87a' ? 'capped' : 'nothing: cap it';
  return to.join('; ');
}

function placeOf(circuit: Circuit, ref: string): string {
  const [id, terminal] = ref.split('.') as [string, string?];
  const label = circuit.parts[id]?.label;
  return `${label ? `${label} ` : ''}${id}${terminal ? ` ${terminal}` : ''}`;
}

/** The clamp across the coil, wherever it is written: built in, or a diode or resistor joined to both ends. */
function clampOf(circuit: Circuit, relay: string, part: RelayPart): string {
  if (part.suppression) return part.suppression === 'diode' ? 'Diode inside: 86 must be positive.' : 'Resistor inside.';
  for (const [id, other] of Object.entries(circuit.parts)) {
    const ends = Object.values(other.join ?? {});
    if (ends.includes(`${relay}.85`) && ends.includes(`${relay}.86`)) {
      return other.kind === 'diode' ? `${id} across the coil, stripe to 86.` : `${id} across the coil.`;
    }
  }
  return 'No clamp across the coil.';
}
